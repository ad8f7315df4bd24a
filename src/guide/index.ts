export type { Page } from './page';
export { type GuidePage, guidePages, type PageName, pageNames } from './pages';
