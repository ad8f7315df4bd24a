export { finishes, type NamedFinish, nameOfFinish } from './finishes';
export { lookWords } from './lookWords';
