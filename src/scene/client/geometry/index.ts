export { type Dimension, dimensionsOf } from './dimensions';
export { fixtureSolid } from './fixtures';
export { type FlatArea, flatArea, flatUv } from './flat-uv';
export { type DrawnLean, leansOf } from './leans';
export { type Room, roomAround } from './room';
export { sealantMesh } from './sealant';
export { throughOpening } from './through-opening';
