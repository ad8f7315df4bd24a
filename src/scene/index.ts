export { AlcoveView, type AlcoveViewProps } from './AlcoveView';
