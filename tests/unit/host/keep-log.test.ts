import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepLog } from '../../../src/host/keep-log.ts';

let folder: string;
const before = { log: console.log, warn: console.warn, error: console.error };
const said = vi.fn();
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-log-'));
  Object.assign(console, { log: said, warn: said, error: said });
});
afterEach(() => {
  Object.assign(console, before);
  rmSync(folder, { recursive: true });
});

test('what is said on the console stands in the log with its time, readable by its owner only', () => {
  const path = keepLog(join(folder, 'data'))!;
  console.error('The disk is full.', { code: 'ENOSPC' });
  expect(path).toBe(join(folder, 'data/plainwarmth.log'));
  expect(readFileSync(path, 'utf8')).toMatch(/^\d{4}-\d\d-\d\dT[\d:.]+Z The disk is full\. \{ code: 'ENOSPC' \}\n$/);
  expect(statSync(path).mode & 0o777).toBe(0o600);
  expect(said).toHaveBeenCalledWith('The disk is full.', { code: 'ENOSPC' });
});

test('a long log is put beside and begun anew', () => {
  writeFileSync(join(folder, 'plainwarmth.log'), 'x'.repeat(2 * 1024 * 1024));
  keepLog(folder);
  console.log('Begun.');
  expect(statSync(join(folder, 'plainwarmth.log.old')).size).toBe(2 * 1024 * 1024);
  expect(statSync(join(folder, 'plainwarmth.log')).size).toBeLessThan(200);
});

test('where the data folder is a file, the log lies among the temporary files', () => {
  const file = join(folder, 'a-file');
  writeFileSync(file, 'mine');
  const path = keepLog(file)!;
  expect([dirname(path), existsSync(path), readFileSync(file, 'utf8')]).toEqual([tmpdir(), true, 'mine']);
});

test('where no log can be kept at all, what is said is still said', () => {
  const file = join(folder, 'a-file');
  writeFileSync(file, 'mine');
  vi.stubEnv('TMPDIR', join(file, 'none'));
  expect(keepLog(join(file, 'data'))).toBeNull();
  console.error('The disk is full.');
  expect(said).toHaveBeenCalledWith('The disk is full.');
  vi.unstubAllEnvs();
});
