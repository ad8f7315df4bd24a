import { useEffect, useId, useRef, useState } from 'react';
import { useDraft, useSession } from '../../job';
import { nameTaken } from './choice-name';
import styles from './client.module.css';

export interface ChoiceNameProps {
  id: string;
  /** it was given this name just now, in the card of its old one, and has the focus that went with that */
  renamed: boolean;
  onRename(to: string): void;
}

/** What a choice is called. */
export function ChoiceName({ id, renamed, onRename }: ChoiceNameProps) {
  const job = useDraft(({ draft }) => draft.job);
  const { rename } = useSession().draft.getState();
  const field = useId();
  const input = useRef<HTMLInputElement>(null);
  const [text, setText] = useState(id);
  const name = text.trim();
  const taken = name !== id && nameTaken(job, name);
  useEffect(() => {
    if (renamed) input.current?.focus();
  }, [renamed]);
  return (
    <form
      className={styles.named}
      onSubmit={(event) => {
        event.preventDefault();
        if (taken || name === id || name === '') return;
        rename('choices', id, name);
        onRename(name);
      }}
    >
      <label htmlFor={field}>Name of this choice</label>
      <input
        ref={input}
        id={field}
        value={text}
        maxLength={60}
        placeholder={id}
        aria-invalid={taken}
        aria-describedby={`${field}-taken`}
        onChange={({ target }) => setText(target.value)}
      />
      <button type="submit">Rename</button>
      <span id={`${field}-taken`} role="status">
        {taken && 'There is a choice of that name already.'}
      </span>
    </form>
  );
}
