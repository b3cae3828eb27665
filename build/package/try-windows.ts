/** The Windows packages under Wine: installer and .msi, in a Windows of their own in a temporary folder. */
import { strict as assert } from 'node:assert';
import { spawn, spawnSync } from 'node:child_process';
import { closeSync, existsSync, mkdtempSync, openSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { ABOUT, root } from './about.ts';
import { makeMsi } from './msi.ts';
import { makeInstaller } from './nsis.ts';
import { makePackages } from './package.ts';
import {
  endByCommand,
  expectHousehold,
  type Installed,
  openBrowser,
  openOlderAndNewer,
  openPage,
  processesWith,
  tell,
  until,
  workWith,
} from './try-steps.ts';

const WINE = '/usr/lib/wine/wine64';

export async function tryWindows(): Promise<void> {
  const made = await makePackages({ systems: ['win'], kinds: ['exe', 'msi'], reuse: true });
  const higher = join(root, 'packages/work/higher.exe');
  makeInstaller(join(root, 'packages/work/win-x64', ABOUT.name), { ...ABOUT, version: '9.9.9' }, higher, 'zlib');
  const prefix = mkdtempSync(join(tmpdir(), 'plainwarmth-wine-'));
  const display = spawn('Xvfb', [':79', '-screen', '0', '1280x900x24'], { stdio: 'ignore' });
  const env = { ...process.env, WINEPREFIX: prefix, WINEARCH: 'win64', WINEDEBUG: '-all', DISPLAY: ':79' };
  // Wine's standard streams break on pipes, so they go into files.
  const output = join(prefix, 'said.txt');
  const wine = (args: readonly string[]): string => {
    const out = openSync(output, 'w');
    const { status, error } = spawnSync(WINE, args, {
      env,
      stdio: ['ignore', out, out],
      timeout: 600_000,
      cwd: prefix,
    });
    closeSync(out);
    const said = readFileSync(output, 'utf8');
    if (error || status !== 0)
      throw new Error(`wine64 ${args.join(' ')} ended with ${status}: ${error ?? ''}\n${said}`);
    return said;
  };
  try {
    wine(['wineboot', '-i']);
    wine(['reg', 'add', 'HKCU\\Software\\Wine', '/v', 'Version', '/d', 'win10', '/f']);
    const home = join(
      prefix,
      'drive_c/users',
      readdirSync(join(prefix, 'drive_c/users')).find((name) => name !== 'Public')!,
    );
    const folder = join(home, 'AppData/Local/Programs/Plainwarmth');
    const inWindows = `C:\\users\\${basename(home)}\\AppData\\Local\\Programs\\Plainwarmth`;
    const program: Installed = {
      dataFolder: join(home, 'AppData/Roaming/Plainwarmth'),
      canPrint: false,
      canConnect: false,
      start: () => void spawn(WINE, [`${inWindows}\\Plainwarmth.exe`], { env, stdio: 'ignore', cwd: prefix }),
      command: (args) =>
        wine([`${inWindows}\\runtime\\node.exe`, `${inWindows}\\program\\node\\plainwarmth.js`, ...args]),
      running: () => processesWith('runtime\\node.exe', 'plainwarmth.js'),
    };
    const installer = made.find((path) => path.endsWith('.exe'))!;
    wine([installer, '/S']);
    assert(existsSync(join(folder, 'Plainwarmth.exe')) && existsSync(join(folder, 'runtime/node.exe')));
    const menu = join(home, 'AppData/Roaming/Microsoft/Windows/Start Menu/Programs/Plainwarmth');
    assert(readdirSync(menu).includes('Plainwarmth.lnk'), 'it stands in the Start menu');
    const uninstall = `HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Uninstall\\${ABOUT.name}`;
    assert.match(
      wine(['reg', 'query', uninstall, '/v', 'DisplayVersion']),
      new RegExp(ABOUT.version.replaceAll('.', '\\.')),
    );
    tell(`installed ${basename(installer)} without a question`);

    const browser = await openBrowser();
    await workWith(program, browser);
    await endByCommand(program);
    wine([higher, '/S']);
    assert.match(wine(['reg', 'query', uninstall, '/v', 'DisplayVersion']), /9\.9\.9/);
    program.start();
    await expectHousehold(await openPage(browser, program));
    tell('updated over itself by a higher version: the household is there');
    await openOlderAndNewer(program, browser);

    wine([`${inWindows}\\uninstall.exe`, '/S']);
    await until('the uninstaller has taken the program away', () => !existsSync(join(folder, 'runtime')));
    await until('its folder and its place in the menu are gone', () => !existsSync(folder) && !existsSync(menu));
    assert(existsSync(join(program.dataFolder, 'plainwarmth.sqlite')), 'the data is still there');
    tell('uninstalled: the program is gone, the data is still there');

    const msi = made.find((path) => path.endsWith('.msi'))!;
    wine(['msiexec', '/i', msi, '/qn']);
    const all = join(prefix, 'drive_c/Program Files/Plainwarmth');
    assert(existsSync(join(all, 'Plainwarmth.exe')));
    rmSync(join(program.dataFolder, 'plainwarmth.sqlite'));
    spawn(WINE, ['C:\\Program Files\\Plainwarmth\\Plainwarmth.exe'], { env, stdio: 'ignore', cwd: prefix });
    await (await openPage(browser, program)).getByRole('link', { name: 'Larch Rise' }).waitFor();
    await endByCommand(program);
    const onDesktop = join(home, 'Desktop/Plainwarmth.lnk');
    assert(existsSync(onDesktop), 'it stands on the desktop');
    const higherMsi = join(root, 'packages/work/higher.msi');
    makeMsi(join(root, 'packages/work/win-x64', ABOUT.name), higherMsi, '9.9.9');
    wine(['msiexec', '/i', higherMsi, '/qn']);
    assert(existsSync(join(all, 'Plainwarmth.exe')));
    const listed = wine(['reg', 'query', 'HKLM\\Software\\Microsoft\\Windows\\CurrentVersion\\Uninstall', '/s']);
    assert.deepEqual(
      [...listed.matchAll(/DisplayVersion\s+REG_SZ\s+(\S+)/g)]
        .map(([, version]) => version)
        .filter((v) => v === '9.9.9' || v === ABOUT.version),
      ['9.9.9'],
      'the higher .msi stands in the place of the lower one',
    );
    wine(['msiexec', '/x', higherMsi, '/qn']);
    assert(!existsSync(join(all, 'Plainwarmth.exe')) && !existsSync(onDesktop), 'the .msi takes its files away');
    tell(`${basename(msi)}: installed, started, quit, updated by a higher one, removed`);
    await browser.close();
  } finally {
    for (const id of processesWith('runtime\\node.exe', 'plainwarmth.js')) process.kill(id, 'SIGKILL');
    spawnSync('/usr/lib/wine/wineserver64', ['-k'], { env });
    display.kill();
    rmSync(prefix, { recursive: true, force: true, maxRetries: 5, retryDelay: 500 });
  }
}
