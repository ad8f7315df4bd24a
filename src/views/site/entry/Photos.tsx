import { useEffect, useId, useState } from 'react';
import { type DraftReading, useDraft, useSession } from '../../../job';
import { Cross, RemoveButton } from '../../parts';
import styles from './entry.module.css';

/** The photos of a reading: taken, looked at, taken off again. */
export function Photos({ reading }: { reading: DraftReading }) {
  const { photos, draft, tell } = useSession();
  const job = useDraft((state) => state.draft.id);
  const [adding, setAdding] = useState(false);
  const id = useId();
  const path = ['readings', reading.id, 'photos'];
  const names = (reading.photos ?? []).filter((name) => name !== undefined);
  /** As it stands once the picture is there: the person may have gone on meanwhile. */
  const choose = (change: (names: string[]) => string[]) => {
    const { draft: now, choose: put } = draft.getState();
    const { photos: had = [] } = now.job.readings.find((each) => each.id === reading.id) ?? {};
    const left = change(had.filter((name) => name !== undefined));
    if (now.id === job) put(path, left.length > 0 ? left : undefined);
  };
  const add = async (files: readonly File[]) => {
    setAdding(true);
    for (const file of files) {
      const added = await photos.add(job, file);
      if (added.ok) choose((had) => [...had, added.photo.id]);
      else tell(added.message);
    }
    setAdding(false);
  };
  return (
    <div className={styles.photos} data-rows>
      <label htmlFor={id} className={styles.addPhoto}>
        Add a photo
      </label>
      <input
        id={id}
        type="file"
        accept="image/*"
        capture="environment"
        className="unseen"
        data-adds
        disabled={adding}
        onChange={({ target }) => {
          void add([...(target.files ?? [])]);
          target.value = '';
        }}
      />
      {names.map((name, i) => (
        <figure key={name} className={styles.photo} data-row>
          <Picture job={job} name={name} words={`Photo ${i + 1} of ${reading.id}`} />
          <RemoveButton
            aria-label={`Take photo ${i + 1} off`}
            onRemove={() => choose((had) => had.filter((each) => each !== name))}
          >
            <Cross />
          </RemoveButton>
        </figure>
      ))}
      <p role="status" className={styles.where}>
        {adding ? 'Keeping the photo…' : ''}
      </p>
    </div>
  );
}

function Picture({ job, name, words }: { job: string; name: string; words: string }) {
  const { photos } = useSession();
  const [address, setAddress] = useState<string | null | undefined>(undefined);
  useEffect(() => {
    let made: string | null = null;
    let gone = false;
    photos.read(job, name).then((blob) => {
      if (gone) return;
      made = blob && URL.createObjectURL(blob);
      setAddress(made);
    });
    return () => {
      gone = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [photos, job, name]);
  if (address === undefined) return <p>Loading…</p>;
  if (address === null) return <p>This photo is not kept in this browser.</p>;
  return (
    <a href={address} target="_blank" rel="noreferrer">
      <img src={address} alt={words} />
    </a>
  );
}
