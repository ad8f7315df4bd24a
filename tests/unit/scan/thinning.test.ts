import { describe, expect, it } from 'vitest';
import { readScan, scanLimits } from '../../../src/scan';
import { plyFile, pointsPart } from './ply/plyFile';
import { fileOf, scanIn } from './scanFile';

const limits = { ...scanLimits, points: 3000 };

/** A wall of 2 by 2 with a step of 1/100, its dense half ten times over. */
function wall(): [number, number, number][] {
  const points: [number, number, number][] = [];
  for (let i = 0; i < 200; i++) {
    for (let j = 0; j < 200; j++) {
      for (let k = 0; k < (i < 100 ? 5 : 1); k++) points.push([i / 100, j / 100, 1 + ((i * j + k) % 7) / 1000]);
    }
  }
  return points;
}

describe('a scan of more points than are kept', () => {
  const points = wall();
  const file = fileOf('a.ply', plyFile('binary_little_endian', [pointsPart(points)]));

  it('is thinned to under the limit, evenly, and says so', async () => {
    const scan = await scanIn(file, { limits });
    const count = scan.positions.length / 3;
    expect(scan.seen).toBe(120_000);
    expect(count).toBeLessThanOrEqual(3000);
    expect(count).toBeGreaterThan(1000);
    const dense = scan.positions.filter((x, at) => at % 3 === 0 && x < 1).length;
    expect(dense / count).toBeGreaterThan(0.44);
    expect(dense / count).toBeLessThan(0.56);
    expect(scan.cube).toBeGreaterThan(0.02);
    expect(scan.cube).toBeLessThan(0.08);
  });

  it('keeps points of the file, no means of them', async () => {
    const scan = await scanIn(file, { limits });
    const [ox, oy, oz] = scan.origin;
    const known = new Set(points.map(([x, y, z]) => [x - ox, y - oy, z - oz].map(Math.fround).join()));
    const made = Array.from({ length: scan.positions.length / 3 }, (_, i) =>
      Array.from(scan.positions.subarray(3 * i, 3 * i + 3)).join(),
    );
    // Points are kept in single precision twice: in the file and as differences.
    const near = made.filter((key) => {
      const [x, y, z] = key.split(',').map(Number) as [number, number, number];
      return known.has(key) || points.some(([a, b, c]) => Math.hypot(x - (a - ox), y - (b - oy), z - (c - oz)) < 1e-6);
    });
    expect(near.length).toBe(made.length);
  });

  it('gives the same points each time', async () => {
    const [first, second] = [await scanIn(file, { limits }), await scanIn(file, { limits })];
    expect(first.positions).toEqual(second.positions);
  });

  it('keeps all points of one that just fits', async () => {
    const few = points.filter((_, i) => i % 40 === 0);
    const scan = await scanIn(fileOf('a.ply', plyFile('ascii', [pointsPart(few)])), { limits });
    expect(scan.positions.length / 3).toBe(3000);
    expect(scan.cube).toBeNull();
  });

  it('is read although all of its points are one', async () => {
    const same = Array.from({ length: 5000 }, () => [1, 2, 3]);
    const read = await readScan(fileOf('a.ply', plyFile('ascii', [pointsPart(same)])), { limits });
    expect(read).toMatchObject({ ok: false, message: expect.stringMatching(/holds only \d+ usable points/) });
  });
});

it('stops when it is asked to, and tells how far it is', async () => {
  const shares: number[] = [];
  const text = Array.from({ length: 700_000 }, (_, i) => `${i} 1 2\n`).join('');
  const read = await readScan(fileOf('a.xyz', text), {
    onProgress: (share) => shares.push(share),
    cancelled: () => shares.length >= 1,
  });
  expect(read).toEqual({ ok: false, stopped: true, message: 'Reading was stopped.' });
  expect(shares).toHaveLength(1);
  expect(shares[0]).toBeGreaterThan(0.2);
});

it('says that a file went away while it was read', async () => {
  const gone = {
    name: 'a.ply',
    size: 5000,
    slice: () => ({ arrayBuffer: () => Promise.reject(new Error('NotFound')) }),
  };
  expect(await readScan(gone)).toMatchObject({
    ok: false,
    message: expect.stringMatching(/^a\.ply can no longer be read/),
  });
});
