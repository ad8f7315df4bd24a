export { AlcovePane } from './AlcovePane';
export { allPieces } from './all-pieces';
export { useDrawing } from './drawing-store';
export { itemTitle } from './item-title';
export { panelOf, panelTitle, panelWords } from './panel-words';
