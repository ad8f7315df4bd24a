import { describe, expect, it } from 'vitest';
import { resultJson } from '../../../src/output';
import { fixtureResult } from './fixture';

describe('resultJson', () => {
  const result = fixtureResult();

  it('reads back to the same figures within 1e-4', () => {
    const back = JSON.parse(resultJson(result));
    expect(back.panels.back.outline).toHaveLength(result.panels.back.outline.length);
    result.panels.back.outline.forEach(([u, v], i) => {
      expect(Math.abs(back.panels.back.outline[i][0] - u)).toBeLessThanOrEqual(5.001e-5);
      expect(Math.abs(back.panels.back.outline[i][1] - v)).toBeLessThanOrEqual(5.001e-5);
    });
    expect(back.adjustment.readings.map(({ id }: { id: string }) => id)).toEqual(
      result.adjustment.readings.map(({ id }) => id),
    );
  });

  it('keeps figures that are small by nature', () => {
    const back = JSON.parse(resultJson(result));
    expect(back.panels.back.strainMax).toBe(0.00012);
    result.adjustment.parameters.forEach(({ value }, i) => {
      expect(Math.abs(back.adjustment.parameters[i].value - value)).toBeLessThanOrEqual(1e-7 * Math.abs(value));
    });
  });

  it('starts with format and version, whatever order the result has', () => {
    const { panels, ...rest } = result;
    const text = resultJson({ panels, ...rest });
    expect(text).toBe(resultJson(result));
    expect(Object.keys(JSON.parse(text)).slice(0, 4)).toEqual(['format', 'version', 'adjustment', 'walls']);
  });

  it('writes no minus zero and no exponent in coordinates', () => {
    const panel = {
      ...result.panels.back,
      outline: [
        [-0.00001, 1e-7],
        [1, 0],
        [1, 1],
      ] as [number, number][],
    };
    const text = resultJson({ ...result, panels: { ...result.panels, back: panel } });
    expect(JSON.parse(text).panels.back.outline[0]).toEqual([0, 0]);
    expect(text).not.toContain('-0,');
  });

  it('refuses a figure that is not finite, and says where', () => {
    const panel = { ...result.panels.back, bedMax: Number.NaN };
    expect(() => resultJson({ ...result, panels: { ...result.panels, back: panel } })).toThrow(
      'result.panels.back.bedMax',
    );
  });
});
