import { describe, expect, it } from 'vitest';
import type { Unread } from '../../../../src/core';
import { drawnPlace } from '../../../../src/views/site/elevation/drawn';
import { frameOf, rimLine, wallOutline } from '../../../../src/views/site/elevation/frame';
import { paperOf } from '../../../../src/views/site/elevation/paper';
import type { SurveyPlace } from '../../../../src/views/site/survey/place';
import { solvedDemo } from '../../scene/solvedDemo';

const { result, job } = solvedDemo();
const frame = frameOf(result);
const near = (value: number) => expect.closeTo(value, 6);

const lineOf = (where: Unread) => {
  const drawn = drawnPlace({ key: 'k', list: 'readings', id: null, where, times: 1 }, frame)!;
  const at = ({ wall, at: station, height }: typeof drawn.from) => frame.point(wall, station, height);
  return { ...drawn, from: at(drawn.from), to: at(drawn.to) };
};

describe('frameOf', () => {
  it('unrolls the walls side by side, hinged at the corners, in true lengths', () => {
    const [leftX] = frame.point('left', 0, 300);
    expect(leftX).toBeCloseTo(frame.corner.left(300), 9);
    expect(frame.point('left', 200, 300)[0]).toBeCloseTo(leftX - 200, 9);
    expect(frame.point('right', 200, 300)[0]).toBeCloseTo(frame.corner.right(300) + 200, 9);
    expect(frame.point('back', -50, 300)).toEqual([-50, 300]);
  });

  it('has the corners, the rim and the front edges where they were measured', () => {
    const of = (id: string) => job.readings.find((reading) => reading.id === id) as { height: number; value: number };
    const left = of('corner-left-3');
    expect(Math.abs(frame.corner.left(left.height) + left.value)).toBeLessThan(3);
    const drop = job.readings.find((reading) => reading.kind === 'tape-to-rim' && reading.wall === 'back');
    if (drop?.kind !== 'tape-to-rim') throw new Error('the demo has no drop on the back wall');
    expect(Math.abs(frame.rim('back', drop.at) + drop.value)).toBeLessThan(3);
  });

  it('bounds every wall', () => {
    for (const wall of ['left', 'back', 'right'] as const) {
      for (const [x, y] of [...wallOutline(frame, wall), ...rimLine(frame)]) {
        expect(x).toBeGreaterThan(frame.box.left - 15);
        expect(x).toBeLessThan(frame.box.right + 15);
        expect(y).toBeGreaterThan(frame.box.bottom);
        expect(y).toBeLessThanOrEqual(frame.box.top);
      }
    }
  });
});

describe('drawnPlace', () => {
  it('lays tapes where they are held', () => {
    expect(lineOf({ kind: 'tape-to-corner', side: 'left', height: 400 })).toMatchObject({
      shape: 'tape',
      from: [0, 400],
      to: [near(frame.corner.left(400)), 400],
    });
    expect(lineOf({ kind: 'tape-to-rim', wall: 'right', at: 300 })).toMatchObject({
      from: [near(frame.corner.right(0) + 300), 0],
      to: [near(frame.corner.right(frame.rim('right', 300)) + 300), near(frame.rim('right', 300))],
    });
    expect(lineOf({ kind: 'depth', wall: 'left', height: 500 })).toMatchObject({
      from: [near(frame.corner.left(500)), 500],
      to: [near(frame.corner.left(500) - frame.front.left(500)), 500],
    });
    expect(lineOf({ kind: 'span', height: 100, at: 600 })).toMatchObject({
      shape: 'air',
      from: [near(frame.corner.left(100) - 600), 100],
      to: [near(frame.corner.right(100) + 600), 100],
    });
  });

  it('hangs a plumb line from its highest to its lowest gap', () => {
    const gaps = [{ height: -600 }, { height: 800 }, { height: 0 }];
    const { from, to, ticks } = lineOf({ kind: 'plumb', wall: 'back', at: 500, gaps });
    expect([from, to]).toEqual([
      [500, 800],
      [500, -600],
    ]);
    expect(ticks).toHaveLength(3);
  });

  it('puts square check and angle across their corner', () => {
    const square = lineOf({ kind: 'square', side: 'right', height: 0, alongBack: 600, alongSide: 450 });
    expect(square.from).toEqual([near(frame.corner.right(0) - 600), 0]);
    expect(square.to).toEqual([near(frame.corner.right(0) + 450), 0]);
    expect(lineOf({ kind: 'angle', side: 'left', height: 0 }).shape).toBe('corner');
  });

  it('puts a fixture above the rim and out from the back wall, and nothing whose place is not known', () => {
    const where = {
      id: 'v',
      kind: 'valve',
      wall: 'right',
      aboveRim: 300,
      fromBack: 380,
      fromBackOf: 'wall',
      hole: 90,
    } as const;
    const place: SurveyPlace = { key: 'k', list: 'fixtures', id: 'v', where, times: 1 };
    expect(drawnPlace(place, frame)).toMatchObject({
      shape: 'hole',
      radius: 45,
      from: { wall: 'right', at: 380, height: near(frame.rim('right', 380) + 300) },
    });
    expect(drawnPlace({ ...place, where: { ...where, fromBack: undefined } }, frame)).toBeNull();
    const vague: SurveyPlace = {
      key: 'k',
      list: 'readings',
      id: 'r',
      where: { id: 'r', kind: 'span', height: 3 },
      times: 1,
    };
    expect(drawnPlace(vague, frame)).toBeNull();
  });
});

describe('paperOf', () => {
  it('shows all three walls where there is room, else the back wall, as true to proportion', () => {
    const wide = paperOf(frame, 900, 1);
    expect(wide.width).toBe(900);
    const narrow = paperOf(frame, 366, 1);
    const backWidth = narrow.scale * (frame.corner.right(0) - frame.corner.left(0));
    expect(backWidth).toBeGreaterThan(0.85 * 366);
    expect(backWidth).toBeLessThan(366);
    expect(narrow.width).toBeGreaterThan(366);
    const [a, b] = [narrow.at([0, 0]), narrow.at([100, 200])];
    expect(b[0] - a[0]).toBeCloseTo(100 * narrow.scale, 9);
    expect(a[1] - b[1]).toBeCloseTo(200 * narrow.scale, 9);
    expect(paperOf(frame, 900, 2).scale).toBeCloseTo(2 * wide.scale, 9);
  });
});
