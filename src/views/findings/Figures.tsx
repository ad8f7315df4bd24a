import { useSessionState } from '../../job';
import { Callout, Card, useLengths } from '../parts';
import { cornerFigures, type Figure, panelledHeight, rimFigures, wallFigures, wallTitle } from './figures';
import styles from './findings.module.css';

/** What is out of true, wall by wall, each figure with its ± (95 %). */
export function Figures() {
  const result = useSessionState((state) => state.result);
  const job = useSessionState((state) => state.solved);
  const lengths = useLengths();
  if (!result || !job) return null;
  const height = panelledHeight(result, job.fit.top);
  const { assumed } = result.adjustment;
  return (
    <Card title="How true it is">
      <p className={styles.about}>Over the panelled height of {lengths.text(height)}. Each ± holds 19 times in 20.</p>
      <div className={styles.groups}>
        {(['left', 'back', 'right'] as const).map((wall) => (
          <FigureList key={wall} title={wallTitle[wall]} figures={wallFigures(result, wall, height, lengths)} />
        ))}
        <FigureList title="Left corner" figures={cornerFigures(result, 'left', lengths)} />
        <FigureList title="Right corner" figures={cornerFigures(result, 'right', lengths)} />
        <FigureList title="Rim" figures={rimFigures(result, lengths)} />
      </div>
      {assumed.length > 0 && (
        <Callout weight="warn">
          <h3>Assumed, not measured</h3>
          <p>No reading settles these; the drawing takes them as usual for an alcove.</p>
          <ul className={styles.assumed}>
            {assumed.map((what) => (
              <li key={what}>{what}</li>
            ))}
          </ul>
        </Callout>
      )}
    </Card>
  );
}

function FigureList({ title, figures }: { title: string; figures: Figure[] }) {
  return (
    <section className={styles.figures} aria-label={title}>
      <h3>{title}</h3>
      <dl>
        {figures.map(({ name, words, plusMinus }) => (
          <div key={name} className={styles.figure}>
            <dt>{name}</dt>
            <dd>
              <strong>{words}</strong> <span className={styles.plusMinus}>{plusMinus}</span>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
