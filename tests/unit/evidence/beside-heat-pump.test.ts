/** What a home takes beside its heat pump, by records of which some days hold the heat pump; the truth is laid down first. */
import { describe, expect, test } from 'vitest';
import { restOfHome } from '../../../src/model/comparison/rest-of-home.ts';
import { accountFiles } from '../../../src/model/demand/account-records.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';

const [BEGINS, DAYS, FITTED] = ['2024-07-01', 730, 365];
const FITTED_ON = '2025-07-01';
/** Other use of day i, 2,920 kWh a year: 8 kWh, a third more and less of it by a rhythm of 11 days that no weather has. */
const otherKWh = (i: number) => 8 + 2.5 * Math.cos((2 * Math.PI * i) / 11);
const OTHER_YEAR = 8 * 365;
/** The heat pump from its first day on: 22 kWh on the coldest day, none in August. */
const pumpKWh = (i: number) =>
  i < FITTED ? 0 : Math.max(0, 9 + 11 * Math.cos((2 * Math.PI * (i - 197)) / 365)) + (i % 3);

function record(role: Series['role'], ofDay: (i: number) => number | null, first = 0, end = DAYS): Series {
  const dateOf = (i: number) => new Date(Date.parse(BEGINS) + i * 86_400_000).toISOString().slice(0, 10);
  const values = Array.from({ length: end - first }, (_, i) => ofDay(first + i));
  return {
    id: `${role} ${first}`,
    evidenceId: `${role} ${first}`,
    name: role,
    carrier: 'electricity',
    role,
    resolution: 'interval',
    intervalMinutes: 30,
    from: dateOf(first),
    to: dateOf(end),
    total: 0,
    days: { first: dateOf(first), values },
    dayPeaks: Array.from({ length: 12 }, () => new Array<number>(48).fill(1)),
    present: values.length,
    expected: values.length,
    estimatedCount: 0,
  };
}
const house = (first: number, end: number) => record('import', (i) => otherKWh(i) + pumpKWh(i), first, end);
const pump = (first = FITTED, end = DAYS) => record('heat-pump', pumpKWh, first, end);
const home = (change: Partial<Household> = {}): Household => ({
  ...emptyHousehold('h', 'Home'),
  present: { system: 'gas-condensing' },
  ...change,
});
const took = home({ taken: { estimateId: 'e', on: FITTED_ON } });
const yearOf = (household: Household, series: readonly Series[]) => {
  const { monthlyKWh, grade, peaks } = restOfHome(household, series);
  return { kWh: monthlyKWh.reduce((sum, kWh) => sum + kWh, 0), grade, isPeakKnown: peaks.known };
};
const USUAL = yearOf(home(), []).kWh;

describe('a year of other electricity', () => {
  const heatPump = home({ present: { system: 'heat-pump' } });
  test.each<[string, Household, Series[], number, string, boolean]>([
    ['the record is from before', took, [house(0, FITTED)], OTHER_YEAR, 'measured', true],
    ['the record is from after: it cannot be told', took, [house(FITTED, DAYS)], USUAL, 'assumed', false],
    ['both in one record', took, [house(0, DAYS)], OTHER_YEAR, 'measured', false],
    ['both in two records', took, [house(0, FITTED), house(FITTED, DAYS)], OTHER_YEAR, 'measured', false],
    ['after, with the heat pump’s own meter', took, [house(FITTED, DAYS), pump()], OTHER_YEAR, 'measured', false],
    ['the same where nobody took an estimate', home(), [house(FITTED, DAYS), pump()], OTHER_YEAR, 'measured', false],
    ['the same where a heat pump heats it', heatPump, [house(FITTED, DAYS), pump()], OTHER_YEAR, 'measured', false],
    ['a heat pump without a meter', heatPump, [house(FITTED, DAYS)], USUAL, 'assumed', false],
    ['a meter of half the days', home(), [house(FITTED, DAYS), pump(FITTED, FITTED + 180)], USUAL, 'assumed', false],
    [
      'a heat pump that the home’s meter does not count',
      heatPump,
      [record('import', otherKWh, FITTED), pump()],
      OTHER_YEAR,
      'measured',
      false,
    ],
  ])('%s', (_, household, series, kWh, grade, isPeakKnown) => {
    const found = yearOf(household, series);
    expect(found).toMatchObject({ grade, isPeakKnown });
    expect(found.kWh / kWh).toBeCloseTo(1, 1);
  });
  test.each<[string, Household, Series[], string[], string[]]>([
    ['before', home(), [house(0, FITTED)], [], ['rest-of-home']],
    ['before and after', took, [house(0, DAYS)], [], ['rest-in-part']],
    ['after', took, [house(FITTED, DAYS)], [], ['holds-heat-pump']],
    ['it rises with the cold', home(), [house(FITTED, DAYS)], ['electricity-in-the-cold'], ['rises-with-cold']],
  ])('what each record was used for: %s', (_, household, series, codes, uses) => {
    const file = {
      id: 'f',
      householdId: 'h',
      fileName: 'f',
      importedOn: '',
      sha256: '',
      shape: '',
      remarks: [],
      series,
    };
    const questions = codes.map((code) => ({ code }));
    const appraisal = { demand: { estimates: [], missing: [] }, climate: {}, questions } as never;
    expect(accountFiles(household, [file], series, appraisal)[0]!.records.map(({ use }) => use)).toEqual(uses);
  });
});
