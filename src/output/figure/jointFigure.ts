import type { Point, Result } from '../../core';
import { around, grown } from '../drawing';
import type { Figure, FigureShape } from './figure';
import { panelShapes, wallLabels } from './panelShapes';
import { unfolded } from './unfolded';

/** Places along a joint where its number may stand, best first. */
const PLACES = [0.5, 0.36, 0.64, 0.22, 0.78];

/**
 * Every joint where it runs, as seen facing each wall: heavy lines for sealant, dashed ones for paintable caulk, with
 * its number in the list of joints.
 * @param size height of type, mm on the wall
 */
export function jointFigure({ panels, materials }: Pick<Result, 'panels' | 'materials'>, size: number): Figure {
  const { place, bounds, middle } = unfolded({ panels });
  const lines = materials.joints.map(({ wall, path, filler }) => ({
    wall,
    points: path.map((point) => place(wall, point)),
    look: filler === 'sealant' ? ('wet' as const) : ('room' as const),
  }));
  const taken: Point[] = [];
  const clear = (at: Point): boolean =>
    taken.every((other) => apart(at, other, size)) &&
    lines.every(({ points }) => points.every((b, k) => k === 0 || distance(at, points[k - 1]!, b) > 0.62 * size));
  const labels = lines.flatMap(({ wall, points }, i): FigureShape[] => {
    if (points.length < 2) return [];
    const candidates = PLACES.flatMap((share) => beside(points, share, middle[wall], size));
    const at = candidates.find(clear) ?? candidates[0]!;
    taken.push(at);
    return [{ kind: 'label', text: String(i + 1), at: [at[0], at[1] - 0.36 * size], anchor: 'middle', bold: true }];
  });
  const reach = grown(around([...lines.flatMap(({ points }) => points), ...taken]), 0.8 * size);
  return {
    title: 'Joints of the left, back and right wall: solid lines take sealant, dashed lines paintable caulk',
    bounds: {
      left: Math.min(bounds.left, reach.left),
      right: Math.max(bounds.right, reach.right),
      bottom: Math.min(bounds.bottom, reach.bottom),
      top: Math.max(bounds.top, reach.top) + 2.2 * size,
    },
    size,
    shapes: [
      ...(['left', 'back', 'right'] as const).flatMap((wall) => panelShapes(panels[wall], place)),
      ...lines.map(({ points, look }): FigureShape => ({ kind: 'path', points, closed: false, look })),
      ...labels,
      ...wallLabels(middle, Math.max(bounds.top, reach.top), size),
    ],
  };
}

/** Places for a number at a share of a line, on both sides of it, the nearer ones first. */
function beside(points: readonly Point[], share: number, [mx, my]: Point, size: number): Point[] {
  const at = Math.min(points.length - 2, Math.floor(share * (points.length - 1)));
  const [a, b] = [points[at]!, points[at + 1]!];
  const part = share * (points.length - 1) - at;
  const [x, y] = [a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1])];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const [nx, ny] = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
  const off = size * (0.8 + 0.35 * Math.abs(nx));
  const near = (point: Point): number => Math.round((10 * Math.hypot(point[0] - x, point[1] - y)) / (size || 1));
  const far = (point: Point): number => Math.round(Math.hypot(point[0] - mx, point[1] - my));
  return [1, -1, 1.8, -1.8]
    .map((way): Point => [x + way * off * nx, y + way * off * ny])
    .sort((p, q) => near(p) - near(q) || far(q) - far(p));
}

const apart = (a: Point, b: Point, size: number): boolean =>
  Math.abs(a[0] - b[0]) > 1.5 * size || Math.abs(a[1] - b[1]) > 1.1 * size;

/** Distance from a point to a segment. */
function distance([x, y]: Point, [x0, y0]: Point, [x1, y1]: Point): number {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const share = Math.max(0, Math.min(1, ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(x - x0 - share * dx, y - y0 - share * dy);
}
