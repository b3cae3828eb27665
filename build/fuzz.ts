/** Feeds damaged copies of the corpus to every parser: `npm run fuzz -- [count] [seed]`. No throw, no hang, no nonsense. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type IntakeContext, IntakePreview } from '../src/intake/intake.ts';
import { readFile } from '../src/intake/read-file.ts';
import { readTariff } from '../src/intake/read-tariff.ts';
import { Tariff } from '../src/model/tariff/tariff.ts';
import { remarkSentence } from '../src/words/remarks.ts';

const CORPUS = fileURLToPath(new URL('../tests/corpus/', import.meta.url));
const SLOWEST_MS = 2000;

const context: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerLitre: { oil: 10.3, lpg: 7.21 },
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};

interface CorpusFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface FuzzResult {
  readonly files: number;
  readonly refused: number;
  readonly slowestMs: number;
  readonly faults: readonly { readonly file: string; readonly run: number; readonly fault: string }[];
}

/** Small seeded generator (mulberry32), so that a failing run can be had again. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const TOKENS = [
  '"',
  '""',
  ',',
  ';',
  '\t',
  '\r',
  '\n',
  '\r\n',
  '\u0000',
  '-',
  '-1',
  '1e308',
  '1e-308',
  'NaN',
  'Infinity',
  '1,234,567.8',
  '1.234,5',
  '2025-02-30',
  '31/12/2025',
  '13/13/2025',
  '2025-03-30 01:30',
  '2025-10-26 01:30',
  '9999-12-31',
  '0001-01-01',
  '24:00',
  '25:61',
  '+14:00',
  'Z',
  'kWh',
  'Wh',
  'm3',
  '°C',
  'Total',
  'From',
  'To',
  'Date',
  '£',
  '999999999999999999999',
  '[',
  '{',
  '}',
  'null',
  '0',
  '00:00',
  'HH01',
  'Q1 2025',
  '\uFEFF',
  'é',
  '=cmd',
  ' '.repeat(50),
  '9'.repeat(400),
];

/** One to six changes of a file: bytes flipped, spans cut, doubled, moved, tokens put in, lines swapped, two files joined. */
export function mutate(bytes: Uint8Array, other: Uint8Array, random: () => number): Uint8Array {
  let now = Buffer.from(bytes);
  const below = (n: number): number => Math.floor(random() * n);
  for (let changes = 1 + below(6); changes > 0; changes--) {
    const at = below(now.length + 1);
    const end = Math.min(now.length, at + below(random() < 0.2 ? 2000 : 40));
    switch (below(8)) {
      case 0:
        if (at < now.length) now[at] = below(256);
        break;
      case 1:
        now = Buffer.concat([now.subarray(0, at), now.subarray(end)]);
        break;
      case 2:
        now = Buffer.concat([now.subarray(0, end), now.subarray(at)]);
        break;
      case 3:
        now = Buffer.concat([now.subarray(0, at), Buffer.from(TOKENS[below(TOKENS.length)]!), now.subarray(at)]);
        break;
      case 4:
        now = Buffer.from(now.subarray(0, at));
        break;
      case 5: {
        const lines = now.toString('latin1').split('\n');
        const a = below(lines.length);
        const b = below(lines.length);
        [lines[a], lines[b]] = [lines[b]!, lines[a]!];
        now = Buffer.from(lines.join('\n'), 'latin1');
        break;
      }
      case 6:
        now = Buffer.concat([now.subarray(0, at), other.subarray(below(other.length + 1))]);
        break;
      default: {
        // One cell of one line becomes something else.
        const lines = now.toString('latin1').split('\n');
        const line = below(lines.length);
        const cells = lines[line]!.split(/([,;\t|])/);
        cells[below(cells.length)] = TOKENS[below(TOKENS.length)]!;
        lines[line] = cells.join('');
        now = Buffer.from(lines.join('\n'), 'latin1');
      }
    }
    if (now.length > 400_000) now = Buffer.from(now.subarray(0, 400_000));
  }
  return new Uint8Array(now);
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
  const tariff = readTariff(name, bytes);
  if (tariff.tariff && !Tariff.safeParse(tariff.tariff).success) faults.push('a tariff that is none');
  if (!tariff.tariff && !tariff.remarks.some((r) => r.weight === 'refusal')) faults.push('no tariff and no refusal');
  return faults.length > 0 ? { fault: faults[0]!, refused } : { refused };
}

export function readCorpus(): CorpusFile[] {
  return readdirSync(CORPUS)
    .sort()
    .map((name) => ({ name, bytes: new Uint8Array(readFileSync(`${CORPUS}${name}`)) }));
}

export function fuzzIntake(count: number, seed: number, onProgress?: (done: number) => void): FuzzResult {
  const random = seededRandom(seed);
  const corpus = readCorpus();
  const faults: { file: string; run: number; fault: string }[] = [];
  let refused = 0;
  let slowestMs = 0;
  for (let run = 0; run < count; run++) {
    const file = corpus[Math.floor(random() * corpus.length)]!;
    const other = corpus[Math.floor(random() * corpus.length)]!;
    const bytes = mutate(file.bytes, other.bytes, random);
    const start = performance.now();
    try {
      const found = findNonsense(file.name, bytes);
      if (found.refused) refused++;
      if (found.fault) faults.push({ file: file.name, run, fault: found.fault });
    } catch (error) {
      faults.push({
        file: file.name,
        run,
        fault: error instanceof Error ? (error.stack ?? error.message) : String(error),
      });
    }
    const ms = performance.now() - start;
    slowestMs = Math.max(slowestMs, ms);
    if (ms > SLOWEST_MS) faults.push({ file: file.name, run, fault: `took ${Math.round(ms)} ms` });
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
  if (result.faults.length > 0) {
    console.log(`${result.faults.length} faults`);
    process.exit(1);
  }
}
