import { adjust } from '../../src/core/adjust';
import { condenseScan, segmentScan } from '../../src/core/scan';
import { extentOf, guessUnit, guessUp, readScan, toCloud } from '../../src/scan';
import { jobWith, plausibleAlcove } from '../simulate';
import { clutteredScene, NO_ERRORS, scanOf, usualStations } from '../simulate/scanner';
import type { BenchOptions, Row } from './bench';
import { share } from './time';

export const name = 'scan';
export const about =
  'Fitted walls from the bytes of a binary PLY file (60 % clutter, 2 mm noise): read, unit and up guessed, sorted, condensed, adjusted; against one plain pass: every coordinate read from the same bytes once, mean and scatter summed.';

const ROUNDS = 7;

export async function run({ count = 1_000_000 }: BenchOptions): Promise<Row[]> {
  const rows: Row[] = [];
  for (const points of [count, 10 * count]) {
    const { file, body } = fileOf(points);
    const [passes, fits]: [number[], number[]] = [[], []];
    // By turns, so that a slower moment of the machine falls on both alike; the first round warms up.
    for (let round = 0; round <= ROUNDS; round++) {
      const began = performance.now();
      if (plainPass(body)[0] === 0) throw new Error('an empty pass');
      const passed = performance.now();
      await fitted(file);
      const fit = performance.now();
      if (round === 0) continue;
      passes.push(passed - began);
      fits.push(fit - passed);
    }
    rows.push(
      {
        what: `${points} points, from file bytes to fitted walls`,
        value: share(fits, 0.5),
        unit: 'ms',
        against: { what: 'one plain pass', value: share(passes, 0.5) },
        asked: { of: 'ratio', atMost: 25 },
      },
      { what: `${points} points, per point`, value: (1e6 * share(fits, 0.5)) / points, unit: 'ns' },
      {
        what: `${points} points, most memory`,
        value: process.resourceUsage().maxRSS / 2 ** 10,
        unit: 'MiB',
        asked: { atMost: 1024 },
        note: 'whole process, the simulated file and its points among it',
      },
    );
  }
  const [small, large] = rows.filter(({ unit }) => unit === 'ms');
  return [
    ...rows,
    {
      what: 'growth with the points, power',
      value: Math.log10(large!.value / small!.value),
      unit: '1',
      asked: { atMost: 1.05 },
      note: 'from the first count to ten times as many',
    },
  ];
}

/** A binary little-endian PLY file of points in single precision, as scanners write, up along its z, in m. */
function fileOf(points: number): { file: File; body: DataView } {
  const { cloud } = scanOf(clutteredScene(plausibleAlcove(3)), {
    points,
    perRay: Math.max(1, Math.round(points / 100_000)),
    seed: 1,
    errors: { ...NO_ERRORS, noise: 2, beam: 3, dropOut: 0.05 },
    stations: usualStations(),
    clutterShare: 0.6,
  });
  const { positions } = cloud;
  const body = new DataView(new ArrayBuffer(4 * positions.length));
  for (let i = 0; i < positions.length; i += 3) {
    body.setFloat32(4 * i, positions[i]! * 1e-3, true);
    body.setFloat32(4 * i + 4, -positions[i + 2]! * 1e-3, true);
    body.setFloat32(4 * i + 8, positions[i + 1]! * 1e-3, true);
  }
  const properties = ['x', 'y', 'z'].map((axis) => `property float ${axis}\n`).join('');
  const head = `ply\nformat binary_little_endian 1.0\nelement vertex ${points}\n${properties}end_header\n`;
  return { file: new File([head, body], 'scan.ply'), body };
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

async function fitted(file: File): Promise<unknown> {
  const read = await readScan(file);
  if (!read.ok) throw new Error(read.message);
  const extent = extentOf(read.scan.positions);
  const cloud = toCloud(read.scan, guessUnit(read.scan, extent), guessUp(read.scan, extent));
  const outcome = segmentScan(cloud);
  if ('reason' in outcome) throw new Error(outcome.reason);
  const cells = condenseScan(cloud, outcome.labels, outcome.frame)!;
  return adjust(jobWith([], { scans: [{ id: 'scan', kind: 'scan', ...cells }] }));
}
