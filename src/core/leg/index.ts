export { type ApronPoint, apronAt, apronLine, farthestOut } from './apron';
export { fitLegs } from './fitLegs';
export { splitContour } from './splitContour';
