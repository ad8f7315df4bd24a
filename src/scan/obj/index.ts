export { readObj } from './read-obj';
