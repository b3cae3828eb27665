import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { PACKED_AT, steadyId } from '../../../build/package/about.ts';
import { filesBelow, settle } from '../../../build/package/folder.ts';
import { readFuses, SENTINEL } from '../../../build/package/fuses.ts';
import { icnsFile, icoFile } from '../../../build/package/icon-files.ts';
import { TARGETS } from '../../../build/package/runtimes.ts';
import { zipFolder } from '../../../build/package/zip.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-package-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

function writeSome(at: string): void {
  mkdirSync(join(at, 'runtime'), { recursive: true });
  writeFileSync(join(at, 'runtime/node'), 'a program');
  writeFileSync(join(at, 'Zähler.csv'), 'kWh');
  settle(at, new Set(['node']));
}

test('the same files give the same zip, whatever their times and modes were, and programs stay programs', () => {
  const [one, other] = [join(folder, 'one'), join(folder, 'other')];
  writeSome(one);
  mkdirSync(other);
  writeSome(other);
  chmodSync(join(other, 'Zähler.csv'), 0o600);
  utimesSync(join(other, 'Zähler.csv'), 1, 1);
  settle(other, new Set(['node']));
  zipFolder(one, 'Plainwarmth', join(folder, 'one.zip'));
  zipFolder(other, 'Plainwarmth', join(folder, 'other.zip'));
  const bytes = readFileSync(join(folder, 'one.zip'));
  expect(bytes.equals(readFileSync(join(folder, 'other.zip')))).toBe(true);
  expect(Object.keys(unzipSync(bytes))).toEqual(['Plainwarmth/Zähler.csv', 'Plainwarmth/runtime/node']);
  // Of each entry in the directory: made on Unix, and its mode in the upper half of the attributes (APPNOTE 4.3.12).
  const text = bytes.toString('latin1');
  const entries: number[] = [];
  for (let at = text.indexOf('PK\u0001\u0002'); at >= 0; at = text.indexOf('PK\u0001\u0002', at + 1)) entries.push(at);
  expect(entries.map((at) => bytes[at + 5])).toEqual([3, 3]);
  expect(entries.map((at) => (bytes.readUInt32LE(at + 38) >>> 16).toString(8))).toEqual(['100644', '100755']);
});

test('all files carry the day of the version, sorted by name', () => {
  writeSome(folder);
  expect(filesBelow(folder)).toEqual(['Zähler.csv', 'runtime/node']);
  expect(statSync(join(folder, 'runtime/node')).mtime).toEqual(PACKED_AT);
});

test('an identifier hangs on its name alone and has the form of version 5', () => {
  expect(steadyId('msi/menu')).toBe(steadyId('msi/menu'));
  expect(steadyId('msi/menu')).not.toBe(steadyId('msi-upgrade'));
  expect(steadyId('msi/menu')).toMatch(/^[\da-f]{8}-[\da-f]{4}-5[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/);
});

test('icons: each picture is found where the directory says', () => {
  const ico = icoFile([16, 256]);
  expect([ico.readUInt16LE(2), ico.readUInt16LE(4)]).toEqual([1, 2]);
  for (const at of [6, 22]) {
    const [length, offset] = [ico.readUInt32LE(at + 8), ico.readUInt32LE(at + 12)];
    const picture = ico.subarray(offset, offset + length);
    expect(picture.subarray(1, 4).toString()).toBe('PNG');
    // A side of 256 is written as 0; the PNG's own head has the width at byte 16.
    expect(picture.readUInt32BE(16)).toBe(ico[at] || 256);
  }
  const icns = icnsFile();
  expect([icns.subarray(0, 4).toString(), icns.readUInt32BE(4)]).toEqual(['icns', icns.length]);
});

test('fuses are read back from a program; one without them is refused', () => {
  const wire = Buffer.concat([
    Buffer.alloc(9),
    SENTINEL,
    Buffer.from([1, 8]),
    Buffer.from('0100110r'),
    Buffer.alloc(9),
  ]);
  expect(readFuses(wire)).toEqual({
    runAsNode: 'off',
    cookieEncryption: 'on',
    nodeOptionsEnvironmentVariable: 'off',
    nodeCliInspectArguments: 'off',
    embeddedAsarIntegrityValidation: 'on',
    onlyLoadAppFromAsar: 'on',
    browserProcessSpecificV8Snapshot: 'off',
    grantFileProtocolExtraPrivileges: 'removed',
  });
  expect(() => readFuses(Buffer.alloc(100))).toThrow('no fuses');
});

test('what the Electron packages burn out is what this project asks for', () => {
  const configuration = readFileSync(new URL('../../../build/package/electron-builder.yml', import.meta.url), 'utf8');
  const asked = Object.fromEntries(
    [...configuration.matchAll(/^ {2}(\w+): (true|false)$/gm)].map(([, name, on]) => [name, on]),
  );
  expect(asked).toMatchObject({
    runAsNode: 'false',
    enableNodeOptionsEnvironmentVariable: 'false',
    enableNodeCliInspectArguments: 'false',
    enableEmbeddedAsarIntegrityValidation: 'true',
    onlyLoadAppFromAsar: 'true',
    grantFileProtocolExtraPrivileges: 'false',
  });
});

test.each(TARGETS)('$system $arch: the driver has a native file for it', ({ driver }) => {
  const file = new URL(`../../../node_modules/better-sqlite3/prebuilds/${driver}.node`, import.meta.url);
  expect(statSync(file).size).toBeGreaterThan(100_000);
});
