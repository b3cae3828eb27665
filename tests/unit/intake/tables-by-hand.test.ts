/** Tables as people and portals lay them out: across, by weeks, by the day's counter, in lists; read right, or asked. */
import { describe, expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const read = (text: string, { fileName = 'a.csv', zone = 'Europe/Berlin', choices = {} as IntakeChoices } = {}) => {
  const { preview } = readFile(fileName, new TextEncoder().encode(text), choices, {
    zone,
    today: '2026-11-25',
    kWhPerUnit,
    gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
  });
  const codes = (weight: string) => preview.remarks.filter((r) => r.weight === weight).map(({ code }) => code);
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.from} ${s.to} ${s.total.toFixed(1)}`),
    asked: codes('question'),
    refused: codes('refusal'),
    noted: codes('note'),
  };
};

const lines = (...rows: readonly (string | readonly string[])[]): string => rows.flat().join('\n');
const many = (count: number, row: (i: number) => string): string[] => Array.from({ length: count }, (_, i) => row(i));
const two = (n: number): string => String(n).padStart(2, '0');
const dayOf2025 = (i: number): string => new Date(Date.UTC(2025, 0, 1 + Math.floor(i))).toISOString().slice(0, 10);
const MONTHS = ['Jan', 'Feb', 'Mär', 'Apr', 'Mai', 'Jun', 'Jul', 'Aug', 'Sep', 'Okt', 'Nov', 'Dez'];

describe('what stands across', () => {
  test('days across and hours down', () => {
    const text = lines(
      'Strombezug kWh',
      ['Stunde', ...many(31, dayOf2025)].join(';'),
      many(24, (hour) => [`${two(hour)}:00`, ...many(31, (day) => `0,${two(hour + day)}`)].join(';')),
    );
    // 24 hours of 31 days, in hundredths: the sum of hour + day.
    const { series, noted } = read(text, { choices: { clock: 'local' } });
    expect(series).toEqual(['electricity import 2025-01-01 2025-02-01 197.2']);
    // Use that rises all day is no counter of the day.
    expect(noted).not.toContain('counts-from-midnight');
  });
  test('months across and years down, and years across and months down', () => {
    const down = lines(
      'Gas kWh',
      ['Jahr', ...MONTHS].join(';'),
      many(2, (i) => [2024 + i, ...many(12, (m) => String(1000 + i + m))].join(';')),
    );
    expect(read(down).series).toEqual(['gas import 2024-01-01 2026-01-01 24144.0']);
    const across = lines(
      'Gas kWh',
      'Monat;2024;2025',
      MONTHS.map((name, m) => `${name};${1000 + m};${1001 + m}`),
      'Summe;12066;12078',
    );
    expect(read(across).series).toEqual(['gas import 2024-01-01 2026-01-01 24144.0']);
  });
  test('days of the month across, and down', () => {
    const across = lines(
      'Strom kWh 2025',
      ['Monat', ...many(31, (d) => String(d + 1)), 'Summe'].join(';'),
      many(12, (m) =>
        [MONTHS[m], ...many(31, (d) => (d < new Date(2025, m + 1, 0).getDate() ? '10' : '')), '1'].join(';'),
      ),
    );
    expect(read(across).series).toEqual(['electricity import 2025-01-01 2026-01-01 3650.0']);
    const down = lines(
      'Strom kWh 2025',
      ['Tag', ...MONTHS].join(';'),
      many(31, (d) => [d + 1, ...many(12, (m) => (d < new Date(2025, m + 1, 0).getDate() ? '10' : ''))].join(';')),
    );
    expect(read(down).series).toEqual(['electricity import 2025-01-01 2026-01-01 3650.0']);
  });
  test.each<[string, (hour: number) => string]>([
    [
      'in English',
      (h) => `${h % 12 || 12}${h < 12 ? 'am' : 'pm'} - ${(h + 1) % 12 || 12}${(h + 1) % 24 < 12 ? 'am' : 'pm'}`,
    ],
    ['to the last minute', (h) => `${two(h)}:00 to ${two(h)}:59`],
    ['in German', (h) => `${h}-${h + 1} Uhr`],
    ['in French', (h) => `de ${h}h à ${h + 1}h`],
    ['in Danish', (h) => `kl. ${two(h)}-${two((h + 1) % 24)}`],
    ['to midnight', (h) => `von ${two(h)}:00 bis ${two(h + 1)}:00`],
    ['by its number', (h) => `${h + 1}. hodina`],
  ])('an hour by its two ends %s, across, down and beside its date', (_, hour) => {
    const days = many(40, (i) => dayOf2025(i));
    const value = (h: number) => `0,${two(h)}`;
    const across = [
      'Strom kWh',
      ['Datum', ...many(24, hour)].join(';'),
      ...days.map((d) => [d, ...many(24, value)].join(';')),
    ];
    const down = [
      'Strom kWh',
      ['Zeit', ...days].join(';'),
      ...many(24, (h) => [hour(h), ...days.map(() => value(h))].join(';')),
    ];
    const long = ['Datum;Stunde;Strom kWh', ...days.flatMap((d) => many(24, (h) => `${d};${hour(h)};${value(h)}`))];
    for (const rows of [across, down, long])
      expect(read(rows.join('\n'), { choices: { clock: 'local' } })).toMatchObject({
        series: ['electricity import 2025-01-01 2025-02-10 110.4'],
        asked: [],
      });
  });
  test('both ends of an hour in the cell of its date are no offset from UTC', () => {
    const rows = many(960, (i) => `${dayOf2025(i / 24)} ${two(i % 24)}:00-${two((i + 1) % 24)}:00;0,5`);
    expect(read(lines('Zeit;Strom kWh', rows), { choices: { clock: 'local' } })).toMatchObject({
      series: ['electricity import 2025-01-01 2025-02-10 480.0'],
      asked: [],
    });
  });
  const monday = (i: number) => dayOf2025(5 + 7 * i);
  test.each<[string, string, (week: number) => string, string]>([
    ['from their Monday', 'Week;Mon;Tue;Wed;Thu;Fri;Sat;Sun', monday, '2025-01-06 2025-03-17'],
    [
      'to their Sunday',
      'Week ending;Mon;Tue;Wed;Thu;Fri;Sat;Sun',
      (i) => dayOf2025(11 + 7 * i),
      '2025-01-06 2025-03-17',
    ],
    ['by number', 'KW;Mo;Di;Mi;Do;Fr;Sa;So;Summe', (i) => String(i + 2), '2025-01-06 2025-03-17'],
    [
      'by whole spans',
      'Semana;Lun;Mar;Mié;Jue;Vie;Sáb;Dom',
      (i) => `${monday(i)} - ${dayOf2025(11 + 7 * i)}`,
      '2025-01-06 2025-03-17',
    ],
    ['from their Sunday', 'Week;Sun;Mon;Tue;Wed;Thu;Fri;Sat', (i) => dayOf2025(4 + 7 * i), '2025-01-05 2025-03-16'],
  ])('weeks down and their days across, %s', (_, heads, week, span) => {
    const rows = many(10, (i) => [week(i), 1, 2, 3, 4, 5, 6, 7].join(';'));
    expect(read(lines('Strom kWh 2025', heads, rows)).series).toEqual([`electricity import ${span} 280.0`]);
  });
  test('days of weeks that nothing dates are refused, and so is a calendar', () => {
    const days = 'Mo;Di;Mi;Do;Fr;Sa;So';
    const hours = many(24, (h) => [`${h}:00`, ...many(7, () => '0,3')].join(';'));
    const midweek = many(9, (i) => [dayOf2025(7 + 7 * i), ...many(7, () => '8')].join(';'));
    const calendar = [days, '6;7;8;9;10;11;12', '8,1;8,2;8,3;8,4;8,5;8,6;8,7'];
    for (const rows of [
      [`Zeit;${days}`, ...hours],
      [`Woche;${days}`, ...midweek],
      ['Januar 2025', ...calendar],
    ])
      expect(read(rows.join('\n'))).toMatchObject({ series: [], refused: ['weekdays-across'] });
  });
  test.each<[string, string, readonly string[]]>([
    ['by years', ['Jahr', ...many(52, (w) => `KW${w + 1}`)].join(';'), ['2024', '2025']],
    ['by their own years', ['', ...many(52, (w) => `2025-W${two(w + 1)}`)].join(';'), ['Strom kWh']],
    [
      'in one year',
      ['Tag', ...many(52, (w) => `S${w + 1}`)].join(';'),
      ['Lun', 'Mar', 'Mer', 'Jeu', 'Ven', 'Sam', 'Dim'],
    ],
  ])('weeks across, %s', (_, heads, names) => {
    const rows = names.map((name) => [name, ...many(52, () => '10')].join(';'));
    const { series } = read(lines(names.length === 7 ? 'Strom kWh 2025' : 'Strom kWh', heads, rows));
    expect(series).toHaveLength(1);
    expect(series[0]).toMatch(new RegExp(` ${520 * names.length}\\.0$`));
  });
  test('years of several uses across', () => {
    const heads = 'Monat;Strom 2024 kWh;Strom 2025 kWh;Gas 2024 kWh;Gas 2025 kWh;Kosten 2025 €';
    const text = lines(
      heads,
      MONTHS.map((name) => `${name};100;110;300;310;9`),
    );
    expect(read(text).series).toEqual([
      'electricity import 2024-01-01 2026-01-01 2520.0',
      'gas import 2024-01-01 2026-01-01 7320.0',
    ]);
  });
  test('a year that stands once for several rows holds for each; a plan is no use', () => {
    const of = (year: string, name: string, n: number) => [year, name, ...many(12, () => String(n))].join(';');
    const rows = [
      of('2024', 'Bezug', 100),
      of('', 'Einspeisung', 20),
      of('2025', 'Bezug', 110),
      of('', 'Einspeisung', 30),
    ];
    expect(read(lines('Strom kWh', ['Jahr', 'Art', ...MONTHS].join(';'), rows)).series).toEqual([
      'electricity import 2024-01-01 2026-01-01 2520.0',
      'electricity export 2024-01-01 2026-01-01 600.0',
    ]);
    const planned = lines(
      'Monat;Strom 2024 kWh;Strom 2025 kWh;Plan 2025 kWh',
      MONTHS.map((name) => `${name};100;110;90`),
    );
    expect(read(planned).series).toEqual(['electricity import 2024-01-01 2026-01-01 2520.0']);
  });
  test('months under their years, a row for each use, and the year of the file name', () => {
    const months = [...MONTHS, ...MONTHS].join(';');
    const row = (name: string) => [name, ...many(24, () => '10')].join(';');
    const two = lines(`;2024${';'.repeat(12)}2025`, `kWh;${months}`, row('Strom'), row('Gas'));
    const years = '2024-01-01 2026-01-01 240.0';
    expect(read(two).series).toEqual([`electricity import ${years}`, `gas import ${years}`]);
    const one = lines(`kWh;${MONTHS.join(';')}`, row('Strom').slice(0, 41), row('Gas').slice(0, 39));
    expect(read(one, { fileName: 'Verbrauch 2025.csv' }).series).toHaveLength(2);
    expect(read(one).refused).toEqual(['no-year']);
  });
  test('the only row names its amounts, and units may stand below the months', () => {
    const months = ['', ...MONTHS.map((name) => `${name} 2025`)].join(';');
    const row = (name: string) => [name, ...many(12, () => '100')].join(';');
    const year = (carrier: string) => `${carrier} import 2025-01-01 2026-01-01 1200.0`;
    const one = lines(months, row('Gasverbrauch kWh'), row('Mittel'));
    expect(read(one)).toMatchObject({ series: [year('gas')], asked: [] });
    const two = lines(months, ['', ...many(12, () => 'kWh')].join(';'), row('Strom'), row('Gas'));
    expect(read(two)).toMatchObject({ series: [year('electricity'), year('gas')], asked: [] });
  });
  test('a day of printing or of download is no year, nor is a boiler', () => {
    const rows = [['Tag', ...MONTHS].join(';'), ...many(31, (d) => [d + 1, ...many(12, () => '8,5')].join(';'))];
    for (const title of ['Erstellt am 03.01.2026', 'Kessel von 2012'])
      expect(read(lines('Strom kWh', title, rows)).refused).toEqual(['no-year']);
    expect(read(lines('Strom kWh', rows), { fileName: 'Strom-2026-01-03.csv' }).refused).toEqual(['no-year']);
  });
  test('channels beside bare numbers of time are no weeks', () => {
    const rows = many(40, (i) => [1_735_689_600 + 3600 * i, ...many(16, (c) => String(100 + c))].join(';'));
    const { asked } = read(lines(['time', ...many(16, (c) => `W${c + 1}`)].join(';'), rows), {
      fileName: 'log 2025.csv',
    });
    expect(asked).toContain('column-asked');
  });
  test('months across and hours down name no day', () => {
    const text = lines(
      ['Hour', ...MONTHS].join(';'),
      many(24, (h) => [`${h}:00`, ...many(12, () => '0,3')].join(';')),
    );
    expect(read(text)).toMatchObject({ series: [], refused: ['no-dates'] });
  });
  test('half-hours across, a row for each direction of a day', () => {
    const clock = many(48, (i) => `${two(i >> 1)}:${i % 2 === 0 ? '00' : '30'}`);
    const day = (i: number) =>
      ['Import kWh', 'Export kWh'].map((name, n) => [dayOf2025(i), name, ...clock.map(() => `0.${n + 1}`)].join(','));
    const text = lines(['Date,Register', ...clock].join(','), Array.from({ length: 40 }, (_, i) => day(i)).flat());
    expect(read(text, { choices: { clock: 'local' } })).toMatchObject({
      series: ['electricity import 2025-01-01 2025-02-10 192.0', 'electricity export 2025-01-01 2025-02-10 384.0'],
      asked: [],
    });
  });
  test('what is sent out below nought', () => {
    const clock = many(24, (i) => `${two(i)}:00`);
    const text = lines(
      'Einspeisung kWh',
      ['Datum', ...clock].join(';'),
      many(40, (i) => [dayOf2025(i), ...clock.map(() => '-0,5')].join(';')),
    );
    const { series, noted } = read(text, { choices: { clock: 'local' } });
    expect(series).toEqual(['electricity export 2025-01-01 2025-02-10 480.0']);
    expect(noted).toContain('sent-below-nought');
  });
});

describe('weeks', () => {
  test.each<[string, string, (week: number) => string]>([
    ['by the standard', 'Woche', (w) => `2025-W${two(w)}`],
    ['before the year', 'Woche', (w) => `Woche ${w}/2025`],
    ['in Danish', 'Uge', (w) => `Uge ${w} 2025`],
    ['in columns of their own', 'Jahr;KW', (w) => `2025;${w}`],
    ['in columns of their own, with the word', 'Jahr;KW', (w) => `2025;KW${two(w)}`],
  ])('%s begin on their Monday', (_, heading, week) => {
    const text = lines(
      `${heading};Gas kWh`,
      many(52, (i) => `${week(i + 1)};${i % 2 === 0 ? 100 : 90}`),
    );
    expect(read(text)).toMatchObject({
      series: ['gas import 2024-12-30 2025-12-29 4940.0'],
      asked: [],
      noted: ['weeks-by-number'],
    });
  });
  test('a year has no more than it has', () => {
    const text = lines(
      'Woche;Gas kWh',
      many(6, (i) => `2025-W${48 + i};100`),
    );
    expect(read(text).series).toEqual(['gas import 2025-11-24 2025-12-29 500.0']);
  });
});

describe('counters', () => {
  const START = Date.UTC(2025, 0, 1);
  const hour = (i: number) => new Date(START + i * 3_600_000).toISOString().slice(0, 16).replace('T', ' ');

  /** A quarter each hour, and a whole more in every third. */
  const counted = (readings: number) => readings / 4 + Math.floor(readings / 3);

  test('that begin anew at midnight are no amounts', () => {
    const text = lines(
      'Zeit;Strom heute (kWh)',
      many(240, (i) => `${hour(i)};${counted((i % 24) + 1)}`),
    );
    const { series, noted } = read(text, { choices: { clock: 'local', decimal: '.' } });
    // Ten days of 14 kWh: the first row of a day shows what was used since midnight.
    expect(series).toEqual(['electricity import 2025-01-01 2025-01-11 140.0']);
    expect(noted).toContain('counts-from-midnight');
  });
  test('that stand at nought at midnight hide the last hour of each day', () => {
    const text = lines(
      'Zeit;Strom heute (kWh)',
      many(240, (i) => `${hour(i)};${counted(i % 24)}`),
    );
    const { series, noted } = read(text, { choices: { clock: 'local', decimal: '.' } });
    expect(series).toEqual(['electricity import 2025-01-01 2025-01-11 127.5']);
    expect(noted).toContain('gap');
  });
  test('that fail for some days go on from where they were', () => {
    const text = lines(
      'Date,Electricity meter reading (kWh)',
      many(60, (i) => `${dayOf2025(i)},${i >= 20 && i < 23 ? 0 : 1000 + 10 * i}`),
    );
    const { series, noted } = read(text);
    expect(series).toEqual(['electricity import 2025-01-01 2025-03-01 590.0']);
    expect(noted).toContain('counter-noughts');
    expect(noted).toContain('counter-shared');
    expect(noted).not.toContain('register-exchange');
  });
  test('beside amounts whose unit the title gives are left out', () => {
    const text = lines(
      'Enhed: Wh',
      'Starttid;Slut;Energiforbrug;Målerstand (Wh)',
      many(240, (i) => `${hour(i)};${hour(i + 1)};${200 + (i % 7)};${4000 + 200 * (i + 1)}`),
    );
    const amount = many(240, (i) => String(200 + (i % 7))).reduce((sum, wh) => sum + Number(wh), 0) / 1000;
    const { series } = read(text, { choices: { clock: 'local', carrier: 'electricity' } });
    expect(series).toEqual([`electricity import 2025-01-01 2025-01-11 ${amount.toFixed(1)}`]);
  });
});

describe('what a heading means', () => {
  test.each(['Potenza massima (kW)', 'Puissance maximale (kW)', 'Höchstleistung (kW)', 'Peak demand (kW)'])(
    '%s is no use',
    (heading) => {
      const text = lines(
        `Monat;Strom kWh;${heading}`,
        many(12, (m) => `${two(m + 1)}/2025;${300 + (m % 3)};${2 + (m % 2)}`),
      );
      expect(read(text).series).toEqual(['electricity import 2025-01-01 2026-01-01 3612.0']);
      const alone = lines(
        `Monat;${heading}`,
        many(12, (m) => `${two(m + 1)}/2025;${2 + (m % 2)}`),
      );
      expect(read(alone).series).toEqual([]);
    },
  );
  test('the mean of a day is taken times the days, and left out beside the amount', () => {
    const alone = lines(
      'Monat;Strom kWh pro Tag',
      many(12, (m) => `${two(m + 1)}/2025;10`),
    );
    expect(read(alone)).toMatchObject({ series: ['electricity import 2025-01-01 2026-01-01 3650.0'] });
    const beside = lines(
      'Month,Electricity kWh/day,Electricity kWh',
      many(12, (m) => `${two(m + 1)}/2025,10,${300 + (m % 3)}`),
    );
    expect(read(beside).series).toEqual(['electricity import 2025-01-01 2026-01-01 3612.0']);
  });
  test('of a column that names both ways nobody knows which is above nought', () => {
    const text = lines(
      'time;net power import/export (kWh)',
      many(960, (i) => `${dayOf2025(i / 24)}T${two(i % 24)}:00Z;${i % 3 === 0 ? -0.5 : 1}`),
    );
    const net = read(text, { zone: 'Europe/London' });
    expect(net.asked).toEqual(['net-asked']);
    expect(net.series).toEqual([
      'electricity import 2025-01-01 2025-02-10 640.0',
      'electricity export 2025-01-01 2025-02-10 160.0',
    ]);
  });
  test.each(['last year', 'forecast', '(weather corrected)', 'similar homes', 'Vorjahr', 'gleitend 12 Monate'])(
    'electricity kWh %s is compared with, never added',
    (words) => {
      const text = lines(
        `Month,Electricity kWh,Electricity kWh ${words}`,
        many(12, (m) => `${two(m + 1)}/2025,${300 + (m % 3)},${400 + (m % 2)}`),
      );
      expect(read(text).series).toEqual(['electricity import 2025-01-01 2026-01-01 3612.0']);
    },
  );
  test('a column of units that change from row to row is refused', () => {
    const text = lines(
      'Date,Electricity,Unit',
      many(40, (i) => `${dayOf2025(i)},${i % 2 === 0 ? '9.5,kWh' : '950,litre'}`),
    );
    expect(read(text)).toMatchObject({ series: [], refused: ['units-by-row'] });
  });
  test('a volume beside flow and return is the water of a heat meter', () => {
    const text = lines(
      'Dato;Energi (MWh);Volumen (m3);Fremløb (°C);Returløb (°C)',
      many(40, (i) =>
        `${dayOf2025(i)};12,${300 + (40 * (i % 15)) / 2};${100 + i};65;33`.replace(
          '12,',
          `${12 + Math.floor(i / 15)},`,
        ),
      ),
    );
    expect(read(text).series.filter((s) => /gas|electricity/.test(s))).toEqual([]);
    expect(read(text).series.some((s) => s.startsWith('heat heat-output'))).toBe(true);
  });
  test('solar export in a title is what was sent out or what was made: asked', () => {
    const text = lines(
      'Solar export meter readings',
      'Date,kWh',
      many(40, (i) => `${dayOf2025(i)},${1 + (i % 3)}`),
    );
    expect(read(text).asked).toContain('direction-asked');
  });
  test('a title of the one word export is asked about', () => {
    const text = lines(
      'Export',
      'Date,Electricity kWh',
      many(40, (i) => `${dayOf2025(i)},${1 + (i % 3)}`),
    );
    expect(read(text).asked).toContain('direction-asked');
  });
  test('a total of a month is no reading, a month with a point is one, and so is Mrz', () => {
    const totals = lines(
      'Date,Electricity kWh',
      many(31, (i) => `${dayOf2025(i)},${1 + (i % 3)}`),
      'Total 01/2025,61',
      many(28, (i) => `${dayOf2025(31 + i)},${1 + (i % 3)}`),
      'Total 02/2025,55',
    );
    expect(read(totals).series).toEqual(['electricity import 2025-01-01 2025-03-01 116.0']);
    const pointed = lines(
      'Monat;Gas kWh',
      many(12, (m) => `${two(m + 1)}.2025;1'${100 + (m % 3)}`),
    );
    expect(read(pointed).series).toEqual(['gas import 2025-01-01 2026-01-01 13212.0']);
    const short = lines('Monat;Gas kWh', 'Jan 25;100', 'Feb 25;90', 'Mrz 25;80', 'Apr 25;70');
    expect(read(short).series).toEqual(['gas import 2025-01-01 2025-05-01 340.0']);
  });
});

