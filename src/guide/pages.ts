import type { Page } from './page';

/** The pages for those who do the work, in the order of the work, then those about how it is worked out and held. */
export const pageNames = [
  'start',
  'site',
  'bench',
  'work',
  'client',
  'keeping',
  'method',
  'figures',
  'access',
] as const;
export type PageName = (typeof pageNames)[number];

export interface GuidePage {
  /** in the list of pages */
  words: string;
  /** part of the user's guide, which can be printed as a whole */
  user: boolean;
  load(): Promise<Page>;
}

const pageOf = ({ page }: { page: Page }): Page => page;

export const guidePages: Record<PageName, GuidePage> = {
  start: { words: 'First alcove', user: true, load: () => import('./start.md').then(pageOf) },
  site: { words: 'At the alcove', user: true, load: () => import('./site.md').then(pageOf) },
  bench: { words: 'At the saw', user: true, load: () => import('./bench.md').then(pageOf) },
  work: { words: 'Order of work', user: true, load: () => import('./work.md').then(pageOf) },
  client: { words: 'With the client', user: true, load: () => import('./client.md').then(pageOf) },
  keeping: { words: 'Jobs and files', user: true, load: () => import('./keeping.md').then(pageOf) },
  method: { words: 'How it is worked out', user: false, load: () => import('./method.md').then(pageOf) },
  figures: { words: 'What the bench figures mean', user: false, load: () => import('./figures.md').then(pageOf) },
  access: { words: 'Accessibility', user: false, load: () => import('./access.md').then(pageOf) },
};
