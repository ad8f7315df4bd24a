import { beforeAll, describe, expect, it } from 'vitest';
import { type Job, moneyText, priceOf } from '../../../../src/core';
import { eachText, priceAmountText, quantityText, quoteFile, quoteWords } from '../../../../src/output';
import { qrCode, readLink, sharedJob, writeLink } from '../../../../src/output/share';
import { solvedDemo } from '../../scene/solvedDemo';
import { readQr } from '../readQr';
import { type PaintedPath, type ReadPage, readPdf, testFonts } from './readPdf';

const { job: demo, result } = solvedDemo();
const job: Job = {
  ...demo,
  quote: {
    ...demo.quote,
    client: 'Ada Fenwick',
    from: 'Tarn Works\nMill Lane 3',
    number: 'Q-17',
    date: '2026-03-30',
    validity: 14,
  },
};
const price = priceOf(job, result);
const bare = { prices: false, client: false, notes: false };
const address = `https://example.org/app/#${writeLink(job, bare)}`;
const options = { today: '2026-01-01', code: qrCode(address) };
let pages: ReadPage[];
let text: string;
/** Words of all pages in the order of the page, however lines are broken. */
const flat = (words: string) => words.replace(/\s+/g, '');

beforeAll(async () => {
  pages = await readPdf(await quoteFile(job, result, price, await testFonts(), options));
  text = flat(pages.map((page) => page.text).join('\n'));
});

describe('quote on paper', () => {
  it('says for whom it is, from whom, and until when it holds', () => {
    for (const words of ['Quote Q-17', 'For Ada Fenwick', 'Tarn Works', 'Mill Lane 3']) {
      expect(text).toContain(flat(words));
    }
    expect(text).toContain(flat('March 30, 2026. This offer holds until April 13, 2026.'));
  });

  it('has every line of the price with its quantity, price and amount beside it', () => {
    expect(price.lines.length).toBeGreaterThan(15);
    for (const line of price.lines) {
      const row = [line.label, quantityText(line), eachText(line, 'USD'), priceAmountText(line, 'USD')];
      expect(text).toContain(flat(row.join('')));
    }
  });

  it('adds up to the sums, taxes and total of the price', () => {
    expect(text).toContain(flat(`Materials together${moneyText(price.sums.materials, 'USD')}`));
    expect(text).toContain(flat(`Work together${moneyText(price.sums.labour, 'USD')}`));
    expect(text).toContain(flat(`Before tax${moneyText(price.net, 'USD')}`));
    for (const { name, percent, amount } of price.taxes) {
      expect(text).toMatch(new RegExp(`${flat(name)},${percent}%of.*?\\${moneyText(amount, 'USD')}`));
    }
    expect(text).toContain(flat(`To pay${moneyText(price.total, 'USD')}`));
  });

  it('names what is in it, what is not, and what to mind', () => {
    const words = quoteWords(job, result, price, options.today);
    for (const sentence of [
      ...words.included,
      ...words.finish,
      ...words.exclusions,
      ...words.cautions,
      ...words.figures,
    ])
      expect(text).toContain(flat(sentence));
    expect(words.finish).toEqual(['Panels: Saltpan, stone-like', 'Trim: off-white (#f4f3ef)']);
    expect(words.included).toContain('2 pieces beside the tub');
    expect(words.cautions.join()).toMatch(/asbestos or lead.*licensed trades.*Grab bars must hold a person/s);
  });

  it('says first that it is not complete where a line has no price', async () => {
    const gap: Job = { ...job, prices: { ...job.prices, shelf: undefined } };
    const unpriced = priceOf(gap, result);
    const read = await readPdf(await quoteFile(gap, result, unpriced, await testFonts(), options));
    const words = flat(read.map((page) => page.text).join('\n'));
    expect(words).toContain(flat('This quote is not complete'));
    expect(words).toContain(flat('Not in the total, for want of a price: Corner shelf, cut to fit.'));
    expect(words).toContain(flat('no price'));
  });

  it('carries a code that an independent reader reads from the squares on the page', () => {
    const page = pages.find(({ text: words }) => words.includes('On your phone'))!;
    const read = readPainted(page.paths);
    expect(read).toBe(address);
    expect(readLink(new URL(read!).hash)).toEqual({ ok: true, job: sharedJob(job, bare) });
  });
});

/** The code that filled rectangles half a millimetre high make up on paper, seen at eight dots a millimetre. */
function readPainted(paths: readonly PaintedPath[]): string | null {
  const boxes = paths
    .map(({ points }) => {
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
    })
    .filter(({ low, high }) => Math.abs(high - low - 0.5) < 0.01);
  const [left, right] = [Math.min(...boxes.map((box) => box.left)) - 2, Math.max(...boxes.map((box) => box.right)) + 2];
  const [low, high] = [Math.min(...boxes.map((box) => box.low)) - 2, Math.max(...boxes.map((box) => box.high)) + 2];
  const DOTS = 8;
  const [width, height] = [Math.round((right - left) * DOTS), Math.round((high - low) * DOTS)];
  const dark = new Uint8Array(width * height);
  for (const box of boxes) {
    for (let y = 0; y < height; y++) {
      const v = high - (y + 0.5) / DOTS;
      if (v < box.low || v > box.high) continue;
      const [from, to] = [box.left, box.right].map((x) => Math.ceil((x - left) * DOTS - 0.5)) as [number, number];
      dark.fill(1, y * width + from, y * width + to);
    }
  }
  return readQr(width, height, (x, y) => dark[y * width + x] === 1);
}
