import { constants, PerformanceObserver } from 'node:perf_hooks';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { createGiveBack } from '../../../src/host/give-back.ts';

test('memory is collected once after large work, and not again with every answer while files are held', async () => {
  let forced = 0;
  const watch = new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      const { flags } = (entry as PerformanceEntry & { detail: { flags: number } }).detail;
      if ((flags & constants.NODE_PERFORMANCE_GC_FLAGS_FORCED) !== 0) forced++;
    }
  });
  watch.observe({ entryTypes: ['gc'] });
  const giveBack = createGiveBack();
  const held = Array.from({ length: 6 }, () => new Uint8Array(16 * 1024 * 1024));
  for (let answers = 0; answers < 10; answers++) giveBack();
  await nextTurn();
  await nextTurn();
  watch.disconnect();
  expect(held).toHaveLength(6);
  expect(forced).toBe(1);
});
