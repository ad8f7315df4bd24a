import { describe, expect, it } from 'vitest';
import { splitContour } from '../../../../src/core';
import { contourLine } from '../../../../src/views/bench/contour/contour-line';
import { gaugeText } from '../../../../src/views/bench/contour/gauge-text';
import { tracedLine } from '../../../../src/views/bench/contour/traced-line';
import { solvedDemo } from '../../scene/solvedDemo';

describe('gaugeText', () => {
  it('reads a point a line, whatever parts the two lengths', () => {
    expect(gaugeText('0; 0\n1 1/2; -1/4\n\n2\t-1', 'in')).toEqual({
      ok: true,
      points: [
        [0, 0],
        [38.1, expect.closeTo(-6.35, 9)],
        [50.8, -25.4],
      ],
    });
    expect(gaugeText('0 0\n12.5 -3', 'mm')).toEqual({
      ok: true,
      points: [
        [0, 0],
        [12.5, -3],
      ],
    });
  });

  it.each([
    ['0; 0\n5', /Line 2: "5" is not two lengths/],
    ['0; 0\n5; wide', /Line 2: .*wide/],
    ['0; 0', /at least two points/],
  ])('says in which line %j is not understood', (text, message) => {
    expect(gaugeText(text, 'mm')).toEqual({ ok: false, message: expect.stringMatching(message) });
  });
});

describe('tracedLine', () => {
  const taps = [
    [100, 50],
    [140, 54],
    [150, 90],
  ] as const;
  const rule = [
    [160, 40],
    [160, 240],
  ] as const;

  it('gives mm outward and up from the first tap', () => {
    const line = tracedLine(taps, rule, 100)!;
    expect(line.flat()).toEqual([0, 0, 20, -2, 25, -20].map((value) => expect.closeTo(value, 9)));
  });

  it('is the same from the other end of the tub, on a turned picture, and at another size', () => {
    const turned = ([x, y]: readonly [number, number]) => [3 * (-0.8 * x + 0.6 * y), 3 * (0.6 * x + 0.8 * y)] as const;
    const line = tracedLine(taps.map(turned), [turned(rule[0]), turned(rule[1])], 100)!;
    expect(line.flat()).toEqual(
      tracedLine(taps, rule, 100)!
        .flat()
        .map((value) => expect.closeTo(value, 9)),
    );
  });

  it('gives nothing where the ends of the rule fall together', () => {
    expect(tracedLine(taps, [rule[0], rule[0]], 100)).toBeNull();
  });
});

describe('contourLine', () => {
  it('is the line that is taken apart into the rim and the apron', () => {
    const { rim } = solvedDemo().job;
    const line = contourLine(rim).slice(0, -1);
    const { profile, apron } = splitContour(line);
    expect(profile.flat()).toEqual(rim.profile.flat().map((value) => expect.closeTo(value, 9)));
    expect(apron.flat()).toEqual(rim.apron.flat().map((value) => expect.closeTo(value, 9)));
  });

  it('goes down plumb to the floor where nothing is known of the apron', () => {
    const { rim } = solvedDemo().job;
    expect(contourLine({ ...rim, profile: [], apron: [], apronHeight: 400 })).toEqual([
      [0, 0],
      [0, -400],
    ]);
  });
});
