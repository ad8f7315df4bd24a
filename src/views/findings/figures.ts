import { type Result, type Side, type WallName, Z_95 } from '../../core';
import type { Lengths } from '../parts';

/** A figure about the alcove: what, how much and its ± at 95 %. */
export interface Figure {
  name: string;
  words: string;
  plusMinus: string;
}

type Findings = Pick<Result, 'walls' | 'corners' | 'rim' | 'adjustment'>;

interface Amount {
  name: string;
  value: number;
  sd: number;
  /** words for a positive and a negative value, and for one that its ± does not tell from zero */
  words: readonly [positive: string, negative: string, none: string];
  /** the adjusted parameter that it comes from, such as `left.plumb` */
  parameter: string;
}

const within = (value: number, sd: number): boolean => Math.abs(value) <= Z_95 * sd;

const isAssumed = ({ adjustment }: Findings, parameter: string): boolean =>
  adjustment.parameters.some(({ name, assumed }) => name === parameter && assumed);

function lengthFigure(result: Findings, lengths: Lengths, { name, value, sd, words, parameter }: Amount): Figure {
  const plusMinus = lengths.plusMinus(sd);
  if (isAssumed(result, parameter)) return { name, words: 'not measured', plusMinus };
  if (within(value, sd)) return { name, words: words[2], plusMinus };
  return { name, words: `${value > 0 ? words[0] : words[1]} ${lengths.fine(Math.abs(value))}`, plusMinus };
}

/** Height over which the walls are judged, mm. */
export const panelledHeight = ({ rim }: Pick<Result, 'rim'>, top: number): number => {
  const all = rim.value.flat();
  return top - all.reduce((sum, value) => sum + value, 0) / all.length;
};

/** @param height over which the wall is judged, mm */
export function wallFigures(result: Findings, wall: WallName, height: number, lengths: Lengths): Figure[] {
  const { plumb, plumbSd, bow, bowSd, bowAcross, bowAcrossSd, twist, twistSd } = result.walls[wall];
  const metres = height / 1000;
  const amounts: Omit<Amount, 'parameter'>[] = [
    { name: 'Plumb', value: plumb * metres, sd: plumbSd * metres, words: ['top leans in', 'top leans back', 'plumb'] },
    { name: 'Bow, up and down', value: bow, sd: bowSd, words: ['hollow', 'hump', 'straight'] },
    { name: 'Bow, side to side', value: bowAcross, sd: bowAcrossSd, words: ['hollow', 'hump', 'straight'] },
    { name: 'Twist', value: twist, sd: twistSd, words: ['one corner off by', 'one corner off by', 'none'] },
  ];
  const parameters = ['plumb', 'bowUp', 'bowAcross', 'twist'];
  return amounts.map((amount, i) =>
    lengthFigure(result, lengths, { ...amount, parameter: `${wall}.${parameters[i]}` }),
  );
}

export function cornerFigures(result: Findings, side: Side, lengths: Lengths): Figure[] {
  const assumed = isAssumed(result, `${side}.square`);
  return result.corners[side].angle.map(({ height, value, sd }) => {
    const off = value - 90;
    const angle = `${value.toFixed(2)}°`;
    const judged = within(off, sd) ? `${angle}, square` : `${angle}, ${off > 0 ? 'open' : 'closed'}`;
    return {
      name: Math.abs(height) < 1 ? 'Level line' : `${lengths.text(Math.abs(height))} ${height > 0 ? 'above' : 'below'}`,
      words: assumed ? 'not measured' : judged,
      plusMinus: `±${(Z_95 * sd).toFixed(2)}°`,
    };
  });
}

export function rimFigures(result: Findings, lengths: Lengths): Figure[] {
  const { x, z, outOfLevel } = result.rim;
  const { along, alongSd, across, acrossSd } = outOfLevel;
  const metres = (line: readonly number[]) => (line[line.length - 1]! - line[0]!) / 1000;
  return [
    lengthFigure(result, lengths, {
      name: 'Left to right',
      value: along * metres(x),
      sd: alongSd * metres(x),
      words: ['right end higher by', 'left end higher by', 'level'],
      parameter: 'rim.levelAlong',
    }),
    lengthFigure(result, lengths, {
      name: 'Back to front',
      value: across * metres(z),
      sd: acrossSd * metres(z),
      words: ['front higher by', 'back higher by', 'level'],
      parameter: 'rim.levelAcross',
    }),
  ];
}

export const wallTitle: Record<WallName, string> = { back: 'Back wall', left: 'Left wall', right: 'Right wall' };
