import { describe, expect, it } from 'vitest';
import { constant } from '../../../../src/core/dual';
import { endOfStrip, levelStrip, offBack, offSide, overRimBy, uprightStrip } from '../../../../src/core/piece';
import { jobWith } from '../../../simulate';
import { alcoveOf, alcoveWith, expectDerivatives, skewedParameters } from '../skewedAlcove';

const rim = jobWith([]).rim;

describe('obstacles', () => {
  const place = { x: constant(750), y: constant(-730), z: constant(20) };

  it('say how far a place is clear, less than 0 inside', () => {
    const alcove = alcoveOf({});
    expect(offSide(alcove, 'right', 2)(place).value).toBeCloseTo(8, 12);
    expect(offSide(alcove, 'right', 12)(place).value).toBeCloseTo(-2, 12);
    expect(offSide(alcove, 'left', 2)(place).value).toBeCloseTo(1508, 12);
    expect(offBack(alcove, 8)(place).value).toBeCloseTo(12, 12);
    expect(overRimBy(alcove, rim, 3)(place).value).toBeCloseTo(7, 12);
  });
});

describe('endOfStrip', () => {
  it('ends a strip so that its tightest depth touches', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      const strip = levelStrip(alcove, 'back', 8, 900);
      for (const side of ['left', 'right'] as const) {
        const obstacle = offSide(alcove, side, 2);
        const end = endOfStrip(strip, 'u', 930, [0, 6], obstacle, side === 'left' ? 1 : -1, alcove[side].value(0, 930));
        const clear = [0, 6].map((w) => obstacle(strip.place(end, constant(930), w)).value);
        expect(Math.min(...clear)).toBeCloseTo(0, 8);
      }
    }
  });

  it('ends an upright strip on the rim', () => {
    const alcove = alcoveWith(skewedParameters(5));
    const strip = uprightStrip(alcove, 'left', 8, 740);
    const obstacle = overRimBy(alcove, rim, 3);
    const end = endOfStrip(strip, 'v', 720, [0, 6], obstacle, 1, -700);
    const clear = [0, 6].map((w) => obstacle(strip.place(constant(720), end, w)).value);
    expect(Math.min(...clear)).toBeCloseTo(0, 8);
  });

  it("carries derivatives; the strip's own slope counts as known", () => {
    const parameters = skewedParameters(6);
    // At depth 0 the strip's slope has no part in the end, so the derivatives are exact.
    const moved = expectDerivatives(
      (alcove) => endOfStrip(levelStrip(alcove, 'back', 8, 900), 'u', 930, [0], offSide(alcove, 'right', 2), -1, 760),
      parameters,
      'end of a level strip',
    );
    expect(moved).toBeGreaterThan(6);
  });
});
