import { expect, type Page, test } from '@playwright/test';
import { goTo, kept, openApp, valueField } from './app';
import { coloursOf } from './colours';

const worker = (page: Page, name: string) => page.workers().find((each) => each.url().includes(name));

/** Waits for the worker of that name, other than the one given. */
async function workerNamed(page: Page, name: string) {
  await expect.poll(() => worker(page, name) !== undefined).toBe(true);
  return worker(page, name)!;
}

test('a solver that dies is started anew; one that dies twice is told, and works again when asked or when typing goes on', async ({
  page,
}) => {
  await openApp(page);
  const field = valueField(page, 'corner-left-1');
  const template = () => page.getByTestId('template').locator('text').allTextContents();
  const solver = await workerNamed(page, 'solver');
  // Dies in the middle of its work, as when memory is out.
  await solver.evaluate(() => {
    self.addEventListener('message', () => {
      throw new Error('out of memory');
    });
  });
  await field.fill('28 1/2');
  await field.blur();
  await expect(page.getByText(/could not be worked out/)).toHaveCount(0);
  await goTo(page, '#bench/back');
  const before = await template();
  expect(before.length).toBeGreaterThan(5);

  await page.route('**/solver.worker*', (route) =>
    route.fulfill({ contentType: 'text/javascript', body: 'throw new Error("broken")' }),
  );
  await goTo(page, '#site');
  await (await workerNamed(page, 'solver')).evaluate(() => {
    setTimeout(() => {
      throw new Error('dies');
    });
  });
  await field.fill('29 1/2');
  await field.blur();
  await expect(page.getByText(/could not be worked out \(the worker that does the sums stopped\)/)).toBeVisible();
  await expect(field).toHaveValue(/29 1\/2/);
  await kept(page);
  await page.getByRole('button', { name: 'Work it out again' }).click();
  await expect(page.getByText(/could not be worked out/)).toBeVisible();
  await page.unroute('**/solver.worker*');
  await page.getByRole('button', { name: 'Work it out again' }).click();
  await expect(page.getByText(/could not be worked out/)).toHaveCount(0);
  await goTo(page, '#bench/back');
  await expect.poll(template).not.toEqual(before);
});

void coloursOf;
