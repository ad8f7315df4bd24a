import { describe, expect, it } from 'vitest';
import { encoded, linear, linearToOklab, type Oklab, oklabToLinear, type Rgb } from '../../src/scene/heat/oklab';
import { type Bytes, scaleColour, scaleColours } from '../../src/scene/heat/scale';
import { dichromacies, seenBy } from './dichromacy';

/** Ottosson 2020; the primaries' values from memory. */
describe('OKLab', () => {
  it.each([
    [
      [1, 1, 1],
      [1, 0, 0],
    ],
    [
      [1, 0, 0],
      [0.62796, 0.22486, 0.12585],
    ],
    [
      [0, 1, 0],
      [0.86644, -0.23389, 0.1795],
    ],
    [
      [0, 0, 1],
      [0.45201, -0.03246, -0.31153],
    ],
  ] as const)('of linear %j', (light, lab) => {
    linearToOklab(light).forEach((value, i) => expect(value).toBeCloseTo(lab[i]!, 4));
    oklabToLinear(linearToOklab(light)).forEach((value, i) => expect(value).toBeCloseTo(light[i]!, 5));
  });

  it('of the code values of sRGB: 50 % grey is 0.2140 of the light', () => {
    expect(linear(0.5)).toBeCloseTo(0.214, 4);
    expect(encoded(linear(0.5))).toBeCloseTo(0.5, 12);
    expect(linear(0.02)).toBeCloseTo(0.02 / 12.92, 12);
  });
});

const light = (bytes: Bytes): Rgb => bytes.map((byte) => linear(byte / 255)) as unknown as Rgb;
const apart = (a: Oklab, b: Oklab) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const views = {
  everyone: (bytes: Bytes) => linearToOklab(light(bytes)),
  ...Object.fromEntries(
    (Object.keys(dichromacies) as (keyof typeof dichromacies)[]).map((kind) => [
      kind,
      (bytes: Bytes) => linearToOklab(seenBy(kind, light(bytes))),
    ]),
  ),
};

/**
 * Difference in OKLab that is plain to see side by side (0.02 is about a just noticeable one; common practice, no
 * source).
 */
const PLAIN = 0.05;

describe.each(Object.entries(views))('the scale as seen by %s', (_, seen) => {
  it('tells both arms apart from a quarter of the range on', () => {
    for (let share = 0.25; share <= 1; share += 0.05) {
      expect(apart(seen(scaleColour(share)), seen(scaleColour(-share))), share.toFixed(2)).toBeGreaterThan(PLAIN);
    }
  });

  it('tells each quarter from the next', () => {
    for (let share = -1; share < 1; share += 0.25) {
      expect(apart(seen(scaleColour(share)), seen(scaleColour(share + 0.25))), share.toFixed(2)).toBeGreaterThan(PLAIN);
    }
  });

  it('darkens steadily away from true', () => {
    for (const way of [1, -1]) {
      for (let share = 0; share < 1; share += 0.05) {
        expect(seen(scaleColour(way * (share + 0.05)))[0]).toBeLessThan(seen(scaleColour(way * share))[0]);
      }
    }
  });
});

it('the scale gives no colour twice, so that it can be read back', () => {
  expect(new Set(scaleColours().map(String)).size).toBeGreaterThan(240);
});
