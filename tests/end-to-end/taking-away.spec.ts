/** What is taken away and set for good: a picture in each form, the logo, the pages left out of the walk. */
import { crc32 } from 'node:zlib';
import { smallPng } from '../unit/desk/logos.ts';
import { chooseFile, download, expect, keepEstimate, openStage, test, waitUntilKept, writeFile } from './host.ts';

test('a picture is saved as dots, copied, and where the browser lets no one copy it says so', async ({
  desk,
  host,
}) => {
  await desk.getByRole('link', { name: 'Larch Rise' }).click();
  await openStage(desk, 'Running cost');
  const chart = desk.locator('figure.chart').first();
  await chart.locator('.chart-take > summary').click();

  await test.step('whole and twice as fine as the screen', async () => {
    const drawn = (await chart.locator('svg').first().boundingBox())!;
    const { name, bytes } = await download(desk, chart.getByRole('button', { name: /^Save as PNG/ }));
    expect(name).toMatch(/^[a-z0-9-]+\.png$/);
    expect(bytes.subarray(1, 4).toString()).toBe('PNG');
    // The margin of the sheet lies around it on both sides.
    expect(bytes.readUInt32BE(16)).toBeGreaterThanOrEqual(2 * Math.floor(drawn.width));
    expect(bytes.readUInt32BE(20)).toBeGreaterThanOrEqual(2 * Math.floor(drawn.height));
    // Cut off anywhere, the last chunk and its sum would be wrong.
    expect(bytes.subarray(-8, -4).toString('latin1')).toBe('IEND');
    expect(bytes.readUInt32BE(bytes.length - 4)).toBe(crc32(Buffer.from('IEND')));
  });

  await test.step('into the clipboard as a picture, and a line says so', async () => {
    await desk.context().grantPermissions(['clipboard-read', 'clipboard-write'], { origin: new URL(host.url).origin });
    await chart.getByRole('button', { name: /^Copy picture/ }).click();
    await expect(chart.getByRole('status')).toHaveText('The picture is in the clipboard.');
    const kinds = await desk.evaluate(async () => (await navigator.clipboard.read()).flatMap(({ types }) => types));
    expect(kinds).toContain('image/png');
  });

  await test.step('a picture that the browser does not let be copied says what to do instead', async () => {
    await desk.evaluate(() => {
      Object.defineProperty(navigator, 'clipboard', {
        value: { write: () => Promise.reject(new DOMException('no', 'NotAllowedError')) },
      });
    });
    await chart.getByRole('button', { name: /^Copy picture/ }).click();
    await expect(chart.getByRole('status')).toHaveText(/Save it as PNG instead/);
  });
});

test('the logo of the installer is shown, printed on the paper, and taken away again', async ({ desk, host }) => {
  await desk.goto(`${host.url.split('#')[0]}#/settings`);
  const field = desk.getByRole('group', { name: 'Logo' });
  await chooseFile(desk, field.getByRole('button', { name: /^Choose a logo/ }), writeFile('logo.png', smallPng()));
  const shown = field.getByRole('img', { name: 'Your logo' });
  await expect(shown).toBeVisible();
  const address = await shown.getAttribute('src');
  expect((await host.call('settings.read', {})).logo).toBe(address);

  const { id } = (await host.call('household.list', {}))[0]!;
  const estimate = await keepEstimate(host, id);
  const page = async () => {
    const { base64 } = await host.call('estimate.print', { estimateId: estimate.id, format: 'html' });
    return Buffer.from(base64, 'base64').toString();
  };
  expect(await page()).toContain(address);

  await chooseFile(desk, field.getByRole('button', { name: /^Another logo/ }), writeFile('no-logo.png', 'no picture'));
  await expect(field.getByRole('alert')).toContainText('Not saved.');
  await expect(shown).toHaveAttribute('src', address!);

  await field.getByRole('button', { name: 'Remove' }).click();
  await expect(shown).toHaveCount(0);
  expect(await page()).not.toContain(address);
});

test('a page left out of the walk stays out, comes back, and may stand elsewhere', async ({ desk }) => {
  await desk.getByRole('link', { name: 'Larch Rise' }).click();
  await openStage(desk, 'Running cost');
  await desk.getByRole('button', { name: 'Show the customer' }).click();
  const counter = desk.getByText(/^\d+ of \d+$/);
  const all = Number((await counter.textContent())!.split(' of ')[1]);
  await desk.keyboard.press('n');
  await desk.getByText(`Pages shown: ${all} of ${all}`).click();
  const source = desk.getByRole('checkbox', { name: 'Where the heat comes from' });
  await source.uncheck();
  await expect(counter).toHaveText(`1 of ${all - 1}`);
  await desk.keyboard.press('n');
  await desk.getByRole('button', { name: 'Next' }).click();
  await desk.getByRole('button', { name: 'Next' }).click();
  await expect(desk.getByRole('heading', { level: 1 })).not.toHaveText(/For every kWh/);
  await desk.getByRole('button', { name: 'Close' }).click();
  await waitUntilKept(desk);
  await desk.reload();
  await desk.getByRole('button', { name: 'Show the customer' }).click();
  await expect(counter).toHaveText(`1 of ${all - 1}`);
  await desk.keyboard.press('n');
  await desk.getByText(`Pages shown: ${all - 1} of ${all}`).click();
  await source.check();
  await expect(counter).toHaveText(`1 of ${all}`);

  await test.step('another order', async () => {
    await desk.getByRole('button', { name: /^Earlier ?: What it would cost/ }).click();
    await expect(desk.getByRole('heading', { level: 1 })).toHaveText(/^Your heating and hot water would cost/);
    await desk.getByRole('button', { name: 'Next', exact: true }).click();
    await expect(desk.getByRole('heading', { level: 1 })).toHaveText(/^Larch Rise: heating and hot water cost/);
  });
});
