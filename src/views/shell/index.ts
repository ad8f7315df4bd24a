export { App } from './App';
export { keepAtHand } from './updates';
