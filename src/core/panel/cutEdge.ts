import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import type { FlatMap } from '../flatten';
import { type BoundaryEdge, wallPoint } from './boundary';
import type { EdgeAt } from './clearance';
import { type EdgeSample, sampleEdge } from './curve';
import { type CurvePoint, fewestChords, fewestMarks, misfitOf } from './fewestMarks';
import { gapsAlong } from './gaps';
import type { LaidSheet } from './lay';
import type { CutMethod, Gap, PanelEdge, Point } from './panel';

/** Strips up to this wide are planed or sanded off rather than cut, mm: 1/4 in (common practice, no source). */
export const PLANE_UP_TO = 6.35;

/** An edge that needs more than the customary three marks chooses them from at least this many places. */
const CANDIDATES = 64;

/**
 * Marks, sliver and method of an edge on the laid sheet, and the stretches that the sheet does not reach.
 * @param exact the same edge with its derivatives, for the marks' ±
 */
export function cutEdge(
  edge: BoundaryEdge,
  exact: EdgeAt,
  flat: FlatMap,
  laid: LaidSheet,
  sheetSide: keyof LaidSheet,
  covariance: Matrix,
  tolerance: number,
): { edge: PanelEdge; gaps: Gap[] } {
  const samples = candidates(edge, flat, tolerance);
  const wall = samples.map((sample) => wallPoint(edge, sample));
  const sheet = wall.map(([u, v]) => flat.toSheet(u, v));
  const curve = curveOf(edge, sheet);
  const outward = sheetSide === 'right' || sheetSide === 'top' ? 1 : -1;
  const widths = curve.map((point) => outward * (laid[sheetSide] - point.at));
  const chosen = fewestMarks(curve, tolerance);
  const sliver = { min: Math.min(...widths), max: Math.max(...widths) };
  return {
    edge: {
      marks: chosen.map((i) => ({
        u: wall[i]![0],
        v: wall[i]![1],
        sd: standardDeviation(exact(samples[i]!.along), covariance),
        sheet: sheet[i]!,
        sliver: widths[i]!,
      })),
      sliver,
      method: cutMethod(sliver.max, fewestChords(curve, tolerance).length === 2, tolerance),
      misfit: misfitOf(curve, chosen),
    },
    gaps: gapsAlong(edge.name, wall, widths),
  };
}

/** The edge's samples, closer together where it needs many marks. */
function candidates(edge: BoundaryEdge, flat: FlatMap, tolerance: number): EdgeSample[] {
  const { at, samples, kinks } = edge;
  const sheet = samples.map((sample) => flat.toSheet(...wallPoint(edge, sample)));
  if (fewestMarks(curveOf(edge, sheet), tolerance).length <= 3) return samples;
  return sampleEdge(at, samples[0]!.along, samples.at(-1)!.along, kinks, CANDIDATES);
}

const curveOf = ({ upright }: BoundaryEdge, sheet: readonly Point[]): CurvePoint[] =>
  sheet.map(([u, v]) => (upright ? { along: v, at: u } : { along: u, at: v }));

/** How a sliver comes off: not at all, by plane, by one snap of the knife, or along a curve. */
export function cutMethod(widest: number, straight: boolean, tolerance: number): CutMethod {
  if (widest <= tolerance) return 'factory';
  if (widest < PLANE_UP_TO) return 'plane';
  return straight ? 'knife' : 'jigsaw';
}
