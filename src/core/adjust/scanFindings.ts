import { insideCorner, type Part, towardsRoom } from '../alcove';
import type { Job, Reading, ScanSurface } from '../job-file';
import { spaced } from '../range';
import {
  type PlacedCells,
  placedCells,
  type ResidualMap,
  type ScanReport,
  type ScanSurfaceReport,
  shareSeen,
} from '../scanned';
import type { Adjustment } from './adjust';
import type { ReadingReport } from './report';
import { panelledStretch } from './unevenness';

/** How one surface of a scan fits the adjusted alcove and the readings by hand. */
export interface ScanSurfaceFinding extends ScanSurfaceReport {
  /** points that its cells stand for, and the spread of one of them (1 sigma, mm); null where the job does not say */
  points: number | null;
  noise: number | null;
  /**
   * how far the scan has the whole surface towards the room (the rim: up) of where it was worked out to be with the
   * readings by hand, and its standard deviation, mm; null where no reading by hand tells
   */
  bias: { value: number; sd: number } | null;
  /** of what panels cover, or of the rim along the walls, the share that the scan saw; null for a front edge */
  seen: number | null;
  /** what of its shape rests on a prior alone, in words */
  assumed: string[];
  /** ids of readings on it that disagree, and may be wrong */
  against: string[];
  /** what is left after its shape, where it lies; null for a front edge */
  residuals: ResidualMap | null;
}

export interface ScanFinding extends Omit<ScanReport, 'surfaces'> {
  surfaces: ScanSurfaceFinding[];
}

/** Less of its prior's variance than this, taken by readings, says nothing of a bias. */
const TOLD = 0.1;
/** It is asked at so many places each way whether a wall was seen. */
const PLACES = 33;
/** A rim was seen where a cell lies so near to the wall, mm. */
const BESIDE_WALL = 75;

/** What each scan in use showed of each surface, how far it is off, and which readings speak against it. */
export function scanFindings(
  adjustment: Adjustment,
  job: Job,
  readings: readonly ReadingReport[],
  assumed: readonly string[],
): ScanFinding[] {
  const { scans, supposition, model, scanFirsts, solution } = adjustment;
  const values = solution.x.slice(0, model.parameters.length);
  const doubted = new Set(readings.flatMap(({ id, flag }) => (flag === 're-measure' ? [id.split('/')[0]!] : [])));
  return scans.map((report, s): ScanFinding => {
    const scan = supposition.scans[s]!;
    const placed = placedCells(model, scan, scanFirsts[s]!, values);
    return {
      ...report,
      surfaces: report.surfaces.map((each): ScanSurfaceFinding => {
        const { surface } = each;
        const grid = isFront(surface) ? undefined : scan.scan.surfaces[surface];
        const cells = isFront(surface) ? undefined : placed.get(surface);
        return {
          ...each,
          points: grid?.points ?? null,
          noise: grid?.noise ?? null,
          bias: isFront(surface) ? null : biasOf(surface, report, scan.scan.biasSd),
          seen: isFront(surface) || cells === undefined ? null : seenOf(surface, cells, job, adjustment),
          assumed: assumedOf(surface, adjustment, assumed),
          against: job.readings.flatMap((reading) =>
            doubted.has(reading.id) && partsOf(reading).includes(surface) ? [reading.id] : [],
          ),
          residuals: cells?.residuals ?? null,
        };
      }),
    };
  });
}

const isFront = (part: Part): part is 'front.left' | 'front.right' => part === 'front.left' || part === 'front.right';

/** The offset of a surface as adjusted, if the readings took enough of its prior's variance to say anything. */
function biasOf(surface: ScanSurface, { unknowns }: ScanReport, priorSd: number): ScanSurfaceFinding['bias'] {
  const offset = unknowns.find(({ name }) => name === surface);
  if (offset === undefined || 1 - (offset.sd / priorSd) ** 2 < TOLD) return null;
  return { value: towardsRoom(surface) * offset.value, sd: offset.sd };
}

function seenOf(surface: ScanSurface, cells: PlacedCells, job: Job, adjustment: Adjustment): number {
  if (surface === 'rim') return shareSeen(cells, besideWalls(job, adjustment), BESIDE_WALL);
  const { at, height } = panelledStretch(job, adjustment, surface);
  return shareSeen(
    cells,
    spaced(...at, PLACES).flatMap((a) => spaced(...height, PLACES).map((b) => [a, b] as const)),
  );
}

/** Places on the rim along the three walls. */
function besideWalls(job: Job, { alcove }: Adjustment): [number, number][] {
  const height = alcove.rim.value(0, 0);
  const [left, right] = (['left', 'right'] as const).map((side) => insideCorner(alcove, side, height).x.value);
  return [
    ...spaced(left!, right!, PLACES).map((x): [number, number] => [x, alcove.back.value(x, height)]),
    ...spaced(0, job.rim.width, PLACES).flatMap((z): [number, number][] => [
      [alcove.left.value(z, height), z],
      [alcove.right.value(z, height), z],
    ]),
  ];
}

function assumedOf(part: Part, { model }: Adjustment, assumed: readonly string[]): string[] {
  const labels = new Set(model.parameters.flatMap(({ name, label }) => (name.startsWith(`${part}.`) ? [label] : [])));
  return assumed.filter((label) => labels.has(label));
}

/** The surfaces between which a reading measures. */
function partsOf(reading: Reading): Part[] {
  switch (reading.kind) {
    case 'tape-to-corner':
      return [reading.side];
    case 'tape-to-rim':
      return ['rim'];
    case 'span':
      return ['left', 'right'];
    case 'plumb':
    case 'straightedge':
      return [reading.wall];
    case 'square':
    case 'angle':
      return ['back', reading.side];
    case 'diagonal':
      return [reading.from.side, reading.to.side];
    case 'depth':
      return [`front.${reading.wall}`];
  }
}
