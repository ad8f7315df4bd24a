export { type ApronPoint, apronAt, apronLine, farthestOut } from './apron';
export { fitLegs, LEAST_LEG } from './fitLegs';
export { splitContour } from './splitContour';
