import { useEffect, useMemo, useState } from 'react';
import type { Job, Result } from '../../core';
import type { Side } from '../../scene';
import { Segments } from '../parts';
import { AddChoice } from './AddChoice';
import styles from './client.module.css';
import { Stage } from './Stage';
import { StageControls } from './StageControls';
import { useWays, type Way } from './useWays';
import { WayCard } from './WayCard';

type Layout = 'beside' | 'wiped';
const layoutWords: readonly (readonly [Layout, string])[] = [
  ['beside', 'Side by side'],
  ['wiped', 'One picture, a line between'],
];
const MOST_OTHERS = 3;

interface ChoicesProps {
  job: Job;
  result: Result;
  readOnly?: boolean;
}

/** Two to four ways to finish the alcove, seen from the same place, each with its list and price. */
export function Choices({ job, result, readOnly = false }: ChoicesProps) {
  const ways = useWays(job, result);
  const [layout, setLayout] = useState<Layout>('beside');
  const [against, setAgainst] = useState(1);
  /** the name just given to a choice, until its card stands under it */
  const [renamed, setRenamed] = useState<string | null>(null);
  useEffect(() => {
    if (ways.some(({ id }) => id === renamed)) setRenamed(null);
  }, [ways, renamed]);
  const ready = useMemo(() => ways.filter((way): way is Way & { result: Result } => way.result !== null), [ways]);
  const wiped = layout === 'wiped' && ready.length > 1;
  const sides = useMemo(() => {
    const shown = wiped ? [ready[0]!, ready[Math.min(against, ready.length - 1)]!] : ready;
    return shown.map(({ name, job: way, result: found }): Side => ({ name, job: way, result: found, bare: false }));
  }, [ready, wiped, against]);
  const names = sides.map(({ name }) => name).join(', ');
  return (
    <div className={styles.column}>
      <Stage {...{ sides, wiped }} description={`The alcove finished in ${sides.length} ways: ${names}.`} />
      <div className={styles.bar}>
        {ready.length > 1 && <Segments label="Shown" value={layout} choices={layoutWords} onChoose={setLayout} />}
        {wiped && ready.length > 2 && (
          <Segments
            label="Compared with"
            value={String(against)}
            choices={ready.slice(1).map(({ name }, i) => [String(i + 1), name] as const)}
            onChoose={(chosen) => setAgainst(Number(chosen))}
          />
        )}
      </div>
      <StageControls unit={job.display} figures={sides.length === 1 ? 'dimensions' : null} finished />
      <div className={styles.ways} data-rows>
        {ways.map((way) => (
          <WayCard
            key={way.id ?? ''}
            {...{ way, readOnly }}
            own={ways[0]!}
            renamed={way.id === renamed && renamed !== null}
            onRename={setRenamed}
          />
        ))}
        {!readOnly && job.choices.length < MOST_OTHERS && <AddChoice job={job} />}
      </div>
    </div>
  );
}
