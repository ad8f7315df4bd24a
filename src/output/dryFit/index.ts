export { dryFitOf } from './dryFitOf';
export { readTemplate } from './readTemplate';
