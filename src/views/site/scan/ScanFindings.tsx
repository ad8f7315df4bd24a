import type { ScanFinding, ScanSurfaceFinding } from '../../../core';
import { useSessionState } from '../../../job';
import { scanAssumedWords, scanSurfaceLines, scanSurfaceNames } from '../../../output';
import { contourSteps, fittingStep, scaleGradient, scaleRange } from '../../../scene';
import { ScaleBar, ticksOf } from '../../heat';
import { ArrowLeft, ArrowRight, Callout, type Lengths, useLengths } from '../../parts';
import { ResidualFigure } from './ResidualFigure';
import styles from './scan-findings.module.css';

/** What a scan in the job showed of each surface, how well, and where it does not fit. */
export function ScanFindings({ of }: { of: string }) {
  const finding = useSessionState(({ result }) => result?.adjustment.scans.find(({ id }) => id === of));
  const scale = useSessionState(({ result }) => result?.adjustment.scale ?? 1);
  const lengths = useLengths();
  if (!finding) return null;
  const { range, step } = scaleOf(finding, lengths);
  return (
    <div className={styles.findings}>
      {scale > 1 && (
        <Callout weight="bad">
          Scan and readings by hand disagree: by {scale.toFixed(1)} times what they are good for, and every ± is as much
          wider. See that the scan shows this alcove, and take again what stands out among the readings.
        </Callout>
      )}
      <ul className={styles.surfaces} aria-label="What the scan shows">
        {finding.surfaces.map((surface) => (
          <SurfaceFound key={surface.surface} {...{ surface, range, lengths }} least={step / 2} />
        ))}
      </ul>
      <ScaleBar
        label={`Scale of what is left after the shape: ${lengths.fine(range)} either way; a plus or a minus where it stands out, hatched where the scan saw nothing`}
        ends={[
          <>
            <ArrowLeft /> farther than the shape, −
          </>,
          <>
            + nearer than the shape <ArrowRight />
          </>,
        ]}
        colours={scaleGradient('to right')}
        ticks={ticksOf(-Math.round(range / step), Math.round(range / step), (tick) =>
          tick === 0 ? 'fits' : `${tick > 0 ? '+' : '−'}${lengths.fine(Math.abs(tick) * step)}`,
        )}
        hatched="not seen"
      />
      <p className={styles.about}>
        A floor in the scan tells which way is up and how high the level line lies; nothing is cut to it, so it has no
        line here.
      </p>
    </div>
  );
}

function SurfaceFound({
  surface,
  range,
  least,
  lengths,
}: {
  surface: ScanSurfaceFinding;
  range: number;
  least: number;
  lengths: Lengths;
}) {
  const { residuals, against } = surface;
  const assumed = scanAssumedWords(surface);
  const drawn = surface.surface === 'front.left' || surface.surface === 'front.right' ? null : surface.surface;
  return (
    <li>
      <h3>{scanSurfaceNames[surface.surface]}</h3>
      <dl className={styles.lines}>
        {scanSurfaceLines(surface, lengths).map(({ name, words }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
      {assumed !== '' && <Callout weight="warn">Assumed, not measured: {assumed}.</Callout>}
      {against.length > 0 && (
        <Callout weight="bad">
          {against.length === 1 ? 'A reading by hand disagrees' : 'Readings by hand disagree'}: {against.join(', ')}.
          Measure again.
        </Callout>
      )}
      {drawn !== null && residuals !== null && (
        <ResidualFigure surface={drawn} {...{ residuals, range, least, lengths }} />
      )}
    </li>
  );
}

/** One scale for all surfaces, to the largest that is left. */
function scaleOf({ surfaces }: ScanFinding, { unit }: Lengths): { range: number; step: number } {
  const all = surfaces.flatMap(({ residuals }) => residuals?.value ?? []);
  const largest = all.reduce<number>((most, each) => Math.max(most, Math.abs(each ?? 0)), 0);
  const step = largest === 0 ? contourSteps[unit][0]! : fittingStep(largest, unit);
  return { step, range: scaleRange(largest, step) };
}
