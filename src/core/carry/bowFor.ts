import type { Panel } from '../panel';
import { elastica } from './elastica';
import type { WayIn } from './report';

/** Strain that a sheet's face takes, and its Young's modulus, N/mm² (common practice, no source). */
const STRAIN_LIMIT = 0.003;
const MODULUS = 3000;
/** Narrower than this a panel is not bowed, mm. */
const LEAST_CHORD = 50;

/** The bow that draws a panel's upright edges together by `shortening` mm; null where no bow can. */
export function bowFor(
  { thickness }: Pick<Panel, 'thickness'>,
  { width, height }: { width: number; height: number },
  shortening: number,
): WayIn['bow'] {
  if (width - shortening < LEAST_CHORD || width < 2 * LEAST_CHORD) return null;
  const { sagitta, curvature, force } = elastica(width, width - Math.max(0, shortening));
  const stiffness = (MODULUS * thickness ** 3 * height) / 12;
  return {
    shortening: Math.max(0, shortening),
    sagitta,
    strain: 100 * (thickness / 2) * curvature,
    limit: 100 * STRAIN_LIMIT,
    force: force * stiffness,
  };
}
