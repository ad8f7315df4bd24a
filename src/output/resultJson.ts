import type { Result } from '../core';

/** Decimals kept of most figures: 1e-4 mm and 1e-4 of a degree. */
const DECIMALS = 4;
/** Figures far below 1 by nature, kept to this many significant digits. */
const SMALL = new Set(['strainMax', 'strain', 'convergence', 'unfolding', 'parameters', 'stations']);
const DIGITS = 8;

const firstKeys = [
  'format',
  'version',
  'adjustment',
  'walls',
  'corners',
  'rim',
  'front',
  'panels',
  'pieces',
  'materials',
  'sequence',
  'problems',
];

/**
 * result.json: keys in a fixed order, figures rounded to 1e-4, rows of figures on one line.
 * @throws if a figure is not finite, which no solved job has
 */
export function resultJson(result: Result): string {
  const keys = [
    ...firstKeys,
    ...Object.keys(result)
      .filter((key) => !firstKeys.includes(key))
      .sort(),
  ];
  const ordered = Object.fromEntries(
    keys.filter((key) => key in result).map((key) => [key, result[key as keyof Result]]),
  );
  return `${print(rounded(ordered, 'result', false), 0)}\n`;
}

function rounded(value: unknown, path: string, small: boolean): unknown {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`${path} is not a finite number`);
    const figure = small ? Number(value.toPrecision(DIGITS)) : Math.round(value * 10 ** DECIMALS) / 10 ** DECIMALS;
    return figure === 0 ? 0 : figure;
  }
  if (Array.isArray(value)) return value.map((item, i) => rounded(item, `${path}[${i}]`, small));
  if (value && typeof value === 'object') {
    return Object.fromEntries(
      Object.entries(value)
        .filter(([, item]) => item !== undefined)
        .map(([key, item]) => [key, rounded(item, `${path}.${key}`, small || SMALL.has(key))]),
    );
  }
  return value;
}

function print(value: unknown, depth: number): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  const inner = '  '.repeat(depth + 1);
  const outer = '  '.repeat(depth);
  if (Array.isArray(value)) {
    if (value.every((item) => item === null || typeof item !== 'object')) return JSON.stringify(value);
    return `[\n${value.map((item) => inner + print(item, depth + 1)).join(',\n')}\n${outer}]`;
  }
  const entries = Object.entries(value);
  if (entries.length === 0) return '{}';
  return `{\n${entries.map(([key, item]) => `${inner}${JSON.stringify(key)}: ${print(item, depth + 1)}`).join(',\n')}\n${outer}}`;
}
