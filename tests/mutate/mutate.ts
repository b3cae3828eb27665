/**
 * Puts deliberate faults into `src/model`, one at a time, and counts how many a test notices:
 * `npm run mutate -- [seed=1] [count=1500|all] [folder=tariff] [file=tariff/price.ts] [tests=tariff]`. Prints the
 * score by folder with its 95 % interval, writes every survivor to tests/output, and exits 1 below the score asked for.
 * With `tests` only the test files whose path fits that pattern are run, so that the score is a lower bound. It is one
 * anyway: a change that `PLAN_MS` of tests did not notice counts as survived, and the number of those cut off is printed.
 */
import { fork } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { dirname } from 'node:path';
import { parseSync } from 'vite';
import { seededRandom } from '../../build/damage.ts';
import { type Change, changesOf, weave } from './changes.ts';
import type { Measurement, Task, Trial } from './worker.ts';

const LOWEST_SCORE = 0.85;
/** A worker silent for so long is stopped; its change counts as noticed. */
const SILENCE_MS = 180_000;
/** A change is tried by the tests that pass it, the likeliest and quickest first, until so much of their usual time is spent. */
const PLAN_MS = 30_000;

const minutes = () => (performance.now() / 60_000).toFixed(1);
const root = new URL('../..', import.meta.url).pathname;
const model = `${root}src/model/`;
const asked = new Map(process.argv.slice(2).map((word) => word.split('=') as [string, string]));
for (const name of asked.keys())
  if (!['seed', 'count', 'folder', 'file', 'tests'].includes(name)) throw new Error(`there is no option ${name}`);
const seed = Number(asked.get('seed') ?? 1);
const count = asked.get('count') === 'all' ? Number.POSITIVE_INFINITY : Number(asked.get('count') ?? 1500);
/** At least so many changes in every folder, where it has them. */
const folderMinimum = Math.ceil(Math.min(count, 1500) / 75);

interface Numbered extends Change {
  readonly file: string;
  readonly folder: string;
}

const filesIn = (folder: string, ending: RegExp) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => ending.test(name))
    .sort();
const possible: readonly Numbered[] = filesIn(model, /\.ts$/)
  .map((file) => ({ file, folder: dirname(file) }))
  .filter(({ file, folder }) => (asked.get('file') ?? file) === file && (asked.get('folder') ?? folder) === folder)
  .flatMap((place) =>
    changesOf(place.file, readFileSync(model + place.file, 'utf8')).map((change) => ({ ...change, ...place })),
  );
if (possible.length === 0) throw new Error('no file of src/model is meant by that');

const byFolder = Map.groupBy(possible, (change) => change.folder);
const share = Math.min(1, count / possible.length);
const random = seededRandom(seed);
const sample = [...byFolder.values()].flatMap((changes) => {
  const wanted = Math.max(Math.ceil(changes.length * share), Math.min(folderMinimum, changes.length));
  return changes
    .map((change) => ({ change, order: random() }))
    .sort((a, b) => a.order - b.order)
    .slice(0, wanted)
    .map(({ change }) => change);
});
const numbered = [
  ...Map.groupBy(
    sample.map((change, number) => [number, change] as const),
    ([, { file }]) => file,
  ),
].map(([file, changes]) => [model + file, changes] as const);
// A text that no longer parses would make every test that loads it useless, and its changes look as if nothing noticed them.
for (const [file, changes] of numbered) {
  const [error] = parseSync(file, weave(file, readFileSync(file, 'utf8'), new Map(changes))).errors;
  if (error) throw new Error(`${file} with its changes does not parse: ${error.message} ${error.codeframe ?? ''}`);
}

/** Gives each task to the next free worker; a worker that falls silent or dies is replaced and `undefined` is its answer. */
async function runAll<Answer>(
  count: number,
  taskOf: (place: number) => Task,
  label: string,
  onAnswer: (place: number, answer: Answer | undefined) => void,
) {
  let next = 0;
  let done = 0;
  async function work() {
    while (next < count) {
      const worker = fork(new URL('worker.ts', import.meta.url), {
        serialization: 'advanced',
        stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
      });
      const answer = () =>
        new Promise<unknown>((resolve) => {
          const end = (said: unknown) => {
            clearTimeout(timer);
            worker.removeAllListeners();
            resolve(said);
          };
          const timer = setTimeout(end, SILENCE_MS, undefined);
          worker.on('message', (said) => (said === 'alive' ? timer.refresh() : end(said)));
          worker.on('exit', () => end(undefined));
        });
      worker.send(numbered);
      let said = await answer();
      if (said !== 'ready') throw new Error('a worker did not start');
      while (said !== undefined && next < count) {
        const place = next++;
        worker.send(taskOf(place));
        said = await answer();
        onAnswer(place, said as Answer | undefined);
        process.stderr.write(`\r${label} ${++done} of ${count} `);
      }
      worker.kill('SIGKILL');
    }
  }
  await Promise.all(Array.from({ length: Math.max(1, availableParallelism()) }, work));
  process.stderr.write(`in ${minutes()} min\n`);
}

const testFiles = ['tests/unit', 'tests/outside']
  .flatMap((folder) => filesIn(`${root}${folder}`, /\.test\.tsx?$/).map((name) => `${root}${folder}/${name}`))
  .filter((file) => new RegExp(asked.get('tests') ?? '').test(file));
const measured = new Map<string, Measurement>();
const unusable: string[] = [];
await runAll<Measurement>(
  testFiles.length,
  (place) => ({ do: 'measure', file: testFiles[place]! }),
  'test file',
  (place, measurement) => {
    if (measurement) measured.set(testFiles[place]!, measurement);
    unusable.push(...(measurement?.unusable ?? [`${testFiles[place]}: no answer`]));
  },
);

