/** The .deb in a clean Debian root, as an ordinary person on a display of its own. */
import { strict as assert } from 'node:assert';
import { spawn, spawnSync } from 'node:child_process';
import { chownSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { type Browser, chromium } from '@playwright/test';
import { pageOfRunning } from '../../src/host/running.ts';
import { ABOUT, root } from './about.ts';
import { makePackages } from './package.ts';
import { isInstalled, run } from './run.ts';
import {
  endByCommand,
  expectHousehold,
  type Installed,
  openBrowser,
  openOlderAndNewer,
  openPage,
  processesWith,
  tell,
  workWith,
} from './try-steps.ts';

const MIRROR = 'http://deb.debian.org/debian';
const PERSON = 1000;
const DEBUG_PORT = 9377;
/** Odd, so that there is a middle one. */
const TURNS = 7;
const MOUNTS = ['/proc', '/dev', '/dev/shm', '/sys', '/tmp/.X11-unix', root];

/** Time from the start of a program to its first page, on an empty folder of data [ms]. */
async function firstPageMs(program: string, browser: Browser): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'plainwarmth-first-'));
  const begun = performance.now();
  const child = spawn(program, ['--no-open', '--data', folder], { stdio: 'ignore' });
  const page = await browser.newPage();
  await page.goto((await pageOfRunning(folder, 60_000))!);
  await page.getByRole('heading', { level: 1 }).waitFor();
  const ms = performance.now() - begun;
  await page.close();
  const ended = new Promise((done) => child.once('exit', done));
  child.kill('SIGTERM');
  await ended;
  rmSync(folder, { recursive: true, force: true });
  return ms;
}

/** Medians of several programs, taken in turn, so that a machine that is busy for a while holds up all of them alike. */
async function mediansOfFirstPages(programs: readonly string[]): Promise<number[]> {
  const browser = await openBrowser();
  const times = programs.map((): number[] => []);
  for (let turn = 0; turn < TURNS; turn++) {
    for (const [at, program] of programs.entries()) times[at]!.push(await firstPageMs(program, browser));
  }
  await browser.close();
  return times.map((all) => all.toSorted((a, b) => a - b)[(TURNS - 1) / 2]!);
}

function raiseVersion(deb: string, version: string): string {
  const folder = join(root, 'packages/work/raised');
  rmSync(folder, { recursive: true, force: true });
  run('dpkg-deb', ['-R', deb, folder]);
  const control = join(folder, 'DEBIAN/control');
  writeFileSync(control, readFileSync(control, 'utf8').replace(/^Version: .*$/m, `Version: ${version}`));
  const out = join(root, 'packages/work', `raised-${version}.deb`);
  run('dpkg-deb', ['--root-owner-group', '-Zgzip', '-z1', '--build', folder, out]);
  return out;
}

