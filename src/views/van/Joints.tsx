import { formatLength, type Job, type Result } from '../../core';
import {
  capital,
  fillerWords,
  jointFigure,
  jointRuns,
  jointWidthAlong,
  movementBasis,
  movementUse,
} from '../../output';
import { Card } from '../parts';
import { FigureView } from './FigureView';
import { typeSize } from './type-size';
import styles from './van.module.css';

/** Every joint: where, how long, how wide along it, what closes it and how much that takes. */
export function Joints({ job, result }: { job: Job; result: Result }) {
  const runs = jointRuns(result.sequence);
  return (
    <Card title="Joints">
      <p className={styles.about}>
        Solid: wet joints, closed with sealant. Dashed: room side, closed with paintable caulk. Widths start at the
        bottom, or at the back (on the back wall: at the left). Volumes hold what is lost in tooling; a run is what can
        be tooled before it skins over.
      </p>
      <p className={styles.about}>
        Movement: with {movementBasis(job)}. Each joint is taken to give for the whole sheet beside it: how far, and how
        much of what the sealant’s class takes that is at its narrowest place. Over 100 % it tears sooner or later.
      </p>
      <FigureView figure={jointFigure(result, typeSize(result))} />
      <table className={styles.table} data-wraps>
        <thead>
          <tr>
            <th scope="col">Joint</th>
            <th scope="col">Closed with</th>
            <th scope="col">Length</th>
            <th scope="col">Width</th>
            <th scope="col">Moves: of its class</th>
            <th scope="col">Volume</th>
            <th scope="col">Run</th>
          </tr>
        </thead>
        <tbody>
          {result.materials.joints.map((joint, i) => (
            <tr key={joint.id}>
              <th scope="row">
                {i + 1}. {capital(joint.label)}
              </th>
              <td data-head="Closed with">{fillerWords[joint.filler]}</td>
              <td data-head="Length">{formatLength(joint.length, { unit: job.display })}</td>
              <td data-head="Width">{jointWidthAlong(joint, job)}</td>
              <td data-head="Moves" data-bad={(joint.moves?.used ?? 0) > 1 || undefined}>
                {movementUse(joint, job)}
              </td>
              <td data-head="Volume">{Math.ceil(joint.volume)} mL</td>
              <td data-head="Run">{runs(joint.id)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Card>
  );
}
