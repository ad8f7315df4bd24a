import { describe, expect, it } from 'vitest';
import { type Frame, fold, foldedOutline, type Piece, type Vec3 } from '../../../../src/core/piece';

const frame = (origin: Vec3): Frame => ({ origin, x: [1, 0, 0], y: [0, 1, 0], w: [0, 0, 1] });

describe('fold', () => {
  it('places a flat piece by its one frame', () => {
    const turned: Frame = { origin: [10, 20, 30], x: [0, 0, 1], y: [0, 1, 0], w: [-1, 0, 0] };
    const place = fold({ axis: 'x', stations: [{ at: 5, frame: turned }] });
    expect(place(7, 2, 3)).toEqual([7, 22, 32]);
  });

  it('goes from station to station along its axis, straight past the ends', () => {
    const stations = [
      { at: 0, frame: frame([0, 0, 0]) },
      { at: 10, frame: frame([10, 0, 4]) },
    ];
    const level = fold({ axis: 'x', stations });
    expect(level(5, 2, 1)).toEqual([5, 2, 3]);
    expect(level(-3, 0, 0)).toEqual([-3, 0, 0]);
    expect(level(12, 0, 0)).toEqual([12, 0, 4]);
    const upright = fold({
      axis: 'y',
      stations: stations.map(({ at, frame: f }) => ({ at, frame: { ...f, origin: [0, at, f.origin[2]] } })),
    });
    expect(upright(2, 5, 1)).toEqual([2, 5, 3]);
  });

  it('places the face at the thickness', () => {
    const piece = { axis: 'x', stations: [{ at: 0, frame: frame([0, 0, 0]) }], outline: [[1, 2]], thickness: 6 };
    expect(foldedOutline(piece as unknown as Piece)).toEqual([[1, 2, 6]]);
  });
});