describe('a list in JSON', () => {
  const rows = many(480, (i) => dayOf2025(i / 48)).map((date, i) => ({
    from: `${date}T${two((i % 48) >> 1)}:${i % 2 === 0 ? '00' : '30'}:00Z`,
    import_kwh: (i % 5) / 10,
  }));
  test('is a table', () => {
    const { series, asked } = read(JSON.stringify(rows), { fileName: 'a.json', zone: 'Europe/London' });
    expect([series, asked]).toEqual([['electricity import 2025-01-01 2025-01-11 96.0'], []]);
  });
  test('may stand beside what is said of it; two lists say nothing', () => {
    const one = { meter: { unit: 'kWh' }, readings: rows.map(({ from, import_kwh: value }) => ({ from, value })) };
    const { series, asked } = read(JSON.stringify({ ...one, unit: 'kWh' }), {
      fileName: 'a.json',
      zone: 'Europe/London',
    });
    expect(series).toEqual(['electricity import 2025-01-01 2025-01-11 96.0']);
    expect(asked).toEqual(['carrier-guessed']);
    const both = read(JSON.stringify({ a: rows, b: rows }), { fileName: 'a.json' });
    expect([both.series, both.refused.length]).toEqual([[], 1]);
  });
});

describe('running sums', () => {
  const START = Date.UTC(2025, 0, 1);
  const stamp = (hours: number) => new Date(START + hours * 3_600_000).toISOString().slice(0, 16).replace('T', ' ');
  /** 0.2 to 0.6 kWh, never twice the same within a day. */
  const ofHour = (i: number) => 0.2 + ((i * 7) % 24) / 60;
  const sumTo = (i: number) => many(i + 1, String).reduce((sum, n) => sum + ofHour(Number(n)), 0);

  test.each([2, 3, 4])('of %i days are no amounts', (count) => {
    const text = lines(
      'Time,Electricity (kWh)',
      many(24 * count, (i) => `${stamp(i)},${sumTo(i % 24).toFixed(3)}`),
    );
    const { series, noted } = read(text, { choices: { clock: 'local', stamp: 'start' } });
    const total = (count * sumTo(23)).toFixed(1);
    expect(series).toEqual([`electricity import 2025-01-01 2025-01-0${1 + count} ${total}`]);
    expect(noted).toContain('counts-from-midnight');
  });
  test('of the hours of a day across are no amounts', () => {
    const text = lines(
      `Date,${many(24, (i) => `${two(i)}:00`).join(',')}`,
      many(9, (d) => `${dayOf2025(d)},${many(24, (i) => sumTo(i).toFixed(3)).join(',')}`),
    );
    const { series } = read(text, { choices: { clock: 'local', unit: 'kWh', carrier: 'electricity' } });
    expect(series).toEqual([`electricity import 2025-01-01 2025-01-10 ${(9 * sumTo(23)).toFixed(1)}`]);
  });
  test('a use that rises all day stays an amount', () => {
    const text = lines(
      'Time,Electricity (kWh)',
      many(72, (i) => `${stamp(i)},${(0.5 + (i % 24) / 20).toFixed(2)}`),
    );
    const { noted } = read(text, { choices: { clock: 'local', stamp: 'start' } });
    expect(noted).not.toContain('counts-from-midnight');
  });

  const ofMonth = (i: number) => 300 + 90 * Math.round(2 * Math.cos((i % 12) / 2));
  const monthly = (first: number, count: number, begins: number) => {
    let sum = 0;
    return many(count, (n) => {
      const i = first + Number(n);
      sum = i % 12 === begins ? ofMonth(i) : sum + ofMonth(i);
      return `${2023 + Math.floor(i / 12)}-${two(1 + (i % 12))},${sum}`;
    });
  };
  const year = many(12, String).reduce((sum, i) => sum + ofMonth(Number(i)), 0);
  test.each([
    ['January', 0],
    ['October', 9],
  ])('of years that begin in %s are no amounts', (_, begins) => {
    const { series, noted } = read(lines('Month,Electricity (kWh)', monthly(begins, 24, begins)));
    const [from, to] = begins === 0 ? ['2023-01-01', '2025-01-01'] : ['2023-10-01', '2025-10-01'];
    expect(series).toEqual([`electricity import ${from} ${to} ${(2 * year).toFixed(1)}`]);
    expect(noted).toContain('counts-from-year');
  });
  test('of quarters of two years are asked about', () => {
    const quarters = ['2023', '2024'].flatMap((y) =>
      ['300', '650', '1000', '1400'].map((v, q) => `${y} Q${q + 1},${v}`),
    );
    expect(read(lines('Quarter,Electricity (kWh)', quarters)).asked).toEqual(['register-rising-asked']);
  });
  test('a winter that rises to its end and falls in January stays', () => {
    const amounts = [300, 340, 500, 900, 1300, 1700, 1600, 1650, 1700];
    const months = amounts.map((v, i) => `${i < 6 ? 2024 : 2025}-${two(((6 + i) % 12) + 1)},${v}`);
    const { noted } = read(lines('Month,Gas (kWh)', months));
    expect(noted).not.toContain('counts-from-year');
  });
});

