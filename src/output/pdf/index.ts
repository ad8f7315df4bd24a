export { checklist } from './checklist';
export { fieldSheet } from './fieldSheet';
export { type JobPackOptions, jobPack } from './jobPack';
export { type PaperName, papers } from './paper';
export { surveyRecord } from './surveyRecord';
