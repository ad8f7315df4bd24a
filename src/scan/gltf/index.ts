export { readGltf } from './read-gltf';
