import type { Result, Side } from '../../core';
import { lineThrough, mean, surfaceThrough } from './sampled';

/** The alcove as measured, as functions to draw from; all mm. */
export interface AlcoveShape {
  /** z of the back wall at (x, y) */
  back(x: number, y: number): number;
  /** x of a side wall at (y, z) */
  side: Record<Side, (y: number, z: number) => number>;
  /** y of the rim's plane at (x, z) */
  rim(x: number, z: number): number;
  /** z of a side wall's front edge at y */
  front: Record<Side, (y: number) => number>;
  /** x of the inside corner at y */
  corner: Record<Side, (y: number) => number>;
  bottom: number;
  top: number;
  /** where each surface would stand if it were true: x, x, y, z */
  nominal: { left: number; right: number; rim: number; front: number };
}

export function alcoveShape({ walls, rim, front }: Pick<Result, 'walls' | 'rim' | 'front'>): AlcoveShape {
  const sampled = walls.back.sampled;
  const backRows = surfaceThrough(sampled.height, sampled.at, sampled.value);
  const back = (x: number, y: number) => backRows(y, x);
  const sideOf = (wall: Side) =>
    surfaceThrough(walls[wall].sampled.height, walls[wall].sampled.at, walls[wall].sampled.value);
  const side = { left: sideOf('left'), right: sideOf('right') };
  const frontOf = (wall: Side) => lineThrough(front[wall].height, front[wall].value);
  const heights = [sampled, walls.left.sampled, walls.right.sampled].flatMap(({ height }) => height);
  const rimRows = surfaceThrough(rim.z, rim.x, rim.value);
  const nominal = {
    left: mean(walls.left.sampled.value.flat()),
    right: mean(walls.right.sampled.value.flat()),
    rim: mean(rim.value.flat()),
    front: mean([...front.left.value, ...front.right.value]),
  };
  const cornerOf = (wall: Side) => (y: number) => {
    let x = nominal[wall];
    for (let step = 0; step < 4; step++) x = side[wall](y, back(x, y));
    return x;
  };
  return {
    back,
    side,
    rim: (x, z) => rimRows(z, x),
    front: { left: frontOf('left'), right: frontOf('right') },
    corner: { left: cornerOf('left'), right: cornerOf('right') },
    bottom: Math.min(...heights),
    top: Math.max(...heights),
    nominal,
  };
}
