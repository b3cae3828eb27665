/** Bills from a file: the one with an old price is found in the list, opened from its row, and explained. */

import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { chooseFile, expect, type Host, root, test } from './host.ts';

/** 24.5 p until the end of March 2026, 22 p from April on; 53 p a day; VAT on top. */
async function keepTariff({ call }: Host): Promise<void> {
  const [first] = await call('household.list', {});
  const { household, revision } = await call('household.open', { id: first!.id });
  const version = (from: string, pencePerKWh: number) => ({
    from,
    standingPencePerDay: 53,
    vat: { rate: 0.05, included: false },
    bands: [{ name: 'all hours', pencePerKWh, times: 'rest' as const }],
  });
  const tariff = {
    id: 'invented',
    name: 'Invented prices',
    fuel: 'electricity' as const,
    origin: 'letter of March 2026',
    grade: 'measured' as const,
    versions: [version('2025-10-01', 24.5), version('2026-04-01', 22)],
  };
  await call('household.save', { household: { ...household, tariffs: [tariff] }, revision });
}

test('an old rate after a price change is found in a file of bills and explained from its row', async ({
  page,
  host,
}) => {
  await keepTariff(host);
  await page.goto(host.url);
  await page.getByRole('link', { name: 'Larch Rise' }).first().click();
  await page
    .getByRole('link', { name: /^Bills and readings/ })
    .first()
    .click();
  const choose = page.getByRole('button', { name: 'Choose a file' });
  await chooseFile(page, choose, join(root, 'tests/corpus/bills-whole-old-rate.csv'));
  await expect(page.getByText(/we left out Account manager/)).toBeVisible();
  await page.getByRole('button', { name: 'electricity', exact: true }).click();
  const keep = page.getByRole('button', { name: 'Save' });
  await expect(keep).toBeEnabled();
  await keep.press('Enter');
  await page.getByText('3 bills with prices in it').click();
  const rows = page.locator('.filed-bills li');
  await expect(rows.nth(0)).toContainText('right to the penny');
  // 600 × (24.5 p − 22 p) = 1,500 p and 5% = 75 p, by hand.
  await expect(rows.nth(1)).toContainText('asks £15.75 too much');
  // 15% of 110.00 + 48.76 = £23.82, less a half penny of rounding: 31.75 − 7.94 = 23.81.
  await expect(rows.nth(2)).toContainText('asks £23.81 too much');
  await page.getByRole('button', { name: /Check its sums.*line 3/ }).press('Enter');
  await expect(page.getByRole('heading', { level: 2 })).toHaveText(/asks £15\.75 too much/);
  await expect(page.getByLabel('First reading', { exact: true })).toHaveValue(/13,?245/);
  await expect(
    page.getByText(
      /The kWh were charged at the old price, that of 1 October 2025. A new price applies from 1 April 2026/,
    ),
  ).toBeVisible();
  await expect(page.getByRole('row', { name: /^Charge for energy/ })).toContainText('+£15.00');
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect((await new AxeBuilder({ page }).setLegacyMode().analyze()).violations).toEqual([]);
  }
  await page.getByRole('button', { name: 'Back to bills and readings' }).press('Enter');
  await expect(page.getByText('3 bills with prices in it')).toBeVisible();
});
