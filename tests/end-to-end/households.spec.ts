import type { Locator, Page } from '@playwright/test';
import { chooseFile, download, expect, openStage, STAGES, takePicture, test, writeFile } from './host.ts';

// This household comes with evidence, a written estimate and a bill check.
test.use({ sampleName: 'mill-lane' });

const row = (page: Page, name: string): Locator => page.getByRole('link', { name, exact: true });

async function more(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: `More for ${name}`, exact: true }).click();
}

/** All that the seven stages say of a household, in words, once what is reckoned behind them has come. */
async function readStages(page: Page): Promise<string[]> {
  const said: string[] = [];
  for (const stage of STAGES) {
    await openStage(page, stage);
    said.push(`${stage}: ${await page.getByRole('main').textContent()}`);
  }
  return said;
}

test('households are found, copied, archived, taken out as a file, erased and brought in again', async ({
  desk,
  host,
}) => {
  await host.call('household.create', { name: 'Fern Bank' });
  await desk.reload();
  const find = desk.getByLabel('Find by name, place or job number');

  await test.step('found by name, place and job number', async () => {
    for (const [typed, found, not] of [
      ['fern', 'Fern Bank', 'Mill Lane'],
      ['SY23', 'Mill Lane', 'Fern Bank'],
      ['pw-088', 'Mill Lane', 'Fern Bank'],
    ] as const) {
      await find.fill(typed);
      await expect(row(desk, not)).toBeHidden();
      await expect(row(desk, found)).toBeVisible();
    }
    await find.fill('zebra');
    await expect(desk.getByText('Nothing here is called “zebra”')).toBeVisible();
    await find.fill('');
    await expect(row(desk, 'Mill Lane')).toBeVisible();
  });

  await test.step('a copy has the same evidence', async () => {
    await more(desk, 'Mill Lane');
    await desk.getByRole('button', { name: 'Duplicate' }).click();
    await expect(row(desk, 'Mill Lane, copy')).toBeVisible();
    const pieces = (name: string) =>
      desk
        .getByRole('row')
        .filter({ has: row(desk, name) })
        .getByRole('cell')
        .nth(1)
        .textContent();
    expect(await pieces('Mill Lane, copy')).toBe(await pieces('Mill Lane'));
    await more(desk, 'Mill Lane');
  });

  await test.step('the copy goes into the archive and comes back', async () => {
    await more(desk, 'Mill Lane, copy');
    await desk.getByRole('button', { name: 'Archive', exact: true }).click();
    await expect(row(desk, 'Mill Lane, copy')).toBeHidden();
    await desk.getByLabel('Show the archive').check();
    await expect(row(desk, 'Mill Lane, copy')).toBeVisible();
    const back = desk.getByRole('button', { name: 'Restore' });
    if (!(await back.isVisible())) await more(desk, 'Mill Lane, copy');
    await back.click();
    await desk.getByLabel('Show the archive').uncheck();
    await expect(row(desk, 'Mill Lane, copy')).toBeVisible();
  });

  let before: string[] = [];
  await test.step('what it says is noted', async () => {
    await row(desk, 'Mill Lane').click();
    before = await readStages(desk);
    expect(before.join('\n')).toContain('Estimate no. 1');
    await desk.getByRole('link', { name: 'All households' }).click();
  });

  let file = '';
  await test.step('it is exported as a file', async () => {
    await more(desk, 'Mill Lane');
    await desk.getByRole('button', { name: 'Export as a file' }).click();
    await takePicture(desk, 'households-export');
    const dialog = desk.getByRole('dialog');
    await expect(dialog.getByLabel('Export the meter files too')).not.toBeChecked();
    const exported = await download(desk, dialog.getByRole('button', { name: 'Export', exact: true }));
    await expect(dialog).toBeHidden();
    expect(exported.name).toBe('Mill Lane.plainwarmth.json');
    expect(JSON.parse(exported.bytes.toString())).toMatchObject({ household: { name: 'Mill Lane' } });
    file = writeFile(exported.name, exported.bytes);
  });

  await test.step('it is erased only when its name is typed out', async () => {
    await desk.getByRole('button', { name: 'Erase for good' }).click();
    const dialog = desk.getByRole('dialog');
    await dialog.getByLabel('Type the name “Mill Lane” to erase it').fill('Mill');
    await dialog.getByRole('button', { name: 'Erase for good' }).click();
    await expect(dialog).toContainText('Nothing was erased');
    await takePicture(desk, 'households-erase');
    await dialog.getByLabel('Type the name “Mill Lane” to erase it').fill('Mill Lane');
    await dialog.getByRole('button', { name: 'Erase for good' }).click();
    await expect(dialog).toBeHidden();
    await expect(row(desk, 'Mill Lane')).toBeHidden();
    await expect(row(desk, 'Mill Lane, copy')).toBeVisible();
  });

  await test.step('its own file brings everything back: evidence, written estimate, bill check', async () => {
    await chooseFile(desk, desk.getByRole('button', { name: 'Choose a household file' }), file);
    await expect(desk.getByRole('heading', { name: 'Mill Lane', exact: true })).toBeVisible();
    expect(await readStages(desk)).toEqual(before);
  });

  await test.step('a file that is none is refused in words, and the list stays', async () => {
    await desk.getByRole('link', { name: 'All households' }).click();
    const wrong = writeFile('notes.json', '{"household": 3}');
    await chooseFile(desk, desk.getByRole('button', { name: 'Choose a household file' }), wrong);
    await expect(desk.getByRole('alert')).toContainText('notes.json');
    await expect(row(desk, 'Mill Lane')).toBeVisible();
  });
});

