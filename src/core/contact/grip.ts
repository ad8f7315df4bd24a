import { surfaceOf } from './evaluate';
import { type Plate, platesOn } from './plates';
import { depthOf, energyOf, type Pressed, pressSheet, type Rectangle } from './press';
import { settle } from './settle';
import { centreOf, coefficientsOf } from './splineGrid';
import { areasOf } from './stencil';
import type { BendingStiffness } from './stiffness';

/** A sheet that is held by what grips it within reach of the wall. */
export interface Gripped extends Pressed {
  /** what presses on each spline, N */
  load: Float64Array;
  /** share of the sheet within reach */
  within: number;
}

/** Where nothing grips, so much of the pressure stays on, that the sheet does not swing free. */
const LEFT_ON = 0.01;
const MOST_ROUNDS = 12;

/**
 * A sheet pressed all over and then let go where it stands farther off the wall than the grip reaches: what has let go
 * never takes hold again, so that it ends. Where it grips everywhere this is `pressSheet`.
 * @param reach mm off the wall
 */
export function gripSheet(
  height: (u: number, v: number) => number,
  region: Rectangle,
  stiffness: BendingStiffness,
  pressure: number,
  reach: number,
  options: { columns: number; rows: number; tolerance: number },
): Gripped {
  let pressed = pressSheet(height, region, stiffness, pressure, options);
  const { grid } = pressed;
  const areas = areasOf(grid);
  const floor = coefficientsOf(grid, height);
  const grips = new Uint8Array(areas.length).fill(1);
  const loadNow = (): Float64Array => areas.map((area, k) => area * pressure * (grips[k] ? 1 : LEFT_ON));
  let load = loadNow();
  let plates: Plate[] | null = null;
  for (let round = 0; round < MOST_ROUNDS && letGo(pressed, height, reach, grips); round++) {
    load = loadNow();
    if (pressed.rigid) continue;
    plates ??= platesOn(grid, stiffness);
    const settled = settle({ plates, load, floor }, pressed, depthOf(floor), options.tolerance);
    pressed = {
      ...pressed,
      ...settled,
      imbalance: [...pressed.imbalance, ...settled.imbalance],
      energy: energyOf(settled, load, floor),
    };
  }
  const total = areas.reduce((sum, area) => sum + area, 0);
  const gripped = areas.reduce((sum, area, k) => sum + (grips[k] ? area : 0), 0);
  return { ...pressed, load, within: gripped / total };
}

/** Lets go of the splines out of reach; true where that changed anything. */
function letGo(
  { grid, coefficients }: Pressed,
  height: (u: number, v: number) => number,
  reach: number,
  grips: Uint8Array,
): boolean {
  const surface = surfaceOf(grid, coefficients);
  const [u1, v1] = [grid.u0 + grid.columns * grid.cellWidth, grid.v0 + grid.rows * grid.cellHeight];
  let changed = false;
  for (let k = 0; k < grips.length; k++) {
    if (!grips[k]) continue;
    const centre = centreOf(grid, k % grid.across, Math.floor(k / grid.across));
    const [u, v] = [Math.min(Math.max(centre[0], grid.u0), u1), Math.min(Math.max(centre[1], grid.v0), v1)];
    if (surface(u, v).value - height(u, v) <= reach) continue;
    grips[k] = 0;
    changed = true;
  }
  return changed;
}
