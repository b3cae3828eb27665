/** Stands in for Vitest's `describe` and `test`: it only collects, so that a test can be run alone and as often as wanted. */
// Vitest's own expectations work outside it once this much of its worker is there.
Object.assign(globalThis, { __vitest_worker__: { config: {} } });
export const { expect, vi } = await import('vitest');

type Run = (...row: unknown[]) => unknown;
interface Suite {
  readonly hooks: Readonly<Record<'beforeAll' | 'beforeEach' | 'afterEach' | 'afterAll', Run[]>>;
}
export interface CollectedTest {
  readonly name: string;
  readonly run: Run;
  /** From the file to the innermost `describe`. */
  readonly suites: readonly Suite[];
}

let suites: readonly Suite[] = [];
let tests: CollectedTest[] = [];
const openSuite = (): Suite => ({ hooks: { beforeAll: [], beforeEach: [], afterEach: [], afterAll: [] } });

/** The tests that a file declares while it loads. */
export async function collect(load: () => Promise<unknown>): Promise<readonly CollectedTest[]> {
  suites = [openSuite()];
  tests = [];
  await load();
  return tests;
}

const functionOf = (words: readonly unknown[]) => words.find((word) => typeof word === 'function') as Run;
const rowOf = (row: unknown) => (Array.isArray(row) ? row : [row]);

function declare(declareOne: (name: string, run: Run) => void) {
  const one = (name: string, ...words: unknown[]) => declareOne(name, functionOf(words));
  const none = () => {};
  return Object.assign(one, {
    skip: none,
    skipIf: (isSkipped: unknown) => (isSkipped ? none : one),
    runIf: (isRun: unknown) => (isRun ? one : none),
    each:
      (rows: readonly unknown[]) =>
      (name: string, ...words: unknown[]) => {
        for (const row of rows) declareOne(name, () => functionOf(words)(...rowOf(row)));
      },
  });
}

export const test = declare((name, run) => tests.push({ name, run, suites }));
export const it = test;
export const describe = declare((_, run) => {
  const outer = suites;
  suites = [...outer, openSuite()];
  run();
  suites = outer;
});

const hook = (name: keyof Suite['hooks']) => (run: Run) => void suites.at(-1)!.hooks[name].push(run);
export const beforeAll = hook('beforeAll');
export const beforeEach = hook('beforeEach');
export const afterEach = hook('afterEach');
export const afterAll = hook('afterAll');

/** Runs the tests one after the other with their hooks; `around` runs each one and says whether to go on. */
export async function runTests(
  chosen: readonly CollectedTest[],
  around: (test: CollectedTest, run: () => Promise<void>) => Promise<boolean>,
): Promise<void> {
  const begun = new Set<Suite>();
  const each = async (runs: readonly Run[]) => {
    for (const run of runs) await run();
  };
  try {
    for (const test of chosen) {
      const goesOn = await around(test, async () => {
        for (const suite of test.suites) {
          if (begun.has(suite)) continue;
          begun.add(suite);
          await each(suite.hooks.beforeAll);
        }
        try {
          await each(test.suites.flatMap((suite) => suite.hooks.beforeEach));
          await test.run();
        } finally {
          await each(test.suites.toReversed().flatMap((suite) => suite.hooks.afterEach));
        }
      });
      if (!goesOn) break;
    }
  } finally {
    for (const suite of [...begun].reverse()) await each(suite.hooks.afterAll).catch(() => {});
  }
}
