import { type Job, moneyText, type Price, type Result } from '../../core';
import type { OutputFonts } from '../outputFonts';
import { amountText, eachText, quantityText, quoteWords } from '../quote';
import type { QrCode } from '../share';
import { Flow } from './flow';
import type { JobPackOptions } from './jobPack';
import { Pack } from './pack';
import { POINT, pagePaper } from './paper';

export interface QuoteOptions extends JobPackOptions {
  /** `YYYY-MM-DD`, for a job without a date of its own */
  today: string;
  /** a code that opens the job on a phone, or the sentence why there is none */
  code?: QrCode;
}

const groups = [
  ['materials', 'Materials'],
  ['labour', 'Work'],
  ['other', 'Other'],
] as const;

/** Printed no finer, so that a phone reads it from paper, mm a module (common practice, no source). */
const MODULE = 0.5;

/** A quote on paper: lines, sums, taxes, total, how long it holds, what it leaves out, cautions, a code for the phone. */
export async function quotePdf(
  job: Job,
  result: Result,
  price: Price,
  fonts: OutputFonts,
  options: QuoteOptions,
): Promise<Uint8Array> {
  const paper = pagePaper(job, options.paper);
  const pack = await Pack.open(job.name, paper, fonts);
  const words = quoteWords(job, result, price, options.today);
  const { quote } = job;
  const money = (amount: number): string => moneyText(amount, price.currency);
  const flow = new Flow(pack, quote.number === '' ? 'Quote' : `Quote ${quote.number}`, job.name);
  if (quote.client !== '') flow.paragraph(`For ${quote.client}`, { bold: true });
  for (const line of quote.from.split('\n')) if (line.trim() !== '') flow.paragraph(line);
  flow.paragraph(`${words.date}. This offer holds until ${words.validUntil}.`);
  flow.heading('What is included');
  flow.list([...words.included, ...words.finish]);
  for (const [group, title] of groups) {
    const lines = price.lines.filter((line) => line.group === group);
    if (lines.length === 0) continue;
    flow.heading(title);
    flow.table(
      [
        { title: '' },
        { title: 'Quantity', align: 'end' },
        { title: 'Price', align: 'end' },
        { title: 'Amount', align: 'end' },
      ],
      [
        ...lines.map((line) => [
          line.label,
          quantityText(line),
          eachText(line, price.currency),
          amountText(line, price.currency),
        ]),
        [`${title} together`, '', '', money(price.sums[group])],
      ],
    );
  }
  flow.heading('Total');
  flow.table(
    [{ title: '' }, { title: '', align: 'end', bold: true }],
    [
      ['Before tax', money(price.net)],
      ...price.taxes.map((tax) => [
        `${tax.name}, ${tax.percent} % of ${tax.on === 'labour' ? 'work' : 'materials'} ${money(tax.of)}`,
        money(tax.amount),
      ]),
      ['To pay', money(price.total)],
    ],
    10 * POINT,
  );
  if (price.unpriced.length > 0) flow.framed('This quote is not complete', [words.figures[0]!]);
  if (words.exclusions.length > 0) {
    flow.heading('Not included');
    flow.list(words.exclusions);
  }
  flow.heading('Please note');
  flow.list(words.cautions, '!');
  flow.list(words.figures.slice(price.unpriced.length > 0 ? 1 : 0), '–', 8 * POINT);
  flow.heading('Agreed');
  flow.paragraph('name ____________________________  date ________________  signature ____________________________');
  if (options.code) drawCode(flow, options.code);
  return pack.close();
}

function drawCode(flow: Flow, code: QrCode): void {
  if (!code.ok) {
    flow.heading('On your phone');
    flow.paragraph(code.message);
    return;
  }
  const side = MODULE * code.size;
  flow.ensure(side + 15);
  flow.heading('On your phone');
  flow.paragraph(
    'Point a camera here to see the finished surround. The code holds the whole job; nothing is fetched but the app itself.',
  );
  const { pen, content } = flow.leaf;
  const top = flow.y - 1;
  code.dark.forEach((row, y) => {
    let x = 0;
    while (x < row.length) {
      let end = x;
      while (row[end]) end++;
      if (end > x) {
        const [left, right, above, below] = [x, end, y, y + 1].map((at) => at * MODULE) as [
          number,
          number,
          number,
          number,
        ];
        pen.filled(
          [
            [content.left + left, top - above],
            [content.left + right, top - above],
            [content.left + right, top - below],
            [content.left + left, top - below],
          ],
          0,
        );
      }
      x = Math.max(end, x + 1);
    }
  });
  flow.y = top - side - 2;
}
