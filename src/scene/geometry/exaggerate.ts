import type { Vec3 } from './mesh-data';
import type { AlcoveShape } from './shape';

const share = (value: number): number => Math.min(1, Math.max(0, value));

/**
 * Magnifies how far the alcove is out of true: a point on a wall moves to `factor` times its distance from the wall's
 * nominal plane, points between the walls move with them in proportion, so that all that touches still touches.
 * Factor 1 leaves everything where it is.
 */
export function exaggerated(shape: AlcoveShape, factor: number): (point: Vec3) => Vec3 {
  const { nominal, side, front, back, rim, top } = shape;
  const more = factor - 1;
  return ([x, y, z]) => {
    const toLeft = share((nominal.right - x) / (nominal.right - nominal.left));
    const toBack = share(1 - z / nominal.front);
    const toRim = share((top - y) / (top - nominal.rim));
    const across = toLeft * (side.left(y, z) - nominal.left) + (1 - toLeft) * (side.right(y, z) - nominal.right);
    const frontEdge = toLeft * front.left(y) + (1 - toLeft) * front.right(y) - nominal.front;
    const outward = toBack * back(x, y) + (1 - toBack) * frontEdge;
    const upward = toRim * (rim(x, z) - nominal.rim);
    return [x + more * across, y + more * upward, z + more * outward];
  };
}
