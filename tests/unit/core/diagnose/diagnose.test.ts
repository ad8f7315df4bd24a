import { describe, expect, it } from 'vitest';
import { diagnosisOf } from './diagnosing';

describe('diagnose', () => {
  it('judges the panelled area: from the rim to the top, from corner to corner, from the back to the front edge', () => {
    const { walls } = diagnosisOf(
      { 'rim.height': -700, 'left.position': -800, 'right.position': 750, 'front.left.position': 640 },
      { fit: { top: 900 } },
    );
    const extent = ({ at, height }: { at: number[]; height: number[] }) => [at[0], at.at(-1), height[0], height.at(-1)];
    expect(extent(walls.back.sampled)).toEqual([-800, 750, -700, 1050]);
    expect(extent(walls.left.sampled)).toEqual([0, 640, -700, 1050]);
    expect(extent(walls.right.sampled)).toEqual([0, 760, -700, 1050]);
  });

  it('draws a stretch of its own where the readings leave none', () => {
    const { walls } = diagnosisOf({
      'left.position': 400,
      'right.position': 300,
      'rim.height': 2000,
      'front.left.position': -5,
    });
    const { at, height } = walls.back.sampled;
    expect(at.at(-1)! - at[0]!).toBe(100);
    expect(height.at(-1)! - height[0]!).toBe(250);
    expect(walls.left.sampled.at.at(-1)).toBe(100);
    expect(Number.isFinite(walls.back.plumb)).toBe(true);
  });
});
