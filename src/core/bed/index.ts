export { bedReport } from './bedReport';
export { bedProblems } from './problems';
export type { BedReport, Contact, Convergence, Patch, PlaceOnBed, Shim } from './report';
