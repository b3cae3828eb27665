/** The machine worked out in full, the round inside it, and what is read at the plant, as a person does it. */
import type { Page } from '@playwright/test';
import { expect, openStage, takePicture, test } from './host.ts';
import { findInaccessible } from './inspect.ts';

const main = (page: Page) => page.getByRole('main');
const heading = (page: Page) => page.getByRole('heading', { level: 2 }).first();

async function type(page: Page, label: string, value: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).first().fill(value);
}
async function openHome(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Larch Rise' }).click();
}

test('the machine’s year by the half-hour: chosen, typed, kept', async ({ desk }) => {
  await openHome(desk);
  await openStage(desk, 'Heat pump');
  await desk.getByLabel('Full: worked out by the half-hour').check();
  await expect(main(desk)).toContainText('Where the electricity goes in a year');
  await expect(main(desk)).toContainText('would save about £');
  const before = await main(desk)
    .getByRole('row', { name: /\(H4\)/ })
    .textContent();

  // A half-typed point is named, and what held before still holds.
  await type(desk, 'Source, point 1', '0');
  await type(desk, 'Water, point 1', '35');
  await expect(main(desk)).toContainText('Row 1 still needs its COP. Until then the usual points are used.');
  await expect(main(desk).getByRole('row', { name: /\(H4\)/ })).toHaveText(before!);
  await type(desk, 'COP, point 1', '5.4');
  await type(desk, 'Source, point 2', '0');
  await type(desk, 'Water, point 2', '55');
  await type(desk, 'COP, point 2', '3.5');
  await expect(main(desk)).not.toContainText('still needs');
  await expect(main(desk).getByRole('row', { name: /\(H4\)/ })).not.toHaveText(before!);

  await desk.getByLabel('Refrigerant', { exact: true }).selectOption('R290');
  await desk.getByText('Month by month', { exact: true }).click();
  await expect(main(desk).getByRole('row', { name: /^January/ })).toBeVisible();
  expect(await findInaccessible(desk)).toEqual([]);
  await takePicture(desk, 'full-machine');
  await expect(desk.getByText('Saved', { exact: true })).toBeVisible();

  await desk.reload();
  await expect(desk.getByLabel('COP, point 1')).toHaveValue('5.4');
  await expect(desk.getByLabel('Full: worked out by the half-hour')).toBeChecked();
  await desk.getByLabel('Quick: type the seasonal factors').check();
  await expect(desk.getByLabel('Seasonal factor, rooms')).toBeVisible();
});

test('inside the machine, step by step, with motion and without', async ({ desk }) => {
  await desk.emulateMedia({ reducedMotion: 'no-preference' });
  await openHome(desk);
  await openStage(desk, 'Running cost');
  await desk.getByRole('button', { name: 'Show the customer' }).click();
  for (const page of ['1', '2']) {
    await expect(desk.getByText(new RegExp(`^${page} of \\d+$`))).toBeVisible();
    await desk.keyboard.press('ArrowRight');
  }
  await expect(desk.getByRole('button', { name: 'Inside the machine' })).toBeVisible();
  const sourceSentence = await desk.getByRole('heading', { level: 1 }).textContent();
  await desk.getByRole('button', { name: 'Inside the machine' }).click();
  const inside = desk.getByRole('dialog');
  const sentence = inside.getByRole('heading', { level: 1 });
  await expect(sentence).toContainText('Each hour the ground gives');

  const said = new Set([await sentence.textContent()]);
  for (const step of ['The ground', 'Evaporator', 'Compressor', 'Condenser', 'The house', 'Expansion valve']) {
    await desk.keyboard.press('ArrowRight');
    await expect(inside.getByRole('button', { name: step })).toHaveAttribute('aria-current', 'step');
    said.add(await sentence.textContent());
  }
  expect(said.size).toBe(7);
  await expect(inside.getByRole('button', { name: 'Next step' })).toBeDisabled();
  await desk.keyboard.press('ArrowLeft');
  await expect(inside.getByRole('button', { name: 'The house' })).toHaveAttribute('aria-current', 'step');

  const current = inside.locator('[data-part="current"]');
  const animation = () => current.evaluate((element) => getComputedStyle(element).animationName);
  expect(await animation()).toBe('cycle-round');
  await desk.emulateMedia({ reducedMotion: 'reduce' });
  expect(await animation()).toBe('none');
  expect(await findInaccessible(desk)).toEqual([]);
  await takePicture(desk, 'inside-machine');

  await desk.keyboard.press('t');
  await expect(inside.getByRole('row', { name: /Low pressure on the gauge/ })).toContainText(/bar, .* psi/);
  await desk.keyboard.press('t');
  await inside.getByRole('button', { name: 'How we know' }).click();
  await expect(desk.getByRole('dialog', { name: 'How we know' })).toContainText('COP');
  await desk.keyboard.press('Escape');
  await expect(desk.getByRole('dialog', { name: 'How we know' })).toBeHidden();
  await desk.keyboard.press('Escape');
  await expect(inside).toBeHidden();
  // The walk-through stands where it was left.
  await expect(desk.getByRole('heading', { level: 1 })).toHaveText(sourceSentence!);
});

