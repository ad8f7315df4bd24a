import { beforeAll, describe, expect, it } from 'vitest';
import { type Job, priceOf, type Result } from '../../../../src/core';
import { plainlyTrimmedDemo } from '../../scene/solvedDemo';

let job: Job;
let result: Result;
beforeAll(() => {
  ({ job, result } = plainlyTrimmedDemo());
});

const withPrices = (change: Partial<Job['prices']>): Job => ({ ...job, prices: { ...job.prices, ...change } });
const lineOf = (priced: Job, id: string, solved = result) =>
  priceOf(priced, solved).lines.find((line) => line.id === id);

describe('priceOf', () => {
  it('adds up: lines to sums, sums to net, net and taxes to the total', () => {
    const price = priceOf(job, result);
    const sum = price.lines.reduce((total, { amount }) => total + amount!, 0);
    expect(price.unpriced).toEqual([]);
    expect(price.net).toBe(sum);
    expect(price.sums.materials + price.sums.labour + price.sums.other).toBe(sum);
    expect(price.total).toBe(sum + price.taxes.reduce((total, { amount }) => total + amount, 0));
  });

  it('names what has no price and leaves it out, and never takes none for nothing', () => {
    const price = priceOf(withPrices({ sheets: {}, packs: {} }), result);
    expect(price.unpriced).toContain('Sheet as for the back panel, stone-like');
    expect(price.unpriced).toContain('Panel adhesive');
    expect(lineOf(withPrices({ sheets: {} }), 'sheet.back')).toMatchObject({ each: null, amount: null });
    expect(lineOf(withPrices({ sheets: { back: 0 } }), 'sheet.back')).toMatchObject({ each: 6500, amount: 6500 });
  });

  it('charges everything that the materials say to buy, or names it', () => {
    const { lines } = result.materials;
    const like = lines.find(({ id }) => id === 'flashing-tape')!;
    const others = ['backer-rod', 'shelf-brackets', 'screws'].map((id) => ({ ...like, id, label: id }));
    const more = { ...result, materials: { ...result.materials, lines: [...lines, ...others] } };
    // sheets and trim are charged as the layout and the stock plan take them
    const bought = more.materials.lines.filter(
      ({ id, packs }) => packs.count > 0 && !/^(sheet\.|trim$|angle-strip$)/.test(id),
    );
    expect(bought.length).toBeGreaterThan(others.length);
    for (const { id, label, packs } of bought) {
      expect(lineOf(job, id, more), id).toMatchObject({ quantity: packs.count, amount: expect.any(Number) });
      const named = label.charAt(0).toUpperCase() + label.slice(1);
      expect(priceOf(withPrices({ packs: {} }), more).unpriced).toContain(named);
    }
  });

  it('charges a look above the plain sheet, and a plain sheet alone', () => {
    const plain = { ...job, finish: { ...job.finish, look: 'plain' as const } };
    const back = job.prices.sheets.back!;
    expect(lineOf(job, 'sheet.back')!.each).toBe(back + job.prices.looks.stone!);
    expect(lineOf(plain, 'sheet.back')!.each).toBe(back);
    expect(lineOf(withPrices({ looks: {} }), 'sheet.back')!.each).toBeNull();
  });

  it('counts the sheets that the layout uses', () => {
    const { sheets } = result.layout;
    const double = {
      ...result,
      layout: { ...result.layout, sheets: [...sheets, sheets.find(({ like }) => like === 'left')!] },
    };
    expect(lineOf(job, 'sheet.left', double)).toMatchObject({
      quantity: 2,
      amount: 2 * lineOf(job, 'sheet.left')!.amount!,
    });
  });

  it('takes the narrowest listed trim that holds the widest strip', () => {
    const trim = [
      { upTo: 90, metre: 3000 },
      { upTo: 38, metre: 1000 },
      { upTo: 60, metre: 2000 },
    ];
    const wide = (width: number): Job => ({
      ...withPrices({ trim }),
      display: 'mm',
      trim: { ...job.trim, verticalWidth: width },
    });
    expect([38, 39, 60, 61, 90, 91].map((width) => lineOf(wide(width), 'trim')!.each)).toEqual([
      1000,
      2000,
      2000,
      3000,
      3000,
      null,
    ]);
  });

  it('buys trim in whole lengths, and follows the exact plan where there is one', () => {
    const metric: Job = { ...job, display: 'mm' };
    const metres = lineOf(metric, 'trim')!.quantity;
    const cut = result.pieces.trim.reduce((sum, { size }) => sum + size.along, 0);
    expect((1000 * metres) % 2440).toBeCloseTo(0, 6);
    expect(1000 * metres).toBeGreaterThan(cut);
    const stock = { bars: [], bought: 7320, lowerBound: 7320, waste: 0, optimal: true, unplaced: [] };
    expect(lineOf(metric, 'trim', { ...result, stock })).toMatchObject({ quantity: 7.32, amount: 8345 });
    expect(lineOf(job, 'trim', { ...result, stock })).toMatchObject({ quantity: 24.02, unit: 'foot' });
  });

  it('charges work by the minute of one person, a step for two twice, waits not at all', () => {
    const step = (id: string, duration: number, people: 0 | 1 | 2, kind: 'work' | 'wait' = 'work') => ({
      ...result.sequence[0]!,
      id,
      duration,
      people,
      kind,
    });
    const sequence = [step('cut.back', 50, 1), step('dry-fit.back', 15, 2), step('adhesive-cure', 900, 0, 'wait')];
    const { lines } = priceOf(withPrices({ labour: { hour: 6000, cut: 7000 } }), { ...result, sequence });
    expect(lines.filter(({ group, id }) => group === 'labour' && id !== 'disposal')).toEqual([
      {
        id: 'labour.cut',
        group: 'labour',
        label: 'Cut panels and holes',
        quantity: 50,
        unit: 'minute',
        each: 7000,
        amount: 5833,
      },
      {
        id: 'labour.fit',
        group: 'labour',
        label: 'Dry fit and set panels',
        quantity: 30,
        unit: 'minute',
        each: 6000,
        amount: 3000,
      },
    ]);
  });

  it('knows every step of the order of work by its part', () => {
    const total = result.sequence.reduce(
      (sum, { kind, duration, people }) => (kind === 'wait' ? sum : sum + duration * people),
      0,
    );
    const lines = priceOf(job, result).lines.filter(({ unit }) => unit === 'minute');
    expect(Math.abs(lines.reduce((sum, { quantity }) => sum + quantity, 0) - total)).toBeLessThanOrEqual(
      lines.length / 2,
    );
    const handOver = result.sequence.find(({ id }) => id === 'hand-over')!;
    expect(lines.find(({ id }) => id === 'labour.rest')!.quantity).toBe(handOver.duration);
  });

  it('adds waste on sheets and strips alone, and taxes each sum by its own rate', () => {
    const tax = { name: 'VAT', materials: 10, labour: 20 };
    const price = priceOf(
      withPrices({ waste: 0.1, tax, others: [{ label: 'toll', amount: 500, taxedAs: 'none' }] }),
      result,
    );
    const cut = price.lines.filter(({ id }) => id.startsWith('sheet.') || id === 'trim' || id === 'shelf');
    expect(price.lines.find(({ id }) => id === 'waste')!.amount).toBe(
      Math.round(cut.reduce((sum, { amount }) => sum + amount!, 0) / 10),
    );
    expect(price.taxes).toEqual([
      {
        name: 'VAT',
        on: 'materials',
        percent: 10,
        of: price.sums.materials,
        amount: Math.round(price.sums.materials / 10),
      },
      { name: 'VAT', on: 'labour', percent: 20, of: price.sums.labour, amount: Math.round(price.sums.labour / 5) },
    ]);
    expect(price.sums.other).toBe(500);
  });
});
