import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { readStamp } from '../../../src/intake/dates/read-stamp.ts';
import { civilDay, createStampReader, IMPOSSIBLE, READ, UNREADABLE } from '../../../src/intake/dates/stamp-reader.ts';
import { decideDecimal } from '../../../src/intake/numbers/decide-decimal.ts';
import { markBeside, readNumber, readPlainNumber } from '../../../src/intake/numbers/read-number.ts';
import { codesOf as lettersOf, splitTable } from '../../../src/intake/text/table.ts';
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { codesOf, previewOf } from './read-text.ts';

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
  test.each(['900*', '900 *', '900 (*)', '900 [*]', '900 *)'])('the sign of a footnote in %j is a mark', (text) => {
    expect([readNumber(text, 0, text.length, '.'), markBeside(text)]).toEqual([900, '*']);
  });
  test('every decimal reads as the nearest double', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), fc.integer({ min: 0, max: 17 }), (value, places) => {
        const text = value.toFixed(places);
        expect(readNumber(text, 0, text.length, '.')).toBe(Number(text));
      }),
    );
  });
  test('the short way to a plain number says what the long one does, or nothing', () => {
    const isRead = { yes: 0, no: 0 };
    const cell = fc.oneof(
      fc.stringMatching(/^[0-9.,e +-]{0,18}$/),
      fc.tuple(fc.integer({ min: 0, max: 1e12 }), fc.nat({ max: 4 })).map(([n, places]) => (n / 1e5).toFixed(places)),
    );
    fc.assert(
      fc.property(cell, fc.constantFrom('.' as const, ',' as const), (text, decimal) => {
        const plain = readPlainNumber(lettersOf(`;${text};`), 1, text.length + 1, decimal);
        isRead[Number.isNaN(plain) ? 'no' : 'yes']++;
        if (Number.isNaN(plain))
          expect(text).not.toMatch(decimal === '.' ? /^\d{1,9}$|^\d{1,4}\.\d{1,5}$/ : /^\d{1,9}$/);
        else expect(Object.is(plain, readNumber(text, 0, text.length, decimal))).toBe(true);
      }),
      { numRuns: 2000 },
    );
    expect(Math.min(isRead.yes, isRead.no)).toBeGreaterThan(200);
  });
  test('a column has the sign that its sure cells have, whatever stands between them', () => {
    const kinds = {
      point: ['0.5', '12.34', '0.123', '1,234.5', '1,234,567', '-0.25', '7.'],
      comma: ['0,5', '12,34', '0,123', '1.234,5', '1.234.567', '-0,25'],
      either: ['1.234', '12.345', '1,234', '123.456'],
      neither: ['7', '456', 'n/a', '-', '100'],
    };
    const column = fc.array(
      fc.oneof(
        { weight: 4, arbitrary: fc.constantFrom(...kinds.point, '0.75', '2.5') },
        { weight: 1, arbitrary: fc.constantFrom(...kinds.comma) },
        { weight: 2, arbitrary: fc.constantFrom(...kinds.either) },
        { weight: 2, arbitrary: fc.constantFrom(...kinds.neither) },
      ),
      { minLength: 1, maxLength: 9 },
    );
    fc.assert(
      fc.property(column, (cells) => {
        const comma = cells.filter((cell) => kinds.comma.includes(cell)).length;
        const doubtful = cells.filter((cell) => kinds.either.includes(cell)).length;
        const point = cells.length - comma - doubtful - cells.filter((cell) => kinds.neither.includes(cell)).length;
        const { decimal, state } = decideDecimal(splitTable(['Use', ...cells].join('\n'), ';', 0)!, 0, 1, []);
        const isSure = point > 0 || comma > 0;
        expect(state).toBe(point > 0 && comma > 0 ? 'mixed' : isSure ? 'decided' : doubtful > 0 ? 'asked' : 'plain');
        if (isSure) expect(decimal).toBe(point >= comma ? '.' : ',');
      }),
      { numRuns: 1000 },
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

describe('what nobody can have measured yet', () => {
  const months = ['2026-08,210', '2026-09,250', '2026-10,300', '2026-11,95', '2026-12,410', '2027-01,420'];
  const days = (kinds: readonly [string, string]) =>
    Array.from({ length: 60 }, (_, i) => {
      const date = new Date(Date.UTC(2026, 0, 1 + i)).toISOString().slice(0, 10);
      return `${date},${8 + (i % 4)},${kinds[i < 40 ? 0 : 1]}`;
    });

  it('is left out and named, as is a month that goes on', () => {
    const preview = previewOf(['Month,Electricity (kWh)', ...months]);
    expect(preview.series[0]).toMatchObject({ to: '2026-11-01', total: 760 });
    expect(codesOf(preview)).toEqual(['after-today', 'not-over']);
  });

  it('has no unfinished year nor day in it', () => {
    const years = ['2023,3600', '2024,3700', '2025,3650', '2026,2900'];
    expect(previewOf(['Year,Electricity (kWh)', ...years]).series[0]).toMatchObject({
      to: '2026-01-01',
      total: 10_950,
    });
    const rows = Array.from({ length: 25 }, (_, i) => `2026-11-${String(i + 1).padStart(2, '0')},${8 + (i % 4)}`);
    const preview = previewOf(['Date,Electricity (kWh)', ...rows]);
    expect(preview.series[0]?.to).toBe('2026-11-25');
    expect(codesOf(preview)).toEqual(['not-over']);
  });

  it.each([
    ['measured', 'forecast'],
    ['Ist', 'Prognose'],
    ['Actual', 'Budget'],
  ] as const)('is no row of %s whose kind is %s', (...kinds) => {
    const preview = previewOf(['Date,Electricity (kWh),Kind', ...days(kinds)]);
    expect(preview.series[0]).toMatchObject({ to: '2026-02-10' });
    expect(codesOf(preview)).toEqual(['registers-by-column', 'columns-left-out']);
  });

  it('a reading that is estimated stays', () => {
    const preview = previewOf(['Date,Electricity (kWh),Kind', ...days(['read', 'projected'])]);
    expect(preview.series[0]).toMatchObject({ to: '2026-03-02' });
  });
});

describe('a month that holds far less than its like', () => {
  const months = (kWh: readonly number[]) =>
    kWh.map((amount, i) => `${2024 + Math.floor(i / 12)}-${String((i % 12) + 1).padStart(2, '0')},${amount}`);
  const electricity = (kWh: readonly number[], choices = {}) =>
    previewOf(['Month,Electricity (kWh)', ...months(kWh)], { choices });

  it('is asked about at either end, and in the middle where it is nought', () => {
    expect(codesOf(electricity([95, 300, 310, 290, 300, 305]))).toEqual(['short-month-asked']);
    expect(codesOf(electricity([310, 300, 310, 290, 300, 95]))).toEqual(['short-month-asked']);
    expect(codesOf(electricity([310, 300, 0, 290, 300, 310]))).toEqual(['short-month-asked']);
    expect(codesOf(electricity([310, 300, 290, 300, 310, 290, 0, 0]), 'question')).toEqual([]);
  });

  it('counts, or is left out and named, as is said', () => {
    const kWh = [310, 300, 310, 290, 300, 95];
    expect(electricity(kWh, { shortMonths: 'whole' })).toMatchObject({ series: [{ total: 1605 }], remarks: [] });
    const parts = electricity(kWh, { shortMonths: 'parts' });
    expect(parts.series[0]).toMatchObject({ total: 1510, to: '2024-06-01' });
    expect(codesOf(parts)).toEqual(['short-month-left-out']);
  });

  it('is lawful where the same month of another year was as low, and in the summer of what heats', () => {
    const year = [900, 800, 600, 300, 120, 60, 50, 55, 150, 400, 700, 850];
    expect(codesOf(electricity([...year, ...year.slice(0, 5)]))).toEqual([]);
    expect(codesOf(previewOf(['Month,Gas (kWh)', ...months(year.slice(3, 9))]), 'question')).toEqual([]);
  });
});

describe('the name of a file', () => {
  const days = Array.from({ length: 28 }, (_, i) => `2026-02-${String(i + 1).padStart(2, '0')},${8 + (i % 5)}.5`);

  it('makes no temperature of what was used', () => {
    const { series } = previewOf(['Date,Usage (kWh)', ...days], { fileName: 'temp.csv' });
    expect(series[0]?.carrier).toBe('electricity');
    const beside = previewOf(['Date,Usage,Temp C', ...days.map((row) => `${row},4.1`)], { fileName: 'temp.csv' });
    expect(codesOf(beside, 'question')).toContain('carrier-guessed');
    expect(previewOf(['Date,Value', ...days], { fileName: 'temp.csv' }).series[0]?.carrier).toBe('outdoor-temperature');
  });

  it('tells no way against a title', () => {
    const { series } = previewOf(['Grid import', 'Date,kWh', ...days], { fileName: 'solar.csv' });
    expect(series[0]).toMatchObject({ carrier: 'electricity', role: 'import' });
  });
});

describe('years of two digits before month and day', () => {
  const list = (dates: readonly string[]) => ['Datum;El kWh', ...dates.map((date, i) => `${date};${300 + i}`)];
  const monthsOf = (day: string, year: string, write: (day: string, month: string, year: string) => string) =>
    Array.from({ length: 12 }, (_, i) => write(day, String(i + 1).padStart(2, '0'), year));
  const firstOf = (dates: readonly string[], choices = {}) => {
    const preview = previewOf(list(dates), { choices, zone: 'Europe/Stockholm' });
    const codes = codesOf(preview).filter((code) => code.startsWith('year-first'));
    return [preview.series[0]?.periods?.[1]?.from, ...codes];
  };
  test.each(['-', '.', '/'])('are read where the years would be of long ago else, parted by %s', (mark) => {
    expect(firstOf(monthsOf('01', '23', (day, month, year) => [year, month, day].join(mark)))).toEqual([
      '2023-02-01',
      'year-first',
    ]);
  });
  test('are read where only so the rows are in order', () =>
    expect(firstOf(['22-09-19', '23-01-20', '23-10-12', '24-02-08'])).toContain('year-first'));
  test.each(['-', '.', '/'])('are not taken for days, parted by %s', (mark) => {
    const write = (day: string, month: string, year: string) => [day, month, year].join(mark);
    expect(firstOf([...monthsOf('15', '24', write), ...monthsOf('16', '25', write)])).toEqual(['2024-02-15']);
    expect(firstOf(monthsOf('01', '24', write))).toEqual(['2024-02-01']);
  });
  test('are asked about where both make sense', () => {
    const dates = monthsOf('24', '23', (day, month, year) => `${year}-${month}-${day}`);
    expect(firstOf(dates)).toContain('year-first-asked');
    expect(firstOf(dates, { yearFirst: true })).toEqual(['2023-02-24']);
    expect(firstOf(dates, { yearFirst: false })).toEqual(['2024-02-23']);
  });
});
