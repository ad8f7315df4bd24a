import { useEffect, useRef, useState } from 'react';
import { useDraft, useSession } from '../../job';
import { nameTaken } from './choice-name';
import styles from './client.module.css';
import { NameField } from './NameField';

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
      <NameField
        ref={input}
        label="Name of this choice"
        value={text}
        placeholder={id}
        taken={taken}
        onChange={setText}
      />
      <button type="submit">Rename</button>
    </form>
  );
}
