export { Site } from './Site';
