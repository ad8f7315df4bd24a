import { formatLength, type Job, type Result, type SheetInUse } from '../../core';
import { pieceTitle } from './pieceWords';

const MOST_OFFCUTS = 6;

/** Size of a rectangle, `12" × 24"`. */
export const sizeWords = (
  { width, height }: { width: number; height: number },
  { display }: Pick<Job, 'display'>,
): string => [width, height].map((mm) => formatLength(mm, { unit: display })).join(' × ');

/** A piece as it lies on its sheet: name, which part of it, size to cut out roughly. */
export function placedWords(placed: SheetInUse['placed'][number], job: Job, result: Pick<Result, 'pieces'>): string {
  const { number, of } = placed.part;
  const which = of > 1 ? ` (part ${number} of ${of})` : '';
  return `${pieceTitle(placed.piece, job, result)}${which}: ${sizeWords(placed, job)}${placed.turned ? ', turned a quarter' : ''}`;
}

/** How much of the bought sheets is used; nothing where none is bought. */
export const usedWords = ({ used, bought }: Pick<Result['layout'], 'used' | 'bought'>): string =>
  bought > 0 ? `Used: ${Math.round((100 * used) / bought)} % of what is bought.` : '';

/** The largest offcuts of a sheet. */
export function offcutWords({ offcuts }: Pick<SheetInUse, 'offcuts'>, job: Pick<Job, 'display'>): string {
  if (offcuts.length === 0) return 'No offcut worth keeping.';
  const sizes = offcuts.slice(0, MOST_OFFCUTS).map((offcut) => sizeWords(offcut, job));
  return `Offcuts worth keeping (dashed): ${sizes.join('; ')}`;
}
