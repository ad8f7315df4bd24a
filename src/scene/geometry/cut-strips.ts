import type { EdgeName, Mark, Panel, PanelEdge } from '../../core';
import { gridMesh, joinMeshes, type MeshData, type Vec3 } from './mesh-data';
import type { AlcoveShape } from './shape';
import { alongU, moved, onWall } from './wall-place';

/** Strips narrower than this are not drawn, mm. */
const leastWidth = 0.25;
const stepsBetweenMarks = 8;
/** Of a strip wider than this all along, only this much is drawn, mm: the rest is the same everywhere. */
const mostEven = 40;

/** A strip along an edge: `sliver` is cut off the sheet, `gap` is what the sheet does not reach. */
export interface CutStrip {
  kind: 'sliver' | 'gap';
  edge: EdgeName;
  mesh: MeshData;
  /** where the strip is widest, on its outer side, and how wide it is there, mm */
  widest: { at: Vec3; width: number };
}

interface Station {
  u: number;
  v: number;
  sliver: number;
}

/**
 * The strips along a panel's edges, on the panel's face. Their change of width is drawn `widen` times as large as it
 * is, so that with walls drawn `widen` times out of true the sheet's own edge is straight.
 */
export function cutStrips(
  shape: AlcoveShape,
  panel: Panel,
  bed: number,
  widen: number,
  place: (point: Vec3) => Vec3,
): CutStrip[] {
  const point = onWall(shape, panel.name, bed + panel.thickness + 1);
  return (Object.entries(panel.edges) as [EdgeName, PanelEdge][]).flatMap(([edge, { marks }]) => {
    const outward = outwardOf(panel, edge);
    const stations = stationsAlong(marks);
    const drawn = drawnWidth(stations, widen);
    return (['sliver', 'gap'] as const).flatMap((kind): CutStrip[] => {
      const width = ({ sliver }: Station) => Math.max(0, kind === 'sliver' ? sliver : -sliver);
      const widest = stations.reduce((best, station) => (width(station) > width(best) ? station : best), stations[0]!);
      if (!widest || width(widest) < leastWidth) return [];
      const inner = (station: Station) => place(point(station.u, station.v));
      const outer = (station: Station) => moved(inner(station), outward, drawn(station.sliver));
      const pieces = runs(stations, (station) => width(station) > 0).map((run) =>
        gridMesh([run.map(inner), run.map(outer)]),
      );
      return [{ kind, edge, mesh: joinMeshes(pieces), widest: { at: outer(widest), width: width(widest) } }];
    });
  });
}

/**
 * Width to draw for a true one, both signed: the least along the edge is kept, up to `mostEven`, what is more is
 * widened.
 */
function drawnWidth(stations: readonly Station[], widen: number): (sliver: number) => number {
  const all = stations.map(({ sliver }) => sliver);
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const even = Math.max(least, 0) + Math.min(most, 0);
  const shown = Math.sign(even) * Math.min(Math.abs(even), mostEven);
  return (sliver) => (sliver === 0 ? 0 : shown + widen * (sliver - even));
}

function outwardOf(panel: Panel, edge: EdgeName): Vec3 {
  if (edge === 'top') return [0, 1, 0];
  if (edge === 'bottom') return [0, -1, 0];
  const [x, y, z] = alongU(panel.name);
  const sign = edge === 'right' || edge === 'front' ? 1 : -1;
  return [sign * x, sign * y, sign * z];
}

/** Marks and points between them, with one where a sliver turns into a gap. */
function stationsAlong(marks: readonly Mark[]): Station[] {
  return marks.flatMap((mark, i) => {
    const next = marks[i + 1];
    if (!next) return [mark];
    const fractions = Array.from({ length: stepsBetweenMarks }, (_, k) => k / stepsBetweenMarks);
    if (mark.sliver * next.sliver < 0) fractions.push(mark.sliver / (mark.sliver - next.sliver));
    return fractions
      .sort((a, b) => a - b)
      .map((t) => ({
        u: mark.u * (1 - t) + next.u * t,
        v: mark.v * (1 - t) + next.v * t,
        sliver: mark.sliver * (1 - t) + next.sliver * t,
      }));
  });
}

/** Stretches where `inside` holds, each with the station before and after it so that they taper out. */
function runs(stations: readonly Station[], inside: (station: Station) => boolean): Station[][] {
  const found: Station[][] = [];
  let open: Station[] | null = null;
  stations.forEach((station, i) => {
    if (inside(station)) {
      if (!open) {
        const before = stations[i - 1];
        open = before ? [{ ...before, sliver: 0 }] : [];
        found.push(open);
      }
      open.push(station);
    } else if (open) {
      open.push({ ...station, sliver: 0 });
      open = null;
    }
  });
  return found;
}
