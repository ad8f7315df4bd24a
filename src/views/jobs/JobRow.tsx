import { DropdownMenu } from 'radix-ui';
import { useEffect, useRef, useState } from 'react';
import type { JobSummary } from '../../job';
import { ChevronDown, MenuContent, MenuItem } from '../parts';
import styles from './jobs.module.css';
import { contentsOf, moment } from './words';

interface JobRowProps {
  job: JobSummary;
  /** it is the one in hand */
  inHand: boolean;
  onOpen(): void;
  onRename(name: string): void;
  onCopy(): void;
  onSave(): void;
  onDelete(): void;
}

/** A job in the list, and what can be done with it. */
export function JobRow({ job, inHand, onOpen, onRename, onCopy, onSave, onDelete }: JobRowProps) {
  const [renaming, setRenaming] = useState(false);
  const afterMenu = useRef<(() => void) | null>(null);
  const menu = useRef<HTMLButtonElement>(null);
  const renamed = useRef(false);
  useEffect(() => {
    if (renamed.current && !renaming) menu.current?.focus();
    renamed.current = renaming;
  }, [renaming]);
  if (renaming)
    return (
      <li className={styles.row}>
        <Rename
          name={job.name}
          onDone={(name) => {
            setRenaming(false);
            if (name !== null && name !== job.name) onRename(name);
          }}
        />
      </li>
    );
  return (
    <li className={styles.row} aria-current={inHand || undefined} data-job={job.id}>
      <div className={styles.what}>
        <h3 className={styles.name}>{job.name}</h3>
        {job.place !== '' && <p className={styles.place}>{job.place}</p>}
        <p className={styles.about}>
          {job.readable
            ? contentsOf(job)
            : 'Kept by another version; it cannot be shown here and stays stored as it is'}
        </p>
        <p className={styles.about}>
          {inHand && <strong className={styles.tag}>In hand</strong>}
          {job.untouched ? 'Nothing changed in it yet' : `Changed ${moment(job.changedAt)}`}
        </p>
      </div>
      <div className={styles.buttons}>
        <button type="button" className={styles.main} disabled={!job.readable} onClick={onOpen}>
          Open<span className="unseen"> {job.name}</span>
        </button>
        <DropdownMenu.Root modal={false}>
          <DropdownMenu.Trigger ref={menu}>
            More<span className="unseen"> for {job.name}</span> <ChevronDown />
          </DropdownMenu.Trigger>
          <MenuContent
            onCloseAutoFocus={(event) => {
              // The menu gives the focus back as it closes: what moves it on has to come later.
              if (!afterMenu.current) return;
              event.preventDefault();
              menu.current?.focus();
              afterMenu.current();
              afterMenu.current = null;
            }}
          >
            {job.readable && (
              <>
                <MenuItem
                  onSelect={() => {
                    afterMenu.current = () => setRenaming(true);
                  }}
                >
                  Rename
                </MenuItem>
                <MenuItem onSelect={onCopy}>Copy</MenuItem>
                <MenuItem onSelect={onSave}>Save in a file</MenuItem>
              </>
            )}
            <MenuItem
              onSelect={() => {
                afterMenu.current = onDelete;
              }}
            >
              Delete
            </MenuItem>
          </MenuContent>
        </DropdownMenu.Root>
      </div>
    </li>
  );
}

function Rename({ name, onDone }: { name: string; onDone(name: string | null): void }) {
  const [text, setText] = useState(name);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);
  return (
    <form
      className={styles.rename}
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() !== '') onDone(text.trim());
      }}
    >
      <label className={styles.search}>
        <span>New name</span>
        <input
          ref={field}
          value={text}
          maxLength={200}
          autoComplete="off"
          onChange={({ target }) => setText(target.value)}
          onKeyDown={({ key }) => key === 'Escape' && onDone(null)}
        />
      </label>
      <div className={styles.buttons}>
        <button type="submit" className={styles.main} disabled={text.trim() === ''}>
          Rename
        </button>
        <button type="button" onClick={() => onDone(null)}>
          Leave it
        </button>
      </div>
    </form>
  );
}
