import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import type { FlatMap } from '../flatten';
import { type EdgeSample, sampleEdge } from './curve';
import type { EdgeAt } from './edges';
import { type CurvePoint, fewestChords, fewestMarks, misfitOf } from './fewestMarks';
import type { LaidSheet } from './lay';
import type { CutMethod, EdgeName, Gap, PanelEdge, Point } from './panel';

/** Strips up to this wide are planed or sanded off rather than cut, mm: 1/4 in (common practice, no source). */
const PLANE_UP_TO = 6.35;
/** A sheet that falls short by less than this is no gap, mm. */
const GAP_TOLERANCE = 0.05;
/** An edge that needs more than the customary three marks chooses them from at least this many places. */
const CANDIDATES = 64;

/** What stands at an edge before it is cut. */
export interface RawEdge {
  name: EdgeName;
  /** true where the edge runs along v (its position is u), false where it runs along u */
  upright: boolean;
  at: EdgeAt;
  /** places along it where it turns sharply */
  kinks: readonly number[];
  /** from low to high */
  samples: EdgeSample[];
}

/** Marks, sliver and method of an edge on the laid sheet, and the stretches that the sheet does not reach. */
export function cutEdge(
  raw: RawEdge,
  flat: FlatMap,
  laid: LaidSheet,
  sheetSide: keyof LaidSheet,
  covariance: Matrix,
  tolerance: number,
): { edge: PanelEdge; gaps: Gap[] } {
  const onSheet = (sample: EdgeSample): Point => flat.toSheet(...wallPoint(raw, sample));
  const samples = candidatesFor(raw, onSheet, tolerance);
  const wall = samples.map((sample) => wallPoint(raw, sample));
  const sheet = samples.map(onSheet);
  const curve = curveOf(raw, sheet);
  const outward = sheetSide === 'right' || sheetSide === 'top' ? 1 : -1;
  const widths = curve.map(({ at }) => outward * (laid[sheetSide] - at));
  const chosen = fewestMarks(curve, tolerance);
  const sliver = { min: Math.min(...widths), max: Math.max(...widths) };
  const straight = fewestChords(curve, tolerance).length === 2;
  return {
    edge: {
      marks: chosen.map((i) => ({
        u: wall[i]![0],
        v: wall[i]![1],
        sd: standardDeviation(raw.at(samples[i]!.along), covariance),
        sheet: sheet[i]!,
        sliver: widths[i]!,
      })),
      sliver,
      method: methodFor(sliver.max, straight, tolerance),
      misfit: misfitOf(curve, chosen),
    },
    gaps: gapsAlong(raw.name, wall, widths),
  };
}

/** The edge's samples, closer together where it needs many marks. */
function candidatesFor(raw: RawEdge, onSheet: (sample: EdgeSample) => Point, tolerance: number): EdgeSample[] {
  const { at, samples, kinks } = raw;
  if (fewestMarks(curveOf(raw, samples.map(onSheet)), tolerance).length <= 3) return samples;
  return sampleEdge(at, samples[0]!.along, samples.at(-1)!.along, kinks, CANDIDATES);
}

const curveOf = ({ upright }: RawEdge, sheet: readonly Point[]): CurvePoint[] =>
  sheet.map(([u, v]) => (upright ? { along: v, at: u } : { along: u, at: v }));

export const wallPoint = ({ upright }: { upright: boolean }, { along, at }: EdgeSample): Point =>
  upright ? [at, along] : [along, at];

function methodFor(widest: number, straight: boolean, tolerance: number): CutMethod {
  if (widest <= tolerance) return 'factory';
  if (widest < PLANE_UP_TO) return 'plane';
  return straight ? 'knife' : 'jigsaw';
}

function gapsAlong(edge: EdgeName, wall: Point[], widths: number[]): Gap[] {
  const gaps: Gap[] = [];
  let open: Gap | null = null;
  widths.forEach((width, i) => {
    if (width >= -GAP_TOLERANCE) {
      open = null;
      return;
    }
    if (open === null) {
      open = { edge, from: wall[i]!, to: wall[i]!, max: -width };
      gaps.push(open);
    } else {
      open.to = wall[i]!;
      open.max = Math.max(open.max, -width);
    }
  });
  return gaps;
}
