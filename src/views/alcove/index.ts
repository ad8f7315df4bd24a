export { AlcovePane } from './AlcovePane';
export { allPieces } from './all-pieces';
export { mostExaggerated, useDrawing } from './drawing-store';
export { FirstPicture } from './FirstPicture';
export { itemTitle } from './item-title';
export { panelOf, panelTitle, panelWords } from './panel-words';
export { useCalm } from './useCalm';
export { useTouched, whenTouched } from './useTouched';