describe('lists of fuel', () => {
  const rows = ['14/01/2025', '20/05/2025', '03/11/2025'];
  const table = (heading: string, cells: readonly string[]) =>
    lines(
      heading,
      rows.map((day, i) => `${day},${cells[i]}`),
    );
  test('a column without a heading beside an amount is asked about', () => {
    const { asked, series } = read(table('Oil delivered,,Amount', ['1500,1125.00', '1200,864.00', '1000,790.00']));
    expect(asked).toContain('column-asked');
    // 2,200 litres of 10.3 kWh: the first delivery starts the count.
    expect(series).toEqual(['oil import 2025-01-14 2025-11-03 22660.0']);
  });
  test('an amount that may be money is asked about', () => {
    expect(read(table('Oil delivered,Amount', ['1125.00', '864.00', '790.00'])).asked).toEqual(['amount-asked']);
  });
  test('thousands of pellets are kg', () => {
    const { series } = read(table('Delivered,Pellets', ['3000', '3100', '2900']));
    expect(series).toEqual(['pellets import 2025-01-14 2025-11-03 28800.0']);
  });
});

describe('electricity beside heat', () => {
  const years = (heading: string) =>
    lines(
      heading,
      [2022, 2023, 2024].map((year, i) => `${year};${3800 + i * 20};${14 + i}`),
    );
  test.each(['Fjernvarme', 'Fernwärme', 'District heat'])('%s is bought, and the electricity is the home’s', (heat) => {
    const { series, asked } = read(years(`Jahr;Strom kWh;${heat} MWh`));
    expect(series).toEqual([
      'electricity import 2022-01-01 2025-01-01 11460.0',
      'heat heat-output 2022-01-01 2025-01-01 45000.0',
    ]);
    expect(asked).toEqual([]);
  });
  test.each([
    ['nothing of a machine', 'Jahr;Strom kWh;Wärme MWh', ['part-pump-asked']],
    ['its efficiency', 'Jahr;Strom kWh;Wärme MWh;COP', []],
    ['what was made', 'Jahr;Stromverbrauch kWh;Erzeugte Wärme MWh', []],
    ['the whole house', 'Jahr;Strom Haus kWh;Wärme MWh', []],
  ])('%s', (_, heading, questions) => {
    expect(read(years(heading)).asked).toEqual(questions);
  });
});

