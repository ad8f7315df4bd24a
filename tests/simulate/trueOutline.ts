import type { EdgeName, PanelName, Point } from '../../src/core/panel';
import { bisect } from './bisect';
import type { TrueAlcove } from './trueAlcove';
import { type Build, contourPoints, trueEdge } from './trueEdge';

/** Edges of a panel at low u and at high u. */
const uprightEdges = (panel: PanelName): [EdgeName, EdgeName] =>
  panel === 'back' ? ['left', 'right'] : ['back', 'front'];

/** True outline of a panel, counter-clockwise in (u, v): `perEdge` points an edge and the corners of the rim's contour. */
export function trueOutline(alcove: TrueAlcove, build: Build, panel: PanelName, perEdge = 75): Point[] {
  const [lower, upper] = uprightEdges(panel);
  const upright = (edge: EdgeName, v: number): number => trueEdge(alcove, build, panel, edge, v);
  const rim = (u: number): number => trueEdge(alcove, build, panel, 'bottom', u);
  const foot = (edge: EdgeName): number => bisect((v) => v - rim(upright(edge, v)), -2400, build.fit.top);
  const [lowFoot, highFoot] = [foot(lower), foot(upper)];
  const top = build.fit.top;
  const [from, to] = [upright(lower, lowFoot), upright(upper, highFoot)];
  const kinks =
    panel === 'back'
      ? []
      : contourPoints(build.rim)
          .map(([z]) => z)
          .filter((z) => z > from && z < to);
  return [
    ...[...steps(from, to, perEdge), ...kinks].sort((a, b) => a - b).map((u): Point => [u, rim(u)]),
    ...steps(highFoot, top, perEdge).map((v): Point => [upright(upper, v), v]),
    ...steps(upright(upper, top), upright(lower, top), perEdge).map((u): Point => [u, top]),
    ...steps(top, lowFoot, perEdge).map((v): Point => [upright(lower, v), v]),
  ];
}

/** Even steps from `from`, without `to`. */
const steps = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / count);

/** Largest distance from a point of one closed outline to the other, both ways, mm (Hausdorff, over vertices). */
export function outlineDistance(a: readonly Point[], b: readonly Point[]): number {
  return Math.max(farthest(a, b), farthest(b, a));
}

function farthest(points: readonly Point[], outline: readonly Point[]): number {
  return Math.max(
    ...points.map((point) =>
      Math.min(...outline.map((from, i) => distanceToSegment(point, from, outline[(i + 1) % outline.length]!))),
    ),
  );
}

function distanceToSegment([u, v]: Point, [au, av]: Point, [bu, bv]: Point): number {
  const [du, dv] = [bu - au, bv - av];
  const share = Math.min(1, Math.max(0, ((u - au) * du + (v - av) * dv) / (du * du + dv * dv || 1)));
  return Math.hypot(u - au - share * du, v - av - share * dv);
}
