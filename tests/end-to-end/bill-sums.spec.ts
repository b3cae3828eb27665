/** A bill typed by keyboard alone, its mistake named, and the bill kept. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './host.ts';

test('a bill with day and night swapped is found out and kept as evidence', async ({ page, host }) => {
  await page.goto(host.url);
  await page.getByRole('link', { name: 'Larch Rise' }).first().click();
  await page
    .getByRole('link', { name: /^Bills and readings/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Check a bill’s sums' }).press('Enter');
  await page.getByLabel('gas', { exact: true }).press('ArrowLeft');
  const type = (label: string, text: string, nth = 0) => page.getByLabel(label, { exact: true }).nth(nth).fill(text);
  await type('First day', '1/4/2026');
  await type('Last day, part of the bill', '30/6/2026');
  await page.getByRole('button', { name: 'Add a register, such as night' }).press('Enter');
  for (const [nth, values] of [
    ['5000', '5288', '612', '31.5', '192.78'],
    ['7000', '7612', '288', '19.2', '55.30'],
  ].entries()) {
    for (const [at, label] of ['First reading', 'Last reading', 'kWh', 'Price', 'Charge'].entries()) {
      await type(label, values[at]!, nth);
    }
  }
  await type('Days', '91');
  await type('Standing charge', '54.8');
  await type('Charge', '49.87', 2);
  await page.getByLabel('VAT comes on top').press('ArrowRight');
  await type('Total', '297.95');
  // 288 × 31.5 p + 612 × 19.2 p + 91 × 54.8 p = 90.72 + 117.50 + 49.87 = £258.09 by hand.
  await expect(page.getByRole('heading', { level: 2 })).toHaveText(/asks £39\.86 too much/);
  await expect(page.getByRole('row', { name: /^Total/ })).toContainText('£258.09');
  await expect(page.getByText('“day” and “night” are swapped.')).toBeVisible();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect((await new AxeBuilder({ page }).setLegacyMode().analyze()).violations).toEqual([]);
  }
  await page.getByRole('button', { name: 'Save this bill' }).press('Enter');
  await expect(page.getByText(/Electricity bill, 1 April 2026 to 30 June 2026/).first()).toBeVisible();
});
