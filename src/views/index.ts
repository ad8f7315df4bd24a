export { App, keepAtHand } from './shell';
