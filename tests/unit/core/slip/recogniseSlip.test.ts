import { describe, expect, it } from 'vitest';
import { type Misreading, recogniseSlip } from '../../../../src/core/slip';

const INCH = 25.4;
const inches = (whole: number, sixteenths = 0): number => INCH * (whole + sixteenths / 16);

/** A corner taped in inches, to a sixteenth or so. */
const taped = (observed: number, fits: number, more: Partial<Misreading> = {}) =>
  recogniseSlip({ kind: 'tape-to-corner', observed, fits, sd: 0.6, display: 'in', ...more });

describe('recogniseSlip', () => {
  it.each<[string, number, number, string]>([
    ['the tape started at its 1 in mark', inches(30, 5), inches(29, 5), 'inch'],
    ['an inch too little', inches(28, 5), inches(29, 5), 'inch'],
    ['59 13/16 for 59 5/16', inches(59, 13), inches(59, 5), 'half-inch'],
    ['a quarter inch', inches(29, 3), inches(29, 7), 'quarter-inch'],
    ['a foot', inches(41, 3), inches(29, 3), 'foot'],
    ['13/16 for 3/16', inches(30, 13), inches(30, 3), 'fraction'],
    ['5/16 for 5/8', inches(30, 5), inches(30, 10), 'fraction'],
    ['the fraction from the wrong end of the inch', inches(30, 14), inches(30, 2), 'fraction'],
    ['59 for 95', inches(59, 2), inches(95, 2), 'swapped-digits'],
    ['6 for 9', inches(26, 7), inches(29, 7), 'misread-digit'],
    ['millimetres entered as inches', 752 * INCH, 752, 'unit'],
  ])('in inches: %s', (_, observed, fits, kind) => {
    const slip = taped(observed, fits + 0.4);
    expect(slip).toMatchObject({ kind });
    expect(Math.abs(slip!.likely - fits)).toBeLessThan(1e-9);
  });

  it.each<[string, number, number, string]>([
    ['the tape started at its 100 mm mark', 852, 752, 'ten-centimetres'],
    ['the tape started at its 10 mm mark', 762, 752, 'centimetre'],
    ['752 for 725', 752, 725, 'swapped-digits'],
    ['732 for 782', 732, 782, 'misread-digit'],
    ['inches entered as millimetres', 29.5, 29.5 * INCH, 'unit'],
  ])('in millimetres: %s', (_, observed, fits, kind) => {
    const slip = taped(observed, fits - 0.5, { display: 'mm' });
    expect(slip).toMatchObject({ kind });
    expect(Math.abs(slip!.likely - fits)).toBeLessThan(1e-9);
  });

  it("takes what is 2 to 4 in short in a corner for the tape's case, and only there", () => {
    expect(taped(700, 783)).toMatchObject({ kind: 'tape-case', likely: 783 });
    expect(taped(700, 783, { kind: 'depth' })).toBeNull();
    expect(taped(783, 700)).toBeNull();
  });

  it('takes a hollow for a hump', () => {
    const slip = taped(4.2, -4.4, { kind: 'straightedge', sd: 0.4 });
    expect(slip).toMatchObject({ kind: 'sign', likely: -4.2 });
  });

  it('takes an angle read from the wrong leg, or a degree off', () => {
    expect(taped(91.9, 88.2, { kind: 'angle', sd: 0.1 })).toMatchObject({ kind: 'supplement' });
    expect(taped(91.9, 90.9, { kind: 'angle', sd: 0.1 })).toMatchObject({ kind: 'misread-digit', likely: 90.9 });
  });

  it('knows no slip of any size whatever', () => {
    for (const off of [8.3, 16.4, 19.9, -37.2, 211]) expect(taped(inches(29, 8), inches(29, 8) + off)).toBeNull();
  });

  it('names no slip that leaves more than the reading may be off', () => {
    expect(taped(inches(30), inches(29) + 1.3)).toMatchObject({ kind: 'inch' });
    expect(taped(inches(30), inches(29) + 1.7)).toBeNull();
  });
});
