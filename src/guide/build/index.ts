export { guidePages } from './guidePages.ts';
export { type PageSource, setPage } from './setPage.ts';
