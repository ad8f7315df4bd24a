export { alcovePicture, type Face, type Picture } from './alcovePicture';
export { onWall, surfacesOf } from './surfaces';
