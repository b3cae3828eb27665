/** A bill as PDF: the page beside what was read of it, one key where all is proved, a question and a correction where not. */
import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { chooseFile, comeToRest, expect, sample, takePicture, test, waitUntilKept, writeFile } from './host.ts';

async function openEvidence(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Larch Rise' }).first().click();
  await page
    .getByRole('link', { name: /^(Bills and readings|Rechnungen und Messwerte)/ })
    .first()
    .click();
}

async function chooseFiles(page: Page, paths: readonly string[]): Promise<void> {
  await openEvidence(page);
  const chosen = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose a file' }).click();
  await (await chosen).setFiles(paths);
}

async function choosePaper(page: Page, path: string): Promise<void> {
  await openEvidence(page);
  await chooseFile(page, page.getByRole('button', { name: 'Choose a file' }), path);
  await expect(page.getByRole('img', { name: 'The words of the page' })).toBeVisible();
  await comeToRest(page);
}

test('a bill whose every value is proved is kept with one key, and its tariff too', async ({ desk, host }) => {
  await choosePaper(desk, sample('paper/two-rates-new-price.pdf'));
  await expect(desk.getByRole('row', { name: /^Energy, day .*212 kWh/ })).toContainText('212 kWh × 31.20 p = £66.14');
  await desk.getByRole('button', { name: /^VAT: / }).click();
  await expect(desk.locator('.paper-sheet .is-shown')).toHaveCount(1);
  for (const colorScheme of ['light', 'dark'] as const) {
    await desk.emulateMedia({ colorScheme });
    expect((await new AxeBuilder({ page: desk }).setLegacyMode().analyze()).violations).toEqual([]);
    await takePicture(desk, `paper-${colorScheme}`);
  }
  await desk.setViewportSize({ width: 1024, height: 768 });
  await takePicture(desk, 'paper-1024');
  // The home has its half-hours already, so that the bill's units are asked about.
  await expect(desk.getByRole('button', { name: 'Save its tariff for electricity too' })).toHaveCount(0);
  await desk.getByRole('button', { name: 'Do not use it' }).click();
  await desk.getByRole('button', { name: 'Save its tariff for electricity too' }).click();
  await expect(desk.getByText(/We did not read when the night rate applies, so we used 00:00 to 07:00/)).toBeVisible();
  // Pressed again it makes no second tariff.
  await desk.getByRole('button', { name: 'Its tariff for electricity is saved' }).click();
  await waitUntilKept(desk);
  const [home] = await host.call('household.list', {});
  const { household } = await host.call('household.open', { id: home!.id });
  expect(
    household.tariffs.map(({ name }) => name).filter((name) => /^Prices of the bill from/.test(name)),
  ).toHaveLength(1);
  await desk.getByRole('button', { name: 'Undo' }).click();
  await desk.getByRole('button', { name: 'Do not use it' }).click();
  await expect(desk.getByRole('button', { name: 'Save', exact: true })).toBeFocused();
  await desk.keyboard.press('Enter');
  await expect(desk.getByText('two-rates-new-price.pdf is saved.')).toBeVisible();
  await desk.getByText('1 bill with prices in it').click();
});

test('a sum that does not come out blocks keeping until the number on the page is put right', async ({ desk }) => {
  const printed = readFileSync(sample('paper/credit.pdf'), 'latin1').replace(/174\.87/, '184.87');
  await choosePaper(desk, writeFile('wrong.pdf', Buffer.from(printed, 'latin1')));
  const keep = desk.getByRole('button', { name: 'Save', exact: true });
  await expect(keep).toBeDisabled();
  await expect(desk.locator('.ask', { hasText: '≠' })).toContainText('702 kWh × 24.91 p per kWh (£174.87) ≠ £184.87');
  await takePicture(desk, 'paper-contradicted');
  await desk.getByRole('button', { name: 'Correct £184.87' }).click();
  await desk.getByLabel('On the paper it says').fill('£174.87');
  await desk.getByRole('button', { name: 'Correct', exact: true }).click();
  await expect(desk.getByRole('row', { name: /£174\.87.*typed by you/ })).toBeVisible();
  // A wrong number that a person typed is contradicted as a printed one is.
  await desk.getByRole('button', { name: 'Correct £147.08' }).click();
  await desk.getByLabel('On the paper it says').fill('£157.08');
  await desk.getByRole('button', { name: 'Correct', exact: true }).click();
  await expect(desk.getByRole('row', { name: /£157\.08 typed by you; contradicted: .*≠ £157\.08/ })).toBeVisible();
  await desk.getByRole('button', { name: 'Undo' }).click();
  await desk.getByRole('button', { name: 'Do not use it' }).click();
  await expect(keep).toBeEnabled();
  await desk.keyboard.press('Escape');
  await expect(desk.getByRole('button', { name: 'Choose a file' })).toBeVisible();
});

