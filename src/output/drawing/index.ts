export { capital } from './capital';
export { clipStroke } from './clipStroke';
export type {
  ControlLine,
  EdgeDrawing,
  HoleDrawing,
  MarkDrawing,
  Measure,
  PanelDrawing,
  Place,
  Strip,
  View,
} from './drawing';
export { panelTitle } from './edgeWords';
export { flatAxes } from './flatAxes';
export { geometryShapes } from './geometryShapes';
export { holeLines, markLines } from './labelLines';
export { type Lengths, lengthsOf } from './lengths';
export { edgeSentence, templateNotes } from './notes';
export { panelDrawing } from './panelDrawing';
export {
  type PieceDrawing,
  pieceDrawing,
  pieceGeometry,
  pieceShapes,
  pieceTemplateNotes,
  shortened,
} from './piece';
export { placeShapes } from './placeShapes';
export { around, corners, grown, holds, type Rectangle } from './rectangle';
export {
  type Circle,
  type Layer,
  layers,
  line,
  type Polyline,
  type Shape,
  type Words,
  words,
} from './shape';
export { shapeBounds } from './shapeBounds';
export { spread } from './spread';
export { type TemplateOptions, templateShapes } from './templateShapes';
export { type MeasureText, wrapText } from './textWidth';
