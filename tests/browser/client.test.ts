import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { goTo, kept, openApp, touch } from './app';
import { coloursOf } from './colours';
import { watch } from './watch';

test.use({ viewport: { width: 420, height: 640 } });
// Drawn in software, each of these pictures takes seconds, and longer the larger it is.
test.slow();

const stage = (page: Page) => page.getByTestId('finished').locator('canvas');

test('the finished alcove is drawn, from three places, before and after, with dimensions', async ({
  page,
  baseURL,
}) => {
  const watched = watch(page, baseURL ?? '');
  await openClient(page, 'look');
  await expect.poll(() => coloursOf(stage(page)), { timeout: 60_000 }).toBeGreaterThan(20);
  for (const place of ['At eye height', 'From the tub', 'From the door']) {
    await page.getByRole('radio', { name: place }).click();
    await expect(page.getByRole('radio', { name: place })).toBeChecked();
  }
  await page.getByLabel('Dimensions').check();
  await expect(
    page
      .getByTestId('finished')
      .getByText(/^\d+.*±/)
      .first(),
  ).toBeVisible();
  await page.getByRole('radio', { name: 'Both' }).click();
  await expect(page.getByRole('slider', { name: 'Line between Before and After' })).toBeVisible();
  const [picture] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Picture: PNG' }).click(),
  ]);
  expect((await readFile(await picture.path())).subarray(1, 4).toString()).toBe('PNG');
  expect(watched.errors).toEqual([]);
  expect(watched.strangers).toEqual([]);
});

test('another finish changes the picture, its name and the price', async ({ page }) => {
  await openClient(page, 'look');
  await expect(page.getByRole('button', { name: 'Saltpan' })).toHaveAttribute('aria-pressed', 'true');
  await page.getByRole('button', { name: 'Mill race' }).click();
  await expect(page.getByRole('button', { name: 'Mill race' })).toHaveAttribute('aria-pressed', 'true');
  await goTo(page, '#client/price');
  const back = page.getByRole('row').filter({ hasText: 'Sheet as for the back panel, ribbed' });
  await expect(back).toContainText('$414.00');
});

test('another name and another side paint no finish anew', async ({ page }) => {
  // Each picture of a finish ends with its smaller copies.
  await page.addInitScript(() => {
    const { generateMipmap } = WebGL2RenderingContext.prototype;
    WebGL2RenderingContext.prototype.generateMipmap = function (...args) {
      const { dataset } = document.documentElement;
      dataset.painted = String(1 + Number(dataset.painted ?? 0));
      generateMipmap.apply(this, args);
    };
  });
  const painted = async (more: number) => {
    let last = 0;
    const still = async () => {
      const now = Number(await page.locator('html').getAttribute('data-painted'));
      const same = now > more && now === last;
      last = now;
      return same;
    };
    await expect.poll(still, { intervals: [1000], timeout: 60_000 }).toBe(true);
    return last;
  };
  await openClient(page, 'look');
  const first = await painted(0);
  await page.getByRole('textbox', { name: 'Name of the job' }).fill('Under another name');
  await page.getByRole('radio', { name: 'Both' }).click();
  await expect(page.getByRole('slider', { name: 'Line between Before and After' })).toBeVisible();
  await page.getByRole('button', { name: 'Mill race' }).click();
  const second = await painted(first);
  await page.getByRole('button', { name: 'Saltpan' }).click();
  const third = await painted(second);
  expect(second - first).toBe(third - second);
});

test('choices stand side by side with what each hides and costs, and one becomes the plan', async ({ page }) => {
  await openClient(page, 'choices');
  const narrow = page.getByRole('region', { name: 'Narrow trim, ribbed' });
  await expect(narrow).toContainText(/The trim as planned hides the [\d/]+" taper .* would show [\d/]+"/, {
    timeout: 60_000,
  });
  await expect(narrow).toContainText(/\$[\d,.]+ less than as planned/);
  await page.getByRole('radio', { name: 'One picture, a line between' }).click();
  await expect(page.getByRole('slider', { name: /Line between As planned/ })).toBeVisible();
  const price = await narrow.locator('strong').first().textContent();
  await narrow.getByRole('button', { name: 'Make this the plan' }).click();
  await expect(page.getByRole('region', { name: 'As planned' }).locator('strong').first()).toHaveText(price ?? '', {
    timeout: 45_000,
  });
});

test('a price typed in is charged to the cent, and an empty one is told', async ({ page }) => {
  await openClient(page, 'price');
  const field = page.getByRole('textbox', { name: 'Sealant', exact: true });
  await field.fill('20,05');
  await field.press('Tab');
  const row = page.getByRole('row').filter({ hasText: 'Sealant for wet joints' });
  await expect(row).toContainText('$20.05');
  await field.fill('');
  await field.press('Tab');
  await expect(row).toContainText('no price');
  await expect(page.getByText(/One line has no price/)).toBeVisible();
  await field.fill('12.345');
  await field.press('Tab');
  await expect(page.getByText('USD has 2 decimals; leave out the rest')).toBeVisible();
});

