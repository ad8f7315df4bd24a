// The job pack, read back by an independent reader (pdfjs), against the result: number by number.
import { readFile } from 'node:fs/promises';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Job, parseJob, type Result, solve } from '../../src/core';
import { jobPackPdf, type PaperName } from '../../src/output';
import { readPdf, testFonts } from '../unit/output/pdf/readPdf';

const scene = async (): Promise<Job> => {
  const text = await readFile(new URL('../../scenes/skewed-bowed-wet-wall.json', import.meta.url), 'utf8');
  const parsed = parseJob({ ...JSON.parse(text), display: 'mm' });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.job;
};

describe.each<PaperName>(['a4', 'letter'])('job pack on %s in millimetres', (paper) => {
  let job: Job;
  let result: Result;
  let pages: { text: string }[];
  /** all pages of one title, blanks and line ends as one blank */
  const part = (title: string): string => {
    const found = pages.filter(({ text }) => text.startsWith(title));
    expect(found.length).toBeGreaterThan(0);
    return found
      .map(({ text }) => text)
      .join(' ')
      .replace(/\s+/g, ' ');
  };
  /** numbers that follow words on a page */
  const numbersBehind = (text: string, words: string): number[] => {
    const at = text.indexOf(words.replace(/\s+/g, ' '));
    expect(at, `${words} in: ${text.slice(0, 200)}`).toBeGreaterThanOrEqual(0);
    const rest = text.slice(at + words.length, at + words.length + 160);
    return [...rest.matchAll(/-?\d+(?:\.\d+)?/g)].map(Number);
  };

  beforeAll(async () => {
    job = await scene();
    result = solve(job);
    pages = await readPdf(await jobPackPdf(job, result, await testFonts(), { paper }));
  }, 60_000);

  it('tells each quantity, its packs and what is left', () => {
    const text = part('Materials to buy');
    const table = text.slice(text.indexOf('Left over'));
    for (const { label, quantity, packs } of result.materials.lines) {
      const [needed, size, count, left] = numbersBehind(table, label);
      expect(Math.abs(needed! - quantity)).toBeLessThanOrEqual(1);
      expect(Math.abs(size! - packs.size)).toBeLessThanOrEqual(1);
      expect(count).toBe(packs.count);
      expect(Math.abs(left! - packs.leftOver)).toBeLessThanOrEqual(1);
    }
  });

  it('tells each joint with its length, widths and volume', () => {
    const text = part('Joint map');
    const table = text.slice(text.indexOf('Closed with'));
    for (const { label, filler, length, widths, volume } of result.materials.joints) {
      const words = `${label} ${filler === 'sealant' ? 'sealant (wet)' : 'paintable caulk (room side)'}`;
      const numbers = numbersBehind(table, words);
      expect(Math.abs(numbers[0]! - length)).toBeLessThanOrEqual(0.5);
      const open = widths.some(([, width]) => width > 0);
      if (open) expect(Math.abs(numbers[1]! - widths[0]![1])).toBeLessThanOrEqual(0.05 + 1e-9);
      const [, millilitres] = /(\d+) mL/.exec(table.slice(table.indexOf(words))) ?? [];
      expect(Number(millilitres)).toBe(Math.ceil(volume));
    }
  });

  it('tells dots and volume of the adhesive behind each panel', () => {
    const text = part('Adhesive layout');
    for (const [name, title] of [
      ['back', 'Back panel'],
      ['left', 'Left side panel'],
    ] as const) {
      const { dots, volume, strips } = result.materials.adhesive[name];
      const numbers = numbersBehind(text.slice(text.indexOf('Adhesive, pressed')), title);
      expect(numbers[0]).toBe(dots.length);
      expect(numbers).toContain(Math.ceil(volume / 1000));
      expect(numbers).toContain(strips.length);
    }
  });

  it('tells each hole with its size and the distances of the job', () => {
    const text = part('Hole map');
    for (const panel of Object.values(result.panels)) {
      for (const { id, diameter, aboveRim, from } of panel.holes) {
        const [size, above, , distance] = numbersBehind(text.slice(text.lastIndexOf(`${id} Ø`)), `${id} Ø`);
        expect(Math.abs(size! - diameter)).toBeLessThanOrEqual(0.5);
        expect(Math.abs(above! - aboveRim)).toBeLessThanOrEqual(0.5);
        const distances = numbersBehind(text.slice(text.lastIndexOf(`${id} Ø`)), `${id} Ø`).slice(2, 5);
        expect(distance === undefined || distances.some((mm) => Math.abs(mm - Math.abs(from.distance)) <= 0.5)).toBe(
          true,
        );
      }
    }
  });

  it('tells each reading and its misfit', () => {
    const text = part('Survey record');
    for (const { id, kind, residual, w } of result.adjustment.readings) {
      if (residual === null || w === null || kind === 'angle') continue;
      const at = text.indexOf(` ${id} `);
      expect(at).toBeGreaterThanOrEqual(0);
      const row = text.slice(at + id.length + 2, at + id.length + 170).replaceAll('−', '-');
      const numbers = [...row.matchAll(/[-+]?\d+(?:\.\d+)?/g)].map(Number);
      expect(
        numbers.some((value) => Math.abs(value - residual) <= 0.051),
        `${id}: ${residual} in ${row}`,
      ).toBe(true);
    }
  });

  it('tells each step of the work with what it takes', () => {
    const text = part('Order of work');
    for (const { label, duration, start } of result.sequence) {
      const words = label.charAt(0).toUpperCase() + label.slice(1);
      const at = text.indexOf(words);
      expect(at, words).toBeGreaterThanOrEqual(0);
      const whole = Math.round(duration);
      const takes = [whole >= 60 ? `${Math.floor(whole / 60)} h` : '', whole % 60 ? `${whole % 60} min` : '']
        .filter(Boolean)
        .join(' ');
      expect(text.slice(at, at + words.length + 60)).toContain(takes || '0 min');
      const begin = `${String(Math.floor((Math.round(start) % 1440) / 60)).padStart(2, '0')}:${String(Math.round(start) % 60).padStart(2, '0')}`;
      expect(text.slice(Math.max(0, at - 30), at)).toContain(begin);
    }
  });

  it('has a line for initials at every check', () => {
    const text = part('Sign-off');
    for (const { kind, label } of result.sequence)
      if (kind === 'gate') expect(text).toContain(label.charAt(0).toUpperCase() + label.slice(1));
  });
});
