import { OBJLoader } from 'three/examples/jsm/loaders/OBJLoader.js';
import { expect, it } from 'vitest';
import { coordinates, fileOf, messageOf, samplePoints, scanIn } from '../scanFile';

const points = samplePoints(1200);
const corners = points.map(([x, y, z]) => `v ${x} ${y} ${z}`);

it('gives the corners of an OBJ file of points, as three does', async () => {
  const given = ['# points', 'o alcove', ...corners, `p ${points.map((_, i) => i + 1).join(' ')}`].join('\n');
  const scan = await scanIn(fileOf('a.obj', given));
  const [child] = new OBJLoader().parse(given).children as unknown as {
    geometry: { getAttribute(name: string): { array: Float32Array } };
  }[];
  expect(coordinates(scan)).toEqual(Array.from(child!.geometry.getAttribute('position').array));
  expect(scan).toMatchObject({ format: 'OBJ', mesh: null });
});

it('reads faces with normals, texture and numbers counted back from the end', async () => {
  const square = ['v 0 0 1 0.5 0.5 0.5', 'v 1 0 1', 'v 1 1 1', 'v 0 1 1', 'vn 0 0 1', 'vt 0 0'];
  const plain = await scanIn(fileOf('a.obj', [...square, 'f 1 2 3', 'f 1 3 4'].join('\n')));
  const told = await scanIn(fileOf('a.obj', [...square, 'f -4/1/1 -3//1 -2/1 -1'].join('\r\n')));
  expect(told.mesh).toEqual({ triangles: 2 });
  expect(coordinates(told)).toEqual(coordinates(plain));
});

it('loses nothing of the corners to one far away that comes first', async () => {
  const scan = await scanIn(fileOf('a.obj', ['v 7e6 -3e6 1e6', ...corners].join('\n')));
  const read = coordinates(scan).slice(3);
  expect(read).toHaveLength(3 * points.length);
  const off = points.flat().map((value, i) => Math.abs(read[i]! - value));
  expect(Math.max(...off)).toBeLessThan(1e-6);
});

it.each([
  [[...corners, 'v 1 2'], /^Line 1,201 of a\.obj is no corner with x, y and z \("v 1 2"\)/],
  [[...corners, 'f 1 2 x'], /^Line 1,201 of a\.obj is no face/],
  [[...corners, 'f 0 1 2'], /^Line 1,201 of a\.obj is no face/],
  [[...corners, 'f 1 2 1201'], /triangle 1 of its faces names corner 1,201/],
  [['o nothing'], /holds no usable points/],
])('says what is wrong', async (lines, expected) => {
  expect(await messageOf(fileOf('a.obj', lines.join('\n')))).toMatch(expected);
});
