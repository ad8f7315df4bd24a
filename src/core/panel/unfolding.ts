import type { FlatMap, Region } from '../flatten';
import type { Unfolding } from './panel';

const STEPS = 8;

/** The strain that a flat map leaves, sampled over the panel. */
export function unfoldingOf({ strain, strainAt }: FlatMap, { u, v }: Region): Unfolding {
  const steps = ([from, to]: [number, number]): number[] =>
    Array.from({ length: STEPS + 1 }, (_, k) => from + ((to - from) * k) / STEPS);
  if (strain === 0) return { strain, at: [], height: [], strains: [] };
  const [at, height] = [steps(u), steps(v)];
  return { strain, at, height, strains: height.map((each) => at.map((station) => strainAt(station, each))) };
}
