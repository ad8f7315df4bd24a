import { Document, NodeIO, type Primitive } from '@gltf-transform/core';
import { type Mesh, Vector3 } from 'three';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';
import { expect, it } from 'vitest';
import { coordinates, fileOf, messageOf, samplePoints, scanIn } from '../scanFile';

const points = samplePoints(1200);
/** of primitives, by the standard */
const MODE = { points: 0, triangles: 4, strip: 5, fan: 6 };

function documentOf(mode: number, corners: readonly number[], indices: readonly number[] | null): Document {
  const document = new Document();
  const buffer = document.createBuffer();
  const accessor = (type: 'VEC3' | 'SCALAR', array: Float32Array<ArrayBuffer> | Uint32Array<ArrayBuffer>) =>
    document.createAccessor().setType(type).setArray(array).setBuffer(buffer);
  const primitive = document
    .createPrimitive()
    .setMode(mode as ReturnType<Primitive['getMode']>)
    .setAttribute('POSITION', accessor('VEC3', new Float32Array(corners)))
    .setAttribute('NORMAL', accessor('VEC3', new Float32Array(corners.length).fill(1)));
  if (indices) primitive.setIndices(accessor('SCALAR', new Uint32Array(indices)));
  const inner = document.createNode().setMesh(document.createMesh().addPrimitive(primitive)).setTranslation([1, 2, 3]);
  // A quarter turn about y.
  const outer = document.createNode().setRotation([0, Math.SQRT1_2, 0, Math.SQRT1_2]).addChild(inner);
  document.createScene().addChild(outer);
  return document;
}

const glb = async (document: Document) => new Uint8Array(await new NodeIO().writeBinary(document));

it('puts points where the nodes of the scene put them, as three does', async () => {
  const bytes = await glb(documentOf(MODE.points, points.flat(), null));
  const scan = await scanIn(fileOf('a.glb', bytes));
  expect(scan).toMatchObject({ format: 'glTF', unit: 1000, up: '+y', mesh: null });
  const { scene } = await new GLTFLoader().parseAsync(bytes.buffer, '');
  scene.updateWorldMatrix(true, true);
  const expected: number[] = [];
  scene.traverse((node) => {
    const { geometry, matrixWorld } = node as Mesh;
    const position = geometry?.getAttribute('position');
    for (let i = 0; i < (position?.count ?? 0); i++) {
      expected.push(...new Vector3().fromBufferAttribute(position!, i).applyMatrix4(matrixWorld));
    }
  });
  const made = coordinates(scan);
  expect(made.length).toBe(expected.length);
  expect(Math.max(...made.map((value, at) => Math.abs(value - expected[at]!)))).toBeLessThan(1e-6);
});

const square = [0, 0, 0, 2, 0, 0, 0, 1, 0, 2, 1, 0];

it.each([
  ['triangles', MODE.triangles, [0, 1, 2, 2, 1, 3]],
  ['a strip', MODE.strip, null],
  ['a fan', MODE.fan, [0, 1, 3, 2]],
])('takes points on %s', async (_, mode, indices) => {
  const scan = await scanIn(fileOf('a.glb', await glb(documentOf(mode, square, indices))));
  expect(scan.mesh).toEqual({ triangles: 2 });
  expect(scan.seen).toBeGreaterThan(100_000);
});

it('reads a .gltf with its buffer beside it, and asks for the one that is not there', async () => {
  const { json, resources } = await new NodeIO().writeJSON(documentOf(MODE.points, points.flat(), null), {
    basename: 'cloud',
  });
  const main = fileOf('cloud.gltf', JSON.stringify(json));
  expect(await messageOf(main)).toMatch(/keeps its points in "cloud\.bin"\. Choose both files together/);
  const buffer = fileOf('cloud.bin', resources['cloud.bin'] as Uint8Array<ArrayBuffer>);
  const beside = await scanIn(main, { others: [buffer] });
  const whole = await scanIn(fileOf('a.glb', await glb(documentOf(MODE.points, points.flat(), null))));
  expect(coordinates(beside)).toEqual(coordinates(whole));
});

const changed = (change: (json: Record<string, unknown>) => void): string => {
  const json = { asset: { version: '2.0' }, accessors: [], nodes: [{}, {}], scenes: [{ nodes: [0] }] };
  change(json);
  return JSON.stringify(json);
};

/** An accessor of three places, 36 bytes of a buffer that stands in the file, but for what is changed. */
const withAccessor = (change: object): string =>
  changed((json) =>
    Object.assign(json, {
      buffers: [{ byteLength: 36, uri: `data:application/octet-stream;base64,${'A'.repeat(48)}` }],
      bufferViews: [{ buffer: 0, byteLength: 36 }],
      accessors: [{ bufferView: 0, componentType: 5126, count: 3, type: 'VEC3', ...change }],
    }),
  );

it('says at which byte a GLB file that is cut off breaks', async () => {
  const bytes = await glb(documentOf(MODE.points, points.flat(), null));
  const at = 20 + new DataView(bytes.buffer).getUint32(12, true);
  expect(await messageOf(fileOf('a.glb', bytes.slice(0, -100)))).toMatch(
    `a.glb ends too early: its part at byte ${(at + 1).toLocaleString('en')} claims`,
  );
});

it('says which buffer view goes past its buffer', async () => {
  const { json } = await new NodeIO().writeJSON(documentOf(MODE.points, points.flat(), null), { basename: 'cloud' });
  const files = { others: [fileOf('cloud.bin', new Uint8Array(100))] };
  expect(await messageOf(fileOf('cloud.gltf', JSON.stringify(json)), files)).toMatch(
    /buffer view 0 ends at byte \d+ of buffer 0, which holds 100\./,
  );
});

it.each([
  [changed((json) => delete json.asset), /no part "asset", which says which version/],
  [
    changed((json) => Object.assign(json, { extensionsRequired: ['KHR_draco_mesh_compression'] })),
    /compressed with Draco/,
  ],
  [
    changed((json) => Object.assign(json, { accessors: [{ count: 1e12 }] })),
    /^Accessor 0 of a\.gltf claims 1000000000000 values/,
  ],
  [changed((json) => Object.assign(json, { nodes: [{ children: [1] }, { children: [0] }] })), /node 0 contains itself/],
  ['{ "asset": ', /its JSON, bytes 1 to 11, does not describe/],
  [
    changed((json) => Object.assign(json, { scenes: [{ nodes: [0, 7] }] })),
    /scene 0 names node 7, but the last is 1\./,
  ],
  [changed((json) => Object.assign(json, { nodes: [{}, { mesh: 2 }] })), /node 1 names mesh 2, but there is none\./],
  [
    changed((json) => Object.assign(json, { meshes: [{ primitives: [{ attributes: { POSITION: 5 } }] }] })),
    /mesh 0 names accessor 5, but there is none\./,
  ],
  [withAccessor({ bufferView: 1 }), /accessor 0 names buffer view 1, but the last is 0\./],
  [withAccessor({ componentType: 1 }), /accessor 0 is of a type that glTF does not have\./],
  [withAccessor({ count: 4 }), /accessor 0 needs 48 bytes of buffer view 0, which holds 36\. Save the scan again/],
  [withAccessor({ count: 1.5 }), /accessor 0 holds 1\.5 values\./],
])('says what is wrong with %s', async (text, expected) => {
  expect(await messageOf(fileOf('a.gltf', text))).toMatch(expected);
});
