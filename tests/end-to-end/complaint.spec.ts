/** The customer rings: the bill is higher than estimated. From the readings to the letter, on the invented complaint. */
import type { Locator, Page } from '@playwright/test';
import { comeToRest, download, expect, openStage, takePicture, test, typeInto } from './host.ts';
import { findLabelsOverLabels, findOddWords, findTextOutside } from './inspect.ts';
import { textOfPdf } from './pdf-text.ts';

test.use({ sampleName: 'mill-lane' });
const main = (page: Page) => page.getByRole('main');
const chooseAllMonths = (page: Locator) =>
  page
    .getByLabel('From bills and readings')
    .selectOption({ label: 'all months since the estimate, September 2025 to August 2026' });

test('a winter bill is checked, the heater found with its dates, and the letter written', async ({ desk, host }) => {
  await desk.getByRole('link', { name: 'Mill Lane' }).click();
  await openStage(desk, 'Bill check');
  const page = main(desk);

  await test.step('the sample brings its written estimate of August; its own check is dropped to begin afresh', async () => {
    await expect(page).toContainText('Estimate no. 1 of 20 August 2025');
    await page.getByRole('button', { name: /^Remove/ }).click();
    await expect(page).toContainText('Has a bill come?');
  });

  await test.step('without any bill the months are followed, with the next bill foretold', async () => {
    const months = page.getByRole('region', { name: 'Month by month since the estimate' });
    await expect(months).toBeVisible();
    await expect(months.getByText(/next bill/)).toBeVisible();
    await months.getByRole('img', { name: /In \d+ of 12 months/ }).focus();
    await desk.keyboard.press('t');
    const january = months.getByRole('row', { name: /^January 2026/ });
    await expect(january).toContainText('840 kWh');
    await desk.keyboard.press('t');
  });

  await test.step('the readings fill the bill in; the price is asked', async () => {
    await expect(page.getByLabel('kWh of the heat pump')).not.toHaveValue('');
    await chooseAllMonths(page);
    await expect(page.getByLabel('Last day')).toHaveValue(/2026/);
    await expect(page).toContainText('The price is not known');
    await desk.getByRole('button', { name: 'Check the bill' }).click();
    await expect(page.getByRole('alert')).toContainText('Type the price per kWh');
  });

  await test.step('the winter bill, typed while readings of other days are still on their way', async () => {
    let letGo = () => {};
    const held = new Promise<void>((done) => {
      letGo = done;
    });
    await desk.route(/check\.prefill/, (route) => held.then(() => route.continue()), { times: 1 });
    await chooseAllMonths(page);
    await typeInto(desk, 'First day', '2025-12-01');
    await typeInto(desk, 'Last day', '2026-02-28');
    letGo();
    await comeToRest(desk);
    await page.getByRole('button', { name: 'Use it' }).click();
    await expect(page.getByLabel('kWh of the heat pump')).toHaveValue('2264.4');
    await typeInto(desk, 'Price per kWh', '27.69');
    await desk.getByRole('button', { name: 'Check the bill' }).click();
    await expect(page.getByRole('heading', { level: 2 })).toHaveText(
      /^The bill of £\d+ lies inside the range of our estimate\.$/,
    );
  });

  await test.step('weather, price and heater stand apart, and what is joined says so', async () => {
    const table = page.getByRole('table', { name: /Where the difference comes from/ });
    for (const name of [
      /^Higher electricity price/,
      /^Colder weather/,
      /^Backup heater/,
      /^All the rest\s*joined: heat used/,
    ])
      await expect(table.getByRole('row', { name })).toBeVisible();
    const parts = (await host.call('household.open', { id: (await host.call('household.list', {}))[0]!.id }))
      .checks[0]!;
    expect(parts.parts.reduce((sum, { pence }) => sum + pence, 0)).toBe(parts.actualPence - parts.estimatedPence);
    await table
      .getByRole('row', { name: /^Backup heater/ })
      .getByRole('button')
      .click();
    await expect(desk.getByRole('dialog')).toContainText('kWh of the heater');
    await desk.keyboard.press('Escape');
  });

  await test.step('the immersion heater, with its dates, its cost, its day, what to ask and what to check', async () => {
    const finding = page
      .getByRole('listitem')
      .filter({ has: desk.getByRole('heading', { name: 'Immersion or backup heater' }) });
    await expect(finding).toContainText('8 January 2026 to 18 February 2026');
    await expect(finding).toContainText('about 19 in 20 sure');
    await finding.locator('summary').first().focus();
    await desk.keyboard.press('Enter');
    await expect(finding.getByRole('img', { name: /3\.\d kW at 0[23]:00/ })).toBeVisible();
    await expect(finding).toContainText('Is there a switch for an electric heater');
    await expect(finding).toContainText('Read the heater’s hours');
    await expect(finding).toContainText('Mains wiring is for an electrician');
    await finding.getByRole('button', { name: /^In the days of the bill/ }).click();
    await expect(desk.getByRole('dialog')).toContainText('price per kWh');
    await desk.keyboard.press('Escape');
  });

  await test.step('at both sizes, light and dark, nothing is cut off or laid over', async () => {
    for (const [width, height] of [
      [1280, 800],
      [1024, 768],
    ] as const) {
      for (const colorScheme of ['light', 'dark'] as const) {
        await desk.setViewportSize({ width, height });
        await desk.emulateMedia({ colorScheme });
        await comeToRest(desk);
        await takePicture(desk, `complaint-${colorScheme}-${width}`);
        expect(await findOddWords(desk)).toEqual([]);
        expect(await findTextOutside(desk)).toEqual([]);
        expect(await findLabelsOverLabels(desk)).toEqual([]);
      }
    }
  });

  await test.step('the letter, read back from its PDF', async () => {
    const { name, bytes } = await download(desk, desk.getByRole('button', { name: 'Write the letter' }));
    expect(name).toMatch(/^Mill Lane, letter of .*\.pdf$/);
    const text = await textOfPdf(bytes);
    for (const said of [
      'Dear Mrs Miller,',
      'Thank you for telling us about your bill.',
      '1 December 2025 to 28 February 2026',
      'The backup heater added about',
      'on 42 days. That was from 8 January 2026 to 18 February 2026.',
      'What we do not know yet',
      'What happens next',
      'ring Anna Hill on 01632 960 123',
      'What to read from now on',
      'Ring us above',
      'page 1 of 2',
    ])
      expect(text).toContain(said);
    const sheet = await download(desk, desk.getByRole('button', { name: 'Installer’s sheet' }));
    expect(await textOfPdf(sheet.bytes)).toContain('joined: heat used, hot water and how well the machine works');
    const first = await download(desk, desk.getByRole('button', { name: 'The letter as HTML' }));
    const again = await download(desk, desk.getByRole('button', { name: 'The letter as HTML' }));
    expect(first.bytes.equals(again.bytes)).toBe(true);
  });
});
