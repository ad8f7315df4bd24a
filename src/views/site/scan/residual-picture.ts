import type { ResidualMap } from '../../../core';

/** A block of a picture of residuals: its place in blocks from the left and the top, and how far it is off. */
export interface Block {
  column: number;
  row: number;
  /** mm, towards the room; null where the scan saw nothing */
  value: number | null;
  /** 1 too near, −1 too far, 0 where its ± does not tell it from nothing */
  sign: 1 | -1 | 0;
}

export interface ResidualPicture {
  columns: number;
  rows: number;
  blocks: Block[];
}

/** A block stands out when it is off by more than so many of its standard deviations. */
const STANDS_OUT = 3;
const standsOut = (off: number, sd: number, least: number): boolean => Math.abs(off) > Math.max(least, STANDS_OUT * sd);

/**
 * The residuals of a surface as they are seen from the room: on walls up is up, and the left wall's station grows to the
 * left; the rim is seen from above, its front below.
 * @param least what is off by less stands out nowhere, mm
 */
export function residualPicture(
  surface: 'back' | 'left' | 'right' | 'rim',
  { columns, value, sd }: ResidualMap,
  least: number,
): ResidualPicture {
  const rows = value.length / columns;
  const blocks = value.map((each, k): Block => {
    const [along, up] = [k % columns, Math.floor(k / columns)];
    const out = each !== null && standsOut(each, sd[k]!, least);
    return {
      column: surface === 'left' ? columns - 1 - along : along,
      row: surface === 'rim' ? up : rows - 1 - up,
      value: each,
      sign: out ? (each > 0 ? 1 : -1) : 0,
    };
  });
  return { columns, rows, blocks };
}

/** Where and by how much a surface is off most, of the blocks that stand out; null where none does. */
export function worstBlock(map: ResidualMap, least: number): { at: number; height: number; value: number } | null {
  let worst = -1;
  map.value.forEach((each, k) => {
    if (each === null || !standsOut(each, map.sd[k]!, least)) return;
    if (worst < 0 || Math.abs(each) > Math.abs(map.value[worst]!)) worst = k;
  });
  return worst < 0
    ? null
    : {
        at: map.from[0] + (worst % map.columns) * map.size,
        height: map.from[1] + Math.floor(worst / map.columns) * map.size,
        value: map.value[worst]!,
      };
}
