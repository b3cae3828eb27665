/** The application as a person has it: the loopback host on an empty data folder, and a window on it. */
import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { test as base, expect, type Locator, type Page } from '@playwright/test';
import type { Call } from '../../src/desk/contract.ts';
import { PRICED_CARRIERS } from '../../src/model/shapes/heating.ts';
import { callOverHttp } from '../../src/screens/desk-http.ts';

export const root = resolve(import.meta.dirname, '../..');
export const sample = (file: string) => join(root, 'sample-bills', file);
const pictures = join(root, 'tests/output/screens');

export interface Host {
  /** The address with the token of this start. */
  readonly url: string;
  readonly pid: number;
  /** The contract, as the screens have it. */
  readonly call: Call;
  stop(): Promise<void>;
  /** Ends it without a word, as a power cut does. */
  kill(): Promise<void>;
}

/** The Node that the host runs on: the tests' own, or the one that ships (`npm run package:try -- node`). */
const NODE = process.env.PLAINWARMTH_NODE ?? process.execPath;

/** Starts the host on a data folder; the sample goes into an empty one only. With a `day` it lives on that one. */
export async function startHost(
  dataFolder: string,
  sampleName: string | null = null,
  day: string | null = null,
): Promise<Host> {
  const child = spawn(
    NODE,
    [
      ...(day === null ? [] : ['--import', pathToFileURL(join(import.meta.dirname, 'on-a-day.mjs')).href]),
      join(root, 'build/out/node/main.js'),
      '--no-open',
      '--data',
      dataFolder,
      ...(sampleName === null ? [] : ['--sample', sample(sampleName)]),
    ],
    {
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, TZ: 'Europe/London', ...(day === null ? {} : { TEST_DAY: day }) },
    },
  );
  const url = await new Promise<string>((found, failed) => {
    let said = '';
    const listen = (chunk: Buffer) => {
      said += chunk.toString();
      const address = /http:\/\/127\.0\.0\.1:\d+\/\S*/.exec(said);
      if (address) found(address[0]);
    };
    child.stdout.on('data', listen);
    child.stderr.on('data', listen);
    child.once('exit', () => failed(new Error(`The host ended before it gave its address: ${said}`)));
  });
  const [base, token] = url.split('/#token=') as [string, string];
  return {
    url,
    pid: child.pid!,
    call: callOverHttp({ base, token }),
    stop: () => ended(child, 'SIGTERM'),
    kill: () => ended(child, 'SIGKILL'),
  };
}

/** Puts an invented household into a folder as a first start does; done once in a run of the tests, for whoever copies it. */
async function putSample(sampleName: string, kept: string): Promise<void> {
  if (existsSync(kept)) return;
  mkdirSync(dirname(kept), { recursive: true });
  const made = mkdtempSync(`${kept}-`);
  const host = await startHost(made, sampleName);
  await host.call('household.list', {});
  await host.stop();
  try {
    renameSync(made, kept);
  } catch {
    // The other worker was here first.
    rmSync(made, { recursive: true });
  }
}

function ended(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  return new Promise((done) => {
    if (child.exitCode !== null || child.signalCode !== null) return done();
    child.once('exit', () => done());
    child.kill(signal);
  });
}

interface Options {
  /** The invented household that lies in the data folder; null leaves it empty. */
  readonly sampleName: string | null;
  /** The day that the host lives on; null is today. */
  readonly day: string | null;
}
interface Fixtures {
  readonly dataFolder: string;
  readonly host: Host;
  /** The window, open on the list of households; any fault on its console fails the test. */
  readonly desk: Page;
}

/** Notes every fault on the console of a window. */
export function watchFaults(page: Page): string[] {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    // A refused request is an answer in words, which the browser also logs as a failed load.
    if (message.type() === 'error' && !/status of 4\d\d/.test(message.text())) faults.push(message.text());
  });
  return faults;
}

export const test = base.extend<Options & Fixtures>({
  sampleName: ['larch-rise', { option: true }],
  day: [null, { option: true }],
  dataFolder: async ({ sampleName }, use, { project }) => {
    const folder = mkdtempSync(join(tmpdir(), 'plainwarmth-'));
    if (sampleName !== null) {
      // Emptied at the start of each run.
      const kept = join(project.outputDir, 'samples', sampleName);
      await putSample(sampleName, kept);
      cpSync(kept, folder, { recursive: true });
    }
    await use(folder);
    rmSync(folder, { recursive: true, force: true });
  },
  host: async ({ dataFolder, day }, use) => {
    const host = await startHost(dataFolder, null, day);
    await use(host);
    await host.stop();
  },
  desk: async ({ page, host }, use) => {
    const faults = watchFaults(page);
    await page.goto(host.url);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await use(page);
    expect(faults, 'faults on the console').toEqual([]);
  },
});
export { expect };

