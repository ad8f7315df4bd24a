export { App } from './shell';
