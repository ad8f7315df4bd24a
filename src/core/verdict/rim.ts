import type { RimReport } from '../diagnose';
import type { Job } from '../job-file';
import { assumedIn, type Doubts } from './doubts';
import type { JudgedFigure, PlaceVerdict, Verdict } from './report';
import { notMeasured } from './sentences';
import { limitsOf } from './tolerances';
import { worst } from './wall';
import { judged } from './wallFigures';
import { limitWords, measured } from './words';

/**
 * The rim against level, along the back wall and from back to front. Out of level along: the back panel's bottom edge is
 * cut to it. Falling towards the room: water runs over the front, so the base is set right first. Rising towards the
 * front: the side panels' bottom edges are cut to it.
 */
export function rimVerdict(job: Job, doubts: Doubts, { x, z, outOfLevel }: RimReport): PlaceVerdict {
  const { level } = limitsOf(job.tolerances);
  const assumed = assumedIn(doubts);
  const stretch = (of: number[]): number => of.at(-1)! - of[0]!;
  const figure = (name: 'level-along' | 'level-across', slope: number, sd: number, over: number, parameter: string) =>
    judged(
      name,
      { value: (slope * over) / 1000, sd: (sd * over) / 1000, assumed: assumed(parameter) },
      over,
      level(over),
    );
  const { along, alongSd, across, acrossSd } = outOfLevel;
  const figures = [
    figure('level-along', along, alongSd, stretch(x), 'rim.levelAlong'),
    figure('level-across', across, acrossSd, stretch(z), 'rim.levelAcross'),
  ];
  const unread = figures.filter(({ judgement }) => judgement === 'not-measured').map(({ figure: name }) => name);
  const told = figures.filter(({ judgement }) => judgement === 'beyond' || judgement === 'cannot-tell');
  const verdicts: Verdict[] = [
    ...(unread.length > 0 ? (['hold'] as const) : []),
    ...told.map((each): Verdict => (fallsForward(each) ? 'prepare' : 'scribe')),
  ];
  const because = [...(unread.length > 0 ? [notMeasured(unread)] : []), ...told.map((each) => sentence(each, job))];
  if (because.length === 0) {
    because.push(
      level(1000) === null ? 'These tolerances say nothing about level.' : 'Level within its limit both ways.',
    );
  }
  return { verdict: worst(verdicts), because, figures };
}

const fallsForward = ({ figure, value }: JudgedFigure): boolean => figure === 'level-across' && value < 0;

function sentence(figure: JudgedFigure, { display: unit }: Job): string {
  const along = figure.figure === 'level-along';
  const end = along ? (figure.value > 0 ? 'right end' : 'left end') : figure.value > 0 ? 'front' : 'back';
  const off = `The ${end} is higher by ${measured(figure, unit)} (${limitWords(figure.limit ?? 0, unit)})`;
  if (figure.judgement === 'cannot-tell') return `${off}: too close to tell with this ±; read the drops again.`;
  if (along) return `${off}: scribe the back panel’s bottom edge.`;
  return figure.value > 0
    ? `${off}: scribe the side panels’ bottom edges.`
    : `${off}: water runs to the room; have the base set level first.`;
}
