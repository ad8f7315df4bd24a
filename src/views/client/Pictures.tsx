import { useCallback, useState } from 'react';
import type { Job } from '../../core';
import { download, jobFileStem, useSession } from '../../job';
import type { Photographer } from '../../scene';
import { useTouched } from '../parts';
import styles from './client.module.css';

export function usePhotographer(): [Photographer | null, (photographer: Photographer | null) => void] {
  const [photographer, set] = useState<Photographer | null>(null);
  return [photographer, useCallback((next: Photographer | null) => set(next), [])];
}

interface PicturesProps {
  job: Job;
  photographer: Photographer | null;
}

/** Saves what is seen as a picture, or one from each viewpoint. */
export function Pictures({ job, photographer }: PicturesProps) {
  const { tell } = useSession();
  const touched = useTouched();
  const [busy, setBusy] = useState(false);
  const stem = jobFileStem(job);
  const take = (work: (by: Photographer) => Promise<void>) => async () => {
    if (!photographer) return;
    setBusy(true);
    try {
      await work(photographer);
    } catch (error) {
      tell(`The picture could not be taken (${error instanceof Error ? error.message : String(error)}). Try again.`);
    } finally {
      setBusy(false);
    }
  };
  const bytes = async (blob: Blob) => new Uint8Array(await blob.arrayBuffer());
  const off = busy || !touched || photographer === null;
  return (
    <span className={styles.bar}>
      <button
        type="button"
        disabled={off}
        onClick={take(async (by) => download(`${stem}.png`, await bytes(await by.picture()), 'image/png'))}
      >
        Picture: PNG
      </button>
      <button
        type="button"
        disabled={off}
        onClick={take(async (by) => {
          const { zipSync } = await import('fflate');
          const shot = async (viewpoint: Parameters<Photographer['picture']>[0]) => bytes(await by.picture(viewpoint));
          const files = {
            [`${stem}-from-the-door.png`]: await shot('door'),
            [`${stem}-at-eye-height.png`]: await shot('eye'),
            [`${stem}-from-the-tub.png`]: await shot('tub'),
          };
          download(`${stem}-views.zip`, zipSync(files, { level: 0 }), 'application/zip');
        })}
      >
        Three views: ZIP
      </button>
    </span>
  );
}
