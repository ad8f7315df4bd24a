// Ledges in wet areas fall by 1/8 to 1/4 in per ft: 1.042 % and 2.083 %, of which a code rounds the second to 2 %
// (computed; the clause quoted second hand, IRC 2021 P2709.1).
import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { fitPanel } from '../../../src/core/panel';
import { fold } from '../../../src/core/piece';
import { fitShelves, LEAST_FALL, MOST_FALL } from '../../../src/core/shelf';
import { jobWith, plausibleAlcove, surfacesOf } from '../../simulate';

describe('the fall of a shelf', () => {
  it('has its customary limits exactly', () => {
    expect(LEAST_FALL).toBeCloseTo((1000 * (1 / 8)) / 12, 12);
    expect(MOST_FALL).toBeCloseTo((1000 * (1 / 4)) / 12, 12);
    expect([LEAST_FALL / 10, MOST_FALL / 10].map((percent) => percent.toFixed(3))).toEqual(['1.042', '2.083']);
  });

  it.each([
    ['1/8 in per ft', LEAST_FALL, 8],
    ['1/4 in per ft', MOST_FALL, 4],
  ])('of %s drops a ball by it on a foot along its steepest line', (_, slope, eighths) => {
    for (const seed of [1, 2, 3]) {
      const job = jobWith([], { shelves: [{ slope, back: 400, side: 400, corner: 'left' }] });
      const alcove = surfacesOf(plausibleAlcove(seed));
      const covariance = Matrix.eye(25, 25, 0);
      const panel = (name: 'back' | 'left' | 'right') => fitPanel(alcove, covariance, job, name).panel;
      const [shelf] = fitShelves(alcove, covariance, job, {
        back: panel('back'),
        left: panel('left'),
        right: panel('right'),
      }).shelves;
      expect(shelf!.notes).toEqual([]);
      const place = fold(shelf!);
      const top = (x: number, y: number) => place(x, y, shelf!.thickness);
      let steepest = 0;
      for (let turn = 0; turn < 720; turn++) {
        const [dx, dy] = [Math.cos((turn * Math.PI) / 360), Math.sin((turn * Math.PI) / 360)];
        const [a, b] = [top(0, 0), top(dx, dy)];
        steepest = Math.max(steepest, (a[1] - b[1]) / Math.hypot(b[0] - a[0], b[2] - a[2]));
      }
      // 1 ft = 304.8 mm; the drop in inches is the fraction in the name
      expect((steepest * 304.8) / 25.4).toBeCloseTo(1 / eighths, 4);
    }
  });
});
