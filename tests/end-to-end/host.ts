/** The application as a person has it: the loopback host on an empty data folder, and a window on it. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { test as base, expect, type Page } from '@playwright/test';

export const root = resolve(import.meta.dirname, '../..');
export const sample = (file: string) => join(root, 'sample-bills', file);
const pictures = join(root, 'tests/output/screens');

/** Starts the host on a data folder and answers its address with the token of this start. */
export async function startHost(dataFolder: string): Promise<{ url: string; stop(): Promise<void> }> {
  const child = spawn(
    process.execPath,
    [join(root, 'build/out/node/main.js'), '--no-open', '--data', dataFolder, '--sample', sample('larch-rise')],
    { stdio: ['ignore', 'pipe', 'pipe'], env: { ...process.env, TZ: 'Europe/London' } },
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
  return { url, stop: () => stopped(child) };
}

function stopped(child: ChildProcess): Promise<void> {
  return new Promise((done) => {
    child.once('exit', () => done());
    child.kill('SIGTERM');
  });
}

interface Fixtures {
  readonly dataFolder: string;
  readonly host: { url: string; stop(): Promise<void> };
  /** The window, open on the list of households; any fault on its console fails the test. */
  readonly desk: Page;
}

export const test = base.extend<Fixtures>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the names of what a fixture needs from this pattern
  dataFolder: async ({}, use) => {
    const folder = mkdtempSync(join(tmpdir(), 'plainwarmth-'));
    await use(folder);
    rmSync(folder, { recursive: true, force: true });
  },
  host: async ({ dataFolder }, use) => {
    const host = await startHost(dataFolder);
    await use(host);
    await host.stop();
  },
  desk: async ({ page, host }, use) => {
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => {
      // A refused request is an answer in words, which the browser also logs as a failed load.
      if (message.type() === 'error' && !/status of 4\d\d/.test(message.text())) faults.push(message.text());
    });
    await page.goto(host.url);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await use(page);
    expect(faults, 'faults on the console').toEqual([]);
  },
});
export { expect };

/** Opens one of the seven stages from the thread. */
export async function openStage(page: Page, name: string): Promise<void> {
  const link = page.getByRole('navigation').getByRole('link', { name: new RegExp(`^${name}`) });
  await link.click();
  await expect(link).toHaveAttribute('aria-current', /step|page|true/);
}

/** Keeps a picture of the screen among the test output. */
export async function takePicture(page: Page, name: string): Promise<void> {
  mkdirSync(pictures, { recursive: true });
  await page.screenshot({ path: join(pictures, `${name}.png`) });
}

/** Walks through every page by the arrow key, calling `look` on each; answers how many there were. */
export async function walkThrough(page: Page, look: (number: number) => Promise<void>): Promise<number> {
  await page.getByRole('button', { name: 'Show it at the table' }).click();
  const counter = page.getByText(/^\d+ of \d+$/);
  const pages = Number((await counter.textContent())?.split(' of ')[1]);
  for (let number = 1; number <= pages; number++) {
    await expect(counter).toHaveText(`${number} of ${pages}`);
    await look(number);
    await page.keyboard.press('ArrowRight');
  }
  return pages;
}
