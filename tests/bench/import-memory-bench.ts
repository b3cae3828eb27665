/** Memory of the built host while it takes in the largest file that is taken. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { LARGEST_EVIDENCE_BYTES } from '../../src/intake/intake.ts';
import type { BenchRow } from './bench-row.ts';
import { startHost } from './host-process.ts';

/** Quarter-hours up to the limit. */
function largestFile(): Uint8Array {
  const line = (at: number) =>
    `${new Date(at).toISOString().slice(0, 19)}Z,${(((at / 900_000) * 7919) % 500) / 1000}\n`;
  const bytes = new Uint8Array(LARGEST_EVIDENCE_BYTES);
  const encoder = new TextEncoder();
  let size = encoder.encodeInto('Start,Electricity kWh\n', bytes).written;
  for (let at = Date.UTC(1990, 0, 1); size < LARGEST_EVIDENCE_BYTES - 64; at += 900_000) {
    size += encoder.encodeInto(line(at), bytes.subarray(size)).written;
  }
  return bytes.subarray(0, size);
}

export async function importMemoryBench(): Promise<BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'plainwarmth-memory-'));
  const host = await startHost(folder);
  if (!host) return [];
  try {
    const { household } = await host.call('household.create', { name: 'Memory' });
    const idle = host.memory();
    if (!idle) {
      console.warn('NOT MEASURED: this system does not say how much memory a process holds.');
      return [];
    }
    const bytes = largestFile().slice();
    const begun = performance.now();
    const { fileId } = await host.call('file.offer', { fileName: 'largest.csv', bytes });
    const request = { fileId, householdId: household.id, choices: {} };
    await host.call('evidence.preview', request);
    await host.call('evidence.accept', request);
    const seconds = (performance.now() - begun) / 1000;
    const what = `the largest file that is taken (${LARGEST_EVIDENCE_BYTES / 1024 / 1024} MB), offered, previewed and kept`;
    return [
      { what: `${what}: memory above idle`, value: host.memory()!.most - idle.now, unit: 'MB', aim: 300 },
      { what: `${what}: time`, value: seconds * 1000, unit: 'ms' },
    ];
  } finally {
    await host.end();
    rmSync(folder, { recursive: true, force: true });
  }
}
