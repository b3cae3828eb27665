/** Words of titles against words of headings, and layouts that people make by hand. */
import { describe, expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const read = (text: string, { fileName = 'a.csv', zone = 'Europe/London', choices = {} as IntakeChoices } = {}) => {
  const { preview } = readFile(fileName, new TextEncoder().encode(text), choices, {
    zone,
    today: '2026-11-25',
    kWhPerUnit,
    gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
  });
  const codes = (weight: string) => preview.remarks.filter((r) => r.weight === weight).map(({ code }) => code);
  const series = preview.series.map((s) => `${s.carrier} ${s.role} ${s.from} ${s.to} ${s.total.toFixed(2)}`);
  return { preview, series, asked: codes('question'), noted: codes('note') };
};

const START = Date.UTC(2025, 0, 1);
const stamp = (hour: number) => new Date(START + hour * 3_600_000).toISOString().slice(0, 16).replace('T', ' ');
const hours = (count = 480, value: (i: number) => number = (i) => ((i * 7) % 13) / 10 + 0.1) =>
  Array.from({ length: count }, (_, i) => `${stamp(i)},${value(i).toFixed(3)}`);
const under = (titles: readonly string[], heading: string) => [...titles, heading, ...hours()].join('\n');

describe('a title', () => {
  test.each<[string, string[], string]>([
    ['a contracted power', ['Contracted power: 4.6 kW', 'Electricity readings'], 'unit-guessed'],
    ['a price', ['Electricity readings', 'Day plan 24.5 p/kWh'], 'unit-guessed'],
    ['a letter of a name', ['Electricity readings', 'Made for W Smith'], 'unit-guessed'],
    ['a post code', ['Electricity readings', 'Home at E1 2WH'], 'unit-guessed'],
  ])('%s is no unit', (_, titles, question) => {
    const { asked, series } = read(under(titles, 'Time,Usage'));
    expect(asked).toEqual([question]);
    expect(series).toEqual(['electricity import 2025-01-01 2025-01-21 336.00']);
  });
  test.each<[string, string]>([
    ['a street', '12 Water Lane'],
    ['a customer', 'Customer: A. Wood'],
    ['a supplier', 'Coal and Gas Ltd'],
    ['two fuels', 'Gas and electricity readings of Larch Rise'],
  ])('%s is no fuel', (_, title) => {
    const { asked } = read(under([title], 'Time,Usage (kWh)'));
    expect(asked).toEqual(['carrier-guessed']);
  });
  test('about the data says fuel and unit', () => {
    const { asked, series } = read(under(['Gas meter readings', 'Unit: kWh'], 'Time,Usage'));
    expect([asked, series]).toEqual([[], ['gas import 2025-01-01 2025-01-21 336.00']]);
  });
  test('a street in the name of a file is no fuel', () => {
    expect(read(under([], 'Time,Usage (kWh)'), { fileName: 'wood-street.csv' }).asked).toEqual(['carrier-guessed']);
  });
  test('a moment of printing in UTC is no clock; what contradicts the change days is asked about', () => {
    const year = (titles: readonly string[]) => {
      // Local time in Berlin: one hour is skipped in March, one stands twice in October.
      const rows = Array.from({ length: 8760 }, (_, i) => {
        const at = START - 3_600_000 + i * 3_600_000;
        const isSummer = at >= Date.UTC(2025, 2, 30, 1) && at < Date.UTC(2025, 9, 26, 1);
        return `${new Date(at + (isSummer ? 2 : 1) * 3_600_000).toISOString().slice(0, 16)},0.5`;
      });
      return [...titles, 'Time,Electricity (kWh)', ...rows].join('\n');
    };
    const zone = 'Europe/Berlin';
    expect(read(year(['Created: 2026-01-02 08:15 UTC']), { zone }).asked).toEqual([]);
    expect(read(year(['All times in UTC']), { zone }).asked).toEqual(['clock-contradicted']);
  });
});

describe('a layout made by hand', () => {
  const days = (write: (i: number, date: string) => string, count = 40) =>
    Array.from({ length: count }, (_, i) => write(i, new Date(START + i * 86_400_000).toISOString().slice(0, 10)));
  const ofDays = ['electricity import 2025-01-01 2025-02-10 400.00'];
  const kWh = (i: number) => 8 + (i % 5);

  test.each<[string, string[]]>([
    [
      'year, month and day in columns',
      ['Year,Month,Day,Electricity (kWh)', ...days((i, d) => `${d.split('-').map(Number).join(',')},${kWh(i)}`)],
    ],
    [
      'names of months in a column',
      [
        'Jahr;Monat;Tag;Strom (kWh)',
        ...days(
          (i, d) =>
            `${d.slice(0, 4)};${['Januar', 'Februar'][Number(d.slice(5, 7)) - 1]};${Number(d.slice(8))};${kWh(i)}`,
        ),
      ],
    ],
    ['columns lined up with spaces', ['Date        Electricity (kWh)', ...days((i, d) => `${d}  ${kWh(i)}`)]],
    ['A+', ['Datum;A+ [kWh]', ...days((i, d) => `${d.split('-').reverse().join('.')};${kWh(i)}`)]],
    [
      'a weekday before the date',
      [
        'Giorno;Energia elettrica (kWh)',
        ...days(
          (i, d) =>
            `${['mer', 'gio', 'ven', 'sab', 'dom', 'lun', 'mar'][i % 7]} ${d.split('-').reverse().join('/')};${kWh(i)}`,
        ),
      ],
    ],
    ['a column twice', ['Date,Electricity (kWh),Electricity (kWh)', ...days((i, d) => `${d},${kWh(i)},${kWh(i)}`)]],
    ['a sum above the rows', ['Date,Electricity (kWh)', 'Total,400', ...days((i, d) => `${d},${kWh(i)}`)]],
    ['marks that look like watts', ['Unit: kWh', 'Date,Electricity use,Status', ...days((i, d) => `${d},${kWh(i)},W`)]],
    [
      'peak demand beside the use',
      ['Date,Peak demand (kW),Electricity (kWh)', ...days((i, d) => `${d},${3 + (i % 4)},${kWh(i)}`)],
    ],
  ])('%s', (_, lines) => {
    const { asked, series } = read(lines.join('\n'));
    expect([asked, series]).toEqual([[], ofDays]);
  });
  test('merged headings tell columns of one name apart', () => {
    const rows = days((i, d) => `${d};${kWh(i)};2;${i % 3};1`);
    const { asked, series } = read([';Import;;Export;', 'Date;kWh;£;kWh;£', ...rows].join('\n'));
    expect([asked, series]).toEqual([[], [...ofDays, 'electricity export 2025-01-01 2025-02-10 39.00']]);
  });
  test('highest and lowest in degrees Fahrenheit', () => {
    const rows = days((i, d) => `${d},${50 + ((i * 7) % 13)},${32 - ((i * 5) % 11)}`);
    const { series } = read(['Date,Tmax (°F),Tmin (°F)', ...rows].join('\n'));
    expect(series).toEqual(['outdoor-temperature weather 2025-01-01 2025-02-10 5.21']);
  });
  test('a volume that says no more than its unit may be water', () => {
    const rows = days((i, d) => `${d},${(500 + i * 0.3).toFixed(1)}`);
    expect(read(['Date,Meter (m³)', ...rows].join('\n')).asked).toContain('carrier-guessed');
    expect(read(['Date,Gas meter (m³)', ...rows].join('\n')).asked).not.toContain('carrier-guessed');
  });
  test('a counter beside amounts that were sent out gives way to them', () => {
    const rows = days((i, d) => `${d},${4000 + i * 9},${kWh(i)}`);
    expect(read(['Date,Meter reading (kWh),Export (kWh)', ...rows].join('\n')).series).toEqual([
      'electricity export 2025-01-01 2025-02-10 400.00',
    ]);
  });
  test('hours without minutes', () => {
    const rows = Array.from(
      { length: 480 },
      (_, i) => `${stamp(i).slice(0, 10)},${i % 12 || 12} ${i % 24 < 12 ? 'am' : 'pm'},0.5`,
    );
    expect(read(['Date,Time,Electricity (kWh)', ...rows].join('\n')).series).toEqual([
      'electricity import 2025-01-01 2025-01-21 240.00',
    ]);
  });
  test('what is sent out below nought is taken without its sign, and said', () => {
    const { series, noted } = read(['Date,Export (kWh)', ...days((i, d) => `${d},${-kWh(i)}`)].join('\n'));
    expect(series).toEqual(['electricity export 2025-01-01 2025-02-10 400.00']);
    expect(noted).toContain('sent-below-nought');
  });
  test('sums under a bare date are no midnights', () => {
    const rows = Array.from({ length: 20 }, (_, day) => [
      ...Array.from({ length: 24 }, (__, hour) => `${stamp(day * 24 + hour)},0.5`),
      `${stamp(day * 24).slice(0, 10)},12`,
    ]).flat();
    const { series, noted } = read(['Time,Electricity (kWh)', ...rows].join('\n'));
    expect(series).toEqual(['electricity import 2025-01-01 2025-01-21 240.00']);
    expect(noted).toContain('totals-skipped');
  });
  test('bare dates are midnights where no others stand there', () => {
    const rows = Array.from({ length: 480 }, (_, i) => `${stamp(i).replace(' 00:00', '')},0.5`);
    expect(read(['Time,Electricity (kWh)', ...rows].join('\n')).series).toEqual([
      'electricity import 2025-01-01 2025-01-21 240.00',
    ]);
  });
});

describe('accumulated rows of the open market format', () => {
  const row = (from: string, to: string, suffix: string, way: string, kWh: number, quality = 'A') =>
    `250,4103000001,E1B1,1,${suffix},,S1,${way},100,${from}010203,A,,,${100 + kWh},${to}010203,${quality},,,${kWh},kWh,,,`;
  const quarters = (suffix: string, way: string, kWh: readonly [number, number]) => [
    row('20250101', '20250401', suffix, way, kWh[0]),
    row('20250401', '20250701', suffix, way, kWh[1], 'E64'),
    '550,N,,A,',
  ];
  test('give what was drawn and what was sent out by the period, registers of one direction added', () => {
    const lines = [
      ...quarters('E1', 'E', [1400, 2000]),
      ...quarters('E2', 'E', [140, 200]),
      ...quarters('B1', 'I', [340, 560]),
    ];
    const { series, preview } = read(['100,NEM13,202512010000,A,B', ...lines, '900'].join('\n'), {
      zone: 'Australia/Sydney',
    });
    expect(series).toEqual([
      'electricity import 2025-01-01 2025-07-01 3740.00',
      'electricity export 2025-01-01 2025-07-01 900.00',
    ]);
    expect(preview.series[0]!.periods!.map(({ quality }) => quality)).toEqual(['actual', 'estimated']);
  });
  test('without any that can be read are refused', () => {
    const { preview } = read(['100,NEM13,202512010000,A,B', row('x', 'y', 'E1', 'E', 3), '900'].join('\n'));
    expect(preview.remarks.find(({ weight }) => weight === 'refusal')?.code).toBe('no-readable-rows');
  });
});

describe('quarters of a year', () => {
  const NAMES = {
    Q1: ['Q1', 'Q2', 'Q3', 'Q4'],
    'Quarter 1': ['Quarter 1', 'Quarter 2', 'Quarter 3', 'Quarter 4'],
    '1. Quartal': ['1. Quartal', '2. Quartal', '3. Quartal', '4. Quartal'],
    'I kwartał': ['I kwartał', 'II kwartał', 'III kwartał', 'IV kwartał'],
    'Jan-Mar': ['Jan-Mar', 'Apr-Jun', 'Jul-Sep', 'Oct-Dec'],
  };
  const USED = [3100, 1500, 600, 2500];
  describe.each(Object.entries(NAMES))('called %s', (_, names) => {
    const rows = (before: string) => names.map((name, i) => `${before}${name},${USED[i]}`);
    test('take the year of the title', () => {
      const { series, asked } = read(['Gas use 2025', 'Quarter,Gas (kWh)', ...rows('')].join('\n'));
      expect({ series, asked }).toEqual({ series: ['gas import 2025-01-01 2026-01-01 7700.00'], asked: [] });
    });
    test('take the year beside them, and are no registers', () => {
      const { series, asked } = read(['Year,Quarter,Gas (kWh)', ...rows('2024,'), ...rows('2025,')].join('\n'));
      expect({ series, asked }).toEqual({ series: ['gas import 2024-01-01 2026-01-01 15400.00'], asked: [] });
    });
    test('stand across or down beside years', () => {
      const across = [`Gas (kWh),${names.join(',')}`, `2024,${USED.join(',')}`, `2025,${USED.join(',')}`].join('\n');
      const down = ['Gas (kWh),2024,2025', ...names.map((name, i) => `${name},${USED[i]},${USED[i]}`)].join('\n');
      for (const text of [across, down])
        expect(read(text).series).toEqual(['gas import 2024-01-01 2026-01-01 15400.00']);
    });
    test('without a year are refused for that', () => {
      const { preview } = read(['Quarter,Gas (kWh)', ...rows('')].join('\n'));
      expect(preview.remarks.find(({ weight }) => weight === 'refusal')?.code).toBe('no-year');
    });
  });
  test.each(['I kwartał 2025', '1.º trimestre 2025', '1. čtvrtletí 2025', 'T1 2025'])('%s says its year', (first) => {
    const rows = [2, 3, 4].map((n) => `Q${n} 2025,${USED[n - 1]}`);
    expect(read(['Period,Gas (kWh)', `${first},3100`, ...rows].join('\n')).series).toEqual([
      'gas import 2025-01-01 2026-01-01 7700.00',
    ]);
  });
});

describe('what cannot be known is asked', () => {
  const MONTHLY = [900, 700, 500, 300, 100, 200].map((kWh, i) => [`2025-0${i + 1}`, kWh] as const);
  test('energy under a word that is not known, beside gas', () => {
    const rows = MONTHLY.map(([month, kWh], i) => `${month},${kWh},${250 + ((i * 7) % 30)}`);
    expect(read(['Month,Gas (kWh),Kraft (kWh)', ...rows].join('\n')).asked).toEqual(['column-asked']);
    // What is a sum or a repeat by its name is left out without a question.
    expect(read(['Month,Gas (kWh),Total (kWh)', ...rows].join('\n')).asked).toEqual([]);
  });
  test.each([
    ['a counter of gas in kWh', [41_000, 45_000, 46_800, 47_400]],
    ['what rose from quarter to quarter', [3000, 3100, 3300, 3900]],
    ['two readings', [41_000, 45_000]],
  ])('%s under the name of a meter', (_, numbers) => {
    const rows = numbers.map((number, i) => `${15 + i}/0${1 + 3 * Math.min(i, 2)}/202${i < 3 ? 4 : 5},${number}`);
    expect(read(['Date,Gas meter (kWh)', ...rows].join('\n')).asked).toContain('register-rising-asked');
  });
  test('amounts between two dates are none, whatever the meter is called', () => {
    const rows = ['15/01/2024,14/04/2024,3000', '15/04/2024,14/07/2024,3100', '15/07/2024,14/10/2024,3300'];
    expect(read(['From,To,Gas meter (kWh)', ...rows].join('\n')).asked).not.toContain('register-rising-asked');
  });
});

test.each([
  ['water.csv', 'water import', []],
  ['hot water (m3).csv', 'water import', ['carrier-guessed']],
  ['water heater.csv', 'electricity import', ['carrier-guessed', 'unit-guessed']],
  ['hot water.csv', 'electricity import', ['carrier-guessed', 'unit-guessed']],
  ['chauffe-eau.csv', 'electricity import', ['carrier-guessed', 'unit-guessed']],
])('%s: what heats water is none', (fileName, expected, asked) => {
  const found = read(['Date,Value', '2025-01-01,9', '2025-01-02,11', '2025-01-03,8'].join('\n'), { fileName });
  expect([found.series[0]?.split(' ').slice(0, 2).join(' '), found.asked]).toEqual([expected, asked]);
});
