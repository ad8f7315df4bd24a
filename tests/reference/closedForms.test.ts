// Closed forms, derived beside each test from elementary geometry.
import { describe, expect, it } from 'vitest';
import type { Panel, Result } from '../../src/core';
import { box, DEPTH, HALF, RIM, solved } from './box';

const fit = { bed: 2, thickness: 6, cornerJoint: 2, rimJoint: 3, top: 980 };
const FACES = [fit.bed, fit.bed + fit.thickness] as const;

/** Width of a panel at a height, between the straight joins of its outline. */
function widthAt({ outline }: Panel, height: number): number {
  const crossings = outline.flatMap(([u, v], i) => {
    const [nextU, nextV] = outline[(i + 1) % outline.length]!;
    return v > height !== nextV > height ? [u + ((height - v) / (nextV - v)) * (nextU - u)] : [];
  });
  return Math.max(...crossings) - Math.min(...crossings);
}

describe('a wall that leans 1 in 100 into the room', () => {
  const { result } = solved(box({ left: { y: 0.01 } }), { fit });

  it('gives a sliver that grows 10 mm per metre', () => {
    const { marks } = result.panels.back.edges.left!;
    expect(marks.length).toBe(3);
    const [bottom, ...above] = marks;
    for (const { v, sliver } of above) {
      expect(sliver - bottom!.sliver).toBeCloseTo(((v - bottom!.v) / 1000) * 10, 4);
    }
  });

  it('is reported as 10 mm per metre, and the panel stays square at its other edge', () => {
    expect(result.walls.left.plumb).toBeCloseTo(10, 4);
    expect(result.walls.right.plumb).toBeCloseTo(0, 4);
    const { min, max } = result.panels.back.edges.right!.sliver;
    expect(max - min).toBeCloseTo(0, 4);
  });
});

describe('a corner at 89°', () => {
  const slope = Math.tan(Math.PI / 180);
  const { result } = solved(box({ left: { z: slope } }), { fit });

  it('is 762 tan 1° = 13.30 mm out of square over a return of 762 mm', () => {
    expect(762 * slope).toBeCloseTo(13.3, 2);
    for (const { value } of result.corners.left.angle) expect(value).toBeCloseTo(89, 5);
    for (const { value } of result.corners.right.angle) expect(value).toBeCloseTo(90, 5);
    const { at, value } = result.walls.left.sampled;
    for (const row of value) {
      expect(((row.at(-1)! - row[0]!) / (at.at(-1)! - at[0]!)) * 762).toBeCloseTo(13.3009, 3);
    }
  });

  it('lengthens the side sheet by 1/cos 1° and narrows the back panel at its room face', () => {
    const { outline, flat } = result.panels.left;
    const extent = (points: [number, number][]): number =>
      Math.max(...points.map(([u]) => u)) - Math.min(...points.map(([u]) => u));
    expect(extent(flat.outline) / extent(outline)).toBeCloseTo(1 / Math.cos(Math.PI / 180), 8);
    expect(widthAt(result.panels.back, 0)).toBeCloseTo(2 * HALF - 2 * fit.cornerJoint - slope * FACES[1], 4);
  });
});

describe('a racked alcove, both side walls leaning 1 in 50 to the right', () => {
  const rack = 0.02;
  const { result } = solved(box({ left: { y: rack }, right: { y: rack } }), { fit });
  const low = RIM + fit.rimJoint;
  const width = 2 * (HALF - fit.cornerJoint);
  const height = fit.top - low;

  it('gives a parallelogram of the full width', () => {
    const { outline, area } = result.panels.back;
    const us = outline.map(([u]) => u);
    expect(area).toBeCloseTo(width * height, 0);
    for (const v of [-600, 0, 500, 900]) expect(widthAt(result.panels.back, v)).toBeCloseTo(width, 4);
    expect(Math.min(...us)).toBeCloseTo(-width / 2 + rack * low, 4);
    expect(Math.max(...us)).toBeCloseTo(width / 2 + rack * fit.top, 4);
  });

  it('has diagonals that differ as the law of cosines says', () => {
    const corner = (name: 'left' | 'right', k: number): [number, number] => {
      const { u, v } = result.panels.back.edges[name]!.marks.at(k)!;
      return [u, v];
    };
    const between = (a: [number, number], b: [number, number]): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
    expect(between(corner('left', 0), corner('right', -1))).toBeCloseTo(Math.hypot(width + rack * height, height), 4);
    expect(between(corner('right', 0), corner('left', -1))).toBeCloseTo(Math.hypot(width - rack * height, height), 4);
  });

  it('loses wedges that mirror each other, bottom to top', () => {
    const left = result.panels.back.edges.left!.marks.map(({ sliver }) => sliver);
    const right = result.panels.back.edges.right!.marks.map(({ sliver }) => sliver);
    left.forEach((sliver, i) => {
      expect(sliver + right[i]!).toBeCloseTo(1830 - width, 4);
    });
    expect(left[2]! - left[0]!).toBeCloseTo(rack * height, 4);
  });
});

