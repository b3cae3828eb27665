import { describe, expect, test } from 'vitest';
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { estimateDemand } from '../../../src/model/demand/estimate-demand.ts';
import { Demand } from '../../../src/model/shapes/appraisal.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { reference } from '../../../src/reference/index.ts';
import { type Kind, madeHome } from '../../prove/demand/home.ts';
import { daySeries, household, madeRecord, typed, year } from './fixtures.ts';

const estimate = (series: Series[], present = {}) =>
  estimateDemand({
    household: household({ present: { system: 'gas-condensing', efficiency: typed(0.84, 'measured'), ...present } }),
    series,
    reference,
    year,
  });

/** Two years of days with 40 % less heating from 1 January 2024 on. */
function insulated(slopeAfter: number): Series[] {
  const before = madeRecord({ first: '2023-01-01', days: 365, base: 8, slope: 4, baseC: 15, noise: 4 });
  const after = madeRecord({ first: '2024-01-01', days: 366, base: 8, slope: slopeAfter, baseC: 15, noise: 4 });
  const temperatures = [...before.temperatures, ...after.temperatures];
  return [
    daySeries('gas', 'gas', 'import', '2023-01-01', [...before.use, ...after.use]),
    daySeries('weather', 'outdoor-temperature', 'weather', '2023-01-01', temperatures),
  ];
}

describe('a change in the house during the record', () => {
  const { demand, questions } = estimate(insulated(2.4));
  test('is dated, sized and asked about, and the demand stands on what came after', () => {
    Demand.parse(demand);
    const change = demand.change!;
    expect(Math.abs(toDayNumber(change.on) - toDayNumber('2024-01-01'))).toBeLessThan(15);
    expect(change.shareLow).toBeLessThan(-0.4);
    expect(change.shareHigh).toBeGreaterThan(-0.4);
    expect(change).toMatchObject({
      used: true,
      before: { from: '2023-01-01' },
      after: { to: toCivilDate(toDayNumber('2025-01-01')) },
    });
    expect(demand.signature!.from).toBe(change.on);
    expect(questions).toContainEqual(
      expect.objectContaining({
        code: 'house-changed',
        data: expect.objectContaining({ used: 'after', carrier: 'gas' }),
      }),
    );
    const alone = estimate(
      insulated(2.4).map((s) => ({
        ...s,
        days: { first: change.on, values: s.days!.values.slice(toDayNumber(change.on) - toDayNumber('2023-01-01')) },
      })),
    );
    expect(demand.estimates[0]!.spaceKWh).toBeCloseTo(alone.demand.estimates[0]!.spaceKWh, 6);
  });
  test('is not seen where there is none', () => {
    expect(estimate(insulated(4)).demand.change).toBeUndefined();
  });
  test('is seldom seen in homes that only have habits, and mostly in those that lost four tenths of their loss', () => {
    const kind: Kind = 'gas by day, own weather';
    const seen = (changeTo: number, recordDays: number) =>
      Array.from({ length: 40 }, (_, i) => madeHome(kind, i + 1, { changeTo, recordDays })).filter(
        (home) =>
          estimateDemand({ household: home.household, series: home.series, reference, year: home.year }).demand.change
            ?.used,
      ).length;
    expect(seen(1, 365)).toBeLessThanOrEqual(4);
    expect(seen(0.6, 730)).toBeGreaterThanOrEqual(28);
  });
});

describe('what else the record shows', () => {
  const known = madeRecord({ first: '2023-01-01', days: 730, base: 8, slope: 3, baseC: 14, noise: 4 });
  const { demand } = estimate([known.gas, known.outdoor]);
  test('heat loss: 3 kWh/K·day × 0.84 × 1000/24 = 105 W/K lies in its range', () => {
    expect(demand.recordHeatLoss!.low).toBeLessThan(105);
    expect(demand.recordHeatLoss!.high).toBeGreaterThan(105);
    expect(Math.abs(demand.recordHeatLoss!.value / 105 - 1)).toBeLessThan(0.1);
  });
  test('years to come: mild below typical below cold, each within its own range, the winter only in the heating', () => {
    const [mild, typical, cold] = demand.yearsAhead!;
    for (const one of demand.yearsAhead!) {
      expect(one.low).toBeLessThan(one.kWh);
      expect(one.high).toBeGreaterThan(one.kWh);
    }
    expect(cold!.kWh - typical!.kWh).toBeCloseTo(typical!.kWh - mild!.kWh, 6);
    expect(cold!.degreeDays / typical!.degreeDays).toBeCloseTo(1 + 1.2816 * reference.spread.winter.value, 9);
    const heating = typical!.kWh - 8 * 365;
    expect(Math.abs((cold!.kWh - typical!.kWh) / heating / (1.2816 * reference.spread.winter.value) - 1)).toBeLessThan(
      0.15,
    );
  });
  test('a stove widens the range, is put in units, and moves nothing', () => {
    const stove = estimate([known.gas, known.outdoor], { otherHeat: 'wood stove' });
    const [plain, wide] = [demand.estimates[0]!, stove.demand.estimates[0]!];
    expect(wide.spaceKWh).toBe(plain.spaceKWh);
    expect(wide.spaceErrorKWh).toBeGreaterThan(plain.spaceErrorKWh);
    const asked = stove.questions.find((q) => q.code === 'other-heat')!;
    // A tenth of all heat is a ninth of what the main heating makes.
    expect(asked.data.perhapsKWh).toBeCloseTo(plain.spaceKWh / 9, 6);
  });
});
