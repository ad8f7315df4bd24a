import { movePoint } from '../../core';
import type { DrawnPanel, Vec3 } from '../geometry';
import type { poseBetween } from './pose-between';

/** A panel's triangles and the outline of its face, moved to a pose. */
export function movedPanel({ solid }: DrawnPanel, pose: ReturnType<typeof poseBetween>): DrawnPanel['solid'] {
  const xs = solid.faceOutline.map(([x]) => x);
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  const [middle, half] = [(from + to) / 2, Math.max((to - from) / 2, 1)];
  const place = (point: Vec3): Vec3 => movePoint({ ...pose, step: '' }, point, middle, half);
  const positions: number[] = [];
  const { positions: still } = solid.mesh;
  for (let k = 0; k < still.length; k += 3) positions.push(...place([still[k]!, still[k + 1]!, still[k + 2]!]));
  return { mesh: { positions, indices: solid.mesh.indices }, faceOutline: solid.faceOutline.map(place) };
}
