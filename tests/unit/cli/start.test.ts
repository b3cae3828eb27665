import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { fetchElectron, findElectron } from '../../../build/electron-binary.ts';
import { VERSION } from '../../../src/desk/version.ts';

let root: string;
let packageFolder: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'plainwarmth-start-'));
  packageFolder = join(root, 'node_modules/electron');
  mkdirSync(packageFolder, { recursive: true });
});
afterEach(() => rmSync(root, { recursive: true }));

function putProgram(folder: string): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'electron'), '#!/bin/sh\n');
  chmodSync(join(folder, 'electron'), 0o755);
}

test("Electron's program is found only when it is really there", () => {
  expect(findElectron(root, {})).toBeNull();
  writeFileSync(join(packageFolder, 'path.txt'), 'electron\n');
  expect(findElectron(root, {})).toBeNull();
  putProgram(join(packageFolder, 'dist'));
  expect(findElectron(root, {})).toBe(join(packageFolder, 'dist/electron'));
});

test("a copy of Electron's program elsewhere is taken", () => {
  writeFileSync(join(packageFolder, 'path.txt'), 'electron');
  const other = join(root, 'other');
  putProgram(other);
  expect(findElectron(root, { ELECTRON_OVERRIDE_DIST_PATH: other })).toBe(join(other, 'electron'));
});

test.each([
  {
    name: 'the fetch fails',
    script: `console.error('TypeError: fetch failed'); process.exit(1)`,
    reason: 'TypeError: fetch failed',
  },
  { name: 'it says nothing', script: 'process.exit(3)', reason: 'code 3' },
  { name: 'it takes too long', script: 'setTimeout(() => {}, 60000)', reason: 'no answer within 1 s', limitMs: 1000 },
  { name: 'it claims to have worked, and nothing is there', script: '', reason: 'code 0' },
])('when $name, the reason is "$reason"', async ({ script, reason, limitMs = 60_000 }) => {
  writeFileSync(join(packageFolder, 'install.js'), script);
  expect(await fetchElectron(root, limitMs)).toBe(reason);
});

test('when it works, there is no reason to give', async () => {
  const script = `const fs = require('fs'); fs.mkdirSync(__dirname + '/dist');
    fs.writeFileSync(__dirname + '/dist/electron', ''); fs.writeFileSync(__dirname + '/path.txt', 'electron');`;
  writeFileSync(join(packageFolder, 'install.js'), script);
  expect(await fetchElectron(root, 60_000)).toBeNull();
});

test('the version that is shown is that of package.json', () => {
  const about = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8'));
  expect(VERSION).toBe(about.version);
});
