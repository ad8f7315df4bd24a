export { App } from './shell/App';
