/** The steps that an installed program is put through on every system. */
import { strict as assert } from 'node:assert';
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { type Browser, chromium, expect, type Page } from '@playwright/test';
import bundled from '@sparticuz/chromium';
import { pageOfRunning } from '../../src/host/running.ts';
import { MIGRATIONS } from '../../src/store/migrations.ts';
import { openDatabase } from '../../src/store/open-database.ts';
import { chooseFile, download, letPricesStand, openStage, sample, typeInto } from '../../tests/end-to-end/host.ts';
import { root } from './about.ts';

export interface Installed {
  /** Where the program keeps its data, as this process sees it. */
  readonly dataFolder: string;
  /** Starts it as a person does. */
  start(): void;
  /** Its command line: what it printed. */
  command(args: readonly string[]): string;
  /** Process ids of the running hosts. */
  running(): number[];
  readonly canPrint: boolean;
  /** Whether one program can reach another over the loopback address: Wine 8 refuses Node's call for that. */
  readonly canConnect: boolean;
}

const HOME_NAME = 'Fern Bank';
const started = performance.now();
export function tell(line: string): void {
  console.log(`${((performance.now() - started) / 1000).toFixed(0).padStart(5)} s  ${line}`);
}

/** Polls, since the program is another process: throws with the words when it does not come true in time. */
export async function until(what: string, holds: () => boolean, seconds = 60): Promise<void> {
  for (let tries = 0; !holds(); tries++) {
    if (tries > seconds * 5) throw new Error(`Not within ${seconds} s: ${what}`);
    await wait(200);
  }
}

/** Ids of processes whose command line holds all the words. */
export function processesWith(...words: readonly string[]): number[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name) && Number(name) !== process.pid)
    .filter((name) => {
      try {
        const line = readFileSync(`/proc/${name}/cmdline`, 'utf8');
        return words.every((word) => line.includes(word));
      } catch {
        return false;
      }
    })
    .map(Number);
}

export function openBrowser(): Promise<Browser> {
  return bundled.executablePath().then((executablePath) =>
    chromium.launch({
      executablePath,
      args: bundled.args.filter((flag) => !['--single-process', '--disable-web-security'].includes(flag)),
    }),
  );
}

export async function openPage(browser: Browser, { dataFolder }: Installed): Promise<Page> {
  const address = await pageOfRunning(dataFolder, 60_000);
  assert(address, 'the program answers within a minute of its start');
  const page = await (
    await browser.newContext({ locale: 'en-GB', timezoneId: 'Europe/London', viewport: { width: 1280, height: 800 } })
  ).newPage();
  page.setDefaultTimeout(60_000);
  await page.goto(address);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return page;
}

/** The main job: a household, a file, an estimate, the paper. A browser test does it too, so that its words stay those on the screen. */
export async function doTheJob(page: Page, canPrint: boolean): Promise<void> {
  const main = page.getByRole('main');
  const button = (name: string | RegExp) => page.getByRole('button', { name });
  const waits = { timeout: 60_000 };
  await button('New household').click();
  await page.getByLabel('Name of the home').fill(HOME_NAME);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: HOME_NAME }).waitFor();
  await chooseFile(page, button('Choose a file'), sample('larch-rise/electricity-half-hourly.csv'));
  await expect(main).toContainText('17,427 rows of data', waits);
  await button('Save').click();
  await expect(main).toContainText('we have 99 days in 100', waits);
  await openStage(page, 'Heat needed');
  await typeInto(page, 'Postcode', 'DE6');
  await typeInto(page, 'Floor area', '96');
  await typeInto(page, 'People', '3');
  await typeInto(page, 'Heat loss at design temperature', '6.1');
  await typeInto(page, 'Design outdoor temperature', '-3.4');
  await openStage(page, 'Heat pump');
  await typeInto(page, 'Seasonal factor, rooms', '3.7');
  await typeInto(page, 'Factor for hot water', '2.8');
  await openStage(page, 'Running cost');
  await expect(main).toContainText('Gas boiler', waits);
  await openStage(page, 'Written estimate');
  await letPricesStand(page);
  await button('Save the written estimate').click();
  await expect(main).toContainText('Estimate no. 1', waits);
  if (canPrint) {
    const { bytes } = await download(page, button(/^Paper for the household/));
    assert.equal(bytes.subarray(0, 5).toString(), '%PDF-');
    tell(`the paper as PDF has ${bytes.length} bytes`);
  } else console.log('SKIPPED: the PDF on Windows is printed by Edge, which is not to be had under Wine.');
  await page.getByText('Other forms, estimate no. 1').click();
  const { bytes } = await download(page, button(/^Paper as a page/));
  assert(bytes.toString().includes(HOME_NAME), 'the paper as a page names the home');
  tell(`the job is done; the paper as a page has ${bytes.length} bytes`);
}

