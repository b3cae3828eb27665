/** Speed of intake beside general CSV readers that only split the text, and beside the sqlite3 shell where there is one. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse as parseSync } from 'csv-parse/sync';
import Papa from 'papaparse';
import type { IntakeContext } from '../../src/intake/intake.ts';
import { readFile } from '../../src/intake/read-file.ts';

export interface BenchRow {
  readonly name: string;
  readonly ms: number;
  /** Time of this row divided by the time of our own reading of the same file; absent for our own. */
  readonly timesOurs?: number;
  readonly note?: string;
}

const ROWS = 175_200;
const RUNS = 7;

export const benchContext: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerLitre: { oil: 10.3, lpg: 7.21 },
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};

/** Ten years of half-hours in UTC from a fixed seed. */
export function tenYears(rows = ROWS): Uint8Array {
  const lines = ['start,value'];
  let seed = 12_345;
  let at = Date.UTC(2015, 0, 1);
  for (let i = 0; i < rows; i++, at += 1_800_000) {
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) >>> 0;
    lines.push(`${new Date(at).toISOString().slice(0, 19)}Z,${((seed >>> 12) % 2000) / 1000}`);
  }
  return new TextEncoder().encode(`${lines.join('\n')}\n`);
}

function median(run: () => void): number {
  const times: number[] = [];
  for (let i = 0; i < RUNS; i++) {
    const start = performance.now();
    run();
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[RUNS >> 1]!;
}

export async function intakeBench(): Promise<BenchRow[]> {
  const bytes = tenYears();
  const result = readFile('ten-years.csv', bytes, {}, benchContext);
  const kept = result.intervals[0]?.days.reduce((sum, day) => sum + day.values.length, 0) ?? 0;
  if (kept < ROWS) throw new Error(`intake kept ${kept} of ${ROWS} readings`);
  const ours = median(() => readFile('ten-years.csv', bytes, {}, benchContext));
  const decode = () => new TextDecoder().decode(bytes);
  const papa = median(() => Papa.parse(decode(), { skipEmptyLines: true }));
  const csvParse = median(() => parseSync(decode(), { skip_empty_lines: true }));
  const rows: BenchRow[] = [
    { name: `${ROWS.toLocaleString('en-GB')} half-hours: bytes to checked days and series`, ms: ours },
    { name: 'the same file: papaparse, strings only', ms: papa, timesOurs: papa / ours },
    { name: 'the same file: csv-parse, strings only', ms: csvParse, timesOurs: csvParse / ours },
  ];
  rows.push(shellRow(bytes, ours));
  return rows;
}

/** The shell's own import into a table of text, then into an integer-keyed table, as one process. */
function shellRow(bytes: Uint8Array, ours: number): BenchRow {
  const name = 'the same file: sqlite3 shell, import and integer-keyed table';
  try {
    execFileSync('sqlite3', ['-version'], { stdio: 'ignore' });
  } catch {
    return { name, ms: Number.NaN, note: 'NOT RUN: no sqlite3 command here' };
  }
  const folder = mkdtempSync(join(tmpdir(), 'intake-bench-'));
  try {
    const file = join(folder, 'ten-years.csv');
    writeFileSync(file, bytes);
    let run = 0;
    const ms = median(() => {
      const database = join(folder, `${run++}.db`);
      const script = [
        'PRAGMA journal_mode=WAL;',
        '.mode csv',
        `.import "${file}" raw`,
        'CREATE TABLE reading (at INTEGER PRIMARY KEY, kWh REAL);',
        'INSERT INTO reading SELECT unixepoch(start), CAST(value AS REAL) FROM raw;',
      ].join('\n');
      execFileSync('sqlite3', [database], { input: script, stdio: ['pipe', 'ignore', 'pipe'] });
    });
    return { name, ms, timesOurs: ms / ours, note: 'stores as well, which ours above does not' };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
