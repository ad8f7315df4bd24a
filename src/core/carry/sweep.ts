import { boundAt, type Profile, type Section } from './section';

/** Which end goes in first. */
export type FirstEnd = 'low' | 'high';

/** Where a rigid sheet stands on its way: turned about the end that goes first, that end `advance` mm short of home. */
export interface Station {
  angle: number;
  advance: number;
  /** moved across, mm, so that it passes */
  shift: number;
}

/** Where it is tightest on one side: the gap without any shift, in which section and at which depth. */
export interface Touch {
  gap: number;
  section: number;
  depth: number;
}

export interface Sweep {
  /** half of the least room from side to side on the whole way, mm; negative = it lacks; infinite = nothing bounds */
  clearance: number;
  /** on both sides where that is least */
  low: Touch;
  high: Touch;
  stations: Station[];
}

const IN_STEPS = 14;
const TURN_STEPS = 12;
const POINTS = 3;
/** Room kept on the nearer side where there is more than that from side to side, mm. */
const KEPT = 2;

/**
 * Brings a rigid sheet home: turned by `angle` straight in until its leading end is home, then swung about that end. At
 * each station the room from side to side is exact for the sections given: a shift across does not change what bounds.
 * @param reach depth before home from which on something bounds, mm
 * @param least the sweep is left off where less than this is free, mm
 */
export function sweep(
  sections: readonly Section[],
  thickness: number,
  angle: number,
  first: FirstEnd,
  reach: number,
  least = Number.NEGATIVE_INFINITY,
): Sweep {
  const pivot = pivotOf(sections, first);
  let worst: Sweep | null = null;
  let before: Room | null = null;
  const stations: Station[] = [];
  for (const station of placesOnTheWay(sections, pivot, angle, reach)) {
    const here = roomAt(sections, thickness, pivot, station);
    const { low, high } = before ? together(before, here) : here;
    const clearance = (low.gap + high.gap) / 2;
    if (worst === null || clearance < worst.clearance) worst = { clearance, low, high, stations };
    if (clearance < least) break;
    stations.push({ ...station, shift: shiftFor(here.low.gap, here.high.gap) });
    before = here;
  }
  return worst!;
}

interface Room {
  low: Touch;
  high: Touch;
}

/** From station to station a sheet is moved across no further than this beyond what both leave free, mm. */
const GLIDE = 1;

/** The room at a station, or what it has in common with the one before where no shift suits both. */
function together(before: Room, here: Room): Room {
  const low = before.low.gap < here.low.gap ? before.low : here.low;
  const high = before.high.gap < here.high.gap ? before.high : here.high;
  return low.gap + high.gap < -GLIDE ? { low, high } : here;
}

/** Angles at which the far end of a sheet whose first end is home swings past the end of a wall or an edge of a lip. */
function cornersPassed(sections: readonly Section[], pivot: Pivot): number[] {
  const angles = sections.flatMap(({ low, high, sheet }) => {
    const far = pivot.first === 'low' ? sheet.to - pivot.across : pivot.across - sheet.from;
    const depths = [low?.end, high?.end, high?.lip?.from].filter((depth) => depth !== undefined);
    return depths.map((depth) => Math.asin((depth - pivot.depth) / far));
  });
  return [...new Set(angles.filter((angle) => angle > 0).map((angle) => Math.round(angle * 1e4) / 1e4))];
}

/** In from the room, turned, then swung home; a sheet that is not turned is looked at under each lip besides. */
function placesOnTheWay(
  sections: readonly Section[],
  pivot: Pivot,
  angle: number,
  reach: number,
): Pick<Station, 'angle' | 'advance'>[] {
  const even = Array.from({ length: IN_STEPS }, (_, k) => reach * (1 - k / IN_STEPS));
  const lips = angle > 0 ? [] : sections.flatMap(({ high }) => (high?.lip ? [high.end, high.lip.from] : []));
  const inwards = [
    ...new Set([...even, ...lips.map((end) => end - pivot.depth).filter((advance) => advance > 0)]),
  ].sort((a, b) => b - a);
  const evenTurns = angle > 0 ? Array.from({ length: TURN_STEPS }, (_, k) => angle * (1 - k / TURN_STEPS)) : [];
  const turns = [...evenTurns, ...cornersPassed(sections, pivot).filter((turned) => turned < angle)].sort(
    (a, b) => b - a,
  );
  return [
    ...inwards.map((advance) => ({ angle, advance })),
    ...turns.map((turned) => ({ angle: turned, advance: 0 })),
    { angle: 0, advance: 0 },
  ];
}

