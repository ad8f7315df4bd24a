export { dryFit, dryFitIn, type FlatTemplate, type ReadBack } from './dryFit';
export { DRY_FIT_TOLERANCE, type DryFit, type EdgeFit, type PieceFit } from './report';
