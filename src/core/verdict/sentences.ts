import type { WallName } from '../job-file';
import { type DisplayUnit, formatLength } from '../length';
import { Z_95 } from '../reliability';
import type { EdgeRunOut, FigureName, JudgedFigure } from './report';
import { limitWords, listed, measured } from './words';

const TOO_UNCERTAIN = 'too close to tell with this ±; read it again, or treat it as beyond';

/** What a wall's figure is, its limit beside it, with no stop, and what to do about it. */
export function figureWords(
  figure: JudgedFigure,
  behind: string,
  unit: DisplayUnit,
): { finding: string; advice: string } {
  const amount = measured(figure, unit);
  const limit = figure.limit === null ? '' : ` (${limitWords(figure.limit, unit)})`;
  const advised = (finding: string, advice: string) => ({
    finding: `${finding}${limit}`,
    advice: figure.judgement === 'beyond' ? advice : TOO_UNCERTAIN,
  });
  const inward = figure.value > 0;
  switch (figure.figure) {
    case 'plumb':
      return advised(
        `Leans ${inward ? 'into' : 'out of'} the room by ${amount} over ${formatLength(figure.over, { unit })}`,
        'scribe the panels that meet it',
      );
    case 'twist':
      return advised(`One corner ${amount} off the plane of the other three ${behind}`, 'shim or skim before panels');
    default: {
      const way = figure.figure === 'bow-up' ? 'up and down' : 'side to side';
      return advised(
        `${inward ? 'Hollow' : 'Hump'} of ${amount} ${way} ${behind}`,
        inward ? 'shim or skim before panels' : 'take it down, or shim the rest out to it, before panels',
      );
    }
  }
}

/** What of a panel has to be cut to its walls; none where its edges can be cut straight and square. */
export function panelSentence(
  wall: WallName,
  runOuts: readonly EdgeRunOut[],
  taper: { value: number; sd: number },
  unit: DisplayUnit,
): string[] {
  const out = runOuts.filter(({ judgement }) => judgement !== 'within');
  if (out.length === 0) return [];
  const upright = (each: EdgeRunOut): boolean => each.edge !== 'bottom' && each.judgement === 'beyond';
  if (Math.abs(taper.value) <= Z_95 * taper.sd || !out.some(upright))
    return out.map((edge) => edgeSentence(edge, unit));
  const wider = taper.value > 0 ? 'top' : 'bottom';
  return [
    `The ${wall} panel tapers ${measured(taper, unit)} over its height, wider at the ${wider}: scribe.`,
    ...out.filter((each) => !upright(each)).map((edge) => edgeSentence(edge, unit)),
  ];
}

const edgeSentence = (out: EdgeRunOut, unit: DisplayUnit): string =>
  `Its ${out.edge} edge runs ${measured(out, unit)} out of ${out.edge === 'bottom' ? 'level' : 'plumb'}: ${
    out.judgement === 'beyond' ? 'scribe' : 'leave it long and scribe on the dry fit'
  }.`;

const readings: Record<FigureName, string> = {
  plumb: 'plumb (hang a plumb line, two gaps or more)',
  'bow-up': 'hollow or hump up and down (a third gap on the plumb line, or a straightedge upright)',
  'bow-across': 'hollow or hump side to side (a straightedge held level)',
  twist: 'twist (plumb gaps in two places)',
  square: 'square (two sides and the diagonal between them, or an angle finder)',
  'level-along': 'rim left to right (drops from the level line)',
  'level-across': 'rim back to front (drops along the side walls)',
};

export const notMeasured = (figures: readonly FigureName[]): string =>
  `Not measured: ${listed(figures.map((figure) => readings[figure]))}.`;
