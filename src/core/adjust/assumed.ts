import type { Adjustment } from './adjust';

/** True where the readings carry less than half of what is known about a parameter; the prior or placeholder, the rest. */
export function assumedParameters({ model, placeholders, supposition, covariance }: Adjustment): boolean[] {
  return model.parameters.map(
    ({ priorSd }, j) =>
      placeholders.includes(j) ||
      (priorSd !== null && !supposition.released.includes(j) && covariance.get(j, j) > 0.5 * priorSd ** 2),
  );
}
