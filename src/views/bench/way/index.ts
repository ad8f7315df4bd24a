export { WayBench } from './WayBench';
