import { expect, test } from 'vitest';
import { cacheFolder, defaultDataFolder } from '../../../src/host/data-folder.ts';
import { localToday } from '../../../src/host/local-today.ts';
import { hasDisplay, openerOf } from '../../../src/host/open-browser.ts';
import { describeOpening } from '../../../src/host/opening-notice.ts';
import { readOptions } from '../../../src/host/options.ts';

test.each([
  { platform: 'linux' as const, env: {}, home: '/home/a', folder: '/home/a/.local/share/plainwarmth' },
  { platform: 'linux' as const, env: { XDG_DATA_HOME: '/data/a' }, home: '/home/a', folder: '/data/a/plainwarmth' },
  // XDG Base Directory Specification 0.8: paths must be absolute, a relative one is to be ignored.
  {
    platform: 'linux' as const,
    env: { XDG_DATA_HOME: 'data' },
    home: '/home/a',
    folder: '/home/a/.local/share/plainwarmth',
  },
  {
    platform: 'darwin' as const,
    env: {},
    home: '/Users/a',
    folder: '/Users/a/Library/Application Support/Plainwarmth',
  },
  {
    platform: 'win32' as const,
    env: { APPDATA: 'C:\\Users\\a\\AppData\\Roaming' },
    home: 'C:\\Users\\a',
    folder: 'C:\\Users\\a\\AppData\\Roaming\\Plainwarmth',
  },
])('data on $platform lies in $folder', ({ folder, ...surroundings }) => {
  expect(defaultDataFolder(surroundings)).toBe(folder);
});

test.each([
  { platform: 'linux' as const, env: {}, home: '/home/a', folder: '/home/a/.cache/plainwarmth/window' },
  { platform: 'linux' as const, env: { XDG_CACHE_HOME: '/c' }, home: '/home/a', folder: '/c/plainwarmth/window' },
  { platform: 'darwin' as const, env: {}, home: '/Users/a', folder: '/Users/a/Library/Caches/Plainwarmth/window' },
  {
    platform: 'win32' as const,
    env: { LOCALAPPDATA: 'C:\\L', APPDATA: 'C:\\R' },
    home: 'C:\\Users\\a',
    folder: 'C:\\L\\Plainwarmth\\window',
  },
])('the window on $platform keeps its own things in $folder', ({ folder, ...surroundings }) => {
  expect(cacheFolder('window', surroundings)).toBe(folder);
  expect(cacheFolder('compiled', surroundings)).toBe(folder.replace('window', 'compiled'));
});

test.each([
  { platform: 'linux' as const, env: {}, display: false },
  { platform: 'linux' as const, env: { DISPLAY: ':0' }, display: true },
  { platform: 'linux' as const, env: { WAYLAND_DISPLAY: 'wayland-0' }, display: true },
  { platform: 'darwin' as const, env: { SSH_CONNECTION: '10.0.0.1' }, display: false },
  { platform: 'win32' as const, env: {}, display: true },
])('$platform with $env has a display: $display', ({ display, ...surroundings }) => {
  expect(hasDisplay(surroundings)).toBe(display);
});

test.each([
  { platform: 'linux' as const, command: 'xdg-open' },
  { platform: 'darwin' as const, command: 'open' },
  { platform: 'win32' as const, command: 'rundll32' },
])('$platform opens an address by $command, without a shell to read it', ({ platform, command }) => {
  const address = 'http://127.0.0.1:1/#token=a&b';
  expect(openerOf(platform, address)).toMatchObject({ command, args: expect.arrayContaining([address]) });
});

test.each([
  { args: [], options: { port: 0, open: true, dataFolder: null, browser: false } },
  { args: ['--port', '4180', '--no-open', '--data', '/d'], options: { port: 4180, open: false, dataFolder: '/d' } },
  { args: ['--browser', '--sample', '/s'], options: { browser: true, window: false, sample: '/s' } },
  { args: ['--window'], options: { window: true } },
])('$args', ({ args, options }) => {
  expect(readOptions(args)).toMatchObject(options);
});

test.each([['--port', 'x'], ['--port', '80'], ['--port', '70000'], ['--prot', '4180'], ['household.json']])(
  '%s %s is refused',
  (...args) => {
    expect(() => readOptions(args.filter((arg) => arg !== undefined))).toThrow(
      expect.objectContaining({ code: 'bad-option' }),
    );
  },
);

test('today is the day of the clock on the wall', () => {
  expect(localToday(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
});

test('the installer hears of a damaged file and of a copy made, and of nothing else', () => {
  expect(describeOpening({ created: false, incident: null, backup: null })).toBeUndefined();
  expect(describeOpening({ created: false, incident: null, backup: '/d/before.sqlite' })).toContain('/d/before.sqlite');
  const KINDS = ['damaged', 'foreign', 'emptied', 'other-log', 'lost-changes'] as const;
  const said = KINDS.map((kind) =>
    describeOpening({ created: false, backup: null, incident: { kind, setAside: '/d/found.sqlite', missing: 2 } }),
  );
  expect(new Set(said).size).toBe(KINDS.length);
  for (const sentence of said) expect(sentence).toContain('/d/found.sqlite');
  const foreign = { kind: 'foreign', setAside: '/d/found.sqlite', households: 1 } as const;
  expect(describeOpening({ created: false, backup: null, incident: foreign })).toMatch(
    /belonged to another program.* 1 household had been saved here before\. Restore your last copy in the settings\.$/,
  );
});
