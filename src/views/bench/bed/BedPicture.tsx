import { useState } from 'react';
import type { Job, PanelName, Result } from '../../../core';
import { awayGradient, BedView, contourSteps, fittingStep, scaleRange } from '../../../scene';
import { FactorSlider, panelTitle, useCalm, useDrawing } from '../../alcove';
import { type Lengths, useLengths } from '../../parts';
import styles from './bed.module.css';

/** The walls in 3D, painted by the thickness of the bed on them, with a scale. */
export function BedPicture({ panel, job, result }: { panel: PanelName; job: Job; result: Result }) {
  const lengths = useLengths();
  const calm = useCalm();
  const factor = useDrawing((state) => state.factor);
  const [reset, setReset] = useState(0);
  const most = Math.max(...Object.values(result.bedding).map(({ thickest }) => thickest.value - job.fit.bed));
  const step = fittingStep(Math.max(most, contourSteps[lengths.unit][0]!), lengths.unit);
  const range = scaleRange(most, step);
  return (
    <figure className={styles.picture} aria-label="The bed in 3D">
      <div className={styles.stage} data-testid="bed">
        <BedView
          {...{ result, job, panel, range, factor, lengths, calm, reset }}
          interval={step}
          description={`The walls painted by how thick the bed on them is, a contour line each ${lengths.fine(step)} over the even bed of ${lengths.fine(job.fit.bed)}; the ${panelTitle[panel].toLowerCase()} with its thickest place and its shims. The figures below say the same in words.`}
        />
        <button type="button" className={styles.reset} onClick={() => setReset((count) => count + 1)}>
          First view
        </button>
      </div>
      <Scale even={job.fit.bed} {...{ range, step, lengths }} />
      <div className={styles.controls}>
        <FactorSlider label="Shape drawn" />
      </div>
    </figure>
  );
}

function Scale({ even, range, step, lengths }: { even: number; range: number; step: number; lengths: Lengths }) {
  const count = Math.round(range / step);
  const every = count > 3 ? Math.ceil(count / 2) : 1;
  const ticks = Array.from({ length: count + 1 }, (_, i) => i);
  return (
    <div
      className={styles.scale}
      role="img"
      aria-label={`Scale: from the even bed of ${lengths.fine(even)} to ${lengths.fine(even + range)}, a line each ${lengths.fine(step)}; hatched where the ± is wider than a step`}
    >
      <div className={styles.ends} aria-hidden="true">
        <span>even bed</span>
        <span>thicker →</span>
      </div>
      <div className={styles.colours} style={{ background: awayGradient('to right') }} />
      <ol className={styles.ticks} aria-hidden="true">
        {ticks.map((tick) => (
          <li key={tick}>
            {(tick % every === 0 || tick === count) && <span>{lengths.fine(even + tick * step)}</span>}
          </li>
        ))}
      </ol>
      <p className={styles.key} aria-hidden="true">
        <span className={styles.hatch} /> ± wider than a step
      </p>
    </div>
  );
}
