/** x, y, z in mm in the alcove's frame, or a direction in it. */
export type Vec3 = [x: number, y: number, z: number];

export const plus = (a: Vec3, b: Vec3, k = 1): Vec3 => [a[0] + k * b[0], a[1] + k * b[1], a[2] + k * b[2]];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a: Vec3): number => Math.hypot(...a);
export const unit = (a: Vec3): Vec3 => plus([0, 0, 0], a, 1 / length(a));
export const between = (a: Vec3, b: Vec3, share: number): Vec3 => plus(plus([0, 0, 0], a, 1 - share), b, share);
