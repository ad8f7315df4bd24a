import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  degreeMark,
  type Temperature,
  temperatureInside,
  temperatureShown,
  temperatureText,
} from '../../../../src/core/temperature';

describe('temperatures beside inches', () => {
  // Defining points: ice 32 °F, steam 212 °F, the two scales meet at -40, 5 K are 9 °F.
  it.each<[Temperature, number, number]>([
    ['temperature', 0, 32],
    ['temperature', 100, 212],
    ['temperature', -40, -40],
    ['temperature-change', 5, 9],
    ['temperature-change', 0, 0],
    // Gypsum board as published in both units (GA-235; from memory): 16.2e-6 per °C, 9e-6 per °F.
    ['per-degree', 16.2, 9],
  ])('%s: %d inside is %d shown, and back', (kind, inside, shown) => {
    expect(temperatureShown(kind, inside, 'in')).toBeCloseTo(shown, 12);
    expect(temperatureInside(kind, shown, 'in')).toBeCloseTo(inside, 12);
  });

  it('stand as they are beside millimetres', () => {
    expect(temperatureShown('temperature', 21.5, 'mm')).toBe(21.5);
    expect(temperatureInside('per-degree', 30, 'mm')).toBe(30);
    expect([degreeMark('in'), degreeMark('mm')]).toEqual(['°F', '°C']);
  });

  it('come back to a dozen figures', () => {
    const kinds = fc.constantFrom<Temperature>('temperature', 'temperature-change', 'per-degree');
    fc.assert(
      fc.property(kinds, fc.integer({ min: -4000, max: 4000 }), (kind, tenths) => {
        const inside = temperatureInside(kind, tenths / 10, 'in');
        expect(Number(temperatureShown(kind, inside, 'in').toPrecision(12))).toBe(tenths / 10);
      }),
    );
  });

  it('are told to a tenth of a degree', () => {
    expect(temperatureText('temperature', 21, 'in')).toBe('69.8 °F');
    expect(temperatureText('temperature', 21, 'mm')).toBe('21 °C');
    expect(temperatureText('temperature', temperatureInside('temperature', 70, 'in'), 'mm')).toBe('21.1 °C');
    expect(temperatureText('temperature-change', 15, 'in')).toBe('27 °F');
  });
});
