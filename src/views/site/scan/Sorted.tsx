import { Callout, Card, Redo, Undo } from '../../parts';
import { PartList } from './PartList';
import { PickTools } from './PickTools';
import styles from './scan.module.css';
import { type Sorted as Given, useScan } from './scan-store';
import { TakeIn } from './TakeIn';

/** The sorted points: what each part has, what to mend, and the way into the job. */
export function Sorted(sorted: Given) {
  const done = useScan((state) => state.done.length);
  const undone = useScan((state) => state.undone.length);
  const fault = useScan((state) => state.fault);
  const { undo, redo } = useScan.getState();
  return (
    <>
      <Card
        title="Parts of the scan"
        aside={
          <div className={styles.row}>
            <button type="button" disabled={done === 0} onClick={undo} aria-label="Undo the last mend">
              <Undo />
            </button>
            <button type="button" disabled={undone === 0} onClick={redo} aria-label="Redo the mend">
              <Redo />
            </button>
          </div>
        }
      >
        <PartList {...sorted} />
        <PickTools {...sorted} />
      </Card>
      <Card title="Take it into the job">
        {fault && <Callout weight="bad">{fault}</Callout>}
        <TakeIn {...sorted} />
      </Card>
    </>
  );
}
