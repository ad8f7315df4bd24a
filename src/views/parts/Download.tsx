import { useState } from 'react';
import { download } from '../../job';
import styles from './parts.module.css';
import { useMaking } from './useMaking';

/** A file made when asked for, or the sentence that says why it cannot be. */
export type FileMade =
  | { ok: true; name: string; content: string | Uint8Array<ArrayBuffer>; type: string }
  | { ok: false; message: string };

interface DownloadProps {
  label: string;
  /** what it is, within a sentence */
  what: string;
  make: () => Promise<FileMade>;
}

/** A button that makes a file and hands it to the browser to save. */
export function Download({ label, what, make: makeFile }: DownloadProps) {
  const { making, make } = useMaking();
  const [refusal, setRefusal] = useState<string | null>(null);
  const onClick = () => {
    setRefusal(null);
    return make(what, async () => {
      const file = await makeFile();
      if (file.ok) download(file.name, file.content, file.type);
      else setRefusal(file.message);
    });
  };
  return (
    <span className={styles.download}>
      <button type="button" disabled={making !== null} onClick={onClick}>
        {label}
      </button>
      <span role="status" className={styles.refusal}>
        {making ? `Making the ${what}…` : refusal}
      </span>
    </span>
  );
}
