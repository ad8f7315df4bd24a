export { kindWords } from './kinds';
export { WaitingLine } from './OutcomeLine';
export { Readings } from './Readings';
