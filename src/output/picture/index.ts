export { alcovePicture, type Face, type Picture } from './alcovePicture';
