import type { Reading } from '../job-file';
import { type Knowledge, updated, variancesAfter, type Watched, watch } from './knowledge';

/** A reading that could be taken. */
export interface Candidate {
  reading: Reading;
  /** its derivatives over sigma */
  rows: Float64Array[];
  /** numbers to write down */
  effort: number;
}

/** What a choice is to achieve. */
export interface Goal {
  /** derivatives of the quantities that matter */
  gradients: readonly Float64Array[];
  /** variance that each may keep */
  variance: number;
}

/** A reading may be taken this often: hook the tape off and on again. */
const TIMES = 2;
/** Rounds of exchanges after the first choice; they settle in two or three. */
const ROUNDS = 4;
/** More readings than anybody takes. */
const MOST = 150;

interface Choice {
  chosen: Candidate[];
  knowledge: Knowledge;
}

/**
 * A short list of readings after which every quantity keeps within the goal. First greedily, each time the reading that
 * brings most for its effort; then, in rounds, what is no longer needed is left out and every reading exchanged for a
 * better one that is no dearer (Fedorov, Theory of Optimal Experiments, 1972, 3.2, with the largest variances as the
 * criterion). Where the candidates cannot reach the goal, all that help.
 */
export function chooseReadings(nothing: Knowledge, candidates: readonly Candidate[], goal: Goal): Candidate[] {
  let choice: Choice = { chosen: [], knowledge: nothing };
  for (;;) {
    const better = choice.chosen.length < MOST ? withBest(choice, candidates, goal) : null;
    if (better === null) break;
    choice = better;
  }
  for (let round = 0; round < ROUNDS; round++) {
    const lighter = exchanged(withoutIdle(choice, goal), candidates, goal);
    const settled = sameCandidates(lighter.chosen, choice.chosen);
    choice = lighter;
    if (settled) break;
  }
  return choice.chosen;
}

/** How far the variances are above the goal: 0 when it is reached. */
const excess = (variances: Float64Array, { variance }: Goal): number =>
  variances.reduce((sum, each) => sum + Math.log(Math.max(1, each / variance)), 0);

/** Dominated by the largest variances. */
const pressure = (variances: Float64Array, { variance }: Goal): number =>
  variances.reduce((sum, each) => sum + (each / variance) ** 6, 0);

const reached = (variances: Float64Array, goal: Goal): boolean => excess(variances, goal) < 1e-9;

const sameCandidates = (a: readonly Candidate[], b: readonly Candidate[]): boolean =>
  a.length === b.length && a.every((candidate, i) => candidate === b[i]);

const timesIn = (chosen: readonly Candidate[], candidate: Candidate): number =>
  chosen.filter((each) => each === candidate).length;

function withBest({ chosen, knowledge }: Choice, candidates: readonly Candidate[], goal: Goal): Choice | null {
  const watched = watch(knowledge, goal.gradients);
  const now = excess(watched.variances, goal);
  let best: { candidate: Candidate; gain: number } | null = null;
  for (const candidate of candidates) {
    if (timesIn(chosen, candidate) >= TIMES) continue;
    const gain = (now - excess(variancesAfter(knowledge, watched, candidate.rows), goal)) / candidate.effort;
    if (gain > (best?.gain ?? 1e-9)) best = { candidate, gain };
  }
  if (best === null) return null;
  return { chosen: [...chosen, best.candidate], knowledge: updated(knowledge, best.candidate.rows) };
}

function withoutIdle(choice: Choice, goal: Goal): Choice {
  let { chosen, knowledge } = choice;
  if (!reached(watch(knowledge, goal.gradients).variances, goal)) return choice;
  for (const candidate of [...chosen].sort((a, b) => b.effort - a.effort)) {
    const less = updated(knowledge, candidate.rows, -1);
    if (!reached(watch(less, goal.gradients).variances, goal)) continue;
    knowledge = less;
    chosen = without(chosen, candidate);
  }
  return { chosen, knowledge };
}

function exchanged(choice: Choice, candidates: readonly Candidate[], goal: Goal): Choice {
  let { chosen, knowledge } = choice;
  for (const candidate of choice.chosen) {
    const less = updated(knowledge, candidate.rows, -1);
    const watched = watch(less, goal.gradients);
    const rest = without(chosen, candidate);
    const best = betterFor(candidate, rest, candidates, less, watched, goal);
    if (best === null) continue;
    chosen = [...rest, best];
    knowledge = updated(less, best.rows);
  }
  return { chosen, knowledge };
}

/** The candidate that reaches the goal with less effort than the one taken out, or as much and wider of it. */
function betterFor(
  taken: Candidate,
  rest: readonly Candidate[],
  candidates: readonly Candidate[],
  knowledge: Knowledge,
  watched: Watched,
  goal: Goal,
): Candidate | null {
  let best = { candidate: taken, pressure: 0.999 * pressure(variancesAfter(knowledge, watched, taken.rows), goal) };
  for (const candidate of candidates) {
    if (candidate.effort > best.candidate.effort || timesIn(rest, candidate) >= TIMES) continue;
    const variances = variancesAfter(knowledge, watched, candidate.rows);
    const felt = pressure(variances, goal);
    if (candidate.effort === best.candidate.effort && felt >= best.pressure) continue;
    if (reached(variances, goal)) best = { candidate, pressure: felt };
  }
  return best.candidate === taken ? null : best.candidate;
}

function without(chosen: readonly Candidate[], candidate: Candidate): Candidate[] {
  const at = chosen.lastIndexOf(candidate);
  return chosen.filter((_, i) => i !== at);
}
