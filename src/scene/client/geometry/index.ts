export { type Dimension, dimensionsOf } from './dimensions';
export { fixtureSolid } from './fixtures';
export { type FlatArea, flatArea, flatUv } from './flat-uv';
export { type Room, roomAround } from './room';
export { sealantMesh } from './sealant';