test('of files handed over together each comes in turn, and one that fails loses no other', async ({ desk }) => {
  await chooseFiles(desk, [
    writeFile('a.pdf', '%PDF-1.4 and nothing more'),
    sample('quay-flat/electricity-by-day.csv'),
    sample('paper/gas.pdf'),
  ]);
  await expect(desk.getByText('file 1 of 3 · a.pdf')).toBeVisible();
  await expect(desk.getByRole('alert')).toContainText('a.pdf is a damaged PDF.');
  // What is dropped meanwhile, wherever on the window, comes after them.
  await desk.evaluate(() => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File(['Message-ID: <1@mail.example>\nSubject: Bill\n\nYour bill'], 'bill.eml'));
    document
      .querySelector('nav')!
      .dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
  });
  await desk.getByRole('button', { name: 'Leave this file out' }).click();
  await expect(desk.getByText('file 2 of 4 · electricity-by-day.csv')).toBeVisible();
  await desk.getByRole('button', { name: 'Leave this file out' }).click();
  await expect(desk.getByText('file 3 of 4 · gas.pdf')).toBeVisible();
  await expect(desk.getByRole('row', { name: /^Energy .*3,559 kWh/ })).toBeVisible();
  await desk.getByRole('button', { name: 'Leave this file out' }).click();
  await expect(desk.getByRole('alert')).toContainText('bill.eml is an e-mail.');
  await expect(desk.getByRole('button', { name: 'Leave this file out' })).toHaveCount(0);
});

test('in German', async ({ desk }) => {
  await desk.getByRole('link', { name: 'Settings' }).click();
  await desk.getByText('Deutsch').click();
  await desk.goBack();
  await openEvidence(desk);
  await chooseFile(desk, desk.getByRole('button', { name: 'Datei wählen' }), sample('paper/jahresabrechnung.pdf'));
  await expect(desk.getByRole('img', { name: 'Die Wörter der Seite' })).toBeVisible();
  await comeToRest(desk);
  await takePicture(desk, 'paper-german');
});

test('a photograph is shown as it is, with each value marked on it', async ({ desk }) => {
  await choosePaper(desk, sample('paper/two-rates-photo.jpg'));
  await expect(desk.locator('.paper-sheet image')).toHaveCount(1);
  await desk.getByRole('button', { name: /^VAT: / }).click();
  await expect(desk.locator('.paper-sheet .is-shown')).toHaveCount(1);
  for (const colorScheme of ['light', 'dark'] as const) {
    await desk.emulateMedia({ colorScheme });
    await takePicture(desk, `photograph-${colorScheme}`);
  }
  await desk.getByRole('button', { name: 'Do not use it' }).click();
  await expect(desk.getByRole('button', { name: 'Save', exact: true })).toBeFocused();
});

test('pages chosen together are put in order and read as one bill', async ({ desk }) => {
  await chooseFiles(desk, [sample('paper/gas.pdf'), sample('paper/gas-scan.png')]);
  await expect(desk.getByRole('listitem').filter({ hasText: /^gas/ })).toHaveText([/^gas-scan\.png/, /^gas\.pdf/]);
  await desk.getByRole('button', { name: /^Down.*gas-scan/ }).click();
  await expect(desk.getByRole('listitem').filter({ hasText: /^gas/ })).toHaveText([/^gas\.pdf/, /^gas-scan\.png/]);
  await expect(desk.getByRole('button', { name: /^Up.*gas-scan/ })).toBeFocused();
  await takePicture(desk, 'pages-in-order');
  // A telephone's picture from the clipboard, of which the browser knows the name only.
  await desk.evaluate(() => {
    const clipboardData = new DataTransfer();
    clipboardData.items.add(new File(['a picture'], 'third.heic'));
    document.dispatchEvent(new ClipboardEvent('paste', { clipboardData }));
  });
  await expect(desk.getByRole('listitem').filter({ hasText: /^third\.heic/ })).toBeVisible();
  await desk.getByRole('button', { name: 'Leave this page out' }).last().click();
  await desk.getByRole('button', { name: 'Leave this page out' }).first().click();
  await desk.getByRole('button', { name: 'Read them as one bill' }).click();
  await expect(desk.getByRole('row', { name: /^Energy .*3,559 kWh/ })).toBeVisible();
  // A page that was forgotten comes to the open bill.
  const further = desk.waitForEvent('filechooser');
  await desk.getByRole('button', { name: 'Add a page' }).click();
  await (await further).setFiles([sample('paper/gas.pdf')]);
  await expect(desk.getByRole('listitem').filter({ hasText: /^gas/ })).toHaveText([/^gas-scan\.png/, /^gas\.pdf/]);
});

test('reading a photograph can be stopped, and nothing of it is kept', async ({ desk, host }) => {
  await desk.getByRole('link', { name: 'Larch Rise' }).first().click();
  await desk
    .getByRole('link', { name: /^Bills and readings/ })
    .first()
    .click();
  await chooseFile(desk, desk.getByRole('button', { name: 'Choose a file' }), sample('paper/two-rates-photo.jpg'));
  await desk.getByRole('button', { name: 'Stop reading' }).click();
  await expect(desk.getByText('Reading was stopped. Nothing is saved.')).toBeVisible();
  await expect(desk.getByRole('button', { name: 'Save', exact: true })).toBeDisabled();
  const [household] = await host.call('household.list', {});
  const { evidence } = await host.call('household.open', { id: household!.id });
  expect(evidence.map(({ shape }) => shape)).not.toContain('paper bill');
});
