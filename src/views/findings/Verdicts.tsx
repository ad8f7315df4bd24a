import { useSessionState } from '../../job';
import { ruleWords } from '../../output';
import { Card, GuideLink } from '../parts';
import { wallTitle } from './figures';
import { Tolerances } from './Tolerances';
import { VerdictCard } from './VerdictCard';
import styles from './verdicts.module.css';

/** What each wall, corner and the rim asks for before panels, by the tolerances picked. */
export function Verdicts() {
  const result = useSessionState((state) => state.result);
  if (!result) return null;
  const { walls, corners, rim } = result;
  return (
    <Card title="What it means for the panels">
      <div className={styles.verdicts}>
        {(['left', 'back', 'right'] as const).map((wall) => (
          <VerdictCard key={wall} title={wallTitle[wall]} verdict={walls[wall].verdict} />
        ))}
        <VerdictCard title="Left corner" verdict={corners.left.verdict} />
        <VerdictCard title="Right corner" verdict={corners.right.verdict} />
        <VerdictCard title="Rim" verdict={rim.verdict} />
      </div>
      <GuideLink page="site" section="hold-and-do-not-cut">
        When to hold, and not cut
      </GuideLink>
      <Tolerances />
      <p className={styles.rule}>{ruleWords}</p>
      <p className={styles.rule}>
        Walls of older houses may hold asbestos or lead paint: have them tested before sanding, cutting or taking them
        down. Local codes come first.
      </p>
    </Card>
  );
}
