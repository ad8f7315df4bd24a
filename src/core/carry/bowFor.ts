import type { Bedding } from '../job-file';
import type { Panel } from '../panel';
import { elastica } from './elastica';
import type { WayIn } from './report';

/** Narrower than this a panel is not bowed, mm. */
const LEAST_CHORD = 50;

/**
 * The bow, as stiff a sheet as the job states, that draws a panel's upright edges together by `shortening` mm; null
 * where no bow can.
 */
export function bowFor(
  { strainLimit, modulusAcross }: Bedding,
  { thickness }: Pick<Panel, 'thickness'>,
  { width, height }: { width: number; height: number },
  shortening: number,
): WayIn['bow'] {
  if (width - shortening < LEAST_CHORD || width < 2 * LEAST_CHORD) return null;
  const { sagitta, curvature, force } = elastica(width, width - Math.max(0, shortening));
  const stiffness = (modulusAcross * thickness ** 3 * height) / 12;
  return {
    shortening: Math.max(0, shortening),
    sagitta,
    strain: 100 * (thickness / 2) * curvature,
    limit: 100 * strainLimit,
    force: force * stiffness,
  };
}
