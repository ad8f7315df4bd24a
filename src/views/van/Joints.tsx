import { formatLength, type Job, type Result } from '../../core';
import { capital, fillerWords, jointWidthWords } from '../../output';
import { Card } from '../parts';
import styles from './van.module.css';

/** Every joint: how long, how wide along it, what closes it and how much that takes. */
export function Joints({ job, result }: { job: Job; result: Result }) {
  return (
    <Card title="Joints">
      <p className={styles.about}>Volumes hold what is lost in tooling.</p>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Joint</th>
            <th scope="col">Closed with</th>
            <th scope="col">Length</th>
            <th scope="col">Width</th>
            <th scope="col">Volume</th>
          </tr>
        </thead>
        <tbody>
          {result.materials.joints.map((joint) => (
            <tr key={joint.id}>
              <th scope="row">{capital(joint.label)}</th>
              <td data-head="Closed with">{fillerWords[joint.filler]}</td>
              <td data-head="Length">{formatLength(joint.length, { unit: job.display })}</td>
              <td data-head="Width">{jointWidthWords(joint, job)}</td>
              <td data-head="Volume">{Math.ceil(joint.volume)} mL</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Card>
  );
}
