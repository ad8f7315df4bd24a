export { applyChoice } from './applyChoice';
export { type Hiding, type HidingPair, hidingOf, hidingPairs } from './hiding';
export { SHELF_COUNTS, SHELF_SIZES, type ShelfSet, shelfSetOf, shelvesOf } from './shelfSet';
