import { useState } from 'react';
import type { Job } from '../../core';
import { useSession } from '../../job';
import { Card } from '../parts';
import { freeName, nameTaken } from './choice-name';
import styles from './client.module.css';
import { NameField } from './NameField';

/** Adds a way to finish the alcove under a name. */
export function AddChoice({ job }: { job: Job }) {
  const { addTo } = useSession().draft.getState();
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
          <NameField label="Called" value={name} placeholder={freeName(job)} taken={taken} onChange={setName} />
        </span>
        <button type="submit" data-adds>
          Add a choice
        </button>
      </form>
    </Card>
  );
}
