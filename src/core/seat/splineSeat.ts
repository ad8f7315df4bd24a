import {
  type BendingStiffness,
  coefficientsOf,
  followFloor,
  type Gripped,
  type SplineGrid,
  splineAt,
} from '../contact';
import { constant, type Dual } from '../dual';
import type { Surface } from '../surface';

/**
 * A bent sheet as a surface in its wall's own coordinates. Its derivatives by the adjusted parameters are those of a
 * sheet that stays in touch where it is in touch while the wall under it moves.
 * @param sign of the wall's own height towards the room
 */
export function splineSeat(
  wall: Surface,
  sign: 1 | -1,
  pressed: Gripped,
  stiffness: BendingStiffness,
  moves: () => Moves = sheetMoves(wall, pressed, stiffness),
): Surface {
  const { grid } = pressed;
  const shape = pressed.coefficients.map((value) => sign * value);
  const dual = (a: Dual, b: Dual, order: 0 | 1): Dual => {
    const { count, of } = moves();
    const own = splineAt(grid, a.value, b.value, order, 0);
    const gradient = new Float64Array(count);
    for (const [parameter, move] of of) gradient[parameter] = own(move);
    if (a.gradient !== null) addScaled(gradient, a.gradient, splineAt(grid, a.value, b.value, order + 1, 0)(shape));
    if (b.gradient !== null) addScaled(gradient, b.gradient, splineAt(grid, a.value, b.value, order, 1)(shape));
    return { value: own(shape), gradient };
  };
  const derivative = (a: number, b: number, da: number, db: number): number => splineAt(grid, a, b, da, db)(shape);
  return {
    value: (a, b) => derivative(a, b, 0, 0),
    gradient: (a, b) => [derivative(a, b, 1, 0), derivative(a, b, 0, 1)],
    curvature: (a, b) => [derivative(a, b, 2, 0), derivative(a, b, 1, 1), derivative(a, b, 0, 2)],
    at: (a, b) => dual(a, b, 0),
    slopeAt: (a, b) => dual(a, b, 1),
  };
}

/** How the coefficients of a surface, in the wall's own coordinates, move with the adjusted parameters. */
export interface Moves {
  /** number of parameters, and the move with each that has any */
  count: number;
  of: [parameter: number, move: Float64Array][];
}

/** Of a bent sheet; worked out once, when it is first asked for. */
export function sheetMoves(wall: Surface, { grid, held }: Gripped, stiffness: BendingStiffness): () => Moves {
  let moves: Moves | null = null;
  return () => {
    moves ??= movesOf(wall, grid, followFloor(grid, stiffness, held));
    return moves;
  };
}

/** Of a sheet that does with its wall's moves what `follow` says; of the wall itself where that changes nothing. */
export function movesOf(
  wall: Surface,
  grid: SplineGrid,
  follow: (floorMove: Float64Array) => Float64Array = (move) => move,
): Moves {
  const gradients: Float64Array[] = [];
  coefficientsOf(grid, (u, v) => {
    gradients.push(wall.at(constant(u), constant(v)).gradient ?? new Float64Array(0));
    return 0;
  });
  const count = gradients[0]!.length;
  const of: Moves['of'] = [];
  for (let parameter = 0; parameter < count; parameter++) {
    if (gradients.every((gradient) => gradient[parameter] === 0)) continue;
    let next = 0;
    of.push([parameter, follow(coefficientsOf(grid, () => gradients[next++]![parameter]!))]);
  }
  return { count, of };
}

function addScaled(target: Float64Array, source: Float64Array, factor: number): void {
  for (let i = 0; i < target.length; i++) target[i] = target[i]! + factor * source[i]!;
}
