export { fillerWords, inputAmount, jointWidthWords } from './materialWords';
export { capital, pieceTitle } from './pieceWords';
export { offcutWords, placedWords, sizeWords } from './sheetWords';
export { durationWords, whenWords } from './workWords';
