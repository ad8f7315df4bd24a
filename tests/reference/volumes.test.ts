// Against an independent 3-D boolean library: manifold-3d.
import { describe, expect, it } from 'vitest';
import { solve } from '../../src/core';
import { adjustedAlcove, fullPlan, jobWith, noisy, plausibleAlcove } from '../simulate';
import { box, RIM, solved } from './box';
import { block, panelSolid, plate, rimSolid, wallSolid } from './solids';

const fit = { bed: 2, thickness: 6, cornerJoint: 2, rimJoint: 3, top: 980 };
const BACK_FACE = fit.bed + fit.thickness;
const FAR = 1300;

describe('a back panel among walls that run straight out into the room', () => {
  const alcove = box({ left: { y: 0.012, yy: 6e-6 }, right: { y: 0.02, yy: -5e-6 }, rim: { x: 0.006, xx: 3e-6 } });
  const { back } = solved(alcove, { fit }).result.panels;

  it('has the volume of its outline drawn out', () => {
    expect(plate(back.flat.outline, fit.thickness).volume()).toBeCloseTo(back.area * fit.thickness, 0);
  });

  it('has the volume of a slab cut by the solid walls and rim in 3-D', () => {
    const slab = block([-FAR, -FAR, fit.bed], [FAR, fit.top, BACK_FACE]);
    const cut = slab
      .subtract(wallSolid(alcove, 'left', fit.cornerJoint))
      .subtract(wallSolid(alcove, 'right', fit.cornerJoint))
      .subtract(rimSolid(alcove, fit.rimJoint));
    const largest = cut.decompose().reduce((a, b) => (a.volume() > b.volume() ? a : b));
    expect(largest.volume() / (back.area * fit.thickness)).toBeCloseTo(1, 4);
  });
});

describe('a side panel between a bowed back panel and the front', () => {
  const alcove = box({ back: { y: -0.011, yy: 7e-6 }, rim: { z: 0.008, zz: -4e-6 } });
  const { left } = solved(alcove, { fit }).result.panels;

  it('has the volume of a slab cut by the back panel and the rim in 3-D', () => {
    const slab = block([-762 + fit.bed, -FAR, -100], [-762 + BACK_FACE, fit.top, 762]);
    const cut = slab
      .subtract(wallSolid(alcove, 'back', BACK_FACE + fit.cornerJoint))
      .subtract(rimSolid(alcove, fit.rimJoint));
    const largest = cut.decompose().reduce((a, b) => (a.volume() > b.volume() ? a : b));
    expect(largest.volume() / (left.area * fit.thickness)).toBeCloseTo(1, 4);
  });
});

describe('a back panel in a wedge', () => {
  const slope = 0.03;
  const alcove = box({ left: { z: slope }, right: { z: -slope } });
  const { back } = solved(alcove, { fit }).result.panels;

  it('cut square leaves a prism slope·t²/2 in section at each side that a bevelled cut would fill', () => {
    const slab = block([-FAR, RIM + fit.rimJoint, fit.bed], [FAR, fit.top, BACK_FACE]);
    const bevelled = slab
      .subtract(wallSolid(alcove, 'left', fit.cornerJoint))
      .subtract(wallSolid(alcove, 'right', fit.cornerJoint));
    const largest = bevelled.decompose().reduce((a, b) => (a.volume() > b.volume() ? a : b));
    const height = fit.top - RIM - fit.rimJoint;
    const prisms = 2 * ((slope * fit.thickness ** 2) / 2) * height;
    expect(largest.volume() - back.area * fit.thickness).toBeCloseTo(prisms, -1);
  });
});

describe.each([21, 22, 23])('panels on twisted and bowed walls, alcove %i', (seed) => {
  const job = jobWith(noisy(fullPlan(plausibleAlcove(seed), { seed }), seed), { fit });
  const result = solve(job);
  const alcove = adjustedAlcove(result);
  const solid = (name: 'back' | 'left' | 'right') =>
    panelSolid(alcove, name, result.panels[name].outline, fit.bed, fit.thickness);
  /** A joint holds along the axes; across slopes up to 0.03, and facets for curves, it is a little less. */
  const SLACK = 0.05;

  it('clear the walls beside the back panel by the joint, at their nearest', () => {
    for (const side of ['left', 'right'] as const) {
      const gap = solid('back').minGap(wallSolid(alcove, side), 20);
      expect(Math.abs(gap - fit.cornerJoint)).toBeLessThan(SLACK);
    }
  });

  it('clear the rim by the joint', () => {
    for (const name of ['back', 'left', 'right'] as const) {
      expect(Math.abs(solid(name).minGap(rimSolid(alcove), 20) - fit.rimJoint)).toBeLessThan(SLACK);
    }
  });

  it('meet the back panel with the joint between', () => {
    for (const side of ['left', 'right'] as const) {
      expect(Math.abs(solid(side).minGap(solid('back'), 20) - fit.cornerJoint)).toBeLessThan(SLACK);
    }
  });
});
