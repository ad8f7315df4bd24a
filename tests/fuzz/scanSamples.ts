import { Document, NodeIO } from '@gltf-transform/core';
import type { Job } from '../../src/core';
import { jobWith, plausibleAlcove } from '../simulate';
import { cellScan } from '../simulate/scanner';
import { type Encoding, plyFile, pointsPart } from '../unit/scan/ply/plyFile';
import { samplePoints } from '../unit/scan/scanFile';

const points = samplePoints(1100);
const lines = (row: (point: readonly number[]) => string) => new TextEncoder().encode(points.map(row).join('\n'));
const faces = {
  name: 'face',
  properties: [{ name: 'vertex_indices', type: 'int', list: 'uchar' }],
  items: points.slice(2).map((_, i) => [[i, i + 1, i + 2]]),
} as const;
const ply = (encoding: Encoding) => plyFile(encoding, [pointsPart(points), faces]);

async function glb(): Promise<Uint8Array<ArrayBuffer>> {
  const document = new Document();
  const position = document
    .createAccessor()
    .setType('VEC3')
    .setArray(new Float32Array(points.flat()))
    .setBuffer(document.createBuffer());
  const primitive = document.createPrimitive().setAttribute('POSITION', position);
  const node = document.createNode().setMesh(document.createMesh().addPrimitive(primitive));
  document.createScene().addChild(node);
  return new Uint8Array(await new NodeIO().writeBinary(document));
}

/** A small scan in each format that is read. */
export const scanFiles: Readonly<Record<string, Uint8Array<ArrayBuffer>>> = {
  'ascii.ply': ply('ascii'),
  'little.ply': ply('binary_little_endian'),
  'big.ply': ply('binary_big_endian'),
  'points.ply': plyFile('binary_little_endian', [pointsPart(points)]),
  'a.xyz': lines((point) => point.join(' ')),
  'a.csv': lines((point) => point.join(';')),
  'a.obj': new TextEncoder().encode(
    [...points.map((point) => `v ${point.join(' ')}`), 'f 1 2 3', 'f 4 -1 -2'].join('\n'),
  ),
  'a.glb': await glb(),
};

/** A job of a scan alone, its cells few. */
export const scannedJob: Job = jobWith([], { scans: [cellScan(plausibleAlcove(2), { size: 300 })] });
