import { describe, expect, it } from 'vitest';
import type { Fixture } from '../../../../../src/core';
import { fixtureSolid, sealantMesh } from '../../../../../src/scene/client/geometry';
import { grabBars } from '../../../../../src/scene/client/geometry/grab-bars';
import { alcoveShape, onWall } from '../../../../../src/scene/geometry';
import { solvedDemo } from '../../solvedDemo';

const { job, result } = solvedDemo();
const shape = alcoveShape(result);
const only = (kind: Fixture['kind']) => {
  const fixtures = job.fixtures.filter((fixture) => fixture.kind === kind);
  const solid = fixtureSolid(shape, result, { ...job, fixtures })!;
  solid.computeBoundingBox();
  return { fixtures, box: solid.boundingBox! };
};

describe('fixtureSolid', () => {
  it('stands before its hole on the panel, coming into the room', () => {
    const { fixtures, box } = only('valve');
    const [valve] = fixtures;
    const wall = valve!.wall as 'left' | 'right';
    const hole = result.panels[wall].holes.find(({ id }) => id === valve!.id)!;
    const [x, y, z] = onWall(shape, wall, job.fit.bed + job.fit.thickness)(hole.u, hole.v);
    expect([box.min.z, box.max.z].map((each) => Math.abs(each - z)).every((each) => each < 120)).toBe(true);
    expect(box.min.y).toBeLessThan(y);
    expect(box.max.y).toBeGreaterThan(y);
    const out = wall === 'right' ? x - box.min.x : box.max.x - x;
    expect(out).toBeGreaterThan(40);
    expect(out).toBeLessThan(150);
  });

  it('draws nothing where there is nothing', () => {
    expect(fixtureSolid(shape, result, { ...job, fixtures: [] })).toBeNull();
  });
});

describe('grabBars', () => {
  const end = (id: string, fromPlumbLine: number, aboveRim = 300): Fixture =>
    ({ id, kind: 'grab-bar', wall: 'back', aboveRim, fromPlumbLine, hole: 30 }) as Fixture;

  it('joins two ends that a bar reaches between, and leaves the rest alone', () => {
    const ids = (fixtures: Fixture[]) => grabBars(fixtures).map((bar) => bar.map(({ id }) => id));
    expect(ids([end('a', -300), end('b', 300)])).toEqual([['a', 'b']]);
    expect(ids([end('a', -300), end('b', -250)])).toEqual([['a'], ['b']]);
    expect(ids([end('a', -700), end('b', 700)])).toEqual([['a'], ['b']]);
    expect(ids([end('a', -300), end('b', 300), end('c', 300, 900)])).toEqual([['a', 'b'], ['c']]);
  });
});

describe('sealantMesh', () => {
  it('runs along both corners and the rim, no further off the panels than its leg', () => {
    const { positions, indices } = sealantMesh(shape, result, job);
    expect(positions.every(Number.isFinite)).toBe(true);
    expect(indices.length).toBeGreaterThanOrEqual(5 * 2 * 3);
    const leg = Math.max(4, job.supplies.sealant.fillet);
    const face = job.fit.bed + job.fit.thickness;
    for (let i = 0; i < positions.length; i += 3) {
      const [x, y, z] = positions.slice(i, i + 3) as [number, number, number];
      const gaps = [z - shape.back(x, y) - face, x - shape.side.left(y, z) - face, shape.side.right(y, z) - x - face];
      const touching = gaps.filter((gap) => Math.abs(gap) < leg + 4).length;
      const onRim = Math.abs(y - shape.rim(x, z)) < leg + job.fit.rimJoint + 3;
      expect(touching >= 1 && (touching >= 2 || onRim)).toBe(true);
    }
  });
});
