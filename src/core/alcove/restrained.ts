import { add, constant, type Dual, scale, subtract } from '../dual';
import type { Surface } from '../surface';
import type { Alcove } from './alcove';
import { insideCorner } from './corner';

/** Steeper than these no wall, rim or front edge stands, mm per mm: misread or mistyped readings make them. */
const STEEPEST = { plumb: 0.2, square: 0.75, level: 0.2 };
/** Farther from the control lines than this nothing of an alcove lies, mm. */
const FARTHEST = 5000;
/** A stretch shorter than this is looked at as if it were this long, mm. */
const LEAST_STRETCH = 100;
/** Steps each way of the grid on which slopes are looked at. */
const STEPS = 8;
/** Surfaces lean on each other: after these rounds what is left is a matter of rounding. */
const MOST_PASSES = 5;

/** A surface that the readings make steeper or farther away than it can be. */
export interface Beyond {
  /** its place in the result */
  where: string;
  words: string;
}

/**
 * The alcove with every surface that is beyond what can stand flattened about its middle until it can, so that panels
 * can be drawn on it at all; what is within stays as it is.
 * @param top of the panels, mm above the level line
 */
export function restrained(alcove: Alcove, top: number): { alcove: Alcove; beyond: Beyond[] } {
  let held = restrainedOnce(alcove, top);
  const found = new Map<string, Beyond>();
  // Where one surface gives way its neighbours reach further or less far, and are looked at again.
  for (let pass = 0; pass < MOST_PASSES && held.beyond.length > 0; pass++) {
    for (const each of held.beyond) found.set(each.where, each);
    held = restrainedOnce(held.alcove, top);
  }
  return { alcove: held.alcove, beyond: [...found.values()] };
}

function restrainedOnce(alcove: Alcove, top: number): { alcove: Alcove; beyond: Beyond[] } {
  const beyond: Beyond[] = [];
  const { x, height, z } = stretchOf(alcove, top);
  const keep = (surface: Surface, a: Stretch, b: Stretch, steepest: [number, number], found: Beyond): Surface => {
    const held = restrain(surface, a, b, steepest);
    if (held !== surface) beyond.push(found);
    return held;
  };
  const wall = (name: 'left' | 'right'): Surface =>
    keep(alcove[name], z, height, [STEEPEST.square, STEEPEST.plumb], { where: `walls.${name}`, words: `${name} wall` });
  const front = (name: 'left' | 'right'): Surface =>
    keep(alcove.front[name], [0, 0], height, [1, STEEPEST.plumb], {
      where: `front.${name}`,
      words: `front edge of the ${name} wall`,
    });
  return {
    alcove: {
      back: keep(alcove.back, x, height, [STEEPEST.level, STEEPEST.plumb], { where: 'walls.back', words: 'back wall' }),
      left: wall('left'),
      right: wall('right'),
      rim: keep(alcove.rim, x, z, [STEEPEST.level, STEEPEST.level], { where: 'rim', words: 'rim' }),
      front: { left: front('left'), right: front('right') },
    },
    beyond,
  };
}

type Stretch = [from: number, to: number];

const within = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** Where the alcove's surfaces count, as far as that can be said of readings that may be wild. */
function stretchOf(alcove: Alcove, top: number): { x: Stretch; height: Stretch; z: Stretch } {
  const left = within(insideCorner(alcove, 'left', 0).x.value, -FARTHEST, FARTHEST);
  const right = within(insideCorner(alcove, 'right', 0).x.value, -FARTHEST, FARTHEST);
  const out = Math.max(alcove.front.left.value(0, 0), alcove.front.right.value(0, 0));
  return {
    x: [Math.min(left, right), Math.max(left, right)],
    height: [within(alcove.rim.value(0, 0), -FARTHEST, top - LEAST_STRETCH), top],
    z: [0, within(out, LEAST_STRETCH, FARTHEST)],
  };
}

function restrain(surface: Surface, a: Stretch, b: Stretch, steepest: [number, number]): Surface {
  const share = Math.min(1, ...steepnesses(surface, a, b).map((slope, axis) => steepest[axis]! / slope));
  const middle: [Dual, Dual] = [constant((a[0] + a[1]) / 2), constant((b[0] + b[1]) / 2)];
  const level = surface.at(...middle);
  const held: Dual = { ...level, value: within(level.value, -FARTHEST, FARTHEST) };
  if (share === 1 && held.value === level.value) return surface;
  const scaled = <T extends number[]>(values: T): T => values.map((value) => share * value) as T;
  return {
    value: (u, v) => held.value + share * (surface.value(u, v) - level.value),
    gradient: (u, v) => scaled(surface.gradient(u, v)),
    curvature: (u, v) => scaled(surface.curvature(u, v)),
    at: (u, v) => add(held, scale(subtract(surface.at(u, v), level), share)),
    slopeAt: (u, v) => scale(surface.slopeAt(u, v), share),
  };
}

/** Largest slope along each coordinate over the stretch. */
function steepnesses(surface: Surface, [a0, a1]: Stretch, [b0, b1]: Stretch): [number, number] {
  let [alongA, alongB] = [0, 0];
  for (let i = 0; i <= STEPS; i++) {
    for (let j = 0; j <= STEPS; j++) {
      const [slopeA, slopeB] = surface.gradient(a0 + ((a1 - a0) * i) / STEPS, b0 + ((b1 - b0) * j) / STEPS);
      alongA = Math.max(alongA, Math.abs(slopeA));
      alongB = Math.max(alongB, Math.abs(slopeB));
    }
  }
  return [alongA, alongB];
}
