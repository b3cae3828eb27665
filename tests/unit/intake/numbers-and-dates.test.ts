import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readStamp } from '../../../src/intake/dates/read-stamp.ts';
import { civilDay, createStampReader, IMPOSSIBLE, READ, UNREADABLE } from '../../../src/intake/dates/stamp-reader.ts';
import { readNumber } from '../../../src/intake/numbers/read-number.ts';
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';

describe('numbers', () => {
  test.each<[string, '.' | ',', number]>([
    ['3.456', '.', 3.456],
    ['-0.5', '.', -0.5],
    ['+7', '.', 7],
    ['.5', '.', 0.5],
    ['1,234.5', '.', 1234.5],
    ['1.234,5', ',', 1234.5],
    ['1 234,5', ',', 1234.5],
    ["1'234.5", '.', 1234.5],
    ['1.0E-2', '.', 0.01],
    ['12.5 kWh', '.', 12.5],
    ['£1,401.02', '.', 1401.02],
    ['(3.2)', '.', -3.2],
    ['−3.2', '.', -3.2],
    ['3,45', '.', Number.NaN],
    ['1,23,456', '.', Number.NaN],
    ['1O.5', '.', Number.NaN],
    ['8O0', '.', Number.NaN],
    ['8OO', '.', Number.NaN],
    ['80O', '.', Number.NaN],
    ['3l', '.', Number.NaN],
    ['1.5S', '.', Number.NaN],
    ['12 B3', '.', Number.NaN],
    ['900 l', '.', 900],
    ['900 litres', '.', 900],
    ['512m3', '.', 512],
    ['12.5MWh', '.', 12.5],
    ['7.2 °C', '.', 7.2],
    ['26.3p', '.', 26.3],
    ['N/A', '.', Number.NaN],
    ['', '.', Number.NaN],
    ['1.2.3', '.', Number.NaN],
    ['12-3', '.', Number.NaN],
  ])('%j with decimal %s', (text, decimal, value) => {
    expect(readNumber(text, 0, text.length, decimal)).toBe(value);
  });
  test('every decimal reads as the nearest double', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), fc.integer({ min: 0, max: 17 }), (value, places) => {
        const text = value.toFixed(places);
        expect(readNumber(text, 0, text.length, '.')).toBe(Number(text));
      }),
    );
  });
});

/** Reads day-first unless told. */
function read(text: string, dayFirst = true): string {
  const out = createStampReader();
  const status = readStamp(text, 0, text.length, dayFirst, out);
  if (status === IMPOSSIBLE) return 'impossible';
  if (status === UNREADABLE) return 'unreadable';
  const iso = new Date(out.civilMinute * 60_000).toISOString();
  const stamp = out.kind === 'time' ? iso.slice(0, 16) : `${iso.slice(0, 10)} ${out.kind}`;
  return Number.isNaN(out.offsetMinutes) ? stamp : `${stamp} ${out.offsetMinutes}`;
}

describe('dates', () => {
  test.each([
    ['2025-04-03', '2025-04-03 day'],
    ['2025-04-03T00:30', '2025-04-03T00:30'],
    ['2025-04-03 00:30:00Z', '2025-04-03T00:30 0'],
    ['2025-04-03T00:30:00.000+01:00', '2025-04-03T00:30 60'],
    ['2025-04-03 00:30 BST', '2025-04-03T00:30 60'],
    ['2025-04-03T00:30+01:00[Europe/London]', '2025-04-03T00:30 60'],
    ['03/04/2025', '2025-04-03 day'],
    ['3/4/25 0:30', '2025-04-03T00:30'],
    ['03.04.2025 24:00', '2025-04-04T00:00'],
    ['3 Apr 2025', '2025-04-03 day'],
    ['Thursday, 3rd April 2025', '2025-04-03 day'],
    ['Apr 3, 2025 12:30 am', '2025-04-03T00:30'],
    ['3. März 2025', '2025-03-03 day'],
    ['3-Dec-24', '2024-12-03 day'],
    ['20250403', '2025-04-03 day'],
    ['202504030030', '2025-04-03T00:30'],
    ['20250403T0030Z', '2025-04-03T00:30 0'],
    ['2025-04', '2025-04-01 month'],
    ['04/2025', '2025-04-01 month'],
    ['April 2025', '2025-04-01 month'],
    ['Apr-25', '2025-04-01 month'],
    ['Q2 2025', '2025-04-01 quarter'],
    ['2025-04-03 00:29:59', '2025-04-03T00:30'],
    ['2025-02-29', 'impossible'],
    ['31/04/2025', 'impossible'],
    ['2025-13-01', 'impossible'],
    ['2025-04-03 25:00', 'impossible'],
    ['1066-10-14', 'impossible'],
    ['12.2025', '2025-12-01 month'],
    ['12.2525', 'unreadable'],
    ['2.2025', 'unreadable'],
    ['1234.56', 'unreadable'],
    ['00:30', 'unreadable'],
    ['tomorrow', 'unreadable'],
    ['2025-04-03 morning', 'unreadable'],
  ])('%s is %s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });
  test('month first where it is so decided', () => {
    expect(read('03/04/2025', false)).toBe('2025-03-04 day');
    expect(read('2025-04-03', false)).toBe('2025-04-03 day');
  });
  test('the fast day count agrees with the calendar', () => {
    fc.assert(
      fc.property(fc.integer({ min: -30_000, max: 60_000 }), (n) => {
        const date = toCivilDate(n);
        const [year, month, day] = date.split('-').map(Number);
        expect(civilDay(year!, month!, day!)).toBe(toDayNumber(date));
      }),
    );
  });
  test('every minute written is read back, with its offset', () => {
    const minute = fc.integer({ min: civilDay(1991, 1, 1) * 1440, max: civilDay(2099, 1, 1) * 1440 });
    fc.assert(
      fc.property(minute, (m) => {
        const iso = new Date(m * 60_000).toISOString().slice(0, 16);
        const british = `${iso.slice(8, 10)}/${iso.slice(5, 7)}/${iso.slice(0, 4)} ${iso.slice(11)}`;
        expect([read(`${iso}Z`), read(british)]).toEqual([`${iso} 0`, iso]);
        const out = createStampReader();
        expect(readStamp(iso, 0, iso.length, true, out)).toBe(READ);
      }),
    );
  });
  test('the quick way for the plainest form answers as the long way does, which a comma takes, of what does not exist too', () => {
    const two = fc.nat({ max: 62 }).map((n) => String(n).padStart(2, '0'));
    const month = fc.nat({ max: 13 }).map((n) => String(n).padStart(2, '0'));
    const behind = fc.constantFrom('', 'Z', 'z', '+01:00', ' ');
    const year = fc.integer({ min: 1988, max: 2102 });
    fc.assert(
      fc.property(year, month, two, two, two, fc.option(two), behind, (y, m, d, hour, minute, second, z) => {
        const time = `${hour}:${minute}${second === null ? '' : `:${second}`}${z}`;
        const long = read(`${y}-${m}-${d},${time}`);
        expect([read(`${y}-${m}-${d}T${time}`), read(`${y}-${m}-${d} ${time}`)]).toEqual([long, long]);
      }),
      { numRuns: 300 },
    );
  });
});
