export { bringingIn, carryingFirst } from './carryingCautions';
export { completeElliptic, type Elastica, elastica } from './elastica';
export { gettingIn } from './gettingIn';
export { movePoint } from './movePoint';
export type { Carried, GettingIn, Passage, Pose, Way, WayIn } from './report';
export { longestRoundCorner } from './roundCorner';
export { throughOpening } from './throughOpening';
