import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, openStage, sample, takePicture, test, walkThrough } from './host.ts';
import { textOfPdf } from './pdf-text.ts';

const main = (page: Page) => page.getByRole('main');

async function bringIn(page: Page, file: string, carrier?: string): Promise<void> {
  const chosen = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose a file' }).click();
  await (await chosen).setFiles(sample(file));
  await expect(main(page)).toContainText('Before anything is kept');
  if (carrier) await page.getByLabel('It is', { exact: true }).selectOption(carrier);
}

async function keep(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Keep this evidence' }).click();
  await expect(main(page)).not.toContainText('Before anything is kept');
}

async function typeInto(page: Page, label: string, value: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).first().fill(value);
  await page.keyboard.press('Tab');
}

test('from an empty household to the leave-behind and a bill check', async ({ desk }) => {
  test.slow();
  await test.step('a new household', async () => {
    await desk.getByRole('button', { name: 'New household' }).click();
    await desk.getByLabel('Name of the home').fill('Fern Bank');
    await desk.keyboard.press('Enter');
    await expect(desk.getByRole('heading', { name: /Fern Bank/ })).toBeVisible();
    await expect(main(desk)).toContainText('Nothing is known yet');
  });

  await test.step('its half-hourly electricity: seen before it is kept, choices change it at once', async () => {
    await bringIn(desk, 'larch-rise/electricity-half-hourly.csv');
    await expect(main(desk)).toContainText('17,427 rows of data');
    await expect(main(desk)).toContainText('2,734 kWh');
    await expect(main(desk)).toContainText('96 readings missing');
    await expect(main(desk)).toContainText('repeats a reading with the same value');
    await takePicture(desk, 'path-preview');
    await desk.getByLabel('Unit', { exact: true }).selectOption('Wh');
    await expect(main(desk)).toContainText('in Wh, local time');
    await desk.getByLabel('Unit', { exact: true }).selectOption('kWh');
    await expect(main(desk)).toContainText('in kWh, local time');
    await expect(main(desk)).toContainText('2,734 kWh');
    await keep(desk);
    await expect(main(desk)).toContainText('we have 99 days in 100');
  });

  await test.step('its gas bills and its weather', async () => {
    await bringIn(desk, 'larch-rise/gas-bills.csv');
    await expect(main(desk)).toContainText('marks 1 row as estimated');
    await keep(desk);
    await bringIn(desk, 'larch-rise/weather-daily.csv');
    await keep(desk);
    await takePicture(desk, 'path-evidence');
  });

  await test.step('the same file twice changes nothing', async () => {
    await bringIn(desk, 'larch-rise/gas-bills.csv');
    await desk.getByRole('button', { name: 'Keep this evidence' }).click();
    await expect(desk.getByText(/already|twice|the same file/i).first()).toBeVisible();
  });

  await test.step('heat loss, people and place', async () => {
    await openStage(desk, 'Heat needed');
    await typeInto(desk, 'Postcode', 'DE6');
    await typeInto(desk, 'Floor area', '96');
    await typeInto(desk, 'People', '3');
    await typeInto(desk, 'Heat loss on the design day', '6.1');
    await typeInto(desk, 'Outdoors on the design day', '-3.4');
    await expect(main(desk)).toContainText('From the heat loss');
    // A heat loss of nothing is refused in words, and the last good one stays.
    await typeInto(desk, 'Heat loss on the design day', '0');
    await expect(main(desk)).toContainText('0 kW is outside');
    await typeInto(desk, 'Heat loss on the design day', '6.1');
    await takePicture(desk, 'path-heat');
  });

  await test.step('a seasonal factor, with its boundary', async () => {
    await openStage(desk, 'The machine');
    await typeInto(desk, 'Factor for the rooms', '9');
    await expect(main(desk)).toContainText('9 is outside 1 to 8');
    await typeInto(desk, 'Factor for the rooms', '3.7');
    await typeInto(desk, 'Factor for hot water', '2.8');
    await desk.getByLabel('These factors count', { exact: true }).selectOption('H3');
    await expect(main(desk)).toContainText('What the meter sees');
    await takePicture(desk, 'path-machine');
  });

  await test.step('a tariff typed', async () => {
    await openStage(desk, 'Prices');
    await desk.getByRole('button', { name: 'Type a tariff' }).first().click();
    await takePicture(desk, 'path-tariff');
    await desk.keyboard.press('Escape');
  });

  await test.step('what it costs beside the others, and the what-if at once', async () => {
    await openStage(desk, 'Running cost');
    for (const name of ['Heat pump, ground', 'Gas boiler', 'Oil boiler', 'LPG boiler', 'Direct electric']) {
      await expect(main(desk)).toContainText(name);
    }
    const before = await desk.getByRole('heading', { level: 2 }).first().textContent();
    await desk.getByLabel('Electricity', { exact: true }).first().fill('40');
    await desk.keyboard.press('Tab');
    await expect(desk.getByRole('heading', { level: 2 }).first()).not.toHaveText(before!);
    await desk.getByRole('button', { name: /^As it is/ }).click();
    await expect(desk.getByRole('heading', { level: 2 }).first()).toHaveText(before!);
    await takePicture(desk, 'path-cost');
  });

  await test.step('a figure opens its working', async () => {
    await desk.getByRole('heading', { level: 2 }).first().getByRole('button').first().click();
    await expect(desk.getByRole('dialog')).toContainText('£');
    await expect(desk.getByRole('dialog')).toContainText(/assumed|estimated|measured/);
    await takePicture(desk, 'path-working');
    await desk.keyboard.press('Escape');
    await expect(desk.getByRole('dialog')).toBeHidden();
  });

  await test.step('the walk-through, page by page', async () => {
    const sentences = new Set<string | null>();
    const pages = await walkThrough(desk, async (number) => {
      sentences.add(await desk.getByRole('heading', { level: 1 }).first().textContent());
      await takePicture(desk, `path-walk-${number}`);
    });
    expect(pages).toBeGreaterThanOrEqual(7);
    expect(sentences.size).toBe(pages);
    await desk.keyboard.press('Escape');
  });

  await test.step('a promise, and the leave-behind as PDF, page and figures', async () => {
    await openStage(desk, 'Promise');
    await desk.getByRole('button', { name: 'Keep as a promise' }).click();
    await expect(main(desk)).toContainText('Promise 1');
    const download = desk.waitForEvent('download');
    await desk.getByRole('button', { name: 'Leave-behind as PDF' }).click();
    const path = await (await download).path();
    const text = await textOfPdf(readFileSync(path));
    expect(text).toContain('Fern Bank');
    expect(text).toMatch(/About £[\d,]+ a year/);
    expect(text).toContain('Promise 1');
    expect(text).toContain('October to December 2026');
    await takePicture(desk, 'path-promise');
  });

  await test.step('a later bill held against the promise', async () => {
    await openStage(desk, 'Bill check');
    await typeInto(desk, 'First day', '2026-12-01');
    await typeInto(desk, 'Last day', '2027-02-28');
    await typeInto(desk, 'Units of the heat pump', '2400');
    await typeInto(desk, 'Price of a unit', '29');
    await desk.getByRole('button', { name: 'Check the bill' }).click();
    await expect(main(desk)).toContainText(/above|inside|below/);
    await expect(main(desk)).toContainText('Look at next');
    await takePicture(desk, 'path-check');
  });
});
