import { z } from 'zod';
import { between, millimetres } from './field';

/**
 * How sheets sit on their walls. A sheet with `fit.flexible` follows its wall whatever is stated here; any other is
 * `rigid`, or as stiff as `stated`. Defaults are common practice, no source, unless one is named. Lengths in mm.
 */
export const bedding = z.strictObject({
  stiffness: z.enum(['rigid', 'stated']).default('rigid'),
  /**
   * what edges are cut to: a bed of the same thickness all over, the sheet as it really sits, or as it sits once shimmed.
   * Files without it are from before it could be chosen and keep their sizes.
   */
  edges: z.enum(['even', 'seated', 'shimmed']).default('even'),
  /** Young's moduli along the sheet's width and height, N/mm²; the maker's sheet says them */
  modulusAcross: between(1, 500_000, ' N/mm²').default(3000),
  modulusUp: between(1, 500_000, ' N/mm²').default(3000),
  /** contraction along the height under stress along the width */
  poisson: between(0, 0.49, '').default(0.35),
  /** strain at its faces beyond which a sheet is over-bent */
  strainLimit: between(0.0001, 0.1, '').default(0.003),
  /** thickest bed that the adhesive bridges: 3/8 in */
  reach: millimetres(0.5, 60).default(9.525),
  /** what holds the sheet to the wall while the adhesive cures: strips, braces and the grab of the wet adhesive, N/m² */
  pressing: between(0.1, 100_000, ' N/m²').default(100),
  /** the plane that shims bring a sheet to: flat as it leans, or plumb too */
  shimTo: z.enum(['flat', 'plumb']).default('flat'),
  /** between shims: 16 in */
  shimSpacing: millimetres(50, 1500).default(406.4),
  /** thinner ones are left to the adhesive: 1/32 in */
  leastShim: millimetres(0.1, 10).default(0.79375),
});
