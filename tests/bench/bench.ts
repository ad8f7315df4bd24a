/** A measured figure, with what it is measured against where there is such a thing. */
export interface Row {
  what: string;
  value: number;
  /** `mm`, `ms`, `%`, `1` for a plain number. */
  unit: string;
  /** The same figure of a reference, measured in the same run. Printed with the ratio value : reference. */
  against?: { what: string; value: number };
  /** Anything a reader needs beside the number, such as which case was the worst. */
  note?: string;
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
