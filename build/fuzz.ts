/** Feeds damaged copies of the corpus to every parser: `npm run fuzz -- [count] [seed]`. No throw, no hang, no nonsense. */
import { fileURLToPath } from 'node:url';
import { type IntakeContext, IntakePreview } from '../src/intake/intake.ts';
import { readFile } from '../src/intake/read-file.ts';
import { readTariff } from '../src/intake/read-tariff.ts';
import { Tariff } from '../src/model/shapes/tariff.ts';
import { kWhPerUnit } from '../src/reference/fuels.ts';
import { remarkSentence } from '../src/words/remarks.ts';
import { damagedFile, readCorpus, seededRandom } from './damage.ts';
import { fuzzStore } from './fuzz-store.ts';

const SLOWEST_MS = 2000;

const context: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};

export interface FuzzResult {
  readonly files: number;
  readonly refused: number;
  readonly slowestMs: number;
  readonly faults: readonly { readonly file: string; readonly run: number; readonly fault: string }[];
}

/** What is wrong with what intake made of the file; undefined where nothing is. */
export function findNonsense(name: string, bytes: Uint8Array): { fault?: string; refused: boolean } {
  const { preview, intervals } = readFile(name, bytes, {}, context);
  const refused = preview.remarks.some((r) => r.weight === 'refusal');
  const faults: string[] = [];
  const parsed = IntakePreview.safeParse(preview);
  if (!parsed.success) faults.push(`not the agreed shape: ${JSON.stringify(parsed.error.issues[0])}`);
  if (refused && (preview.series.length > 0 || intervals.length > 0)) faults.push('refused, yet with series');
  if (!refused && preview.series.length === 0) faults.push('no series and no refusal');
  for (const remark of preview.remarks) {
    const sentence = remarkSentence(remark);
    if (!sentence.endsWith('.') || /undefined|\bNaN (kWh|rows?|readings?|days?|cells?)/.test(sentence))
      faults.push(`sentence: ${sentence}`);
  }
  for (const series of preview.series) {
    if (!Number.isFinite(series.total)) faults.push(`total ${series.total}`);
    if (series.present > series.expected) faults.push(`present ${series.present} of ${series.expected}`);
    if (series.from >= series.to) faults.push(`from ${series.from} to ${series.to}`);
    if (series.carrier !== 'outdoor-temperature' && series.total < 0) faults.push(`negative total ${series.total}`);
  }
  for (const one of intervals)
    for (const day of one.days)
      if (day.values.some((v) => v === Number.POSITIVE_INFINITY || v === Number.NEGATIVE_INFINITY))
        faults.push(`an infinite reading on ${day.date}`);
  const tariff = readTariff(name, bytes, { zone: 'Europe/London', money: '£' });
  if (tariff.tariff && !Tariff.safeParse(tariff.tariff).success) faults.push('a tariff that is none');
  if (!tariff.tariff && !tariff.remarks.some((r) => r.weight === 'refusal')) faults.push('no tariff and no refusal');
  return faults.length > 0 ? { fault: faults[0]!, refused } : { refused };
}

export function fuzzIntake(count: number, seed: number, onProgress?: (done: number) => void): FuzzResult {
  const random = seededRandom(seed);
  const corpus = readCorpus();
  const faults: { file: string; run: number; fault: string }[] = [];
  let refused = 0;
  let slowestMs = 0;
  for (let run = 0; run < count; run++) {
    const { name, bytes } = damagedFile(corpus, random);
    const start = performance.now();
    try {
      const found = findNonsense(name, bytes);
      if (found.refused) refused++;
      if (found.fault) faults.push({ file: name, run, fault: found.fault });
    } catch (error) {
      faults.push({
        file: name,
        run,
        fault: error instanceof Error ? (error.stack ?? error.message) : String(error),
      });
    }
    const ms = performance.now() - start;
    slowestMs = Math.max(slowestMs, ms);
    if (ms > SLOWEST_MS) faults.push({ file: name, run, fault: `took ${Math.round(ms)} ms` });
    if (run % 1000 === 999) onProgress?.(run + 1);
  }
  return { files: count, refused, slowestMs, faults };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const count = Number(process.argv[2] ?? 20_000);
  const seed = Number(process.argv[3] ?? 1);
  const result = fuzzIntake(count, seed, (done) => process.stdout.write(`\r${done} of ${count}`));
  console.log(
    `\r${result.files} damaged files (seed ${seed}), ${result.refused} refused, slowest ${result.slowestMs.toFixed(0)} ms`,
  );
  for (const { file, run, fault } of result.faults.slice(0, 20)) console.log(`run ${run}, ${file}: ${fault}`);
  const stored = await fuzzStore(Math.ceil(count / 20), seed);
  console.log(
    `${stored.files} damaged files offered to a store: ${stored.refused} refused, ${stored.accepted} kept and undone`,
  );
  for (const fault of stored.faults.slice(0, 20)) console.log(fault);
  const faults = result.faults.length + stored.faults.length;
  if (faults > 0) {
    console.log(`${faults} faults`);
    process.exit(1);
  }
}
