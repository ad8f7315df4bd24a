import type { Job } from '../job-file';
import type { Piece } from '../piece';
import { type SolveLinear, solveStock } from './stock';

/** A stock length with the pieces cut from it, mm. */
export interface StockBar {
  length: number;
  /** in the order they are cut, longest first */
  cuts: { piece: string; length: number }[];
  /** what is left over */
  left: number;
}

export interface StockPlan {
  bars: StockBar[];
  /** total length bought, and no plan buys less than `lowerBound`, mm */
  bought: number;
  lowerBound: number;
  /** share of the bought length that is no piece: kerfs and rests */
  waste: number;
  /** true where no plan buys less */
  optimal: boolean;
  /** pieces that no stock is left or long enough for */
  unplaced: string[];
}

/** Tenths of a millimetre: pieces are rounded up to them, stock down. */
const UNITS = 10;

/**
 * Cuts the trim from stock lengths so that the least length is bought. Exact (see `solveStock`); the solver is passed in,
 * since it is loaded on demand. Never rejects for want of stock: what finds none is listed.
 * @returns null where the solver fails
 */
export async function planStock(
  { pieces }: { pieces: { trim: readonly Piece[] } },
  job: Job,
  solve: SolveLinear,
): Promise<StockPlan | null> {
  const { trim, cutting } = job;
  const cuts = pieces.trim
    .filter(({ stock }) => stock === 'trim')
    .map(({ id, size }) => ({ piece: id, length: size.along + trim.allowance }))
    .sort((a, b) => b.length - a.length);
  const stock = trim.stock.map(({ length, onHand }) => ({
    length: Math.floor(UNITS * (length + cutting.kerf) + 1e-6),
    cost: Math.round(UNITS * length),
    ...(onHand === undefined ? {} : { most: Math.floor(onHand) }),
  }));
  const longest = Math.max(...stock.map(({ length }) => length));
  const units = ({ length }: { length: number }): number => Math.ceil(UNITS * (length + cutting.kerf) - 1e-6);
  const [fitting, tooLong] = [cuts.filter((cut) => units(cut) <= longest), cuts.filter((cut) => units(cut) > longest)];
  const lengths = [...new Set(fitting.map(units))];
  const waiting = new Map(lengths.map((length) => [length, fitting.filter((cut) => units(cut) === length)]));
  const demands = lengths.map((length) => ({ length, count: waiting.get(length)!.length }));
  const nothing = { bars: [], cost: 0, lowerBound: 0, optimal: true, missing: [] };
  const solution = demands.length === 0 ? nothing : await solveStock({ stock, demands }, solve);
  if (solution === null) return null;

  const bars = solution.bars.flatMap(({ pattern, times }) =>
    Array.from({ length: times }, (): StockBar => {
      const { length } = trim.stock[pattern.stock]!;
      const taken = pattern.counts.flatMap((count, i) => waiting.get(lengths[i]!)!.splice(0, count));
      const used = taken.reduce((sum, cut) => sum + cut.length + cutting.kerf, 0);
      return { length, cuts: taken, left: Math.max(0, length - used) };
    }),
  );
  const bought = bars.reduce((sum, { length }) => sum + length, 0);
  const cut = bars.flatMap((bar) => bar.cuts).reduce((sum, { length }) => sum + length, 0);
  return {
    bars,
    bought,
    lowerBound: solution.lowerBound / UNITS,
    waste: bought === 0 ? 0 : 1 - cut / bought,
    optimal: solution.optimal,
    unplaced: [...tooLong, ...[...waiting.values()].flat()].map(({ piece }) => piece),
  };
}
