import { expect, test } from '@playwright/test';
import { openApp } from './app';

test('what laying a sheet on its wall leaves in it is told for sheets that follow their wall', async ({ page }) => {
  await openApp(page, '#bench/back');
  const card = page.getByRole('region', { name: 'Laid on its wall' });
  await expect(card).toContainText(/Up to 0\.\d+ % is left in the sheet/);
  await card.getByText('Where it is left').click();
  await expect(card.getByRole('cell')).toHaveCount(81);

  await page.getByLabel('Thin sheets that follow a bowed wall').click();
  await expect(card).toHaveCount(0);
});
