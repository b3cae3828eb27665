import { describe, expect, test } from 'vitest';
import { yearSlots } from '../../../src/model/calendar/zone.ts';
import { roofByHalfHour } from '../../../src/model/sun/roof-by-half-hour.ts';
import { sunByMonth } from '../../../src/model/sun/sun-by-month.ts';
import { clearnessOfDays, clearnessOfYear, sunDay } from '../../../src/model/sun/sun-days.ts';
import { reference } from '../../../src/reference/index.ts';

const midlands = reference.regions.find(({ id }) => id === 6)!;
const shetland = reference.regions.find(({ id }) => id === 20)!;
const panel = (facing: 'N' | 'E' | 'S' | 'W', pitchDegrees = 30) =>
  ({ kWp: 4, facing, pitchDegrees, shading: 'little' }) as const;
const sum = (list: ArrayLike<number>) => Array.from(list).reduce((total, one) => total + one, 0);

describe('a roof by half-hour', () => {
  test.each([2027, 2028])('has the months of the standard in %d, on every slope, to 1e-9', (year) => {
    const slots = yearSlots(year, 'Europe/London');
    for (const region of [midlands, shetland])
      for (const slope of [panel('S'), panel('N', 60), panel('E', 90), panel('S', 0)]) {
        const made = roofByHalfHour([slope], region, slots, reference.sun);
        const months = new Array<number>(12).fill(0);
        made.forEach((kWh, i) => {
          months[slots.month[i]!]! += kWh;
        });
        expect(Math.min(...made)).toBe(0);
        sunByMonth([slope], region, reference.sun).forEach((kWh, month) => {
          expect(months[month]).toBeCloseTo(kWh, 9);
        });
      }
  });

  test('is the sum of its slopes, and the same whenever it is worked out', () => {
    const slots = yearSlots(2027, 'Europe/London');
    const both = roofByHalfHour([panel('E'), panel('W')], midlands, slots, reference.sun);
    const [east, west] = [panel('E'), panel('W')].map((one) => roofByHalfHour([one], midlands, slots, reference.sun));
    expect(Math.max(...both.map((kWh, i) => Math.abs(kWh - east![i]! - west![i]!)))).toBeLessThan(1e-12);
    // East makes its electricity before noon, west after it.
    const beforeNoon = (list: Float64Array) => sum(list.filter((_, i) => slots.minute[i]! < 720)) / sum(list);
    expect(beforeNoon(east!)).toBeGreaterThan(0.5);
    expect(beforeNoon(west!)).toBeLessThan(0.42);
    expect(roofByHalfHour([panel('E'), panel('W')], midlands, slots, reference.sun)).toEqual(both);
  });

  test('gives no more than its peak, nothing at night, and turns with the clock in summer', () => {
    const slots = yearSlots(2027, 'Europe/London');
    const made = roofByHalfHour([panel('S')], midlands, slots, reference.sun);
    expect(Math.max(...made) * 2).toBeLessThanOrEqual(4);
    expect(Math.max(...made) * 2).toBeGreaterThan(2.5);
    const middle = (month: number) => {
      const ofMonth = made.map((kWh, i) => (slots.month[i] === month ? kWh * (slots.minute[i]! + 15) : 0));
      return sum(ofMonth) / sum(made.filter((_, i) => slots.month[i] === month));
    };
    expect(middle(0) / 60).toBeCloseTo(12.2, 0);
    expect(middle(6) / 60).toBeCloseTo(13.2, 0);
    expect(Math.max(...made.filter((_, i) => slots.minute[i]! < 180))).toBe(0);
  });
});

describe('days of sun and cloud', () => {
  test.each([0.3, 0.35, 0.4, 0.45, 0.5, 0.6])('spread by the published rule keep the mean clearness of %d', (mean) => {
    const days = clearnessOfDays(mean, 300);
    expect(sum(days) / 300).toBeCloseTo(mean, 2);
    expect(days[0]).toBeGreaterThanOrEqual(0.05);
    expect(days[299]).toBeLessThan(0.6313 + 0.267 * mean);
    expect([...days]).toEqual([...days].sort((a, b) => a - b));
  });

  test('are in the order of a year neither sorted nor alike: dull days follow dull days a little more often', () => {
    const slots = yearSlots(2027, 'Europe/London');
    const flat = reference.sun.horizontalWPerM2[6]!;
    const days = clearnessOfYear(flat, midlands.latitudeN, slots);
    const off = days.map((one, day) => {
      const month = slots.month[slots.dayStart[day]!]!;
      const ofMonth = days.filter((_, other) => slots.month[slots.dayStart[other]!] === month);
      return one - sum(ofMonth) / ofMonth.length;
    });
    const likeness = sum(off.slice(1).map((one, i) => one * off[i]!)) / sum(off.map((one) => one ** 2));
    expect(likeness).toBeGreaterThan(0.1);
    expect(likeness).toBeLessThan(0.5);
    const aboveAir = (day: number) => sunDay(day, midlands.latitudeN).aboveAirWPerM2;
    const yearWPerM2 = sum(days.map((one, day) => one * aboveAir(day))) / days.length;
    expect(yearWPerM2 / (sum(flat) / 12)).toBeCloseTo(1, 1);
  });
});
