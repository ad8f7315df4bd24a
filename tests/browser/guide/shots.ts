import type { Locator, Page } from '@playwright/test';
import { goTo, jobMenu, openApp, valueField } from '../app';
import { scannedPly } from '../scannedFile';

export interface Shot {
  name: string;
  /** width and height of the window, CSS px */
  size: readonly [number, number];
  at: string;
  /** what is done before the picture */
  before?(page: Page): Promise<unknown>;
  /** what is shown; the window unless given */
  of?(page: Page): Locator;
  /** most of its height, CSS px */
  atMost?: number;
}

const PHONE = [390, 844] as const;
const DESK = [1280, 860] as const;
const TABLET = [1024, 768] as const;

const card = (title: string | RegExp) => (page: Page) =>
  page
    .locator('section')
    .filter({ has: page.getByRole('heading', { name: title, exact: true }) })
    .last();

const touched = async (page: Page) => {
  await page.mouse.move(3, 3);
  await page.mouse.move(5, 5);
};

/** The pictures of the guide, from the demo alcove and from a new job. */
export const shots: readonly Shot[] = [
  {
    name: 'new-job',
    size: PHONE,
    at: '#site/readings',
    before: async (page) => {
      await jobMenu(page, 'New job');
      await page.getByText('Read next').waitFor();
    },
  },
  {
    name: 'entry',
    size: PHONE,
    at: '#site/readings',
    before: async (page) => {
      await jobMenu(page, 'New job');
      await page.getByRole('button', { name: 'Enter it' }).click();
      const entry = page.getByTestId('entry');
      for (const key of ['2', '9']) await entry.getByRole('button', { name: key, exact: true }).click();
      await entry.getByRole('button', { name: '7/16', exact: true }).click();
    },
  },
  { name: 'walls', size: DESK, at: '#site/readings', of: card('On the walls') },
  {
    name: 'suspect',
    size: TABLET,
    at: '#site/readings',
    before: async (page) => {
      await valueField(page, 'corner-left-2').fill('28 1/16');
      await page.keyboard.press('Tab');
      await page
        .getByText(/re-measure|may be misread/i)
        .first()
        .waitFor();
    },
    of: (page) =>
      page
        .locator('li')
        .filter({ has: valueField(page, 'corner-left-2') })
        .last(),
  },
  { name: 'true', size: [1280, 1000], at: '#site/truth' },
  { name: 'verdicts', size: DESK, at: '#site/truth', of: card('What it means for the panels'), atMost: 700 },
  {
    name: 'scan',
    size: [1280, 900],
    at: '#site/scan',
    before: async (page) => {
      await page
        .getByTestId('scan-file')
        .setInputFiles({ name: 'bath.ply', mimeType: 'application/octet-stream', buffer: scannedPly() });
      await page.getByRole('button', { name: 'Find the walls' }).click();
      await page.getByRole('list', { name: 'Parts of the scan' }).waitFor();
      await touched(page);
    },
  },
  { name: 'holes', size: DESK, at: '#site/holes', of: card('Holes for fixtures'), atMost: 460 },
  { name: 'template', size: DESK, at: '#bench/right', of: card(/^Right side panel/) },
  { name: 'marks', size: DESK, at: '#bench/right', of: card('Edges and marks'), atMost: 640 },
  { name: 'trim', size: DESK, at: '#bench/trim.top', of: card('Top piece') },
  { name: 'shelf', size: DESK, at: '#bench/shelves', of: card(/^Shelf/), atMost: 520 },
  { name: 'sheets', size: DESK, at: '#bench/sheets', of: card('Sheets'), atMost: 640 },
  {
    name: 'sits',
    size: DESK,
    at: '#bench/beds.right',
    before: (page) => page.locator('canvas').first().waitFor(),
    of: card(/^How it sits/),
  },
  {
    name: 'way',
    size: DESK,
    at: '#bench/ways.back',
    before: (page) => page.locator('canvas').first().waitFor(),
    of: card(/^Getting in/),
  },
  {
    name: 'dry-fit',
    size: DESK,
    at: '#bench/right',
    before: (page) => page.getByRole('button', { name: 'Try the templates in the alcove' }).click(),
    of: card('Virtual dry fit'),
    atMost: 640,
  },
  { name: 'work', size: DESK, at: '#van/work', of: card('Order of work'), atMost: 560 },
  { name: 'buy', size: DESK, at: '#van/materials', of: card('What to buy') },
  { name: 'look', size: DESK, at: '#client/look', before: touched },
  { name: 'price', size: DESK, at: '#client/price', of: card('Price'), atMost: 760 },
  { name: 'send', size: DESK, at: '#client/send', of: (page) => page.getByRole('tabpanel').first(), atMost: 560 },
  { name: 'jobs', size: TABLET, at: '#jobs' },
];

export async function prepare(page: Page, { at, before }: Shot): Promise<void> {
  await openApp(page, at === '#jobs' ? '' : at);
  if (at === '#jobs') await goTo(page, at);
  await before?.(page);
}
