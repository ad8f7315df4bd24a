export { adhesiveFigure } from './adhesiveFigure';
export { alcoveFigure } from './alcoveFigure';
export { bedFigure, bedSteps } from './bedFigure';
export { type Figure, type FigureShape, type Look, type Paint, paints } from './figure';
export { holeFigure } from './holeFigure';
export { jointFigure } from './jointFigure';
