import type { WallReport } from '../diagnose';
import type { Job, WallName } from '../job-file';
import { type DisplayUnit, MM_PER_INCH } from '../length';
import type { Panel } from '../panel';
import { assumedIn, type Doubts, suspectsOn, unmeasuredSizes } from './doubts';
import { runOuts, taperOf } from './panelFigures';
import type { JudgedFigure, Verdict, WallVerdict } from './report';
import { figureWords, notMeasured, panelSentence } from './sentences';
import { limitsOf } from './tolerances';
import { wallFigures } from './wallFigures';
import { listed } from './words';

/**
 * A wall this far out of flat, or out of plumb over its panels, mm (1 in, 1 1/2 in), has something wrong behind it
 * (common practice, no source).
 */
export const GROSSLY_UNEVEN = MM_PER_INCH;
export const GROSSLY_LEANING = 1.5 * MM_PER_INCH;

const ranks: readonly Verdict[] = ['fits', 'scribe', 'prepare', 'hold'];
export const worst = (verdicts: readonly Verdict[]): Verdict =>
  ranks[Math.max(0, ...verdicts.map((verdict) => ranks.indexOf(verdict)))]!;

interface Reason {
  verdict: Verdict;
  words: string;
}

/**
 * A wall before its panel goes on. Hold: something about it is not measured, a reading on it looks wrong, its sheet does
 * not cover it, or it is grossly out. Prepare: hollow, hump or twist beyond the limit, or too close to it to tell.
 * Scribe: out of plumb beyond the limit or too close to tell, or an edge runs out more than its joint takes up. Else the
 * panel fits as cut square.
 */
export function wallVerdict(job: Job, doubts: Doubts, wall: WallName, report: WallReport, panel: Panel): WallVerdict {
  const unit = job.display;
  const figures = wallFigures(wall, report, assumedIn(doubts), limitsOf(job.tolerances));
  const edges = runOuts(panel);
  const taper = taperOf(panel);
  const behind = behindWords(wall, job);
  const reasons: Reason[] = [
    ...holds(job, doubts, wall, panel, figures),
    ...figures.flatMap((figure) => figureReason(figure, behind, unit)),
    ...panelSentence(wall, edges, taper, unit).map((words): Reason => ({ verdict: 'scribe', words })),
  ];
  const sorted = [...reasons].sort((a, b) => ranks.indexOf(b.verdict) - ranks.indexOf(a.verdict));
  return {
    verdict: worst(reasons.map(({ verdict }) => verdict)),
    because:
      sorted.length > 0
        ? sorted.map(({ words }) => words)
        : ['Nothing about it is beyond its limit, and its panel can be cut square.'],
    figures,
    runOuts: edges,
    taper,
  };
}

const behindWords = (wall: WallName, { fit }: Job): string =>
  fit.wetWall === wall ? 'behind the wet wall’s panel' : `behind the ${wall} panel`;

function figureReason(figure: JudgedFigure, behind: string, unit: DisplayUnit): Reason[] {
  const { judgement, value, figure: name } = figure;
  if (judgement === 'within' || judgement === 'not-measured') return [];
  const { finding, advice } = figureWords(figure, behind, unit);
  if (Math.abs(value) >= (name === 'plumb' ? GROSSLY_LEANING : GROSSLY_UNEVEN)) {
    return [
      {
        verdict: 'hold',
        words: `${finding}: find out why first; framing or water damage is put right before anything is set.`,
      },
    ];
  }
  if (judgement === 'no-limit') return [];
  return [{ verdict: name === 'plumb' ? 'scribe' : 'prepare', words: `${finding}: ${advice}.` }];
}

function holds(job: Job, doubts: Doubts, wall: WallName, panel: Panel, figures: JudgedFigure[]): Reason[] {
  const hold = (words: string): Reason => ({ verdict: 'hold', words });
  const sizes = unmeasuredSizes(doubts, wall);
  const unread = figures.filter(({ judgement }) => judgement === 'not-measured');
  const suspects = suspectsOn(doubts, job, wall);
  return [
    ...(suspects.length > 0
      ? [hold(`${listed(suspects)} may be misread: take ${suspects.length > 1 ? 'them' : 'it'} again first.`)]
      : []),
    ...(sizes.length > 0 ? [hold(`Not measured: ${listed(sizes)}.`)] : []),
    ...(unread.length > 0 ? [hold(notMeasured(unread.map(({ figure }) => figure)))] : []),
    ...(panel.gaps.length > 0 ? [hold('The sheet does not cover it; see what keeps the job from being built.')] : []),
  ];
}
