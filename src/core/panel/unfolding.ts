import type { FlatMap, Region } from '../flatten';
import { spaced } from '../range';
import type { Unfolding } from './panel';

const STEPS = 8;

/** The strain that a flat map leaves, sampled over the panel. */
export function unfoldingOf({ strain, strainAt }: FlatMap, { u, v }: Region): Unfolding {
  if (strain === 0) return { strain, at: [], height: [], strains: [] };
  const [at, height] = [spaced(...u, STEPS + 1), spaced(...v, STEPS + 1)];
  return { strain, at, height, strains: height.map((each) => at.map((station) => strainAt(station, each))) };
}
