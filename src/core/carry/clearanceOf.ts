import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import type { Alcove } from '../alcove';
import { constant, scale, subtract } from '../dual';
import type { Job } from '../job-file';
import { Z_95 } from '../reliability';
import { lengthSd } from '../survey';
import type { Section } from './section';
import type { Sweep } from './sweep';

/** A clearance with its standard deviation, mm; null = nothing bounds. */
export interface Clearance {
  clearance: number | null;
  sd: number;
}

/** Room on each side between the side walls, with what the readings leave open of the two places where it is least. */
export function acrossClearance(
  { clearance, low, high }: Sweep,
  sections: readonly Section[],
  alcove: Alcove,
  covariance: Matrix,
): Clearance {
  if (!Number.isFinite(clearance)) return { clearance: null, sd: 0 };
  const at = (wall: 'left' | 'right', { section, depth }: Sweep['low']) =>
    alcove[wall].at(constant(depth), constant(sections[section]!.at));
  const room = scale(subtract(at('right', high), at('left', low)), 0.5);
  return { clearance, sd: standardDeviation(room, covariance) };
}

/** Room above and below between rim and what hangs over it; that is measured by tape from the rim. */
export function uprightClearance(
  { clearance, low }: Sweep,
  rimAt: (section: number, depth: number) => [x: number, z: number],
  alcove: Alcove,
  covariance: Matrix,
  { instruments, carrying }: Job,
): Clearance {
  if (!Number.isFinite(clearance)) return { clearance: null, sd: 0 };
  const [x, z] = rimAt(low.section, low.depth);
  const rim = alcove.rim.at(constant(x), constant(z));
  const over = Math.min(carrying.ceiling ?? Number.POSITIVE_INFINITY, carrying.header ?? Number.POSITIVE_INFINITY);
  const taped = lengthSd(over - rim.value, 'tape', instruments);
  return { clearance, sd: Math.hypot(standardDeviation(rim, covariance), taped) / 2 };
}

export const fits = ({ clearance }: Clearance): boolean => clearance === null || clearance >= 0;

/** Less than its 95 % half-width is left. */
export const isDoubtful = ({ clearance, sd }: Clearance): boolean => clearance !== null && clearance < Z_95 * sd;

export const tighter = (a: Clearance, b: Clearance): Clearance =>
  b.clearance !== null && Number.isFinite(b.clearance) && (a.clearance === null || b.clearance < a.clearance) ? b : a;
