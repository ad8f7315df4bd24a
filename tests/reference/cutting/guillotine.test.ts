// Optima: see `source` and `trust` in each data file.
import { describe, expect, it } from 'vitest';
import { constrainedGuillotine, unconstrainedGuillotine } from '../../../src/core/layout/guillotine';
import cgcut from '../data/cgcut.json';
import gcut from '../data/gcut.json';

describe.each(gcut.instances)('$name, no limits', ({ stock, pieces, optimum }) => {
  it(`is worth ${optimum}`, () => {
    const kinds = pieces.map(([width, height, value]) => ({ width: width!, height: height!, value: value! }));
    const [width, height] = stock as [number, number];
    expect(unconstrainedGuillotine(kinds, width, height).at(width, height)).toBe(optimum);
  });
});

describe.each(cgcut.instances)('$name, with limits', ({ stock, pieces, optimum }) => {
  it(`is worth ${optimum}, proven`, () => {
    const kinds = pieces.map(([width, height, most, value]) => ({
      width: width!,
      height: height!,
      most: most!,
      value: value!,
    }));
    const { best, exact } = constrainedGuillotine(kinds, stock[0]!, stock[1]!);
    expect(exact).toBe(true);
    expect(best!.value).toBe(optimum);
  });
});
