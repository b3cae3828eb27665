import type { Page } from '@playwright/test';
import {
  chooseFile,
  download,
  expect,
  letPricesStand,
  openStage,
  sample,
  takePicture,
  test,
  typeInto,
  walkThrough,
  writeFile,
} from './host.ts';
import { textOfPdf } from './pdf-text.ts';

const main = (page: Page) => page.getByRole('main');

async function bringIn(page: Page, file: string, carrier?: string): Promise<void> {
  await chooseFile(page, page.getByRole('button', { name: 'Choose a file' }), sample(file));
  await expect(main(page)).toContainText('Before anything is saved');
  if (carrier) await page.getByLabel('It is', { exact: true }).selectOption(carrier);
}

async function keep(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(main(page)).not.toContainText('Before anything is saved');
}

/** What the thread says of a stage. */
const threadLine = (page: Page, stage: string) => page.getByRole('navigation').getByRole('link', { name: stage });

/** A page without what every written estimate has of its own: number, identifier, the hour it was made. */
const unnumbered = (page: Buffer): string =>
  page
    .toString()
    .replace(/(no\.|estimate|number) \d+/gi, 'estimate N')
    .replace(/[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}/g, 'identifier')
    .replace(/\d{4}-\d\d-\d\dT[\d:.]+Z/g, 'hour');

/** Where two long texts part, with what stands there; empty when they are the same. */
function firstDifference(one: string, other: string): string {
  if (one === other) return '';
  let at = 0;
  while (one[at] === other[at]) at += 1;
  return `${one.slice(at - 60, at + 60)} | ${other.slice(at - 60, at + 60)}`;
}

const TARIFF_JSON = {
  id: 'from-paper',
  name: 'Winter plain',
  fuel: 'electricity',
  origin: 'letter of August 2026',
  grade: 'measured',
  versions: [
    {
      from: '2025-01-01',
      standingPencePerDay: 40,
      vat: { rate: 0.05, included: false },
      bands: [{ name: 'all hours', pencePerKWh: 20, times: 'rest' }],
    },
  ],
};
const TARIFF_CSV = `tariff,Evening peak
fuel,electricity
valid from,1 October 2025
standing charge (p/day),57.2
vat,5 % included
band,from,to,days,months,pence per kWh
peak,16:00,19:00,mon-fri,,41.5
rest,,,,,24
`;
const WRONG_CSV = TARIFF_CSV.replace('16:00,19:00', '16:00,25:30');

