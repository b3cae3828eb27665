import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
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

describe('where the data folder is a file', () => {
  const file = () => join(folder, 'a-file');
  beforeEach(() => writeFileSync(file(), 'mine'));
  afterEach(() => vi.unstubAllEnvs());
  /** The places of the three systems. */
  const setCache = (to: string) => {
    for (const name of ['XDG_CACHE_HOME', 'LOCALAPPDATA', 'HOME']) vi.stubEnv(name, to);
  };

  test('the log lies in a folder that nobody else may look into, and not among the temporary files of all', () => {
    setCache(join(folder, 'own'));
    const path = keepLog(file())!;
    expect([path.startsWith(join(folder, 'own')), existsSync(path), readFileSync(file(), 'utf8')]).toEqual([
      true,
      true,
      'mine',
    ]);
    expect(statSync(dirname(path)).mode & 0o077).toBe(0);
    expect(existsSync(join(tmpdir(), 'plainwarmth.log'))).toBe(false);
  });

  test('and no log can be kept anywhere, what is said is still said', () => {
    setCache(join(file(), 'none'));
    expect(keepLog(join(file(), 'data'))).toBeNull();
    console.error('The disk is full.');
    expect(said).toHaveBeenCalledWith('The disk is full.');
  });
});
