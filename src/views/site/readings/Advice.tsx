import type { NextReading } from '../../../core';
import { useSessionState } from '../../../job';
import { Callout, type Lengths, useLengths } from '../../parts';
import { kindWords } from './kinds';
import styles from './readings.module.css';

/** The reading that doubts are strongest about, and the one to take next. */
export function Advice({ onTake }: { onTake: (advice: NextReading) => void }) {
  const adjustment = useSessionState(({ result }) => result?.adjustment);
  const lengths = useLengths();
  if (!adjustment) return null;
  const { suspect, next } = adjustment;
  const doubted = suspect && adjustment.readings.find(({ id }) => id === suspect.id);
  return (
    <div className={styles.advice}>
      {doubted && (
        <Callout weight="bad">
          <p>
            <strong>
              Re-measure {doubted.id.split('/')[0]}, {kindWords[doubted.kind].name.toLowerCase()}.
            </strong>{' '}
            It does not agree with the others.
          </p>
        </Callout>
      )}
      {next && (
        <Callout weight="plain">
          <p>
            <strong>Best reading to take next:</strong> {kindWords[next.kind].name.toLowerCase()},{' '}
            {placeWords(next, lengths)}. It would bring the least certain cut edge from{' '}
            {lengths.plusMinus(next.sdBefore)} to {lengths.plusMinus(next.sdAfter)}.
          </p>
          <button type="button" className={styles.take} onClick={() => onTake(next)}>
            Enter it
          </button>
        </Callout>
      )}
    </div>
  );
}

function placeWords({ wall, side, height, at, kind }: NextReading, lengths: Lengths): string {
  const level =
    Math.abs(height) < 1
      ? 'at the level line'
      : `${lengths.text(Math.abs(height))} ${height > 0 ? 'above' : 'below'} the level line`;
  const along =
    at === null
      ? null
      : wall === 'back'
        ? `${lengths.text(Math.abs(at))} ${at >= 0 ? 'right' : 'left'} of the plumb line`
        : `${lengths.text(at)} out from the back wall`;
  const where = side ? `${side} corner` : wall ? `${wall} wall` : null;
  return [where, kind === 'plumb' || kind === 'tape-to-rim' ? null : level, along].filter(Boolean).join(', ');
}
