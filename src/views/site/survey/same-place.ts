import type { Unread } from '../../../core';
import type { DraftReading } from '../../../job';

/** A tape held this close to the planned place serves as well, mm. */
const NEAR = 30;

const near = (a: number | undefined, b: number | undefined): boolean =>
  a !== undefined && b !== undefined && Math.abs(a - b) <= NEAR;

const nearStation = (a: { at?: number; height?: number } | undefined, b: { at: number; height: number }): boolean =>
  near(a?.at, b.at) && near(a?.height, b.height);

const nearCorner = (a: { side?: string; height?: number } | undefined, b: { side: string; height: number }): boolean =>
  a?.side === b.side && near(a.height, b.height);

type Matches = { [K in Unread['kind']]: (reading: Of<K>, planned: Extract<Unread, { kind: K }>) => boolean };
type Of<K> = Extract<DraftReading, { kind: K }>;

const matches: Matches = {
  'tape-to-corner': (a, b) => a.side === b.side && near(a.height, b.height),
  'tape-to-rim': (a, b) => a.wall === b.wall && near(a.at, b.at),
  span: (a, b) => near(a.height, b.height) && near(a.at, b.at),
  plumb: (a, b) =>
    a.wall === b.wall &&
    near(a.at, b.at) &&
    b.gaps.every(({ height }) => a.gaps?.some((gap) => near(gap.height, height))),
  straightedge: (a, b) =>
    a.wall === b.wall &&
    ((nearStation(a.from, b.from) && nearStation(a.to, b.to)) ||
      (nearStation(a.from, b.to) && nearStation(a.to, b.from))),
  square: (a, b) => a.side === b.side && near(a.height, b.height),
  angle: (a, b) => a.side === b.side && near(a.height, b.height),
  diagonal: (a, b) =>
    (nearCorner(a.from, b.from) && nearCorner(a.to, b.to)) || (nearCorner(a.from, b.to) && nearCorner(a.to, b.from)),
  depth: (a, b) => a.wall === b.wall && near(a.height, b.height),
};

/** True where a reading was taken at the planned place, or as good as. */
export const isAt = (reading: DraftReading, planned: Unread): boolean =>
  reading.kind === planned.kind &&
  (matches[planned.kind] as (reading: DraftReading, planned: Unread) => boolean)(reading, planned);
