import { statSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from '@playwright/test';
import {
  chooseFile,
  expect,
  type Host,
  openStage,
  startHost,
  test,
  typeInto,
  waitUntilKept,
  writeFile,
} from './host.ts';

// Each test ends the host itself, so the windows are opened here and their faults are expected.
test.use({ sampleName: null });

async function openWindow(browser: Browser, host: Host, name: string): Promise<Page> {
  const page = await (await browser.newContext({ locale: 'en-GB', timezoneId: 'Europe/London' })).newPage();
  await page.goto(host.url);
  await page.getByRole('link', { name, exact: true }).click();
  await expect(page.getByRole('heading', { name, level: 1 })).toBeVisible();
  return page;
}

/** Each outcome, with the kill inside the commit: a few here, PLAINWARMTH_KILLS of each where somebody asks for more. */
const KILLS_EACH = Number(process.env.PLAINWARMTH_KILLS ?? 2);
const MOST_KILLS = 15 * KILLS_EACH;

/** Five years of half-hours: 87,696 rows, some 2.5 MB. */
function fiveYears(): string {
  const rows = ['start,Electricity (kWh)'];
  const first = Date.UTC(2016, 0, 1);
  const slots = (Date.UTC(2021, 0, 1) - first) / 1_800_000;
  for (let slot = 0; slot < slots; slot++) {
    rows.push(
      `${new Date(first + slot * 1_800_000).toISOString().slice(0, 16)}Z,${(0.1 + (slot % 48) / 100).toFixed(2)}`,
    );
  }
  return `${rows.join('\n')}\n`;
}

test('what is kept survives the host being killed', async ({ browser, dataFolder }) => {
  let host = await startHost(dataFolder);
  await host.call('household.create', { name: 'Fern Bank' });
  const page = await openWindow(browser, host, 'Fern Bank');
  await openStage(page, 'Heat needed');
  await typeInto(page, 'Floor area', '137');
  await typeInto(page, 'Postcode', 'CA10');
  await page.getByLabel('Heating today').selectOption('oil boiler');
  await waitUntilKept(page);
  await host.kill();

  await test.step('the window says that the host is gone, and that what was kept is safe', async () => {
    await typeInto(page, 'People', '4');
    await expect(page.getByRole('alert')).toContainText('does not answer any more');
    await expect(page.getByRole('alert')).toContainText('What was saved before is safe');
  });

  host = await startHost(dataFolder);
  const again = await openWindow(browser, host, 'Fern Bank');
  await openStage(again, 'Heat needed');
  await expect(again.getByLabel('Floor area', { exact: true })).toHaveValue('137');
  await expect(again.getByLabel('Postcode', { exact: true })).toHaveValue('CA10');
  await expect(again.getByLabel('Heating today').locator('option:checked')).toHaveText('oil boiler');
  expect((await host.call('app.read', {})).notice).toBeUndefined();
  await host.stop();
});

test('a kill in the middle of an import leaves all of it or nothing', async ({ browser, dataFolder }) => {
  const text = fiveYears();
  const bytes = new TextEncoder().encode(text);
  let host = await startHost(dataFolder);
  const { household } = await host.call('household.create', { name: 'Fern Bank' });

  /** Begins the import and answers how long it took when it is let through. */
  async function beginImport(): Promise<number> {
    const { fileId } = await host.call('file.offer', { fileName: 'five-years.csv', bytes });
    const begun = performance.now();
    await host.call('evidence.accept', { fileId, householdId: household.id, choices: {} });
    return performance.now() - begun;
  }

  const whole = await beginImport();
  const kept = (await host.call('household.open', { id: household.id })).evidence[0]!;
  await host.call('evidence.undo', { evidenceId: kept.id });
  await host.call('household.erase', { id: household.id, confirmName: 'Fern Bank' });
  const rows = text.split('\n').length - 2;
  expect(kept.series[0]!.present).toBe(rows);

  // The log grows only while the transaction is written to it: a kill after its first growth and before the answer
  // falls into the commit. How long that lasts is the machine's own: the wait follows the outcome before, longer after one
  // that left nothing and shorter after one that came behind the answer, so that it stays about the end of the commit.
  const log = join(dataFolder, 'plainwarmth.sqlite-wal');
  const logSize = () => statSync(log, { throwIfNoEntry: false })?.size ?? 0;
  const kills = { nothing: 0, all: 0, inTheCommit: 0, tries: 0 };
  let waitMs = 2;
  while (kills.nothing < KILLS_EACH || kills.all < KILLS_EACH) {
    expect(++kills.tries, `both outcomes ${KILLS_EACH} times: ${JSON.stringify(kills)}`).toBeLessThanOrEqual(
      MOST_KILLS,
    );
    const { household } = await host.call('household.create', { name: `Kill ${kills.tries}` });
    const { fileId } = await host.call('file.offer', { fileName: 'five-years.csv', bytes });
    const before = logSize();
    let answered = false;
    const importing = host
      .call('evidence.accept', { fileId, householdId: household.id, choices: {} })
      .then(() => {
        answered = true;
      })
      .catch(() => undefined);
    const late = performance.now() + whole * 4;
    // Not as often as can be, which would take a processor away from the import.
    while (logSize() === before && !answered && performance.now() < late) await new Promise((next) => setTimeout(next));
    const end = performance.now() + waitMs;
    while (performance.now() < end && !answered) await new Promise(setImmediate);
    const isInside = !answered && logSize() > before;
    await host.kill();
    await importing;
    host = await startHost(dataFolder);
    const { evidence } = await host.call('household.open', { id: household.id });
    expect((await host.call('app.read', {})).notice, 'nothing that was kept is missing').toBeUndefined();
    expect(evidence.length).toBeLessThanOrEqual(1);
    // What was answered has been kept.
    if (answered) expect(evidence).toHaveLength(1);
    for (const { series } of evidence) {
      expect(series[0]!.present).toBe(rows);
      const readings = await host.call('evidence.readings', {
        seriesId: series[0]!.id,
        from: '2016-01-01',
        to: '2021-01-01',
      });
      expect(readings.length).toBeGreaterThan(1000);
    }
    if (isInside) {
      kills.inTheCommit++;
      kills[evidence.length === 0 ? 'nothing' : 'all']++;
    }
    // Where one outcome is met often enough, a step back leads to the other.
    if (answered || (evidence.length > 0 && kills.nothing < KILLS_EACH)) waitMs *= 0.6;
    else if (evidence.length === 0) waitMs = waitMs * 1.5 + 1;
    await host.call('household.erase', { id: household.id, confirmName: `Kill ${kills.tries}` });
  }
  expect((await host.call('data.check', {})).damage).toEqual([]);
  console.log(
    `  An import of ${rows} rows took ${whole.toFixed(0)} ms; kills inside its commit: ${JSON.stringify(kills)}.`,
  );

  await test.step('and in the window: the import can simply be made again', async () => {
    await host.call('household.create', { name: 'Again' });
    const page = await openWindow(browser, host, 'Again');
    await chooseFile(page, page.getByRole('button', { name: 'Choose a file' }), writeFile('five-years.csv', text));
    const keep = page.getByRole('button', { name: 'Save' });
    await expect(keep).toBeEnabled();
    await keep.click();
    await expect(page.getByRole('button', { name: 'Remove five-years.csv' })).toBeVisible();
  });
  await host.stop();
});
