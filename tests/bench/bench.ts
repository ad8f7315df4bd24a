/** A measured figure, with what it is measured against where there is such a thing. */
export interface Row {
  what: string;
  value: number;
  /** `mm`, `ms`, `%`, `1` for a plain number. */
  unit: string;
  /** The same figure of a reference, measured in the same run. Printed with the ratio value : reference. */
  against?: { what: string; value: number };
  /** What is asked of this figure, if anything is. */
  asked?: Asked;
  /** Anything a reader needs beside the number, such as which case was the worst. */
  note?: string;
}

/** A bound in the row's unit, or of its ratio. */
export interface Asked {
  of?: 'value' | 'ratio';
  atLeast?: number;
  atMost?: number;
}

export interface BenchOptions {
  /** How many cases to try, from `--count`. Each bench has its own default. */
  count?: number;
}

/** What a file `tests/bench/NAME.bench.ts` exports. */
export interface Bench {
  /** The word that `npm run bench -- NAME` takes. */
  name: string;
  /** One sentence: what is measured, on what. */
  about: string;
  run(options: BenchOptions): Row[] | Promise<Row[]>;
}

/** What a bench gave. */
export interface Measured {
  name: string;
  rows: readonly Row[];
}

/** Value : reference, or null where the row has no reference. */
export const ratioOf = ({ value, against }: Row): number | null => (against ? value / against.value : null);

/** Whether the figure is as asked; null where nothing is asked. */
export function isMet(row: Row): boolean | null {
  const { asked } = row;
  if (!asked) return null;
  const figure = asked.of === 'ratio' ? (ratioOf(row) ?? Number.NaN) : row.value;
  return figure >= (asked.atLeast ?? -Infinity) && figure <= (asked.atMost ?? Infinity);
}
