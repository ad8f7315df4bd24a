import { useId, useState } from 'react';
import type { Job } from '../../core';
import { useSession } from '../../job';
import { Card } from '../parts';
import styles from './client.module.css';

/** Adds a way to finish the alcove under a name. */
export function AddChoice({ job }: { job: Job }) {
  const { choose } = useSession().draft.getState();
  const id = useId();
  const [name, setName] = useState('');
  const clean = name.trim();
  const taken =
    clean === ''
      ? null
      : job.choices.some((each) => each.id === clean)
        ? 'There is a choice of that name already.'
        : null;
  return (
    <Card title="Another choice">
      <form
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          const free = clean !== '' && taken === null ? clean : freeName(job);
          choose(['choices'], [...job.choices, { id: free, finish: job.finish, trim: {} }]);
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
            onChange={({ target }) => setName(target.value)}
          />
        </span>
        <button type="submit">Add a choice</button>
      </form>
      {taken && <p role="status">{taken}</p>}
    </Card>
  );
}

const freeName = (job: Job): string => {
  const taken = new Set(job.choices.map(({ id }) => id));
  return ['Another way', 'A third way', 'A fourth way', 'One more way'].find((name) => !taken.has(name))!;
};
