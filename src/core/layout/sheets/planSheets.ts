import type { Job, WallName } from '../../job-file';
import type { Panel, Problem } from '../../panel';
import type { Piece } from '../../piece';
import { type Blank, panelBlank, pieceBlank } from './blank';
import { leastSheets } from './leastSheets';
import type { OpenSheet } from './openSheet';
import { ownSheets } from './ownSheets';
import { type Placement, place } from './place';
import { areaOf } from './region';
import type { Rectangle, SheetInUse, SheetLayout } from './sheetLayout';

/**
 * Cuts panels, legs and fillers from sheets: panels each from their own sheet where it was laid, or together from as
 * little sheet as possible; legs and fillers from what is left over, and from further sheets once that is used up.
 */
export function planSheets(
  job: Job,
  panels: Record<WallName, Panel>,
  pieces: readonly Piece[],
): { layout: SheetLayout; problems: Problem[] } {
  const { cutting } = job;
  const blanks = pieces.filter(({ stock }) => stock === 'sheet').map((piece) => pieceBlank(piece, job));
  const all = Object.values(panels);
  const ways: OpenSheet[][] =
    cutting.sheets === 'own'
      ? ownSheets(job, all)
      : [
          leastSheets(
            all.map((panel) => panelBlank(panel, job)),
            job,
          ),
        ];
  const plans = ways.map((sheets) => ({
    sheets,
    placement: place(
      blanks,
      sheets.flatMap(({ free }) => free),
      cutting,
    ),
  }));
  const best = plans.reduce((a, b) => (isBetter(b.placement, a.placement) ? b : a));
  const sheets = filled(best.sheets, best.placement);
  const more = furtherSheets(best.placement, job);
  const used = [...sheets, ...more.sheets];
  const unplaced = more.left.map(({ piece }) => piece);
  return {
    layout: {
      sheets: used.map((sheet) => closed(sheet, job)),
      bought: used.reduce((sum, sheet) => sum + areaOf(sheet), 0),
      used: all.reduce((sum, { area }) => sum + area, 0) + areaOfAll(blanks) - areaOfAll(more.left),
      unplaced,
    },
    problems: unplaced.map((piece) => ({
      where: `pieces.${piece}`,
      what: 'the piece is larger than any of the sheets; take a larger sheet or make it in two',
      howMuch: null,
    })),
  };
}

const areaOfAll = (blanks: readonly Blank[]): number => blanks.reduce((sum, blank) => sum + areaOf(blank), 0);
const areaLeft = ({ left }: Placement): number => areaOfAll(left);
const largestFree = ({ free }: Placement): number => Math.max(0, ...free.flat().map(areaOf));

/** Areas that differ by less, mm², are alike: the last bits of a computation decide nothing. */
const ALIKE = 1;

/** Fewer pieces left over, then the larger offcut. */
function isBetter(a: Placement, b: Placement): boolean {
  const difference = areaLeft(a) - areaLeft(b);
  return Math.abs(difference) < ALIKE ? largestFree(a) > largestFree(b) + ALIKE : difference < 0;
}

/** The sheets with the pieces placed in their free regions. */
function filled(sheets: readonly OpenSheet[], { placed, free }: Placement): OpenSheet[] {
  let region = 0;
  return sheets.map((sheet) => {
    const own = sheet.free.map(() => region++);
    return {
      ...sheet,
      placed: [
        ...sheet.placed,
        ...placed.filter((piece) => own.includes(piece.region)).map(({ region: _, ...piece }) => piece),
      ],
      free: own.flatMap((i) => free[i]!),
    };
  });
}

/** One more sheet at a time, the smallest that takes the longest piece still left. */
function furtherSheets(
  placement: Placement,
  { sheets, cutting }: Job,
): { sheets: OpenSheet[]; left: Placement['left'] } {
  const more: OpenSheet[] = [];
  let { left } = placement;
  while (left.length > 0) {
    const tries = (Object.keys(sheets) as WallName[])
      .map((like) => {
        const { width, height } = sheets[like];
        const region = { x: 0, y: 0, width: width + cutting.kerf, height: height + cutting.kerf };
        return { like, width, height, placement: place(left, [region], cutting) };
      })
      .filter((each) => each.placement.placed.length > 0);
    if (tries.length === 0) break;
    const next = tries.reduce((a, b) => {
      const [leftA, leftB] = [areaLeft(a.placement), areaLeft(b.placement)];
      return leftB < leftA || (leftB === leftA && areaOf(b) < areaOf(a)) ? b : a;
    });
    const { like, width, height } = next;
    more.push({
      like,
      width,
      height,
      placed: next.placement.placed.map(({ region: _, ...piece }) => piece),
      free: next.placement.free.flat(),
    });
    left = next.placement.left;
  }
  return { sheets: more, left };
}

/** Offcuts without the saw cut around them, and without what is too narrow to keep. */
function closed({ like, width, height, placed, free }: OpenSheet, { cutting }: Job): SheetInUse {
  const offcuts = free
    .map(
      (region): Rectangle => ({ ...region, width: region.width - cutting.kerf, height: region.height - cutting.kerf }),
    )
    .filter((each) => Math.min(each.width, each.height) >= cutting.leastOffcut)
    .sort((a, b) => areaOf(b) - areaOf(a));
  return { like, width, height, placed, offcuts };
}
