import type { Job, WallName } from '../../job-file';
import type { Panel } from '../../panel';
import type { Piece } from '../../piece';
import { extent } from '../../range';

/** A rectangle to be cut roughly for a piece, mm. */
export interface Blank {
  piece: string;
  width: number;
  height: number;
  mayTurn: boolean;
  /** may be made up of several lengths */
  mayPart: boolean;
  part: { number: number; of: number };
}

const WHOLE = { number: 1, of: 1 };

/** Sizes are cut off to this, mm, so that what differs in the last bits of a computation is laid out alike. */
const STEP = 0.001;
const stepped = (mm: number): number => Math.floor(mm / STEP + 1e-3) * STEP;

/** A panel of a sheet with a grain or a pattern keeps the way it was laid. */
export function panelBlank(
  { name, flat }: Panel,
  { cutting: { margin, turn }, sheets }: Pick<Job, 'cutting' | 'sheets'>,
): Blank {
  const [left, right] = extent(flat.outline, 0);
  const [bottom, top] = extent(flat.outline, 1);
  return {
    piece: panelId(name),
    width: stepped(right - left + 2 * margin),
    height: stepped(top - bottom + 2 * margin),
    mayTurn: turn && sheets[name].grain === 'none',
    mayPart: false,
    part: WHOLE,
  };
}

/** A filler does not show, so it may lie either way and be made up of several lengths. */
export function pieceBlank(
  { id, kind, wall, axis, size }: Piece,
  { cutting: { margin, turn }, sheets }: Pick<Job, 'cutting' | 'sheets'>,
): Blank {
  const [width, height] = axis === 'x' ? [size.along, size.across] : [size.across, size.along];
  return {
    piece: id,
    width: stepped(width + 2 * margin),
    height: stepped(height + 2 * margin),
    mayTurn: kind === 'filler' || (turn && sheets[wall].grain === 'none'),
    mayPart: kind === 'filler',
    part: WHOLE,
  };
}

export const panelId = (name: WallName): string => `panels.${name}`;

/** The blank as the given number of shorter ones, each with its own margin. */
export function inParts(blank: Blank, of: number, margin: number): Blank[] {
  const long = blank.width > blank.height ? 'width' : 'height';
  const each = (blank[long] - 2 * margin) / of + 2 * margin;
  return Array.from({ length: of }, (_, k) => ({ ...blank, [long]: each, part: { number: k + 1, of } }));
}
