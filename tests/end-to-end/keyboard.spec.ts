import type { Page } from '@playwright/test';
import { expect, letPricesStand, sample, takePicture, test, waitUntilKept } from './host.ts';
import { pressAt, tabTo, typeAt, whereAmI } from './keyboard.ts';

/** What had the focus may go away; then the focus is to be on something that stays. */
const expectSomewhere = (page: Page) =>
  expect.poll(async () => (await whereAmI(page)).kind, { message: 'where the focus is' }).not.toBe('nowhere');

const expectAt = (page: Page, name: string) =>
  expect.poll(async () => (await whereAmI(page)).name, { message: 'where the focus is' }).toBe(name);

test('the whole path without a mouse', async ({ desk }) => {
  const main = desk.getByRole('main');
  const { keyboard } = desk;

  await test.step('a new household; Esc leaves the form and the focus is not lost', async () => {
    await pressAt(desk, 'New household');
    await expect(desk.getByLabel('Name of the home')).toBeFocused();
    await keyboard.press('Escape');
    await expect(desk.getByLabel('Name of the home')).toBeHidden();
    await expect(desk.getByRole('button', { name: 'New household' })).toBeFocused();
    await keyboard.press('Enter');
    await keyboard.type('Fern Bank');
    await keyboard.press('Enter');
    await expect(desk.getByRole('heading', { name: 'Fern Bank', level: 1 })).toBeVisible();
  });

  await test.step('the first stop skips the thread', async () => {
    await tabTo(desk, 'Skip to the page');
    await keyboard.press('Enter');
    await expect(main).toBeFocused();
  });

  await test.step('bills typed into the grid', async () => {
    await pressAt(desk, 'Type bills or readings');
    await tabTo(desk, 'First day, row 1');
    const bills = [
      ['1/10/2025', '31/12/2025', '5200', '412.60'],
      ['1/1/2026', '31/3/2026', '6100', '480.10'],
      ['1/4/2026', '30/6/2026', '2300', '190.40'],
    ];
    for (const [index, bill] of bills.entries()) {
      await expectAt(desk, `First day, row ${index + 1}`);
      for (const [cell, value] of bill.entries()) {
        await keyboard.press('ControlOrMeta+a');
        await keyboard.type(value);
        // Enter in the last cell goes to the next row, Tab to the next cell.
        await keyboard.press(cell === bill.length - 1 ? 'Enter' : 'Tab');
      }
    }
    // The next row begins the day after the last bill.
    await expectAt(desk, 'First day, row 4');
    await expect(desk.getByLabel('First day, row 4')).toHaveValue('1 Jul 2026');
    await keyboard.press('Tab');
    await keyboard.type('30/9/2026');
    await keyboard.press('Tab');
    await keyboard.type('900');
    await expect(main).toContainText('So far 14,500 kWh of gas');
    await takePicture(desk, 'keyboard-grid');
    await pressAt(desk, 'Save');
    await expect(main).toContainText('Gas');
    await expect(main).not.toContainText('Typed at the table');
    await expectSomewhere(desk);
  });

  await test.step('a file through the picker that Enter opens', async () => {
    const chosen = desk.waitForEvent('filechooser');
    await pressAt(desk, 'Choose a file');
    await (await chosen).setFiles(sample('larch-rise/electricity-half-hourly.csv'));
    await expect(desk.getByRole('button', { name: 'Save', exact: true })).toBeEnabled();
    await pressAt(desk, 'Save');
    await expect(desk.getByRole('button', { name: 'Remove electricity-half-hourly.csv' })).toBeVisible();
  });

  await test.step('fields, and the grade of one by the arrow keys', async () => {
    await pressAt(desk, /^Heat needed/);
    await expect(main.getByRole('heading', { level: 2 }).first()).toContainText('of heat a year');
    await typeAt(desk, 'Postcode', 'DE6');
    await typeAt(desk, 'Floor area', '96');
    await tabTo(desk, /^(measured|estimated|assumed)$/);
    await keyboard.press('ArrowRight');
    await typeAt(desk, 'People', '3');
    await typeAt(desk, 'Heat loss at design temperature', '6.1');
    await waitUntilKept(desk);
    await pressAt(desk, /^Heat pump/);
    await typeAt(desk, 'Seasonal factor, rooms', '3.7');
    await expect(main).toContainText('What the meter sees');
  });

  await test.step('a tariff of two prices', async () => {
    await pressAt(desk, /^Prices/);
    await pressAt(desk, 'Type a tariff');
    await expectSomewhere(desk);
    await typeAt(desk, 'Name of the tariff', 'Night saver');
    await typeAt(desk, 'Price source', 'bill of March 2026');
    await typeAt(desk, 'Standing charge', '54.8');
    await tabTo(desk, 'one price');
    await keyboard.press('ArrowRight');
    await typeAt(desk, 'Price', '31.2');
    await typeAt(desk, 'Price', '14.5');
    await pressAt(desk, 'Save this tariff');
    await expect(main).toContainText('day 31.2 p and night 14.5 p');
    await expectSomewhere(desk);
  });

  await test.step('a figure opens its working; Esc closes it and the focus is back on the figure', async () => {
    await pressAt(desk, /^Running cost/);
    await tabTo(desk, /^£[\d,]+$/);
    const { name } = await whereAmI(desk);
    await keyboard.press('Enter');
    await expect(desk.getByRole('dialog')).toBeVisible();
    await keyboard.press('Escape');
    await expect(desk.getByRole('dialog')).toBeHidden();
    await expectAt(desk, name);
  });

  await test.step('a chart is one stop, T shows its table, and a slider moves by the arrow keys', async () => {
    await tabTo(desk, /^The heat pump should cost/);
    await keyboard.press('t');
    await expect(main.getByRole('table').first()).toBeVisible();
    await expect(main.getByRole('region', { name: 'as a table' }).first()).toBeFocused();
    await keyboard.press('t');
    await tabTo(desk, 'Electricity');
    await keyboard.press('ArrowRight');
    await expect(main).toContainText('What if: electricity');
    await pressAt(desk, /^Reset/);
    await expect(main).not.toContainText('What if: electricity');
  });

  await test.step('the walk-through, its working, and back to where it was opened', async () => {
    await pressAt(desk, 'Show the customer');
    const counter = desk.getByText(/^\d+ of \d+$/);
    const pages = Number((await counter.textContent())?.split(' of ')[1]);
    for (let number = 1; number < pages; number++) {
      await expect(counter).toHaveText(`${number} of ${pages}`);
      await keyboard.press('ArrowRight');
    }
    await expect(counter).toHaveText(`${pages} of ${pages}`);
    await keyboard.press('Home');
    await expect(counter).toHaveText(`1 of ${pages}`);
    await pressAt(desk, 'How we know');
    await keyboard.press('Escape');
    await expect(desk.getByRole('dialog')).toBeHidden();
    await expect(counter).toHaveText(`1 of ${pages}`);
    await expectAt(desk, 'How we know');
    await keyboard.press('Escape');
    await expect(desk.getByRole('navigation', { name: 'Stages' })).toBeVisible();
    await expectSomewhere(desk);
  });

  await test.step('a written estimate, its paper, and a bill check', async () => {
    await pressAt(desk, /^Written estimate/);
    await letPricesStand(desk);
    await pressAt(desk, 'Save the written estimate');
    await expect(main).toContainText('Estimate no. 1');
    await expectSomewhere(desk);
    await pressAt(desk, /^Other forms/);
    const coming = desk.waitForEvent('download');
    await pressAt(desk, /^Figures as CSV/);
    expect((await coming).suggestedFilename()).toMatch(/\.csv$/);
    await pressAt(desk, /^Bill check/);
    await typeAt(desk, 'First day', '1/12/2026');
    await typeAt(desk, 'Last day', '28/2/2027');
    await typeAt(desk, 'kWh of the heat pump', '2400');
    await typeAt(desk, 'Price per kWh', '29');
    await pressAt(desk, 'Check the bill');
    await expect(main).toContainText('Guided search');
    await expectSomewhere(desk);
    await takePicture(desk, 'keyboard-check');
  });

  await test.step('erasing asks in a dialog that Esc closes, and the focus is back on its button', async () => {
    await pressAt(desk, 'All households');
    await expect(desk.getByRole('link', { name: 'Fern Bank' })).toBeVisible();
    await pressAt(desk, 'More for Fern Bank');
    await pressAt(desk, 'Erase for good');
    await expect(desk.getByRole('dialog')).toBeVisible();
    await keyboard.press('Escape');
    await expect(desk.getByRole('dialog')).toBeHidden();
    await expectAt(desk, 'Erase for good');
    await expect(desk.getByRole('link', { name: 'Fern Bank' })).toBeVisible();
  });
});
