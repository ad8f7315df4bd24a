export { alcovePicture, type Face, type Picture } from './alcovePicture';
export { type Surfaces, surfacesOf } from './surfaces';
