import { type Alcove, towardsRoom } from '../alcove';
import { constant } from '../dual';
import type { Job, Side } from '../job-file';
import { contourRise, crossings, type Panel } from '../panel';
import { extent, spaced } from '../range';
import { profileOf, type Section } from './section';

const LEVELS = 9;
const STATIONS = 5;
/** Sections keep this share of the panel's size off its ends, where an outline has corners. */
const INSET = 0.002;
/** A header is as deep as a stud wall, mm (common practice, no source). */
const HEADER_DEPTH = 115;
/** A ceiling that is not given is taken this high, mm. */
const OUT_OF_REACH = 100_000;

/**
 * Level sections of the alcove and the back panel: across is x, depth is z.
 * @param seats the alcove with its walls where the panels' backs stand, the even bed taken off
 */
export function levelSections(alcove: Alcove, seats: Alcove, { fit }: Job, panel: Panel): Section[] {
  return placesIn(panel, 1, LEVELS).map((height): Section => {
    const sheet = endsAt(panel, 1, height);
    const back = seats.back.value((sheet.from + sheet.to) / 2, height) + fit.bed;
    const wall = (side: Side) => {
      const end = alcove.front[side].value(0, height);
      return profileOf((z) => alcove[side].value(z, height), Math.min(back, end) - 1, end);
    };
    return { at: height, sheet, back, low: wall('left'), high: wall('right') };
  });
}

/** Plumb sections of the alcove and the back panel, from the rim to what hangs over it: across is y, depth is z. */
export function plumbSections(
  alcove: Alcove,
  seats: Alcove,
  { fit, rim, carrying, levelAboveFloor }: Job,
  panel: Panel,
): Section[] {
  const front = frontOf(alcove);
  const over = overheadOf(carrying);
  return placesIn(panel, 0, STATIONS).map((x): Section => {
    const sheet = endsAt(panel, 0, x);
    const back = seats.back.value(x, (sheet.from + sheet.to) / 2) + fit.bed;
    return {
      at: x,
      sheet,
      back,
      low: profileOf((z) => alcove.rim.value(x, z) + contourRise(rim, constant(z)).value, back - 1, rim.width, {
        beyond: -levelAboveFloor,
      }),
      high:
        over &&
        profileOf(() => over.ceiling, back - 1, front, {
          end: front,
          lip: { from: front - HEADER_DEPTH, value: over.header },
        }),
    };
  });
}

/**
 * Sections along a side panel from its wall to the alcove's middle: across is y, depth the distance in x from x = 0
 * towards the room. The panel is taken as plumb, and its wall's lean left out: it moves what is over it by less than
 * thickness times lean.
 */
export function sideSections(
  alcove: Alcove,
  seats: Alcove,
  { fit, rim, carrying }: Job,
  panel: Panel,
  side: Side,
): Section[] {
  const inward = towardsRoom(side);
  const over = overheadOf(carrying);
  return placesIn(panel, 0, STATIONS).map((z): Section => {
    const sheet = endsAt(panel, 0, z);
    const middle = (sheet.from + sheet.to) / 2;
    const back = inward * seats[side].value(z, middle) + fit.bed;
    const halfway = (inward * (alcove.left.value(z, middle) + alcove.right.value(z, middle))) / 2;
    const to = Math.max(halfway, back + 1);
    const rise = contourRise(rim, constant(z)).value;
    const end = Number.POSITIVE_INFINITY;
    return {
      at: z,
      sheet,
      back,
      low: profileOf((depth) => alcove.rim.value(inward * depth, z) + rise, back, to, { end }),
      high: over && profileOf(() => over.ceiling, back, to, { end }),
    };
  });
}

/** Where the side walls end on the average, mm from the back wall's origin plane. */
export const frontOf = ({ front }: Alcove): number => (front.left.value(0, 0) + front.right.value(0, 0)) / 2;

/** What hangs over the alcove, heights over the level line; a header alone is as high behind it. */
function overheadOf({ ceiling, header }: Job['carrying']): { ceiling: number; header: number } | null {
  if (ceiling === undefined && header === undefined) return null;
  const top = ceiling ?? OUT_OF_REACH;
  return { ceiling: top, header: Math.min(header ?? top, top) };
}

function placesIn({ outline }: Panel, axis: 0 | 1, count: number): number[] {
  const [least, most] = extent(outline, axis);
  const inset = INSET * (most - least);
  return spaced(least + inset, most - inset, count);
}

/** Where a panel's outline begins and ends on a line across it. */
export function endsAt({ outline }: Panel, axis: 0 | 1, value: number): { from: number; to: number } {
  const met = crossings(outline, axis, value);
  const all = met.length > 0 ? met : outline.map((point) => point[axis === 0 ? 1 : 0]);
  return { from: Math.min(...all), to: Math.max(...all) };
}

/** Largest extents of a panel on its wall, or of its flat sheet, mm. */
export function sizeOf({ outline }: Pick<Panel, 'outline'>): { width: number; height: number } {
  const [[left, right], [bottom, top]] = [extent(outline, 0), extent(outline, 1)];
  return { width: right - left, height: top - bottom };
}
