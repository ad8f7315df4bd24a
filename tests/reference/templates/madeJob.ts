import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Job, type Piece, parseJobText, type Result, solve } from '../../../src/core';

/** A demo job, with shelves. */
export function madeJob(): { job: Job; result: Result; pieces: Piece[] } {
  const text = readFileSync(resolve(import.meta.dirname, '../../../scenes/skewed-bowed-wet-wall.json'), 'utf8');
  const parsed = parseJobText(
    JSON.stringify({ ...JSON.parse(text), shelves: [{}, { corner: 'left', front: 'returned' }] }),
  );
  if (!parsed.ok) throw new Error('the demo job does not parse');
  const result = solve(parsed.job);
  const { trim, legs, fillers, shelves } = result.pieces;
  return { job: parsed.job, result, pieces: [...trim, ...legs, ...fillers, ...shelves] };
}
