export { amountText, eachText, quantityText } from './priceWords';
export { type QuoteWords, quoteWords } from './quoteWords';
