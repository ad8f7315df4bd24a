import type { NextReading, ReadingKind } from '../../../core';
import { useSession, useSessionState } from '../../../job';
import { Callout, type Lengths, useLengths } from '../../parts';
import styles from '../rows.module.css';
import { kindWords } from './kinds';
import { SuspectWords } from './SuspectWords';

interface AdviceProps {
  onTake: (advice: NextReading) => void;
  onShow: (id: string, kind: ReadingKind) => void;
}

/** The readings that look wrong, and the one to take next. */
export function Advice({ onTake, onShow }: AdviceProps) {
  const adjustment = useSessionState(({ result }) => result?.adjustment);
  const lengths = useLengths();
  const { choose } = useSession().draft.getState();
  if (!adjustment) return null;
  const { suspects, next } = adjustment;
  return (
    <div className={styles.advice}>
      {suspects.map((suspect) => {
        const [reading = suspect.id] = suspect.id.split('/');
        return (
          <Callout key={suspect.id} weight="bad">
            <SuspectWords suspect={suspect} />
            <div className={styles.restRow}>
              <button type="button" onClick={() => onShow(reading, suspect.kind)}>
                Go to {reading}
              </button>
              {suspect.ifOff && (
                <button type="button" onClick={() => choose(['readings', reading, 'off'], true)}>
                  Leave it out
                </button>
              )}
            </div>
          </Callout>
        );
      })}
      {next && (
        <Callout weight="plain">
          <p>
            <strong>Best reading to take next:</strong> {kindWords[next.kind].name.toLowerCase()},{' '}
            {placeWords(next, lengths)}. {gainWords(next, lengths)}
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
        ? Math.abs(at) < 1
          ? 'at the plumb line'
          : `${lengths.text(Math.abs(at))} ${at > 0 ? 'right' : 'left'} of the plumb line`
        : `${lengths.text(at)} out from the back wall`;
  const where = side ? `${side} corner` : wall ? `${wall} wall` : null;
  return [where, kind === 'plumb' || kind === 'tape-to-rim' ? null : level, along].filter(Boolean).join(', ');
}

function gainWords({ sdBefore, sdAfter }: NextReading, lengths: Lengths): string {
  const [before, after] = [lengths.plusMinus(sdBefore), lengths.plusMinus(sdAfter)];
  if (before === after) return 'It would make the cut edges more certain.';
  return `It would bring the least certain cut edge from ${before} to ${after}.`;
}
