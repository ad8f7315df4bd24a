import { plausibleAlcove } from '../simulate';
import { clutteredScene, NO_ERRORS, scanOf, usualStations } from '../simulate/scanner';

const HEAD = ['x', 'y', 'z'].map((name) => `property float ${name}`).join('\n');

/** A binary PLY of an alcove with what stands about in it, in metres with z up, as a scanner writes it. */
export function scannedPly(points = 60_000): Buffer {
  const { cloud } = scanOf(clutteredScene(plausibleAlcove(4)), {
    points,
    seed: 11,
    errors: { ...NO_ERRORS, noise: 2, beam: 3, dropOut: 0.05, tilt: [4, -3] },
    stations: usualStations(),
    yaw: 2.1,
    shift: [900, -300, 1500],
    clutterShare: 0.3,
  });
  const body = Buffer.alloc(4 * cloud.positions.length);
  for (let at = 0; at < cloud.positions.length; at += 3) {
    const [x, y, z] = cloud.positions.subarray(at, at + 3) as unknown as [number, number, number];
    [x, -z, y].forEach((value, axis) => body.writeFloatLE(value / 1000, 4 * (at + axis)));
  }
  return Buffer.concat([
    Buffer.from(`ply\nformat binary_little_endian 1.0\nelement vertex ${points}\n${HEAD}\nend_header\n`),
    body,
  ]);
}
