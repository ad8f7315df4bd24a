import { formatLength, type Job, type Result, type StockBar, type StockPlan } from '../../core';
import { pieceTitle, stockWords, unplacedWords } from '../../output';
import { Card } from '../parts';
import { useStockPlan } from './use-stock-plan';
import styles from './van.module.css';

/** Which stock length each piece of trim is cut from, what is left over, and how good the plan is. */
export function Lengths({ job, result }: { job: Job; result: Result }) {
  const planning = useStockPlan(result, job);
  return (
    <Card title="Stock lengths">
      <div role="status">
        {planning.state === 'planning' && <p>Planning what is cut from which length…</p>}
        {planning.state === 'failed' && (
          <p>
            The lengths could not be planned ({planning.message}). All else works as usual.{' '}
            <button type="button" onClick={planning.again}>
              Plan again
            </button>
          </p>
        )}
        {planning.state === 'planned' && <PlanWords plan={planning.plan} job={job} result={result} />}
      </div>
      {planning.state === 'planned' &&
        planning.plan.bars.map((bar, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a length is nothing but its place in the list
          <Bar key={i} bar={bar} title={`Length ${i + 1} of ${planning.plan.bars.length}`} job={job} result={result} />
        ))}
    </Card>
  );
}

function PlanWords({ plan, job, result }: { plan: StockPlan; job: Job; result: Result }) {
  const unplaced = unplacedWords(plan, job, result);
  return (
    <>
      <p>{stockWords(plan, job)}</p>
      {unplaced !== null && (
        <p>
          <strong>From no length:</strong> {unplaced}
        </p>
      )}
    </>
  );
}

function Bar({ bar, title, job, result }: { bar: StockBar; title: string; job: Job; result: Result }) {
  const text = (mm: number) => formatLength(mm, { unit: job.display });
  let from = 0;
  const places = bar.cuts.map((cut) => {
    const place = { ...cut, from };
    from += cut.length + job.cutting.kerf;
    return place;
  });
  return (
    <section className={styles.sheet} aria-label={title}>
      <h3>
        {title}: {text(bar.length)}
      </h3>
      <svg className={styles.bar} viewBox={`0 0 ${bar.length} 10`} preserveAspectRatio="none" aria-hidden="true">
        <rect className={styles.offcut} width={bar.length} height="10" />
        {places.map((cut) => (
          <rect key={cut.piece} className={styles.placed} x={cut.from} width={cut.length} height="10" />
        ))}
      </svg>
      <ol className={styles.cuts}>
        {bar.cuts.map((cut) => (
          <li key={cut.piece}>
            {pieceTitle(cut.piece, job, result)}: {text(cut.length)}
          </li>
        ))}
      </ol>
      <p className={styles.about}>Left over: {text(bar.left)}</p>
    </section>
  );
}
