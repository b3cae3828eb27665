/** One line of the benchmark: what was measured, the median, and the peer measured in the same run. */
export interface BenchRow {
  readonly what: string;
  /** Median of the runs. */
  readonly value: number;
  readonly unit: 'ms' | 'MB';
  /** What it is held against, with its own median. */
  readonly peer?: { readonly what: string; readonly value: number };
  /** Aim on two ordinary cores, in the row's unit. */
  readonly aim?: number;
}

/** Median time of `runs` runs after `warmUp` runs that do not count [ms]. */
export const medianMs = async (run: () => unknown, runs = 9, warmUp = 2): Promise<number> =>
  (await mediansInTurn([run], runs, warmUp))[0]!;

/** The same of several things done in turn, so that whatever else the machine does holds up all of them alike. */
export async function mediansInTurn(things: readonly (() => unknown)[], runs = 9, warmUp = 2): Promise<number[]> {
  const times = things.map((): number[] => []);
  for (let i = -warmUp; i < runs; i++) {
    for (const [at, run] of things.entries()) {
      const begun = performance.now();
      await run();
      if (i >= 0) times[at]!.push(performance.now() - begun);
    }
  }
  return times.map(medianOf);
}

export const medianOf = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;
