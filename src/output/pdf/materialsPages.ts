import type { Job, Result } from '../../core';
import { amountText } from '../shoppingList';
import { inputAmount } from '../words';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

/** What to buy, with the rule that counts it; returns the first page. */
export function materialsPages(pack: Pack, job: Job, { materials }: Result): Leaf {
  const flow = new Flow(
    pack,
    'Materials to buy',
    'Counted from the fitted panels. Every figure follows from the rule beside it.',
  );
  const first = flow.leaf;
  flow.table(
    [
      { title: 'Item', bold: true },
      { title: 'Needed', align: 'end' },
      { title: 'Pack', align: 'end' },
      { title: 'Buy', align: 'end', bold: true },
      { title: 'Left over', align: 'end' },
    ],
    materials.lines.map(({ label, quantity, unit, packs }) => [
      label,
      amountText(quantity, unit, job),
      amountText(packs.size, unit, job),
      String(packs.count),
      amountText(packs.leftOver, unit, job),
    ]),
  );
  flow.heading('How it is counted');
  flow.list(
    materials.lines.map((line) => `${line.label}: ${line.rule}. ${inputWords(line.inputs, job)}`),
    '–',
    8 * POINT,
  );
  flow.paragraph("Follow each product's own sheet; where it says otherwise, it goes first.", { size: 8 * POINT });
  return first;
}

function inputWords(inputs: Result['materials']['lines'][number]['inputs'], job: Job): string {
  const words = inputs.map((input) => `${input.label} ${inputAmount(input, job)}`);
  return words.length === 0 ? '' : `${words.join(', ')}.`;
}
