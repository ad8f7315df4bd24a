import { describe, expect, it } from 'vitest';
import { polygonArea } from '../../../../src/core/panel';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';
import { trimmed } from './trimmed';

const box = alcoveOf({});

describe('fitTrim', () => {
  it('makes what the job asks for', () => {
    const ids = (...given: Parameters<typeof trimmed>) => trimmed(...given).trim.map(({ id }) => id);
    expect(ids(box)).toEqual([
      'trim.top',
      'trim.left.top',
      'trim.left.vertical',
      'trim.right.top',
      'trim.right.vertical',
    ]);
    expect(ids(box, { trim: { insideCorners: true, verticals: false } })).toEqual([
      'trim.top',
      'trim.left.top',
      'trim.left.corner',
      'trim.right.top',
      'trim.right.corner',
    ]);
    const none = trimmed(box, { trim: { top: false, sideTops: false, verticals: false } });
    expect(none).toMatchObject({ trim: [], fillers: [], problems: [] });
  });

  it('tells a lip deeper than panel and bed', () => {
    expect(trimmed(box, { trim: { lip: 10 } }).problems).toEqual([
      { where: 'pieces.trim', what: expect.stringMatching(/lip/), howMuch: expect.closeTo(2, 9) },
    ]);
  });

  it('tells a piece that the panels leave no room for, and leaves it out', () => {
    const { trim, problems } = trimmed(box, { fit: { top: -760 }, trim: { insideCorners: true } });
    expect(trim.map(({ id }) => id)).toEqual(['trim.top', 'trim.left.top', 'trim.right.top']);
    expect(problems.map(({ where }) => where)).toEqual([
      'pieces.trim.left.vertical',
      'pieces.trim.left.corner',
      'pieces.trim.right.vertical',
      'pieces.trim.right.corner',
    ]);
    expect(problems[0]!.what).toMatch(/no room/);
  });

  it('tells pieces longer than any stock length, allowance included', () => {
    const { problems } = trimmed(box, { trim: { stock: [{ length: 1200 }, { length: 1520 }], allowance: 6 } });
    expect(problems).toEqual([
      { where: 'pieces.trim.top', what: expect.stringMatching(/longer than any stock/), howMuch: expect.closeTo(4, 9) },
      { where: 'pieces.trim.left.vertical', what: expect.anything(), howMuch: expect.closeTo(176, 9) },
      { where: 'pieces.trim.right.vertical', what: expect.anything(), howMuch: expect.closeTo(176, 9) },
    ]);
  });

  it.each([
    {},
    { joinery: 'mitre' as const, lip: 7, insideCorners: true },
    { joinery: 'mitre' as const, top: false, verticalWidth: 60 },
    { rise: 0, foot: 'rim' as const },
  ])('gives pieces that are whole and known everywhere, %j', (trim) => {
    for (let seed = 1; seed <= 12; seed++) {
      const { trim: pieces, fillers } = trimmed(
        alcoveWith(skewedParameters(seed)),
        {
          trim,
          rim: {
            profile: [
              [0, 0],
              [15, -6],
            ],
          },
        },
        0.001,
      );
      for (const piece of [...pieces, ...fillers]) {
        expect(polygonArea(piece.outline), piece.id).toBeGreaterThan(0);
        for (const { back, face, from, to } of piece.bodies) {
          expect(back, piece.id).toHaveLength(face.length);
          expect(to).toBeGreaterThan(from);
          expect(polygonArea(back), piece.id).toBeGreaterThan(0);
          expect(polygonArea(face), piece.id).toBeGreaterThan(0);
        }
        for (const { marks } of piece.edges) {
          for (const { at, sd } of marks) expect([...at, sd].every(Number.isFinite), piece.id).toBe(true);
        }
        expect(piece.worst95).toBeGreaterThan(0);
        expect(piece.stations.map(({ at }) => at)).toEqual(
          piece.stations.map(({ at }) => at).toSorted((a, b) => a - b),
        );
      }
    }
  });
});
