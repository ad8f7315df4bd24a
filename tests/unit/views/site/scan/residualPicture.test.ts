import { describe, expect, it } from 'vitest';
import { residualPicture, worstBlock } from '../../../../../src/views/site/scan/residual-picture';

/** Two columns, two rows from the bottom up: fits, not seen; too near, too far but unsure. */
const map = {
  from: [50, -150] as [number, number],
  size: 100,
  columns: 2,
  value: [0.1, null, 2, -1],
  sd: [0.1, null, 0.2, 0.5],
};
const at = (surface: 'back' | 'left' | 'rim', column: number, row: number) =>
  residualPicture(surface, map, 0.4).blocks.find((block) => block.column === column && block.row === row);

describe('residualPicture', () => {
  it('has up at the top on a wall, and turns the left wall as it is seen from the room', () => {
    expect(at('back', 0, 0)).toMatchObject({ value: 2, sign: 1 });
    expect(at('back', 0, 1)).toMatchObject({ value: 0.1, sign: 0 });
    expect(at('left', 1, 0)).toMatchObject({ value: 2, sign: 1 });
    expect(at('left', 0, 1)).toMatchObject({ value: null, sign: 0 });
  });

  it('has the front of the rim below', () => {
    expect(at('rim', 0, 1)).toMatchObject({ value: 2 });
  });

  it('signs only what stands out of its own spread', () => {
    expect(at('back', 1, 0)).toMatchObject({ value: -1, sign: 0 });
  });
});

describe('worstBlock', () => {
  it('is the place that stands out most', () => {
    expect(worstBlock(map, 0.4)).toEqual({ at: 50, height: -50, value: 2 });
    expect(worstBlock(map, 3)).toBeNull();
  });
});
