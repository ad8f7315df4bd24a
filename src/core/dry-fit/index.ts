export { dryFit, dryFitIn, type FlatTemplate, type ReadBack } from './dryFit';
export type { DryFit, EdgeFit, PieceFit } from './report';
