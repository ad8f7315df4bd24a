import { Document, NodeIO } from '@gltf-transform/core';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readScan, scanLimits } from '../../src/scan';
import { type Encoding, plyFile, pointsPart } from '../unit/scan/ply/plyFile';
import { samplePoints } from '../unit/scan/scanFile';

const points = samplePoints(1100);
const lines = (row: (point: readonly number[]) => string) => new TextEncoder().encode(points.map(row).join('\n'));
const faces = {
  name: 'face',
  properties: [{ name: 'vertex_indices', type: 'int', list: 'uchar' }],
  items: points.slice(2).map((_, i) => [[i, i + 1, i + 2]]),
} as const;

async function samples(): Promise<Record<string, Uint8Array<ArrayBuffer>>> {
  const document = new Document();
  const position = document
    .createAccessor()
    .setType('VEC3')
    .setArray(new Float32Array(points.flat()))
    .setBuffer(document.createBuffer());
  const primitive = document.createPrimitive().setAttribute('POSITION', position);
  const node = document.createNode().setMesh(document.createMesh().addPrimitive(primitive));
  document.createScene().addChild(node);
  const ply = (encoding: Encoding) => plyFile(encoding, [pointsPart(points), faces]);
  return {
    'ascii.ply': ply('ascii'),
    'little.ply': ply('binary_little_endian'),
    'big.ply': ply('binary_big_endian'),
    'points.ply': plyFile('binary_little_endian', [pointsPart(points)]),
    'a.xyz': lines((point) => point.join(' ')),
    'a.csv': lines((point) => point.join(';')),
    'a.obj': new TextEncoder().encode(
      [...points.map((point) => `v ${point.join(' ')}`), 'f 1 2 3', 'f 4 -1 -2'].join('\n'),
    ),
    'a.glb': new Uint8Array(await new NodeIO().writeBinary(document)),
  };
}

const limits = { ...scanLimits, points: 5000, corners: 50_000, triangles: 50_000 };

it.each(Object.entries(await samples()))(
  '%s, cut off or with bytes changed, is read or refused in words',
  async (name, bytes) => {
    expect((await readScan(new File([bytes], name), { limits })).ok).toBe(true);
    const at = fc.nat({ max: bytes.length - 1 });
    await fc.assert(
      fc.asyncProperty(
        fc.option(at, { nil: null }),
        // Half of the changes fall into the head, where they do most.
        fc.array(
          fc.tuple(
            fc.oneof(at, fc.nat({ max: 400 })),
            fc.oneof(fc.nat({ max: 255 }), fc.constantFrom(48, 57, 45, 10, 32, 255)),
          ),
          {
            maxLength: 12,
          },
        ),
        async (cut, changes) => {
          const broken = bytes.slice(0, cut ?? bytes.length);
          for (const [place, value] of changes) if (place < broken.length) broken[place] = value;
          const read = await readScan(new File([broken], name), { limits });
          if (read.ok) {
            expect(read.scan.positions.length / 3).toBeLessThanOrEqual(limits.points);
            expect(read.scan.positions.every(Number.isFinite)).toBe(true);
          } else {
            expect(read.message).toMatch(/^\S.*[.!]$/s);
          }
        },
      ),
      { numRuns: 150 },
    );
  },
);
