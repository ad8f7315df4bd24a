export { AlcovePane } from './AlcovePane';
export { allPieces } from './all-pieces';
export { useDrawing } from './drawing-store';
export { FactorSlider } from './FactorSlider';
export { FirstPicture } from './FirstPicture';
export { panelOf, panelTitle, panelWords } from './panel-words';
export { useCalm } from './useCalm';
