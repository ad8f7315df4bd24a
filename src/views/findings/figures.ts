import { type Result, type Side, type WallName, type WallReport, Z_95 } from '../../core';
import type { Lengths } from '../parts';

/** A figure about the alcove: what, how much and its ± at 95 %. */
export interface Figure {
  name: string;
  words: string;
  plusMinus: string;
}

const within = (value: number, sd: number): boolean => Math.abs(value) <= Z_95 * sd;

/** `words[0]` for a positive value, `words[1]` for a negative one, `none` where the ± reaches zero. */
function turned(
  value: number,
  sd: number,
  lengths: Lengths,
  words: readonly [string, string],
  none: string,
): Pick<Figure, 'words' | 'plusMinus'> {
  const plusMinus = lengths.plusMinus(sd);
  if (within(value, sd)) return { words: none, plusMinus };
  return { words: `${value > 0 ? words[0] : words[1]} ${lengths.fine(Math.abs(value))}`, plusMinus };
}

/** Height over which the walls are judged, mm. */
export const panelledHeight = ({ rim }: Result, top: number): number => {
  const all = rim.value.flat();
  return top - all.reduce((sum, value) => sum + value, 0) / all.length;
};

export function wallFigures(wall: WallReport, height: number, lengths: Lengths): Figure[] {
  const over = height / 1000;
  return [
    {
      name: 'Plumb',
      ...turned(wall.plumb * over, wall.plumbSd * over, lengths, ['top leans in', 'top leans back'], 'plumb'),
    },
    { name: 'Bow, up and down', ...turned(wall.bow, wall.bowSd, lengths, ['hollow', 'hump'], 'straight') },
    { name: 'Bow, side to side', ...turned(wall.bowAcross, wall.bowAcrossSd, lengths, ['hollow', 'hump'], 'straight') },
    { name: 'Twist', ...turned(Math.abs(wall.twist), wall.twistSd, lengths, ['one corner off by', ''], 'none') },
  ];
}

export function cornerFigures(corner: Result['corners'][Side], lengths: Lengths): Figure[] {
  return corner.angle.map(({ height, value, sd }) => {
    const off = value - 90;
    const angle = `${value.toFixed(2)}°`;
    return {
      name: Math.abs(height) < 1 ? 'Level line' : `${lengths.text(Math.abs(height))} ${height > 0 ? 'above' : 'below'}`,
      words: within(off, sd) ? `${angle}, square` : `${angle}, ${off > 0 ? 'open' : 'closed'}`,
      plusMinus: `±${(Z_95 * sd).toFixed(2)}°`,
    };
  });
}

export function rimFigures({ rim }: Result, lengths: Lengths): Figure[] {
  const { along, alongSd, across, acrossSd } = rim.outOfLevel;
  const length = (rim.x[rim.x.length - 1]! - rim.x[0]!) / 1000;
  const depth = (rim.z[rim.z.length - 1]! - rim.z[0]!) / 1000;
  return [
    {
      name: 'Left to right',
      ...turned(along * length, alongSd * length, lengths, ['right end higher by', 'left end higher by'], 'level'),
    },
    {
      name: 'Back to front',
      ...turned(across * depth, acrossSd * depth, lengths, ['front higher by', 'back higher by'], 'level'),
    },
  ];
}

export const wallTitle: Record<WallName, string> = { back: 'Back wall', left: 'Left wall', right: 'Right wall' };
