export { Figures } from './Figures';
export { wallTitle } from './figures';
export { Problems } from './Problems';
export { Verdicts } from './Verdicts';
