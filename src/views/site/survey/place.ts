import type { Unread } from '../../../core';
import type { DraftFixture, DraftReading } from '../../../job';

/** Where a reading is taken, as far as it is known. */
export type Where = DraftReading | Unread;

/** A place of the survey: a reading, a fixture, or where a reading is still to be taken. */
export type SurveyPlace =
  | { key: string; list: 'readings'; id: string; where: DraftReading; times: number }
  | { key: string; list: 'readings'; id: null; where: Unread; times: number }
  | { key: string; list: 'fixtures'; id: string; where: DraftFixture; times: 1 };

export const keyOfItem = (list: 'readings' | 'fixtures', id: string): string => `${list}/${id}`;
export const keyOfEmpty = (where: Unread, turn: number): string => `empty/${JSON.stringify(where)}/${turn}`;