test('from an empty household to the leave-behind and a bill check', async ({ desk }) => {
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
    await expect(main(desk)).toContainText('was estimated, and a later actual reading corrected it');
    await keep(desk);
    await bringIn(desk, 'larch-rise/weather-daily.csv');
    await keep(desk);
    await takePicture(desk, 'path-evidence');
  });

  await test.step('the same file twice changes nothing', async () => {
    await bringIn(desk, 'larch-rise/gas-bills.csv');
    await desk.getByRole('button', { name: 'Save' }).click();
    await expect(desk.getByText(/already|twice|the same file/i).first()).toBeVisible();
  });

  await test.step('heat loss, people and place', async () => {
    await openStage(desk, 'Heat needed');
    await typeInto(desk, 'Postcode', 'DE6');
    await typeInto(desk, 'Floor area', '96');
    await typeInto(desk, 'People', '3');
    await typeInto(desk, 'Heat loss at design temperature', '6.1');
    await typeInto(desk, 'Design outdoor temperature', '-3.4');
    await expect(main(desk)).toContainText('From the heat loss');
    // A heat loss of nothing is refused in words, and the last good one stays.
    await typeInto(desk, 'Heat loss at design temperature', '0');
    await expect(main(desk)).toContainText('0 kW is outside');
    await typeInto(desk, 'Heat loss at design temperature', '6.1');
    await takePicture(desk, 'path-heat');
  });

  await test.step('a seasonal factor, with its boundary', async () => {
    await openStage(desk, 'Heat pump');
    await typeInto(desk, 'Seasonal factor, rooms', '9');
    await expect(main(desk)).toContainText('9 is outside 1 to 8');
    await typeInto(desk, 'Seasonal factor, rooms', '3.7');
    await typeInto(desk, 'Factor for hot water', '2.8');
    await desk.getByLabel('These factors include', { exact: true }).selectOption('H3');
    await expect(main(desk)).toContainText('What the meter sees');
    await takePicture(desk, 'path-machine');
  });

  await test.step('a tariff of two prices typed: an hour without a price is refused and named', async () => {
    await openStage(desk, 'Prices');
    const costBefore = await threadLine(desk, 'Running cost').textContent();
    await desk.getByRole('button', { name: 'Type a tariff' }).first().click();
    const editor = desk.getByRole('region', { name: 'Tariff for electricity' });
    await editor.getByText('day and night', { exact: true }).click();
    await editor.getByRole('button', { name: 'Save this tariff' }).click();
    await expect(editor.getByRole('alert')).toContainText('Give the tariff a name');
    await expect(editor.getByRole('alert')).toContainText('The standing charge is missing');
    await typeInto(desk, 'Name of the tariff', 'Night saver');
    await typeInto(desk, 'Price source', 'bill of March 2026');
    await typeInto(desk, 'Standing charge', '54.8');
    await editor.getByLabel('Price', { exact: true }).nth(0).fill('31.2');
    await editor.getByLabel('Price', { exact: true }).nth(1).fill('14.5');
    await expect(editor.getByRole('alert')).toBeHidden();
    await editor.getByLabel('at all other times').first().uncheck();
    await expect(editor.getByRole('alert')).toContainText('Two prices claim the same time');
    await editor.getByLabel('from, day').selectOption('07:30');
    await editor.getByLabel('to, day').selectOption('23:00');
    await expect(editor.getByRole('alert')).toContainText(/There is no price on .*00:00 to 00:30/);
    await editor.getByRole('button', { name: 'Save this tariff' }).click();
    await expect(editor).toBeVisible();
    await takePicture(desk, 'path-tariff');
    await editor.getByLabel('to, day').selectOption('00:30');
    await expect(editor.getByRole('alert')).toBeHidden();
    await editor.getByRole('button', { name: 'Save this tariff' }).click();
    await expect(editor).toBeHidden();
    await expect(main(desk)).toContainText('day 31.2 p and night 14.5 p, standing charge 54.8 p a day');
    await expect(main(desk)).toContainText('bill of March 2026');
    await expect(threadLine(desk, 'Running cost')).not.toHaveText(costBefore!);
  });

  await test.step('a tariff brought in as JSON and as CSV, seen before it holds; a wrong one is refused', async () => {
    const bring = desk.getByRole('button', { name: 'Open a tariff file' }).first();
    const editor = desk.getByRole('region', { name: 'Tariff for electricity' });
    const typed = await threadLine(desk, 'Running cost').textContent();
    await chooseFile(desk, bring, writeFile('winter-plain.json', JSON.stringify(TARIFF_JSON)));
    await expect(editor.getByLabel('Name of the tariff')).toHaveValue('Winter plain');
    await expect(threadLine(desk, 'Running cost')).toHaveText(typed!);
    await editor.getByRole('button', { name: 'Save this tariff' }).click();
    // 20 p and 40 p a day, and 5 % of VAT on each.
    await expect(main(desk)).toContainText('21.0 p per kWh, standing charge 42.0 p a day');
    await chooseFile(desk, bring, writeFile('evening-peak.csv', TARIFF_CSV));
    await expect(editor.getByLabel('from, peak')).toHaveValue('16:00');
    await editor.getByRole('button', { name: 'Save this tariff' }).click();
    await expect(main(desk)).toContainText('peak 41.5 p and rest 24.0 p, standing charge 57.2 p a day');
    await chooseFile(desk, bring, writeFile('wrong-hour.csv', WRONG_CSV));
    await expect(main(desk).getByRole('alert')).toContainText(/line 7/i);
    await expect(main(desk).getByRole('alert')).toContainText('25:30');
    const gas = { ...TARIFF_JSON, fuel: 'gas' };
    await chooseFile(desk, bring, writeFile('gas.json', JSON.stringify(gas)));
    await expect(main(desk).getByRole('alert')).toContainText('is a tariff for gas');
    await desk.getByLabel('Prices used').first().selectOption('Night saver');
    await expect(threadLine(desk, 'Running cost')).toHaveText(typed!);
  });

  await test.step('what it costs beside the others, and the what-if at once', async () => {
    await openStage(desk, 'Running cost');
    for (const name of [
      'Ground-source heat pump',
      'Gas boiler',
      'Air-source heat pump',
      'Left out, since there is gas here',
    ]) {
      await expect(main(desk)).toContainText(name);
    }
    await expect(main(desk).locator('[data-system="oil"]')).toHaveCount(0);
    await main(desk).getByText('Left out, since there is gas here').click();
    await main(desk).getByLabel('Oil boiler').check();
    await expect(main(desk).locator('[data-system="oil"]')).toHaveCount(1);
    await main(desk).getByRole('button', { name: 'As the home suggests' }).click();
    await expect(main(desk).locator('[data-system="oil"]')).toHaveCount(0);
    const before = await desk.getByRole('heading', { level: 2 }).first().textContent();
    await desk.getByLabel('Electricity', { exact: true }).first().fill('40');
    await desk.keyboard.press('Tab');
    await expect(desk.getByRole('heading', { level: 2 }).first()).not.toHaveText(before!);
    await desk.getByRole('button', { name: /^Reset/ }).click();
    await expect(desk.getByRole('heading', { level: 2 }).first()).toHaveText(before!);
    await takePicture(desk, 'path-cost');
  });

  await test.step('a figure opens its working', async () => {
    await desk.getByRole('heading', { level: 2 }).first().locator('.figure-link').first().click();
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
    expect(pages).toBe(6);
    expect(sentences.size).toBe(pages);
    await desk.keyboard.press('Escape');
  });

  await test.step('a written estimate, and the leave-behind as PDF, page and figures', async () => {
    await openStage(desk, 'Written estimate');
    await letPricesStand(desk);
    await desk.getByRole('button', { name: 'Save the written estimate' }).click();
    await expect(main(desk)).toContainText('Estimate no. 1');
    const pdf = desk.getByRole('button', { name: /^Paper for the household.*estimate no. 1$/ });
    const first = await download(desk, pdf);
    const text = await textOfPdf(first.bytes);
    expect(text).toContain('Fern Bank');
    expect(text).toMatch(/About £[\d,]+ a year/);
    expect(text).toContain('Estimate no. 1 of');
    expect(text).toContain('Night saver');
    const again = await download(desk, pdf);
    expect(first.bytes.equals(again.bytes), 'the same written estimate printed twice, byte for byte').toBe(true);

    const working = await download(desk, desk.getByRole('button', { name: /^Working, every sum.*estimate no. 1$/ }));
    expect(await textOfPdf(working.bytes)).toContain('The working behind the estimate for Fern Bank');
    await desk.getByText('Other forms, estimate no. 1').click();
    const figures = await download(desk, desk.getByRole('button', { name: /^Figures as CSV.*estimate no. 1$/ }));
    expect(figures.name).toMatch(/\.csv$/);
    expect(figures.bytes.toString()).toContain('Fern Bank');
    expect(figures.bytes.toString()).toMatch(/heat pump/i);
    const page = await download(desk, desk.getByRole('button', { name: /^Paper as a page.*estimate no. 1$/ }));
    expect(page.name).toMatch(/\.html$/);
    await letPricesStand(desk);
    await desk.getByRole('button', { name: 'Save the written estimate' }).click();
    await expect(main(desk)).toContainText('Estimate no. 2');
    await desk.getByText('Other forms, estimate no. 2').click();
    const second = await download(desk, desk.getByRole('button', { name: /^Paper as a page.*estimate no. 2$/ }));
    expect(
      firstDifference(unnumbered(page.bytes), unnumbered(second.bytes)),
      'two written estimates of the same inputs',
    ).toBe('');
    await takePicture(desk, 'path-estimate');
  });

  await test.step('a later bill held against the written estimate', async () => {
    await openStage(desk, 'Bill check');
    await typeInto(desk, 'First day', '2026-12-01');
    await typeInto(desk, 'Last day', '2027-02-28');
    await typeInto(desk, 'kWh of the heat pump', '2400');
    await typeInto(desk, 'Price per kWh', '29');
    await desk.getByRole('button', { name: 'Check the bill' }).click();
    await expect(main(desk)).toContainText(/above|inside|below/);
    await expect(main(desk)).toContainText('Guided search');
    await takePicture(desk, 'path-check');
  });
});
