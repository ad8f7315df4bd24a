import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holeTool, LARGEST_OVERSIZE } from '../../../../src/core/panel';

describe('holeTool', () => {
  it('takes the next hole saw of the series that is not smaller', () => {
    expect(holeTool(95, 'mm')).toEqual({ how: 'hole-saw', diameter: 95 });
    expect(holeTool(95, 'in')).toEqual({ how: 'hole-saw', diameter: 95.25 });
    expect(holeTool(95.4, 'in')).toEqual({ how: 'hole-saw', diameter: 98.425 });
    expect(holeTool(31.7, 'in')).toEqual({ how: 'hole-saw', diameter: 31.75 });
    // 1 1/4 in kept to a tenth of a millimetre stays 1 1/4 in
    expect(holeTool(31.8, 'in')).toEqual({ how: 'hole-saw', diameter: 31.75 });
  });

  it('drills what is smaller than the smallest hole saw', () => {
    expect(holeTool(12.2, 'mm')).toEqual({ how: 'drill', diameter: 13 });
    expect(holeTool(12.2, 'in')).toEqual({ how: 'drill', diameter: 12.7 });
    expect(holeTool(18.9, 'mm')).toEqual({ how: 'hole-saw', diameter: 19 });
  });

  it('saws from a pilot where no hole saw is large or near enough', () => {
    expect(holeTool(152, 'mm')).toMatchObject({ how: 'hole-saw' });
    expect(holeTool(153, 'mm')).toEqual({ how: 'jigsaw', pilot: 10 });
    expect(holeTool(130, 'in')).toEqual({ how: 'jigsaw', pilot: expect.closeTo(9.525, 9) });
  });

  it('never cuts smaller than asked for, nor much larger', () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 400, noNaN: true }), fc.constantFrom('in', 'mm'), (diameter, unit) => {
        const tool = holeTool(diameter, unit);
        if (tool.how === 'jigsaw') return tool.pilot < diameter;
        return tool.diameter >= diameter - 0.06 - 1e-9 && tool.diameter <= diameter + LARGEST_OVERSIZE;
      }),
    );
  });
});
