import { formatLength, type Job, type Result, type StockPlan } from '../../core';
import { pieceTitle } from './pieceWords';

/** How good a plan of stock lengths is: what is bought, what of it is lost, and whether less would do. */
export function stockWords({ bars, bought, lowerBound, waste, optimal, unplaced }: StockPlan, job: Job): string {
  if (bars.length === 0 && unplaced.length === 0) return 'This job has no trim to cut from lengths.';
  const text = (mm: number) => formatLength(mm, { unit: job.display });
  const best = optimal
    ? 'No other plan buys less.'
    : `No plan buys less than ${text(lowerBound)}; whether one buys less than this is not proven.`;
  return `${text(bought)} bought, ${Math.round(100 * waste)} % of it saw cuts and rests. ${best}`;
}

/** Pieces that no stock is left or long enough for; null where each has its length. */
export const unplacedWords = ({ unplaced }: StockPlan, job: Job, result: Pick<Result, 'pieces'>): string | null =>
  unplaced.length === 0 ? null : `${unplaced.map((piece) => pieceTitle(piece, job, result)).join('; ')}.`;
