import { PerspectiveCamera } from 'three';
import { describe, expect, it } from 'vitest';
import { pointsInLasso } from '../../../../src/scene/scan';
import { byLabel, shownPoints } from '../../../../src/scene/scan/shown-points';

const camera = new PerspectiveCamera(60, 2, 1, 100);
camera.position.set(0, 0, 10);
camera.updateMatrixWorld();
camera.updateProjectionMatrix();
const matrix = camera.projectionMatrix.clone().multiply(camera.matrixWorldInverse).elements;
const projection = { matrix, width: 800, height: 400 };
/** In the middle, to its right, above it, and behind the eye. */
const positions = new Float32Array([0, 0, 0, 4, 0, 0, 0, 3, 0, 0, 0, 20]);
const around = (x: number, y: number) =>
  [
    [x - 20, y - 20],
    [x + 20, y - 20],
    [x + 20, y + 20],
    [x - 20, y + 20],
  ] as const;

describe('pointsInLasso', () => {
  it('takes what the line goes around, never what lies behind the eye', () => {
    const all = () => true;
    expect(pointsInLasso(positions, all, projection, around(400, 200))).toEqual(Uint32Array.of(0));
    // 4 to the right at distance 10: 200 px for tan 30° × 10.
    expect(
      pointsInLasso(positions, all, projection, around(400 + (4 * 200) / (10 * Math.tan(Math.PI / 6)), 200)),
    ).toEqual(Uint32Array.of(1));
  });

  it('passes over what cannot be picked', () => {
    expect(pointsInLasso(positions, (i) => i !== 0, projection, around(400, 200))).toEqual(new Uint32Array(0));
  });

  it('leaves out the notch of a line', () => {
    const notched = [
      [300, 100],
      [500, 100],
      [500, 300],
      [400, 150],
      [300, 300],
    ] as const;
    expect(pointsInLasso(positions, () => true, projection, notched)).toEqual(new Uint32Array(0));
  });
});

it('draws evenly spread points, each with its label', () => {
  const shown = shownPoints(10, 5);
  expect(Array.from(shown)).toEqual([0, 2, 4, 6, 8]);
  expect(byLabel(shown, Uint8Array.of(1, 0, 2, 0, 1, 0, 0, 0, 2, 0), 3).map((list) => Array.from(list))).toEqual([
    [3],
    [0, 2],
    [1, 4],
  ]);
});
