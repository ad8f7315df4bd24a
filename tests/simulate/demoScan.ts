import type { JobInput, Reading } from '../../src/core/job-file';
import { exactValue, type Unread } from './exactValue';
import { fullPlan } from './fullPlan';
import { writtenDown } from './noise';
import { randomFrom } from './random';
import { clutteredScene, NO_ERRORS, scanOf, usualStations } from './scanner';
import type { TrueAlcove } from './trueAlcove';

/** An alcove with a tub, its right wall wavy, of nobody's. */
export const scannedAlcove: TrueAlcove = {
  back: { y: 4.2e-3, xy: 1.8e-6, xx: -2.2e-6, yy: 1.4e-6 },
  left: { c: -752, y: -5.6e-3, z: 8.1e-3, yz: 1.2e-6, yy: -1.9e-6, zz: 2.3e-6 },
  right: { c: 766, y: 3.4e-3, z: -6.7e-3, yz: -2.4e-6, yy: 2.8e-6, zz: -1.1e-6 },
  rim: { c: -741, x: 2.4e-3, z: -1.8e-3, xx: 0.5e-6, zz: 0.8e-6 },
  front: { left: { f0: 764, f1: 3.2e-3 }, right: { f0: 758, f1: -2.6e-3 } },
  humps: [{ wall: 'right', at: 420, height: 260, rise: 6, radius: 260 }],
};

/** What is scanned, how many points at most, and how far out of the alcove they are cut off, mm. */
const RAYS = 150_000;
const MOST_POINTS = 40_000;
const KEPT = { x: [-830, 850], y: [-1300, 1120], z: [-40, 900] } as const;

/** A binary PLY of short integers, mm, z up, as it stands in `scenes/scans`. */
export function demoScanPly(): Buffer {
  const { cloud } = scanOf(clutteredScene(scannedAlcove), {
    points: RAYS,
    seed: 31,
    errors: { ...NO_ERRORS, noise: 1.5, scale: 0.0015, beam: 3, dropOut: 0.05, tilt: [3, -2] },
    stations: usualStations(),
    clutterShare: 0.12,
  });
  const kept: number[] = [];
  const within = (value: number, [low, high]: readonly [number, number]): boolean => value > low && value < high;
  for (let at = 0; at < cloud.positions.length; at += 3) {
    const [x, y, z] = cloud.positions.subarray(at, at + 3) as unknown as [number, number, number];
    if (within(x, KEPT.x) && within(y, KEPT.y) && within(z, KEPT.z)) kept.push(at);
  }
  const random = randomFrom(32);
  const chosen = kept.filter(() => random.between(0, kept.length) < MOST_POINTS);
  const body = Buffer.alloc(6 * chosen.length);
  chosen.forEach((at, i) => {
    const [x, y, z] = cloud.positions.subarray(at, at + 3) as unknown as [number, number, number];
    [x, -z, y].forEach((value, axis) => body.writeInt16LE(Math.round(value), 6 * i + 2 * axis));
  });
  const head = ['x', 'y', 'z'].map((name) => `property short ${name}\n`).join('');
  return Buffer.concat([
    Buffer.from(`ply\nformat binary_little_endian 1.0\nelement vertex ${chosen.length}\n${head}end_header\n`),
    body,
  ]);
}

const inches = (value: number): number => Number((25.4 * value).toFixed(3));

/** Plumb lines of a full plan, one for each way that a scan may lean. */
const hung = ['plumb-back-2', 'plumb-left-2'];

/** The job that the scan belongs to: few readings by hand, which correct it. */
export function demoScanJob(): JobInput {
  const read = (reading: Unread): Reading => ({ ...reading, value: exactValue(scannedAlcove, reading) }) as Reading;
  const readings = [
    read({ id: 'left corner', kind: 'tape-to-corner', side: 'left', height: 0 }),
    read({ id: 'right corner', kind: 'tape-to-corner', side: 'right', height: 0 }),
    read({ id: 'drop', kind: 'tape-to-rim', wall: 'back', at: 0 }),
    read({ id: 'drop left', kind: 'tape-to-rim', wall: 'left', at: inches(22) }),
    read({ id: 'drop right', kind: 'tape-to-rim', wall: 'right', at: inches(22) }),
    ...fullPlan(scannedAlcove, { top: inches(36), grid: 25.4 }).filter(({ id }) => hung.includes(id)),
    read({ id: 'width above', kind: 'span', height: inches(24), at: inches(12) }),
    read({ id: 'width below', kind: 'span', height: inches(-20), at: inches(24) }),
    read({ id: 'depth left', kind: 'depth', wall: 'left', height: 0 }),
    read({ id: 'depth right', kind: 'depth', wall: 'right', height: 0 }),
  ];
  return {
    format: 'nookwright-job',
    version: 1,
    name: 'Larkmere Wynd 3: bath scanned, a few readings by hand',
    display: 'in',
    levelAboveFloor: 1250,
    rim: { kind: 'tub', width: 760, apronHeight: 509 },
    readings: writtenDown(readings, 'in', 33),
    fixtures: [
      { id: 'valve', kind: 'valve', wall: 'right', aboveRim: inches(14), fromBack: inches(15), hole: inches(3.75) },
      { id: 'spout', kind: 'spout', wall: 'right', aboveRim: inches(5), fromBack: inches(15), hole: inches(1.25) },
    ],
    fit: { wetWall: 'right', thickness: inches(0.125), flexible: true, top: inches(36) },
    sheets: {
      back: { width: inches(62), height: inches(96) },
      left: { width: inches(32), height: inches(96) },
      right: { width: inches(32), height: inches(96) },
    },
  };
}
