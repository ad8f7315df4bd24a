export { Elevation } from './Elevation';
