/** A strip bent by drawing its ends together. */
export interface Elastica {
  /** middle off the chord, mm */
  sagitta: number;
  /** largest curvature, in the middle, 1/mm */
  curvature: number;
  /** force that holds the ends, N, for a bending stiffness of 1 N·mm² */
  force: number;
}

/** Ends this near to each other are as near as a strip bends without meeting itself. */
const MOST_SHORTENED = 0.9;

/**
 * Euler's elastica with hinged ends: a strip of the given length whose ends are the chord apart. With the modulus k:
 * chord = L (2E/K − 1), sagitta = L k/K, curvature = 4 k K/L, force = 4 K² EI/L² (Love, A Treatise on the Mathematical
 * Theory of Elasticity, 4th ed., section 263). Without shortening it is straight under Euler's load π² EI/L².
 */
export function elastica(length: number, chord: number): Elastica {
  const share = Math.min(Math.max(1 - chord / length, 0), MOST_SHORTENED);
  let [low, high] = [0, 0.999];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (shortening(middle) < share) low = middle;
    else high = middle;
  }
  const k = (low + high) / 2;
  const { first } = completeElliptic(k);
  return { sagitta: (length * k) / first, curvature: (4 * k * first) / length, force: ((2 * first) / length) ** 2 };
}

function shortening(k: number): number {
  const { first, second } = completeElliptic(k);
  return 2 - (2 * second) / first;
}

/**
 * Complete elliptic integrals of the first and second kind for the modulus k, by the arithmetic–geometric mean
 * (Abramowitz and Stegun, 17.6).
 */
export function completeElliptic(k: number): { first: number; second: number } {
  let [a, b, c] = [1, Math.sqrt(1 - k * k), k];
  let sum = (c * c) / 2;
  for (let weight = 1; Math.abs(c) > 1e-16; weight *= 2) {
    [a, b, c] = [(a + b) / 2, Math.sqrt(a * b), (a - b) / 2];
    sum += weight * c * c;
    if (weight > 1e6) break;
  }
  const first = Math.PI / (2 * a);
  return { first, second: first * (1 - sum) };
}
