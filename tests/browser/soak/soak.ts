import type { Page } from '@playwright/test';
import { watchDrawings } from './drawings';
import { atEase, editRound, fillUndo, openBoth } from './edits';
import { gaugesOf, type Sample } from './gauges';
import { type Line, lineThrough } from './line';

/** Growth per 1000 edits that is let pass; what a person changes in a day is about as much. */
export const BOUNDS: Sample = {
  'objects of script, kB': 200,
  'worker, kB': 200,
  'DOM nodes': 20,
  documents: 0.5,
  listeners: 20,
  'drawings in 3D': 0.5,
  geometries: 2,
  textures: 2,
  programs: 2,
  'records in storage, kB': 20,
};

export interface SoakOptions {
  /** ends after the first round past either */
  edits?: number;
  minutes?: number;
  /** rounds between two samples */
  every?: number;
  /** rounds before the first sample */
  warmUp?: number;
  told?(edits: number, sample: Sample): void;
}

export interface Soaked {
  edits: number;
  samples: { edits: number; sample: Sample }[];
}

/**
 * Edits two jobs for as long as is asked, and measures the page every few rounds, once undo holds as much as it ever
 * does. The page must be a new one.
 */
export async function soak(
  page: Page,
  { edits = Infinity, minutes = Infinity, ...options }: SoakOptions,
): Promise<Soaked> {
  const { every = 1, warmUp = 3, told } = options;
  await watchDrawings(page);
  const jobs = await openBoth(page);
  const measure = await gaugesOf(page, true);
  const until = performance.now() + minutes * 60_000;
  const soaked: Soaked = { edits: await fillUndo(page, jobs), samples: [] };
  for (let round = 1; soaked.edits < edits && performance.now() < until; round++) {
    soaked.edits += await editRound(page, jobs, round);
    if (round <= warmUp || round % every > 0) continue;
    await atEase(page);
    const sample = await measure();
    soaked.samples.push({ edits: soaked.edits, sample });
    told?.(soaked.edits, sample);
  }
  return soaked;
}

export interface Growth extends Line {
  what: string;
  last: number;
  /** per 1000 edits; undefined where none is set */
  bound: number | undefined;
  /** more than the bound, and by more than twice the standard error */
  over: boolean;
}

const boundOf = (what: string) => BOUNDS[what] ?? (what.startsWith('worker') ? BOUNDS['worker, kB'] : undefined);

/** Growth per 1000 edits of all that was measured, from the later half of the samples. */
export function growthOf({ samples }: Soaked): Growth[] {
  const later = samples.slice(Math.floor(samples.length / 2));
  const names = Object.keys(later.at(-1)?.sample ?? {});
  return names.map((what) => {
    const line = lineThrough(later.map(({ edits, sample }) => [edits / 1000, sample[what] ?? 0]));
    const bound = boundOf(what);
    return {
      what,
      ...line,
      last: later.at(-1)?.sample[what] ?? 0,
      bound,
      over: bound !== undefined && line.slope - 2 * line.error > bound,
    };
  });
}
