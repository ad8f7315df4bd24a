import type { Fixture, ReadingKind, Unread } from '../core';
import type { DraftFixture, DraftJob, DraftReading, DraftStud } from './draft';

/** The first of r1, r2, … (f1, f2, …) that no item has. */
function freeId(items: readonly { id: string }[], letter: string): string {
  const taken = new Set(items.map(({ id }) => id));
  let n = items.length + 1;
  while (taken.has(`${letter}${n}`)) n++;
  return `${letter}${n}`;
}

/** A reading with the choices made as usual and every number still to be entered. */
export function newReading(kind: ReadingKind, job: DraftJob): DraftReading {
  const id = freeId(job.readings, 'r');
  switch (kind) {
    case 'tape-to-corner':
    case 'square':
    case 'angle':
      return { id, kind, side: 'left' };
    case 'tape-to-rim':
      return { id, kind, wall: 'back' };
    case 'span':
      return { id, kind };
    case 'plumb':
      return { id, kind, wall: 'left', gaps: [{}, {}, {}] };
    case 'straightedge':
      return { id, kind, wall: 'back' };
    case 'diagonal':
      return { id, kind, from: { side: 'left' }, to: { side: 'right' } };
    case 'depth':
      return { id, kind, wall: 'left' };
  }
}

/** A reading at a place, its values still to be entered. */
export const placedReading = (place: Unread, job: DraftJob): DraftReading => ({
  ...structuredClone(place),
  id: freeId(job.readings, 'r'),
});

/** The name itself, or with the first number from 2 on that no item has. */
function freeName(items: readonly { id: string }[], name: string): string {
  const taken = new Set(items.map(({ id }) => id));
  if (!taken.has(name)) return name;
  let n = 2;
  while (taken.has(`${name} ${n}`)) n++;
  return `${name} ${n}`;
}

/** A fixture on the wet wall with its place still to be entered. */
export function newFixture(kind: Fixture['kind'], job: DraftJob): DraftFixture {
  const id = freeName(job.fixtures, kind === 'other' ? 'hole' : kind.replaceAll('-', ' '));
  const wall = job.fit.wetWall;
  return wall === 'back' ? { id, kind, wall } : { id, kind, wall, fromBackOf: 'panel' };
}

/** A stud behind the wet wall with its place still to be entered. */
export const newStud = ({ studs, fit }: DraftJob): DraftStud => ({
  id: freeId(studs, 's'),
  wall: fit.wetWall,
  width: 38,
});
