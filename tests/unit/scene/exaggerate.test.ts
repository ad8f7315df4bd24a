import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../src/scene/geometry';
import { exaggerated } from '../../../src/scene/geometry/exaggerate';
import { alcoveShape } from '../../../src/scene/geometry/shape';
import { solvedDemo } from './solvedDemo';

const shape = alcoveShape(solvedDemo().result);
const heights = [shape.bottom, -200, 0, 500, shape.top];

describe('exaggerated', () => {
  it('leaves everything where it is at factor 1', () => {
    const place = exaggerated(shape, 1);
    for (const point of [
      [0, 0, 0],
      [-700, 300, 400],
      [650, -600, 20],
    ] as Vec3[]) {
      place(point).forEach((value, axis) => expect(value).toBeCloseTo(point[axis]!, 9));
    }
  });

  it('moves the back wall by the factor, seen at its middle', () => {
    const place = exaggerated(shape, 8);
    for (const y of heights) {
      const z = shape.back(0, y);
      expect(place([0, y, z])[2] / z).toBeGreaterThan(7.5);
      expect(place([0, y, z])[2] / z).toBeLessThanOrEqual(8 + 1e-9);
    }
  });

  it('moves a side wall by the factor from its nominal plane', () => {
    const place = exaggerated(shape, 8);
    for (const y of heights) {
      const x = shape.side.left(y, 300);
      const from = x - shape.nominal.left;
      expect(Math.abs(place([x, y, 300])[0] - shape.nominal.left - 8 * from)).toBeLessThan(
        0.04 * Math.abs(8 * from) + 2,
      );
    }
  });

  it('keeps a corner one line: the two walls still meet there', () => {
    const place = exaggerated(shape, 20);
    for (const y of heights) {
      const x = shape.corner.left(y);
      const z = shape.back(x, y);
      const [onBack, onSide] = [place([x, y, z]), place([shape.side.left(y, z), y, z])];
      onBack.forEach((value, axis) => expect(value).toBeCloseTo(onSide[axis]!, 3));
    }
  });
});
