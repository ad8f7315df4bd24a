export { type Cluster, clustersOf } from './clusters';
export { pointsInBox, type Range } from './in-box';
export { labelCounts, pointsLabelled } from './labelled';
export { type Relabelled, relabel, takeBack } from './relabel';
