import type { Point } from '../../../core';
import type { PieceDrawing, PieceFeature } from './drawing';

/** A piece no longer than this for its width is drawn whole. */
const LONG = 7;
/** What is kept to either side of a mark, and what a stretch without marks is shortened to, over the width. */
const KEPT = 0.7;
const SHORT = 1.6;

/** A long piece with the stretches between its marks shortened, so that its ends can be drawn large; words stay true. */
export function shortened(drawing: PieceDrawing): PieceDrawing {
  const { bounds, axis, edges, notches, outline, back, lips, tapes, brackets } = drawing;
  const along = axis === 'x' ? 0 : 1;
  const [low, high] = axis === 'x' ? [bounds.left, bounds.right] : [bounds.bottom, bounds.top];
  const [from, to] = axis === 'x' ? [bounds.bottom, bounds.top] : [bounds.left, bounds.right];
  const across = to - from;
  if (high - low <= LONG * across) return drawing;
  const places = [
    ...edges.flatMap(({ marks }) => marks.map(({ at }) => at[along])),
    ...notches.map(({ at }) => at[along]),
  ];
  const kept = stretches([low, ...places, high], KEPT * across, SHORT * across, low, high);
  const map = mapping(kept, SHORT * across);
  const move = (point: Point): Point => (axis === 'x' ? [map(point[0]), point[1]] : [point[0], map(point[1])]);
  const feature = (each: PieceFeature): PieceFeature => ({
    ...each,
    at: move(each.at),
    line: each.line && [move(each.line[0]), move(each.line[1])],
  });
  const breaks = kept.slice(1).map(([start], i): [Point, Point] => {
    const middle = (map(kept[i]![1]) + map(start)) / 2;
    const wide = 0.12 * across;
    return axis === 'x'
      ? [
          [middle, from - wide],
          [middle, to + wide],
        ]
      : [
          [from - wide, middle],
          [to + wide, middle],
        ];
  });
  const ends = { low: map(low), high: map(high) };
  return {
    ...drawing,
    outline: outline.map(move),
    back: back?.map(move) ?? null,
    lips: lips.map((loop) => loop.map(move)),
    edges: edges.map((edge) => ({
      ...edge,
      path: edge.path.map(move),
      marks: edge.marks.map((mark) => ({ ...mark, at: move(mark.at) })),
    })),
    notches: notches.map(feature),
    tapes: tapes.map(feature),
    brackets: brackets.map(feature),
    breaks,
    bounds:
      axis === 'x' ? { ...bounds, left: ends.low, right: ends.high } : { ...bounds, bottom: ends.low, top: ends.high },
  };
}

type Stretch = [from: number, to: number];

/** Stretches about the places, those that lie closer together than `apart` joined. */
function stretches(places: readonly number[], reach: number, apart: number, low: number, high: number): Stretch[] {
  const all: Stretch[] = [];
  for (const place of [...places].sort((a, b) => a - b)) {
    const last = all.at(-1);
    const [from, to] = [Math.max(low, place - reach), Math.min(high, place + reach)];
    if (last && from - last[1] <= apart) last[1] = Math.max(last[1], to);
    else all.push([from, to]);
  }
  return all;
}

/** Keeps lengths on the stretches and makes every room between two of them `short`. */
function mapping(kept: readonly Stretch[], short: number): (value: number) => number {
  return (value) => {
    let at = kept[0]![0];
    for (const [i, [from, to]] of kept.entries()) {
      const before = kept[i - 1];
      if (before && value < from) return at + (short * (value - before[1])) / (from - before[1]);
      if (before) at += short;
      if (value <= to || i === kept.length - 1) return at + (value - from);
      at += to - from;
    }
    return at;
  };
}
