import { describe, expect, it } from 'vitest';
import { hidingPairs } from '../../../../src/core';
import { hidingSentence, hidingWords } from '../../../../src/output';
import { alcoveOf } from '../../core/skewedAlcove';
import { trimmed } from '../../core/trim/trimmed';

const INCH = 25.4;
/*
 * Worked by hand. The panel stands from 737 mm below the level line to 980 mm above it, 1717 mm tall. Its front edge
 * wanders by 7/16 in over that height. Trim laps the edge where it stands out most by its own width, so where it stands
 * back most by its width less 7/16 in: 1 1/2 in of trim laps by 1 1/16 in, and 3/8 in of trim leaves 1/16 in in sight.
 */
const leaning = alcoveOf({ 'front.right.plumb': (7 / 16) * (INCH / 1717) });
const way = (inches: number) => ({ pieces: trimmed(leaning, { trim: { verticalWidth: inches * INCH } }) as never });
const wide = way(1.5);
const narrow = way(3 / 8);
const names = ['wider trim', 'the narrow one'] as const;

describe('hidingWords', () => {
  it('says by hand-worked figures what the wider trim hides and the narrow one would show', () => {
    expect(hidingWords(hidingPairs(wide, narrow), names, { display: 'in' })).toContain(
      'Wider trim hides the 7/16" taper at the right side vertical; the narrow one would show 1/16".',
    );
    expect(hidingWords(hidingPairs(narrow, wide), [names[1], names[0]], { display: 'in' })).toContain(
      'Wider trim hides the 7/16" taper at the right side vertical; the narrow one would show 1/16".',
    );
  });

  it('says them in mm where the job is in mm', () => {
    expect(hidingWords(hidingPairs(wide, narrow), names, { display: 'mm' }).join()).toMatch(
      /hides the 11\.1 mm taper .* would show 1\.6 mm\./,
    );
  });

  it('says how far each laps where both hide: 1 1/16 in and 9/16 in', () => {
    const sentences = hidingWords(hidingPairs(wide, way(1)), names, { display: 'in' });
    expect(sentences).toContain(
      'Both hide the 7/16" taper at the right side vertical: wider trim laps the panel by 1 1/16" at least, the narrow one by 9/16".',
    );
  });
});

describe('hidingSentence', () => {
  it('tells of one piece alone', () => {
    const right = (of: typeof wide) => hidingPairs(of, of).find(({ piece }) => piece === 'trim.right.vertical')!.first!;
    expect(hidingSentence(right(wide), { display: 'in' })).toBe(
      'Right side vertical: hides the 7/16" taper of the panel\'s edge and still laps it by 1 1/16".',
    );
    expect(hidingSentence(right(narrow), { display: 'in' })).toBe(
      'Right side vertical: too narrow for the 7/16" taper of the panel\'s edge; 1/16" would show.',
    );
  });
});