test('rows of the price list come and go without what is typed in the others', async ({ page }) => {
  await openClient(page, 'price');
  const add = page.getByRole('button', { name: 'Add something else' });
  await add.click();
  await add.click();
  await page.getByRole('textbox', { name: 'Amount of what else, row 2' }).fill('about a hundred');
  await add.click();
  await expect(page.getByRole('textbox', { name: 'Amount of what else, row 2' })).toHaveValue('about a hundred');
  await page.getByRole('button', { name: 'Take what else, row 1, out' }).click();
  await expect(page.getByRole('textbox', { name: 'Amount of what else, row 1' })).toHaveValue('about a hundred');
  const width = page.getByRole('textbox', { name: 'Up to this width, row 1' });
  await width.fill('three fingers');
  await page.getByRole('button', { name: 'Add a width of trim' }).click();
  await expect(width).toHaveValue('three fingers');
});

test('a choice is given another name, and only one that is free', async ({ page }) => {
  await openClient(page, 'choices');
  const choice = (name: string) => page.getByRole('region', { name, exact: true });
  await choice('Narrow trim, ribbed').getByText('Change it').click();
  const name = page.getByRole('textbox', { name: 'Name of this choice' });
  await name.fill('Wide dark trim, two shelves');
  await name.press('Enter');
  await expect(choice('Narrow trim, ribbed').getByText('There is a choice of that name already.')).toBeVisible();
  await name.fill('Ribs');
  await name.press('Enter');
  await expect(choice('Narrow trim, ribbed')).toHaveCount(0);
  // Who works on it goes on there.
  await expect(choice('Ribs').getByRole('textbox', { name: 'Name of this choice' })).toBeFocused();
  await expect(choice('Ribs')).toContainText('“Ribs” would show');
  await expect(page.getByTestId('finished')).toContainText('Ribs');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(choice('Narrow trim, ribbed')).toBeVisible();
});

test('two choices never have one name', async ({ page }) => {
  await openClient(page, 'choices');
  const called = page.getByRole('textbox', { name: 'Called' });
  const before = await page.getByRole('button', { name: 'Take out' }).count();
  await called.fill('As planned');
  await expect(page.getByText('There is a choice of that name already.')).toBeVisible();
  await called.press('Enter');
  await expect(called).toHaveValue('As planned');
  await expect(page.getByRole('button', { name: 'Take out' })).toHaveCount(before);
});

test('the quote is saved as a PDF', async ({ page }) => {
  await openClient(page, 'price');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Quote: PDF' }).click(),
  ]);
  expect(file.suggestedFilename()).toMatch(/-quote\.pdf$/);
  expect((await readFile(await file.path())).subarray(0, 5).toString()).toBe('%PDF-');
});

test('a link opens on another device to look at only, and can be made mine', async ({ page, browser, baseURL }) => {
  await openClient(page, 'send');
  const link = page.getByRole('textbox', { name: 'The link' });
  await expect(link).toHaveValue(/#link\/1\./);
  const bare = await link.inputValue();
  await page.getByLabel('With prices').check();
  await expect.poll(async () => (await link.inputValue()).length).toBeGreaterThan(bare.length);
  await expect(page.getByRole('img', { name: 'QR code of the link' })).toBeVisible();

  const phone = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
  const other = await phone.newPage();
  const watched = watch(other, baseURL ?? '');
  const asked: string[] = [];
  other.on('request', (request) => asked.push(request.url()));
  await other.goto(bare);
  await touch(other);
  await expect(other.getByRole('heading', { name: /^Vexleigh 12/ })).toBeVisible();
  await expect(other.getByRole('region', { name: 'Price', exact: true })).toHaveCount(0);
  await expect(other.getByRole('button', { name: 'Take out' })).toHaveCount(0);
  await expect(other.getByRole('textbox', { name: 'Name of the job' })).toHaveCount(0);
  expect(asked.filter((url) => url.includes('link/1.') && !url.includes('#'))).toEqual([]);
  await other.getByRole('button', { name: 'Make it mine' }).click();
  await expect(other.getByRole('tab', { name: 'How it will look' })).toBeVisible();
  await kept(other);
  expect(watched.errors).toEqual([]);
  expect(watched.strangers).toEqual([]);
  await phone.close();
});

test('a damaged link is refused with a sentence, and one’s own job stays', async ({ page }) => {
  await openClient(page, 'send');
  const link = await page.getByRole('textbox', { name: 'The link' }).inputValue();
  const hash = link.slice(link.indexOf('#'));
  await goTo(page, hash.slice(0, -6));
  await expect(page.getByText(/cut short or changed on its way|was cut short/)).toBeVisible();
  await goTo(page, '#link/9.AAAA');
  await expect(page.getByText(/made by a newer version/)).toBeVisible();
  await page.getByRole('link', { name: 'Go to them' }).click();
  await expect(page.getByLabel('Name of the job')).toHaveValue(/^Vexleigh/);
});

const titles: Record<string, string> = {
  look: 'How it will look',
  choices: 'Choices',
  price: 'Price and quote',
  send: 'Send',
};

async function openClient(page: Page, part: string): Promise<void> {
  await openApp(page, `#client/${part}`);
  await expect(page.getByRole('tab', { name: titles[part] ?? part })).toBeVisible();
}
