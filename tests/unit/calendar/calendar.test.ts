import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  daysBetween,
  isCivilDay,
  toCivilDate,
  toDayNumber,
  WEEKDAYS,
  weekdayIndex,
} from '../../../src/model/calendar/civil.ts';
import { localDay, localStamp, minutesInDay, startOfDay, yearSlots } from '../../../src/model/calendar/zone.ts';
import { TimeZone } from '../../../src/model/shapes/dates.ts';

const LONDON = 'Europe/London';

test.each([
  ['Europe/London', true],
  ['America/Phoenix', true],
  ['UTC', true],
  ['Mars/Phobos', false],
  ['London', false],
  ['', false],
])('“%s” is a time zone: %s', (name, known) => expect(TimeZone.safeParse(name).success).toBe(known));

describe('civil dates', () => {
  test('a date goes to its day number and back', () => {
    fc.assert(fc.property(fc.integer({ min: -20_000, max: 60_000 }), (n) => toDayNumber(toCivilDate(n)) === n));
  });
  test('known days', () => {
    expect(toDayNumber('1970-01-01')).toBe(0);
    expect(WEEKDAYS[weekdayIndex(toDayNumber('2026-11-25'))]).toBe('wed');
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
  // Last Sundays of March and October at 01:00 UTC (Directive 2000/84/EC; in Ireland S.I. No. 506/2001); second Sunday
  // of March and first of November at 02:00 local time (US Energy Policy Act of 2005, section 110); Arizona keeps its clocks.
  test.each([
    ['Europe/London', '2025-03-30', '01:00', '2025-10-26', '01:00'],
    ['Europe/Dublin', '2025-03-30', '01:00', '2025-10-26', '01:00'],
    ['Europe/Berlin', '2025-03-30', '02:00', '2025-10-26', '02:00'],
    ['Europe/Vienna', '2024-03-31', '02:00', '2024-10-27', '02:00'],
    ['America/New_York', '2025-03-09', '02:00', '2025-11-02', '01:00'],
    ['America/Chicago', '2025-03-09', '02:00', '2025-11-02', '01:00'],
    ['America/Los_Angeles', '2024-03-10', '02:00', '2024-11-03', '01:00'],
  ])('%s leaves out an hour on %s from %s and doubles one on %s from %s', (zone, spring, left, autumn, doubled) => {
    const clocks = (date: string) => {
      const day = toDayNumber(date);
      const halves = minutesInDay(zone, day) / 30;
      return Array.from({ length: halves }, (_, i) =>
        localStamp(zone, startOfDay(zone, day) + i * 1_800_000).slice(11),
      );
    };
    const half = (clock: string) => `${clock.slice(0, 2)}:30`;
    const [short, long] = [clocks(spring), clocks(autumn)];
    expect([short.length, long.length]).toEqual([46, 50]);
    expect(short.filter((clock) => clock === left || clock === half(left))).toEqual([]);
    expect(long.filter((clock) => clock === doubled || clock === half(doubled))).toEqual([
      doubled,
      half(doubled),
      doubled,
      half(doubled),
    ]);
    // Every other half-hour of the clock is there once.
    expect([new Set(short).size, new Set(long).size]).toEqual([46, 48]);
  });
  test('where the clocks stay every day has 48', () => {
    for (const date of ['2025-03-09', '2025-11-02'])
      expect(minutesInDay('America/Phoenix', toDayNumber(date))).toBe(1440);
  });
  test.each(['Europe/London', 'Europe/Dublin', 'Europe/Berlin', 'America/New_York'])(
    'in %s a leap year has a 29 February of 48 half-hours, and 17,568 in all',
    (zone) => {
      const slots = yearSlots(2024, zone);
      const leap = toDayNumber('2024-02-29') - toDayNumber('2024-01-01');
      expect(slots.count).toBe(17_568);
      expect(slots.month[slots.dayStart[leap]!]).toBe(1);
      expect(slots.dayStart[leap + 1]! - slots.dayStart[leap]!).toBe(48);
      expect(slots.month[slots.dayStart[leap + 1]!]).toBe(2);
    },
  );
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
