/** One of the processes that run tests for `mutate.ts`: it keeps all modules compiled and takes one task after the other. */
import fc from 'fast-check';
import type { Change } from './changes.ts';
import { openModules } from './modules.ts';
import { type CollectedTest, collect, runTests } from './test-frame.ts';

/** A test of a file: its place there, how long it took unchanged, and the changes whose place it passed. */
export interface Measured {
  readonly place: number;
  readonly ms: number;
  readonly passes: readonly number[];
}
export type Task =
  | { readonly do: 'measure'; readonly file: string }
  | {
      readonly do: 'try';
      readonly change: number;
      readonly plan: readonly { file: string; tests: readonly Measured[] }[];
    };
export interface Measurement {
  readonly loadMs: number;
  readonly tests: readonly Measured[];
  readonly unusable: readonly string[];
}
export interface Trial {
  /** The test that noticed; undefined where the change survived. */
  readonly killer: string | undefined;
  readonly isTimeout: boolean;
  /** Tests that failed with the change and without it just after: they say nothing. */
  readonly unsteady: readonly string[];
}

/** A changed test may take this much of its usual time, and so much more. */
const TIMES_SLOWER = 5;
const PATIENCE_MS = 1500;
const WAITING_MS = 30_000;

let active = -1;
let deadline = Number.POSITIVE_INFINITY;
let ticks = 0;
let onPass: ((change: number) => void) | undefined;
class TimeIsOver extends Error {}

/** Time this process has worked: on a busy machine it does not run on while others work. */
const cpuMs = () => process.cpuUsage().user / 1000;

/** A change whose value is the one it replaces, whenever a test comes by, cannot be noticed by that test. */
function isSame(changed: () => unknown, unchanged: () => unknown): boolean {
  try {
    return Object.is(changed(), unchanged());
  } catch {
    return false;
  }
}

Object.assign(globalThis, {
  __change: {
    on: (change: number, changed?: () => unknown, unchanged?: () => unknown) => {
      if (onPass && !(changed && unchanged && isSame(changed, unchanged))) onPass(change);
      return change === active;
    },
    tick: () => {
      if ((++ticks & 0x3fff) === 0 && cpuMs() > deadline) throw new TimeIsOver();
    },
  },
});
process.env.NODE_ENV = 'test';
// Modules that listen for the end of the process are loaded many times here.
process.setMaxListeners(0);
fc.configureGlobal({ seed: 1, endOnFailure: true });

const numbered = await new Promise<ReadonlyMap<string, ReadonlyMap<number, Change>>>((resolve) =>
  process.once('message', (list: [string, [number, Change][]][]) =>
    resolve(new Map(list.map(([file, changes]) => [file, new Map(changes)]))),
  ),
);
const modules = await openModules(numbered);
const setup = new URL('../unit/leave-no-trace.ts', import.meta.url).pathname;
const unwatched = { reads: () => {}, loads: <T>(_: string, run: () => Promise<T>) => run() };

/** Ends what works for longer than `ms`, or waits for longer than that and `WAITING_MS`. */
async function within<T>(ms: number, run: () => Promise<T>): Promise<T> {
  deadline = cpuMs() + ms;
  let timer: NodeJS.Timeout | undefined;
  const over = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new TimeIsOver()), ms + WAITING_MS);
  });
  try {
    const result = await Promise.race([run(), over]);
    if (cpuMs() > deadline) throw new TimeIsOver();
    return result;
  } finally {
    clearTimeout(timer);
    deadline = Number.POSITIVE_INFINITY;
  }
}

/** The tests of a file in a graph of modules, with what is set back after each of them. */
const testsIn = (file: string, { load } = modules.freshGraph(unwatched)) =>
  collect(async () => {
    await load(setup);
    await load(file);
  });

/** Runs every test of a file unchanged and notes which changes lie on its way, those in code that runs at loading too. */
async function measure(file: string): Promise<Measurement> {
  await testsIn(file);
  const passes = new Map<string, Set<number>>();
  const reads = new Map<string, Set<string>>();
  let here = file;
  const note = <T>(map: Map<string, Set<T>>, what: T) =>
    (map.get(here) ?? map.set(here, new Set()).get(here)!).add(what);
  onPass = (change) => note(passes, change);
  const graph = modules.freshGraph({
    reads: (module) => note(reads, module),
    loads: async (module, run) => {
      const importer = here;
      here = module;
      return run().finally(() => {
        here = importer;
      });
    },
  });
  const begun = cpuMs();
  const tests = await testsIn(file, graph);
  const loadMs = cpuMs() - begun;
  const measured: { place: number; ms: number }[] = [];
  const unusable: string[] = [];
  await runTests(tests, async (test, run) => {
    const start = cpuMs();
    here = `${tests.indexOf(test)}`;
    try {
      await within(60_000, run);
      measured.push({ place: tests.indexOf(test), ms: cpuMs() - start });
    } catch (error) {
      unusable.push(`${file}: ${test.name}: ${String(error).split('\n')[0]}`);
    }
    here = file;
    return true;
  });
  onPass = undefined;
  const reached = (starts: readonly string[]) => {
    const all = new Set(starts);
    for (const one of all) for (const module of reads.get(one) ?? []) all.add(module);
    return [...new Set([...all].flatMap((one) => [...(passes.get(one) ?? [])]))];
  };
  return {
    loadMs,
    unusable,
    tests: measured.map(({ place, ms }) => ({ place, ms, passes: reached([file, `${place}`]) })),
  };
}

/** The first of the chosen tests of a file that fails with the change in. */
async function firstFailure(change: number, file: string, chosen: readonly Measured[]) {
  active = change;
  let failed: { test: number; isTimeout: boolean } | undefined;
  try {
    const tests = await within(20_000, () => testsIn(file));
    const usualMs = new Map<CollectedTest | undefined, Measured>(chosen.map((one) => [tests[one.place], one]));
    if (usualMs.has(undefined)) throw new Error('the file declares fewer tests');
    await runTests(
      tests.filter((test) => usualMs.has(test)),
      async (test, run) => {
        const { place, ms } = usualMs.get(test)!;
        await within(ms * TIMES_SLOWER + PATIENCE_MS, run).catch((error) => {
          failed = { test: place, isTimeout: error instanceof TimeIsOver };
        });
        return failed === undefined;
      },
    );
  } catch (error) {
    failed ??= { test: chosen[0]!.place, isTimeout: error instanceof TimeIsOver };
  } finally {
    active = -1;
  }
  return failed;
}

async function tryOut(change: number, plan: (Task & { do: 'try' })['plan']): Promise<Trial> {
  const unsteady: string[] = [];
  for (const { file, tests } of plan) {
    process.send!('alive');
    let left = tests;
    while (left.length > 0) {
      const failed = await firstFailure(change, file, left);
      if (!failed) break;
      const killer = `${file} #${failed.test}`;
      const again = await firstFailure(
        -1,
        file,
        left.filter((one) => one.place === failed.test),
      );
      if (!again) return { killer, isTimeout: failed.isTimeout, unsteady };
      unsteady.push(killer);
      left = left.filter((one) => one.place !== failed.test);
    }
  }
  return { killer: undefined, isTimeout: false, unsteady };
}

process.on('message', async (task: Task) => {
  if (task.do === 'try') process.send!(await tryOut(task.change, task.plan));
  else
    process.send!(
      await measure(task.file).catch((error) => ({ loadMs: 0, tests: [], unusable: [`${task.file}: ${error}`] })),
    );
});
process.send!('ready');
