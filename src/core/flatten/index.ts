export { developMap } from './develop';
export { type FlatMap, planeMap, type Region } from './flatMap';
