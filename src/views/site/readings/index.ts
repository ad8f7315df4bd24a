export { kindWords } from './kinds';
export { Readings } from './Readings';
