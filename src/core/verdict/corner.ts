import type { CornerReport } from '../diagnose';
import type { Job, Side } from '../job-file';
import { formatLength } from '../length';
import { assumedIn, type Doubts } from './doubts';
import type { Judgement } from './judge';
import type { JudgedFigure, PlaceVerdict } from './report';
import { notMeasured } from './sentences';
import { limitsOf } from './tolerances';
import { judged } from './wallFigures';
import { limitWords, measured } from './words';

/**
 * A corner against square, at each height that its angle is given for: how far the side wall's front edge stands off a
 * line square to the back wall, over the side wall's depth. Open is positive.
 * @param depth of the side wall, mm
 */
export function cornerVerdict(job: Job, doubts: Doubts, side: Side, report: CornerReport, depth: number): PlaceVerdict {
  const limit = limitsOf(job.tolerances).square(depth);
  const assumed = assumedIn(doubts)(`${side}.square`);
  const degree = Math.PI / 180;
  const figures = report.angle.map(({ value, sd }) => {
    const off = (value - 90) * degree;
    return judged(
      'square',
      { value: depth * Math.tan(off), sd: (depth * sd * degree) / Math.cos(off) ** 2, assumed },
      depth,
      limit,
    );
  });
  if (assumed) return { verdict: 'hold', because: [notMeasured(['square'])], figures };
  const worstOf = (judgement: Judgement) =>
    figures
      .map((figure, i) => ({ figure, height: report.angle[i]!.height }))
      .filter(({ figure }) => figure.judgement === judgement)
      .sort((a, b) => Math.abs(b.figure.value) - Math.abs(a.figure.value))[0];
  const out = worstOf('beyond') ?? worstOf('cannot-tell');
  if (!out) {
    const silent = limit === null;
    return {
      verdict: 'fits',
      because: [silent ? 'These tolerances say nothing about square.' : 'Square within its limit at every height.'],
      figures,
    };
  }
  return { verdict: 'scribe', because: [sentence(out.figure, out.height, job)], figures };
}

function sentence(figure: JudgedFigure, height: number, job: Job): string {
  const unit = job.display;
  const where =
    Math.abs(height) < 1
      ? 'at the level line'
      : `${formatLength(Math.abs(height), { unit })} ${height > 0 ? 'above' : 'below'} the level line`;
  const off = `${figure.value > 0 ? 'Opens' : 'Closes'} by ${measured(figure, unit)} over ${formatLength(figure.over, { unit })}, ${where} (${limitWords(figure.limit ?? 0, unit)})`;
  return figure.judgement === 'beyond'
    ? `${off}: bevel the side panel’s back edge and check trim and shelves against it.`
    : `${off}: too close to tell with this ±; check on the dry fit.`;
}