describe('a column of an energy or a way of its own', () => {
  const months = [0, 1, 2, 3, 4, 5];
  test('what went back is a counter beside those of what was drawn', () => {
    const { series } = read(
      lines(
        'Maand;Stand normaal (kWh);Stand dal (kWh);Teruglevering (kWh)',
        months.map((i) => `1-${i + 1}-2025;${5000 + i * 300};${6000 + i * 280};${100 + i * 40}`),
      ),
      { zone: 'Europe/Amsterdam' },
    );
    expect(series).toContain('electricity export 2025-01-01 2025-06-01 200.0');
  });
  test('left out, it is asked about', () => {
    const text = lines(
      'Month,Electricity reading (kWh),Gas (kWh)',
      months.map((i) => `2025-0${i + 1}-01,${5000 + i * 300},${900 - i * 100}`),
    );
    const { asked, series } = read(text, { zone: 'Europe/London', choices: { shape: 'counter' } });
    expect(series).toHaveLength(1);
    expect(asked).toEqual(['column-asked']);
    expect(read(text, { zone: 'Europe/London', choices: { shape: 'counter', columns: { value: 1 } } }).asked).toEqual(
      [],
    );
  });
  test('of a mean, a highest and a lowest temperature of days the mean is taken', () => {
    const { series } = read(
      lines(
        'date,temperature_max_daily,temperature_min_daily,temperature_avg_daily (°C)',
        many(60, (i) => `${dayOf2025(i)},${12 + (i % 7)},${1 + (i % 3)},${5 + (i % 5)}`),
      ),
      { choices: { weatherMeasured: true } },
    );
    expect(series).toEqual(['outdoor-temperature weather 2025-01-01 2025-03-02 7.0']);
  });
});

