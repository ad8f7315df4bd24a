import { geometryShapes, type PanelDrawing, type Shape, shapeBounds } from '../../output';

type Point = [number, number];

/**
 * A template for a small screen: lines as ever, at each mark its number, beside upright edges the distance from the
 * control line and its side too, at each hole its name. The tables hold the rest.
 * @param size font size in mm at the drawing's scale
 */
export function compactShapes(drawing: PanelDrawing, size: number): Shape[] {
  const { left, right, bottom, top } = drawing.bounds;
  const labels = drawing.edges.flatMap((edge) => {
    if (edge.place === 'left' || edge.place === 'right') {
      const outward = edge.place === 'left' ? -1 : 1;
      const x = (outward < 0 ? left : right) + outward * 1.4 * size;
      const heights = apart(
        edge.marks.map(({ at }) => at[1]),
        2.3 * size,
        top,
      );
      return edge.marks.flatMap(({ number, across, direction, at }, i): Shape[] => {
        const y = heights[i] ?? at[1];
        const anchor = outward < 0 ? 'end' : 'start';
        return [
          leader(at, [x - outward * 0.3 * size, y]),
          words(direction === '' ? `${number}` : `${number} ${direction}`, [x, y + 0.15 * size], size, anchor, true),
          words(across.text, [x, y - 0.95 * size], size, anchor, false),
        ];
      });
    }
    const outward = edge.place === 'bottom' ? -1 : 1;
    const y = (outward < 0 ? bottom : top) + outward * 1.6 * size;
    const places = apart(
      edge.marks.map(({ at }) => at[0]),
      1.7 * size,
      right,
    );
    return edge.marks.flatMap(({ number, at }, i): Shape[] => {
      const x = places[i] ?? at[0];
      return [
        leader(at, [x, y - outward * 0.4 * size]),
        words(`${number}`, [x, y + (outward < 0 ? -0.8 : 0) * size], size, 'middle', true),
      ];
    });
  });
  return [...geometryShapes(drawing, 1.2 * size), ...labels, ...holeNames(drawing, size)];
}

/** Rows above and below a hole in which its name is tried, nearest first. */
const ROWS = [0, 1, 2, 3];

/** A name at each hole, within the sheet where that is wide enough, in the nearest row in which it lies over no other. */
function holeNames({ holes, bounds: { left, right } }: PanelDrawing, size: number): Shape[] {
  const taken: ReturnType<typeof shapeBounds>[] = [];
  return holes.map(({ id, centre: [x, y], diameter }) => {
    const at = (above: number) => words(id, [x, y + above], size, 'middle', false);
    const clear = diameter.mm / 2 + 0.5 * size;
    const tries = ROWS.flatMap((row) => [clear + 1.3 * row * size, -clear - 0.8 * size - 1.3 * row * size]).map(
      (above) => {
        const box = shapeBounds([at(above)]);
        const inwards =
          box.right - box.left > right - left ? 0 : Math.max(0, left - box.left) - Math.max(0, box.right - right);
        return {
          name: words(id, [x + inwards, y + above], size, 'middle', false),
          box: { ...box, left: box.left + inwards, right: box.right + inwards },
        };
      },
    );
    const free = tries.find(({ box }) => !taken.some((other) => overlap(box, other))) ?? tries[0]!;
    taken.push(free.box);
    return free.name;
  });
}

const overlap = (a: ReturnType<typeof shapeBounds>, b: ReturnType<typeof shapeBounds>): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

/** Increasing places moved so that neighbours are at least `least` apart and none lies beyond `most`. */
export function apart(places: readonly number[], least: number, most: number): number[] {
  const spread: number[] = [];
  for (const place of places)
    spread.push(Math.max(place, (spread[spread.length - 1] ?? Number.NEGATIVE_INFINITY) + least));
  for (let i = spread.length - 1, limit = most; i >= 0; i--, limit -= least)
    spread[i] = Math.min(spread[i] ?? limit, limit);
  return spread;
}

const leader = (from: Point, to: Point): Shape => ({
  kind: 'polyline',
  layer: 'text',
  points: [from, to],
  closed: false,
});

export const words = (
  text: string,
  at: Point,
  size: number,
  anchor: 'start' | 'middle' | 'end',
  bold: boolean,
): Shape => ({
  kind: 'words',
  layer: 'text',
  text,
  at,
  size,
  anchor,
  bold,
  angle: 0,
});
