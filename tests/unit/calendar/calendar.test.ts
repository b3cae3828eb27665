import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  daysBetween,
  daysInMonth,
  isCivilDay,
  isLeapYear,
  monthOf,
  toCivilDate,
  toDayNumber,
  WEEKDAYS,
  weekdayIndex,
  yearOf,
} from '../../../src/model/calendar/civil.ts';
import { civilDateOf } from '../../../src/model/calendar/instant.ts';
import {
  localDay,
  localStamp,
  minutesInDay,
  offsetMinutes,
  startOfDay,
  yearSlots,
} from '../../../src/model/calendar/zone.ts';
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

describe('the calendar', () => {
  test.each([
    [1900, false],
    [2000, true],
    [2023, false],
    [2024, true],
    [2100, false],
  ])('%i is a leap year: %s', (year, leap) => {
    expect(isLeapYear(year)).toBe(leap);
    expect(Array.from({ length: 12 }, (_, m) => daysInMonth(year, m + 1))).toEqual([
      31,
      leap ? 29 : 28,
      31,
      30,
      31,
      30,
      31,
      31,
      30,
      31,
      30,
      31,
    ]);
  });
  test.each([
    [2025, 0, 1, false],
    [2025, 1, 0, false],
    [2025, 1, 1, true],
    [2025, 12, 31, true],
    [2025, 13, 1, false],
    [2025, 4, 30, true],
    [2025, 4, 31, false],
  ])('%i-%i-%i is a day: %s', (year, month, day, there) => expect(isCivilDay(year, month, day)).toBe(there));
  test.each(['2025-13-01', '2025-00-10', '2025-01-00', '2025-01-32', '2025-06-99', '2025-xx-01', '2023-02-29', ''])(
    '“%s” is no date',
    (date) => expect(() => toDayNumber(date)).toThrow(RangeError),
  );
  test('days are counted from 1970; weeks begin on Monday, before 1970 too', () => {
    expect(toDayNumber('2000-03-01')).toBe(11_017); // 30 years of 365 days, 8 leap days, 31 + 28 + 1: 10,950 + 7 + 60
    expect([toDayNumber('1969-12-31'), toCivilDate(-1)]).toEqual([-1, '1969-12-31']);
    // 1 January 1970 was a Thursday; 29 December 1969 a Monday.
    expect([-3, -4, -11, 0, 4].map(weekdayIndex)).toEqual([0, 6, 6, 3, 0]);
    expect([monthOf('2025-11-30'), yearOf('2025-11-30')]).toEqual([11, 2025]);
  });
});

describe('local time', () => {
  test('is the same by Temporal, which browsers have, as by Intl', () => {
    const zones = [
      'Europe/London',
      'Europe/Berlin',
      'Europe/Dublin',
      'America/New_York',
      'Africa/Cairo',
      'Asia/Kolkata',
    ];
    const instants = Array.from({ length: 3000 }, (_, i) => Date.UTC(1975, 0, 1) + i * 13.37 * 86_400_000);
    const byIntl = zones.map((zone) => instants.map((instant) => offsetMinutes(zone, instant)));
    const program = `
      import { offsetMinutes } from '${new URL('../../../src/model/calendar/zone.ts', import.meta.url)}';
      const instants = ${JSON.stringify(instants)};
      const found = ${JSON.stringify(zones)}.map((zone) => instants.map((instant) => offsetMinutes(zone, instant)));
      console.log(JSON.stringify([typeof Temporal, found]));`;
    const said = execFileSync(process.execPath, ['--harmony-temporal', '--input-type=module', '-e', program]);
    expect(JSON.parse(said.toString())).toEqual(['object', byIntl]);
  });

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
    const zones = [
      'Europe/London',
      'Europe/Berlin',
      'America/New_York',
      'Australia/Adelaide',
      'Africa/Cairo',
      'America/Havana',
    ];
    fc.assert(
      fc.property(fc.constantFrom(...zones), fc.integer({ min: 1_500_000_000, max: 1_900_000_000 }), (zone, s) => {
        const { dayNumber, elapsedMinutes } = localDay(zone, s * 1000);
        return elapsedMinutes >= 0 && elapsedMinutes < minutesInDay(zone, dayNumber);
      }),
    );
  });
  test('the first instant of a day is its own, the one before it the last of the day before', () => {
    const start = Date.UTC(2025, 5, 30, 23);
    expect(localDay(LONDON, start)).toEqual({ dayNumber: toDayNumber('2025-07-01'), elapsedMinutes: 0 });
    expect(localDay(LONDON, start - 60_000)).toEqual({ dayNumber: toDayNumber('2025-06-30'), elapsedMinutes: 1439 });
    // Noon British time of the autumn day is 13 hours after its midnight.
    expect(localDay(LONDON, Date.UTC(2025, 9, 26, 12)).elapsedMinutes).toBe(780);
    expect(civilDateOf('2026-06-30T23:30:00Z', LONDON)).toBe('2026-07-01');
    expect(civilDateOf('2026-06-30T22:30:00Z', LONDON)).toBe('2026-06-30');
  });
  // Midnight left out: Egypt, last Friday of April (law 24 of 2023); Brazil, first Sunday of November 2018 (decree 9242 of
  // 2017). Midnight doubled: Brazil, third Sunday of February 2018, back to 23:00 of the day before.
  test.each([
    ['Africa/Cairo', '2025-04-25', Date.UTC(2025, 3, 24, 22), '01:00', 1380],
    ['America/Sao_Paulo', '2018-11-04', Date.UTC(2018, 10, 4, 3), '01:00', 1380],
    ['America/Sao_Paulo', '2018-02-18', Date.UTC(2018, 1, 18, 3), '00:00', 1440],
    ['America/Sao_Paulo', '2018-02-17', Date.UTC(2018, 1, 17, 2), '00:00', 1500],
  ])('in %s %s begins at %i', (zone, date, start, clock, minutes) => {
    const day = toDayNumber(date);
    expect(startOfDay(zone, day)).toBe(start);
    expect(localStamp(zone, start)).toBe(`${date}T${clock}`);
    expect(minutesInDay(zone, day)).toBe(minutes);
    expect(localDay(zone, start).dayNumber).toBe(day);
    expect(localDay(zone, start - 1).dayNumber).toBe(day - 1);
  });
  test.each([
    [LONDON, 2026],
    ['America/New_York', 2023],
    ['Africa/Cairo', 2025],
  ])('half-hours of a year in %s are told their day, month, weekday and clock', (zone, year) => {
    const slots = yearSlots(year, zone);
    expect(yearSlots(year, zone)).toBe(slots);
    expect([slots.year, slots.zone, slots.count]).toEqual([year, zone, 17_520]);
    const newYear = toDayNumber(`${year}-01-01`);
    const first = startOfDay(zone, newYear);
    const starts = Array.from({ length: 366 }, (_, day) => (startOfDay(zone, newYear + day) - first) / 1_800_000);
    expect([...slots.dayStart]).toEqual(starts);
    for (let i = 0; i < slots.count; i += 5) {
      const stamp = localStamp(zone, first + i * 1_800_000);
      const day = toDayNumber(stamp.slice(0, 10));
      const weekday = (new Date(day * 86_400_000).getUTCDay() + 6) % 7;
      const clock = Number(stamp.slice(11, 13)) * 60 + Number(stamp.slice(14));
      const told = [slots.day[i], slots.month[i], slots.weekday[i], slots.minute[i]];
      expect(told, stamp).toEqual([day - newYear, Number(stamp.slice(5, 7)) - 1, weekday, clock]);
    }
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
