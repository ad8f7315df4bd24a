import { hidingOf, type Job, leanOver, type Result, type WallName } from '../../core';
import { hidingSentence } from '../../output';
import { wallTitle } from '../findings';
import { Card, lengthsIn } from '../parts';
import styles from './client.module.css';

const walls: readonly WallName[] = ['back', 'left', 'right'];

/** What is out of true about the bare alcove, and how the trim covers it. */
export function Defects({ job, result }: { job: Job; result: Result }) {
  const lengths = lengthsIn(job.display);
  const tall = job.fit.top - Math.min(...result.panels.back.outline.map(([, v]) => v));
  const sentence = (wall: WallName): string => {
    const { bow, bowSd } = result.walls[wall];
    const lean = leanOver(result.walls[wall], tall);
    return `${wallTitle[wall]}: ${lengths.fine(lean.value)} ${lengths.plusMinus(lean.sd)} out of plumb over the panels' height, ${lean.into ? 'leaning in' : 'leaning out'}; ${lengths.fine(Math.abs(bow))} ${lengths.plusMinus(bowSd)} ${bow >= 0 ? 'hollow' : 'humped'}.`;
  };
  return (
    <Card title="What the walls are like, and what hides it">
      <ul className={styles.sentences}>
        {walls.map((wall) => (
          <li key={wall}>{sentence(wall)}</li>
        ))}
        {hidingOf(result)
          .filter(({ kind }) => kind === 'vertical')
          .map((hiding) => (
            <li key={hiding.piece}>{hidingSentence(hiding, job)}</li>
          ))}
      </ul>
    </Card>
  );
}
