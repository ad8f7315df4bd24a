import { lookWords } from '../finish';
import { type Job, WALLS } from '../job-file';
import type { Result } from '../result';
import { type PriceLine, priceLine } from './line';

/** Sheets bought, by the panel whose size they have; a look costs more than a plain sheet by what the list says. */
export function sheetLines({ prices, finish }: Job, { layout }: Pick<Result, 'layout'>): PriceLine[] {
  const more = finish.look === 'plain' ? 0 : prices.looks[finish.look];
  return WALLS.flatMap((wall) => {
    const count = layout.sheets.filter(({ like }) => like === wall).length;
    if (count === 0) return [];
    const plain = prices.sheets[wall];
    const each = plain === undefined || more === undefined ? undefined : plain + more;
    const label = `Sheet as for the ${wall} panel, ${lookWords[finish.look]}`;
    return [priceLine(`sheet.${wall}`, 'materials', label, [count, 'sheet'], each)];
  });
}