describe('of two that fit none is taken by its place', () => {
  const ofDays = (heading: string, ...adds: number[]) =>
    lines(
      `date,${heading}`,
      many(60, (i) => [dayOf2025(i), ...adds.map((add) => 5 + (i % 5) + add)].join(',')),
    );
  const measured = { choices: { weatherMeasured: true } };
  test('the lowest at the ground is not that of the air', () => {
    const { series } = read(ofDays('tmax,grass min,tmin', 4, -9, -4), measured);
    expect(series).toEqual(['outdoor-temperature weather 2025-01-01 2025-03-02 7.0']);
  });
  test('two stations side by side are refused', () => {
    const { refused } = read(ofDays('Hill max °C,Hill min °C,Valley max °C,Valley min °C', 2, -6, 9, -16));
    expect(refused).toEqual(['places-several']);
  });
  test('a column between highest and lowest is the mean, whatever it is called', () => {
    const { series } = read(ofDays('hőm max °C,középhőm °C,hőm min °C', 4, 0, -5), measured);
    expect(series).toEqual(['outdoor-temperature weather 2025-01-01 2025-03-02 7.0']);
  });
  test('of heating and of hot water each has its total', () => {
    const { series } = read(
      ofDays('Heating heat total (kWh),Hot water heat total (kWh),Electricity total (kWh),COP', 20, 3, 5, 0),
    );
    expect(series.map((one) => one.split(' ')[1])).toEqual(['heat-output', 'heat-output', 'heat-pump']);
  });
  test('beside what was used the temperatures of a month are passed over', () => {
    const { series } = read(
      lines(
        'Month,Electricity (kWh),Max,Min',
        many(6, (i) => `2025-0${i + 1},${400 - 30 * i},${8 + i},${i}`),
      ),
    );
    expect(series).toEqual(['electricity import 2025-01-01 2025-07-01 1950.0']);
  });
  test('a reading closes what was used before it, and the day of the bill is not its day', () => {
    const { series, noted } = read(
      lines(
        'Bill date,Read date,Electricity (kWh)',
        many(6, (i) => `2025-0${i + 1}-12,2025-0${i + 1}-01,${400 - 30 * i}`),
      ),
    );
    expect(series).toEqual(['electricity import 2025-01-01 2025-06-01 1550.0']);
    expect(noted).toContain('period-by-end-date');
  });
  test.each([
    ['Solar consumption (kWh)', ['direction-of-name-asked']],
    ['House use of PV home (kWh)', ['direction-of-name-asked']],
    ['Electricity without solar (kWh)', ['word-asked']],
    ['no_pv_house_consumption_kwh', ['carrier-guessed']],
    ['Solar generation (kWh)', []],
  ])('%s', (heading, questions) => {
    const days = many(40, (i) => `${dayOf2025(i)},${9 + (i % 4)}`);
    expect(read(lines(`date,${heading}`, days)).asked).toEqual(questions);
  });
  test('reactive energy by its four quadrants is none that is bought; four registers of other names are', () => {
    const rows = many(40, (i) => [dayOf2025(i), 9 + (i % 4), 1, 2, 0, 0, 3].join());
    expect(read(lines('date,AE (kWh),AS (kWh),R1,R2,R3,R4', rows)).series).toHaveLength(2);
    expect(read(lines('date,R1 (kWh),R2 (kWh),R3 (kWh),R4 (kWh)', rows)).series).toHaveLength(4);
  });
  test.each([
    ['From grid (kWh),From solar (kWh),To grid (kWh)', ['import', 'export']],
    ['Bezug Netz [kWh],Bezug PV [kWh]', ['import']],
    ['From solar (kWh),To grid (kWh)', ['generation', 'export']],
    ['From grid (kWh),Solar generation (kWh)', ['import', 'generation']],
  ])('what the home took from its roof beside what it bought: %s', (headings, roles) => {
    const rows = many(40, (i) => [dayOf2025(i), 9 + (i % 4), 3 + (i % 3), 1 + (i % 2)].join());
    expect(read(lines(`date,${headings}`, rows)).series.map((one) => one.split(' ')[1])).toEqual(roles);
  });
});

