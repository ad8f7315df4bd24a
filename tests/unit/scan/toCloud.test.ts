import { expect, it } from 'vitest';
import { toCloud, type Up } from '../../../src/scan';

const axes: Record<Up, [number, number, number]> = {
  '+x': [1, 0, 0],
  '-x': [-1, 0, 0],
  '+y': [0, 1, 0],
  '-y': [0, -1, 0],
  '+z': [0, 0, 1],
  '-z': [0, 0, -1],
};
const det = ([a, b, c, d, e, f, g, h, i]: number[]) =>
  a! * (e! * i! - f! * h!) - b! * (d! * i! - f! * g!) + c! * (d! * h! - e! * g!);

it.each(Object.keys(axes) as Up[])('turns %s up, in mm, without mirroring', (up) => {
  const up1 = toCloud({ positions: new Float32Array(axes[up]), origin: axes[up] }, 'm', up);
  expect(Array.from(up1.positions)).toEqual([0, 1000, 0].map((v) => expect.closeTo(v)));
  expect(up1.origin).toEqual([0, 1000, 0].map((v) => expect.closeTo(v)));
  const all = toCloud({ positions: new Float32Array([1, 0, 0, 0, 1, 0, 0, 0, 1]), origin: [0, 0, 0] }, 'in', up);
  expect(det(Array.from(all.positions))).toBeCloseTo(25.4 ** 3, 1);
});

it('turns points and origin alike', () => {
  const { positions, origin } = toCloud({ positions: new Float32Array([1, 2, 3]), origin: [1, 2, 3] }, 'mm', '+z');
  expect(origin).toEqual(Array.from(positions));
});
