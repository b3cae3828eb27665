/**
 * One made year of a home in many dialects, read back: `npm run dialects -- [count] [first seed] [processes]`. Exits 1 where
 * one is silently wrong.
 */
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { judgeDialect, type Outcome, type Verdict } from './judge.ts';

const OUTCOMES: readonly Outcome[] = ['right', 'asked', 'asked needlessly', 'refused', 'wrong'];
const DIMENSIONS = [
  'language',
  'what',
  'measure',
  'unit',
  'unitPlace',
  'minutes',
  'layout',
  'dateForm',
  'hours',
  'clock',
  'clockSaid',
  'side',
  'titles',
  'gaps',
  'encoding',
] as const;
/** Seeds that a thread takes at a time. */
const PIECE = 10;

if (isMainThread) {
  const [count = 2000, first = 1, threads = 2] = process.argv.slice(2).map(Number);
  const verdicts = await judgeAll(first, first + count, threads);
  report(verdicts.toSorted((a, b) => a.dialect.seed - b.dialect.seed));
} else {
  const port = parentPort!;
  port.on('message', ([from, to]: [number, number]) => {
    for (let seed = from; seed < to; seed++) {
      try {
        port.postMessage(judgeDialect(seed));
      } catch (error) {
        throw new Error(`dialect ${seed}`, { cause: error });
      }
    }
    port.postMessage('more');
  });
  port.postMessage(workerData);
}

/** Shares the seeds out to threads, a piece at a time. */
async function judgeAll(first: number, end: number, threads: number): Promise<Verdict[]> {
  const verdicts: Verdict[] = [];
  let next = first;
  const work = () =>
    new Promise<void>((done, fail) => {
      const worker = new Worker(new URL(import.meta.url), { workerData: 'more' });
      worker.on('error', fail);
      worker.on('message', (message: Verdict | 'more') => {
        if (message !== 'more') {
          verdicts.push(message);
          if (message.outcome === 'wrong') console.log(sentenceOf(message));
          if (verdicts.length % 200 === 0) console.log(`${verdicts.length} of ${end - first}`);
        } else if (next < end) {
          worker.postMessage([next, Math.min(end, next + PIECE)]);
          next += PIECE;
        } else worker.terminate().then(() => done(), fail);
      });
    });
  await Promise.all(Array.from({ length: threads }, work));
  return verdicts;
}

function sentenceOf({ dialect: d, twists, outcome, why }: Verdict): string {
  return `${outcome}: ${d.seed} ${d.language} ${d.what} ${d.measure} ${d.unit} ${d.unitPlace} ${d.minutes} ${d.layout} ${d.dateForm} ${d.hourForm} ${d.clock} ${d.clockSaid} ${d.side} [${twists.join(', ')}]: ${why}`;
}

function report(verdicts: readonly Verdict[]): void {
  const row = (name: string, list: readonly Verdict[]) =>
    console.log(
      `${name.padEnd(34)}${OUTCOMES.map((o) => String(list.filter((v) => v.outcome === o).length).padStart(18)).join('')}`,
    );
  console.log(`${''.padEnd(34)}${OUTCOMES.map((o) => o.padStart(18)).join('')}`);
  for (const dimension of DIMENSIONS)
    for (const [value, list] of [...Map.groupBy(verdicts, (v) => String(v.dialect[dimension]))].sort(
      (a, b) => b[1].length - a[1].length,
    ))
      row(`${dimension} ${value}`, list);
  for (const twist of new Set(verdicts.flatMap(({ twists }) => twists)))
    row(
      `twist ${twist}`,
      verdicts.filter(({ twists }) => twists.includes(twist)),
    );
  row('all', verdicts);
  for (const outcome of ['asked needlessly', 'refused'] as const)
    for (const verdict of verdicts.filter((v) => v.outcome === outcome).slice(0, 60)) console.log(sentenceOf(verdict));
  process.exitCode = verdicts.some(({ outcome }) => outcome === 'wrong') ? 1 : 0;
}
