import { useMemo, useState } from 'react';
import { type Job, lookWords, nameOfFinish, type Result } from '../../core';
import type { Side } from '../../scene';
import { Card, NumberField, Segments } from '../parts';
import styles from './client.module.css';
import { Defects } from './Defects';
import { FinishForm } from './FinishForm';
import { Pictures, usePhotographer } from './Pictures';
import { Stage } from './Stage';
import { StageControls } from './StageControls';

type When = 'after' | 'both' | 'before';
const whenWords: readonly (readonly [When, string])[] = [
  ['before', 'Before'],
  ['both', 'Both'],
  ['after', 'After'],
];

interface LookProps {
  job: Job;
  result: Result;
  /** a job that came in a link: nothing of it is changed */
  readOnly?: boolean;
}

/** The finished alcove large, from where one wants to see it, before and after. */
export function Look({ job, result, readOnly = false }: LookProps) {
  const [when, setWhen] = useState<When>('after');
  const [photographer, setPhotographer] = usePhotographer();
  const sides = useMemo((): Side[] => {
    const before: Side = { name: 'Before', job, result, bare: true };
    const after: Side = { name: 'After', job, result, bare: false };
    return { before: [before], both: [before, after], after: [after] }[when];
  }, [job, result, when]);
  const finish = nameOfFinish(job.finish) ?? 'a finish of its own';
  const description =
    when === 'before'
      ? 'The bare alcove as measured.'
      : `${when === 'both' ? 'The bare alcove beside the finished one' : 'The finished alcove'}: ${lookWords[job.finish.look]} panels in ${finish}, trim, shelves and fixtures as planned.`;
  return (
    <div className={styles.look}>
      <div className={styles.column}>
        <Stage {...{ sides, description }} wiped onPhotographer={setPhotographer} />
        <div className={styles.bar}>
          <Segments label="Before or after" value={when} choices={whenWords} onChoose={setWhen} />
          <Pictures job={job} photographer={photographer} />
        </div>
        <StageControls
          unit={job.display}
          figures={{ before: 'leans' as const, both: null, after: 'dimensions' as const }[when]}
          finished={when !== 'before'}
        />
      </div>
      <div className={styles.column}>
        {!readOnly && (
          <Card title="Finish">
            <FinishForm path={['finish']} title="Panels in" />
            <h3>Trim</h3>
            <div className={styles.form}>
              <NumberField path={['trim', 'width']} label="Width" labelShown />
              <NumberField
                path={['trim', 'verticalWidth']}
                label="Width of the uprights"
                optional
                placeholder="the same"
                labelShown
              />
              <NumberField path={['trim', 'thickness']} label="Thickness" labelShown />
              <NumberField path={['trim', 'lip']} label="Lip over the edge" labelShown />
            </div>
          </Card>
        )}
        <Defects job={job} result={result} />
      </div>
    </div>
  );
}
