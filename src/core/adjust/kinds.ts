import type { ReadingKind } from '../job-file';
import { groupTest } from '../reliability';
import type { Adjustment } from './adjust';
import type { KindReport } from './report';

/** A variance component needs about this redundancy to be worth stating: then it is good to a third. */
const LEAST_REDUNDANCY = 5;

/** Variance component of each kind of reading, suspects left out (Förstner 1979). */
export function kindReports({ observations, examination: { rows, search } }: Adjustment): KindReport[] {
  const rowsOf = new Map<ReadingKind, number[]>();
  search.kept.forEach((row, i) => {
    const meaning = rows[row]!;
    if (!('observation' in meaning)) return;
    const { kind } = observations[meaning.observation]!;
    rowsOf.set(kind, [...(rowsOf.get(kind) ?? []), i]);
  });
  return [...rowsOf].flatMap(([kind, rows]) => {
    const { redundancy, factor, probability } = groupTest(search.cleaned, rows);
    return factor === null || redundancy < LEAST_REDUNDANCY ? [] : [{ kind, redundancy, factor, probability }];
  });
}