test('the shell’s menu shows what goes along before a household is exported', async ({ desk, host }) => {
  // The bridge of the desktop shell, answered by this host; what would be saved is looked at instead.
  await desk.addInitScript((token) => {
    const listeners = new Set<(command: string) => void>();
    const saved: string[] = [];
    const headers = { 'Content-Type': 'application/json', 'X-Plainwarmth-Token': token };
    const bridge = {
      async call(_: number, name: string, input: unknown) {
        const answer = await fetch(`/call/${name}`, { method: 'POST', body: JSON.stringify(input), headers });
        return JSON.parse((await answer.text()).trim().split('\n').at(-1)!);
      },
      cancel() {},
      onProgress() {},
      saveFile: async ({ fileName }: { fileName: string }) => saved.push(fileName) > 0,
      onMenu(listener: (command: string) => void) {
        listeners.add(listener);
        return () => listeners.delete(listener);
      },
    };
    const choose = (command: string) => {
      for (const listener of listeners) listener(command);
    };
    Object.assign(window, { plainwarmth: bridge, saved, choose, listeners });
  }, host.url.split('#token=')[1]!);
  await desk.reload();
  const saved = () => desk.evaluate(() => (window as unknown as { saved: string[] }).saved);
  const choose = () => desk.evaluate(() => (window as unknown as { choose(to: string): void }).choose('export'));
  await row(desk, 'Mill Lane').click();
  // The household listens beside the window once its screen stands.
  await desk.waitForFunction(() => (window as unknown as { listeners: Set<unknown> }).listeners.size === 2);

  await choose();
  const dialog = desk.getByRole('dialog', { name: 'Export Mill Lane?' });
  await expect(dialog.getByText('All that you typed goes along, names too')).toBeVisible();
  await dialog.getByRole('button', { name: 'Cancel' }).click();
  expect(await saved()).toEqual([]);

  await choose();
  await expect(dialog.getByLabel('Export the meter files too')).not.toBeChecked();
  await dialog.getByRole('button', { name: 'Export', exact: true }).click();
  await expect(dialog).toBeHidden();
  await expect.poll(saved).toHaveLength(1);
});
