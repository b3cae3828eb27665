import { describe, expect, test } from 'vitest';
import { USES } from '../../../src/model/heat-pump/full/year.ts';
import { isCode } from '../../../src/model/shapes/told.ts';
import { settledFallback } from '../../../src/screens/machine/full-fields.tsx';
import { brineByMonth, listUses, workOutYear } from '../../../src/screens/machine/full-year.ts';
import { drivesSentence, electricUseName } from '../../../src/words/full-year.ts';
import { fullHousehold, reckonFull } from '../heat-pump-full/make-year.ts';
import { readingEase } from '../words/reading-ease.ts';

const household = fullHousehold();
const worked = workOutYear({ household, series: [], today: '2026-11-25', pencePerKWh: 26 });

describe('the year on the screen', () => {
  test('is the model’s own year', () => {
    expect(worked.full.electricityKWh).toBeCloseTo(reckonFull().full.electricityKWh, 6);
  });
  test('the uses sum to the whole, their shares to 1', () => {
    const uses = listUses(worked.full.year);
    expect(uses.reduce((sum, { kWh }) => sum + kWh, 0)).toBeCloseTo(worked.full.electricityKWh, 6);
    expect(uses.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });
  test('each boundary counts more than the one before', () => {
    const { H1, H2, H4 } = worked.full.year.factors!;
    expect(H1).toBeGreaterThan(H2);
    expect(H2).toBeGreaterThan(H4);
  });
  test('brine by month lies between the coldest day and the warmest', () => {
    const months = brineByMonth(worked);
    expect(months).toHaveLength(12);
    expect(Math.min(...months)).toBeGreaterThanOrEqual(worked.full.coldestSourceC);
    expect(Math.max(...months)).toBeLessThanOrEqual(Math.max(...worked.full.sourceByDayC));
  });
  test('cooler water and more pipe save, and are worth their units', () => {
    expect(worked.drives.map(({ driver }) => driver)).toEqual(['flow', 'hot-water', 'array']);
    for (const { savedKWh, savedPence } of worked.drives) {
      expect(savedKWh).toBeGreaterThan(0);
      expect(savedPence).toBeCloseTo(savedKWh * 26, 9);
    }
  });
  test('an empty field shows what the model takes', () => {
    const output = worked.settled.inputs.find(({ name }) => isCode(name, 'output'))!;
    expect(Number(settledFallback(worked.settled, 'output').text)).toBeCloseTo(Number(output.value), 1);
    expect(settledFallback(worked.settled, 'depth').source).toBe('usual borehole.');
    expect(settledFallback(worked.settled, 'slope').text).toBe('');
  });
});

describe('words of the year', () => {
  test('the two that are worth most, the largest first', () =>
    expect(
      drivesSentence([
        { driver: 'hot-water', savedKWh: 60, savedPence: 1600 },
        { driver: 'flow', savedKWh: 210, savedPence: 5500 },
        { driver: 'array', savedKWh: 40, savedPence: 1000 },
      ]),
    ).toBe(
      'A flow temperature 5 degrees lower would save about £55 a year (210 kWh). Hot water 5 degrees cooler would save about £16 a year (60 kWh).',
    ));
  test('nothing worth saying is not made much of', () =>
    expect(drivesSentence([{ driver: 'flow', savedKWh: -4, savedPence: -100 }])).toContain('change little'));
  test('every use has a name of its own, and the sentences read easily', () => {
    expect(new Set(USES.map(electricUseName)).size).toBe(USES.length);
    expect(readingEase(drivesSentence(worked.drives)).ease).toBeGreaterThanOrEqual(70);
  });
});
