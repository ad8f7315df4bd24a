import { useMemo } from 'react';
import { useDraft } from '../../../job';
import { extentOf, type ScanUnit, sizeOf, toCloud, type Up, unitMillimetres } from '../../../scan';
import { Callout, Card, ChoiceField, useLengths } from '../../parts';
import { ReadAs } from './ReadAs';
import { readNotes } from './read-notes';
import styles from './scan.module.css';
import { type Understood as Given, useScan } from './scan-store';

const units: readonly (readonly [ScanUnit, string])[] = [
  ['mm', 'millimetres'],
  ['cm', 'centimetres'],
  ['m', 'metres'],
  ['in', 'inches'],
  ['ft', 'feet'],
];
const ups: readonly (readonly [Up, string])[] = [
  ['+z', 'z'],
  ['+y', 'y'],
  ['+x', 'x'],
  ['-z', '−z'],
  ['-y', '−y'],
  ['-x', '−x'],
];
/** An alcove with the room before it is no larger and no smaller, mm. */
const [least, most] = [900, 12_000];

/** What a file was read as, to be put right before the walls are looked for. */
export function Understood({ files, scan, unit, up }: Given) {
  const { say, find, read, putAway } = useScan.getState();
  const fault = useScan((state) => state.fault);
  const levelAboveFloor = useDraft(({ draft }) => draft.job.levelAboveFloor);
  const rimAboveFloor = useDraft(({ draft }) => draft.job.rim.apronHeight);
  const lengths = useLengths();
  const size = useMemo(() => sizeOf(extentOf(toCloud(scan, unit, up).positions)), [scan, unit, up]);
  const longest = Math.max(...size);
  const count = scan.positions.length / 3;
  return (
    <Card title="Is this right?">
      <dl className={styles.facts}>
        <div>
          <dt>File</dt>
          <dd>
            {files[0]!.name}, {scan.format === 'text' ? 'a point per line' : scan.format}
            {scan.mesh && `, mesh of ${scan.mesh.triangles.toLocaleString()} triangles`}
          </dd>
        </div>
        <div>
          <dt>Points</dt>
          <dd>{count.toLocaleString()}</dd>
        </div>
        <div>
          <dt>Size</dt>
          <dd>
            {lengths.text(size[0])} × {lengths.text(size[2])}, {lengths.text(size[1])} high
          </dd>
        </div>
      </dl>
      {readNotes(scan, lengths.text(unitMillimetres[unit] * (scan.cube ?? 0))).map((note) => (
        <p key={note} className={styles.about}>
          {note}
        </p>
      ))}
      <div className={styles.fields}>
        <ChoiceField
          label={scan.unit === null ? 'Unit of the file (guessed)' : 'Unit of the file'}
          labelShown
          value={unit}
          choices={units}
          onChoose={(chosen) => say({ unit: chosen })}
        />
        <ChoiceField
          label={scan.up === null ? 'Up in the file (guessed)' : 'Up in the file'}
          labelShown
          value={up}
          choices={ups}
          onChoose={(chosen) => say({ up: chosen })}
        />
      </div>
      {scan.table && <ReadAs table={scan.table} onRead={(table) => void read(files, table)} />}
      {(longest < least || longest > most) && (
        <Callout weight="warn">
          In this unit the scan is {lengths.text(longest)} long, which is hardly an alcove. Choose another unit.
        </Callout>
      )}
      {fault && <Callout weight="bad">{fault}</Callout>}
      <div className={styles.row}>
        <button
          type="button"
          className={styles.main}
          onClick={() => void find({ levelAboveFloor, rimAboveFloor, upKnown: false })}
        >
          Find the walls
        </button>
        <button type="button" onClick={putAway}>
          Put the scan away
        </button>
      </div>
    </Card>
  );
}
