import { type DragEvent, useRef, useState } from 'react';
import { demoScan, useSession } from '../../../job';
import { scanLimits } from '../../../scan';
import { Callout, Card } from '../../parts';
import styles from './scan.module.css';
import { useScan } from './scan-store';

const endings = '.ply,.xyz,.txt,.csv,.pts,.asc,.obj,.glb,.gltf,.bin';

/** The files chosen, the one that is read first: a .bin only goes with a .gltf. */
const mainFirst = (files: FileList): File[] =>
  Array.from(files).sort((a, b) => Number(/\.bin$/i.test(a.name)) - Number(/\.bin$/i.test(b.name)));

/** Where a scan comes in: a file chosen, or dropped here. */
export function ChooseFile() {
  const read = useScan((state) => state.read);
  const fault = useScan((state) => state.fault);
  const { back } = useScan.getState();
  const session = useSession();
  const input = useRef<HTMLInputElement>(null);
  const [over, setOver] = useState(false);
  const take = (files: FileList | null) => {
    if (files && files.length > 0) void read(mainFirst(files));
  };
  const onDrop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    take(event.dataTransfer.files);
  };
  const tryDemo = async () => {
    try {
      const { job, file } = await demoScan();
      await session.openJob(job);
      await read([file]);
    } catch {
      back({ at: 'choosing' }, 'The demo scan could not be loaded. Open this page once with the network on.');
    }
  };
  return (
    <Card title="Scan of the alcove">
      <p className={styles.about}>
        Points or a mesh from a phone or a laser scanner stand in for most of the tape. A few readings by hand still
        correct it: its scale, and what it could not see.
      </p>
      {fault && <Callout weight="bad">{fault}</Callout>}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the button in it does the same */}
      <div
        className={styles.drop}
        data-over={over || undefined}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={onDrop}
      >
        <button type="button" className={styles.main} data-adds onClick={() => input.current?.click()}>
          Choose a file
        </button>
        <span>or drop one here</span>
        <input
          ref={input}
          type="file"
          hidden
          multiple
          accept={endings}
          data-testid="scan-file"
          onChange={({ target }) => {
            take(target.files);
            target.value = '';
          }}
        />
      </div>
      <p className={styles.about}>
        PLY, XYZ, CSV or TXT with a point per line, OBJ, GLB or glTF. Up to {scanLimits.file / 1e9} GB (glTF{' '}
        {scanLimits.wholeFile / 1e6} MB); over {scanLimits.points / 1e6} million points are thinned evenly while they
        are read. The file stays on this device.
      </p>
      <div className={styles.row}>
        <button type="button" onClick={() => void tryDemo()}>
          Try a demo scan
        </button>
        <span className={styles.about}>
          It shows an invented alcove and opens with a job of its own. The job in hand stays as it is.
        </span>
      </div>
    </Card>
  );
}
