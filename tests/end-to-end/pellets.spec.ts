import {
  comeToRest,
  expect,
  keepEstimate,
  openStage,
  takePicture,
  test,
  typeInto,
  waitUntilKept,
  walkThrough,
} from './host.ts';

test('a home on pellets: slips in bags, a price by the tonne, its chart and its paper', async ({ desk, host }) => {
  const [home] = await host.call('household.list', {});
  const open = () => host.call('household.open', { id: home!.id });
  const { household, revision, evidence } = await open();
  for (const { id } of evidence) await host.call('evidence.undo', { evidenceId: id });
  const present = { system: 'pellets' as const };
  const prices = { ...household.prices, gasTariffId: undefined };
  await host.call('household.save', { household: { ...household, present, prices }, revision });
  await desk.reload();
  await desk.getByRole('link', { name: 'Larch Rise' }).click();

  await openStage(desk, 'Bills and readings');
  await desk.getByRole('button', { name: /^Type/ }).click();
  await expect(desk.getByRole('radio', { name: 'wood pellets' })).toBeChecked();
  await desk.getByRole('radio', { name: 'bags of 15 kg' }).check();
  const slips = [
    ['10/01/2025', '60'],
    ['20/06/2025', '110'],
    ['12/01/2026', '130'],
  ] as const;
  for (const [row, [day, bags]] of slips.entries()) {
    await desk.getByLabel(`Day of the delivery, row ${row + 1}`).fill(day);
    await desk.getByLabel(`Amount, row ${row + 1}`).fill(bags);
  }
  await comeToRest(desk);
  await takePicture(desk, 'pellets-slips');
  await desk.getByRole('button', { name: 'Save' }).click();
  await expect(desk.getByText(/2 rows saved/)).toBeVisible();
  // 240 bags of 15 kg at 4.8 kWh/kg.
  const [kept] = (await open()).evidence;
  expect(kept!.series[0]).toMatchObject({ carrier: 'pellets', total: expect.closeTo(240 * 15 * 4.8, 6) });

  await openStage(desk, 'Prices');
  await typeInto(desk, 'Wood pellets', '400');
  await waitUntilKept(desk);
  expect((await open()).household.prices.pelletsPencePerKg?.value).toBeCloseTo(40, 9);
  await desk.getByRole('radio', { name: 'bag of 15 kg' }).check();
  await expect(desk.getByLabel('Wood pellets', { exact: true })).toHaveValue('6');

  await takePicture(desk, 'pellets-prices');
  await openStage(desk, 'Heat needed');
  await takePicture(desk, 'pellets-heat-needed');
  await openStage(desk, 'Running cost');
  await expect(desk.getByText('Pellet boiler, as now').first()).toBeVisible();
  await walkThrough(desk, async (number) => takePicture(desk, `pellets-walk-${number}`));

  const { id } = await keepEstimate(host, home!.id);
  const { text } = await host.call('estimate.print', { estimateId: id, format: 'csv' }).then(({ base64 }) => ({
    text: Buffer.from(base64, 'base64').toString('utf8'),
  }));
  expect(text).toContain('Pellet boiler, as now');
});
