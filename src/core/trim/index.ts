export { halfJoint } from './angle';
export { ROOM } from './fillerPiece';
export { type FittedTrim, fitTrim } from './fitTrim';
export { goesToFloor } from './foot';
export { type MitreLine, mitreLine } from './mitreLine';
export { outerLine } from './outerLine';
export { standsAbove, type TrimLines, trimLines } from './site';
