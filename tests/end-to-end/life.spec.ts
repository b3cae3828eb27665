/** The life of the host: one instance, a window that says what is wrong, an end on request. */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { cacheFolder } from '../../src/host/data-folder.ts';
import { expect, root, startHost, takePicture, test } from './host.ts';

const noteOf = (folder: string) => join(folder, 'running.json');

/** The installed program's entry, without a browser of its own; answers what it said once it has ended. */
function installed(
  args: readonly string[],
  env: Record<string, string> = {},
): {
  child: ChildProcess;
  said: () => string;
  ended: Promise<number | null>;
} {
  const child = spawn(process.execPath, [join(root, 'build/out/node/plainwarmth.js'), ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, DISPLAY: '', WAYLAND_DISPLAY: '', ...env },
  });
  let text = '';
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (chunk: Buffer) => (text += chunk.toString()));
  return { child, said: () => text, ended: new Promise((done) => child.once('exit', done)) };
}

test('a second start finds the running one and gets a page of it; its code opens no second page', async ({
  page,
  host,
  dataFolder,
}) => {
  expect(statSync(noteOf(dataFolder)).mode & 0o777).toBe(0o600);
  const second = installed(['--no-open', '--data', dataFolder]);
  expect(await second.ended).toBe(0);
  const address = /http:\/\/127\.0\.0\.1:\d+\/#code=\S+/.exec(second.said())?.[0];
  expect(address, second.said()).toBeDefined();
  expect(address).toContain(new URL(host.url).host);
  expect(second.said()).not.toContain(host.url.split('#token=')[1]);

  await page.goto(address!);
  await expect(page.getByRole('link', { name: 'Larch Rise' })).toBeVisible();
  await page.reload();
  await expect(page.getByRole('link', { name: 'Larch Rise' })).toBeVisible();

  const other = await page.context().newPage();
  await other.goto(address!);
  await expect(other.getByRole('alert')).toContainText('does not belong to the Plainwarmth that is running now');
});

test('Help says version and date, where all lies, and ends the program', async ({ page, dataFolder }) => {
  const host = await startHost(dataFolder);
  await page.goto(host.url);
  await page.getByRole('link', { name: 'Help' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    /^Plainwarmth, version \d+\.\d+\.\d+ of \d+ \w+ \d{4}$/,
  );
  await expect(page.getByText(dataFolder, { exact: true })).toBeVisible();
  await takePicture(page, 'help');
  await page.getByRole('button', { name: 'Quit Plainwarmth' }).click();
  const ended = page.getByText('Plainwarmth has ended.');
  await expect.poll(async () => page.isClosed() || (await ended.isVisible())).toBe(true);
  await host.stop();
  expect(existsSync(noteOf(dataFolder)), 'the note of the running host is gone').toBe(false);
});

test('a start after an update ends the one that began before it', async ({ host, dataFolder }) => {
  const note = JSON.parse(readFileSync(noteOf(dataFolder), 'utf8')) as { version: string };
  writeFileSync(noteOf(dataFolder), JSON.stringify({ ...note, version: '0.0.1' }));
  const newer = await startHost(dataFolder);
  expect(newer.url).not.toBe(host.url);
  expect((await newer.call('household.list', {})).map(({ name }) => name)).toEqual(['Larch Rise']);
  await expect(host.call('app.read', {})).rejects.toMatchObject({ code: 'host-gone' });
  await newer.stop();
});

test('the installed program quits by command, and says when there is nothing to quit', async ({ dataFolder }) => {
  const host = await startHost(dataFolder);
  const quit = installed(['quit', '--data', dataFolder]);
  expect([await quit.ended, quit.said().trim()]).toEqual([0, 'Plainwarmth has ended.']);
  expect(existsSync(noteOf(dataFolder))).toBe(false);
  const again = installed(['quit', '--data', dataFolder]);
  expect([await again.ended, again.said().trim()]).toEqual([0, 'No Plainwarmth is running.']);
  await host.stop();
});

test('what keeps the installed program from its data is said in its window and in its log', async ({ page }) => {
  const folder = mkdtempSync(join(tmpdir(), 'plainwarmth-'));
  const file = join(folder, 'a-file');
  writeFileSync(file, 'mine');
  const env = { HOME: folder, XDG_CACHE_HOME: folder, LOCALAPPDATA: folder };
  const started = installed(['--no-open', '--data', file], env);
  const log = join(cacheFolder('log', { platform: process.platform, env, home: folder }), 'plainwarmth.log');
  await expect.poll(() => started.said()).toMatch(/port \d+/);
  await page.goto(`http://127.0.0.1:${/port (\d+)/.exec(started.said())![1]}/`);
  await expect(page.getByRole('alert')).toContainText('cannot reach its data service');
  started.child.kill('SIGTERM');
  expect(await started.ended).toBe(2);
  expect(readFileSync(log, 'utf8')).toContain(file);
  rmSync(folder, { recursive: true });
});

test('the installed program reckons', async () => {
  const reckoned = installed(['reckon', join(root, 'sample-bills/larch-rise/household.json')]);
  expect(await reckoned.ended).toBe(0);
  expect(reckoned.said()).toContain('Larch Rise');
});
