export { gainWords } from './gain-words';
export { kindWords } from './kinds';
export { WaitingLine } from './OutcomeLine';
export { ReadingRest } from './ReadingRest';
export { Readings } from './Readings';
export { RepeatWords } from './RepeatWords';
export { Sentence } from './Sentence';
