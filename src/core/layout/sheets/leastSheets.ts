import type { Job, WallName } from '../../job-file';
import type { Blank } from './blank';
import type { OpenSheet } from './openSheet';
import { fillRegion, takeApart } from './place';
import { areaOf, type Region } from './region';

/**
 * The panels on sheets of the least total area, and on the fewest of them: every way of sharing three panels among
 * sheets, each share on the smallest sheet that an exact guillotine cut gets it from. A panel larger than any sheet keeps
 * its own, cut as far as the sheet goes.
 */
export function leastSheets(panels: readonly Blank[], job: Job): OpenSheet[] {
  const plans = partitions(panels).flatMap((shares): OpenSheet[][] => {
    const sheets = shares.map((share) => smallestSheet(share, job));
    return sheets.every((sheet) => sheet !== null) ? [sheets] : [];
  });
  return plans.reduce((a, b) => (cost(b) < cost(a) ? b : a));
}

/** Total area, and next to nothing for each sheet. */
const cost = (sheets: readonly OpenSheet[]): number => sheets.reduce((sum, sheet) => sum + areaOf(sheet) + 1, 0);

function smallestSheet(share: readonly Blank[], job: Job): OpenSheet | null {
  const { kerf } = job.cutting;
  const stock = (Object.keys(job.sheets) as WallName[]).sort((a, b) => areaOf(job.sheets[a]) - areaOf(job.sheets[b]));
  for (const like of stock) {
    const { width, height } = job.sheets[like];
    const region: Region = { x: 0, y: 0, width: width + kerf, height: height + kerf };
    const filled = fillRegion(share, region, kerf);
    if (
      filled === null ||
      filled.built.counts.some((count) => count === 0) ||
      filled.built.counts.length < share.length
    )
      continue;
    const sheet: OpenSheet = { like, width, height, placed: [], free: [] };
    takeApart(filled.built, filled.ways, region, kerf, sheet.placed, sheet.free);
    return sheet;
  }
  const [alone, ...others] = share;
  if (alone === undefined || others.length > 0) return null;
  const like = alone.piece.replace('panels.', '') as WallName;
  const { width, height } = job.sheets[like];
  const placed = {
    piece: alone.piece,
    x: 0,
    y: 0,
    width: Math.min(width, alone.width),
    height: Math.min(height, alone.height),
    turned: false,
    part: alone.part,
  };
  return { like, width, height, placed: [placed], free: [] };
}

/** Every way of putting items into groups. */
function partitions<T>(items: readonly T[]): T[][][] {
  const [first, ...rest] = items;
  if (first === undefined) return [[]];
  return partitions(rest).flatMap((groups) => [
    [[first], ...groups],
    ...groups.map((_, k) => groups.map((group, i) => (i === k ? [first, ...group] : group))),
  ]);
}
