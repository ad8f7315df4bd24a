import { randomFrom } from './random';
import type { TrueAlcove, TrueSide } from './trueAlcove';

/** Draws stay within this many standard deviations, so that the alcove remains one that people build. */
const CUT = 2.5;

/** Random alcove of a common size, as far out of true as the priors of design section 4 expect; same seed, same alcove. */
export function plausibleAlcove(seed: number): TrueAlcove {
  const random = randomFrom(seed);
  const draw = (sd: number): number => random.normal(0, sd, CUT);
  const plumb = () => draw(8e-3);
  const twist = () => draw(4e-6);
  const bow = () => draw(4e-6);
  const side = (c: number): TrueSide => ({ c, y: plumb(), z: draw(10e-3), yz: twist(), yy: bow(), zz: bow() });
  const front = () => ({ f0: random.normal(760, 12, CUT), f1: draw(8e-3) });
  const plumbLine = random.between(-60, 60);
  return {
    back: { y: plumb(), xy: twist(), xx: bow(), yy: bow() },
    left: side(-random.normal(762, 10, CUT) - plumbLine),
    right: side(random.normal(762, 10, CUT) - plumbLine),
    rim: { c: random.normal(-700, 25, CUT), x: draw(5e-3), z: draw(5e-3), xx: bow(), zz: bow() },
    front: { left: front(), right: front() },
    humps: [],
  };
}
