import { formatLength, parseLength } from '../../src/core';
import type { Row } from './bench';
import { timeTogether } from './time';

const TEXTS = ['59 13/16', `4' 11 13/16"`, '151.9 cm', '1519', '59½'];
const MILLIMETRES = TEXTS.map((_, index) => 1500 + index * 3.7);

export const name = 'lengths';
export const about = 'Reading and printing lengths, against the number routines of the language.';

export function run(): Row[] {
  const read = timeTogether({
    parse: () => TEXTS.map((text) => parseLength(text, 'in')),
    plain: () => TEXTS.map((text) => Number.parseFloat(text)),
  });
  const print = timeTogether({
    format: () => MILLIMETRES.map((mm) => formatLength(mm, { unit: 'in' })),
    plain: () => MILLIMETRES.map((mm) => mm.toFixed(1)),
  });
  const each = 1000 / TEXTS.length;
  return [
    {
      what: 'read a length',
      value: read.parse * each,
      unit: 'µs',
      against: { what: 'Number.parseFloat', value: read.plain * each },
    },
    {
      what: 'print a length',
      value: print.format * each,
      unit: 'µs',
      against: { what: 'toFixed', value: print.plain * each },
    },
  ];
}
