import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import type { JobInput } from '../../../../src/core/job-file';
import { planStock } from '../../../../src/core/layout';
import { makePiece, type Piece } from '../../../../src/core/piece';
import { highsSolver } from '../../../../src/milp';
import { jobWith } from '../../../simulate';

const solve = highsSolver(() => loadHighs());

const length = (id: string, along: number, stock: Piece['stock'] = 'trim'): Piece => {
  const outline: [number, number][] = [
    [0, 0],
    [along, 0],
    [along, 38],
    [0, 38],
  ];
  const bodies = [{ back: outline, face: outline, from: 0, to: 6 }];
  return makePiece({
    id,
    kind: 'top',
    name: id,
    wall: 'back',
    outline,
    thickness: 6,
    bodies,
    axis: 'x',
    edges: [],
    stations: [],
    stock,
    cautions: [],
  });
};

const plan = (trim: Piece[], choices: JobInput['trim'] = {}, kerf = 3) =>
  planStock({ pieces: { trim } }, jobWith([], { trim: { allowance: 6, ...choices }, cutting: { kerf } }), solve);

const FIVE = [
  length('top', 1518),
  length('left top', 745),
  length('left', 1690),
  length('right top', 745),
  length('right', 1690),
];

describe('planStock', () => {
  it('buys the least length, kerf and allowance counted', async () => {
    const result = (await plan(FIVE))!;
    expect(result).toMatchObject({ bought: 4 * 2440, lowerBound: 4 * 2440, optimal: true, unplaced: [] });
    // 1518 + 6 and 745 + 6 share a length, and so do nothing else but the two short ones
    const cuts = result.bars.flatMap(({ cuts }) => cuts.map(({ piece }) => piece));
    expect(cuts.toSorted()).toEqual(['left', 'left top', 'right', 'right top', 'top']);
    for (const bar of result.bars) {
      const used = bar.cuts.reduce((sum, cut) => sum + cut.length, 0);
      expect(used + 3 * bar.cuts.length + bar.left).toBeCloseTo(2440, 6);
    }
    expect(result.waste).toBeCloseTo(1 - (1518 + 2 * 745 + 2 * 1690 + 5 * 6) / (4 * 2440), 9);
  });

  it('mixes stock lengths where that is less', async () => {
    const result = (await plan(FIVE, { stock: [{ length: 2440 }, { length: 1800 }, { length: 3660 }] }))!;
    expect(result.optimal).toBe(true);
    // 1524 + 751 + 3·2 in 2440; 1696 + 3 in 1800 each; 751 left over would take another: 1696·2 + 3·2 in 3660 and so on
    expect(result.bought).toBe(leastLength([1527, 754, 1699, 754, 1699], [2440, 1800, 3660], 3));
  });

  it('lets the last cut run off the end of the stock', async () => {
    expect(
      (await plan([length('a', 1214), length('b', 1214)], { allowance: 0, stock: [{ length: 2431 }] }))!.bought,
    ).toBe(2431);
    expect(
      (await plan([length('a', 1214.1), length('b', 1214)], { allowance: 0, stock: [{ length: 2431 }] }))!.bought,
    ).toBe(4862);
  });

  it('lists what is too long, and what the stock at hand leaves uncut', async () => {
    const long = (await plan([length('a', 2450), length('b', 800)]))!;
    expect(long).toMatchObject({ unplaced: ['a'], bought: 2440 });
    const scarce = (await plan(FIVE, { stock: [{ length: 2440, onHand: 2.9 }] }))!;
    expect(scarce.bars).toHaveLength(2);
    expect(scarce.unplaced).toHaveLength(2);
  });

  it('cuts only trim, and nothing from nothing', async () => {
    expect(await plan([length('corner', 1600, 'angle-strip')])).toEqual({
      bars: [],
      bought: 0,
      lowerBound: 0,
      waste: 0,
      optimal: true,
      unplaced: [],
    });
  });

  it('passes on that the solver failed', async () => {
    const broken = async () => ({ status: 'stopped' as const, objective: 0, values: [], prices: [] });
    expect(await planStock({ pieces: { trim: FIVE } }, jobWith([]), broken)).toBeNull();
  });
});

/** Least total length by putting every piece into every open bar and every new one; kerf goes with each piece. */
function leastLength(pieces: number[], stock: number[], kerf: number): number {
  let best = Number.POSITIVE_INFINITY;
  const fill = (k: number, left: number[], bought: number): void => {
    if (bought >= best) return;
    if (k === pieces.length) {
      best = bought;
      return;
    }
    left.forEach((room, i) => {
      if (room >= pieces[k]!) fill(k + 1, left.with(i, room - pieces[k]!), bought);
    });
    for (const each of stock)
      if (each + kerf >= pieces[k]!) fill(k + 1, [...left, each + kerf - pieces[k]!], bought + each);
  };
  fill(0, [], 0);
  return best;
}