describe('columns that may be one, or have gone the other way', () => {
  const ofDays = (heading: string, ...of: ((use: number) => number)[]) =>
    lines(
      `date,${heading}`,
      many(60, (i) => [dayOf2025(i), ...of.map((one) => one(20 + ((i * 7) % 9)).toFixed(2))].join(',')),
    );
  const same = (use: number) => use;
  test.each<[string, string, (use: number) => number, string[]]>([
    ['an estimate', 'Billed electricity kWh,Estimated electricity kWh', (use) => use * 0.96 + 0.4, ['column-asked']],
    ['gas by its lower heat value', 'Gas kWh (gross),Gas kWh (net)', (use) => use * 0.9, ['column-asked']],
    ['two rates', 'Electricity day kWh,Electricity night kWh', (use) => use * 0.9, []],
    [
      'a way by a word that nobody knows',
      'Energía comprada kWh,Energía zzvendida kWh',
      (use) => 40 - use,
      ['column-asked'],
    ],
  ])('%s', (_, heading, other, questions) => {
    expect(read(ofDays(heading, same, other)).asked).toEqual(questions);
  });
  test('of several temperatures beside a use none is the weather by its place', () => {
    const heading = 'Electricity Wh,Loft °C,Garden °C';
    const text = ofDays(
      heading,
      (use) => use * 500,
      (use) => use / 3,
      (use) => use / 5,
    );
    expect(read(text).series).toHaveLength(1);
    expect(read(text).noted).toEqual(['columns-left-out']);
    expect(read(text.replace('Garden', 'Outdoor')).series).toHaveLength(2);
  });
});

