import { formatLength, type Job, type MaterialLine, type Result } from '../../core';

/** Columns of the shopping list. */
const HEADINGS = ['Item', 'Quantity', 'Pack', 'Packs to buy', 'Left over', 'How it is counted'];

/**
 * The shopping list as CSV (RFC 4180): whole packs, what is left over, and the rule of each line. Cells that a
 * spreadsheet would take for a formula are defused.
 */
export async function shoppingListCsv(job: Job, { materials }: Pick<Result, 'materials'>): Promise<string> {
  const { default: Papa } = await import('papaparse');
  const rows = materials.lines.map((line) => {
    const show = (amount: number): string => amountText(amount, line.unit, job);
    return [
      line.label,
      show(line.quantity),
      show(line.packs.size),
      line.packs.count,
      show(line.packs.leftOver),
      line.rule,
    ];
  });
  return Papa.unparse({ fields: HEADINGS, data: rows }, { escapeFormulae: true });
}

/** An amount with its unit, as bought: `299 mL`, `24 1/2"`, `3`. */
export function amountText(amount: number, unit: MaterialLine['unit'], { display }: Job): string {
  if (unit === 'pieces') return String(Math.round(amount));
  if (unit === 'mL') return `${Math.ceil(amount - 1e-9)} mL`;
  return formatLength(amount, { unit: display });
}
