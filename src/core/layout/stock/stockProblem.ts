/** A length to be bought, in whole units. */
export interface StockLength {
  length: number;
  /** cost of one; what is minimised is the sum */
  cost: number;
  /** how many there are; without it as many as needed */
  most?: number;
}

/** A length to be cut, in whole units, saw kerf included. */
export interface Demand {
  length: number;
  count: number;
}

export interface StockProblem {
  stock: readonly StockLength[];
  demands: readonly Demand[];
}

/** One way to cut one stock length: how many of each demand. */
export interface Pattern {
  stock: number;
  counts: readonly number[];
}

export interface StockSolution {
  bars: { pattern: Pattern; times: number }[];
  /** total cost of the bars */
  cost: number;
  /** no way of cutting costs less than this */
  lowerBound: number;
  /** true where `cost` is proven least */
  optimal: boolean;
  /** pieces of each demand that no stock is left for */
  missing: number[];
}
