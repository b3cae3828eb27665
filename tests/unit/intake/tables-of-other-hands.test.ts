/** Tables as households, loggers and network operators of several countries lay them out, one row a class. */
import { describe, expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { serialOf, writeWorkbook } from './write-workbook.ts';

const GAS = { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 };
const KWH_IN_M3 = (1.02264 * 39.5) / 3.6;

function read(text: string | Uint8Array, zone = 'Europe/Berlin', choices: IntakeChoices = {}, fileName = 'a.csv') {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  const { preview } = readFile(fileName, bytes, choices, { zone, today: '2026-11-25', kWhPerUnit, gasVolume: GAS });
  return {
    asked: preview.remarks.filter((r) => r.weight !== 'note').map(({ code }) => code),
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.from} ${s.to} ${s.total.toFixed(2)}`),
  };
}
const understood = (series: readonly string[]) => ({ asked: [], series });
const two = (n: number) => String(n).padStart(2, '0');
const MONTHS = Array.from({ length: 12 }, (_, i) => i);
const NAMES = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const kWh = (i: number) => 300 + ((i * 37) % 90);
const YEAR_SUM = MONTHS.reduce((sum, i) => sum + kWh(i), 0);
const year = (carrier: string, sum = YEAR_SUM) => `${carrier} import 2025-01-01 2026-01-01 ${sum.toFixed(2)}`;
const days = (count: number) =>
  Array.from({ length: count }, (_, i) => new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10));
/** "2025-03-01" of the month after. */
const after = (i: number) => (i === 11 ? '2026-01-01' : `2025-${two(i + 2)}-01`);

describe('sums with labels of their own', () => {
  test('quarters among their months are no readings', () => {
    const lines = MONTHS.flatMap((i) => [
      `${NAMES[i]} 2025,${kWh(i)}`,
      ...(i % 3 === 2 ? [`Q${(i + 1) / 3} 2025,${kWh(i - 2) + kWh(i - 1) + kWh(i)}`] : []),
    ]);
    expect(read(`Period,Gas (kWh)\n${lines.join('\n')}`)).toEqual(understood([year('gas')]));
  });

  test('months among their days are no readings', () => {
    const lines = days(59).flatMap((d, i) => [
      `${d},${8 + (i % 3)}`,
      ...(i === 30 || i === 58 ? [`${i === 30 ? 'January' : 'February'} 2025,270`] : []),
    ]);
    const sum = days(59).reduce((all, _, i) => all + 8 + (i % 3), 0);
    expect(read(`Date,Electricity (kWh)\n${lines.join('\n')}`)).toEqual(
      understood([`electricity import 2025-01-01 2025-03-01 ${sum.toFixed(2)}`]),
    );
  });

  test('a quarter whose months are missing is left out and named', () => {
    const { series } = read(
      `Period,Gas (kWh)\nQ4 2024,9000\n${MONTHS.map((i) => `${NAMES[i]} 2025,${kWh(i)}`).join('\n')}`,
    );
    expect(series).toEqual([year('gas')]);
  });
});

test('the sum of a day in its first row is no second record', () => {
  const lines = days(60).flatMap((d) =>
    Array.from({ length: 24 }, (_, h) => `${d} ${two(h)}:00,${0.1 + (h % 5) / 10},${h === 0 ? '7.0' : ''}`),
  );
  const { series } = read(`Start,Electricity kWh,Day total kWh\n${lines.join('\n')}`);
  expect(series.map((one) => one.split(' ').slice(0, 2).join(' '))).toEqual(['electricity import']);
});

test('a column that begins late is no sum of days, whatever its name has in it', () => {
  const lines = days(300).map((d, i) => `${d},${10 + (i % 3)},${i > 275 ? 6 : ''}`);
  expect(read(`Date,Electricity kWh,Heat pump consumption kWh\n${lines.join('\n')}`).series).toEqual([
    'electricity import 2025-01-01 2025-10-28 3300.00',
    'electricity heat-pump 2025-10-04 2025-10-28 144.00',
  ]);
});

describe('dates', () => {
  const HOURS = Array.from({ length: 24 }, (_, h) => h);
  const perDay = HOURS.reduce((sum, h) => sum + (h % 5) / 10 + 0.1, 0);

  test('that stand in the first row of their day hold for the rows below', () => {
    const lines = days(10).flatMap((d) =>
      HOURS.map((h) => `${h === 0 ? d : ''};${two(h)}:00;${((h % 5) / 10 + 0.1).toFixed(1).replace('.', ',')}`),
    );
    expect(read(`Datum;Zeit;Strom (kWh)\n${lines.join('\n')}`).series).toEqual([
      `electricity import 2025-01-01 2025-01-11 ${(10 * perDay).toFixed(2)}`,
    ]);
  });

  test('that stand in the last row of their day are not carried to the next', () => {
    const lines = days(10).flatMap((d) => HOURS.map((h) => `${h === 23 ? d : ''},${two(h)}:00,0.4`));
    expect(read(`Date,Time,Electricity (kWh)\n${lines.join('\n')}`).series).toEqual([]);
  });

  test('that most rows lack are asked for, rather than a tenth of the use taken', () => {
    const lines = days(10).flatMap((d) => [`${d},0.4`, ...HOURS.map(() => ',0.4')]);
    expect(read(`Date,Electricity (kWh)\n${lines.join('\n')}`).asked).toContain('rows-undated');
  });

  test('before which a table in another language stands are written day first', () => {
    const lines = days(12).map((d, i) => `${d.split('-').reverse().join('/')};${8 + (i % 3)}`);
    const sum = days(12).reduce((all, _, i) => all + 8 + (i % 3), 0);
    const right = understood([`electricity import 2025-01-01 2025-01-13 ${sum.toFixed(2)}`]);
    expect(read(`Date;Consommation électrique (kWh)\n${lines.join('\n')}`, 'Europe/Paris')).toEqual(right);
    expect(read(`Date;Electricity (kWh)\n${lines.join('\n')}`, 'Europe/London').asked).toEqual(['date-order-asked']);
  });

  test('of which one order makes periods that end before they begin are in the other', () => {
    const bills = '05/01/2025,04/04/2025,4000\n05/04/2025,04/07/2025,1200\n05/07/2025,04/10/2025,700';
    expect(read(`Bill start,Bill end,Gas (kWh)\n${bills}`, 'Europe/London')).toEqual(
      understood(['gas import 2025-01-05 2025-10-05 5900.00']),
    );
  });

  test('whose year stands above their months', () => {
    const lines = MONTHS.map((i) => `${NAMES[i]!.toUpperCase()};${kWh(i)}`).join('\n');
    expect(read(`Month 2025;Electricity (kWh)\n${lines}`)).toEqual(understood([year('electricity')]));
    expect(read(`Electricity 2025\nMonth;kWh\n${lines}`)).toEqual(understood([year('electricity')]));
    expect(read(`Printed on 3 March 2026\nMonth;Electricity (kWh)\n${lines}`).asked).toEqual(['no-year']);
  });

  test.each(['Customer since 2019', 'Tariff Fixed 2023', 'Gas use, boiler from 2012', 'House built 1995'])(
    'whose year is not that of the title “%s”',
    (title) => {
      const lines = MONTHS.map((i) => `${NAMES[i]};${kWh(i)}`).join('\n');
      expect(read(`${title}\nMonth;Gas (kWh)\n${lines}`)).toEqual({ asked: ['no-year'], series: [] });
    },
  );

  test('with hours named by both their ends', () => {
    const lines = days(300).flatMap((d) =>
      HOURS.map((h) => `${d};${two(h)}-${two((h + 1) % 24)};${(h % 5) / 10 + 0.1}`),
    );
    expect(read(`Dato;Time;El (kWh)\n${lines.join('\n')}`, 'Europe/Copenhagen').asked).not.toContain('times-doubled');
  });
});

describe('a counter beside what it rose by', () => {
  const readings = MONTHS.map((i) => 1000 + MONTHS.slice(0, i + 1).reduce((sum, n) => sum + kWh(n), 0));

  test('says that each amount ends at its date, and is no amount itself', () => {
    const lines = [['2025-01-01', 1000, ''], ...MONTHS.map((i) => [after(i), readings[i], kWh(i)])];
    const table = `Date,Gas meter (kWh),Used (kWh)\n${lines.map((l) => l.join(',')).join('\n')}`;
    expect(read(table)).toEqual(understood([year('gas')]));
  });

  test('says that each amount begins at its date', () => {
    const lines = MONTHS.map((i) => [`2025-${two(i + 1)}-01`, i === 0 ? 1000 : readings[i - 1], kWh(i)]);
    const table = `Date,Gas meter (kWh),Used (kWh)\n${lines.map((l) => l.join(',')).join('\n')}`;
    expect(read(table)).toEqual(understood([year('gas')]));
  });

  test('says nothing of the side where it is a running total', () => {
    const lines = MONTHS.map((i) => [`2025-${two(i + 1)}-01`, kWh(i), readings[i]! - 1000]);
    const table = `Date,Used (kWh),Gas in all (kWh)\n${lines.map((l) => l.join(',')).join('\n')}`;
    expect(read(table)).toEqual(understood([year('gas')]));
  });

  test('is one by its name alone, through an exchange', () => {
    const table =
      'Datum;Stromzähler;Zählernummer\n01.01.2025;48210;A\n01.03.2025;48530;A\n01.03.2025;0;B\n01.05.2025;300;B\n01.07.2025;620;B';
    expect(read(table).series).toEqual(['electricity import 2025-01-01 2025-07-01 940.00']);
  });

  test('is no counter where its numbers may be amounts', () => {
    const quarters = '01/01/2024,31/03/2024,3000\n01/04/2024,30/06/2024,3100\n01/07/2024,31/12/2024,3900';
    expect(read(`From,To,Gas meter (kWh)\n${quarters}`, 'Europe/London')).toEqual(
      understood(['gas import 2024-01-01 2025-01-01 10000.00']),
    );
  });

  test('of energy that is not the gas beside it is asked about', () => {
    let [energy, gas] = [1500, 4000];
    const lines = days(60).map((d, i) => {
      energy += 7 + ((i * 5) % 4);
      gas += i < 30 ? 9 : 1;
      return `${d},${energy},${gas}`;
    });
    expect(read(`Date,energy_total_kwh,gas_m3\n${lines.join('\n')}`).asked).toContain('column-asked');
    const same = days(60).map((d, i) => `${d},${((i % 7) + 1) * 11.2},${(i % 7) + 1}`);
    expect(read(`Date,Energy (kWh),Gas (m3)\n${same.join('\n')}`).asked).toEqual([]);
  });
});

describe('several tables', () => {
  const rows = (from: number, count: number, of: (i: number) => number) =>
    Array.from({ length: count }, (_, i) => [new Date(Date.UTC(2025, 0, from + i)).toISOString().slice(0, 10), of(i)]);
  const [spring, summer] = [rows(1, 60, () => 8), rows(91, 60, (i) => 20 + (i % 3))];
  const beside = (head: string, left: typeof spring, right: typeof spring) =>
    [head, ...left.map((row, i) => [...row, '', ...(right[i] ?? ['', ''])].join(','))].join('\n');
  const below = (first: string, second: string) =>
    [first, ...spring.map(String), '', second, ...summer.map(String)].join('\n');
  const [ofHeads, ofTitles] = [
    ['Electricity kWh', 'Gas kWh'],
    ['Electricity', 'Gas'],
  ] as const;
  test.each([
    ['side by side', ofHeads, beside('Date,Electricity kWh,,Month,Gas kWh', spring, summer)],
    ['side by side under titles', ofTitles, beside('Electricity,,,Gas,\nDate,kWh,,Date,kWh', spring, summer)],
    [
      'side by side without a gap',
      ofHeads,
      beside('Date,Electricity kWh,,Date,Gas kWh', spring, summer).replaceAll(',,', ','),
    ],
    ['one below the other', ofHeads, below('Date,Electricity kWh', 'Date,Gas kWh')],
    ['one below the other, dated by other words', ofHeads, below('Date,Electricity kWh', 'Reading,Gas kWh')],
    ['one below the other, the second by its title alone', ofTitles, below('Electricity\nDate,kWh', 'Gas')],
    ['side by side, each with two dates', ofHeads, beside('From,Electricity kWh,,From,Gas kWh', spring, summer)],
    ['one below the other under titles', ofTitles, below('Electricity\nDate,kWh', 'Gas\nDate,kWh')],
  ])('two tables %s are asked about, and each is read by its name', (_, names, text) => {
    expect(read(text).asked).toEqual(['sheet-tables-asked']);
    const series = names.map((sheet) => read(text, 'Europe/Berlin', { sheet }));
    expect(series.map((one) => [...one.asked, ...one.series])).toEqual([
      ['electricity import 2025-01-01 2025-03-02 480.00'],
      ['gas import 2025-04-01 2025-05-31 1260.00'],
    ]);
  });
  test('dates that stand twice on the right of their amounts are refused', () => {
    const text = [
      'Electricity kWh,Date,,Gas kWh,Date',
      ...spring.map(([day, v], i) => [v, day, '', 9, summer[i]![0]].join(',')),
    ];
    expect(read(text.join('\n')).asked).toContain('tables-beside');
  });
  test('a table that goes on beside itself, or is of the same days, is one', () => {
    const next = beside('Date,Electricity kWh,,Date,Electricity kWh', spring, summer);
    expect(read(next)).toMatchObject({ series: ['electricity import 2025-01-01 2025-05-31 1740.00'], asked: [] });
    const same = beside('Electricity,,,Gas,\nDate,kWh,,Date,kWh', spring, spring);
    expect(read(same).series).toHaveLength(2);
    const again = below('Date,Electricity kWh', 'Date,Electricity kWh');
    const remarked = again.replace(/\n\nDate.*\n/, '\nGas abgestellt\n');
    expect(read(remarked)).toMatchObject({ series: ['electricity import 2025-01-01 2025-05-31 1740.00'], asked: [] });
    expect(read(again)).toMatchObject({ series: ['electricity import 2025-01-01 2025-05-31 1740.00'], asked: [] });
  });
  test('the last reading of a bill beside the next one is no table of its own', () => {
    const bills = Array.from(
      { length: 6 },
      (_, i) => `${two(i + 1)}.2025;${1000 + 200 * i};${two(i + 2)}.2025;${1200 + 200 * i};200`,
    );
    expect(
      read(
        [
          'alt;;neu;;',
          'Datum;Stand;Datum;Stand;Strom kWh',
          ...bills.map((row) => row.replaceAll(/(\d\d)\.2025/g, '01.$1.2025')),
        ].join('\n'),
      ).asked,
    ).not.toContain('sheet-tables-asked');
  });

  test('rows of kinds across the months', () => {
    const across = MONTHS.map((i) => `${NAMES[i]}-25`).join(',');
    const row = (times: number) => MONTHS.map((i) => kWh(i) * times).join(',');
    expect(read(`,${across}\nElectricity (kWh),${row(1)}\nGas (kWh),${row(3)}`)).toEqual(
      understood([year('electricity'), year('gas', 3 * YEAR_SUM)]),
    );
  });

  test('a sheet of notes with a date is no data, and the name of a sheet is a title', () => {
    const book = writeWorkbook([
      {
        name: 'Notes',
        rows: [
          ['By hand', null],
          ['Boiler changed', { serial: serialOf('2025-03-03'), form: 'date' }],
        ],
      },
      {
        name: 'Gas',
        rows: [
          ['Month', 'kWh'],
          ...MONTHS.map((i) => [{ serial: serialOf(`2025-${two(i + 1)}-01`), form: 'date' } as const, kWh(i)]),
        ],
      },
    ]);
    expect(read(book, 'Europe/London', {}, 'book.xlsx')).toEqual(understood([year('gas')]));
  });
});

describe('words', () => {
  test.each([
    [
      'a bill with both readings, in German',
      'von;bis;Zählerstand alt;Zählerstand neu;Verbrauch m³;Zustandszahl;Brennwert;Verbrauch kWh\n01.01.2024;31.12.2024;10000;11500;1500;0,9612;11,412;16454\n01.01.2025;31.12.2025;11500;13020;1520;0,9612;11,430;16699',
      'gas import 2024-01-01 2026-01-01 33153.00',
    ],
    [
      'a gigacalorie is 1,163 kWh',
      `Mese;Calore (Gcal)\n${MONTHS.map((i) => `2025-${two(i + 1)};${kWh(i) / 100}`).join('\n')}`,
      `heat heat-output 2025-01-01 2026-01-01 ${(YEAR_SUM * 11.63).toFixed(2)}`,
    ],
    [
      'a comma in a German table is of decimals',
      'Ablesedatum;Wärmezähler (MWh)\n31.12.2023;120,412\n31.12.2024;134,905\n31.12.2025;148,660',
      'heat heat-output 2023-12-31 2025-12-31 28248.00',
    ],
    [
      'drawn active energy is electricity',
      `Monat;Wirkverbrauch (kWh)\n${MONTHS.map((i) => `2025-${two(i + 1)};${kWh(i)}`).join('\n')}`,
      year('electricity'),
    ],
    [
      'an energy and its year are a title',
      `Electricity kWh 2025\nMonth,Amount\n${MONTHS.map((i) => `2025-${two(i + 1)},${kWh(i)}`).join('\n')}`,
      year('electricity'),
    ],
    [
      'the name of a sensor says its energy',
      `entity_id,time,kWh\n${MONTHS.map((i) => `sensor.electricity_import,2025-${two(i + 1)},${kWh(i)}`).join('\n')}`,
      year('electricity'),
    ],
  ])('%s', (_, text, expected) => {
    expect(read(text)).toEqual(understood([expected]));
  });

  test('a comma that would leave next to nothing is asked about, in any language', () => {
    const lines = (own: string) => MONTHS.map((i) => `${own}2025-${two(i + 1)};1,${kWh(i)}`).join('\n');
    expect(read(`Monat;Strom (kWh)\n${lines('')}`).asked).toContain('decimal-asked');
    expect(read(`Tag;Month;Electricity (MWh)\n${lines('A;')}`).asked).toContain('decimal-asked');
  });

  test('standard cubic metres are of gas; a hundred cubic feet by any name', () => {
    const smc = read(`Mese;Consumo (Smc)\n${MONTHS.map((i) => `2025-${two(i + 1)};${kWh(i)}`).join('\n')}`);
    expect(smc).toEqual({ asked: ['calorific-assumed'], series: [year('gas', (YEAR_SUM * 39.5) / 3.6)] });
    const feet = read(
      'Read date,Gas meter (100s cu ft)\n15/01/2025,9870\n16/04/2025,9990\n15/07/2025,12',
      'Europe/London',
    );
    expect(feet.series).toEqual([`gas import 2025-01-15 2025-07-15 ${(142 * 2.83 * KWH_IN_M3).toFixed(2)}`]);
  });
});
