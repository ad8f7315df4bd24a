import type { ReadingKind } from '../job-file';
import type { DisplayUnit } from '../length';
import { angleCandidates, type Candidate, lengthCandidates, signCandidate } from './candidates';
import type { Slip } from './slip';

export interface Misreading {
  kind: ReadingKind;
  /** as entered; mm, degrees for an angle */
  observed: number;
  /** what the other readings point to */
  fits: number;
  /** standard deviation of observed − fits, were it read right */
  sd: number;
  display: DisplayUnit;
}

/** A slip explains a misreading when it leaves no more than this many standard deviations. */
const NEAR = 2.5;
/** Lengths of common tape cases, mm: 2 to 4 in (common practice, no source). */
const CASE: [number, number] = [50, 102];
/** Kinds where the tape's case is pushed into a corner and its length added. */
const INSIDE: ReadingKind[] = ['tape-to-corner', 'span', 'diagonal'];

/** The commonest slip that leaves the reading where the others point to, or null. */
export function recogniseSlip(misreading: Misreading): Slip | null {
  const { fits, sd } = misreading;
  let best: { slip: Candidate; score: number } | null = null;
  for (const slip of candidatesFor(misreading)) {
    const away = Math.abs(slip.likely - fits) / sd;
    if (away > NEAR) continue;
    const score = away ** 2 - 2 * Math.log(slip.weight);
    if (best === null || score < best.score) best = { slip, score };
  }
  if (best !== null) {
    const { kind, words, likely } = best.slip;
    return { kind, words, likely };
  }
  const short = fits - misreading.observed;
  if (INSIDE.includes(misreading.kind) && short > CASE[0] - NEAR * sd && short < CASE[1] + NEAR * sd) {
    return {
      kind: 'tape-case',
      words: "too short by about a tape case: was the case's length left out?",
      likely: fits,
    };
  }
  return null;
}

function candidatesFor({ kind, observed, display }: Misreading): Candidate[] {
  if (kind === 'angle') return angleCandidates(observed);
  const lengths = lengthCandidates(observed, display);
  return kind === 'straightedge' || kind === 'plumb' ? [signCandidate(observed), ...lengths] : lengths;
}
