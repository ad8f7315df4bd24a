// Against the formulas of alcoves known exactly. All 500 alcoves: `npm run bench -- pieces`.
import { describe, expect, it } from 'vitest';
import { randomMisfits } from './randomPieces';

describe('pieces folded up in random alcoves', () => {
  const misfits = Array.from({ length: 24 }, (_, k) => randomMisfits(k + 1)).flat();

  it('fit to 0.1 mm everywhere', () => {
    const bad = misfits.filter(({ by }) => !(by <= 0.1));
    expect(bad).toEqual([]);
  });

  it('were all looked at', () => {
    const kinds = new Set(misfits.map(({ piece, where }) => `${piece.replace(/left|right/, 'side')}: ${where}`));
    for (const expected of [
      'trim.top: left wall',
      'trim.top: right panel',
      'trim.side.top: top piece',
      'trim.side.vertical: plumb',
      'trim.side.vertical: rim',
      'trim.side.vertical: apron',
      'trim.side.vertical: outer line',
      'legs.side: front line',
      'legs.side: apron',
      'fillers.side.vertical: on its wall',
      'shelves.1: side edge',
      'shelves.2: back edge',
    ])
      expect(kinds).toContain(expected);
  });
});
