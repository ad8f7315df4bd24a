export { bedAt, bedWith } from './bed';
export { bendingStrain, largestCurvature, principalCurvature } from './bending';
export { intoRoom } from './resting';
export { seatFigures } from './seatFigures';
export { type Seat, type Seating, seatPanels, shimPlane, stiffnessOf } from './seatPanels';
export { type Moves, movesOf } from './splineSeat';
