export { hidingSentence, hidingWords } from './choiceWords';
export { dryFitFault, dryFitWords, misfitText } from './dryFitWords';
export { cartridgeName, cartridgeWords, jointRuns, jointWidthAlong, movementBasis, movementUse } from './jointWords';
export { fillerWords, inputAmount } from './materialWords';
export { capital, pieceTitle } from './pieceWords';
export { offcutWords, placedWords, sizeWords } from './sheetWords';
export { figureWords, judgementWords, ruleWords, verdictWords } from './verdictWords';
export { carriedName, degrees, passageNames, passageWords, type WayWords, wayWords } from './wayWords';
export { dayWords, durationWords, timeWords, whenWords } from './workWords';