/** For each change the tests that pass its place, by file. */
const plans = sample.map((_, change) =>
  [...measured].flatMap(([file, { loadMs, tests }]) => {
    const chosen = tests.filter(({ passes }) => passes.includes(change)).map((test) => ({ ...test, passes: [] }));
    return chosen.length > 0 ? [{ file, tests: chosen, ms: chosen.reduce((sum, { ms }) => sum + ms, loadMs) }] : [];
  }),
);
/** How often a test file has noticed a change of a file: those go first, then the quickest. */
const noticed = new Map<string, number>();
const habit = (change: number, testFile: string) => noticed.get(`${sample[change]!.file} ${testFile}`) ?? 0;
/** The changes whose last tests were left out for want of time. */
const cutOff = new Set<number>();
function planFor(change: number) {
  const before = ({ file, ms }: { file: string; ms: number }) => (1 + habit(change, file)) / (1 + ms);
  let left = PLAN_MS;
  return plans[change]!.toSorted((a, b) => before(b) - before(a)).filter(({ ms }, place) => {
    left -= ms;
    if (left >= 0 || place === 0) return true;
    cutOff.add(change);
    return false;
  });
}
const trials: (Trial | undefined)[] = [];
await runAll<Trial>(
  sample.length,
  (change) => ({ do: 'try', change, plan: planFor(change) }),
  'change',
  (change, trial) => {
    trials[change] = trial;
    const testFile = trial?.killer?.split(' #')[0];
    if (testFile) noticed.set(`${sample[change]!.file} ${testFile}`, habit(change, testFile) + 1);
  },
);

const results = sample.map((change, place) => {
  const trial = trials[place];
  const outcome =
    plans[place]!.length === 0
      ? 'untouched'
      : !trial || trial.isTimeout
        ? 'timed out'
        : trial.killer
          ? 'failed'
          : 'survived';
  const noticed = outcome === 'failed' || outcome === 'timed out';
  return { ...change, outcome, noticed, isCutOff: !noticed && cutOff.has(place) };
});

/** Wilson's interval of a share at 95 %. */
function wilson(share: number, n: number): string {
  const z = 1.96;
  const middle = (share + z ** 2 / (2 * n)) / (1 + z ** 2 / n);
  const half = (z / (1 + z ** 2 / n)) * Math.sqrt((share * (1 - share)) / n + z ** 2 / (4 * n ** 2));
  return `${(100 * share).toFixed(1).padStart(5)} %  (${(100 * (middle - half)).toFixed(1)} to ${(100 * (middle + half)).toFixed(1)})`;
}
const shareOf = (list: readonly { noticed: boolean }[]) => list.filter(({ noticed }) => noticed).length / list.length;
const table = (groups: Map<string, typeof results>) =>
  [...groups]
    .sort(([a], [b]) => a.localeCompare(b))
    .map(
      ([name, list]) =>
        `${name.padEnd(18)} ${String(list.filter((one) => one.noticed).length).padStart(4)} of ${String(list.length).padStart(4)}  ${wilson(shareOf(list), list.length)}`,
    );
// A folder weighs in the whole as many changes as it could have had, not as many as were drawn from it.
const folders = Map.groupBy(results, (one) => one.folder);
const weights = [...folders].map(([folder, list]) => ({
  list,
  weight: byFolder.get(folder)!.length / possible.length,
}));
const score = weights.reduce((sum, { list, weight }) => sum + weight * shareOf(list), 0);
const effective = 1 / weights.reduce((sum, { list, weight }) => sum + weight ** 2 / list.length, 0);

const survivors = results.filter((one) => !one.noticed);
const lines = survivors
  .sort((a, b) => a.kind.localeCompare(b.kind) || a.file.localeCompare(b.file) || a.start - b.start)
  .map(({ kind, file, start, end, text, outcome }) => {
    const source = readFileSync(model + file, 'utf8');
    const line = source.slice(0, start).split('\n').length;
    const short = (words: string) => words.replace(/\s+/g, ' ').slice(0, 90);
    return `${kind}: src/model/${file}:${line} (${outcome}) ${short(source.slice(start, end))} → ${short(text ?? 'nothing')}`;
  });
const unsteady = [...new Set(trials.flatMap((trial) => trial?.unsteady ?? []))];
const report = [
  `${sample.length} of ${possible.length} possible changes of src/model, seed ${seed}, ${minutes()} minutes`,
  ...table(folders),
  ...table(Map.groupBy(results, (one) => `- ${one.kind}`)),
  ...table(Map.groupBy(results, (one) => `= ${one.outcome}`)).map((line) => line.slice(0, 32)),
  `${results.filter((one) => one.isCutOff).length} of the survivors were not tried by all tests that pass them`,
  `whole score ${wilson(score, effective)}, asked for ${100 * LOWEST_SCORE} %`,
].join('\n');
mkdirSync(`${root}tests/output`, { recursive: true });
writeFileSync(
  `${root}tests/output/mutate.txt`,
  [
    report,
    '',
    `${survivors.length} survivors`,
    ...lines,
    '',
    'tests that cannot run here',
    ...unusable,
    '',
    'unsteady tests',
    ...unsteady,
    '',
  ].join('\n'),
);
console.log(
  `${report}\n${survivors.length} survivors in tests/output/mutate.txt; ${unusable.length} tests could not be used`,
);
process.exitCode = score >= LOWEST_SCORE ? 0 : 1;
