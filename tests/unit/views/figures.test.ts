import { describe, expect, it } from 'vitest';
import type { WallReport } from '../../../src/core';
import { cornerFigures, wallFigures } from '../../../src/views/findings/figures';
import { lengthsIn } from '../../../src/views/parts/useLengths';

const lengths = lengthsIn('mm');
type Findings = Parameters<typeof wallFigures>[0];

const steady: WallReport = {
  ...{ plumb: 0, plumbSd: 0.2, bow: 0, bowSd: 0.2, bowAcross: 0, bowAcrossSd: 0.2, twist: 0, twistSd: 0.2 },
  sampled: { at: [], height: [], value: [], sd: [] },
  deviation: { at: [], height: [], plumb: { value: [], sd: [] }, flat: { value: [], sd: [] } },
  judged: { at: [0, 1000], height: [0, 2000] },
};
const result = (part: Partial<WallReport>, assumed: string[] = []) =>
  ({
    walls: { left: { ...steady, ...part } },
    adjustment: { parameters: assumed.map((name) => ({ name, value: 0, sd: 1, assumed: true })) },
  }) as unknown as Findings;
const words = (part: Partial<WallReport>) =>
  wallFigures(result(part), 'left', 2000, lengths).map((figure) => figure.words);

describe('wallFigures', () => {
  it('turns mm per m into mm over the height, with the direction in words', () => {
    expect(words({ plumb: 3 })[0]).toBe('top leans in 6.0 mm');
    expect(words({ plumb: -3 })[0]).toBe('top leans back 6.0 mm');
    expect(words({ bow: 2 })[1]).toBe('hollow 2.0 mm');
    expect(words({ bowAcross: -2 })[2]).toBe('hump 2.0 mm');
    expect(words({ twist: -4 })[3]).toBe('one corner off by 4.0 mm');
  });

  it('claims nothing that its ± does not bear out', () => {
    expect(words({ plumb: 0.3, bow: 0.3, bowAcross: -0.3, twist: 0.3 })).toEqual([
      'plumb',
      'straight',
      'straight',
      'none',
    ]);
    expect(wallFigures(result({}), 'left', 2000, lengths)[0]?.plusMinus).toBe('±0.8 mm');
  });
});

it('says of what no reading settles that it is not measured', () => {
  const figures = wallFigures(result({ bow: 9 }, ['left.bowUp', 'right.plumb']), 'left', 2000, lengths);
  expect(figures.map((figure) => figure.words)).toEqual(['plumb', 'not measured', 'straight', 'none']);
});

describe('cornerFigures', () => {
  it('says whether a corner is open, closed or square within its ±', () => {
    const angle = [
      { height: -700, value: 91, sd: 0.1 },
      { height: 0, value: 90.1, sd: 0.1 },
      { height: 900, value: 89, sd: 0.1 },
    ];
    const corners = { corners: { left: { angle } }, adjustment: { parameters: [] } } as unknown as Findings;
    expect(cornerFigures(corners, 'left', lengths)).toEqual([
      { name: '700.0 mm below', words: '91.00°, open', plusMinus: '±0.20°' },
      { name: 'Level line', words: '90.10°, square', plusMinus: '±0.20°' },
      { name: '900.0 mm above', words: '89.00°, closed', plusMinus: '±0.20°' },
    ]);
  });
});
