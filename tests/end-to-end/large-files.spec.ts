import { createReadStream, existsSync, mkdtempSync, openSync, readFileSync, truncateSync, writeSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { constants, crc32, deflateRawSync } from 'node:zlib';
import { Zip, type ZipInputFile, ZipPassThrough } from 'fflate';
import { chooseFile, expect, type Host, openStage, test, writeFile } from './host.ts';

const MB = 1024 * 1024;
const MOST_ABOVE_IDLE_MB = 300;

/** A heading and a reading, then nothing: it takes no room on the disk. */
function sparseFile(name: string, bytes: number): string {
  const path = join(mkdtempSync(join(tmpdir(), 'plainwarmth-large-')), name);
  writeSync(openSync(path, 'w'), 'time,kWh\n2025-01-01T00:00,0.2\n');
  truncateSync(path, bytes);
  return path;
}

/** Memory held now and at most so far [MB]; undefined where the system does not say. */
function memoryOf({ pid }: Host): { now: number; most: number } | undefined {
  const path = `/proc/${pid}/status`;
  if (!existsSync(path)) return undefined;
  const status = readFileSync(path, 'utf8');
  const megabytes = (name: string) => Number(new RegExp(`${name}:\\s+(\\d+) kB`).exec(status)?.[1]) / 1024;
  return { now: megabytes('VmRSS'), most: megabytes('VmHWM') };
}

/** A workbook of a few megabytes whose sheet unpacks to this many. */
function bomb(megabytes: number): Uint8Array {
  const pieces: Uint8Array[] = [];
  const zip = new Zip((_, piece) => pieces.push(piece));
  const workbook = new ZipPassThrough('xl/workbook.xml');
  zip.add(workbook);
  workbook.push(new TextEncoder().encode('<workbook><sheets><sheet name="A"/></sheets></workbook>'), true);
  const blank = Buffer.alloc(MB, 32);
  // Packed once: blocks flushed in full stand one behind the other, and an empty last one ends them (RFC 1951).
  const packed = deflateRawSync(blank, { finishFlush: constants.Z_FULL_FLUSH });
  let crc = 0;
  for (let i = 0; i < megabytes; i++) crc = crc32(blank, crc);
  const sheet: ZipInputFile = { filename: 'xl/worksheets/sheet1.xml', compression: 8, size: megabytes * MB, crc };
  zip.add(sheet);
  for (let i = 0; i < megabytes; i++) sheet.ondata!(null, packed, false);
  sheet.ondata!(null, Uint8Array.of(3, 0), true);
  zip.end();
  return Buffer.concat(pieces);
}

/** Sends a body in pieces without saying how long it will be, as no browser does. */
function sendUnannounced(host: Host, path: string): Promise<{ status: number; text: string }> {
  const [base, token] = host.url.split('/#token=') as [string, string];
  return new Promise((done, failed) => {
    const headers = {
      'Content-Type': 'application/octet-stream',
      'X-File-Name': 'endless.csv',
      'X-Plainwarmth-Token': token,
    };
    const sending = request(`${base}/call/file.offer`, { method: 'POST', headers }, (answer) => {
      let text = '';
      answer.on('data', (chunk: Buffer) => {
        text += chunk.toString();
      });
      answer.on('end', () => done({ status: answer.statusCode ?? 0, text }));
    });
    sending.on('error', failed);
    createReadStream(path).on('error', failed).pipe(sending);
  });
}

test('files too large are refused in words, within the memory promised', async ({ desk, host }) => {
  await desk.getByRole('link', { name: 'Larch Rise' }).click();
  await openStage(desk, 'Bills and readings');
  const idle = memoryOf(host);
  const choose = desk.getByRole('button', { name: 'Choose a file' });
  const keptBefore = await desk.getByRole('button', { name: /^Remove/ }).count();
  for (const [name, size] of [
    ['two-hundred.csv', 200],
    ['thousand.csv', 1024],
  ] as const) {
    await test.step(name, async () => {
      await chooseFile(desk, choose, sparseFile(name, size * MB));
      await expect(desk.getByRole('alert')).toContainText(name);
      await expect(desk.getByRole('alert')).toContainText('16 MB');
    });
  }
  await test.step('a workbook that unpacks to a gigabyte', async () => {
    const packed = bomb(1024);
    expect(packed.length).toBeLessThan(16 * MB);
    await chooseFile(desk, choose, writeFile('grows.xlsx', packed));
    await expect(desk.getByText(/grows\.xlsx is a damaged workbook/).first()).toBeVisible();
    await expect(desk.getByRole('button', { name: 'Save' })).toBeDisabled();
    await desk.getByRole('button', { name: 'Cancel' }).click();
  });
  await test.step('a gigabyte sent past the window', async () => {
    const { status, text } = await sendUnannounced(host, sparseFile('endless.csv', 1024 * MB)).catch(() => ({
      status: 0,
      text: '',
    }));
    // The answer may be cut off with the line it came on; what counts is that the host stands and has kept nothing.
    if (status !== 0) expect(text).toContain('file-too-large');
  });
  await desk.reload();
  await expect(desk.getByRole('button', { name: /^Remove/ })).toHaveCount(keptBefore);
  const most = memoryOf(host)?.most;
  test.info().annotations.push({ type: 'memory above idle', description: `${most} MB less ${idle?.now} MB` });
  if (idle && most !== undefined) expect(most - idle.now).toBeLessThan(MOST_ABOVE_IDLE_MB);
});
