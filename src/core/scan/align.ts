import type { Facets } from './facets';
import { frameAt, movePoints, type RigidFrame } from './rigidFrame';
import { cross, squareTo, type Vec } from './vec';

/** Facets this near to level in their normal are upright, as a sine. */
const UPRIGHT = 0.17;

/** The frame with y up whose x and z run along the walls: most upright facets stand square to one of them. */
export function alignedFrame(facets: Facets, up: Vec): RigidFrame {
  const level = squareTo(Math.abs(up[0]) < 0.8 ? [1, 0, 0] : [0, 0, 1], up);
  const out = cross(level, up);
  const { count, normals } = facets;
  // Walls stand at right angles: the angle counts modulo 90°, so four times it as a direction.
  const bins = new Float64Array(90);
  const angles: number[] = [];
  for (let i = 0; i < count; i++) {
    const n: Vec = [normals[3 * i]!, normals[3 * i + 1]!, normals[3 * i + 2]!];
    if (Math.abs(n[0] * up[0] + n[1] * up[1] + n[2] * up[2]) > UPRIGHT) continue;
    const a = n[0] * level[0] + n[1] * level[1] + n[2] * level[2];
    const b = n[0] * out[0] + n[1] * out[1] + n[2] * out[2];
    const angle = modulo((Math.atan2(b, a) * 180) / Math.PI, 90);
    angles.push(angle);
    bins[Math.min(89, Math.floor(angle))]! += 1;
  }
  const smoothed = bins.map((_, k) => [-1, 0, 1].reduce((sum, d) => sum + bins[modulo(k + d, 90)]!, 0));
  const peak = smoothed.indexOf(Math.max(...smoothed)) + 0.5;
  let [sine, cosine] = [0, 0];
  for (const angle of angles) {
    if (Math.abs(modulo(angle - peak + 45, 90) - 45) > 4) continue;
    sine += Math.sin((4 * angle * Math.PI) / 180);
    cosine += Math.cos((4 * angle * Math.PI) / 180);
  }
  const yaw = Math.atan2(sine, cosine) / 4;
  const x: Vec = [0, 1, 2].map((k) => Math.cos(yaw) * level[k]! + Math.sin(yaw) * out[k]!) as Vec;
  return frameAt(x, up, cross(x, up), [0, 0, 0]);
}

export function facetsIn(frame: RigidFrame, { count, middles, normals }: Facets): Facets {
  const result: Facets = { count, middles: new Float64Array(3 * count), normals: new Float64Array(3 * count) };
  movePoints(frame, middles, result.middles);
  movePoints({ rotation: frame.rotation, translation: [0, 0, 0] }, normals, result.normals);
  return result;
}

const modulo = (a: number, n: number): number => ((a % n) + n) % n;
