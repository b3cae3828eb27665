import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { backup } from '../../../src/host/backup-command.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { unlockCopy } from '../../../src/store/locked-copy.ts';
import { openSqliteStore } from '../../../src/store/sqlite-store.ts';
import { whileOpenApart } from '../store/run-apart.ts';

let folder: string;
let stick: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-backup-'));
  stick = join(folder, 'stick');
  mkdirSync(stick);
});
afterEach(() => rmSync(folder, { recursive: true }));

async function run(machine: string, ...args: string[]) {
  const said = { out: '', err: '' };
  const code = await backup([...args, '--data', join(folder, machine)], {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    today: '2026-11-25',
  });
  return { code, ...said };
}

function fill(machine: string): void {
  mkdirSync(join(folder, machine));
  const store = openSqliteStore(join(folder, machine, 'plainwarmth.sqlite'));
  store.createHousehold(emptyHousehold('h', 'Larch\u001b[2J Rise'), '2026-11-25T10:00:00.000Z');
  store.close();
}

test('saves, looks, restores on another computer, and checks', async () => {
  fill('old');
  writeFileSync(join(folder, 'key'), 'four words and more\nrest');
  const key = ['--passphrase-file', join(folder, 'key')];
  expect(await run('old', 'save', stick, ...key)).toMatchObject({ code: 0, err: '' });
  const path = join(stick, readdirSync(stick)[0]!);
  expect(path).toMatch(/Plainwarmth 2026-11-25\.locked$/);
  expect(await run('new', 'look', path, ...key)).toMatchObject({
    code: 0,
    out: 'Larch\uFFFD[2J Rise, changed 2026-11-25\n',
  });
  expect(await run('new', 'restore', path)).toMatchObject({ code: 2, err: expect.stringContaining('locked') });
  expect(await run('new', 'restore', path, ...key)).toMatchObject({ code: 0, out: 'Restored, households: 1.\n' });
  expect(await run('new', 'check')).toMatchObject({ code: 0, out: 'Nothing is damaged.\n' });
});

test.each([
  ['UTF-8 with its mark', '\uFEFFfour words and more\r\n', 'utf8'],
  ['UTF-16, as redirecting writes it on Windows', '\uFEFFfour words and more\r\n', 'utf16le'],
] as const)('a passphrase from a file in %s is the one that is typed', async (_, text, encoding) => {
  fill('old');
  writeFileSync(join(folder, 'key'), Buffer.from(text, encoding));
  expect(await run('old', 'save', stick, '--passphrase-file', join(folder, 'key'))).toMatchObject({ code: 0, err: '' });
  expect(await unlockCopy(join(stick, readdirSync(stick)[0]!), 'four words and more')).not.toBe(false);
});

test.each([
  ['an empty file', (path: string) => writeFileSync(path, ''), 'has 0 letters'],
  ['an empty first line', (path: string) => writeFileSync(path, '\nfour words and more'), 'has 0 letters'],
  ['a pipe', (path: string) => execFileSync('mkfifo', [path]), 'where a file is needed'],
])('%s for a passphrase locks nothing', async (_, make, words) => {
  fill('old');
  make(join(folder, 'key'));
  const { code, err } = await run('old', 'save', stick, '--passphrase-file', join(folder, 'key'));
  expect([code, err, readdirSync(stick)]).toEqual([2, expect.stringContaining(words), []]);
});

test.each([
  ['no task', [], 'is expected'],
  ['an unknown task', ['steal', 'x'], 'is expected'],
  ['a folder that is not there', ['save', '/none/at/all'], 'is not there'],
  ['no copy', ['look', '/dev/null'], 'is no copy'],
])('%s ends with code 2 and a sentence', async (_, args, words) => {
  fill('old');
  const { code, err } = await run('old', ...args);
  expect([code, err]).toEqual([2, expect.stringContaining(words)]);
  expect(err).not.toMatch(/\n\s+at /);
});

test('while Plainwarmth is open it is said, and nothing is touched', async () => {
  fill('old');
  const path = join(folder, 'old', 'plainwarmth.sqlite');
  await whileOpenApart(path, async () => {
    const { code, out, err } = await run('old', 'check');
    expect([code, out, err]).toEqual([2, '', expect.stringMatching(/^The data in .* is open in another Plainwarmth/)]);
  });
});
