import type { Tolerances } from '../../job-file';
import { finished, finishedStrict, raw } from './din18202';
import { residential, tile, trade } from './northAmerica';
import { inProportion, type Limit, type Property, type ToleranceSet } from './toleranceSet';

export const toleranceSets: readonly ToleranceSet[] = [trade, finished, finishedStrict, raw, residential, tile];

export type Limits = Record<Property, Limit>;

/** The limits of a job: those of its set, its own in their place where it has any. */
export function limitsOf({ set, own }: Tolerances): Limits {
  const chosen = toleranceSets.find(({ id }) => id === set)!;
  const slope = (property: 'plumb' | 'square' | 'level'): Limit => {
    const perMetre = own[property];
    return perMetre === undefined ? chosen[property] : inProportion(perMetre, 1000);
  };
  const { flat } = own;
  return {
    plumb: slope('plumb'),
    square: slope('square'),
    level: slope('level'),
    flat: flat === undefined ? chosen.flat : () => flat,
  };
}
