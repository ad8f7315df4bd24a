export { type AddedPhoto, type Photo, type Photos, photosIn } from './photos';
