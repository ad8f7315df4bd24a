import { angleSd, cautions, gapSd, type Priors, straightedgeSd, tapeSd, toleranceSets } from '../core';
import { plainJob } from './facts';

/** Tables that the guide shows of what the code holds, as markup, by name. */
export const tables: Readonly<Record<string, () => string>> = {
  cautions: () =>
    `<ul data-cautions>${Object.values(cautions)
      .map((words) => `<li>${escaped(words)}</li>`)
      .join('')}</ul>`,
  tolerances: () =>
    table(
      ['Set', 'Limits', 'Source'],
      toleranceSets.map(({ name, about, source }) => [name, about, source]),
    ),
  instruments: () => table(['Instrument', '1 sigma', 'Source'], instrumentRows()),
  priors: () => table(['What walls are usually like', '1 sigma'], priorRows()),
};

function instrumentRows(): string[][] {
  const { instruments } = plainJob();
  const practice = 'Common practice, no source.';
  const directive =
    'Class II maximum error (0.3 + 0.2 L) mm, L in metres rounded up (Directive 2014/32/EU, annex X, chapter I), taken as 2 sigma, with 0.5 mm of reading error in quadrature; the reading error is common practice, no source.';
  return [
    [
      'Tape, up to 1, 2 and 3 m',
      `${[1, 2, 3].map((metres) => tapeSd(metres * 1000).toFixed(2)).join(', ')} mm`,
      directive,
    ],
    ['Rule, a gap to a hung line', `${gapSd(instruments)} mm`, practice],
    ['Straightedge', `${straightedgeSd(instruments)} mm`, practice],
    ['Angle finder', `${angleSd(instruments)}°`, practice],
  ];
}

const priorWords: Record<keyof Priors, readonly [words: string, unit: string]> = {
  plumb: ['A wall out of plumb', 'mm/m'],
  square: ['A corner out of square', 'mm/m'],
  twist: ['Twist of a wall', 'mm/m²'],
  bow: ['Bow of a wall or the rim, as a quadratic coefficient', 'mm/m²'],
  rimLevel: ['The rim out of level', 'mm/m'],
  frontPlumb: ['A front edge out of plumb', 'mm/m'],
};

function priorRows(): string[][] {
  const { priors } = plainJob();
  return Object.entries(priorWords).map(([key, [words, unit]]) => [words, `${priors[key as keyof Priors]} ${unit}`]);
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const heads = head.map((words) => `<th scope="col">${escaped(words)}</th>`).join('');
  const line = ([first = '', ...rest]: readonly string[]): string =>
    `<tr><th scope="row">${escaped(first)}</th>${rest.map((words) => `<td>${escaped(words)}</td>`).join('')}</tr>`;
  return `<div data-wide="table"><table><thead><tr>${heads}</tr></thead><tbody>${rows.map(line).join('')}</tbody></table></div>`;
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
