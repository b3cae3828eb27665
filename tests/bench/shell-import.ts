/** The sqlite3 shell's own import of a file of half-hours, where there is a shell: what reading and storing are held against. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { join } from 'node:path';

/** Imports `file` into text, then into a table keyed by integer, as durable as our store; undefined without a shell. */
export function openShellImport(folder: string, file: string): (() => void) | undefined {
  try {
    execFileSync('sqlite3', ['--version'], { stdio: 'ignore' });
  } catch {
    console.warn('NOT MEASURED: there is no sqlite3 command here to measure against.');
    return undefined;
  }
  return () => {
    const path = join(mkdtempSync(join(folder, 'shell-')), 'shell.sqlite');
    const commands = [
      'PRAGMA journal_mode = WAL;',
      'PRAGMA synchronous = FULL;',
      // The table has columns of its own, whatever the heading of the file says.
      'CREATE TABLE raw (start TEXT, value TEXT);',
      '.mode csv',
      `.import --skip 1 "${file}" raw`,
      'CREATE TABLE readings (at INTEGER PRIMARY KEY, kWh REAL NOT NULL);',
      'INSERT INTO readings SELECT unixepoch(start), CAST(value AS REAL) FROM raw;',
      'DROP TABLE raw;',
      'SELECT count(*) FROM readings;',
    ];
    const said = execFileSync('sqlite3', [path], { input: `${commands.join('\n')}\n`, encoding: 'utf8' });
    if (!said.trim().endsWith('175200')) throw new Error(`the shell imported ${said}`);
  };
}
