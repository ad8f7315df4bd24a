import { describe, expect, it } from 'vitest';
import { alcoveModel } from '../../../../src/core/alcove';
import { jobWith } from '../../../simulate';

const job = jobWith([], {
  levelAboveFloor: 1240,
  rim: { apronHeight: 490, width: 740 },
  priors: { plumb: 6, square: 12, twist: 3, bow: 5, rimLevel: 4, frontPlumb: 9 },
});
const model = alcoveModel(job);
const index = (name: string): number => model.parameters.findIndex((parameter) => parameter.name === name);

describe('alcoveModel', () => {
  it('has the least basis: back 4, sides 6 each, rim 5, front edges 2 each', () => {
    const count = (part: string) => model.parameters.filter(({ name }) => name.startsWith(`${part}.`)).length;
    expect(['back', 'left', 'right', 'rim', 'front.left', 'front.right'].map(count)).toEqual([4, 6, 6, 5, 2, 2]);
    expect(new Set(model.parameters.map(({ name }) => name)).size).toBe(25);
    expect(new Set(model.parameters.map(({ label }) => label)).size).toBe(25);
  });

  it('turns priors per metre into priors per millimetre; sizes and positions have none', () => {
    const prior = (name: string) => model.parameters[index(name)]!.priorSd;
    expect(prior('back.plumb')).toBeCloseTo(6e-3, 15);
    expect(prior('left.square')).toBeCloseTo(12e-3, 15);
    expect(prior('right.twist')).toBeCloseTo(3e-6, 18);
    expect(prior('left.bowUp')).toBeCloseTo(5e-6, 18);
    expect(prior('rim.levelAlong')).toBeCloseTo(4e-3, 15);
    expect(prior('rim.bowAcross')).toBeCloseTo(5e-6, 18);
    expect(prior('front.right.plumb')).toBeCloseTo(9e-3, 15);
    const sizes = model.parameters.filter(({ priorSd }) => priorSd === null).map(({ name }) => name);
    expect(sizes).toEqual([
      'left.position',
      'right.position',
      'rim.height',
      'front.left.position',
      'front.right.position',
    ]);
  });

  it("starts from a true box of the job's rim", () => {
    const alcove = model.build(model.parameters.map(({ start }) => start));
    expect(alcove.back.value(300, 400)).toBe(0);
    expect(alcove.left.value(300, 400)).toBe(-762);
    expect(alcove.right.value(300, 400)).toBe(762);
    expect(alcove.rim.value(300, 400)).toBe(490 - 1240);
    expect(alcove.front.left.value(0, 400)).toBe(740);
  });

  it.each([
    ['back.plumb', (a: ReturnType<typeof model.build>) => a.back.value(300, 500), 500],
    ['back.twist', (a: ReturnType<typeof model.build>) => a.back.value(300, 500), 150_000],
    ['back.bowAcross', (a: ReturnType<typeof model.build>) => a.back.value(300, 500), 90_000],
    ['back.bowUp', (a: ReturnType<typeof model.build>) => a.back.value(300, 500), 250_000],
    ['left.plumb', (a: ReturnType<typeof model.build>) => a.left.value(200, 500), 500],
    ['left.square', (a: ReturnType<typeof model.build>) => a.left.value(200, 500), 200],
    ['left.bowUp', (a: ReturnType<typeof model.build>) => a.left.value(200, 500), 250_000],
    ['right.bowAcross', (a: ReturnType<typeof model.build>) => a.right.value(200, 500), 40_000],
    ['rim.levelAlong', (a: ReturnType<typeof model.build>) => a.rim.value(300, 200), 300],
    ['rim.levelAcross', (a: ReturnType<typeof model.build>) => a.rim.value(300, 200), 200],
    ['rim.bowAlong', (a: ReturnType<typeof model.build>) => a.rim.value(300, 200), 90_000],
    ['front.left.plumb', (a: ReturnType<typeof model.build>) => a.front.left.value(0, 500), 500],
  ])('%s moves its own term only', (name, value, expected) => {
    const zero = model.parameters.map(() => 0);
    expect(value(model.build(zero.with(index(name), 1)))).toBe(expected);
    expect(value(model.build(zero))).toBe(0);
  });
});
