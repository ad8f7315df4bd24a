import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { type Job, planStock, type Result, type StockPlan, withStockPlan } from '../../../../src/core';
import { highsSolver } from '../../../../src/milp';
import { solvedDemo } from '../../scene/solvedDemo';

const solver = highsSolver(() => loadHighs());
const { job: demo, result } = solvedDemo();
const withStock = (stock: Job['trim']['stock']): Job => ({ ...demo, trim: { ...demo.trim, stock } });
const trimOf = ({ materials }: Result) => materials.lines.filter(({ id }) => id.startsWith('trim'));
const plan = async (job: Job): Promise<StockPlan> => (await planStock(result, job, solver))!;

describe('trim counted by the plan of stock lengths', () => {
  it('is a line to each length bought, with as many as the plan has bars', async () => {
    const job = withStock([{ length: 2440, onHand: 2 }, { length: 1830 }]);
    const stock = await plan(job);
    const lines = trimOf(withStockPlan(result, job, stock));
    expect(new Set(stock.bars.map(({ length }) => length))).toEqual(new Set([2440, 1830]));
    expect(lines.map(({ packs }) => packs.size)).toEqual([2440, 1830]);
    for (const { packs } of lines)
      expect(packs.count).toBe(stock.bars.filter(({ length }) => length === packs.size).length);
    expect(lines.reduce((sum, { packs }) => sum + packs.size * packs.count, 0)).toBeCloseTo(stock.bought, 6);
  });

  it('has every piece in it, and what is left over is what no piece and no saw cut takes', async () => {
    const stock = await plan(demo);
    const lines = trimOf(withStockPlan(result, demo, stock));
    const strips = result.pieces.trim.filter((piece) => piece.stock === 'trim');
    const pieces = lines.flatMap(({ inputs }) => inputs.filter(({ label }) => label === 'pieces'));
    expect(pieces.reduce((sum, { value }) => sum + value, 0)).toBe(strips.length);
    const needed = lines.reduce((sum, { quantity }) => sum + quantity, 0);
    const { allowance } = demo.trim;
    const sawn = strips.reduce((sum, { size }) => sum + size.along + allowance + demo.cutting.kerf, 0);
    expect(needed).toBeCloseTo(sawn, 6);
    for (const { packs, quantity } of lines)
      expect(packs.leftOver).toBeGreaterThanOrEqual(packs.size * packs.count - quantity - 1e-6);
  });

  it('stands where the count of the longest length stood, and leaves all other lines as they are', async () => {
    const planned = withStockPlan(result, demo, await plan(demo));
    const others = ({ materials }: Result) => materials.lines.filter(({ id }) => !id.startsWith('trim'));
    expect(others(planned)).toEqual(others(result));
    expect(trimOf(result)).toHaveLength(1);
    expect(planned.materials.lines.findIndex(({ id }) => id.startsWith('trim'))).toBe(
      result.materials.lines.findIndex(({ id }) => id.startsWith('trim')),
    );
  });

  it('is not less than what the pieces take where the plan leaves some out', async () => {
    const job = withStock([{ length: 2440, onHand: 1 }]);
    const stock = await plan(job);
    expect(stock.unplaced.length).toBeGreaterThan(0);
    expect(trimOf(withStockPlan(result, job, stock))).toEqual(trimOf(result));
  });
});
