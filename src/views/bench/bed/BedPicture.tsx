import { useState } from 'react';
import type { Job, PanelName, Result } from '../../../core';
import { awayGradient, BedView, contourSteps, fittingStep, scaleRange } from '../../../scene';
import { FactorSlider, panelTitle, useCalm, useDrawing } from '../../alcove';
import { ScaleBar, ticksOf } from '../../heat';
import { ArrowRight, useLengths } from '../../parts';
import styles from './bed.module.css';

/** The walls in 3D, painted by the thickness of the bed on them, with a scale. */
export function BedPicture({ panel, job, result }: { panel: PanelName; job: Job; result: Result }) {
  const lengths = useLengths();
  const calm = useCalm();
  const factor = useDrawing((state) => state.factor);
  const [reset, setReset] = useState(0);
  const even = job.fit.bed;
  const most = Math.max(...Object.values(result.bedding).map(({ thickest }) => thickest.value - even));
  const step = fittingStep(Math.max(most, contourSteps[lengths.unit][0]!), lengths.unit);
  const range = scaleRange(most, step);
  return (
    <figure className={styles.picture} aria-label="The bed in 3D">
      <div className={styles.stage} data-testid="bed">
        <BedView
          {...{ result, job, panel, range, factor, lengths, calm, reset }}
          interval={step}
          description={`The walls painted by how thick the bed on them is, a contour line each ${lengths.fine(step)} over the even bed of ${lengths.fine(even)}; the ${panelTitle[panel].toLowerCase()} with its thickest place and its shims. The figures below say the same in words.`}
        />
        <button type="button" className={styles.reset} onClick={() => setReset((count) => count + 1)}>
          First view
        </button>
      </div>
      <ScaleBar
        label={`Scale: from the even bed of ${lengths.fine(even)} to ${lengths.fine(even + range)}, a line each ${lengths.fine(step)}; hatched where the ± is wider than a step`}
        ends={[
          'even bed',
          <>
            thicker <ArrowRight />
          </>,
        ]}
        colours={awayGradient('to right')}
        ticks={ticksOf(0, Math.round(range / step), (tick) => lengths.fine(even + tick * step))}
        hatched="± wider than a step"
      />
      <div className={styles.controls}>
        <FactorSlider label="Shape drawn" />
      </div>
    </figure>
  );
}
