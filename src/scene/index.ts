export { AlcoveView, type AlcoveViewProps } from './AlcoveView';
export type { Layer } from './geometry';
