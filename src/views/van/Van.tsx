import { Tabs } from 'radix-ui';
import { useSessionState } from '../../job';
import { Problems } from '../findings';
import { PartTabs } from '../parts';
import { goTo, type VanPart } from '../place';
import { Adhesive } from './Adhesive';
import { Joints } from './Joints';
import { Lengths } from './Lengths';
import { Materials } from './Materials';
import { OrderOfWork } from './OrderOfWork';
import { Pieces } from './Pieces';
import { ScheduleForm } from './ScheduleForm';
import { Sheets } from './Sheets';
import { SuppliesForm } from './SuppliesForm';
import styles from './van.module.css';

const parts: readonly (readonly [VanPart, string])[] = [
  ['materials', 'What to buy'],
  ['work', 'Order of work'],
  ['pieces', 'Pieces and sheets'],
];

/** Before setting out: what to buy, what is cut from which sheet, and in which order the work goes. */
export function Van({ part }: { part: VanPart }) {
  const result = useSessionState((state) => state.result);
  const job = useSessionState((state) => state.solved);
  if (!result || !job) return <p>Working out what the job needs…</p>;
  return (
    <>
      <div className={styles.problems}>
        <Problems shown={null} onShow={(item) => goTo({ name: 'bench', item })} />
      </div>
      <PartTabs label="Parts of the plan" parts={parts} value={part} onChoose={(part) => goTo({ name: 'van', part })}>
        <Tabs.Content value="materials" tabIndex={-1} className={styles.van}>
          <div className={styles.column}>
            <Materials job={job} result={result} />
            <Adhesive job={job} result={result} />
            <Joints job={job} result={result} />
          </div>
          <div className={styles.column}>
            <SuppliesForm />
          </div>
        </Tabs.Content>
        <Tabs.Content value="work" tabIndex={-1} className={styles.van}>
          <OrderOfWork job={job} result={result} />
          <div className={styles.column}>
            <ScheduleForm />
          </div>
        </Tabs.Content>
        <Tabs.Content value="pieces" tabIndex={-1} className={styles.halves}>
          <Pieces job={job} result={result} />
          <div className={styles.column}>
            <Sheets job={job} result={result} />
            <Lengths job={job} result={result} />
          </div>
        </Tabs.Content>
      </PartTabs>
    </>
  );
}
