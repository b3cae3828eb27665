import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** What takes long begins first, so that no process waits for the other at the end. */
const LONG = /prove\/small-proofs|desk\/copies|host\/worker|intake\/dialects/;
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isLong = ({ moduleId }: TestSpecification) => LONG.test(moduleId);
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))];
  }
}

export default defineConfig({
  plugins: [react()],
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/unit/**/*.test.{ts,tsx}', 'tests/outside/**/*.test.ts'],
    environment: 'node',
    // One after the other in a process for each core, which keeps its modules: see tests/unit/leave-no-trace.ts.
    pool: 'forks',
    isolate: false,
    maxWorkers: '100%',
    sequence: { sequencer: LongestFirst },
    globalSetup: ['tests/own-tmp.ts'],
    setupFiles: ['tests/unit/leave-no-trace.ts'],
    // A fault is told by what is found; the time only ends what hangs, on a busy machine too.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 60_000 } },
    // The leave-behind carries its style inside itself; without this its style would be empty in tests.
    css: { include: [/\.css\?raw$/] },
  },
});
