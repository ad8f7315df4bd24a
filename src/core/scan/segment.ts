import { alignedFrame, facetsIn } from './align';
import { type PointCloud, pointCount } from './cloud';
import { type Facets, facetsOf } from './facets';
import { fieldAt, fieldSlope } from './field';
import { findWalls, type WallBox } from './findWalls';
import { type Found, labelPoints, RUN } from './labelPoints';
import { LABEL_NAMES } from './labels';
import { levelsOf } from './levels';
import { depthOf, flankOf } from './opening';
import { frameAt, moved, movePoints, type RigidFrame } from './rigidFrame';
import { lehmer, sampleOf } from './sample';
import type { NotSegmented, Segmented, SegmentOptions } from './segmented';
import { somePoints } from './somePoints';
import { type Box, sharpened, wallFields } from './surfaces';
import { uprightDirection } from './upright';
import { cross, dot, plus, unit, type Vec } from './vec';

/** A cloud with fewer points shows no alcove. */
const LEAST_POINTS = 2000;
/** Points that facets are made of; rim, floor and the walls' spread are told by the whole sample. */
const FOR_FACETS = 60_000;
/** A frame is turned and moved until it lies in the alcove as the job's does: two rounds leave nothing. */
const ROUNDS = 2;

/**
 * Finds the alcove in a cloud and labels every point. A sample gives small flat facets; their normals give the upright and
 * the directions of the walls; of the planes that gather facets, the closed end between two facing walls is taken, each
 * wall's shape by consensus (seeded) and robust least squares; rim, floor, ceiling and the walls beside the opening follow
 * from where they lie. Time and memory grow with the number of points, by one pass; the same seed gives the same labels.
 */
export function segmentScan(cloud: PointCloud, options: SegmentOptions = {}): Segmented | NotSegmented {
  const { seed = 1, up = [0, 1, 0], onProgress, cancelled } = options;
  const count = pointCount(cloud);
  if (count < LEAST_POINTS) {
    return {
      reason: `The scan has ${count} points; an alcove takes at least ${LEAST_POINTS}. Scan again, closer and slower.`,
    };
  }
  const sample = sampleOf(cloud, seed);
  onProgress?.(0.1);
  const few = somePoints(sample, FOR_FACETS);
  // Where the alcove is a small part of what was scanned, too few facets are made of few points.
  const sorted = alcoveIn(few, sample, options) ?? (few === sample ? null : alcoveIn(sample, sample, options));
  if (sorted === null) return { reason: NO_ALCOVE };
  const { frame, found, upright } = sorted;

  const labels = new Uint8Array(count);
  for (let from = 0; from < count; from += RUN) {
    if (cancelled?.() === true) return { reason: 'The scan was put away before it was sorted.' };
    labelPoints(cloud, frame, found, labels, from, Math.min(count, from + RUN));
    onProgress?.(0.4 + 0.6 * Math.min(1, (from + RUN) / count));
  }
  return {
    labels,
    frame,
    quality: {
      counts: countsOf(labels),
      noise: {
        back: found.back.noise,
        left: found.left.noise,
        right: found.right.noise,
        rim: found.rim?.noise ?? null,
      },
      width: fieldAt(found.right.field, 0, 0) - fieldAt(found.left.field, 0, 0),
      upTurned: (Math.acos(Math.min(1, dot(unit(up), upright))) * 180) / Math.PI,
    },
  };
}

/** Upright, frame and surfaces, from facets made of the points `few`. */
function alcoveIn(
  few: Float64Array,
  sample: Float64Array,
  options: SegmentOptions,
): { frame: RigidFrame; found: Found; upright: Vec } | null {
  const { up = [0, 1, 0], upKnown = false, onProgress } = options;
  const facets = facetsOf(few);
  const upright = upKnown ? unit(up) : uprightDirection(facets, up);
  const aligned = alignedFrame(facets, upright);
  const box = findWalls(facetsIn(aligned, facets));
  if (box === null) return null;
  onProgress?.(0.3);
  const half = (box.sides[1] - box.sides[0]) / 2;
  const located = locate(facets, { few, sample }, frameOf(aligned, box), half, options);
  return located && { ...located, upright };
}

const NO_ALCOVE =
  'No three walls that close an alcove show in the scan. Turn the scan so that up is up, cut away what is not the bathroom, or scan again with all three walls in view.';

