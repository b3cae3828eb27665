import { expect, letPricesStand, openStage, takePicture, test, typeInto, waitUntilKept } from './host.ts';

test('two offers of one home, an estimate each, and the one accepted is what a bill is compared with', async ({
  desk,
}) => {
  await desk.getByRole('link', { name: 'Larch Rise' }).click();
  const save = async (number: number) => {
    await openStage(desk, 'Prices');
    await letPricesStand(desk);
    await openStage(desk, 'Written estimate');
    await desk.getByRole('button', { name: 'Save the written estimate' }).click();
    await expect(desk.getByRole('heading', { name: new RegExp(`^Estimate no. ${number} ·`) })).toBeVisible();
  };
  await test.step('one estimate for each', async () => {
    await save(1);
    await openStage(desk, 'Heat pump');
    await desk.getByRole('button', { name: 'Add another offer' }).click();
    await typeInto(desk, 'Flow temperature, coldest day', '35');
    await waitUntilKept(desk);
    await save(2);
    await takePicture(desk, 'offers-estimates');
  });
  await test.step('the older one is accepted, with its date', async () => {
    await desk.getByRole('button', { name: 'Mark as accepted by the household' }).last().click();
    await expect(desk.getByText(/^accepted on \d/)).toHaveCount(1);
    await waitUntilKept(desk);
  });
  await test.step('the bill check goes by it', async () => {
    await openStage(desk, 'Bill check');
    await expect(desk.getByLabel('Compared with').locator('option:checked')).toHaveText(/^estimate no\. 1 of /);
  });
});
