/** The sqlite3 shell's own import of a file of half-hours, where there is a shell: what reading and storing are held against. */
import { Buffer } from 'node:buffer';
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, openSync, readSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';

/** Imports `file` into text, then into a table keyed by integer, as durable as our store; undefined without a shell. */
export function openShellImport(folder: string, file: string): (() => void) | undefined {
  try {
    execFileSync('sqlite3', ['--version'], { stdio: 'ignore' });
  } catch {
    console.warn('NOT MEASURED: there is no sqlite3 command here to measure against.');
    return undefined;
  }
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
  const script = join(folder, 'shell-import.sql');
  writeFileSync(script, `${commands.join('\n')}\n`);
  const starter = openStarter(folder);
  return () => {
    const path = join(mkdtempSync(join(folder, 'shell-')), 'shell.sqlite');
    const said = starter(`sqlite3 '${path}' < '${script}' | tail -n 1`);
    if (said.trim() !== '175200') throw new Error(`the shell imported ${said}`);
  };
}

/**
 * Runs commands that answer with one line, from a small process of its own. The memory of a process that starts another
 * is protected until it is written to again, page by page: our import, measured between two starts, would pay for that
 * (12,000 pages each), and the other program's time would hold the copying of our page tables.
 */
function openStarter(folder: string): (command: string) => string {
  const [orders, answers] = [join(folder, 'orders'), join(folder, 'answers')];
  execFileSync('mkfifo', [orders, answers]);
  spawn('sh', ['-c', `exec sh < '${orders}' > '${answers}'`], { stdio: ['ignore', 'ignore', 'inherit'] }).unref();
  // It ends with this process, which holds the other ends.
  const [to, from] = [openSync(orders, 'w'), openSync(answers, 'r')];
  const answer = Buffer.alloc(1024);
  return (command) => {
    writeSync(to, `${command}\n`);
    return answer.toString('utf8', 0, readSync(from, answer));
  };
}
