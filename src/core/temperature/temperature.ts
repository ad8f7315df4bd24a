import type { DisplayUnit } from '../length';

/**
 * What a figure says about temperature: a `temperature`, °C inside; a `temperature-change`, K inside; what something
 * does `per-degree`, 1/K inside.
 */
export type Temperature = 'temperature' | 'temperature-change' | 'per-degree';

/** The degree that goes with the unit that lengths are shown in: Fahrenheit beside inches. */
export const degreeMark = (unit: DisplayUnit): '°F' | '°C' => (unit === 'in' ? '°F' : '°C');

/** A figure as shown beside lengths in `unit`: 0 °C = 32 °F and 5 K = 9 °F, exact (NIST SP 811). */
export function temperatureShown(kind: Temperature, inside: number, unit: DisplayUnit): number {
  if (unit === 'mm') return inside;
  if (kind === 'per-degree') return (inside * 5) / 9;
  return (inside * 9) / 5 + (kind === 'temperature' ? 32 : 0);
}

/** The inverse: °C, K or 1/K for a figure as it is shown. */
export function temperatureInside(kind: Temperature, shown: number, unit: DisplayUnit): number {
  if (unit === 'mm') return shown;
  if (kind === 'per-degree') return (shown * 9) / 5;
  return ((shown - (kind === 'temperature' ? 32 : 0)) * 5) / 9;
}

/** A temperature or a change of it in words, to a tenth of a degree: `69.8 °F`. */
export const temperatureText = (kind: Exclude<Temperature, 'per-degree'>, inside: number, unit: DisplayUnit): string =>
  `${Math.round(10 * temperatureShown(kind, inside, unit)) / 10} ${degreeMark(unit)}`;
