import { expect, test } from 'vitest';
import { proveCalibration } from '../../prove/calibration.ts';

// A small version of the proof: 80 % of ranges hold the truth, give or take what chance does to so few homes.
test('ranges hold the truth about 8 times in 10, by household and by month', () => {
  const { rows, within } = proveCalibration(15);
  const outside = rows.filter((row) => row.at(-1) === 'OUTSIDE');
  expect(outside).toEqual([]);
  expect(within).toBe(true);
  expect(rows.find((row) => String(row[0]).startsWith('made homes together: heat'))?.[1]).toBe(120);
});
