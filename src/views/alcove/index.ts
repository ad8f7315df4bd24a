export { AlcovePane } from './AlcovePane';
export { panelTitle, panelWords } from './panel-words';
