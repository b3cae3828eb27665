/**
 * `npm run bench`: how fast things are, each beside a peer measured in the same run. It prints and never fails a build.
 * The aims are for two ordinary cores; ratios matter more than milliseconds on a machine that is shared.
 */
import type { BenchRow } from './bench-row.ts';
import { importMemoryBench } from './import-memory-bench.ts';
import { intakeBench, paperBench, pictureBench } from './intake-bench.ts';
import { modelBench } from './model-bench.ts';
import { storeBench } from './store-bench.ts';
import { windowBench } from './window-bench.ts';

const PARTS: readonly (readonly [string, () => readonly BenchRow[] | Promise<readonly BenchRow[]>])[] = [
  ['The model', modelBench],
  ['Files taken in', intakeBench],
  ['Paper', paperBench],
  ['Pictures', pictureBench],
  ['The store', storeBench],
  ['The window', windowBench],
  ['The largest file', importMemoryBench],
];

const figure = (value: number) => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));

function line({ what, value, unit, aim, peer }: BenchRow): string {
  const held = peer ? `${figure(value / peer.value)} × ${peer.what} (${figure(peer.value)} ${unit})` : '';
  const aimed = aim === undefined ? '' : `aim ${figure(aim)} ${unit}${value > aim ? ', over' : ''}`;
  return `  ${what.padEnd(62)} ${`${figure(value)} ${unit}`.padStart(10)}   ${aimed.padEnd(20)} ${held}`.trimEnd();
}

for (const [name, run] of PARTS) {
  console.log(`\n${name}`);
  for (const row of await run()) console.log(line(row));
}
