import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Job, parseJobText, type Result, solve } from '../../src/core';
import { jobDrawings, jobPackPdf, type OutputFonts, panelDxf, panelSvg } from '../../src/output';
import { papers } from '../../src/output/pdf';
import { POINTS_PER_MM } from '../../src/output/pdf/paper';
import { readPdf, testFonts } from '../unit/output/pdf/readPdf';

/**
 * Files checked against their published formats.
 * DXF: the format publisher's 2024 reference, $INSUNITS (4 = millimetres) and LWPOLYLINE (90 vertex count, 70 bit 1
 * closed, 10/20 vertices), CIRCLE (40 radius).
 * Paper: ISO 216 (A series); ANSI/ASME Y14.1 letter 8.5 × 11 in, tabloid 11 × 17 in, from memory.
 * PDF: unit 1/72 in, ISO 32000-1 8.3.2.3, from memory; 2440 mm = 6916.535 pt, calculated.
 * SVG: 1 CSS px = 1/96 in, so 1 mm = 3.7795276 px, from memory and calculated.
 */
const scene = 'skewed-bowed-wet-wall';
let job: Job;
let result: Result;
let fonts: OutputFonts;

beforeAll(async () => {
  const parsed = parseJobText(readFileSync(resolve(import.meta.dirname, `../../scenes/${scene}.json`), 'utf8'));
  if (!parsed.ok) throw new Error('the demo job does not parse');
  job = parsed.job;
  result = solve(job);
  fonts = await testFonts();
}, 60_000);

/** Group codes and values of a DXF file, two lines each. */
function groups(text: string): [number, string][] {
  const lines = text.split(/\r?\n/);
  return Array.from({ length: Math.floor(lines.length / 2) }, (_, i): [number, string] => [
    Number(lines[2 * i]!.trim()),
    lines[2 * i + 1]!.trim(),
  ]);
}

/** Groups of every entity of a kind. */
function entitiesOf(all: [number, string][], kind: string): [number, string][][] {
  const starts = all.flatMap(([code], i) => (code === 0 ? [i] : []));
  return starts.flatMap((start, i) => (all[start]![1] === kind ? [all.slice(start, starts[i + 1])] : []));
}
const values = (entity: [number, string][], code: number) =>
  entity.flatMap(([each, value]) => (each === code ? [value] : []));

describe('DXF by group codes', () => {
  it('is in millimetres', async () => {
    for (const drawing of jobDrawings(job, result)) {
      const all = groups(await panelDxf(drawing));
      const at = all.findIndex(([code, value]) => code === 9 && value === '$INSUNITS');
      expect(all[at + 1]).toEqual([70, '4']);
    }
  });

  it('has a cut line whose vertex count, closed bit and vertices are those of the flat outline', async () => {
    for (const drawing of jobDrawings(job, result)) {
      const cuts = entitiesOf(groups(await panelDxf(drawing)), 'LWPOLYLINE').filter(
        (entity) => values(entity, 8)[0] === 'cut',
      );
      expect(cuts).toHaveLength(1);
      const { outline } = result.panels[drawing.name].flat;
      expect(values(cuts[0]!, 90)).toEqual([`${outline.length}`]);
      expect(Number(values(cuts[0]!, 70)[0]) & 1).toBe(1);
      const sign = drawing.name === 'left' ? -1 : 1;
      values(cuts[0]!, 10).forEach((x, i) => {
        expect(Number(x)).toBeCloseTo(sign * outline[i]![0], 9);
      });
      values(cuts[0]!, 20).forEach((y, i) => {
        expect(Number(y)).toBeCloseTo(outline[i]![1], 9);
      });
    }
  });

  it('has a circle of each hole’s radius', async () => {
    for (const drawing of jobDrawings(job, result)) {
      const circles = entitiesOf(groups(await panelDxf(drawing)), 'CIRCLE').filter(
        (entity) => values(entity, 8)[0] === 'hole',
      );
      expect(circles.map((entity) => Number(values(entity, 40)[0]))).toEqual(
        result.panels[drawing.name].holes.map(({ diameter }) => diameter / 2),
      );
    }
  });
});

describe('paper and units', () => {
  it('are those of the standards', () => {
    expect([papers.a4.width, papers.a4.height]).toEqual([210, 297]);
    expect([papers.a3.width, papers.a3.height]).toEqual([297, 420]);
    expect([papers.letter.width, papers.letter.height].map((mm) => mm / 25.4)).toEqual([8.5, 11]);
    expect([papers.tabloid.width, papers.tabloid.height].map((mm) => mm / 25.4)).toEqual([11, 17]);
    expect(2440 * POINTS_PER_MM).toBeCloseTo(6916.535, 3);
  });

  it('make a page of the paper’s size and a 100 mm line of 100.00 mm', async () => {
    for (const paper of ['a4', 'letter', 'a3', 'tabloid'] as const) {
      const read = await readPdf(await jobPackPdf(job, result, fonts, { paper }));
      expect(Math.abs(read[0]!.width - papers[paper].width)).toBeLessThan(0.001);
      expect(Math.abs(read[0]!.height - papers[paper].height)).toBeLessThan(0.001);
      const lines = read
        .at(-1)!
        .paths.filter(({ points }) => points.length === 2)
        .map(({ points: [a, b] }) => Math.hypot(b![0] - a![0], b![1] - a![1]));
      expect(lines.filter((mm) => mm.toFixed(2) === '100.00')).toHaveLength(1);
      expect(lines.filter((mm) => mm.toFixed(2) === '101.60')).toHaveLength(1);
    }
  }, 120_000);

  it('make an SVG user unit one millimetre', () => {
    for (const drawing of jobDrawings(job, result)) {
      const text = panelSvg(drawing);
      const [, width, viewWidth] = /width="([\d.]+)mm".*?viewBox="[-\d.]+ [-\d.]+ ([\d.]+)/.exec(text)!;
      expect(((Number(width) / 25.4) * 96) / Number(viewWidth)).toBeCloseTo(3.7795276, 7);
    }
  });
});
