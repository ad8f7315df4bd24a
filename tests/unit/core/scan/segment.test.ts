import { describe, expect, it } from 'vitest';
import { LABEL, type PointCloud, type Segmented, segmentScan } from '../../../../src/core/scan';
import { lehmer } from '../../../../src/core/scan/sample';
import { plausibleAlcove } from '../../../simulate';
import {
  clutteredScene,
  emptyScene,
  NO_ERRORS,
  type Scene,
  type SimulatedScan,
  scanOf,
  usualStations,
} from '../../../simulate/scanner';

const alcove = plausibleAlcove(4);
const scanned = (scene: Scene, clutterShare?: number): SimulatedScan =>
  scanOf(scene, {
    points: 60_000,
    seed: 11,
    errors: { ...NO_ERRORS, noise: 2, beam: 3, dropOut: 0.05, tilt: [4, -3] },
    stations: usualStations(),
    yaw: 2.1,
    shift: [900, -300, 1500],
    ...(clutterShare !== undefined && { clutterShare }),
  });
const segmented = (cloud: PointCloud, seed = 1): Segmented => {
  const outcome = segmentScan(cloud, { seed });
  if ('reason' in outcome) throw new Error(outcome.reason);
  return outcome;
};
/** Share of the alcove's points that are labelled as part of it, and share of the points so labelled that are not. */
const rates = ({ wanted }: SimulatedScan, { labels }: Segmented) => {
  let [found, all, wrong] = [0, 0, 0];
  labels.forEach((label, i) => {
    const taken = label >= LABEL.rim && label <= LABEL.front;
    if (wanted[i] === 1) all++;
    if (taken && wanted[i] === 1) found++;
    if (taken && wanted[i] === 0) wrong++;
  });
  return { found: found / all, wrong: wrong / (found + wrong) };
};

describe('segmentScan', () => {
  it('finds walls, rim, floor and opening in an empty alcove, however the cloud is turned', () => {
    const scan = scanned(emptyScene(alcove));
    const outcome = segmented(scan.cloud);
    const { found, wrong } = rates(scan, outcome);
    expect(found).toBeGreaterThan(0.95);
    expect(wrong).toBeLessThan(0.03);
    expect(outcome.quality.width).toBeCloseTo(alcove.right.c - alcove.left.c, -0.5);
    for (const label of [LABEL.floor, LABEL.rim, LABEL.back, LABEL.left, LABEL.right, LABEL.front]) {
      expect(outcome.quality.counts[label], String(label)).toBeGreaterThan(200);
    }
  });

  it('finds the walls of an alcove that is an eighteenth of what was scanned', () => {
    const { cloud } = scanned(emptyScene(alcove));
    const alone = segmented(cloud).quality.counts;
    const random = lehmer(5);
    const [times, count] = [18, cloud.positions.length / 3];
    const positions = Float32Array.from({ length: 3 * times * count }, (_, i) =>
      i % 3 === 1 ? 3000 * (random() - 0.5) : 9000 * (random() - 0.5),
    );
    for (let i = 0; i < count; i++) positions.set(cloud.positions.subarray(3 * i, 3 * i + 3), 3 * times * i);
    const { counts } = segmented({ ...cloud, positions }).quality;
    for (const label of [LABEL.back, LABEL.left, LABEL.right])
      expect(Math.abs(counts[label]! / alone[label]! - 1)).toBeLessThan(0.15);
  });

  it('survives six points of ten on towels, taps, bottles, a curtain and a person', () => {
    const scan = scanned(clutteredScene(alcove), 0.6);
    const { found, wrong } = rates(scan, segmented(scan.cloud));
    expect(found).toBeGreaterThan(0.93);
    expect(wrong).toBeLessThan(0.06);
  });

  it('finds the same from the same seed', () => {
    const { cloud } = scanned(clutteredScene(alcove));
    expect(segmented(cloud, 5)).toEqual(segmented(cloud, 5));
  });

  it('takes the scanner at its word about up where it measured it', () => {
    const { cloud } = scanned(emptyScene(alcove));
    const known = segmentScan(cloud, { upKnown: true });
    if ('reason' in known) throw new Error(known.reason);
    expect(known.frame.rotation.slice(3, 6)).toEqual([0, 1, 0]);
    expect(known.quality.upTurned).toBe(0);
  });

  it('says what is wrong with too few points, with a ball, with nothing but NaN and when it is cancelled', () => {
    const { cloud } = scanned(emptyScene(alcove));
    const cases: PointCloud[] = [
      { positions: new Float32Array(30), origin: [0, 0, 0] },
      { positions: new Float32Array(30_000).fill(Number.NaN), origin: [0, 0, 0] },
      { positions: ball(20_000), origin: [0, 0, 0] },
    ];
    for (const each of cases) {
      const outcome = segmentScan(each);
      expect('reason' in outcome ? outcome.reason : 'an alcove').toMatch(/scan/i);
    }
    expect(segmentScan(cloud, { cancelled: () => true })).toEqual({ reason: expect.stringContaining('put away') });
  });

  it('leaves points that are no numbers unknown and finds the rest', () => {
    const { cloud } = scanned(emptyScene(alcove));
    const positions = cloud.positions.slice();
    for (let i = 0; i < positions.length; i += 30) positions[i] = Number.NaN;
    const { labels, quality } = segmented({ ...cloud, positions });
    expect(quality.width).toBeCloseTo(alcove.right.c - alcove.left.c, -0.5);
    for (let i = 0; i < positions.length; i += 30) expect(labels[i / 3]).toBe(LABEL.unknown);
  });
});

function ball(points: number): Float32Array {
  const positions = new Float32Array(3 * points);
  for (let i = 0; i < points; i++) {
    const [a, u] = [i * 2.399963, 1 - (2 * (i + 0.5)) / points];
    const r = Math.sqrt(1 - u * u);
    positions.set([900 * r * Math.cos(a), 900 * u, 900 * r * Math.sin(a)], 3 * i);
  }
  return positions;
}