describe('the last look', () => {
  const ofDays = (heading: string, row: (i: number) => string) =>
    lines(
      heading,
      many(60, (i) => `${dayOf2025(i)},${row(i)}`),
    );
  test('two places in two kinds of degrees are asked about, one place in both is not', () => {
    const asked = (fahrenheit: (celsius: number) => number) =>
      read(
        ofDays('date,Airport (°F),Garden (°C)', (i) => `${fahrenheit(4 + (i % 7)).toFixed(1)},${4 + (i % 7)}`),
        { choices: { weatherMeasured: true } },
      ).asked;
    expect(asked((celsius) => celsius * 1.8 + 40)).toContain('column-asked');
    expect(asked((celsius) => celsius * 1.8 + 32)).not.toContain('column-asked');
  });
  test('what a square metre took is no second use', () => {
    const { series } = read(ofDays('Datum,Wärme kWh,Wärme kWh/m²', (i) => `${30 + (i % 9)},${0.2 + (i % 9) / 100}`));
    expect(series).toHaveLength(1);
  });
  test('all that the home took is asked about where only its heat pump was read', () => {
    const { asked } = read(
      ofDays(
        'Date,Heat pump electricity kWh,Heat kWh,House kWh',
        (i) => `${6 + (i % 5)},${20 + (i % 8)},${15 + (i % 6)}`,
      ),
    );
    expect(asked).toContain('column-asked');
  });
});
