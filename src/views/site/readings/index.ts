export { kindWords } from './kinds';
export { Readings } from './Readings';
export { WaitingLine } from './OutcomeLine';
