import { useId, useState } from 'react';
import type { Job } from '../../core';
import { useSession } from '../../job';
import { Card } from '../parts';
import { freeName, nameTaken } from './choice-name';
import styles from './client.module.css';

/** Adds a way to finish the alcove under a name. */
export function AddChoice({ job }: { job: Job }) {
  const { addTo } = useSession().draft.getState();
  const id = useId();
  const [name, setName] = useState('');
  const clean = name.trim();
  const taken = nameTaken(job, clean);
  return (
    <Card title="Another choice">
      <form
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          if (taken) return;
          addTo(['choices'], { id: clean || freeName(job), finish: job.finish, trim: {} });
          setName('');
        }}
      >
        <span className={styles.stacked}>
          <label htmlFor={id}>Called</label>
          <input
            id={id}
            value={name}
            maxLength={60}
            placeholder={freeName(job)}
            aria-invalid={taken}
            aria-describedby={`${id}-taken`}
            onChange={({ target }) => setName(target.value)}
          />
          <span id={`${id}-taken`} role="status">
            {taken && 'There is a choice of that name already.'}
          </span>
        </span>
        <button type="submit" data-adds>
          Add a choice
        </button>
      </form>
    </Card>
  );
}
