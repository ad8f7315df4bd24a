import { describe, expect, it } from 'vitest';
import { type Advice, adviceFor } from '../../../../src/core/advice';
import type { Fixture, JobInput } from '../../../../src/core/job-file';
import type { Panel } from '../../../../src/core/panel';
import { fitted, jobOf } from '../panel/fitting';
import { alcoveOf } from '../skewedAlcove';

const INCH = 25.4;

/** Advice on one fixture in a plumb, square alcove: its floor 1250 mm and its rim 740 mm below the level line. */
function adviceOn(fixture: Record<string, unknown>, more: Partial<JobInput> = {}): Advice[] {
  const one = { id: 'f', hole: 60, ...fixture } as unknown as Fixture;
  const choices = { ...more, fixtures: [one] } as Partial<JobInput>;
  const panel = (name: 'left' | 'back' | 'right'): Panel => fitted(alcoveOf({}), name, choices).panel;
  return adviceFor(jobOf(choices), { back: panel('back'), left: panel('left'), right: panel('right') });
}
const RIM_ABOVE_FLOOR = 1250 - 740;

describe('advice on heights (2010 ADA Standards, sections 607.5, 608.5.1, 609.4 and 607.4.2.1)', () => {
  const bar = (aboveFloor: number, wall = 'right') =>
    adviceOn({
      kind: 'grab-bar',
      wall,
      aboveRim: aboveFloor - RIM_ABOVE_FLOOR,
      ...(wall === 'back' ? { fromPlumbLine: 0 } : { fromBack: 400 }),
    })[0]!;

  it('a grab bar: the top of its grip 33 to 36 in above the floor, for every diameter that is allowed', () => {
    expect(bar(34 * INCH).met).toBe(true);
    expect(bar(33 * INCH - INCH).met).toBe(true);
    expect(bar(33 * INCH - INCH - 1)).toMatchObject({ met: false, howMuch: expect.closeTo(1, 9) });
    expect(bar(36 * INCH - 0.625 * INCH + 2)).toMatchObject({ met: false, howMuch: expect.closeTo(2, 9) });
    expect(bar(34 * INCH).source).toContain('609.4');
  });

  it('the lower bar on the back wall of a tub: 8 to 10 in above the rim', () => {
    const low = bar(RIM_ABOVE_FLOOR + 8.5 * INCH, 'back');
    expect(low).toMatchObject({ met: true });
    expect(low.source).toContain('607.4.2.1');
    expect(bar(34 * INCH, 'back').source).toContain('609.4');
  });

  it("a tub's controls: under the bar, and on the open half of the end wall", () => {
    const [height, place] = adviceOn({ kind: 'valve', wall: 'right', aboveRim: 330, fromBack: 300 });
    expect(height).toMatchObject({ met: true, howMuch: 0 });
    // 300 mm from the back panel's face, 8 mm off the wall; the tub is 760 mm wide
    expect(place).toMatchObject({ met: false, howMuch: expect.closeTo(72, 9) });
    expect(adviceOn({ kind: 'valve', wall: 'right', aboveRim: 330, fromBack: 400 })[1]!.met).toBe(true);
    expect(adviceOn({ kind: 'valve', wall: 'right', aboveRim: 500, fromBack: 400 })[0]!.met).toBe(false);
    const [under] = adviceOn({ kind: 'valve', wall: 'right', aboveRim: -40, fromBack: 400 });
    expect(under).toMatchObject({ met: false, howMuch: expect.closeTo(40, 9) });
  });

  it("a shower's controls: 38 to 48 in above its floor", () => {
    const at = (aboveFloor: number) =>
      adviceOn(
        { kind: 'valve', wall: 'right', aboveRim: aboveFloor - RIM_ABOVE_FLOOR, fromBack: 400 },
        { rim: { kind: 'shower-base' } },
      );
    expect(at(38 * INCH)[0]).toMatchObject({ met: true });
    expect(at(48 * INCH + 3)[0]).toMatchObject({ met: false, howMuch: expect.closeTo(3, 9) });
  });

  it('says nothing of other fixtures', () => {
    expect(adviceOn({ kind: 'spout', wall: 'right', aboveRim: 120, fromBack: 400 })).toEqual([]);
  });
});

describe('advice on studs', () => {
  const studs = [{ id: 's1', wall: 'right' as const, at: 406, width: 38 }];

  it('a hole is to clear them', () => {
    // middle at 400 + 8, 30 mm radius; the stud reaches from 387 to 425
    expect(adviceOn({ kind: 'spout', wall: 'right', aboveRim: 120, fromBack: 398 }, { studs })[0]).toMatchObject({
      met: false,
      howMuch: 49,
    });
    expect(adviceOn({ kind: 'spout', wall: 'right', aboveRim: 120, fromBack: 447 }, { studs })[0]).toMatchObject({
      met: true,
    });
  });

  it('a grab bar is to find one', () => {
    const bar = (fromBack: number) =>
      adviceOn({ kind: 'grab-bar', wall: 'right', aboveRim: 350, fromBack }, { studs })[0]!;
    expect(bar(398)).toMatchObject({ met: true, howMuch: 0 });
    expect(bar(420)).toMatchObject({ met: false, howMuch: 13 });
  });

  it('says nothing where no stud is known', () => {
    expect(adviceOn({ kind: 'spout', wall: 'left', aboveRim: 120, fromBack: 400 }, { studs })).toEqual([]);
  });
});
