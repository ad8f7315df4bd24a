import { type ScanUnit, unitMillimetres } from './guess';
import type { RawScan, Up } from './raw-scan';

type Turn = (x: number, y: number, z: number) => [number, number, number];

/** Each turns the file's axes so that the named one is y; none mirrors. */
const turns: Record<Up, Turn> = {
  '+y': (x, y, z) => [x, y, z],
  '-y': (x, y, z) => [x, -y, -z],
  '+z': (x, y, z) => [x, z, -y],
  '-z': (x, y, z) => [x, -z, y],
  '+x': (x, y, z) => [-y, x, z],
  '-x': (x, y, z) => [y, -x, z],
};

/** The points in mm with y up, relative to an origin likewise. */
export function toCloud(
  { positions, origin }: Pick<RawScan, 'positions' | 'origin'>,
  unit: ScanUnit,
  up: Up,
): { positions: Float32Array<ArrayBuffer>; origin: [number, number, number] } {
  const mm = unitMillimetres[unit];
  const turn = turns[up];
  const made = new Float32Array(positions.length);
  const [px, py, pz] = turn(1, 2, 3);
  const [fx, fy, fz] = [mm * Math.sign(px), mm * Math.sign(py), mm * Math.sign(pz)];
  const [ix, iy, iz] = [Math.abs(px) - 1, Math.abs(py) - 1, Math.abs(pz) - 1];
  for (let at = 0; at < positions.length; at += 3) {
    made[at] = fx * positions[at + ix]!;
    made[at + 1] = fy * positions[at + iy]!;
    made[at + 2] = fz * positions[at + iz]!;
  }
  const [x, y, z] = turn(...origin);
  return { positions: made, origin: [mm * x, mm * y, mm * z] };
}
