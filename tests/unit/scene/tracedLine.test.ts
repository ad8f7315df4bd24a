import { describe, expect, it } from 'vitest';
import { alcoveShape } from '../../../src/scene/geometry/shape';
import { tracedLine } from '../../../src/scene/geometry/traced-line';
import { solvedDemo } from './solvedDemo';

describe('tracedLine', () => {
  const { result } = solvedDemo();
  const shape = alcoveShape(result);

  it('lies a little off each wall, towards the room', () => {
    const line = tracedLine(
      result,
      [
        { wall: 'left', at: 300, height: 200 },
        { wall: 'back', at: -100, height: 0 },
        { wall: 'right', at: 50, height: -400 },
      ],
      1,
    );
    expect(line[0]).toEqual([expect.closeTo(shape.side.left(200, 300) + 4, 9), 200, 300]);
    expect(line[1]).toEqual([-100, 0, expect.closeTo(shape.back(-100, 0) + 4, 9)]);
    expect(line[2]).toEqual([expect.closeTo(shape.side.right(-400, 50) - 4, 9), -400, 50]);
  });

  it('moves with the walls where they are drawn further out of true', () => {
    const at = (factor: number) => tracedLine(result, [{ wall: 'left', at: 300, height: 900 }], factor)[0]![0];
    const out = shape.side.left(900, 300) - shape.nominal.left;
    expect(at(5) - at(1)).toBeCloseTo(4 * out, 0);
  });
});
