import { expect, test } from '@playwright/test';
import { kept, openApp, valueField } from './app';

const notice = 'This job is being edited in another tab.';

test('a job in two tabs is edited in one, shown in the other, and handed over with all that was typed', async ({
  context,
  page: first,
}) => {
  await openApp(first);
  await valueField(first, 'corner-left-1').fill('28 1/2');
  await kept(first);
  const second = await context.newPage();
  await openApp(second);
  await expect(second.getByText(notice)).toBeVisible();
  const shown = valueField(second, 'corner-left-1');
  await expect(second.locator('[inert]').filter({ has: shown })).toHaveCount(1);

  await first.bringToFront();
  await valueField(first, 'corner-left-1').fill('28 5/');
  await expect(shown).toHaveValue('28 5/');

  await second.bringToFront();
  await second.getByRole('button', { name: 'Edit here' }).click();
  await expect(second.getByText(notice)).toHaveCount(0);
  await expect(first.getByText(notice)).toBeVisible();
  await expect(valueField(second, 'corner-left-1')).toHaveValue('28 5/');
  await valueField(second, 'corner-left-1').fill('28 5/8');
  await kept(second);
  await first.keyboard.press('Control+z');
  await second.close();

  await expect(first.getByText(notice)).toHaveCount(0);
  await expect(valueField(first, 'corner-left-1')).toHaveValue('28 5/8');
});

test('a job goes to the tab that asks for it before those that wait, and past a tab that was killed', async ({
  context,
  page: first,
}) => {
  await openApp(first);
  await valueField(first, 'corner-left-1').fill('28 1/2');
  await kept(first);
  const waits = await context.newPage();
  await openApp(waits);
  const asks = await context.newPage();
  await openApp(asks);
  await expect(waits.getByText(notice)).toBeVisible();

  await asks.getByRole('button', { name: 'Edit here' }).click();
  await expect(asks.getByText(notice)).toHaveCount(0);
  await expect(first.getByText(notice)).toBeVisible();
  await expect(waits.getByText(notice)).toBeVisible();
  await valueField(asks, 'corner-left-1').fill('28 5/8');
  await kept(asks);

  const session = await context.newCDPSession(asks);
  const crashed = asks.waitForEvent('crash');
  void session.send('Page.crash').catch(() => undefined);
  await crashed;
  await expect(waits.getByText(notice)).toHaveCount(0);
  await expect(valueField(waits, 'corner-left-1')).toHaveValue('28 5/8');
  await expect(first.getByText(notice)).toBeVisible();
  await waits.close();
  await expect(first.getByText(notice)).toHaveCount(0);
});

test('a page that is killed while it writes loses no keystroke', async ({ context, page }) => {
  await openApp(page);
  const field = valueField(page, 'corner-left-1');
  await field.fill('');
  await kept(page);
  await field.focus();
  await page.keyboard.type('28 13/16', { delay: 80 });
  await expect(field).toHaveValue('28 13/16');
  const session = await context.newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  void session.send('Page.crash').catch(() => undefined);
  await crashed;
  const next = await context.newPage();
  await openApp(next);
  await expect(valueField(next, 'corner-left-1')).toHaveValue('28 13/16');
});

test('storage that is full or blocked is told, and typing goes on', async ({ context }) => {
  const blocked = await context.newPage();
  await blocked.addInitScript(() => {
    indexedDB.open = () => {
      throw new DOMException('not here', 'SecurityError');
    };
  });
  await openApp(blocked);
  await expect(blocked.getByText(/gives the page no storage/)).toBeVisible();
  await valueField(blocked, 'corner-left-1').fill('28 1/2');
  await expect(valueField(blocked, 'corner-left-1')).toHaveValue('28 1/2');
  await blocked.close();

  const full = await context.newPage();
  await openApp(full);
  await kept(full);
  await full.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    Object.assign(window, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { put }) });
  });
  await valueField(full, 'corner-left-1').fill('28 1/4');
  await expect(full.getByText(/no room left on this device/)).toBeVisible();
  await full.evaluate(() => (window as unknown as { makeRoom(): void }).makeRoom());
  await valueField(full, 'corner-left-1').fill('28 3/4');
  await expect(full.getByText(/no room left on this device/)).toHaveCount(0);
  await kept(full);
  await full.reload();
  await expect(valueField(full, 'corner-left-1')).toHaveValue(/28 3\/4/);
});
