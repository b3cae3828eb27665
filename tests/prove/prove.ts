/**
 * The statistical proofs at full size: `node tests/prove/prove.ts [part ...]`. Prints a table for each and exits 1 when
 * one lies outside its stated limits. A part is a file here that exports a function named `prove…`; with a number
 * after "=" it is run at that size: `false-alarms=60`; the rows of `causes` by name after a colon: `causes=300:summer`.
 */
import { readdirSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';
import { answerPieces, workBeside } from './beside.ts';
import { type ProofTable, printTable } from './table.ts';

/** Households at full size, by part; other parts choose for themselves. */
const FULL_SIZE: Readonly<Record<string, number>> = {
  'bill-gap-recovery': 1000,
  calibration: 200,
  causes: 300,
  'false-alarms': 500,
  middle: 4000,
  'other-homes': 300,
  plant: 500,
  'spf-spread-table': 1000,
  sureness: 1000,
};

type Proof = (count?: number, seed?: number, rows?: string) => ProofTable | Promise<ProofTable>;

const asked = new Map<string, string | undefined>(
  process.argv.slice(2).map((word) => [word.split('=')[0]!, word.split('=')[1]]),
);
const names = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith('.ts') && name !== 'prove.ts')
  .map((name) => name.slice(0, -3));
for (const name of asked.keys()) if (!names.includes(name)) throw new Error(`there is no part ${name} in tests/prove`);

interface Part {
  readonly name: string;
  readonly title: string;
  readonly count: number | undefined;
  readonly rows: string | undefined;
}

async function printPart({ name, title, count, rows }: Part): Promise<boolean> {
  const part: Record<string, unknown> = await import(`./${name}.ts`);
  const begun = performance.now();
  const table = await (part[title] as Proof)(count, undefined, rows);
  console.log(`${printTable(table)} ${((performance.now() - begun) / 1000).toFixed(0)} s\n`);
  return table.within;
}

answerPieces(import.meta.url, printPart);
if (isMainThread) {
  const parts: Part[] = [];
  for (const name of names.sort()) {
    if (asked.size > 0 && !asked.has(name)) continue;
    const [size, rows] = asked.get(name)?.split(':') ?? [];
    const count = size ? Number(size) : FULL_SIZE[name];
    for (const [title, prove] of Object.entries(await import(`./${name}.ts`))) {
      if (/^prove[A-Z]/.test(title) && typeof prove === 'function') parts.push({ name, title, count, rows });
    }
  }
  const within =
    parts.length === 1 ? [await printPart(parts[0]!)] : await workBeside<Part, boolean>(import.meta.url, parts);
  process.exitCode = within.every((one) => one) ? 0 : 1;
}
