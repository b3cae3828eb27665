import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  daysBetween,
  isCivilDay,
  toCivilDate,
  toDayNumber,
  weekdayOf,
} from '../../../src/model/calendar/civil.ts';
import { localDay, localStamp, minutesInDay, startOfDay, yearSlots } from '../../../src/model/calendar/zone.ts';

const LONDON = 'Europe/London';

describe('civil dates', () => {
  test('a date goes to its day number and back', () => {
    fc.assert(fc.property(fc.integer({ min: -20_000, max: 60_000 }), (n) => toDayNumber(toCivilDate(n)) === n));
  });
  test('known days', () => {
    expect(toDayNumber('1970-01-01')).toBe(0);
    expect(weekdayOf('2026-11-25')).toBe('wed');
    expect(daysBetween('2025-12-31', '2026-01-02')).toBe(2);
    expect(addDays('2024-02-28', 1)).toBe('2024-02-29');
    expect(isCivilDay(2025, 2, 29)).toBe(false);
    expect(() => toDayNumber('2025-02-30')).toThrow(RangeError);
  });
});

describe('local time', () => {
  // Clock changes of 2025 in the United Kingdom: 30 March and 26 October (Summer Time Order 2002).
  test.each([
    ['2025-03-30', 1380],
    ['2025-10-26', 1500],
    ['2025-07-01', 1440],
  ])('%s in London has %i minutes', (date, minutes) => {
    expect(minutesInDay(LONDON, toDayNumber(date))).toBe(minutes);
  });
  test('a summer day begins an hour before UTC midnight', () => {
    expect(startOfDay(LONDON, toDayNumber('2025-07-01'))).toBe(Date.UTC(2025, 5, 30, 23));
    expect(localStamp(LONDON, Date.UTC(2025, 5, 30, 23))).toBe('2025-07-01T00:00');
  });
  test('every instant lies in the day it is said to lie in', () => {
    const zones = ['Europe/London', 'Europe/Berlin', 'America/New_York', 'Australia/Adelaide'];
    fc.assert(
      fc.property(fc.constantFrom(...zones), fc.integer({ min: 1_500_000_000, max: 1_900_000_000 }), (zone, s) => {
        const { dayNumber, elapsedMinutes } = localDay(zone, s * 1000);
        return elapsedMinutes >= 0 && elapsedMinutes < minutesInDay(zone, dayNumber);
      }),
    );
  });
  test('a year has 17,520 half-hours, a leap year 17,568', () => {
    expect(yearSlots(2025, LONDON).count).toBe(17_520);
    expect(yearSlots(2024, LONDON).count).toBe(17_568);
    const slots = yearSlots(2026, LONDON);
    const spring = toDayNumber('2026-03-29') - toDayNumber('2026-01-01');
    expect(slots.dayStart[spring + 1]! - slots.dayStart[spring]!).toBe(46);
    // The hour from 01:00 is missing on that day.
    expect(slots.minute[slots.dayStart[spring]! + 2]).toBe(120);
  });
});
