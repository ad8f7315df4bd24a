import type { Parameter } from '../alcove';
import type { Job, Scan, ScanGrid, ScanSurface } from '../job-file';
import { SURFACE_NAMES } from '../scan';

/** Cells of a surface as arrays, in the scan's own frame: place, height of the field, standard deviation, mm. */
export interface Cells {
  a: Float64Array;
  b: Float64Array;
  value: Float64Array;
  sd: Float64Array;
}

/** What a scan does not know of itself: unknowns of the adjustment beside the alcove's. */
export type ScanUnknown = 'tiltForward' | 'tiltSideways' | 'yaw' | 'across' | 'up' | 'out' | 'scale' | SurfaceUnknown;

/** How far a whole surface is off, how it leans along its two places, and how it bows: mm, mm per mm, per mm². */
export type SurfaceUnknown = ScanSurface | `${ScanSurface}.${Warp}`;
export type Warp = 'leanAlong' | 'leanAcross' | 'bowAlong' | 'bowAcross';
const WARPS: readonly Warp[] = ['leanAlong', 'leanAcross', 'bowAlong', 'bowAcross'];

/** A scan that the adjustment takes up. */
export interface ScanInUse {
  /** index in the job's list of scans */
  index: number;
  scan: Scan;
  cells: Partial<Record<ScanSurface, Cells>>;
  /** its unknowns, with those that it defines itself left out */
  unknowns: ScanUnknown[];
}

/**
 * Over a metre a surface leans, and bows, by this share of how far it may be off as a whole: ranges that are all too long
 * or short shift a wall by less where they meet it at a slant, and places that the scanner was held at are joined with a
 * turn that shifts a wall by as much at a metre's distance as at none.
 */
const SHARE = { lean: 0.4, bow: 0.25 };

/** How far a scan's frame may lie from the job's, 1 sigma: mm and radians. Wide: its cells tell better. */
const ANYWHERE = 500;
const ANY_YAW = 0.2;

/**
 * The scans of a job that are in use. Where no reading ties the plumb line to a corner, the first of them says where the
 * plumb line is, and where none ties the level line to the rim, how high: the lines are drawn where it has them.
 */
export function scansInUse(job: Job): ScanInUse[] {
  const used = job.readings.filter(({ off }) => off !== true);
  const plumbLineTied = used.some(({ kind }) => kind === 'tape-to-corner');
  const levelLineTied = used.some(({ kind }) => kind === 'tape-to-rim');
  let first = true;
  return job.scans.flatMap((scan, index): ScanInUse[] => {
    const cells: ScanInUse['cells'] = {};
    for (const name of SURFACE_NAMES) {
      const grid = scan.surfaces[name];
      const listed = grid && cellsOf(grid);
      if (listed && listed.a.length > 0) cells[name] = listed;
    }
    if (scan.off === true || Object.keys(cells).length === 0) return [];
    const defined: ScanUnknown[] = [];
    if (first && !(plumbLineTied && (cells.left || cells.right))) defined.push('across');
    if (first && !(levelLineTied && cells.rim)) defined.push('up');
    first = false;
    const unknowns = [
      ...POSE.filter((name) => !defined.includes(name)),
      ...SURFACE_NAMES.filter((name) => cells[name] !== undefined).flatMap(unknownsOf),
    ];
    return [{ index, scan, cells, unknowns }];
  });
}

const POSE = ['tiltForward', 'tiltSideways', 'yaw', 'across', 'up', 'out', 'scale'] as const;
export type PoseUnknown = (typeof POSE)[number];
export const isPose = (name: ScanUnknown): name is PoseUnknown => POSE.includes(name as PoseUnknown);

/** How far the back wall is off as a whole is how far out the scan stands. */
export const unknownsOf = (surface: ScanSurface): SurfaceUnknown[] => [
  ...(surface === 'back' ? [] : [surface]),
  ...WARPS.map((warp): SurfaceUnknown => `${surface}.${warp}`),
];

const WORDS: Record<PoseUnknown | ScanSurface, string> = {
  tiltForward: 'which way is up, from back to front',
  tiltSideways: 'which way is up, from left to right',
  yaw: 'where it stands',
  across: 'where it stands',
  up: 'where it stands',
  out: 'where it stands',
  scale: 'scale',
  back: 'back wall as a whole',
  left: 'left wall as a whole',
  right: 'right wall as a whole',
  rim: 'rim as a whole',
};

/** The unknowns of scans as parameters, scan after scan. Scale and tilts count as what a reading may stand against. */
export function scanParameters(scans: readonly ScanInUse[]): Parameter[] {
  return scans.flatMap(({ scan, unknowns }) =>
    unknowns.map((name): Parameter => {
      const large = name === 'scale' || name === 'tiltForward' || name === 'tiltSideways';
      return {
        name: `scan.${scan.id}.${name}`,
        label: `scan ${scan.id}: ${WORDS[name.split('.')[0] as keyof typeof WORDS]}`,
        priorSd: priorOf(name, scan),
        local: !large,
        start: 0,
        ...(!large && { quiet: true, unlisted: true }),
      };
    }),
  );
}

function priorOf(name: ScanUnknown, { scaleSd, tiltSd, biasSd }: Scan): number {
  switch (name) {
    case 'tiltForward':
    case 'tiltSideways':
      return tiltSd * 1e-3;
    case 'yaw':
      return ANY_YAW;
    case 'across':
    case 'up':
    case 'out':
      return ANYWHERE;
    case 'scale':
      return scaleSd * 1e-3;
    default:
      return biasSd * warpShare(name);
  }
}

function warpShare(name: SurfaceUnknown): number {
  const warp = name.split('.')[1];
  if (warp === undefined) return 1;
  return warp.startsWith('lean') ? SHARE.lean * 1e-3 : SHARE.bow * 1e-6;
}

function cellsOf({ from, size, columns, value, sd }: ScanGrid): Cells {
  const seen = Array.from(value.keys()).filter((k) => value[k] !== null);
  return {
    a: Float64Array.from(seen, (k) => from[0] + (k % columns) * size),
    b: Float64Array.from(seen, (k) => from[1] + Math.floor(k / columns) * size),
    value: Float64Array.from(seen, (k) => value[k]!),
    sd: Float64Array.from(seen, (k) => sd[k]!),
  };
}
