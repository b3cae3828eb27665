import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request as httpRequest } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DeskError } from '../../../src/desk/desk-error.ts';
import { makeDoor } from '../../../src/host/guard.ts';
import { watchPresence } from '../../../src/host/presence.ts';
import { type LoopbackHost, startLoopback } from '../../../src/host/server.ts';
import { callOverHttp } from '../../../src/screens/desk-http.ts';
import { takeTokenFor } from '../../../src/screens/door.ts';

let folder: string;
let ends = 0;
const presence = watchPresence(50, () => {
  ends += 1;
});
let host: LoopbackHost;
const calls: { name: string; input: unknown; signal: AbortSignal | undefined }[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-web-'));
  mkdirSync(join(folder, 'web/assets'), { recursive: true });
  writeFileSync(join(folder, 'web/index.html'), '<!doctype html><title>Plainwarmth</title>');
  writeFileSync(join(folder, 'web/assets/main-1a2b.js'), 'export {};');
  writeFileSync(join(folder, 'secret.txt'), 'not for you');
  host = await startLoopback({
    webFolder: join(folder, 'web'),
    port: 0,
    presence,
    desk: {
      async call(name, input, { signal, onProgress } = {}) {
        calls.push({ name, input, signal });
        onProgress?.(0.5);
        if (name === 'wait') await new Promise((resolve) => signal?.addEventListener('abort', resolve));
        if (name === 'refuse') throw new DeskError({ code: 'no', message: 'No.', remedy: 'Ask again.' });
        return { name };
      },
    },
  });
});
afterAll(async () => {
  await host.close();
  rmSync(folder, { recursive: true });
});

interface Asked {
  path?: string;
  method?: string;
  headers?: Record<string, string>;
  body?: string | Uint8Array;
}

/** By hand, since fetch does not let anybody set Host. */
function ask({
  path = '/',
  method = 'GET',
  headers = {},
  body,
}: Asked): Promise<{ status: number; headers: NodeJS.Dict<string | string[]>; text: string }> {
  return new Promise((resolve, reject) => {
    const request = httpRequest({ host: '127.0.0.1', port: host.port, path, method, headers }, (response) => {
      let text = '';
      response.on('data', (chunk: Buffer) => {
        text += chunk.toString();
      });
      response.on('end', () => resolve({ status: response.statusCode!, headers: response.headers, text }));
    });
    request.on('error', reject);
    request.end(body);
  });
}
const withToken = () => ({ 'X-Plainwarmth-Token': host.token, 'Content-Type': 'application/json' });

describe('who may speak to the loopback host', () => {
  test('it listens on 127.0.0.1 and nowhere else', async () => {
    const other = await new Promise<string>((resolve) => {
      const socket = connect({ host: '127.0.0.2', port: host.port });
      socket.on('connect', () => resolve('answered'));
      socket.on('error', (error: NodeJS.ErrnoException) => resolve(error.code ?? 'refused'));
    });
    expect(other).toBe('ECONNREFUSED');
  });

  const STRANGERS: readonly (Asked & { name: string; status: number })[] = [
    { name: 'a name that points at this machine', headers: { Host: 'evil.example' }, status: 403 },
    { name: 'the right name with a wrong port', headers: { Host: '127.0.0.1:1' }, status: 403 },
    { name: 'a page elsewhere', headers: { Origin: 'http://evil.example' }, status: 403 },
    { name: 'another program on this machine', headers: { Origin: 'http://127.0.0.1:1' }, status: 403 },
    { name: 'a page without origin', headers: { Origin: 'null' }, status: 403 },
    {
      name: 'a picture tag elsewhere',
      headers: { 'Sec-Fetch-Site': 'cross-site', 'Sec-Fetch-Mode': 'no-cors' },
      status: 403,
    },
    { name: 'a call without token', path: '/call/app.read', method: 'POST', body: '{}', status: 403 },
    {
      name: 'a call with a wrong token',
      path: '/call/app.read',
      method: 'POST',
      body: '{}',
      headers: { 'X-Plainwarmth-Token': 'x' },
      status: 403,
    },
    { name: 'a call by GET', path: '/call/app.read', status: 405 },
    { name: 'a question of another origin what it may do', path: '/call/app.read', method: 'OPTIONS', status: 405 },
  ];
  test.each(STRANGERS)('$name is refused with $status', async ({ status, ...asked }) => {
    const before = calls.length;
    const answer = await ask(asked);
    expect(answer.status).toBe(status);
    expect(JSON.parse(answer.text)).toMatchObject({ refusal: { message: expect.any(String) } });
    expect(answer.headers['access-control-allow-origin']).toBeUndefined();
    expect(calls).toHaveLength(before);
  });

  test('its own page with the token is let in', async () => {
    const headers = { ...withToken(), Origin: `http://127.0.0.1:${host.port}`, 'Sec-Fetch-Site': 'same-origin' };
    const answer = await ask({ path: '/call/app.read', method: 'POST', headers, body: '{}' });
    expect(answer.text).toBe('{"progress":0.5}\n{"result":{"name":"app.read"}}\n');
  });
});

