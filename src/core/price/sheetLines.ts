import type { Job, WallName } from '../job-file';
import type { Result } from '../result';
import { type PriceLine, priceLine } from './line';

const WALLS: WallName[] = ['back', 'left', 'right'];
const LOOK_WORDS = { plain: 'plain', stone: 'stone', ribbed: 'ribbed', 'large-format': 'large format' };

/** Sheets bought, by the panel whose size they have; a look costs more than a plain sheet by what the list says. */
export function sheetLines({ prices, finish }: Job, { layout }: Pick<Result, 'layout'>): PriceLine[] {
  const more = finish.look === 'plain' ? 0 : prices.looks[finish.look];
  return WALLS.flatMap((wall) => {
    const count = layout.sheets.filter(({ like }) => like === wall).length;
    if (count === 0) return [];
    const plain = prices.sheets[wall];
    const each = plain === undefined || more === undefined ? undefined : plain + more;
    const label = `Sheet as for the ${wall} panel, ${LOOK_WORDS[finish.look]}`;
    return [priceLine(`sheet.${wall}`, 'materials', label, [count, 'sheet'], each)];
  });
}
