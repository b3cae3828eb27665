/**
 * The statistical proofs at full size: `node tests/prove/prove.ts [part ...]`. Prints a table for each and exits 1 when
 * one lies outside its stated limits. A part is a file here that exports a function named `prove…`; with a number
 * after "=" it is run at that size: `false-alarms=60`; the rows of `causes` by name after a colon: `causes=300:summer`.
 */
import { readdirSync } from 'node:fs';
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

let within = true;
for (const name of names.sort()) {
  if (asked.size > 0 && !asked.has(name)) continue;
  const part: Record<string, unknown> = await import(`./${name}.ts`);
  for (const [title, prove] of Object.entries(part)) {
    if (!/^prove[A-Z]/.test(title) || typeof prove !== 'function') continue;
    const [size, rows] = asked.get(name)?.split(':') ?? [];
    const count = size ? Number(size) : FULL_SIZE[name];
    const begun = performance.now();
    const table = await (prove as Proof)(count, undefined, rows);
    console.log(`${printTable(table)} ${((performance.now() - begun) / 1000).toFixed(0)} s\n`);
    within &&= table.within;
  }
}
process.exitCode = within ? 0 : 1;