describe('a page that is opened from a command line', () => {
  const base = () => `http://127.0.0.1:${host.port}`;
  const codeOf = (address: string) => /#code=([\w-]+)$/.exec(address)![1]!;
  const read = (token: string) =>
    ask({ path: '/call/app.read', method: 'POST', headers: { 'X-Plainwarmth-Token': token }, body: '{}' });

  test('its code lets it in once, with a token of its own that stands in no address', async () => {
    const address = host.makePageAddress();
    expect(address).not.toContain(host.token);
    const token = await takeTokenFor(base(), codeOf(address));
    expect(token).not.toBe(host.token);
    expect((await read(token)).status).toBe(200);
  });

  test('where a second comes with the same code, neither is let in any more', async () => {
    const code = codeOf(host.makePageAddress());
    const token = await takeTokenFor(base(), code);
    await expect(takeTokenFor(base(), code)).rejects.toMatchObject({ code: 'no-token' });
    expect((await read(token)).status).toBe(403);
  });

  test.each(['', 'guessed'])('the code “%s” is refused', async (code) => {
    await expect(takeTokenFor(base(), code)).rejects.toMatchObject({ code: 'no-token' });
  });

  test('a code lasts a minute', () => {
    let now = 0;
    const door = makeDoor(() => now);
    const [early, late] = [door.makeCode(), door.makeCode()];
    now = 59_000;
    expect(door.takeCode(early)).toEqual(expect.any(String));
    now = 61_000;
    expect(door.takeCode(late)).toBeUndefined();
  });

  test('while it holds its line the host is wanted; a line without the token is refused', async () => {
    const stranger = new WebSocket(`ws://127.0.0.1:${host.port}/`, ['x']);
    await new Promise((refused) => stranger.addEventListener('error', refused, { once: true }));
    const line = new WebSocket(`ws://127.0.0.1:${host.port}/`, [host.token]);
    await new Promise((opened) => line.addEventListener('open', opened, { once: true }));
    const before = ends;
    await new Promise((later) => setTimeout(later, 200));
    expect(ends).toBe(before);
    line.close();
    await expect.poll(() => ends).toBe(before + 1);
  });

  test('a page that hangs up without a word, as one that was killed does, has gone too', async () => {
    const before = ends;
    const line = connect({ host: '127.0.0.1', port: host.port });
    const asked = ['GET / HTTP/1.1', `Host: 127.0.0.1:${host.port}`, 'Connection: Upgrade', 'Upgrade: websocket'];
    line.write(
      [...asked, 'Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==', `Sec-WebSocket-Protocol: ${host.token}`, '', ''].join(
        '\r\n',
      ),
    );
    const answer = await new Promise<Buffer>((resolve) => line.once('data', resolve));
    // Key and answer are the example of RFC 6455, section 1.3.
    expect(answer.toString()).toContain('Sec-WebSocket-Accept: s3pPLMBiTxaQ9kYGzzhZRbK+xOo=');
    line.end();
    await expect.poll(() => ends).toBeGreaterThan(before);
  });
});