/** The wall frame: z out of the back wall, x to the right, the origin on the back wall midway between the side walls. */
function frameOf(aligned: RigidFrame, { axis, into, back, sides }: WallBox): RigidFrame {
  const row = (k: number): Vec => aligned.rotation.slice(3 * k, 3 * k + 3) as Vec;
  const y = row(1);
  const z = plus([0, 0, 0], row(axis), into);
  const across = axis === 0 ? 2 : 0;
  const origin = plus(plus([0, 0, 0], row(across), (sides[0] + sides[1]) / 2), row(axis), back);
  return frameAt(cross(y, z), y, z, origin);
}

function locate(
  facets: Facets,
  { few, sample }: { few: Float64Array; sample: Float64Array },
  first: RigidFrame,
  half: number,
  { seed = 1, levelAboveFloor = 1250, rimAboveFloor = 500 }: SegmentOptions,
): { frame: RigidFrame; found: Found } | null {
  let frame = first;
  const random = lehmer(seed + 1);
  for (let round = 0; ; round++) {
    const here = facetsIn(frame, facets);
    const walls = wallFields(here, half, random);
    if (walls === null) return null;
    const depth = depthOf(here, [walls.left, walls.right]);
    const seen = round === ROUNDS ? sample : few;
    const points = new Float64Array(seen.length);
    movePoints(frame, seen, points);
    const levels = levelsOf(here, points, walls, depth);
    if (round === ROUNDS) {
      const flank = { left: flankOf(here, walls.left, -1), right: flankOf(here, walls.right, 1) };
      return { frame, found: sharpenedAll(points, { ...walls, ...levels, depth, flank }) };
    }
    const level =
      levels.floor !== null
        ? levels.floor + levelAboveFloor
        : levels.rim !== null
          ? fieldAt(levels.rim.field, 0, 0) + levelAboveFloor - rimAboveFloor
          : 0;
    const middle = (fieldAt(walls.left.field, 0, level) + fieldAt(walls.right.field, 0, level)) / 2;
    const yaw = Math.atan(fieldSlope(walls.back.field, middle, level)[0]);
    frame = turned(frame, yaw, [middle, level, fieldAt(walls.back.field, middle, level)]);
  }
}

/** The frame turned about its upright so that a line rising by tan(yaw) in z along x runs along x, its origin moved. */
function turned(frame: RigidFrame, yaw: number, origin: Vec): RigidFrame {
  const [cos, sin] = [Math.cos(yaw), Math.sin(yaw)];
  const turn: RigidFrame = { rotation: [cos, 0, sin, 0, 1, 0, -sin, 0, cos], translation: [0, 0, 0] };
  const rows = [0, 1, 2].map((k) => frame.rotation.slice(3 * k, 3 * k + 3));
  const rotation = [0, 1, 2].flatMap((i) =>
    [0, 1, 2].map((j) => [0, 1, 2].reduce((sum, k) => sum + turn.rotation[3 * i + k]! * rows[k]![j]!, 0)),
  );
  const [tx, ty, tz] = frame.translation;
  return { rotation, translation: moved(turn, [tx - origin[0], ty - origin[1], tz - origin[2]]) };
}

function sharpenedAll(sample: Float64Array, found: Found): Found {
  const { back, left, right, rim, depth } = found;
  const low = rim === null ? -1e9 : fieldAt(rim.field, 0, 0) + 30;
  const top = (found.ceiling ?? 1e9) - 30;
  const x: Box['x'] = [fieldAt(left.field, 0, 0) + 25, fieldAt(right.field, 0, 0) - 25];
  const y: Box['y'] = [low, top];
  const z: Box['z'] = [25, depth - 10];
  return {
    ...found,
    back: sharpened(sample, 'back', back.field, { x, y, z: EVERYWHERE }) ?? back,
    left: sharpened(sample, 'left', left.field, { x: EVERYWHERE, y, z }) ?? left,
    right: sharpened(sample, 'right', right.field, { x: EVERYWHERE, y, z }) ?? right,
    rim: rim && (sharpened(sample, 'rim', rim.field, { x, y: EVERYWHERE, z: [25, depth] }) ?? rim),
  };
}

const EVERYWHERE: [number, number] = [-1e9, 1e9];

function countsOf(labels: Uint8Array): number[] {
  const counts = LABEL_NAMES.map(() => 0);
  for (let i = 0; i < labels.length; i++) counts[labels[i]!]!++;
  return counts;
}
