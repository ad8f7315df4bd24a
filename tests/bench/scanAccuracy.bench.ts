import { solve } from '../../src/core';
import type { Reading } from '../../src/core/job-file';
import { condenseScan, segmentScan } from '../../src/core/scan';
import { exactValue, jobWith, markErrors, plausibleAlcove, type Unread } from '../simulate';
import { clutteredScene, emptyScene, NO_ERRORS, type ScannerErrors, scanOf, usualStations } from '../simulate/scanner';
import type { BenchOptions, Row } from './bench';
import { share } from './time';

export const name = 'scan-accuracy';
export const about =
  'Cut edges from simulated scans against the truth, 1,000,000 points each, control lines tied by two tapes and a drop without error.';

const CASES: { what: string; clutter?: number; humps?: boolean; errors: Partial<ScannerErrors> }[] = [
  { what: '2 mm noise', errors: { noise: 2 } },
  { what: '2 mm noise, 60 % clutter', clutter: 0.6, errors: { noise: 2, beam: 3, dropOut: 0.05 } },
  { what: '2 mm noise, uneven walls', humps: true, errors: { noise: 2, beam: 3, dropOut: 0.05 } },
  { what: '2 mm noise, 1 mm bias', errors: { noise: 2, bias: 1 } },
  { what: '2 mm noise, drift 0.3 mm and 0.3 mm/m', errors: { noise: 2, drift: { turn: 0.3, move: 0.3 } } },
];

export function run({ count = 4 }: BenchOptions): Row[] {
  return CASES.flatMap(({ what, clutter, humps, errors }) => {
    const edges = Array.from({ length: count }, (_, k) =>
      edgesOf(k + 3, clutter, humps, { ...NO_ERRORS, ...errors }),
    ).flat();
    const off = edges.map(({ error }) => Math.abs(error));
    return [
      {
        what: `${what}: worst edge`,
        value: Math.max(...off),
        unit: 'mm',
        asked: { atMost: 1 },
        note: `95 % within ${share(off, 0.95).toFixed(2)} mm`,
      },
      {
        what: `${what}: bias`,
        value: edges.reduce((sum, { inwards }) => sum + inwards, 0) / edges.length,
        unit: 'mm',
        note: 'mean, towards the room',
      },
      {
        what: `${what}: within the stated 95 %`,
        value: (100 * edges.filter(({ error, sd }) => Math.abs(error) < 1.96 * sd).length) / edges.length,
        unit: '%',
      },
    ];
  });
}

function edgesOf(seed: number, clutterShare: number | undefined, humps: boolean | undefined, errors: ScannerErrors) {
  const alcove = plausibleAlcove(seed);
  if (humps) {
    alcove.humps = [
      { wall: 'back', at: 200, height: 100, rise: 4, radius: 220 },
      { wall: 'left', at: 300, height: -200, rise: -3, radius: 180 },
    ];
  }
  const scene = clutterShare === undefined ? emptyScene(alcove) : clutteredScene(alcove);
  const { cloud } = scanOf(scene, {
    points: 1_000_000,
    perRay: 4,
    seed,
    errors,
    stations: usualStations(),
    yaw: seed,
    ...(clutterShare !== undefined && { clutterShare }),
  });
  const outcome = segmentScan(cloud, { upKnown: true });
  if ('reason' in outcome) throw new Error(outcome.reason);
  const cells = condenseScan(cloud, outcome.labels, outcome.frame)!;
  const read = (reading: Unread): Reading => ({ ...reading, value: exactValue(alcove, reading), sd: 0.1 }) as Reading;
  const job = jobWith(
    [
      read({ id: 'left', kind: 'tape-to-corner', side: 'left', height: 0 }),
      read({ id: 'right', kind: 'tape-to-corner', side: 'right', height: 0 }),
      read({ id: 'drop', kind: 'tape-to-rim', wall: 'back', at: 0 }),
    ],
    { scans: [{ id: 'scan', kind: 'scan', scaleSd: 0.1, tiltSd: 0.05, biasSd: 0.5, ...cells }] },
  );
  const { panels } = solve(job);
  return markErrors(alcove, job, panels)
    .filter(({ edge }) => edge !== 'top')
    .map(({ edge, error, sd }) => ({ error, inwards: edge === 'right' || edge === 'front' ? -error : error, sd }));
}
