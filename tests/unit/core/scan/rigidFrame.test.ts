import { describe, expect, it } from 'vitest';
import { frameAt, moved, movePoints } from '../../../../src/core/scan';

const frame = frameAt([0.6, 0, -0.8], [0, 1, 0], [0.8, 0, 0.6], [120, -40, 900]);
const points = Float64Array.of(1, 2, 3, -400, 50, 1200);

describe('movePoints', () => {
  it('moves each point as a single one is moved', () => {
    const to = new Float64Array(points.length);
    movePoints(frame, points, to);
    expect([...to.slice(0, 3)]).toEqual(moved(frame, [1, 2, 3]));
    expect([...to.slice(3)]).toEqual(moved(frame, [-400, 50, 1200]));
  });

  it('moves them in place', () => {
    const [apart, here] = [new Float64Array(points.length), Float64Array.from(points)];
    movePoints(frame, points, apart);
    movePoints(frame, here, here);
    expect(here).toEqual(apart);
  });
});
