/** Places along the turn looked at before the worst is narrowed down. */
const STEPS = 64;

/**
 * Length of the longest board, mm, that goes level round the corner of two corridors: the least over all positions of
 * before / sin α + after / sin β − thickness (cot α + cot β), α + β = turn. A thin board round a right angle:
 * (before^⅔ + after^⅔)^(3/2).
 * @param turn between the two ways, radians; a right-angled corner has π/2
 * @param thickness of the board as it is carried on edge, mm
 */
export function longestRoundCorner(before: number, after: number, turn: number, thickness: number): number {
  if (Math.min(before, after) <= thickness) return 0;
  const chord = (alpha: number): number => {
    const beta = turn - alpha;
    return before / Math.sin(alpha) + after / Math.sin(beta) - thickness * (1 / Math.tan(alpha) + 1 / Math.tan(beta));
  };
  let worst = 1;
  for (let k = 2; k < STEPS; k++) {
    if (chord((turn * k) / STEPS) < chord((turn * worst) / STEPS)) worst = k;
  }
  let [low, high] = [(turn * (worst - 1)) / STEPS, (turn * (worst + 1)) / STEPS];
  for (let step = 0; step < 100; step++) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (chord(a) < chord(b)) high = b;
    else low = a;
  }
  return Math.max(0, chord((low + high) / 2));
}
