import { adjust } from '../../src/core/adjust';
import { condenseScan, segmentScan } from '../../src/core/scan';
import { jobWith, plausibleAlcove } from '../simulate';
import { clutteredScene, NO_ERRORS, scanOf, usualStations } from '../simulate/scanner';
import type { BenchOptions, Row } from './bench';
import { timeTogether } from './time';

export const name = 'scan';
export const about =
  'Fitted walls from the bytes of a cloud (60 % clutter, 2 mm noise), against one plain pass: every coordinate read from the bytes once, mean and scatter summed.';

/** The points are read from their bytes as a binary PLY has them: x, y, z in single precision, little-endian. */
export function run({ count = 1_000_000 }: BenchOptions): Row[] {
  return [count, 10 * count].flatMap((points) => {
    const bytes = bytesOf(points);
    const { pass, fit } = timeTogether(
      { pass: () => plainPass(bytes), fit: () => fitted(bytes) },
      { rounds: 5, leastMs: 1 },
    );
    return [
      {
        what: `${points} points to fitted walls`,
        value: fit,
        unit: 'ms',
        against: { what: 'one plain pass', value: pass },
      },
      { what: `${points} points, per point`, value: (1e6 * fit) / points, unit: 'ns' },
      {
        what: `${points} points, most memory`,
        value: process.resourceUsage().maxRSS / 2 ** 10,
        unit: 'MiB',
        note: 'whole process, the simulated file among it',
      },
    ];
  });
}

function bytesOf(points: number): DataView {
  const { cloud } = scanOf(clutteredScene(plausibleAlcove(3)), {
    points,
    perRay: Math.max(1, Math.round(points / 100_000)),
    seed: 1,
    errors: { ...NO_ERRORS, noise: 2, beam: 3, dropOut: 0.05 },
    stations: usualStations(),
    clutterShare: 0.6,
  });
  const { positions } = cloud;
  const view = new DataView(new ArrayBuffer(4 * positions.length));
  positions.forEach((value, i) => {
    view.setFloat32(4 * i, value, true);
  });
  return view;
}

function plainPass(bytes: DataView): Float64Array {
  const sums = new Float64Array(9);
  for (let i = 0; i < bytes.byteLength; i += 12) {
    const [x, y, z] = [bytes.getFloat32(i, true), bytes.getFloat32(i + 4, true), bytes.getFloat32(i + 8, true)];
    sums[0]! += x;
    sums[1]! += y;
    sums[2]! += z;
    sums[3]! += x * x;
    sums[4]! += x * y;
    sums[5]! += x * z;
    sums[6]! += y * y;
    sums[7]! += y * z;
    sums[8]! += z * z;
  }
  return sums;
}

function fitted(bytes: DataView): unknown {
  const positions = new Float32Array(bytes.byteLength / 4);
  for (let i = 0; i < positions.length; i++) positions[i] = bytes.getFloat32(4 * i, true);
  const cloud = { positions, origin: [0, 0, 0] as [number, number, number] };
  const outcome = segmentScan(cloud);
  if ('reason' in outcome) throw new Error(outcome.reason);
  const cells = condenseScan(cloud, outcome.labels, outcome.frame)!;
  return adjust(jobWith([], { scans: [{ id: 'scan', kind: 'scan', ...cells }] }));
}
