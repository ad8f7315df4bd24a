import { useMemo, useState } from 'react';
import type { Job, PanelName, Result } from '../../core';
import { panelDrawing, type View } from '../../output';
import { AlcovePane } from '../alcove';
import { Problems } from '../findings';
import { useLengths } from '../parts';
import { goTo } from '../place';
import styles from './bench.module.css';
import { CuttingCautions } from './CuttingCautions';
import { Downloads } from './Downloads';
import { Edges } from './Edges';
import { FitForm } from './FitForm';
import { Holes } from './Holes';
import { panelSketch } from './sketch';
import { TemplateCard } from './TemplateCard';
import { TryFit } from './TryFit';
import { Unfolding } from './Unfolding';

const views: readonly (readonly [View, string])[] = [
  ['face', 'Face up'],
  ['back', 'Back up'],
];

/** A panel at the saw: its flat template, marks, holes and files. */
export function PanelBench({ panel, job, result }: { panel: PanelName; job: Job; result: Result }) {
  const lengths = useLengths();
  const [view, setView] = useState<View>('face');
  const drawing = useMemo(
    () => panelDrawing(result.panels[panel], job, result.problems, view, result.advice),
    [result, job, panel, view],
  );
  const sketch = useMemo(() => panelSketch(drawing), [drawing]);
  const show = (item: string) => goTo({ name: 'bench', item });
  return (
    <div className={styles.bench}>
      <div className={styles.sheet}>
        <TemplateCard title={drawing.title} statement={drawing.statement} {...{ sketch, view, views }} onView={setView}>
          <p className={styles.about}>
            Sheet {drawing.sheetWords}; panel {drawing.sizeWords}. Bed behind it up to{' '}
            {lengths.text(result.panels[panel].bedMax)}. {drawing.levelLine.setOut} {drawing.plumbDatum.setOut}
          </p>
        </TemplateCard>
        <Edges drawing={drawing} />
        <Holes drawing={drawing} />
        <Unfolding panel={result.panels[panel]} job={job} />
        <TryFit piece={`panels.${panel}`} job={job} result={result} />
      </div>
      <div className={styles.beside}>
        <Problems shown={panel} onShow={show} />
        <Downloads job={job} result={result} drawing={drawing} view={view} />
        <CuttingCautions />
        <FitForm panel={panel} />
        <AlcovePane picked={panel} onPick={show} />
      </div>
    </div>
  );
}
