export { developMap } from './developMap';
export type { FlatMap } from './flatMap';
export { planeMap } from './planeMap';
export { gridOver, type Region } from './region';
export { toWall } from './toWall';
