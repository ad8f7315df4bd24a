import { z } from 'zod';
import { type Measured, ratioOf } from './bench';

const figure = z.strictObject({
  bench: z.string(),
  what: z.string(),
  value: z.number(),
  unit: z.string(),
  ratio: z.number().nullable(),
});
const run = z.strictObject({
  date: z.iso.date(),
  commit: z.string(),
  machine: z.string(),
  figures: z.array(figure),
});

/** One kept run: when, of which commit, on what, and what it gave. */
export type KeptRun = z.infer<typeof run>;
export type KeptFigure = z.infer<typeof figure>;

/** Runs kept one to a line, oldest first. Throws with the line's number where one cannot be read. */
export function readHistory(text: string): KeptRun[] {
  return text
    .split('\n')
    .map((line, at) => ({ line, at }))
    .filter(({ line }) => line.trim() !== '')
    .map(({ line, at }) => {
      try {
        return run.parse(JSON.parse(line));
      } catch (cause) {
        throw new Error(`Line ${at + 1} of the kept figures cannot be read.`, { cause });
      }
    });
}

/** The line that keeps a run, its end among it. Throws where two figures of a bench have one name. */
export function historyLine(about: Omit<KeptRun, 'figures'>, measured: readonly Measured[]): string {
  const figures = measured.flatMap(({ name, rows }) =>
    rows
      .filter(({ value }) => Number.isFinite(value))
      .map((row) => ({
        bench: name,
        what: row.what,
        value: rounded(row.value),
        unit: row.unit,
        ratio: kept(ratioOf(row)),
      })),
  );
  const names = figures.map(({ bench, what }) => `${bench}: ${what}`);
  const twice = names.find((name, k) => names.indexOf(name) !== k);
  if (twice !== undefined) throw new Error(`Two figures are called "${twice}".`);
  return `${JSON.stringify({ ...about, figures })}\n`;
}

/** The figure when it was last kept, or null. */
export function lastKept(runs: readonly KeptRun[], bench: string, what: string): KeptFigure | null {
  for (const { figures } of runs.toReversed()) {
    const found = figures.find((each) => each.bench === bench && each.what === what);
    if (found) return found;
  }
  return null;
}

const rounded = (value: number): number => Number(value.toPrecision(4));
const kept = (ratio: number | null): number | null =>
  ratio === null || !Number.isFinite(ratio) ? null : rounded(ratio);
