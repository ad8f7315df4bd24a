import { type AdjustmentReport, type Job, type NextReading, type Suspect, Z_95 } from '../../core';
import { lengthsOf } from '../drawing';
import { readingWords, unreadWords, valueWords } from './readingWords';

/** What the survey says about itself, in sentences: suspects first, then what to take next and what is assumed. */
export function readingAdvice(job: Job, report: AdjustmentReport): string[] {
  const { suspects, next, assumed, beyondPrior, uneven, s0, dof, scale } = report;
  return [
    ...suspects.map((suspect) => suspectWords(suspect, job)),
    ...(next ? [nextWords(next, job)] : []),
    ...(assumed.length > 0 ? [`Assumed, not measured: ${assumed.join('; ')}.`] : []),
    ...(beyondPrior.length > 0
      ? [`Farther out than walls usually are, so worth a second look: ${beyondPrior.join('; ')}.`]
      : []),
    ...uneven.map(
      (wall) => `The ${wall} wall is too uneven for one smooth curve; it follows its readings more closely.`,
    ),
    s0 === null
      ? 'No reading checks another one: a wrong reading would not show.'
      : `Readings agree within ${s0.toFixed(1)} times what their instruments promise (${dof} spare ${dof === 1 ? 'observation' : 'observations'}).`,
    ...(scale > 1
      ? [`Every ± is widened ${scale.toFixed(1)} times, because the readings agree less well than that.`]
      : []),
  ];
}

function suspectWords(
  { id, kind, observed, fits, located, alternatives, orShape, slip, ifOff }: Suspect,
  job: Job,
): string {
  const { what, where } = readingWords(id, job);
  const value = (figure: number) => valueWords(kind, figure, job);
  const which = located
    ? `reads ${value(observed)}, the others point to ${value(fits)}`
    : `reads ${value(observed)}, but the readings cannot tell which one is wrong${alternatives.length > 0 ? `: it may as well be ${alternatives.join(', ')}` : ''}`;
  const sentences = [`Re-measure ${id} (${what}: ${where}): it ${which}${slip ? ` – ${slip.words}` : ''}.`];
  if (orShape.length > 0) sentences.push(`Or it is right, and this is so: ${orShape.join('; ')}.`);
  if (ifOff) {
    const { move } = ifOff;
    sentences.push(
      `Without it the ${move.panel} panel’s ${move.edge} edge moves by ${lengthsOf(job).fine(Math.abs(move.by)).text}.`,
    );
  }
  return sentences.join(' ');
}

function nextWords({ reading, sdBefore, sdAfter }: NextReading, job: Job): string {
  const { what, where } = unreadWords(reading, job);
  const [before, after] = [millimetres95(sdBefore), millimetres95(sdAfter)];
  const gain = before === after ? '' : ` The widest ± on a cut edge goes from ${before} to ${after}.`;
  return `Worth taking next: ${what}, ${where}.${gain}`;
}

/** Told in mm whatever the job is shown in: a gain is smaller than any fraction on a tape. */
const millimetres95 = (sd: number): string => `±${(Z_95 * sd).toFixed(1)} mm`;
