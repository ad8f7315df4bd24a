import { type Suspect, Z_95 } from '../../../core';
import { type Lengths, useLengths } from '../../parts';
import { kindWords } from './kinds';

type LeftOut = NonNullable<Suspect['ifOff']>;

const valueWords = (suspect: Suspect, value: number, lengths: Lengths): string =>
  suspect.kind === 'angle' ? `${value.toFixed(1)}°` : lengths.text(value);

/** What is wrong with a reading that does not agree, what it may have been, and what leaving it out would do. */
export function SuspectWords({ suspect }: { suspect: Suspect }) {
  const lengths = useLengths();
  const { id, kind, observed, fits, fitsSd, located, alternatives, orShape, slip, ifOff } = suspect;
  const plusMinus = kind === 'angle' ? `±${(Z_95 * fitsSd).toFixed(1)}°` : lengths.plusMinus(fitsSd);
  return (
    <>
      <p>
        <strong>Re-measure this one:</strong> {id}, {kindWords[kind].name.toLowerCase()}. It reads{' '}
        {valueWords(suspect, observed, lengths)}; the others point to {valueWords(suspect, fits, lengths)} {plusMinus}
        {slip ? ` (${slip.words})` : ''}.
      </p>
      {!located && (
        <p>
          The readings cannot tell which is wrong: this one
          {alternatives.length > 0 ? `, ${alternatives.join(', ')}` : ''}. Measure one more to find out.
        </p>
      )}
      {orShape.length > 0 && <p>If it is right, it shows {orShape.join(' or ')}.</p>}
      {ifOff && <p>{leftOutWords(ifOff, lengths)}</p>}
    </>
  );
}

function leftOutWords({ move, worst95Before, worst95After }: LeftOut, lengths: Lengths): string {
  const moves = `Left out, a cut edge moves by ${lengths.fine(Math.abs(move.by))} (${move.panel} panel, ${move.edge} edge)`;
  const [before, after] = [worst95Before, worst95After].map((half) => lengths.plusMinus(half / Z_95));
  return before === after ? `${moves}.` : `${moves}, and the least certain one goes from ${before} to ${after}.`;
}
