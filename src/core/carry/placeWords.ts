import type { Passage } from './report';

/** Each place on the way, as the object of a sentence. */
export const placeWords: Record<Passage['place'], string> = {
  door: 'the door',
  corridor: 'the turn of the corridor',
  stair: 'the stair',
  landing: 'the landing of the stair',
  standing: 'upright under the ceiling',
};
