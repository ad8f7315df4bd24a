import { useState } from 'react';
import { download, useSession } from '../../job';
import styles from './van.module.css';

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
export function Download({ label, what, make }: DownloadProps) {
  const { tell } = useSession();
  const [making, setMaking] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const onClick = async () => {
    setMaking(true);
    setRefusal(null);
    try {
      const file = await make();
      if (file.ok) download(file.name, file.content, file.type);
      else setRefusal(file.message);
    } catch (error) {
      tell(
        `The ${what} could not be made (${error instanceof Error ? error.message : String(error)}). The job is as it was; try again, with a connection if this is the first time.`,
      );
    } finally {
      setMaking(false);
    }
  };
  return (
    <span className={styles.download}>
      <button type="button" disabled={making} onClick={onClick}>
        {label}
      </button>
      <span role="status" className={styles.refusal}>
        {making ? `Making the ${what}…` : refusal}
      </span>
    </span>
  );
}
