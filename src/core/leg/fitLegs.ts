import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import type { Alcove } from '../alcove';
import { type Job, SIDES, type Side } from '../job-file';
import { fewestMarks, frontLine, overRim, type Point, type Problem } from '../panel';
import { counterClockwise, makePiece, type Piece, type PieceMark, uprightStrip } from '../piece';
import { tapeSd } from '../survey';
import { type ApronPoint, apronAt, apronLine } from './apron';

/** A leg narrower than this breaks when it is cut, mm (common practice, no source). */
const LEAST_LEG = 8;
/** The front edge is compared with the apron at this many heights. */
const STEPS = 24;

/** Legs below the side panels, where a panel's front edge stands out past the apron. */
export function fitLegs(alcove: Alcove, covariance: Matrix, job: Job): { legs: Piece[]; problems: Problem[] } {
  const legs: Piece[] = [];
  const problems: Problem[] = [];
  if (!job.legs.make) return { legs, problems };
  for (const side of SIDES) {
    const shape = legShape(alcove, job, side);
    if (shape === null) continue;
    if (shape.narrowest < LEAST_LEG) {
      if (!job.trim.verticals || job.trim.foot === 'rim') problems.push(tooNarrow(side, shape.narrowest));
    } else {
      legs.push(legPiece(alcove, covariance, job, side, shape));
    }
  }
  return { legs, problems };
}

interface LegShape {
  apron: ApronPoint[];
  floor: number;
  top: number;
  narrowest: number;
}

/** Null where the panel's front edge stays behind the apron. */
function legShape(alcove: Alcove, job: Job, side: Side): LegShape | null {
  const { fit, rim } = job;
  const faces = [fit.bed, fit.bed + fit.thickness];
  const front = frontLine(alcove, side, fit.frontSetBack);
  const apron = apronLine(alcove, job, side, faces);
  const floor = -job.levelAboveFloor + job.legs.floorGap;
  const top = overRim(alcove, rim, side, faces, fit.rimJoint - job.legs.joint)(rim.width).value;
  if (top <= floor) return null;
  const widths = Array.from({ length: STEPS + 1 }, (_, k) => {
    const height = floor + ((top - floor) * k) / STEPS;
    return front(height).value - apronAt(apron, height) - fit.rimJoint;
  });
  for (const { z, y } of apron) {
    if (y.value >= floor && y.value <= top) widths.push(front(y.value).value - z - fit.rimJoint);
  }
  return Math.max(...widths) <= 0 ? null : { apron, floor, top, narrowest: Math.min(...widths) };
}

const tooNarrow = (side: Side, width: number): Problem => ({
  where: `pieces.legs.${side}`,
  what: "the strip of wall between the apron and the panel's front edge is too narrow for a leg; set the panel back, or cover the strip with trim down to the floor",
  howMuch: Math.max(0, width),
});

function legPiece(alcove: Alcove, covariance: Matrix, job: Job, side: Side, shape: LegShape): Piece {
  const { fit, rim } = job;
  const { apron, floor } = shape;
  const faces = [fit.bed, fit.bed + fit.thickness];
  const front = frontLine(alcove, side, fit.frontSetBack);
  const seam = overRim(alcove, rim, side, faces, fit.rimJoint - job.legs.joint);
  const inner = (height: number): number => apronAt(apron, height) + fit.rimJoint;
  const innerTop = seam(inner(shape.top)).value;
  const outerTop = seam(front(shape.top).value).value;
  const strip = uprightStrip(alcove, side, fit.bed, front(shape.top).value);
  const flat = (u: number, v: number): Point => strip.toFlat(u, v);

  const contour = [innerTop, ...apron.map(({ y }) => y.value).filter((y) => y < innerTop && y > floor), floor];
  const beside = contour.map((height) => flat(inner(height), height));
  const outer = [floor, outerTop].map((height) => ({ height, edge: front(height) }));
  const outline = counterClockwise([...beside, ...outer.map(({ height, edge }) => flat(edge.value, height))]);

  const floorSd = tapeSd(job.levelAboveFloor);
  const mark = (at: Point, sd: number): PieceMark => ({ at, sd });
  const besideMarks = contourMarks(beside, fit.markTolerance).map((i) => mark(beside[i]!, rim.contourSd));
  const outerMarks = outer.map(({ height, edge }) =>
    mark(flat(edge.value, height), standardDeviation(edge, covariance)),
  );
  const topMarks = [inner(shape.top), front(outerTop).value].map((u) =>
    mark(flat(u, seam(u).value), standardDeviation(seam(u), covariance)),
  );
  const footMarks = [mark(beside.at(-1)!, floorSd), mark(flat(outer[0]!.edge.value, floor), floorSd)];
  const edges = [
    { name: 'beside the tub', method: 'jigsaw' as const, marks: besideMarks },
    { name: 'front', method: 'knife' as const, marks: outerMarks },
    { name: 'top', method: 'knife' as const, marks: topMarks },
    { name: 'foot', method: 'knife' as const, marks: footMarks },
  ];
  return makePiece({
    id: `legs.${side}`,
    kind: 'leg',
    name: `${side} leg`,
    wall: side,
    outline,
    thickness: fit.thickness,
    bodies: [{ back: outline, face: outline, from: 0, to: fit.thickness }],
    axis: 'y',
    edges,
    stations: strip.stations(floor, Math.max(innerTop, outerTop)),
    stock: 'sheet',
    notes: notesFor(shape.narrowest),
    cautions: ['jigsaw', 'dust', 'adhesive', ...(shape.narrowest < 3 * LEAST_LEG ? (['thin-piece'] as const) : [])],
  });
}

/** Places along the contour joined by straight cuts within the tolerance; the line runs down, so height is `along`. */
function contourMarks(line: readonly Point[], tolerance: number): number[] {
  const points = line.map(([x, y]) => ({ along: -y, at: x }));
  return points.length < 3 ? points.map((_, i) => i) : fewestMarks(points, tolerance);
}

const notesFor = (narrowest: number) => [
  {
    text: 'scribe it to the apron on the dry fit, then cut its front edge in line with the panel above',
    howMuch: null,
  },
  ...(narrowest < 3 * LEAST_LEG
    ? [{ text: 'narrow: cut the contour before the front edge, with the strip still in the sheet', howMuch: narrowest }]
    : []),
];
