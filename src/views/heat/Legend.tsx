import { scaleGradient } from '../../scene';
import { ArrowLeft, ArrowRight, type Lengths } from '../parts';
import { ScaleBar, ticksOf } from './ScaleBar';

interface LegendProps {
  /** mm at either end */
  range: number;
  step: number;
  lengths: Lengths;
}

/** The scale of a wall's deviation, to both sides of true. */
export function Legend({ range, step, lengths }: LegendProps) {
  const count = Math.round(range / step);
  return (
    <ScaleBar
      label={`Scale: ${lengths.fine(range)} either way, a line each ${lengths.fine(step)}; hatched where assumed, or where the ± is wider than a step`}
      ends={[
        <>
          <ArrowLeft /> away from the room
        </>,
        <>
          into the room <ArrowRight />
        </>,
      ]}
      colours={scaleGradient('to right')}
      ticks={ticksOf(-count, count, (tick) =>
        tick === 0 ? 'true' : `${tick > 0 ? '+' : '−'}${lengths.fine(Math.abs(tick) * step)}`,
      )}
      hatched="assumed, or ± wider than a step"
    />
  );
}
