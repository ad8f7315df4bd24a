import { useMemo, useState } from 'react';
import type { PanelName } from '../../core';
import { useSessionState } from '../../job';
import { panelDrawing, type View } from '../../output';
import { AlcovePane, panelWords } from '../alcove';
import { Problems } from '../findings';
import { Callout, Card, Segments, useLengths } from '../parts';
import { goTo } from '../place';
import styles from './bench.module.css';
import { Downloads } from './Downloads';
import { Edges } from './Edges';
import { FitForm } from './FitForm';
import { Holes } from './Holes';
import { Template } from './Template';

const views: readonly (readonly [View, string])[] = [
  ['face', 'Face up'],
  ['back', 'Back up'],
];
const closest = 4;

/** At the saw: the flat template of each panel, its marks, holes and files. */
export function Bench({ panel }: { panel: PanelName }) {
  const result = useSessionState((state) => state.result);
  const job = useSessionState((state) => state.solved);
  const lengths = useLengths();
  const [view, setView] = useState<View>('face');
  const [closer, setCloser] = useState(1);
  const drawing = useMemo(
    () => (result && job ? panelDrawing(result.panels[panel], job, result.problems, view, result.advice) : null),
    [result, job, panel, view],
  );
  const show = (name: PanelName) => goTo({ name: 'bench', panel: name });
  if (!result || !job || !drawing) return <p>Working out the panels…</p>;
  const { bedMax } = result.panels[panel];
  return (
    <div className={styles.bench}>
      <div className={styles.sheet}>
        <Card
          title={drawing.title}
          aside={<Segments label="Panel" value={panel} choices={panelWords} onChoose={show} />}
        >
          <div className={styles.viewRow}>
            <Segments label="Side that is up" value={view} choices={views} onChoose={setView} />
            <p className={styles.statement}>
              <strong>{drawing.statement}</strong>
            </p>
            <span className={styles.zoom}>
              <button type="button" aria-label="Smaller" disabled={closer <= 1} onClick={() => setCloser(closer / 1.5)}>
                <span aria-hidden="true">−</span>
              </button>
              <button
                type="button"
                aria-label="Larger"
                disabled={closer >= closest}
                onClick={() => setCloser(closer * 1.5)}
              >
                <span aria-hidden="true">+</span>
              </button>
            </span>
          </div>
          <Template drawing={drawing} closer={closer} />
          <p className={styles.about}>
            Sheet {drawing.sheetWords}; panel {drawing.sizeWords}. Bed behind it up to {lengths.text(bedMax)}.{' '}
            {drawing.levelLine.setOut} {drawing.plumbDatum.setOut}
          </p>
        </Card>
        <Edges drawing={drawing} />
        <Holes drawing={drawing} />
      </div>
      <div className={styles.beside}>
        <Problems shown={panel} onShow={show} />
        <Downloads job={job} result={result} drawing={drawing} view={view} />
        <Callout weight="warn">
          <p>
            Cutting throws dust and chips: wear eye, ear and breathing protection, cut outdoors or with extraction, and
            keep saws and leads dry. Have old walls checked for asbestos and lead before they are sanded or opened.
            Local codes come first.
          </p>
        </Callout>
        <FitForm panel={panel} />
        <AlcovePane picked={panel} onPick={show} />
      </div>
    </div>
  );
}
