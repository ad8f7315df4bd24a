import type { AlcoveModel, Part } from '../alcove';
import type { Side } from '../job-file';
import { AXES, SURFACE_NAMES } from '../scan';
import type { Surface } from '../surface';
import { poseOf, type Triple, takenBy } from './pose';
import { isPose, type ScanInUse, type ScanUnknown, type SurfaceUnknown, unknownsOf } from './scanInUse';

/** One cell, or one height of a front edge, as an observation equation: `misfit` = `row`·δ + noise. */
export interface CellEquation {
  part: Part;
  /** measured less the model's height, mm of the scan's own lengths */
  misfit: number;
  /** 1 sigma as stated, mm */
  sd: number;
  /** place on the surface in the job's frame, mm */
  a: number;
  b: number;
}

/** A row of derivatives with few entries, by the parameters' indices. Reused from one equation to the next. */
export interface SparseRow {
  length: number;
  index: Int32Array;
  value: Float64Array;
}

/**
 * Calls `take` with the equation of every cell of a scan at the given values. A cell's place moves into the job's frame;
 * there its height, less how far its surface is off there, is the model's: n(θ) − δ = h(a(θ), b(θ); c). The equation is
 * divided by 1 + scale: what a cell errs by grows with the scale that it is drawn at, so that a smaller scale, which would
 * make all errors small, is no better for that.
 * @param first index of the scan's first unknown among the parameters
 */
export function eachCellEquation(
  model: AlcoveModel,
  inUse: ScanInUse,
  first: number,
  values: Float64Array,
  take: (equation: CellEquation, row: SparseRow) => void,
): void {
  const { scan, cells, unknowns } = inUse;
  const alcove = model.build(values);
  const unknown = (name: ScanUnknown): number => {
    const k = unknowns.indexOf(name);
    return k < 0 ? 0 : values[first + k]!;
  };
  const pose = poseOf(unknown);
  const most = Math.max(
    ...Object.values(model.pieces).map((pieces) => pieces.reduce((n, { basis }) => n + basis.count, 0)),
  );
  const row: SparseRow = {
    length: 0,
    index: new Int32Array(most + unknowns.length),
    value: new Float64Array(most + unknowns.length),
  };
  const derivatives = unknowns.filter(isPose).map((name) => pose.by(name));
  const by: Triple = [0, 0, 0];
  const scale = 1 + unknown('scale');
  const scaleColumn = first + unknowns.indexOf('scale');
  const entries = (part: Part, surface: Surface, place: Triple, axes: Readonly<Triple>, moved: Triple): void => {
    const [a, b, n] = axes;
    row.length = 0;
    addShape(row, model, part, moved[a]!, moved[b]!);
    const slope = surface.gradient(moved[a]!, moved[b]!);
    for (let k = 0; k < derivatives.length; k++) {
      takenBy(derivatives[k]!, place, by);
      push(row, first + k, slope[0] * by[a]! + slope[1] * by[b]! - by[n]!);
    }
  };
  const tell = (equation: CellEquation): void => {
    equation.misfit /= scale;
    for (let k = 0; k < row.length; k++) {
      if (row.index[k] === scaleColumn) row.value[k]! += equation.misfit;
      row.value[k]! /= scale;
    }
    take(equation, row);
  };
  for (const part of SURFACE_NAMES) {
    const seen = cells[part];
    if (seen === undefined) continue;
    const axes = AXES[part];
    const [i, j, k] = axes;
    const surface = alcove[part];
    const warps = unknownsOf(part);
    const warpFirst = first + unknowns.indexOf(warps[0]!);
    const warpValues = warps.map(unknown);
    const shapes = warps.map(warpShape);
    const place: Triple = [0, 0, 0];
    const moved: Triple = [0, 0, 0];
    for (let c = 0; c < seen.a.length; c++) {
      place[i] = seen.a[c]!;
      place[j] = seen.b[c]!;
      place[k] = seen.value[c]!;
      takenBy(pose.into, place, moved);
      const [a, b] = [moved[i]!, moved[j]!];
      entries(part, surface, place, axes, moved);
      let off = 0;
      for (let w = 0; w < warps.length; w++) {
        const by = shapes[w]!(seen.a[c]!, seen.b[c]!);
        off += by * warpValues[w]!;
        push(row, warpFirst + w, by);
      }
      tell({ part, misfit: moved[k]! - off - surface.value(a, b), sd: seen.sd[c]!, a, b });
    }
  }
  for (const side of ['left', 'right'] as const) {
    const front = alcove.front[side];
    const x = acrossOf(inUse, side);
    for (const { height, value, sd } of scan.front[side]) {
      const place: Triple = [x, height, value];
      const moved = takenBy(pose.into, place, [0, 0, 0]);
      entries(`front.${side}`, front, place, [0, 1, 2], [0, moved[1], moved[2]]);
      tell({ part: `front.${side}`, misfit: moved[2] - front.value(0, moved[1]), sd, a: 0, b: moved[1] });
    }
  }
}

/** How much a surface is off at a place of the scan where its unknown is 1. */
function warpShape(name: SurfaceUnknown): (a: number, b: number) => number {
  if (name.endsWith('.leanAlong')) return (a) => a;
  if (name.endsWith('.leanAcross')) return (_, b) => b;
  if (name.endsWith('.bowAlong')) return (a) => a * a;
  if (name.endsWith('.bowAcross')) return (_, b) => b * b;
  return () => 1;
}

/** x of a side wall in the scan's frame, near enough for what turning the scan does to a front edge. */
function acrossOf({ cells }: ScanInUse, side: Side): number {
  const seen = Array.from(cells[side]?.value ?? []);
  return seen.length === 0
    ? (side === 'left' ? -1 : 1) * HALF_WIDTH
    : seen.reduce((sum, each) => sum + each, 0) / seen.length;
}

/** Half of a common alcove's 60 in width, mm. */
const HALF_WIDTH = 762;

let buffer = new Float64Array(0);

function addShape(row: SparseRow, model: AlcoveModel, part: Part, a: number, b: number): void {
  for (const { basis, offset } of model.pieces[part]) {
    if (buffer.length < basis.count) buffer = new Float64Array(basis.count);
    basis.fill(buffer, 0, a, b, 0, 0);
    for (let k = 0; k < basis.count; k++) if (buffer[k] !== 0) push(row, offset + k, buffer[k]!);
  }
}

function push(row: SparseRow, index: number, value: number): void {
  row.index[row.length] = index;
  row.value[row.length] = value;
  row.length++;
}
