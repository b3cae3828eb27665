/** Panels, a battery and a car typed with the prices are counted on every tariff. */
import { comeToRest, expect, openStage, test } from './host.ts';

test('what is typed of roof, battery and car is counted, and a battery of 0 is refused in words', async ({ desk }) => {
  await desk.getByRole('link', { name: 'Larch Rise' }).click();
  await openStage(desk, 'Prices');
  await desk.getByLabel('Solar panels').fill('4');
  const counted = desk.getByRole('listitem');
  await desk.getByText('All that is counted, and how').click();
  await expect(counted.filter({ hasText: /The panels make about 3,\d+ kWh in a usual year/ })).toBeVisible();
  await desk.getByLabel('They face').selectOption('north');
  await expect(counted.filter({ hasText: /The panels make about 2,\d+ kWh in a usual year/ })).toBeVisible();
  await desk.getByRole('button', { name: 'Panels on another slope' }).click();
  await expect(desk.getByLabel('Solar panels, slope 2')).toBeVisible();
  await desk.getByLabel('Battery', { exact: true }).fill('0');
  await expect(desk.getByText('A battery that holds nothing is left empty here.')).toBeVisible();
  await desk.getByLabel('Battery', { exact: true }).fill('8');
  await desk.getByLabel('May be filled from the grid in cheap hours').check();
  await desk.getByLabel('An electric car is charged at home').check();
  await expect(counted.filter({ hasText: /The car takes 3,\d+ kWh a year at home/ })).toBeVisible();
  await expect(counted.filter({ hasText: /The battery loses about/ })).toBeVisible();
  await comeToRest(desk);
});
