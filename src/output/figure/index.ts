export { adhesiveFigure } from './adhesiveFigure';
export { alcovePicture } from './alcovePicture';
export { type Figure, type FigureShape, type Look, type Paint, paints } from './figure';
export { holeFigure } from './holeFigure';
export { jointFigure } from './jointFigure';
