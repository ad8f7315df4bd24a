export { HeatPane } from './HeatPane';
