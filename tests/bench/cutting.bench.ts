import loadHighs from 'highs';
import { constrainedGuillotine, unconstrainedGuillotine } from '../../src/core/layout/guillotine';
import { solveStock } from '../../src/core/layout/stock';
import { highsSolver } from '../../src/milp';
import { packingProblem } from '../reference/cutting/packing';
import binpack from '../reference/data/binpack_falkenauer.json';
import cgcut from '../reference/data/cgcut.json';
import gcut from '../reference/data/gcut.json';
import type { BenchOptions, Row } from './bench';

export const name = 'cutting';
export const about =
  'Bins over the best known on every bin packing set, value against the optimum on the guillotine sets.';

export async function run({ count = binpack.instances.length }: BenchOptions): Promise<Row[]> {
  const solve = highsSolver(() => loadHighs(), { seconds: 60 });
  const packings = [];
  for (const instance of binpack.instances.slice(0, count)) {
    const start = performance.now();
    const solution = await solveStock(packingProblem(instance), solve);
    packings.push({
      instance,
      bins: solution?.cost ?? Number.NaN,
      proven: solution?.optimal ?? false,
      ms: performance.now() - start,
    });
  }
  const slowest = packings.reduce((a, b) => (b.ms > a.ms ? b : a));
  const better = packings.filter(({ instance, bins }) => bins < instance.best_known);
  return [
    {
      what: 'bins over the best known, in all',
      value: packings.reduce((sum, { instance, bins }) => sum + bins - instance.best_known, 0),
      unit: '1',
      asked: { atMost: 0 },
      note:
        better.length === 0
          ? ''
          : `fewer than listed: ${better.map(({ instance, bins }) => `${instance.name} ${bins}`).join(', ')}`,
    },
    {
      what: 'sets proven least',
      value: packings.filter(({ proven }) => proven).length,
      unit: '1',
      note: `of ${packings.length}`,
    },
    {
      what: 'one bin packing set, mean',
      value: packings.reduce((sum, { ms }) => sum + ms, 0) / packings.length,
      unit: 'ms',
      note: `slowest ${slowest.instance.name} in ${Math.round(slowest.ms)} ms`,
    },
    ...guillotineRows(),
  ];
}

function guillotineRows(): Row[] {
  const free = gcut.instances.map(({ stock, pieces, optimum }) => {
    const kinds = pieces.map(([width, height, value]) => ({ width: width!, height: height!, value: value! }));
    return unconstrainedGuillotine(kinds, stock[0]!, stock[1]!).at(stock[0]!, stock[1]!) / optimum;
  });
  const limited = cgcut.instances.map(({ stock, pieces, optimum }) => {
    const kinds = pieces.map(([width, height, most, value]) => ({
      width: width!,
      height: height!,
      most: most!,
      value: value!,
    }));
    return constrainedGuillotine(kinds, stock[0]!, stock[1]!).best!.value / optimum;
  });
  return [
    {
      what: 'value : optimum, unlimited guillotine sets, least',
      value: Math.min(...free),
      unit: '1',
      asked: { atLeast: 1 },
      note: `${free.length} sets`,
    },
    {
      what: 'value : optimum, limited guillotine sets, least',
      value: Math.min(...limited),
      unit: '1',
      asked: { atLeast: 1 },
      note: `${limited.length} sets`,
    },
  ];
}