export async function tryLinux(): Promise<void> {
  const [deb] = await makePackages({ systems: ['linux'], kinds: ['deb'], arch: 'x64', reuse: true });
  assert(deb);
  const clean = mkdtempSync(join(tmpdir(), 'plainwarmth-root-'));
  const mounted: string[] = [];
  const display = spawn('Xvfb', [':78', '-screen', '0', '1280x900x24'], { stdio: 'ignore' });
  const chroot = (args: readonly string[]) => run('chroot', [clean, ...args]);
  try {
    // Fetched once and unpacked afresh for each run; delete it for newer parts.
    const kept = join(root, 'packages/work/clean-root.tar');
    if (!existsSync(kept))
      run('mmdebstrap', ['--variant=minbase', '--include=chromium,xdg-utils', 'bookworm', kept, MIRROR]);
    run('tar', ['-xf', kept, '-C', clean]);
    for (const path of MOUNTS) {
      mkdirSync(join(clean, path), { recursive: true });
      run('mount', ['--bind', path, join(clean, path)]);
      mounted.push(join(clean, path));
    }
    chroot(['useradd', '-m', '-u', String(PERSON), 'anna']);
    // The browser that the program opens can be looked into from outside.
    writeFileSync(
      join(clean, 'etc/chromium.d/try'),
      `export CHROMIUM_FLAGS="$CHROMIUM_FLAGS --remote-debugging-port=${DEBUG_PORT} --no-sandbox"\n`,
    );
    tell(`a clean root with a browser; installing ${basename(deb)}`);
    const install = (path: string) => {
      cpSync(path, join(clean, 'package.deb'));
      return chroot(['dpkg', '-i', '/package.deb']);
    };
    install(deb);
    const entry = join(clean, 'usr/share/applications/plainwarmth.desktop');
    if (isInstalled('desktop-file-validate')) run('desktop-file-validate', [entry]);
    assert.match(readFileSync(entry, 'utf8'), /^Exec=plainwarmth$/m);

    const asAnna = [
      '--userspec=1000:1000',
      clean,
      '/usr/bin/env',
      '-i',
      'HOME=/home/anna',
      'PATH=/usr/bin:/bin',
      'DISPLAY=:78',
      'LANG=C.UTF-8',
    ];
    const program: Installed = {
      dataFolder: join(clean, 'home/anna/.local/share/plainwarmth'),
      canPrint: true,
      canConnect: true,
      start: () => void spawn('chroot', [...asAnna, 'plainwarmth'], { stdio: 'ignore' }),
      command: (args) => run('chroot', [...asAnna, 'plainwarmth', ...args]),
      running: () => processesWith('/usr/lib/plainwarmth/runtime/node', 'plainwarmth.js'),
    };
    const browser = await openBrowser();
    await workWith(program, browser);

    const own = await chromium.connectOverCDP(`http://127.0.0.1:${DEBUG_PORT}`);
    const windows = own.contexts().flatMap((context) => context.pages());
    assert(
      windows.length > 0 && windows.every((page) => page.url().startsWith('http://127.0.0.1:')),
      'its own window shows it',
    );
    assert(
      windows.every((page) => !page.url().includes('code=')),
      'no code stays in the address',
    );
    await windows[0]!.screenshot({ path: join(root, 'packages/work/own-window.png') });
    assert(processesWith('--app=http://127.0.0.1').length > 0, 'opened as a window without tabs');
    tell(`${windows.length} windows of its own by Chromium`);
    for (const page of windows) await page.close();
    await own.close();

    install(raiseVersion(deb, '9.9.9'));
    assert.match(chroot(['dpkg-query', '-W', ABOUT.id]), /9\.9\.9/);
    if (program.running().length > 0) await endByCommand(program);
    program.start();
    await expectHousehold(await openPage(browser, program));
    tell('updated over itself by a higher version: the household is there');

    await openOlderAndNewer(program, browser, (path) => chownSync(path, PERSON, PERSON));
    await browser.close();

    const [packed, bare] = (await mediansOfFirstPages([
      join(clean, 'usr/lib/plainwarmth/plainwarmth'),
      join(root, 'packages/work/linux-x64', ABOUT.name, 'plainwarmth'),
    ])) as [number, number];
    tell(
      `first page after ${packed.toFixed(0)} ms installed, ${bare.toFixed(0)} ms from the bare folder (medians of ${TURNS})`,
    );
    assert(packed <= 1.5 * bare, 'the package costs at most half as much again');

    const said = chroot(['dpkg', '-r', ABOUT.id]);
    assert.match(said, /What was kept was left where it is/);
    assert(!existsSync(join(clean, 'usr/lib/plainwarmth')) && !existsSync(join(clean, 'usr/bin/plainwarmth')));
    assert(existsSync(join(program.dataFolder, 'plainwarmth.sqlite')), 'the data is still there');
    tell('removed: the program is gone, the data is still there, and it is said where');
  } finally {
    display.kill();
    for (const id of [...processesWith(clean), ...processesWith('/usr/lib/plainwarmth/runtime/node')])
      process.kill(id, 'SIGTERM');
    for (const path of mounted.toReversed()) spawnSync('umount', ['-l', path]);
    // Below what is still mounted lie this checkout and the devices: then nothing is taken away.
    if (readFileSync('/proc/mounts', 'utf8').includes(clean))
      console.error(`Still mounted, so not taken away: ${clean}`);
    else rmSync(clean, { recursive: true, force: true, maxRetries: 5, retryDelay: 500 });
  }
}
