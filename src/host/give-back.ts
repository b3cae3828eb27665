/**
 * Hands memory back after large work. V8 puts collecting off while there is room, so that a second reading of a large
 * file would stand beside the leftovers of the first; measured with a file of 16 MB, that is a third of the peak.
 */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** Less than this is not worth the 20 ms that collecting takes. */
const WORTH_BYTES = 96 * 1024 * 1024;

export function createGiveBack(): () => void {
  setFlagsFromString('--expose-gc');
  const collect: unknown = runInNewContext('globalThis.gc');
  if (typeof collect !== 'function') return () => undefined;
  return () => {
    const { heapUsed, external } = process.memoryUsage();
    if (heapUsed + external > WORTH_BYTES) collect();
  };
}
