import type { Job, Prices } from '../job-file';
import type { Result } from '../result';
import { type PriceLine, priceLine } from './line';

/** The price list's name of what the materials call by its id. */
const PACKS: Record<string, keyof Prices['packs']> = {
  adhesive: 'adhesive',
  sealant: 'sealant',
  caulk: 'caulk',
  'flashing-tape': 'flashingTape',
  'double-faced-strips': 'strips',
  'painter-tape': 'painterTape',
  'cleaning-alcohol': 'alcohol',
  'backer-rod': 'backerRod',
  'shelf-brackets': 'brackets',
  screws: 'screws',
};

/** Whole packs of paste, tape, rod, screws and alcohol, and brackets by the piece, as the materials count them. */
export function packLines({ prices }: Job, { materials }: Pick<Result, 'materials'>): PriceLine[] {
  return materials.lines.flatMap(({ id, label, packs }) => {
    const name = PACKS[id];
    if (name === undefined || packs.count === 0) return [];
    const words = label.charAt(0).toUpperCase() + label.slice(1);
    return [
      priceLine(id, 'materials', words, [packs.count, id === 'shelf-brackets' ? 'piece' : 'pack'], prices.packs[name]),
    ];
  });
}
