import { type Job, leanOver, type Result } from '../../../core';
import { type AlcoveShape, onWall, type Vec3 } from '../../geometry';

/** A wall out of plumb, as it is drawn on the bare alcove. */
export interface DrawnLean {
  key: string;
  /** a plumb line before the wall, from its upper end down */
  line: [Vec3, Vec3];
  /** between the plumb line and the wall, where they are furthest apart */
  gap: [Vec3, Vec3];
  /** mm */
  value: number;
  /** standard deviation (1 sigma), mm */
  sd: number;
  into: boolean;
}

const OFF = 8;
/** Where along a wall its plumb line hangs: the middle of the back wall, and this share of the depth on side walls. */
const OUT = 0.8;

/** How far each wall leans over the panels' height: a plumb line touching the wall at one end, and the gap at the other. */
export function leansOf(
  shape: AlcoveShape,
  { walls, panels }: Pick<Result, 'walls' | 'panels'>,
  job: Job,
): DrawnLean[] {
  const low = Math.min(...panels.back.outline.map(([, v]) => v));
  const high = job.fit.top;
  return (['back', 'left', 'right'] as const).map((wall): DrawnLean => {
    const lean = leanOver(walls[wall], high - low);
    const on = onWall(shape, wall, OFF);
    const along = wall === 'back' ? (shape.nominal.left + shape.nominal.right) / 2 : OUT * shape.nominal.front;
    const [top, bottom] = [on(along, high), on(along, low)];
    const [touching, away] = lean.into ? [top, bottom] : [bottom, top];
    const hung = (at: Vec3): Vec3 => [touching[0], at[1], touching[2]];
    return { key: `${wall} lean`, line: [hung(top), hung(bottom)], gap: [hung(away), away], ...lean };
  });
}
