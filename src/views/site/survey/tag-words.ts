import { type AdjustmentReport, type ReadingReport, takenValue } from '../../../core';
import type { Draft, DraftReading } from '../../../job';
import type { Lengths } from '../../parts';
import { fieldsOf, unreadIn } from './fields';
import type { SurveyPlace } from './place';

export type PlaceState = 'empty' | 'unfinished' | 'taken' | 're-measure' | 'off';

/** How a place stands. */
export function stateOf(
  place: SurveyPlace,
  adjustment: AdjustmentReport | undefined,
  isUnfinished: (list: SurveyPlace['list'], id: string) => boolean,
): PlaceState {
  if (place.id === null) return 'empty';
  if (place.list === 'readings' && place.where.off) return 'off';
  if (isUnfinished(place.list, place.id)) return 'unfinished';
  const doubted = (row: ReadingReport) => row.flag === 're-measure' && row.id.split('/')[0] === place.id;
  return place.list === 'readings' && adjustment?.readings.some(doubted) ? 're-measure' : 'taken';
}

/** A bow too small to tell, mm. */
const FLAT = 0.2;

export interface TagWords {
  /** in a few characters, for the drawing */
  short: string;
  /** in full */
  long: string;
  /** 1 for a hollow, −1 for a hump */
  bow: 1 | -1 | 0;
}

const nothing: TagWords = { short: '', long: '', bow: 0 };

/** Of what is typed, so many characters stand on the drawing. */
const MOST_TYPED = 9;

/** What is typed at a place and does not read as a number yet: the number before it does not count any more. */
export function unfinishedWords(place: SurveyPlace, typed: Draft['typed'], lengths: Lengths): TagWords {
  const unread = fieldsOf(place).map((field) => unreadIn(typed, place, field)?.trim());
  if (place.id === null || unread.every((text) => text === undefined)) return tagWords(place, lengths);
  const texts = unread.filter((text) => text !== undefined && text !== '');
  const quoted = texts.map((text) => `“${text}”`);
  if (place.list === 'fixtures') return { ...nothing, short: place.where.id, long: quoted.join(', ') };
  if (place.where.kind === 'plumb') {
    const words = gapsWords(place.where, (gap) => unread[gap] !== undefined);
    return { ...words, long: [words.long, ...quoted].join(', ') };
  }
  return { ...nothing, short: cutShort(texts[0] ?? '…'), long: quoted.join(', ') };
}

const cutShort = (text: string) => (text.length > MOST_TYPED ? `${text.slice(0, MOST_TYPED - 1)}…` : text);

/** What was read at a place. */
export function tagWords({ list, where, times }: SurveyPlace, lengths: Lengths): TagWords {
  if (list === 'fixtures') {
    const { id, aboveRim } = where;
    return { ...nothing, short: id, long: aboveRim === undefined ? '' : `${lengths.text(aboveRim)} above the rim` };
  }
  return 'id' in where ? readingWords(where, times, lengths) : nothing;
}

function readingWords(reading: DraftReading, times: number, lengths: Lengths): TagWords {
  if (reading.kind === 'plumb') return gapsWords(reading, () => false);
  if (reading.value === undefined) return nothing;
  const repeats = (reading.repeats ?? []).filter((each) => each !== undefined);
  const { mean, times: taken } = takenValue({ value: reading.value, repeats });
  const bow = reading.kind !== 'straightedge' || Math.abs(mean) < FLAT ? 0 : mean > 0 ? 1 : -1;
  const side = bow === 0 ? '' : bow > 0 ? 'hollow ' : 'hump ';
  const short = shortValue(reading, mean, lengths);
  const often = taken > 1 ? `, mean of ${taken}` : '';
  const more = times > taken ? `, to be taken ${times - taken === 1 ? 'once' : `${times - taken} times`} more` : '';
  return {
    bow,
    short: `${short}${times > taken ? ` +${times - taken}` : taken > 1 ? ` ×${taken}` : ''}`,
    long: `${side}${reading.kind === 'straightedge' ? lengths.fine(Math.abs(mean)) : longValue(reading, mean, lengths)}${often}${more}`,
  };
}

function gapsWords(reading: DraftReading & { kind: 'plumb' }, isUnread: (gap: number) => boolean): TagWords {
  const { gaps = [] } = reading;
  const read = gaps.filter(({ value }, i) => value !== undefined && !isUnread(i)).length;
  const short = read === gaps.length ? `${read} gaps` : `${read} of ${gaps.length}`;
  return { ...nothing, short, long: read === gaps.length ? short : `${short} gaps` };
}

function shortValue({ kind }: DraftReading, value: number, lengths: Lengths): string {
  if (kind === 'straightedge' && Math.abs(value) < FLAT) return 'flat';
  if (kind === 'angle') return `${value.toFixed(1)}°`;
  return lengths.resting(kind === 'straightedge' ? Math.abs(value) : value);
}

const longValue = ({ kind }: DraftReading, value: number, lengths: Lengths): string =>
  kind === 'angle' ? `${value.toFixed(1)}°` : lengths.fine(value);
