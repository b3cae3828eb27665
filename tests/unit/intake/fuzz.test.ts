import { expect, test } from 'vitest';
import { fuzzIntake } from '../../../build/fuzz.ts';
import { fuzzStore } from '../../../build/fuzz-store.ts';

test('400 damaged files: no throw, no hang, no nonsense', () => {
  const result = fuzzIntake(400, 20_251_126);
  expect(result.faults).toEqual([]);
  // Both outcomes must occur, else the damage is too mild or too harsh to prove anything.
  expect(result.refused).toBeGreaterThan(20);
  expect(result.files - result.refused).toBeGreaterThan(20);
});

test('60 damaged files offered to a store: looking changes nothing, what is refused or undone leaves nothing', async () => {
  const result = await fuzzStore(60, 20_251_126);
  expect(result.faults).toEqual([]);
  expect(result.refused).toBeGreaterThan(5);
  expect(result.accepted).toBeGreaterThan(5);
});
