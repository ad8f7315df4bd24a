export { AlcovePane } from './AlcovePane';
export { useDrawing } from './drawing-store';
export { panelTitle, panelWords } from './panel-words';
