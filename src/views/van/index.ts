export { Van } from './Van';
