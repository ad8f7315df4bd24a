import { Suspense } from 'react';
import type { Job, PanelName, Result } from '../../../core';
import { bedLines, bedText } from '../../../output';
import { panelTitle } from '../../alcove';
import { Problems } from '../../findings';
import { Card, Cross, loaded, useTouched } from '../../parts';
import { goTo } from '../../place';
import styles from '../bench.module.css';
import { BeddingForm } from './BeddingForm';
import bed from './bed.module.css';

const BedPicture = loaded(() => import('./BedPicture').then(({ BedPicture: picture }) => picture));

/** How a panel's sheet sits on its wall: the bed in 3D, what is known of it, its shims, and what it is made of. */
export function BedBench({ panel, job, result }: { panel: PanelName; job: Job; result: Result }) {
  const touched = useTouched();
  return (
    <div className={styles.bench}>
      <div className={styles.sheet}>
        <Card title={`How it sits: ${panelTitle[panel].toLowerCase()}`}>
          {touched ? (
            <Suspense fallback={<p className={bed.wait}>Loading the drawing…</p>}>
              <BedPicture {...{ panel, job, result }} />
            </Suspense>
          ) : (
            <button type="button" className={bed.wait}>
              Show the bed in 3D
            </button>
          )}
          <dl className={bed.lines}>
            {bedLines(panel, result.bedding[panel], job).map(({ label, words, bad }) => (
              <div key={label} data-bad={bad || undefined}>
                <dt>{label}</dt>
                <dd>
                  {bad && <Cross />} {words}.
                </dd>
              </div>
            ))}
          </dl>
          <p className={styles.about}>Each ± holds 19 times in 20, from the survey alone.</p>
        </Card>
        <Shims {...{ panel, job, result }} />
      </div>
      <div className={styles.beside}>
        <Problems shown={panel} onShow={(item) => goTo({ name: 'bench', item: `beds.${item}` })} />
        <BeddingForm />
      </div>
    </div>
  );
}

/** Where shims go, row by row from the bottom. */
function Shims({ panel, job, result }: { panel: PanelName; job: Job; result: Result }) {
  const { list, to } = result.bedding[panel].shims;
  const { fine, plusMinus, across, up } = bedText(job);
  if (list.length === 0) return null;
  return (
    <Card title={`Shims that bring it flat${to === 'plumb' ? ' and plumb' : ''}`}>
      <table className={styles.marks}>
        <thead>
          <tr>
            <th scope="col">Shim</th>
            <th scope="col">{panel === 'back' ? 'From the plumb line' : 'From the back wall'}</th>
            <th scope="col">From the level line</th>
            <th scope="col">Thickness</th>
            <th scope="col">±</th>
          </tr>
        </thead>
        <tbody>
          {list.map(({ u, v, thickness, sd }, k) => (
            <tr key={`${u} ${v}`}>
              <th scope="row">{k + 1}</th>
              <td data-head={panel === 'back' ? 'From the plumb line' : 'From the back wall'}>{across(panel, u)}</td>
              <td data-head="From the level line">{up(v)}</td>
              <td data-head="Thickness">
                <strong>{fine(thickness)}</strong>
              </td>
              <td data-head="±">{plusMinus(sd)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={styles.about}>
        Thickness of the shim alone; the adhesive goes on top of it. Lay a straightedge over them before the panel goes
        on.
      </p>
    </Card>
  );
}
