import { randomFit } from '../reference/dryFit/randomFit';
import type { BenchOptions, Row } from './bench';
import { share } from './time';

export const name = 'dry-fit';
export const about =
  'Every template read back from the text of its DXF file and folded up into alcoves known exactly: how far its edges miss.';

export async function run({ count = 500 }: BenchOptions): Promise<Row[]> {
  const misfits: { by: number; note: string }[] = [];
  let unread = 0;
  for (let seed = 1; seed <= count; seed++) {
    const fit = await randomFit(seed);
    unread += fit.unread.length;
    for (const { piece, edges } of fit.pieces) {
      for (const { edge, overlap, gap } of edges) {
        misfits.push({ by: Math.max(overlap, gap), note: `${piece}, ${edge}, alcove ${seed}` });
      }
    }
  }
  const values = misfits.map(({ by }) => by);
  const worst = misfits.reduce((most, each) => (each.by > most.by ? each : most));
  const against = { what: 'tolerance', value: 0.1 };
  return [
    {
      what: 'misfit of an edge, 99th',
      value: share(values, 0.99),
      unit: 'mm',
      against,
      note: `${values.length} edges`,
    },
    {
      what: 'misfit of an edge, worst',
      value: worst.by,
      unit: 'mm',
      against,
      asked: { atMost: 0.1 },
      note: worst.note,
    },
    { what: 'templates not read back', value: unread, unit: '1', asked: { atMost: 0 } },
  ];
}
