export { readPly } from './read-ply';