test('inside an air machine: air, fan and frost, and no ground', async ({ desk }) => {
  await openHome(desk);
  await openStage(desk, 'Heat pump');
  await desk.getByLabel('Full: worked out by the half-hour').check();
  await desk.getByRole('group', { name: 'Heat source' }).getByLabel('the air').check();
  await expect(main(desk)).toContainText('Maximum output, coldest day');
  await openStage(desk, 'Running cost');
  await desk.getByRole('button', { name: 'Show the customer' }).click();
  for (const page of ['1', '2']) {
    await expect(desk.getByText(new RegExp(`^${page} of \\d+$`))).toBeVisible();
    await desk.keyboard.press('ArrowRight');
  }
  await desk.getByRole('button', { name: 'Inside the machine' }).click();
  const inside = desk.getByRole('dialog');
  const sentence = inside.getByRole('heading', { level: 1 });
  await expect(sentence).toHaveText(
    /^Each hour the air gives .+ and the compressor adds .+\. .*Fan and defrost take .+ more\.$/,
  );
  const given = (await sentence.textContent())!.match(/[\d.]+\d|\d/g)!.map(Number);
  // Air and compressor make what the house gets, each said to a tenth.
  expect(Math.abs(given[0]! + given[1]! - given[2]!)).toBeLessThan(0.16);
  await expect(inside).toContainText('fan and defrost:');
  for (const step of ['Outdoor air', 'Evaporator', 'Compressor', 'Condenser', 'The house', 'Expansion valve']) {
    await desk.keyboard.press('ArrowRight');
    await expect(inside.getByRole('button', { name: step })).toHaveAttribute('aria-current', 'step');
    await expect(inside).not.toContainText(/the ground|frost protection/i);
  }
  expect(await findInaccessible(desk)).toEqual([]);
  await takePicture(desk, 'inside-air');
  await desk.keyboard.press('t');
  await expect(inside.getByRole('row', { name: /Defrost, on average/ })).toContainText('kWh an hour');
  await desk.keyboard.press('t');
  await inside.getByRole('button', { name: 'How we know' }).click();
  await expect(desk.getByRole('dialog', { name: 'How we know' })).toContainText('All from the meter');
});

test('readings at the plant, judged at once and kept', async ({ desk }) => {
  await openHome(desk);
  await openStage(desk, 'Bill check');
  await desk.getByRole('button', { name: 'Site readings' }).click();
  await expect(heading(desk)).toHaveText('Type what you read at the plant. Nothing is a must.');
  await expect(main(desk)).toContainText('Only people certified for it may open');
  await expect(main(desk)).toContainText('Local codes');

  await type(desk, 'Flow', '38');
  await type(desk, 'Return', '33');
  await type(desk, 'Flow rate of the water', '23');
  await type(desk, 'Input power', '2');
  // 23 l/min × 0.994 kg/l × 4.179 kJ/kgK × 5 K / 60 s = 7.96 kW; over 2 kW 3.98.
  await expect(main(desk).getByRole('row', { name: /^Heat given to the water/ })).toContainText('8.0 kW');
  await expect(main(desk).getByRole('row', { name: /\(COP\)/ })).toContainText('3.98');
  await type(desk, 'Brine in', '4');
  await type(desk, 'Brine out', '-3');
  await expect(main(desk).getByRole('row', { name: /^Brine in less brine out/ })).toContainText('above');
  await expect(main(desk).getByRole('row', { name: /\(COP\)/ })).toContainText('we expect');
  await expect(main(desk)).toContainText('Too little brine may be going round');

  await desk.getByLabel('Refrigerant', { exact: true }).selectOption('R407C');
  await type(desk, 'Suction pressure', '2.9');
  await type(desk, 'Suction pipe', '1');
  await expect(main(desk).getByRole('row', { name: /\(superheat\)/ })).toContainText(/inside|below|above/);
  await type(desk, 'Share of glycol', '10');
  await expect(main(desk).getByRole('row', { name: /^Freezing point below the coldest brine/ })).toContainText('below');
  await expect(main(desk)).toContainText('The brine may be too weak');
  await expect(heading(desk)).toHaveText('Urgent: the brine could freeze in the machine.');

  await type(desk, 'Return', '41');
  await expect(main(desk).getByRole('alert')).toContainText('Check whether the two were exchanged');
  await type(desk, 'Return', '33');
  // The same flow in another unit is the same flow.
  await desk.getByLabel('Flow meters show', { exact: true }).selectOption('m³/h');
  await expect(desk.getByLabel('Flow rate of the water', { exact: true })).toHaveValue('1.38');
  expect(await findInaccessible(desk)).toEqual([]);
  await takePicture(desk, 'site-readings');
  await expect(desk.getByText('Saved', { exact: true })).toBeVisible();

  await desk.reload();
  await expect(desk.getByLabel('Brine out', { exact: true })).toHaveValue('-3');
  await desk.getByRole('button', { name: 'Another visit' }).click();
  await expect(desk.getByLabel('Brine out', { exact: true })).toHaveValue('');
  await type(desk, 'Brine in', '6');
  await expect(desk.getByRole('button', { name: /^Open/ })).toHaveCount(2);
  await desk.getByRole('button', { name: /^Open ?: / }).click();
  await expect(desk.getByLabel('Brine out', { exact: true })).toHaveValue('-3');
  await desk
    .getByRole('button', { name: /^Remove/ })
    .first()
    .click();
  await expect(desk.getByRole('button', { name: /^Open/ })).toHaveCount(1);
});
