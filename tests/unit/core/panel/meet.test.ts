import { expect, it } from 'vitest';
import { constant } from '../../../../src/core/dual';
import { meet } from '../../../../src/core/panel/meet';

it('meet finds where two lines cross, gentle or steep', () => {
  for (const [lean, fall] of [
    [0.02, -0.01],
    [0.6, 0.9],
    [-3, 2],
  ] as const) {
    // u = 700 + lean v; v = −740 + fall u
    const [u, v] = meet(
      (height) => constant(700 + lean * height),
      (along) => constant(-740 + fall * along),
      0,
    );
    expect(v).toBeCloseTo((-740 + fall * 700) / (1 - lean * fall), 7);
    expect(u).toBeCloseTo(700 + lean * v, 7);
  }
});
