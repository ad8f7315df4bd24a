import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { highsSolver } from '../../../src/milp';

const solve = highsSolver(() => loadHighs());
const INFINITE = Number.POSITIVE_INFINITY;

describe('highsSolver', () => {
  it('loads the solver once, and anew where that failed', async () => {
    let loads = 0;
    const flaky = highsSolver(async () => {
      loads++;
      if (loads === 1) throw new Error('no connection');
      return loadHighs();
    });
    const model = {
      columns: [{ cost: 1, entries: [[0, 1]] as [number, number][], integer: false }],
      rows: [{ low: 2, high: INFINITE }],
    };
    await expect(flaky(model)).rejects.toThrow('no connection');
    await expect(flaky(model)).resolves.toMatchObject({ status: 'optimal', objective: 2 });
    await expect(flaky(model)).resolves.toMatchObject({ objective: 2 });
    expect(loads).toBe(2);
  });

  it('solves a linear programme and prices its rows', async () => {
    // Least 2x + 3y with x + y ≥ 4 and x ≤ 3: x = 3, y = 1.
    const solution = await solve({
      columns: [
        { cost: 2, entries: [[0, 1]], integer: false, most: 3 },
        { cost: 3, entries: [[0, 1]], integer: false },
      ],
      rows: [{ low: 4, high: INFINITE }],
    });
    expect(solution).toMatchObject({ status: 'optimal', objective: expect.closeTo(9, 9), values: [3, 1], prices: [3] });
  });

  it('keeps whole columns whole', async () => {
    const solution = await solve({
      columns: [{ cost: 1, entries: [[0, 2]], integer: true }],
      rows: [{ low: 3, high: INFINITE }],
    });
    expect(solution).toMatchObject({ status: 'optimal', objective: 2, values: [2] });
  });

  it('tells a model without a solution', async () => {
    const solution = await solve({
      columns: [{ cost: 1, entries: [[0, 1]], integer: false, most: 1 }],
      rows: [{ low: 3, high: INFINITE }],
    });
    expect(solution.status).toBe('infeasible');
  });

  it('loads the solver once, when it is first needed', async () => {
    let loads = 0;
    const lazy = highsSolver(() => {
      loads++;
      return loadHighs();
    });
    expect(loads).toBe(0);
    const model = {
      columns: [{ cost: 1, entries: [[0, 1]] as const, integer: false }],
      rows: [{ low: 1, high: INFINITE }],
    };
    await lazy(model);
    await lazy(model);
    expect(loads).toBe(1);
  });
});
