import { describe, expect, it } from 'vitest';
import { panelEdges, polygonArea } from '../../../../src/core/panel';
import { boundaryOf, outlineOf } from '../../../../src/core/panel/boundary';
import { LEAST_ROOM, roomProblems, withRoom } from '../../../../src/core/panel/room';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';
import { jobOf } from './fitting';

const PANELS = ['back', 'left', 'right'] as const;
const problemsOf = (values: Record<string, number>, name: (typeof PANELS)[number], choices = {}) => {
  const edges = panelEdges(alcoveOf(values), jobOf(choices), name);
  const boundary = boundaryOf(withRoom(edges));
  return { problems: roomProblems(edges, boundary, name), outline: outlineOf(boundary) };
};

describe('room', () => {
  it('leaves edges with room as they are', () => {
    for (let seed = 1; seed <= 10; seed++) {
      for (const name of PANELS) {
        const edges = panelEdges(alcoveWith(skewedParameters(seed)), jobOf(), name);
        const held = withRoom(edges);
        const boundary = boundaryOf(held);
        expect(roomProblems(edges, boundary, name)).toEqual([]);
        expect(outlineOf(boundary)).toEqual(outlineOf(boundaryOf(edges)));
      }
    }
  });

  it('reports a top below the rim and draws a low panel', () => {
    const { problems, outline } = problemsOf({ 'rim.height': 200 }, 'back', { fit: { top: 100 } });
    expect(problems).toEqual([
      {
        where: 'panels.back',
        what: 'the top is no higher than the rim; raise the top or check the drops to the rim',
        howMuch: expect.closeTo(100 - 203, 9),
      },
    ]);
    expect(polygonArea(outline)).toBeCloseTo(1516 * LEAST_ROOM, 6);
  });

  it('reports a rim that rises through the top in the middle only', () => {
    const { problems } = problemsOf({ 'rim.height': 960, 'rim.bowAlong': -2e-4 }, 'back');
    expect(problems).toHaveLength(1);
    expect(problems[0]!.howMuch).toBeCloseTo(980 - 963, 1);
  });

  it('reports corners that leave no width', () => {
    const { problems, outline } = problemsOf({ 'left.position': 300, 'right.position': -300 }, 'back');
    expect(problems).toEqual([
      {
        where: 'panels.back',
        what: 'the corners leave the panel no width; check the readings to them',
        howMuch: expect.closeTo(-604, 9),
      },
    ]);
    expect(polygonArea(outline)).toBeCloseTo(LEAST_ROOM * 1717, 6);
  });

  it('reports side walls that cross above the rim', () => {
    const { problems, outline } = problemsOf({ 'left.plumb': 0.9, 'right.plumb': -0.9 }, 'back');
    expect(problems[0]).toMatchObject({
      what: expect.stringContaining('no width'),
      howMuch: expect.closeTo(1516 - 1.8 * 980, 6),
    });
    expect(polygonArea(outline)).toBeGreaterThan(0);
  });

  it('reports a front edge that leaves no depth', () => {
    const { problems } = problemsOf({ 'front.left.position': 30 }, 'left');
    expect(problems).toEqual([
      {
        where: 'panels.left',
        what: 'the front edge leaves the panel no depth; check the depth readings and the set-back',
        howMuch: expect.closeTo(30 - 5 - 10, 9),
      },
    ]);
    expect(problemsOf({}, 'right', { fit: { frontSetBack: 720 } }).problems).toHaveLength(1);
  });
});
