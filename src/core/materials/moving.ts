import type { Supplies } from '../job-file';
import type { Joint } from './joint';
import { movementBeside, widthForMovement } from './movement';

/** A joint that closes to less than this is sealed by a fillet alone: there is no width to take a share of, mm. */
const LEAST_WIDTH = 0.1;

/** The joint with what the movement of a sheet of the given length beside it asks of its sealant. */
export function moving(joint: Omit<Joint, 'wants' | 'moves'>, length: number, supplied: Supplies['movement']): Joint {
  const [least, most] = movementBeside(length, supplied);
  const wants = widthForMovement(most, supplied.capability);
  const width = Math.min(...joint.widths.map(([, each]) => each));
  if (width < LEAST_WIDTH) return { ...joint, wants, moves: null };
  const share = most / width;
  return { ...joint, wants, moves: { least, most, width, share, used: share / supplied.capability } };
}
