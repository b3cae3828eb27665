import { createHash } from 'node:crypto';
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { zipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
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

describe('fetching it', () => {
  const name = `electron-v1.2.3-${process.platform}-${process.arch}.zip`;
  const archive = Buffer.from(
    zipSync({ electron: [new Uint8Array(200_000).fill(7), { level: 0, os: 3, attrs: (0o100755 << 16) >>> 0 }] }),
  );
  const asked: { path: string; range: string | undefined }[] = [];
  let server: Server;
  let env: Record<string, string>;
  /** How many bytes the server sends before it falls silent or hangs up. */
  let cutAfter: number;
  let hangsUp: boolean;

  beforeEach(async () => {
    asked.length = 0;
    [cutAfter, hangsUp] = [Number.POSITIVE_INFINITY, true];
    server = createServer((request, response) => {
      const range = request.headers.range;
      asked.push({ path: request.url!, range });
      const from = range === undefined ? 0 : Number(/bytes=(\d+)-/.exec(range)![1]);
      const rest = archive.subarray(from);
      response.writeHead(range === undefined ? 200 : 206, { 'Content-Length': rest.length });
      if (rest.length <= cutAfter) response.end(rest);
      else response.write(rest.subarray(0, cutAfter), () => hangsUp && onceWritten(() => request.socket.destroy()));
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    env = { ELECTRON_MIRROR: `http://127.0.0.1:${(server.address() as AddressInfo).port}` };
    writeFileSync(join(packageFolder, 'package.json'), '{ "version": "1.2.3" }');
    putChecksum(createHash('sha256').update(archive).digest('hex'));
    const unpacker = new URL('../../../node_modules/@electron-internal', import.meta.url);
    symlinkSync(fileURLToPath(unpacker), join(root, 'node_modules/@electron-internal'));
  });
  afterEach(() => {
    server.closeAllConnections();
    server.close();
  });
  /** The line breaks when something of the file has reached the disk, however long that takes. */
  const onceWritten = (hangUp: () => void): void => {
    const part = join(root, `node_modules/.cache/plainwarmth-electron/${name}.part`);
    if ((statSync(part, { throwIfNoEntry: false })?.size ?? 0) > 0) hangUp();
    else setTimeout(() => onceWritten(hangUp), 5);
  };
  const putChecksum = (sum: string) =>
    writeFileSync(join(packageFolder, 'checksums.json'), JSON.stringify({ [name]: sum }));

  test('it comes from the mirror, is checked, unpacked and found, and says how far it is', async () => {
    const told: [number, number][] = [];
    expect(await fetchElectron(root, { env, onProgress: (bytes, whole) => told.push([bytes, whole]) })).toBeNull();
    expect(asked).toEqual([{ path: `/v1.2.3/${name}`, range: undefined }]);
    expect(told.at(-1)).toEqual([archive.length, archive.length]);
    const program = findElectron(root, {})!;
    expect(program).toBe(join(packageFolder, 'dist/electron'));
    expect([statSync(program).size, statSync(program).mode & 0o111]).toEqual([200_000, 0o111]);
  });

  test('after a broken line the next try goes on from there', async () => {
    cutAfter = 120_000;
    expect(await fetchElectron(root, { env })).toMatch(/terminated|aborted|closed|socket|premature/i);
    expect(findElectron(root, {})).toBeNull();
    cutAfter = Number.POSITIVE_INFINITY;
    const told: number[] = [];
    expect(await fetchElectron(root, { env, onProgress: (bytes) => told.push(bytes) })).toBeNull();
    expect(asked[1]!.range).toMatch(/^bytes=[1-9]\d*-$/);
    expect(told[0]).toBeGreaterThan(Number(/\d+/.exec(asked[1]!.range!)![0]));
    expect(findElectron(root, {})).not.toBeNull();
  });

  test('a line that falls silent is given up, in words', async () => {
    [cutAfter, hangsUp] = [1000, false];
    expect(await fetchElectron(root, { env, silenceMs: 1000 })).toBe('nothing came for 1 s');
  });

  test('what does not have the expected hash is thrown away, and not gone on with', async () => {
    putChecksum('0'.repeat(64));
    expect(await fetchElectron(root, { env })).toContain('not the archive that its package expects');
    expect(findElectron(root, {})).toBeNull();
    await fetchElectron(root, { env });
    expect(asked.map(({ range }) => range)).toEqual([undefined, undefined]);
  });

  test('a server that has none and a server that is not there are told apart', async () => {
    expect(await fetchElectron(root, { env: { ELECTRON_MIRROR: 'http://127.0.0.1:9/' } })).toMatch(/fetch failed/);
    server.removeAllListeners('request');
    server.on('request', (_, response) => response.writeHead(404).end());
    expect(await fetchElectron(root, { env })).toMatch(/answers 404/);
  });
});

test('the version that is shown is that of package.json', () => {
  const about = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8'));
  expect(VERSION).toBe(about.version);
});