/** Keeps a written estimate on whatever day this runs: a price that is old by then stands, as somebody would say at the desk. */
export async function keepEstimate(host: Host, householdId: string) {
  const { today } = await host.call('app.read', {});
  const { household, revision } = await host.call('household.open', { id: householdId });
  const stand = ([...PRICED_CARRIERS, 'two-rate'] as const).map((price) => ({ price, on: today }));
  const prices = { ...household.prices, stand };
  await host.call('household.save', { household: { ...household, prices }, revision });
  return host.call('estimate.keep', { householdId, note: '' });
}

/** Says of every open price on the page that it stands; on most days there is none. */
export async function letPricesStand(page: Page): Promise<void> {
  const open = page.getByRole('button', { name: 'Use it as assumed' });
  while ((await open.count()) > 0) {
    await open.first().click();
    await comeToRest(page);
  }
}

/** Waits until nothing on the screen changes any more: several frames in a row without a change, all reckoning done. */
export async function comeToRest(page: Page): Promise<void> {
  await expect(page.locator('[aria-busy="true"]')).toHaveCount(0);
  await page.evaluate(async () => {
    await document.fonts.ready;
    let still = 0;
    const watch = new MutationObserver(() => {
      still = 0;
    });
    watch.observe(document, { attributes: true, childList: true, characterData: true, subtree: true });
    while (still < 3) {
      still += 1;
      // A task after the frame: what waits for the next one has had its turn.
      await new Promise((next) => requestAnimationFrame(() => setTimeout(next)));
    }
    watch.disconnect();
  });
}

/** Opens one of the seven stages from the thread. */
export async function openStage(page: Page, name: string): Promise<void> {
  const link = page.getByRole('navigation').getByRole('link', { name: new RegExp(`^${name}`) });
  await link.click();
  await expect(link).toHaveAttribute('aria-current', /step|page|true/);
  // What is read or reckoned only afterwards is a part of the stage too.
  await expect(page.getByText('Reading the estimate …')).toHaveCount(0);
  await comeToRest(page);
}

/** Keeps a picture of the screen among the test output, where somebody asked for pictures to look at. */
export async function takePicture(page: Page, name: string): Promise<void> {
  if (process.env.PLAINWARMTH_PICTURES !== '1') return;
  mkdirSync(pictures, { recursive: true });
  await page.screenshot({ path: join(pictures, `${name}.png`) });
}

/** Walks through every page by the arrow key, calling `look` on each; answers how many there were. */
export async function walkThrough(page: Page, look: (number: number) => Promise<void>): Promise<number> {
  await page.getByRole('button', { name: 'Show the customer' }).click();
  const counter = page.getByText(/^\d+ of \d+$/);
  const pages = Number((await counter.textContent())?.split(' of ')[1]);
  for (let number = 1; number <= pages; number++) {
    await expect(counter).toHaveText(`${number} of ${pages}`);
    await look(number);
    await page.keyboard.press('ArrowRight');
  }
  return pages;
}

export const STAGES = [
  'Bills and readings',
  'Heat needed',
  'Heat pump',
  'Prices',
  'Running cost',
  'Written estimate',
  'Bill check',
];

/** The files that this run writes for itself. */
export function writeFile(name: string, content: string | Uint8Array): string {
  const path = join(mkdtempSync(join(tmpdir(), 'plainwarmth-file-')), name);
  writeFileSync(path, content);
  return path;
}

/** Chooses a file through the button that opens the picker. */
export async function chooseFile(page: Page, button: Locator, path: string): Promise<void> {
  const chosen = page.waitForEvent('filechooser');
  await button.click();
  await (await chosen).setFiles(path);
}

/** Presses a button and answers the file that comes of it. */
export async function download(page: Page, button: Locator): Promise<{ name: string; bytes: Buffer }> {
  const coming = page.waitForEvent('download');
  await button.click();
  const file = await coming;
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

/** Waits until the last change is in the store. */
export const waitUntilKept = (page: Page) => expect(page.getByText('Saved', { exact: true })).toBeVisible();

/** Types into a field and leaves it. */
export async function typeInto(page: Page, label: string, value: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).first().fill(value);
  await page.keyboard.press('Tab');
}
