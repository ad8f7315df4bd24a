export { BedBench } from './BedBench';
