import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { jobPackPdf, type OutputFonts } from '../../../../src/output';
import { fixtureJob, fixtureResult } from '../fixture';
import { readPdf, testFonts } from './readPdf';

const job = fixtureJob();
const result = fixtureResult();
let fonts: OutputFonts;

beforeAll(async () => {
  fonts = await testFonts();
});

const packFor = (name: string, id: string) => {
  const readings = job.readings.map((reading, i) => (i === 0 ? { ...reading, note: name } : reading));
  const holes = result.panels.right.holes.map((hole, i) => (i === 0 ? { ...hole, id } : hole));
  const panels = { ...result.panels, right: { ...result.panels.right, holes } };
  return jobPackPdf({ ...job, name, readings }, { ...result, panels }, fonts, { paper: 'tabloid' });
};

describe('whatever a person typed', () => {
  it('never keeps the pack from being written', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.string({ unit: 'binary', maxLength: 200 }),
        fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }),
        async (name, id) => {
          expect((await packFor(name, id)).length).toBeGreaterThan(10_000);
        },
      ),
      { numRuns: 10 },
    );
  }, 120_000);

  it('is set in scripts whose shaping rules the font library cannot follow', async () => {
    // Tifinagh, Arabic, Hebrew, Devanagari, Lao, a lone surrogate, variation selectors and joiners
    const name = 'ⴰⴱⴲ سلام שלום नमस्ते ລາວ \uD800 ✈️ 👨‍👩‍👧 ﬁ e\u0301';
    expect((await packFor(name, name)).length).toBeGreaterThan(10_000);
  }, 60_000);

  it('is kept where the font has it and visibly replaced where it has not', async () => {
    const [cover] = await readPdf(await packFor('Łódź Ωμέγα 浴室 ½″ \u0007 end', 'valve'), 1);
    expect(cover!.text).toContain('Łódź Ωμέγα \uFFFD\uFFFD ½″');
  }, 60_000);

  it('does not run off the page when it is very long', async () => {
    const [cover] = await readPdf(await packFor('W'.repeat(200), 'X'.repeat(60)), 1);
    expect(cover!.text.replaceAll('\n', '')).toContain('W'.repeat(200));
    expect(cover!.text).toContain('W…');
  }, 60_000);
});
