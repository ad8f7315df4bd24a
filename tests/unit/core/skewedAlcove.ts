import { expect } from 'vitest';
import { type Alcove, alcoveModel } from '../../../src/core/alcove';
import type { Dual } from '../../../src/core/dual';
import { jobWith, randomFrom } from '../../simulate';

const model = alcoveModel(jobWith([]));

/** Steps that move each parameter's surface by about 0.01 mm over a wall: mm, mm/mm or mm/mm². */
const STEP = { height: 1e-2, position: 1e-2, slope: 1e-5, bend: 1e-8 };
const stepOf = (name: string): number => {
  const kind = name.split('.').at(-1)!;
  if (kind === 'position' || kind === 'height') return STEP.position;
  return kind.startsWith('bow') || kind === 'twist' ? STEP.bend : STEP.slope;
};

/** An alcove with the given parameters, by name; a 1520 mm wide, 760 mm deep true box 740 mm over the rim for the rest. */
export function alcoveOf(values: Record<string, number>): Alcove {
  return model.build(parametersOf(values));
}

const BOX: Record<string, number> = {
  'left.position': -760,
  'right.position': 760,
  'rim.height': -740,
  'front.left.position': 760,
  'front.right.position': 760,
};

function parametersOf(values: Record<string, number>): Float64Array {
  const known = new Set(model.parameters.map(({ name }) => name));
  for (const name of Object.keys(values)) if (!known.has(name)) throw new Error(`no parameter ${name}`);
  return Float64Array.from(model.parameters, ({ name }) => values[name] ?? BOX[name] ?? 0);
}

/** Parameters of a random alcove, up to four times as far out of true as common ones. */
export function skewedParameters(seed: number): Float64Array {
  const random = randomFrom(seed);
  const spread = (name: string): number => {
    const step = stepOf(name);
    return step === STEP.position ? 40 : step === STEP.slope ? 0.04 : 2e-5;
  };
  return Float64Array.from(model.parameters, ({ name }) => (BOX[name] ?? 0) + random.between(-1, 1) * spread(name));
}

export const alcoveWith = (parameters: ArrayLike<number>): Alcove => model.build(parameters);

/** Checks a quantity's derivatives against central differences in every parameter; returns how many are not zero. */
export function expectDerivatives(of: (alcove: Alcove) => Dual, parameters: Float64Array, hint: string): number {
  const { gradient } = of(model.build(parameters));
  let moved = 0;
  model.parameters.forEach(({ name }, j) => {
    const step = stepOf(name);
    const at = (by: number): number => of(model.build(parameters.with(j, parameters[j]! + by))).value;
    const difference = (at(step) - at(-step)) / 2;
    const predicted = (gradient?.[j] ?? 0) * step;
    expect(Math.abs(predicted - difference), `${hint}: ${name} ${predicted} ${difference}`).toBeLessThan(
      2e-9 + 1e-5 * Math.abs(difference),
    );
    if (difference !== 0) moved++;
  });
  return moved;
}
