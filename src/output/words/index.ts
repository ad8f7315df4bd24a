export { hidingWords } from './choiceWords';
export { dryFitFault, dryFitWords, misfitText } from './dryFitWords';
export { fillerWords, inputAmount, jointWidthWords } from './materialWords';
export { capital, pieceTitle } from './pieceWords';
export { offcutWords, placedWords, sizeWords } from './sheetWords';
export { dayWords, durationWords, timeWords, whenWords } from './workWords';
