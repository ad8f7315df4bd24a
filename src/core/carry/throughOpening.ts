const STEPS = 90;

/** How a sheet's cross-section goes through an opening. Lengths in mm. */
export interface Through {
  /** least distance all round less than which it would touch; negative = it does not pass */
  clearance: number;
  /** how far it leans over from upright, radians */
  lean: number;
}

/**
 * A rectangle of `height` × `thickness` held upright in an opening of `wide` × `high`, or, where it is too high for that,
 * leaned over as leaves most all round. Exact for its lean: a rectangle lies in another just where its
 * extents do (Carver, American Mathematical Monthly 64, 1957, gives the limit in closed form).
 */
export function throughOpening(height: number, thickness: number, wide: number, high: number): Through {
  const at = (lean: number): Through => {
    const [c, s] = [Math.cos(lean), Math.sin(lean)];
    const up = high - (height * c + thickness * s);
    const across = wide - (height * s + thickness * c);
    return { clearance: Math.min(up, across) / 2, lean };
  };
  const upright = at(0);
  if (upright.clearance >= 0) return upright;
  const step = Math.PI / 2 / STEPS;
  let best = upright;
  for (let k = 1; k <= STEPS; k++) {
    const here = at(k * step);
    if (here.clearance > best.clearance) best = here;
  }
  return refined(at, Math.max(0, best.lean - step), Math.min(Math.PI / 2, best.lean + step));
}

/** The best lean of a stretch in which there is one best: golden section (Kiefer 1953). */
function refined(at: (lean: number) => Through, from: number, to: number): Through {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  for (let step = 0; step < 60; step++) {
    const [a, b] = [high - ratio * (high - low), low + ratio * (high - low)];
    if (at(a).clearance > at(b).clearance) high = b;
    else low = a;
  }
  return at((low + high) / 2);
}
