import { describe, expect, it } from 'vitest';
import { roomAround } from '../../../../src/scene/client/geometry';
import { EYE_SHARE, type Sight, standAt } from '../../../../src/scene/client/viewpoint';
import { alcoveShape } from '../../../../src/scene/geometry';
import { solvedDemo } from '../solvedDemo';

const { job, result } = solvedDemo();
const shape = alcoveShape(result);
const room = roomAround(shape, job.levelAboveFloor, job.fit.top);
const sight = (more: Partial<Sight> = {}): Sight => ({
  room,
  rim: shape.nominal.rim,
  top: job.fit.top,
  height: 1700,
  aspect: 1.4,
  wet: 1,
  ...more,
});

describe('standAt', () => {
  it('puts the eyes of a standing person at their share of the height', () => {
    for (const height of [1200, 1700, 2000]) {
      for (const viewpoint of ['door', 'eye'] as const) {
        expect(standAt(viewpoint, sight({ height })).from[1] - room.floor).toBeCloseTo(EYE_SHARE * height, 9);
      }
    }
  });

  it('stands before the alcove, and in the tub within it', () => {
    for (const viewpoint of ['door', 'eye'] as const)
      expect(standAt(viewpoint, sight()).from[2]).toBeGreaterThan(room.front);
    const { from } = standAt('tub', sight());
    expect(from[0]).toBeGreaterThan(room.left);
    expect(from[0]).toBeLessThan(room.right);
    expect(from[1]).toBeGreaterThan(shape.nominal.rim);
    expect(from[2]).toBeGreaterThan(0);
    expect(from[2]).toBeLessThan(room.front);
  });

  it('looks from the door towards the wall with the valve', () => {
    const at = (wet: -1 | 0 | 1) => {
      const { from, to } = standAt('door', sight({ wet }));
      return Math.sign(Math.round(to[0] - from[0]));
    };
    expect([at(1), at(-1), at(0)]).toEqual([1, -1, 1]);
    expect(standAt('eye', sight()).from[0]).toBeCloseTo((room.left + room.right) / 2, 9);
  });

  it('steps back until the alcove fits in width and height, whatever the shape of the picture', () => {
    for (const aspect of [0.5, 0.75, 1, 1.8]) {
      const { from, to, fov } = standAt('eye', sight({ aspect }));
      const away = from[2] - room.front;
      const tangent = Math.tan((fov * Math.PI) / 360);
      expect((0.5 * (room.right - room.left)) / away).toBeLessThan(tangent * aspect);
      expect(Math.max(job.fit.top - to[1], to[1] - room.floor) / (from[2] - to[2])).toBeLessThan(tangent * 1.1);
    }
  });
});
