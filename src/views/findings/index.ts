export { Figures } from './Figures';
export { Problems } from './Problems';
