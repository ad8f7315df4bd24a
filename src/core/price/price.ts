import type { Job } from '../job-file';
import type { Result } from '../result';
import { exactOf, product, rounded } from './exact';
import { labourLines } from './labourLines';
import { type PriceGroup, type PriceLine, priceLine } from './line';
import { packLines } from './packLines';
import { sheetLines } from './sheetLines';
import { stripLines } from './stripLines';

/** A tax on the sum of the lines it is charged on. */
export interface TaxLine {
  name: string;
  on: 'materials' | 'labour';
  percent: number;
  /** minor units that it is worked out on, and the tax itself */
  of: number;
  amount: number;
}

/** What a job costs by the person's own price list. Amounts in whole minor units of the currency. */
export interface Price {
  currency: string;
  lines: PriceLine[];
  sums: Record<PriceGroup, number>;
  /** all lines, before tax */
  net: number;
  taxes: TaxLine[];
  total: number;
  /** labels of what is needed and has no price: the total leaves it out */
  unpriced: string[];
}

/** How amounts are rounded, for the paper. */
export const ROUNDING_WORDS =
  'Each line is rounded to the smallest coin, a half up; lengths are charged to a hundredth of a foot or metre and work to the minute. ' +
  'Tax is worked out on the sum of the lines it is charged on and rounded once. The total is the sum of what is printed.';

/** Every line of the price with its sum, taxes and total: exact but for the stated rounding. */
export function priceOf(
  job: Job,
  result: Pick<Result, 'layout' | 'pieces' | 'stock' | 'materials' | 'sequence'>,
): Price {
  const { prices } = job;
  const cut = [...sheetLines(job, result), ...stripLines(job, result)];
  const lines = [
    ...cut,
    ...wasteLine(job, cut),
    ...packLines(job, result),
    ...labourLines(job, result),
    ...(prices.disposal === undefined
      ? []
      : [
          priceLine(
            'disposal',
            'labour',
            'Disposal of packing, offcuts and the old surround',
            [1, 'sum'],
            prices.disposal,
          ),
        ]),
    ...prices.others.map(({ label, amount, taxedAs }, i) =>
      priceLine(`other.${i}`, taxedAs === 'none' ? 'other' : taxedAs, label, [1, 'sum'], amount),
    ),
  ];
  const sum = (group: PriceGroup): number =>
    lines.reduce((total, line) => (line.group === group ? total + (line.amount ?? 0) : total), 0);
  const sums = { materials: sum('materials'), labour: sum('labour'), other: sum('other') };
  const net = sums.materials + sums.labour + sums.other;
  const taxes = (['materials', 'labour'] as const).flatMap((on): TaxLine[] => {
    const percent = prices.tax[on];
    if (percent === 0) return [];
    return [{ name: prices.tax.name, on, percent, of: sums[on], amount: partOf(sums[on], percent, 100n) }];
  });
  return {
    currency: prices.currency,
    lines,
    sums,
    net,
    taxes,
    total: taxes.reduce((total, { amount }) => total + amount, net),
    unpriced: lines.filter(({ amount }) => amount === null).map(({ label }) => label),
  };
}

/** The share that is spoilt in cutting, on sheets and strips alone. */
function wasteLine({ prices }: Job, cut: readonly PriceLine[]): PriceLine[] {
  if (prices.waste === 0) return [];
  const of = cut.reduce((sum, { amount }) => sum + (amount ?? 0), 0);
  const each = partOf(of, prices.waste, 1n);
  const percent = Number((100 * prices.waste).toPrecision(6));
  return [priceLine('waste', 'materials', `Waste in cutting, ${percent} % of sheets and strips`, [1, 'sum'], each)];
}

/** `share` per `whole` of an amount, rounded once. */
const partOf = (amount: number, share: number, whole: bigint): number =>
  rounded(product(exactOf(amount), exactOf(share), { numerator: 1n, denominator: whole }));
