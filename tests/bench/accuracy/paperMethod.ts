import type { Job, PanelName, Reading, Side, Unread } from '../../../src/core';
import type { EdgePlace } from './edges';
import type { Reach } from './places';

/** How a survey on paper is laid out. */
export interface PaperSurvey {
  /** heights at which each corner and each front edge is taped, foot and top included */
  heights: number;
  /** drops to the rim along the back and out along each side */
  drops: { back: number; side: number };
  /** the profile of the back wall in each corner is read off a plumb line; else the side panel's back edge is cut plumb */
  profile: boolean;
}

const SIDES: Side[] = ['left', 'right'];
const PANELS: PanelName[] = ['back', 'left', 'right'];
/** How far from a corner a plumb line hangs, mm. */
const BESIDE = 20;

/** What a paper survey reads. */
export function paperPlaces({ heights, drops, profile }: PaperSurvey, reach: Reach): Unread[] {
  const levels = spread(reach.foot, reach.top, heights);
  return [
    ...SIDES.flatMap((side) => levels.map((height): Unread => ({ kind: 'tape-to-corner', side, height }))),
    ...spread(reach.left, reach.right, drops.back).map((at): Unread => ({ kind: 'tape-to-rim', wall: 'back', at })),
    ...SIDES.flatMap((wall) =>
      spread(40, reach.out, drops.side).map((at): Unread => ({ kind: 'tape-to-rim', wall, at })),
    ),
    ...SIDES.flatMap((wall) => levels.map((height): Unread => ({ kind: 'depth', wall, height }))),
    ...(profile
      ? SIDES.map(
          (side): Unread => ({
            kind: 'plumb',
            wall: 'back',
            at: side === 'left' ? reach.left - BESIDE : reach.right + BESIDE,
            gaps: levels.map((height) => ({ height })),
          }),
        )
      : []),
  ];
}

/**
 * Panels cut from readings on paper: readings of an edge joined by straight lines and carried on to its ends. Readings
 * of one place are averaged; where two differ by more than an eighth of an inch the place is read once more and the two
 * that agree best count (`again`). The joint is taken off at the bare wall. A side panel's width is taped from the corner,
 * so it is cut as wide as it should be wherever the back wall stands.
 * @returns where each place is cut
 */
export function cutOnPaper(
  readings: readonly Reading[],
  { fit }: Job,
  places: readonly EdgePlace[],
  again: (reading: Reading) => Reading,
): number[] {
  const lineOf = (of: (reading: Reading) => { along: number; at: number } | null): Line =>
    straightJoins(settled(readings, of, again));
  const face = fit.bed + fit.thickness;
  const corner = (side: Side): Line =>
    lineOf((reading) =>
      reading.kind === 'tape-to-corner' && reading.side === side
        ? {
            along: reading.height,
            at: side === 'left' ? fit.cornerJoint - reading.value : reading.value - fit.cornerJoint,
          }
        : null,
    );
  const rim = (wall: PanelName): Line =>
    lineOf((reading) =>
      reading.kind === 'tape-to-rim' && reading.wall === wall
        ? { along: reading.at, at: fit.rimJoint - reading.value }
        : null,
    );
  const profile = (side: Side): Line => {
    const line = readings.find(
      (reading) => reading.kind === 'plumb' && reading.wall === 'back' && reading.at < 0 === (side === 'left'),
    );
    if (line?.kind !== 'plumb') return () => 0;
    const gaps = straightJoins(line.gaps.map(({ height, value }) => ({ along: height, at: -value })));
    return (along) => gaps(along) - gaps(0);
  };
  const depth = (side: Side): Line =>
    lineOf((reading) =>
      reading.kind === 'depth' && reading.wall === side ? { along: reading.height, at: reading.value } : null,
    );

  const lines = new Map<string, Line>();
  const cut = (panel: PanelName, edge: string, line: Line): void => void lines.set(`${panel} ${edge}`, line);
  for (const side of SIDES) cut('back', side, corner(side));
  for (const panel of PANELS) cut(panel, 'bottom', rim(panel));
  for (const side of SIDES) {
    const wall = profile(side);
    const out = depth(side);
    cut(side, 'back', (along) => wall(along) + face + fit.cornerJoint);
    cut(side, 'front', (along) => wall(along) + out(along) - fit.frontSetBack);
  }
  return places.map(({ panel, edge, along }) => lines.get(`${panel} ${edge}`)!(along));
}

type Line = (along: number) => number;
interface Mark {
  along: number;
  at: number;
}

/** Marks in order along the edge, each from the readings of one place. */
function settled(
  readings: readonly Reading[],
  of: (reading: Reading) => Mark | null,
  again: (reading: Reading) => Reading,
): Mark[] {
  const marks = readings.flatMap((reading) => {
    const mark = of(reading);
    return mark === null ? [] : [{ ...mark, reading }];
  });
  const alongs = [...new Set(marks.map(({ along }) => along))].sort((a, b) => a - b);
  return alongs.map((along) => {
    const same = marks.filter((mark) => mark.along === along);
    const values = same.map(({ at }) => at);
    if (values.length === 2 && Math.abs(values[0]! - values[1]!) > 25.4 / 8) {
      const third = of(again(same[0]!.reading))!.at;
      values.sort((a, b) => Math.abs(a - third) - Math.abs(b - third));
      values[1] = third;
    }
    return { along, at: values.reduce((sum, value) => sum + value, 0) / values.length };
  });
}

/** Straight lines from mark to mark, the first and last carried on. */
function straightJoins(marks: readonly Mark[]): Line {
  const sorted = [...marks].sort((a, b) => a.along - b.along);
  return (along) => {
    const next = sorted.findIndex((mark) => mark.along >= along);
    const k = next === -1 ? sorted.length - 1 : Math.max(1, next);
    const [a, b] = [sorted[k - 1]!, sorted[k]!];
    return a.at + ((b.at - a.at) * (along - a.along)) / (b.along - a.along);
  };
}

const spread = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
