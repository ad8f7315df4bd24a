import type { AdjustmentReport } from '../adjust';
import { type Job, SIDES, WALLS, type WallName } from '../job-file';

/** Sizes without which a wall's panel has no width or height. */
const sizes: Record<WallName, readonly string[]> = {
  back: ['left.position', 'right.position', 'rim.height'],
  left: ['left.position', 'front.left.position', 'rim.height'],
  right: ['right.position', 'front.right.position', 'rim.height'],
};
/** By the parameter's name. */
export const panelSizeWords: Record<string, string> = {
  'left.position': 'plumb line to the left corner',
  'right.position': 'plumb line to the right corner',
  'rim.height': 'level line to the rim',
  'front.left.position': 'left corner to front edge',
  'front.right.position': 'right corner to front edge',
};

export type Doubts = Pick<AdjustmentReport, 'parameters' | 'suspects'>;

export const assumedIn =
  ({ parameters }: Doubts) =>
  (parameter: string): boolean =>
    parameters.some(({ name, assumed }) => assumed && name === parameter);

/** Sizes of a wall's panel that no reading gives, in words. */
export const unmeasuredSizes = (doubts: Doubts, wall: WallName): string[] =>
  sizes[wall].filter(assumedIn(doubts)).map((name) => panelSizeWords[name]!);

/** Readings that look wrong and bear on a wall, by id. */
export function suspectsOn({ suspects }: Doubts, job: Job, wall: WallName): string[] {
  return suspects.map(({ id }) => id).filter((id) => wallsOf(job, id.split('/')[0]!).includes(wall));
}

function wallsOf(job: Job, id: string): readonly WallName[] {
  const reading = job.readings.find((each) => each.id === id);
  if (!reading) return [];
  if ('wall' in reading) return [reading.wall];
  if ('side' in reading) return ['back', reading.side];
  return reading.kind === 'span' ? SIDES : WALLS;
}
