/**
 * A real British home: hourly gas and outdoor temperature, 2020 to 2022, sample data of the open library
 * openeemeter/eemeter (Apache License 2.0). The files lie beside the checkout, not in it.
 */
import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { toCivilDate, toDayNumber } from '../../src/model/calendar/civil.ts';
import { estimateDemand } from '../../src/model/demand/estimate-demand.ts';
import { degreesPerDay, fitSignature } from '../../src/model/demand/signature.ts';
import type { SignatureData } from '../../src/model/demand/signature-data.ts';
import type { Series } from '../../src/model/shapes/evidence.ts';
import { emptyHousehold } from '../../src/model/shapes/household.ts';
import { typicalYear } from '../../src/model/year/typical-year.ts';
import { reference } from '../../src/reference/index.ts';

const folder = resolve(import.meta.dirname, '../../../shared/reference/open-data');
const there = existsSync(resolve(folder, 'home-a-gas-hourly-kwh.csv'));

interface Day {
  readonly day: number;
  readonly kWh: number;
  readonly outdoorC: number;
}

/** UTC days with all 24 hours in both files. */
function readDays(): Day[] {
  const gather = (file: string, dateColumn: number, valueColumn: number) => {
    const days = new Map<string, number[]>();
    for (const line of readFileSync(resolve(folder, file), 'utf8').trim().split('\n').slice(1)) {
      const cells = line.split(',');
      const date = cells[dateColumn]!.slice(0, 10);
      const values = days.get(date) ?? [];
      values.push(Number(cells[valueColumn]));
      days.set(date, values);
    }
    return days;
  };
  const gas = gather('home-a-gas-hourly-kwh.csv', 0, 1);
  const outdoor = gather('home-a-outdoor-temperature-hourly-c.csv', 1, 2);
  const sum = (values: readonly number[]) => values.reduce((total, v) => total + v, 0);
  return [...gas]
    .filter(([date, values]) => values.length === 24 && outdoor.get(date)?.length === 24)
    .map(([date, values]) => ({ day: toDayNumber(date), kWh: sum(values), outdoorC: sum(outdoor.get(date)!) / 24 }));
}

const toData = (days: readonly Day[]): SignatureData => ({
  first: Int32Array.from(days, (d) => d.day),
  days: Float64Array.from(days, () => 1),
  perDayKWh: Float64Array.from(days, (d) => d.kWh),
  outdoorC: Float64Array.from(days, (d) => d.outdoorC),
  start: Uint32Array.from({ length: days.length + 1 }, (_, i) => i),
});

function toSeries(days: readonly Day[], carrier: Series['carrier'], pick: (day: Day) => number): Series {
  const first = toCivilDate(days[0]!.day);
  const values = days.map(pick);
  return {
    id: carrier,
    evidenceId: 'home-a',
    name: carrier,
    carrier,
    role: carrier === 'gas' ? 'import' : 'weather',
    resolution: 'day',
    from: first,
    to: toCivilDate(days.at(-1)!.day + 1),
    total: values.reduce((sum, v) => sum + v, 0),
    days: { first, values },
    present: days.length,
    expected: days.length,
    estimatedCount: 0,
  };
}

if (!there) {
  test.skip('NOT RUN: the files of the real home are not beside this checkout (../shared/reference/open-data)', () => {});
} else {
  const all = readDays();
  const between = (from: string, to: string) =>
    all.filter((d) => d.day >= toDayNumber(from) && d.day <= toDayNumber(to));
  describe('energy signature of a real home', () => {
    // Base temperature, base, slope and R² worked separately from the same files with a 0.1 K grid.
    test.each([
      ['all days', all, 978, 13.1, 7.521, 2.78466, 0.651],
      ['first year', between('2020-04-02', '2021-04-01'), 365, 12.2, 10.0454, 2.98402, 0.7177],
      ['second year', between('2021-04-02', '2022-04-01'), 365, 13.2, 6.0039, 2.90875, 0.6381],
    ] as const)('%s', (_name, days, count, baseC, base, slope, r2) => {
      const found = fitSignature(toData(days));
      expect(days.length).toBe(count);
      expect(found.baseC).toBe(baseC);
      expect(found.line.intercept).toBeCloseTo(base, 4);
      expect(found.line.slope).toBeCloseTo(slope, 5);
      expect(found.line.r2).toBeCloseTo(r2, 4);
    });
    test('the first year put through the second year’s weather says 7,361 kWh; the meter says 6,485, 12 % less', () => {
      const first = fitSignature(toData(between('2020-04-02', '2021-04-01')));
      const second = between('2021-04-02', '2022-04-01');
      const degreeDays = degreesPerDay(toData(second), first.baseC).reduce((sum, v) => sum + v, 0);
      const predicted = first.line.intercept * second.length + first.line.slope * degreeDays;
      const metered = second.reduce((sum, d) => sum + d.kWh, 0);
      expect(Math.abs(predicted - 7361)).toBeLessThan(0.5); // printed to 1 kWh
      expect(Math.abs(metered - 6485)).toBeLessThan(0.5); // printed to 1 kWh
    });
    test('all three years: use in the same weather falls by about a third from the spring of 2022 on, when prices rose', () => {
      const series = [toSeries(all, 'gas', (d) => d.kWh), toSeries(all, 'outdoor-temperature', (d) => d.outdoorC)];
      const year = typicalYear(reference.regions[0]!, 2025, 'Europe/London');
      const { demand, questions } = estimateDemand({
        household: emptyHousehold('a', 'Home A'),
        series,
        reference,
        year,
      });
      // Nobody has told what happened in this home; the British price cap rose by 54 % on 1 April 2022 (from memory).
      expect(demand.change!.on >= '2022-02-01' && demand.change!.on <= '2022-05-01').toBe(true);
      expect(demand.change!.share).toBeLessThan(-0.2);
      expect(questions.map((q) => q.code)).toContain('house-changed');
    });
    test('whole estimate from either year: the two agree within twice their joint error, habits included', () => {
      const space = (days: readonly Day[]) => {
        const series = [toSeries(days, 'gas', (d) => d.kWh), toSeries(days, 'outdoor-temperature', (d) => d.outdoorC)];
        const year = typicalYear(reference.regions[0]!, 2025, 'Europe/London');
        return estimateDemand({ household: emptyHousehold('a', 'Home A'), series, reference, year }).demand
          .estimates[0]!;
      };
      const first = space(between('2020-04-02', '2021-04-01'));
      const second = space(between('2021-04-02', '2022-04-01'));
      const apart = Math.abs(first.spaceKWh - second.spaceKWh);
      expect(first.way).toBe('record');
      expect(apart).toBeLessThan(2 * Math.hypot(first.spaceErrorKWh, second.spaceErrorKWh));
    });
  });
}
