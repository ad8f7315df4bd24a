export { browserJournal } from './browser-journal';
export { type Journal, noJournal } from './journal';
export { type Standing, standing } from './standing';
