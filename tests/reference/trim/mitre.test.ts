// Compound mitres in closed form (common practice for mouldings that lean, formulas from memory): a strip that leans back
// by S from the wall's plumb face, in an inside corner of plan angle C, is cut at a mitre of atan(sin S / tan(C/2)) with
// the blade tilted by asin(cos S · cos(C/2)).

import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { fitPieces } from '../../../src/core/fitPieces';
import { fitPanel } from '../../../src/core/panel';
import type { TrueAlcove } from '../../simulate';
import { jobWith, surfacesOf } from '../../simulate';
import { box } from '../box';

const DEGREES = 180 / Math.PI;

function trimOf(alcove: TrueAlcove) {
  const job = jobWith([], { trim: { joinery: 'mitre', joint: 0 } });
  const surfaces = surfacesOf(alcove);
  const covariance = Matrix.eye(25, 25, 0);
  const fit = (name: 'back' | 'left' | 'right') => fitPanel(surfaces, covariance, job, name).panel;
  const { pieces } = fitPieces(surfaces, covariance, job, {
    back: fit('back'),
    left: fit('left'),
    right: fit('right'),
  });
  const end = (id: string, name: string) =>
    pieces.trim.find((piece) => piece.id === id)!.ends.find((each) => each.name === name)!;
  return {
    top: end('trim.top', 'right end'),
    side: end('trim.right.top', 'back end'),
  };
}

/** Back wall and right wall leaning away from the room by the same angle, their level lines at the plan angle. */
function leaning(lean: number, plan: number): TrueAlcove {
  const away = Math.tan(lean);
  // the side wall runs out at plan − 90° from square; across its level line it leans by the same angle
  const out = Math.tan(plan - Math.PI / 2);
  return box({ back: { y: -away }, right: { y: away * Math.hypot(1, out), z: out } });
}

describe.each([
  [0, 90],
  [0, 88.4],
  [0, 92.3],
  [1.2, 90],
  [2.9, 90],
  [1.5, 87],
  [1.5, 93],
  [-1.1, 91],
])('a lean of %d° in a corner of %d°', (leanDegrees, planDegrees) => {
  const [lean, plan] = [leanDegrees / DEGREES, planDegrees / DEGREES];
  const mitre = Math.atan(Math.sin(lean) / Math.tan(plan / 2)) * DEGREES;
  const bevel = Math.asin(Math.cos(lean) * Math.cos(plan / 2)) * DEGREES;
  const { top, side } = trimOf(leaning(lean, plan));

  it(`is cut at ${mitre.toFixed(3)}° with the blade tilted by ${bevel.toFixed(3)}°`, () => {
    for (const end of [top, side]) {
      expect(end.joint).toBe('mitre');
      expect(end.mitre.degrees).toBeCloseTo(mitre, 2);
      expect(end.bevel.degrees).toBeCloseTo(bevel, 2);
    }
  });
});