describe('a wall bowed to a parabola', () => {
  const k = 8e-6;
  const low = RIM + fit.rimJoint;
  const height = fit.top - low;

  it('stands k(h/2)² off the straight line from the rim to the top, hollow positive', () => {
    const sagitta = k * ((fit.top - RIM) / 2) ** 2;
    expect(solved(box({ right: { yy: -k } }), { fit }).result.walls.right.bow).toBeCloseTo(sagitta, 3);
    expect(solved(box({ right: { yy: k } }), { fit }).result.walls.right.bow).toBeCloseTo(-sagitta, 3);
    expect(solved(box({ left: { yy: k } }), { fit }).result.walls.left.bow).toBeCloseTo(sagitta, 3);
    expect(solved(box({ back: { yy: k } }), { fit }).result.walls.back.bow).toBeCloseTo(sagitta, 3);
  });

  it.each([
    ['coarse', 8, 3],
    ['3/4 mm', 0.75, 4],
    ['1/4 mm', 0.25, 6],
  ])('needs as many cuts as the sagitta k c²/4 of a chord c allows: %s', (_, tolerance, marks) => {
    const { edges } = solved(box({ right: { yy: k } }), { fit: { ...fit, markTolerance: tolerance } }).result.panels
      .back;
    const longest = Math.sqrt((4 * tolerance) / k);
    expect(edges.right!.marks.length).toBe(Math.max(3, Math.ceil(height / longest) + 1));
    expect(edges.right!.marks.length).toBe(marks);
    expect(edges.right!.misfit).toBeLessThanOrEqual(tolerance);
  });

  it('lengthens a sheet that follows it by the arc, and strains its face by t/2R', () => {
    const { back } = solved(box({ back: { yy: k } }), { fit: { ...fit, flexible: true } }).result.panels;
    // Length of z = k y² from 0 to y.
    const arc = (y: number): number => (y / 2) * Math.sqrt(1 + 4 * k * k * y * y) + Math.asinh(2 * k * y) / (4 * k);
    const vs = back.flat.outline.map(([, v]) => v);
    expect(Math.max(...vs) - Math.min(...vs)).toBeCloseTo(arc(fit.top) - arc(low), 3);
    expect(arc(fit.top) - arc(low)).toBeGreaterThan(height + 0.05);
    // R = 1/2k where the parabola turns; a cylinder unrolls without strain of its own.
    expect(back.strainMax).toBeCloseTo((fit.thickness * 2 * k) / 2, 7);
  });

  it('grows by 8s²/3L for a small sagitta s over a chord L: 0.1333 mm for 10 mm over 2 m', () => {
    const sagitta = 10;
    const chord = 2000;
    const bow = (4 * sagitta) / chord ** 2;
    const { back } = solved(box({ back: { yy: bow }, rim: { c: -1003 } }), {
      fit: { ...fit, top: 1000, flexible: true },
      levelAboveFloor: 1500,
    }).result.panels;
    const vs = back.flat.outline.map(([, v]) => v);
    expect(Math.max(...vs) - Math.min(...vs) - chord).toBeCloseTo((8 * sagitta ** 2) / (3 * chord), 2);
  });
});

describe('a wedge-shaped alcove', () => {
  const panelOf = (result: Result): Panel => result.panels.back;

  it('clips the back panel at its room face where the alcove narrows towards the room', () => {
    const { result } = solved(box({ left: { z: 0.02 }, right: { z: -0.03 } }), { fit });
    for (const v of [-600, 0, 900]) {
      expect(widthAt(panelOf(result), v)).toBeCloseTo(2 * (HALF - fit.cornerJoint) - 0.05 * FACES[1], 4);
    }
  });

  it('clips it at its wall face where the alcove widens', () => {
    const { result } = solved(box({ left: { z: -0.02 }, right: { z: 0.03 } }), { fit });
    for (const v of [-600, 0, 900]) {
      expect(widthAt(panelOf(result), v)).toBeCloseTo(2 * (HALF - fit.cornerJoint) + 0.05 * FACES[0], 4);
    }
  });

  it('follows the back wall out of plumb: a taper of splay times lean', () => {
    const { result } = solved(box({ back: { y: 0.02 }, left: { z: 0.02 }, right: { z: -0.02 } }), { fit });
    for (const v of [-600, 0, 900]) {
      expect(widthAt(panelOf(result), v)).toBeCloseTo(2 * (HALF - fit.cornerJoint) - 0.04 * (0.02 * v + FACES[1]), 4);
    }
  });

  it('clips the side panels against the back panel, at the tighter face where the back wall runs out', () => {
    const k = 4e-6;
    const { result } = solved(box({ back: { xx: k } }), { fit });
    const face = fit.bed + fit.thickness;
    for (const side of ['left', 'right'] as const) {
      const us = result.panels[side].outline.map(([u]) => u);
      expect(Math.min(...us)).toBeCloseTo(k * (HALF - FACES[0]) ** 2 + face + fit.cornerJoint, 4);
      expect(Math.max(...us)).toBeCloseTo(DEPTH, 4);
    }
  });
});

describe('a rim out of level by 5 mm per metre', () => {
  it('slopes the bottom edges by as much and leaves the joint', () => {
    const { result } = solved(box({ rim: { x: 0.005, z: -0.004 } }), { fit });
    const { marks } = result.panels.back.edges.bottom!;
    for (const { u, v } of marks) expect(v).toBeCloseTo(RIM + 0.005 * u - 0.004 * FACES[0] + fit.rimJoint, 4);
    for (const { u, v } of result.panels.left.edges.bottom!.marks) {
      expect(v).toBeCloseTo(RIM + 0.005 * (-HALF + FACES[1]) - 0.004 * u + fit.rimJoint, 4);
    }
    for (const { u, v } of result.panels.right.edges.bottom!.marks) {
      expect(v).toBeCloseTo(RIM + 0.005 * (HALF - FACES[0]) - 0.004 * u + fit.rimJoint, 4);
    }
    expect(result.rim.outOfLevel.along).toBeCloseTo(5, 3);
    expect(result.rim.outOfLevel.across).toBeCloseTo(-4, 3);
  });
});
