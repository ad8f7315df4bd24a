import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Z_95 } from '../../../../src/core/reliability';
import { GROSSLY_LEANING, GROSSLY_UNEVEN, wallVerdict } from '../../../../src/core/verdict/wall';
import { jobWith } from '../../../simulate';
import { assuming, judgedWall, panel, wall } from './judging';

const own = { tolerances: { own: { plumb: 2, flat: 3 } } };
const of = (...given: Parameters<typeof judgedWall>) =>
  judgedWall(given[0], given[1], given[2], { ...own, ...given[3] });

describe('a wall', () => {
  it('fits as is where all is within its limits and its panel is square', () => {
    const { verdict, because } = of({ plumb: 2, bow: 3, bowAcross: -3, twist: 12 });
    expect(verdict).toBe('fits');
    expect(because).toEqual(['Nothing about it is beyond its limit, and its panel can be cut square.']);
  });

  it('is scribed from the limit of plumb on', () => {
    expect(of({ plumb: 2.0001 }).verdict).toBe('scribe');
    expect(of({ plumb: -2.5, plumbSd: 0.1 }).because).toEqual([
      'Leans out of the room by 5.0 mm ±0.4 mm over 2000.0 mm (limit 4.0 mm): scribe the panels that meet it.',
    ]);
  });

  it('is scribed where an edge runs out further than its joint takes up', () => {
    expect(of({}, { back: [0, 3.175] }).verdict).toBe('fits');
    expect(of({}, { back: [0, 3.2] }).verdict).toBe('scribe');
    expect(of({}, { bottom: [-1000, -1004] }).because).toEqual([
      'Its bottom edge runs 4.0 mm ±0.0 mm out of level: scribe.',
    ]);
    expect(of({}, { back: [0, 3], sd: 0.5 }).because).toEqual([
      'Its back edge runs 3.0 mm ±1.4 mm out of plumb: leave it long and scribe on the dry fit.',
    ]);
  });

  it('tells how its panel tapers', () => {
    const inches = { display: 'in' as const };
    const taper = of({}, { back: [0, 11.1125] }, undefined, inches);
    expect(taper.because).toEqual(['The left panel tapers 7/16" ±0" over its height, wider at the bottom: scribe.']);
    expect(taper.taper.value).toBeCloseTo(-11.1125, 9);
    expect(of({}, { back: [0, 10], front: [1000, 1010] }).because[0]).toBe(
      'Its back edge runs 10.0 mm ±0.0 mm out of plumb: scribe.',
    );
  });

  it('is prepared where it is hollow, humped or twisted beyond its limit, or it cannot be told', () => {
    expect(of({ bow: 6.35, bowSd: 0.1 }, {}, undefined, { fit: { wetWall: 'left' } }).because).toEqual([
      'Hollow of 6.4 mm ±0.2 mm up and down behind the wet wall’s panel (limit 3.0 mm): shim or skim before panels.',
    ]);
    expect(of({ bowAcross: -3.1 }).because).toEqual([
      'Hump of 3.1 mm ±0.0 mm side to side behind the left panel (limit 3.0 mm): take it down, or shim the rest out to it, before panels.',
    ]);
    expect(of({ twist: 12.01 }).verdict).toBe('prepare');
    const close = of({ bow: 2.5, bowSd: 1 / Z_95 });
    expect(close.verdict).toBe('prepare');
    expect(close.because[0]).toMatch(/too close to tell with this ±/);
  });

  it('is held while anything about it is not measured, misread or uncovered', () => {
    expect(of({}, {}, assuming('left.bowUp')).because[0]).toMatch(/^Not measured: hollow or hump up and down/);
    expect(of({}, {}, assuming('left.position')).because[0]).toBe('Not measured: plumb line to the left corner.');
    expect(of({}, {}, assuming('right.bowUp')).verdict).toBe('fits');
    expect(of({}, { gap: true }).verdict).toBe('hold');
    const job = jobWith([{ id: 'r3', kind: 'tape-to-rim', wall: 'left', at: 100, value: 700 }], { display: 'mm' });
    const suspects = [{ id: 'r3' }] as never;
    expect(wallVerdict(job, { parameters: [], suspects }, 'left', wall(), panel()).because[0]).toBe(
      'r3 may be misread: take it again first.',
    );
    expect(wallVerdict(job, { parameters: [], suspects }, 'right', wall(), panel()).verdict).toBe('fits');
  });

  it('is held where it is grossly out, whatever the tolerances leave out', () => {
    const tile = { tolerances: { set: 'tile' as const, own: {} } };
    expect(of({ plumb: GROSSLY_LEANING / 2 }, {}, undefined, tile).verdict).toBe('hold');
    expect(of({ plumb: GROSSLY_LEANING / 2 - 0.01 }, {}, undefined, tile).verdict).toBe('fits');
    expect(of({ bow: GROSSLY_UNEVEN }).verdict).toBe('hold');
    expect(of({ bow: GROSSLY_UNEVEN - 0.01 }).verdict).toBe('prepare');
    expect(of({ bow: GROSSLY_UNEVEN }).because[0]).toMatch(/find out why first/);
  });

  it('tells the worst first', () => {
    const { because, verdict } = of({ plumb: 3, bow: 4 }, { gap: true });
    expect(verdict).toBe('hold');
    expect(because.map((words) => words.split(' ')[0])).toEqual(['The', 'Hollow', 'Leans']);
  });

  it('never reads better for a larger defect', () => {
    const ranks = ['fits', 'scribe', 'prepare', 'hold'];
    const amount = fc.double({ min: 0, max: 60, noNaN: true });
    const name = fc.constantFrom('plumb' as const, 'bow' as const, 'bowAcross' as const, 'twist' as const);
    const way = fc.constantFrom(1, -1);
    const set = fc.constantFrom('trade' as const, 'finished' as const, 'residential' as const, 'tile' as const);
    fc.assert(
      fc.property(
        name,
        way,
        amount,
        amount,
        fc.double({ min: 0, max: 4, noNaN: true }),
        set,
        (key, turn, less, more, sd, chosen) => {
          const rank = (value: number) =>
            ranks.indexOf(
              of({ [key]: turn * value, [`${key}Sd`]: sd }, {}, undefined, { tolerances: { set: chosen, own: {} } })
                .verdict,
            );
          expect(rank(less + more)).toBeGreaterThanOrEqual(rank(less));
        },
      ),
    );
  });
});
