import { describe, expect, it } from 'vitest';
import { bendingStrain, largestCurvature } from '../../../../src/core/seat/bending';
import { heightField, quadric } from '../heightField';

const REGION = { u: [-700, 740], v: [-720, 980] } as { u: [number, number]; v: [number, number] };

describe('largestCurvature', () => {
  it('is the larger principal curvature, whatever its sign and direction', () => {
    expect(largestCurvature(quadric({ A: 3e-6, C: -8e-6 }), REGION)).toBeCloseTo(8e-6, 15);
    expect(largestCurvature(quadric({ B: 5e-6 }), REGION)).toBeCloseTo(5e-6, 15);
    // a cylinder of curvature k along 30° has k cos², k cos sin, k sin²
    const [c, s] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    expect(largestCurvature(quadric({ A: 9e-6 * c * c, B: 9e-6 * c * s, C: 9e-6 * s * s }), REGION)).toBeCloseTo(
      9e-6,
      15,
    );
  });

  it('is the largest over the region', () => {
    const cubic = heightField(
      () => 0,
      () => [0, 0],
      (_, b) => [0, 0, 1e-8 * b],
    );
    expect(largestCurvature(cubic, REGION)).toBeCloseTo(9.8e-6, 15);
  });
});

describe('bendingStrain', () => {
  it('is t/(2R)', () => {
    expect(bendingStrain(6, 1 / 2000)).toBeCloseTo(0.0015, 12);
  });
});
