export { applyChoice } from './applyChoice';
export { type Hiding, type HidingPair, hidingOf, hidingPairs } from './hiding';
