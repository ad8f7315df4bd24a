export { type CalendarFile, orderOfWorkCalendar } from './calendar';
export {
  capital,
  geometryShapes,
  type PanelDrawing,
  type PieceDrawing,
  panelDrawing,
  pieceDrawing,
  pieceGeometry,
  pieceShapes,
  pieceTemplateNotes,
  type Shape,
  shapeBounds,
  spread,
  templateShapes,
  type View,
} from './drawing';
export { adhesiveFigure, type Figure, jointFigure, paints } from './figure';
export { jobDrawings, pieceDrawings } from './jobDrawings';
export {
  checklistPdf,
  dryFitted,
  fieldSheetPdf,
  type JobFilesOptions,
  jobFiles,
  jobPackPdf,
  surveyRecordPdf,
} from './jobFiles';
export type { OutputFonts } from './outputFonts';
export type { PaperName } from './pdf';
export { alcovePicture, type Picture } from './picture';
export { amountText as priceAmountText, eachText, type QuoteWords, quantityText, quoteWords } from './quote';
export { quoteFile } from './quoteFile';
export { resultJson } from './resultJson';
export { amountText, shoppingListCsv } from './shoppingList';
export { panelDxf, panelSvg, pieceDxf, pieceSvg } from './template';
export { type TemplateFiles, templateFiles } from './templateFiles';
export {
  type BedLine,
  bedLines,
  bedText,
  carriedName,
  cartridgeName,
  cartridgeWords,
  counted,
  dayWords,
  degrees,
  dryFitFault,
  dryFitWords,
  durationWords,
  fillerWords,
  hidingSentence,
  hidingWords,
  inputAmount,
  jointRuns,
  jointWidthAlong,
  movementBasis,
  movementUse,
  offcutWords,
  passageNames,
  passageWords,
  pieceTitle,
  placedWords,
  placesInTheWay,
  ruleWords,
  scanAssumedWords,
  scanSurfaceLines,
  scanSurfaceNames,
  sizeWords,
  stockWords,
  strainText,
  timeWords,
  type UnfoldingWords,
  unfoldingWords,
  unplacedWords,
  usedWords,
  verdictWords,
  type WayWords,
  wayWords,
  whenWords,
} from './words';

/** Fonts for the job pack from the app's own host. Browser only. */
export const loadBrowserFonts = async (): Promise<import('./outputFonts').OutputFonts> =>
  (await import('./browserFonts')).browserFonts();
export type { QrCode, ReadLink, ShareOptions } from './share';
export { loadSharing } from './shareLinks';
