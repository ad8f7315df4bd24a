import type { Job, Result } from '../../core';
import { Problems } from '../findings';
import { goTo } from '../place';
import { Lengths, Sheets } from '../van';
import styles from './bench.module.css';
import { CuttingForm, StockForm } from './forms';

/** What is cut from which sheet and which length, and the rules for it. */
export function SheetsBench({ job, result }: { job: Job; result: Result }) {
  return (
    <div className={styles.bench}>
      <div className={styles.sheet}>
        <Sheets job={job} result={result} />
        <Lengths job={job} result={result} />
      </div>
      <div className={styles.beside}>
        <Problems shown={null} onShow={(item) => goTo({ name: 'bench', item })} />
        <CuttingForm />
        <StockForm />
      </div>
    </div>
  );
}
