import { type Job, type PanelName, type Result, settingOrder } from '../../../core';
import { wayWords } from '../../../output';
import { panelTitle } from '../../alcove';
import { Problems } from '../../findings';
import { Callout, Card } from '../../parts';
import { goTo } from '../../place';
import styles from '../bench.module.css';
import { Carried } from './Carried';
import { CarryingForm } from './CarryingForm';
import { WayPlayer } from './WayPlayer';

/** How a panel gets to its wall, shown as it moves, and what its sheet must pass before that. */
export function WayBench({ panel, job, result }: { panel: PanelName; job: Job; result: Result }) {
  const way = result.gettingIn.panels[panel];
  const { weight, head, more } = wayWords(way, job);
  return (
    <div className={styles.bench}>
      <div className={styles.sheet}>
        <Card title={`Getting in: ${panelTitle[panel].toLowerCase()}`}>
          <Callout weight={weight}>
            <p>
              <strong>{head}.</strong>
            </p>
            {more.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </Callout>
          <WayPlayer panel={panel} job={job} result={result} />
          <p className={styles.about}>
            A rigid sheet of the panel’s thickness, moved between the walls as measured and over the rim; free means on
            each side at the tightest place of the way. Two people carry, with gloves and shoes; a sheet on edge catches
            every draught.
          </p>
        </Card>
        <Carried job={job} carried={result.gettingIn.carried} />
      </div>
      <div className={styles.beside}>
        <Problems shown={null} onShow={(item) => goTo({ name: 'bench', item })} />
        <AllWays job={job} result={result} shown={panel} />
        <CarryingForm />
      </div>
    </div>
  );
}

/** The three verdicts in short, in the order of setting. */
function AllWays({ job, result, shown }: { job: Job; result: Result; shown: PanelName }) {
  return (
    <Card title="In the order of setting">
      <ol className={styles.rows}>
        {settingOrder(job).map((panel) => (
          <li key={panel}>
            <strong>{panelTitle[panel]}:</strong>{' '}
            {wayWords(result.gettingIn.panels[panel], job).head.replace(/^./, (first) => first.toLowerCase())}
            {panel === shown && ' (shown)'}
          </li>
        ))}
      </ol>
    </Card>
  );
}
