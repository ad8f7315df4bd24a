import type { Page } from '@playwright/test';

/** What went wrong on a page while it was watched. */
export interface Watched {
  /** Uncaught errors and console errors. */
  errors: string[];
  /** Requests to a host other than the page's own. */
  strangers: string[];
}

/** Watches a page from now on. Call it before `page.goto`. */
export function watch(page: Page, baseURL: string): Watched {
  const watched: Watched = { errors: [], strangers: [] };
  const { host } = new URL(baseURL);
  page.on('pageerror', (error) => watched.errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') watched.errors.push(message.text());
  });
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && url.host !== host) watched.strangers.push(request.url());
  });
  return watched;
}
