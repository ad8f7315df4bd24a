import { describe, expect, it } from 'vitest';
import { alcoveOf } from '../skewedAlcove';
import { pieceOf, trimmed } from './trimmed';

const box = alcoveOf({});
const leaning = alcoveOf({ 'front.right.plumb': 0.01 });
const taper = 0.01 * (980 + 737);

describe('cover', () => {
  it('of a top is its lap on the panel', () => {
    expect(pieceOf(trimmed(box).trim, 'trim.top').cover).toEqual({ taper: 0, lap: 26, shows: 0 });
  });

  it('of a top counts what the sheet falls short by', () => {
    const short = {
      sheets: {
        back: { width: 1830, height: 1700 },
        left: { width: 915, height: 2440 },
        right: { width: 915, height: 2440 },
      },
      fit: { keep: { back: ['bottom' as const] } },
    };
    const { cover } = pieceOf(trimmed(box, short).trim, 'trim.top');
    expect(cover).toEqual({ taper: expect.closeTo(17, 9), lap: expect.closeTo(9, 9), shows: 0 });
  });

  it("of a vertical loses the taper of the panel's edge", () => {
    const { cover } = pieceOf(trimmed(leaning).trim, 'trim.right.vertical');
    expect(cover).toEqual({ taper: expect.closeTo(taper, 9), lap: expect.closeTo(38 - taper, 9), shows: 0 });
    expect(pieceOf(trimmed(leaning).trim, 'trim.left.vertical').cover!.taper).toBeCloseTo(0, 9);
  });

  it('falls short with a narrow vertical: shown, noted and a problem', () => {
    const { trim, problems } = trimmed(leaning, { trim: { verticalWidth: 14 } });
    const piece = pieceOf(trim, 'trim.right.vertical');
    expect(piece.cover).toEqual({ taper: expect.closeTo(taper, 9), lap: 0, shows: expect.closeTo(taper - 14, 9) });
    expect(piece.notes[0]!.text).toMatch(/too narrow/);
    expect(problems).toEqual([
      {
        where: 'pieces.trim.right.vertical',
        what: expect.stringMatching(/too narrow/),
        howMuch: expect.closeTo(taper - 14, 9),
      },
    ]);
  });

  it("falls short where the outer line is drawn inside the panel's edge", () => {
    const { cover } = pieceOf(trimmed(box, { trim: { outerLine: { right: 755 } } }).trim, 'trim.right.vertical');
    expect(cover!.shows).toBeCloseTo(5, 9);
  });

  it('notes a strip that hardly lies on the panel', () => {
    const piece = pieceOf(trimmed(leaning, { trim: { verticalWidth: 20 } }).trim, 'trim.right.vertical');
    expect(piece.notes[0]).toEqual({ text: expect.stringMatching(/little/), howMuch: expect.closeTo(20 - taper, 9) });
  });
});
