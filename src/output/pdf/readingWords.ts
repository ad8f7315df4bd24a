import { formatLength, type Job, type Reading, takenValue, type Unread } from '../../core';

/** How a reading is written in the survey record. */
export interface ReadingWords {
  what: string;
  where: string;
  note: string;
}

const kinds: Record<Reading['kind'], string> = {
  'tape-to-corner': 'tape to corner',
  'tape-to-rim': 'tape to rim',
  span: 'span between side walls',
  plumb: 'gap to plumb line',
  straightedge: 'straightedge',
  square: 'square check',
  angle: 'corner angle',
  diagonal: 'diagonal',
  depth: 'depth to front edge',
};
const walls = { back: 'back wall', left: 'left wall', right: 'right wall' };

/** Words for a row of the adjustment by its id (`r7/0` is the first gap of the plumb reading `r7`). */
export function readingWords(rowId: string, job: Job): ReadingWords {
  const found = findReading(rowId, job);
  if (!found) return { what: '', where: '', note: '' };
  const { reading, gap } = found;
  return { what: kinds[reading.kind], where: where(reading, gap, placesOf(job)), note: noteOf(reading) };
}

/** Words for a reading that is still to be taken, all gaps of a hung line together. */
export function unreadWords(reading: Unread, job: Job): Omit<ReadingWords, 'note'> {
  const places = placesOf(job);
  const heights =
    reading.kind === 'plumb' ? reading.gaps.slice(1).map(({ height }) => `, ${places.height(height)}`) : [];
  return { what: kinds[reading.kind], where: `${where(reading, 0, places)}${heights.join('')}` };
}

function noteOf(reading: Reading): string {
  const times = reading.kind === 'plumb' ? 1 : takenValue(reading).times;
  return [times > 1 && `mean of ${times}`, reading.note].filter(Boolean).join('; ');
}

function findReading(rowId: string, job: Job): { reading: Reading; gap: number } | null {
  const whole = job.readings.find(({ id }) => id === rowId);
  if (whole) return { reading: whole, gap: 0 };
  const slash = rowId.lastIndexOf('/');
  const reading = job.readings.find(({ id }) => id === rowId.slice(0, slash));
  return reading ? { reading, gap: Number(rowId.slice(slash + 1)) } : null;
}

/** Places on the walls, in words. */
export interface Places {
  length: (mm: number) => string;
  height: (mm: number) => string;
  /** `at` of a wall: across from the plumb line on the back wall, out from the back wall on a side wall */
  at: (wall: 'back' | 'left' | 'right', mm: number) => string;
}

export function placesOf(job: Job): Places {
  const length = (mm: number) => formatLength(mm, { unit: job.display, denominator: 16 });
  return {
    length,
    height: (mm) => (mm === 0 ? 'at the level line' : `${length(Math.abs(mm))} ${mm < 0 ? 'below' : 'above'} level`),
    at: (wall, mm) => {
      if (wall !== 'back') return `${length(mm)} out`;
      return mm === 0 ? 'at the plumb line' : `${length(Math.abs(mm))} ${mm < 0 ? 'left' : 'right'} of plumb`;
    },
  };
}

function where(reading: Unread, gap: number, { length, height, at }: Places): string {
  switch (reading.kind) {
    case 'tape-to-corner':
      return `${reading.side} corner, ${height(reading.height)}`;
    case 'tape-to-rim':
      return `${walls[reading.wall]}, ${at(reading.wall, reading.at)}`;
    case 'span':
      return `${height(reading.height)}, ${length(reading.at)} out`;
    case 'plumb':
      return `${walls[reading.wall]}, ${at(reading.wall, reading.at)}, ${height(reading.gaps[gap]?.height ?? 0)}`;
    case 'straightedge': {
      const end = (station: { at: number; height: number }) =>
        `${at(reading.wall, station.at)} ${height(station.height)}`;
      return `${walls[reading.wall]}, ${end(reading.from)} to ${end(reading.to)}`;
    }
    case 'square':
      return `${reading.side} corner, ${height(reading.height)}, legs ${length(reading.alongBack)} and ${length(reading.alongSide)}`;
    case 'angle':
      return `${reading.side} corner, ${height(reading.height)}`;
    case 'diagonal':
      return `${reading.from.side} corner ${height(reading.from.height)} to ${reading.to.side} corner ${height(reading.to.height)}`;
    case 'depth':
      return `${walls[reading.wall]}, ${height(reading.height)}`;
  }
}

/** The value of a row with its unit; small ones (gaps, straightedge, misfits) as precisely as they were read. */
export function valueWords(kind: Reading['kind'], value: number, job: Job): string {
  if (kind === 'angle') return `${value.toFixed(1)}°`;
  return formatLength(value, { unit: job.display, denominator: 32 });
}

/** A misfit: mm to a tenth whatever the job is shown in, since it is smaller than any fraction on a tape. */
export function misfitWords(kind: Reading['kind'], value: number): string {
  const text = Math.abs(value).toFixed(kind === 'angle' ? 2 : 1);
  const sign = Number(text) === 0 ? '' : value < 0 ? '−' : '+';
  return `${sign}${text}${kind === 'angle' ? '°' : ' mm'}`;
}
