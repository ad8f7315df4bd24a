export { bedAt, bedWith } from './bed';
export { bendingStrain, principalCurvature } from './bending';
export { intoRoom } from './resting';
export { seatFigures } from './seatFigures';
export { type Seat, type Seating, seatPanels, shimPlane } from './seatPanels';
export { type Moves, movesOf } from './splineSeat';
