import { describe, expect, it } from 'vitest';
import { leansOf } from '../../../../../src/scene/client/geometry';
import { alcoveShape, onWall } from '../../../../../src/scene/geometry';
import { solvedDemo } from '../../solvedDemo';

const { job, result } = solvedDemo();
const shape = alcoveShape(result);
const leans = leansOf(shape, result, job);

describe('leansOf', () => {
  it('tells of every wall what its report does, over the height of the panels', () => {
    const tall = job.fit.top - Math.min(...result.panels.back.outline.map(([, v]) => v));
    expect(leans.map(({ key }) => key)).toEqual(['back lean', 'left lean', 'right lean']);
    leans.forEach(({ value, sd, into }, i) => {
      const report = result.walls[(['back', 'left', 'right'] as const)[i]!];
      expect(value).toBeCloseTo(Math.abs(report.plumb) * (tall / 1000), 9);
      expect(sd).toBeCloseTo(report.plumbSd * (tall / 1000), 9);
      expect(into).toBe(report.plumb >= 0);
    });
  });

  it('hangs each line plumb, touching the wall at one end', () => {
    leans.forEach(({ line: [top, bottom], gap }, i) => {
      const wall = (['back', 'left', 'right'] as const)[i]!;
      expect([top[0], top[2]]).toEqual([bottom[0], bottom[2]]);
      expect(top[1]).toBeGreaterThan(bottom[1]);
      const out = ([x, y, z]: readonly [number, number, number]) => {
        const [wx, , wz] = onWall(shape, wall, 0)(wall === 'back' ? x : z, y);
        return wall === 'back' ? z - wz : wall === 'left' ? x - wx : wx - x;
      };
      expect(Math.min(out(top), out(bottom))).toBeCloseTo(8, 1);
      const wide = Math.hypot(gap[0][0] - gap[1][0], gap[0][2] - gap[1][2]);
      expect(wide).toBeCloseTo(Math.abs(out(top) - out(bottom)), 1);
      expect(gap[0][1]).toBe(gap[1][1]);
    });
  });
});
