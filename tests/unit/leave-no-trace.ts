/** Modules are shared between the test files of a worker: what one test sets, the next must not find. */
import { afterEach, vi } from 'vitest';
import { speak } from '../../src/words/say.ts';

afterEach(() => {
  speak({ language: 'en-GB', currency: 'GBP' });
  vi.useRealTimers();
});
