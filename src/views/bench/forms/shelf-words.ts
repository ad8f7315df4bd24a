import type { DisplayUnit, Job } from '../../../core';

/** 1/8 and 1/4 in per ft, mm per m: the fall that ledges in wet areas are given. */
const LEAST_FALL = 1000 / 96;
const MOST_FALL = 1000 / 48;
/** Falls typed as 10.4 or 20.8 mm/m are taken for the ends of the range. */
const ROUNDING = 0.05;

/** What is wrong with a fall in mm per m; null within the range. */
export function fallAdvice(slope: number, unit: DisplayUnit): string | null {
  const range = unit === 'in' ? '1/8 to 1/4 in per ft' : '10.4 to 20.8 mm/m';
  if (slope < LEAST_FALL - ROUNDING) return `Water may stand on so flat a shelf: let it fall by ${range}.`;
  if (slope > MOST_FALL + ROUNDING) return `Things slide off so steep a shelf: let it fall by ${range}.`;
  return null;
}

/** A shelf of usual size in the corner away from the others. */
export function newShelf(shelves: Job['shelves']): Job['shelves'][number] {
  const taken = new Set(shelves.map(({ id }, i) => id ?? `${i + 1}`));
  let n = shelves.length + 1;
  while (taken.has(`${n}`)) n++;
  const left = shelves.filter(({ corner }) => corner === 'left');
  const right = shelves.filter(({ corner }) => corner === 'right');
  const corner = left.length < right.length ? 'left' : 'right';
  const highest = Math.max(150, ...(corner === 'left' ? left : right).map(({ aboveRim }) => aboveRim));
  return {
    id: `${n}`,
    corner,
    aboveRim: Math.min(2400, highest + 350),
    back: 230,
    side: 230,
    thickness: 12,
    slope: 15.6,
    gap: 2,
    front: 'round',
    returns: 60,
  };
}
