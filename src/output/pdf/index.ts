export { checklist } from './checklist';
export { plannedFieldSheet } from './fieldSheet';
export { type JobPackOptions, jobPack } from './jobPack';
export { type PaperName, papers } from './paper';
export { type QuoteOptions, quotePdf } from './quote';
export { surveyRecord } from './surveyRecord';