describe('the window as files', () => {
  test('the page comes with a strict policy', async () => {
    const { status, headers, text } = await ask({});
    expect([status, text]).toEqual([200, '<!doctype html><title>Plainwarmth</title>']);
    const policy = String(headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    expect(headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cache-control': 'no-cache',
    });
  });

  test.each([
    { path: '/assets/main-1a2b.js', status: 200 },
    { path: '/assets/none.js', status: 404 },
    { path: '/../secret.txt', status: 404 },
    { path: '/%2e%2e/secret.txt', status: 404 },
    { path: '/assets/..%2f..%2fsecret.txt', status: 404 },
    { path: '/%00.html', status: 404 },
    { path: '/%E0%A4%A', status: 404 },
    { path: '/index.html?x=1', status: 200 },
  ])('$path answers $status', async ({ path, status }) => {
    const answer = await ask({ path });
    expect(answer.status).toBe(status);
    expect(answer.text).not.toContain('not for you');
  });
});

describe('calls', () => {
  const client = () =>
    callOverHttp({ base: `http://127.0.0.1:${host.port}`, token: host.token }) as unknown as (
      name: string,
      input: unknown,
      options?: { signal?: AbortSignal; onProgress?: (share: number) => void },
    ) => Promise<unknown>;

  test('a refusal comes as DeskError with its remedy', async () => {
    await expect(client()('refuse', {})).rejects.toMatchObject({ code: 'no', message: 'No.', remedy: 'Ask again.' });
  });

  test('stopping a call in the window stops it at the desk', async () => {
    const stop = new AbortController();
    const call = client()('wait', {}, { signal: stop.signal, onProgress: () => stop.abort() });
    await expect(call).rejects.toThrow(/abort/i);
    await expect.poll(() => calls.at(-1)!.signal?.aborted).toBe(true);
  });

  test('a file travels as bytes with its name', async () => {
    const bytes = new Uint8Array([0, 255, 10, 13]);
    await client()('file.offer', { fileName: 'Zähler, März.csv', bytes });
    expect(calls.at(-1)!.input).toEqual({ fileName: 'Zähler, März.csv', bytes });
  });

  test('a file of 200 MB is refused before it is read', async () => {
    const refused = client()('file.offer', { fileName: 'huge.csv', bytes: { byteLength: 200 * 1024 * 1024 } });
    await expect(refused).rejects.toMatchObject({ code: 'file-too-large', where: 'huge.csv' });
    const headers = { ...withToken(), 'X-File-Name': 'huge.csv', 'Content-Length': String(200 * 1024 * 1024) };
    const answer = await new Promise<{ status: number | undefined }>((resolve, reject) => {
      const request = httpRequest(
        { host: '127.0.0.1', port: host.port, path: '/call/file.offer', method: 'POST', headers },
        (response) => resolve({ status: response.statusCode }),
      );
      request.on('error', reject);
      request.write('only the beginning');
    });
    expect(answer.status).toBe(413);
  });

  test('JSON beyond its limit, and what is no JSON, are refused', async () => {
    const big = await ask({
      path: '/call/x',
      method: 'POST',
      headers: withToken(),
      body: `"${'x'.repeat(3_000_000)}"`,
    }).catch(
      // The host hangs up on what it will not read.
      () => ({ status: 413 }),
    );
    expect(big.status).toBe(413);
    const broken = await ask({ path: '/call/x', method: 'POST', headers: withToken(), body: '{' });
    expect([broken.status, JSON.parse(broken.text)]).toMatchObject([400, { refusal: { code: 'not-json' } }]);
  });

  test('a host that is gone is said to be gone', async () => {
    const gone = callOverHttp({ base: 'http://127.0.0.1:9', token: '' });
    await expect(gone('app.read', {})).rejects.toMatchObject({ code: 'host-gone' });
  });

  test('a port that is taken is said to be taken', async () => {
    const second = startLoopback({ desk: { call: async () => null }, webFolder: folder, port: host.port, presence });
    await expect(second).rejects.toMatchObject({ code: 'port-taken', where: '--port' });
  });
});
