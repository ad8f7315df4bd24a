import { describe, expect, it } from 'vitest';
import { findTilt } from '../../../../src/core/carry/findTilt';
import { profileOf, type Section } from '../../../../src/core/carry/section';
import { sweep } from '../../../../src/core/carry/sweep';

const WIDTH = 1500;
const DEPTH = 760;

/** A slot whose sides stand `low(depth)` and `high(depth)`, with a sheet of WIDTH about the middle at its back. */
const slot = (
  low: (depth: number) => number,
  high: (depth: number) => number,
  lip?: { from: number; value: number },
): Section => ({
  at: 0,
  sheet: { from: -WIDTH / 2, to: WIDTH / 2 },
  back: 0,
  low: profileOf(low, -1, DEPTH),
  high: profileOf(high, -1, DEPTH, lip ? { lip } : {}),
});
const parallel = (room: number): Section =>
  slot(
    () => -WIDTH / 2 - room,
    () => WIDTH / 2 + room,
  );
/** Narrower towards the room by `slope` on each side. */
const narrowing = (room: number, slope: number): Section =>
  slot(
    (z) => -WIDTH / 2 - room + slope * z,
    (z) => WIDTH / 2 + room - slope * z,
  );

describe('sweep', () => {
  it('between parallel sides leaves everywhere what it leaves at home', () => {
    const { clearance, stations } = sweep([parallel(2)], 6, 0, 'low', DEPTH);
    expect(clearance).toBeCloseTo(2, 9);
    expect(stations[0]!.advance).toBe(DEPTH);
    expect(stations.at(-1)).toEqual({ angle: 0, advance: 0, shift: 0 });
  });

  it('straight between sides that come nearer leaves what the mouth leaves', () => {
    expect(sweep([narrowing(2, 0.005)], 6, 0, 'low', DEPTH).clearance).toBeCloseTo(2 - 0.005 * DEPTH, 9);
  });

  it.each([6, 40, 90])('swung home about a corner, %f mm thick, needs its diagonal √(W² + t²)', (thickness) => {
    // Tilted steeply enough the turn passes the angle at which the diagonal lies across.
    const { clearance } = sweep([parallel(10)], thickness, 0.3, 'low', DEPTH);
    const exact = (WIDTH + 20 - Math.hypot(WIDTH, thickness)) / 2;
    expect(clearance).toBeGreaterThanOrEqual(exact - 1e-9);
    // a station every 0.025 radians misses the very angle by half of that at most
    expect(clearance).toBeLessThan(exact + (WIDTH * 0.0125 ** 2) / 4);
  });

  it('moves across with sides that run askew', () => {
    const askew = slot(
      (z) => -WIDTH / 2 - 2 + 0.02 * z,
      (z) => WIDTH / 2 + 2 + 0.02 * z,
    );
    const { clearance, stations } = sweep([askew], 6, 0, 'low', DEPTH);
    // its faces lie 6 mm apart in depth
    expect(clearance).toBeCloseTo(2 - (0.02 * 6) / 2, 9);
    expect(stations[0]!.shift).toBeCloseTo(0.02 * DEPTH, 0);
  });

  it('does not take a jump from one side to the other for a way', () => {
    const step = (z: number): number => (z > 400 ? 30 : 0);
    const kinked = slot(
      (z) => -WIDTH / 2 - 1 + step(z),
      (z) => WIDTH / 2 + 1 + step(z),
    );
    expect(sweep([kinked], 6, 0, 'low', DEPTH).clearance).toBeLessThan(-10);
  });
});

describe('findTilt', () => {
  it('passes a mouth that is narrower by the cosine of the angle', () => {
    const [room, slope] = [2, 0.01];
    const { angle, way } = findTilt([narrowing(room, slope)], 3, room, DEPTH);
    const missing = 2 * slope * DEPTH - 2 * room;
    // least that could be: as wide as the mouth with the room it has at home
    expect(angle).toBeGreaterThan(Math.acos(1 - missing / WIDTH));
    expect(angle).toBeLessThan(Math.acos(1 - (missing + 4 * room) / WIDTH) * 1.1);
    expect(way.clearance).toBeGreaterThanOrEqual(0.9 * room);
  });

  it('finds none where the sides close in faster than a turn frees', () => {
    // Swung about its corner, the far end moves along the far side just while W (1/cos θ − 1) tells more than the slope.
    const { way } = findTilt([narrowing(0, 0.2)], 6, 0, DEPTH);
    expect(way.clearance).toBeLessThan(0);
  });

  it('gets a sheet, bottom first, under a header just where its height is within √(G² + d²)', () => {
    const from = DEPTH - 115;
    const under = (height: number): Section => ({
      at: 0,
      sheet: { from: 0, to: height },
      back: 0,
      low: profileOf(() => -1, -1, DEPTH + 3000),
      high: profileOf(() => 9000, -1, DEPTH, { lip: { from, value: 1500 } }),
    });
    // Past the header's inner edge it is no longer held down; up to there its top must stay under it.
    const most = Math.hypot(1500, from);
    const best = (height: number): number =>
      Math.max(...Array.from({ length: 80 }, (_, k) => sweep([under(height)], 3, k / 60, 'low', DEPTH).clearance));
    expect(best(most - 25)).toBeGreaterThanOrEqual(0);
    expect(best(most + 25)).toBeLessThan(0);
  });

  it('gets it in top first where it is higher than that, if there is room above', () => {
    const lip = { from: DEPTH - 115, value: 1500 };
    const section: Section = {
      at: 0,
      sheet: { from: 0, to: 1900 },
      back: 0,
      low: profileOf(() => -1, -1, DEPTH + 3000),
      high: profileOf(() => 9000, -1, DEPTH, { lip }),
    };
    const { first, way } = findTilt([section], 3, 1, DEPTH);
    expect(first).toBe('high');
    expect(way.clearance).toBeGreaterThanOrEqual(0);
  });
});