/** Nearest to none that leaves room on both sides. */
function shiftFor(low: number, high: number): number {
  const room = low + high;
  if (room < 0) return (high - low) / 2;
  const kept = Math.min(KEPT, room / 2);
  return Math.min(Math.max(0, kept - low), high - kept);
}

export interface Pivot {
  first: FirstEnd;
  across: number;
  depth: number;
}

/** The corner of the back face about which the sheet swings. */
export const pivotOf = (sections: readonly Section[], first: FirstEnd): Pivot => ({
  first,
  across:
    first === 'low'
      ? Math.min(...sections.map(({ sheet }) => sheet.from))
      : Math.max(...sections.map(({ sheet }) => sheet.to)),
  depth: Math.min(...sections.map(({ back }) => back)),
});

/** Room enough on each side for any sheet, mm: what an open side counts as. */
const AMPLE = 1000;

/** Room on each side of a sheet in its final place, mm. */
export function roomHome(sections: readonly Section[], thickness: number): number {
  const { low, high } = roomAt(sections, thickness, pivotOf(sections, 'low'), { angle: 0, advance: 0 });
  return Math.min((low.gap + high.gap) / 2, AMPLE);
}

/** Gaps on both sides of the sheet at a station, without any shift. */
export function roomAt(
  sections: readonly Section[],
  thickness: number,
  pivot: Pivot,
  { angle, advance }: Pick<Station, 'angle' | 'advance'>,
): Room {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const sign = pivot.first === 'low' ? 1 : -1;
  const start = pivot.depth + advance;
  const low: Touch = { gap: Number.POSITIVE_INFINITY, section: 0, depth: 0 };
  const high: Touch = { ...low };

  const bound = (profile: Profile, side: 1 | -1, touch: Touch, section: number): void => {
    const { sheet, back } = sections[section]!;
    const near = sign > 0 ? sheet.from - pivot.across : pivot.across - sheet.to;
    const far = sign > 0 ? sheet.to - pivot.across : pivot.across - sheet.from;
    for (let face = 0; face < 2; face++) {
      const off = back - pivot.depth + face * thickness;
      const depthAt = (s: number): number => start + s * sin + off * cos;
      const acrossAt = (s: number): number => pivot.across + sign * (s * cos - off * sin);
      const crossing = sin > 1e-9 ? (profile.end - start - off * cos) / sin : Number.POSITIVE_INFINITY;
      const last = sin > 1e-9 ? Math.min(far, crossing) : depthAt(0) <= profile.end ? far : Number.NEGATIVE_INFINITY;
      const meet = (s: number, at: number, depth: number): void => {
        const gap = side * (acrossAt(s) - at);
        if (gap < touch.gap) [touch.gap, touch.section, touch.depth] = [gap, section, depth];
      };
      if (last >= near) {
        for (let k = 0; k <= POINTS; k++) {
          const s = near + ((last - near) * k) / POINTS;
          meet(s, boundAt(profile, depthAt(s)), depthAt(s));
        }
      }
      if (profile.beyond !== undefined) {
        const next = Math.max(near, sin > 1e-9 ? crossing : depthAt(0) > profile.end ? near : Number.POSITIVE_INFINITY);
        if (next <= far) for (const s of [next, far]) meet(s, profile.beyond, depthAt(s));
      }
      if (profile.lip !== undefined) {
        for (const s of lipPlaces(profile.lip.from, profile.end, depthAt(0), sin, near, far)) {
          meet(s, profile.lip.value, depthAt(s));
        }
      }
    }
  };
  sections.forEach((section, i) => {
    if (section.low) bound(section.low, 1, low, i);
    if (section.high) bound(section.high, -1, high, i);
  });
  return { low, high };
}

/** Where along a face, whose depth is `start` at s = 0, a lip from depth to depth is to be looked at. */
function lipPlaces(from: number, end: number, start: number, sin: number, near: number, far: number): number[] {
  if (sin <= 1e-9) return start >= from && start <= end ? [near, far] : [];
  return [near, far, (from - start) / sin, (end - start) / sin].filter((s) => {
    const depth = start + s * sin;
    return s >= near && s <= far && depth >= from - 1e-6 && depth <= end + 1e-6;
  });
}
