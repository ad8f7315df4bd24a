import { useState } from 'react';
import type { Job, PieceFit, Result } from '../../core';
import { dryFitFault, dryFitted, dryFitWords } from '../../output';
import { useDrawing } from '../alcove';
import { Callout, Card } from '../parts';
import styles from './bench.module.css';

/** The templates' own files read back and folded up into the alcove, with what each edge of the shown one misses by. */
export function TryFit({ piece, job, result }: { piece: string; job: Job; result: Result }) {
  const { tried, set } = useDrawing();
  const [state, setState] = useState<'idle' | 'trying' | 'failed'>('idle');
  const dryFit = tried?.of === result ? tried.dryFit : null;
  const shown = dryFit?.pieces.find((each) => each.piece === piece);
  const attempt = async () => {
    setState('trying');
    try {
      const found = await dryFitted(job, result);
      set({ tried: { of: result, dryFit: found.dryFit } });
      setState('idle');
    } catch {
      setState('failed');
    }
  };
  return (
    <Card title="Virtual dry fit">
      <p className={styles.about}>
        Reads the template files back, folds them up into the alcove as measured and tells what each edge misses by. It
        says that the files are true to the readings, not that the readings are: dry fit every piece before you glue it.
      </p>
      {dryFit === null && (
        <button type="button" disabled={state === 'trying'} onClick={attempt}>
          {state === 'trying' ? 'Trying the templates…' : 'Try the templates in the alcove'}
        </button>
      )}
      <div role="status">
        {state === 'failed' && (
          <Callout weight="bad">The templates could not be tried. Nothing of the job was changed; try again.</Callout>
        )}
        {dryFit && (
          <Callout weight={dryFitFault(dryFit, job, result) === null ? 'good' : 'bad'}>
            {dryFitWords(dryFit, job, result)}
          </Callout>
        )}
      </div>
      {shown && <EdgeFits fit={shown} tolerance={dryFit?.tolerance ?? 0} />}
    </Card>
  );
}

function EdgeFits({ fit, tolerance }: { fit: PieceFit; tolerance: number }) {
  return (
    <table className={styles.marks}>
      <thead>
        <tr>
          <th scope="col">Edge</th>
          <th scope="col">Reaches too far by</th>
          <th scope="col">Falls short by</th>
          <th scope="col">Within {tolerance} mm</th>
        </tr>
      </thead>
      <tbody>
        {fit.edges.map(({ edge, overlap, gap }) => (
          <tr key={edge}>
            <th scope="row">{edge}</th>
            <td data-head="Reaches too far by">{overlap.toFixed(2)} mm</td>
            <td data-head="Falls short by">{gap.toFixed(2)} mm</td>
            <td data-head={`Within ${tolerance} mm`}>{Math.max(overlap, gap) <= tolerance ? 'yes' : 'NO'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