export async function expectHousehold(page: Page): Promise<void> {
  await page.getByRole('link', { name: HOME_NAME, exact: true }).waitFor();
}

export async function endByCommand(program: Installed): Promise<void> {
  if (program.canConnect) program.command(['quit']);
  else for (const id of program.running()) process.kill(id, 'SIGTERM');
  await until('the program has ended', () => program.running().length === 0);
}

async function startTwice(program: Installed): Promise<void> {
  const first = program.running();
  program.start();
  await until('the second start has begun', () => program.running().length > 1, 10).catch(() => undefined);
  await until('a second start leaves one host', () => program.running().length === 1);
  assert.deepEqual(program.running(), first, 'and it is the first one');
  tell('a second start found the running one');
}

/** Start, job, second start, kill, start again. Leaves the program running. */
export async function workWith(program: Installed, browser: Browser): Promise<void> {
  program.start();
  const page = await openPage(browser, program);
  tell('started; its first page is there');
  await doTheJob(page, program.canPrint);
  if (program.canConnect) await startTwice(program);
  else
    console.log(
      'SKIPPED: the second start and quitting by command; under Wine 8 Node cannot connect to another program.',
    );
  for (const id of program.running()) process.kill(id, 'SIGKILL');
  await until('the killed host is gone', () => program.running().length === 0);
  program.start();
  await expectHousehold(await openPage(browser, program));
  tell('killed and started again: the household is there');
  const picture = join(root, 'packages/work/installed.png');
  mkdirSync(join(root, 'packages/work'), { recursive: true });
  await page.screenshot({ path: picture });
  const text = program.command(['reckon', join(root, 'sample-bills/larch-rise/household.json')]);
  assert.match(text, /Larch Rise/);
  tell('its command line reckons');
  const photograph = program.command(['reckon', '--read', join(root, 'sample-bills/paper/two-rates-photo.jpg')]);
  assert.match(photograph, /Total of the bill: £408\.40/);
  tell('its command line reads a photographed bill');
}

/** Data of an earlier form is carried over with a copy first; data of a later one is refused, and stays as it was. */
export async function openOlderAndNewer(
  program: Installed,
  browser: Browser,
  owner?: (path: string) => void,
): Promise<void> {
  await endByCommand(program);
  const { dataFolder } = program;
  const database = join(dataFolder, 'plainwarmth.sqlite');
  // With the tally, else the program finds that changes are missing, and says that instead.
  for (const ending of ['', '-wal', '-shm', '-tally']) rmSync(database + ending, { force: true });
  openDatabase(database, { migrations: MIGRATIONS.slice(0, 1) }).database.close();
  owner?.(database);
  program.start();
  const page = await openPage(browser, program);
  await page.getByText('A copy of it as it was lies at').waitFor();
  assert(
    readdirSync(dataFolder).some((name) => name.includes('before-version')),
    'the copy lies beside the data',
  );
  await endByCommand(program);
  tell('data of an earlier form: copied first, then carried over');

  const later = [...MIGRATIONS, { version: 99, what: 'a later one', sql: 'SELECT 1' }];
  openDatabase(database, { migrations: later }).database.close();
  owner?.(database);
  const before = readFileSync(database);
  program.start();
  await until('the log says that the data is newer', () =>
    readFileSync(join(dataFolder, 'plainwarmth.log'), 'utf8').includes('written by a newer Plainwarmth'),
  );
  assert(before.equals(readFileSync(database)), 'the newer data was not touched');
  for (const id of program.running()) process.kill(id, 'SIGTERM');
  await until('the refused start has ended', () => program.running().length === 0);
  tell('data of a later form: refused in words, not touched');
}
