/** What portals, weather services and households write that must be read right or asked, one row a class. */
import { gzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { type IntakeChoices, LARGEST_EVIDENCE_BYTES } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { writeWorkbook } from './write-workbook.ts';

const GAS = { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 };

function read(text: string | Uint8Array, zone = 'Europe/London', choices: IntakeChoices = {}, fileName = 'a.csv') {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  const { preview } = readFile(fileName, bytes, choices, { zone, today: '2026-11-25', kWhPerUnit, gasVolume: GAS });
  return {
    asked: preview.remarks.filter((r) => r.weight !== 'note').map(({ code }) => code),
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.from} ${s.to} ${s.total.toFixed(2)}`),
    days: preview.series[0]?.days?.values.slice(0, 2).map((v) => v?.toFixed(2)),
    uses: preview.uses?.map(({ use }) => use),
  };
}

const START = Date.UTC(2025, 0, 1);
const iso = (minute: number) => new Date(START + minute * 60_000).toISOString();
const day = (i: number) => iso(i * 1440).slice(0, 10);
const lines = (head: string, count: number, row: (i: number) => string) =>
  [head, ...Array.from({ length: count }, (_, i) => row(i))].join('\n');
const MONTHS = Array.from({ length: 12 }, (_, i) => i);
const month = (i: number) => iso(0).slice(0, 5) + String(i + 1).padStart(2, '0');

test.each<[name: string, zone: string, text: string, series: readonly string[]]>([
  [
    'a factor per m³ is no amount, and its gas is not priced twice',
    'Europe/Paris',
    lines(
      'Date;Volume (m3);Coefficient de conversion (kWh/m3);Energie (kWh)',
      60,
      (i) => `${day(i)};3;11,2;${33 + (i % 3)}`,
    ),
    ['gas import 2025-01-01 2025-03-02 2040.00'],
  ],
  [
    // 100 m³ × 0.9612 × 11.412 kWh/m³ for each of 60 days
    'a calorific value in kWh and its correction are those of the file, by the day too',
    'Europe/Berlin',
    lines('Datum;Verbrauch Gas m³;Zustandszahl;Brennwert kWh/m³', 60, (i) => `${day(i)};${9 + (i % 3)};0,9612;11,412`),
    [`gas import 2025-01-01 2025-03-02 ${(600 * 0.9612 * 11.412).toFixed(2)}`],
  ],
  [
    'a title “Production” is a direction, and no name of a product',
    'Europe/Paris',
    `Relevé mensuel\nProduction\n${lines('Mois;kWh', 12, (i) => `${month(i)};${100 + (i % 3)}`)}`,
    ['electricity generation 2025-01-01 2026-01-01 1212.00'],
  ],
  [
    'what a column of panels made stays made, beside the number of the grid’s point too',
    'Europe/Paris',
    `Mois;Production photovoltaïque [kWh];PDL\n${MONTHS.map((i) => `${month(i)};${100 + (i % 3)};K-201`).join('\n')}`,
    ['electricity generation 2025-01-01 2026-01-01 1212.00'],
  ],
  [
    'a column that stands there twice is one record, below nought too',
    'Europe/Copenhagen',
    lines('Fra;Eksport kWh;Eksport kWh', 60, (i) => `${day(i)};-${3 + (i % 2)};-${3 + (i % 2)}`),
    ['electricity export 2025-01-01 2025-03-02 210.00'],
  ],
  [
    'gallons of propane are no water',
    'America/New_York',
    'Date,Propane delivered (gal),Price per gal\n2024-11-04,180,2.5\n2025-01-15,210,2.7\n2025-10-20,190,2.4\n',
    [`lpg import 2024-11-04 2025-10-20 ${(400 * 3.785411784 * kWhPerUnit.lpg.value).toFixed(2)}`],
  ],
  [
    'tenths of a degree, said by the line of the titles that explains the column',
    'Europe/Amsterdam',
    lines(
      '# TG : mean temperature (in 0.1 graden Celsius)\n# STN,YYYYMMDD,TG',
      60,
      (i) => `260,${day(i).replaceAll('-', '')},${40 + (i % 5)}`,
    ),
    ['outdoor-temperature weather 2025-01-01 2025-03-02 4.20'],
  ],
  [
    'a row of units below the headings, over the dates too',
    'Europe/Berlin',
    lines(
      'Datum;Netzbezug;Ins Netz eingespeist\n[dd.MM.yyyy];[Wh];[Wh]',
      60,
      (i) => `${day(i)};${4000 + (i % 5) * 10};${100 + (i % 7)}`,
    ),
    ['electricity import 2025-01-01 2025-03-02 241.20', 'electricity export 2025-01-01 2025-03-02 6.17'],
  ],
  [
    'a period in one cell goes before the date of the bill',
    'Europe/Paris',
    lines(
      'Date facture;Période;Électricité (kWh)',
      12,
      (i) => `2026-01-0${(i % 9) + 1};du 01/${month(i).slice(5)}/2025 au 28/${month(i).slice(5)}/2025;${200 + (i % 3)}`,
    ),
    ['electricity import 2025-01-01 2025-12-29 2412.00'],
  ],
  [
    'years by their number',
    'Europe/London',
    'Year,Gas kWh\n2022,15000\n2023,14200\n2024,14800\n',
    ['gas import 2022-01-01 2025-01-01 44000.00'],
  ],
  [
    'years across with words beside them, months down, and a mean left out',
    'Europe/London',
    `Month,Gas 2024 (kWh),Gas 2025 (kWh),Average (kWh)\n${MONTHS.map((i) => `${iso(i * 31 * 1440).slice(5, 7)},${100 + (i % 5)},${200 + (i % 4)},0`).join('\n')}`,
    ['gas import 2024-01-01 2026-01-01 3639.00'],
  ],
  [
    'a column of days says how long each period is and on which side of its date',
    'Europe/London',
    'Read date,Electricity used (kWh),Days\n2025-02-10,300,40\n2025-03-22,280,40\n2025-05-11,310,50\n',
    ['electricity import 2025-01-01 2025-05-11 890.00'],
  ],
  [
    'two rates side by side are of electricity',
    'Europe/Paris',
    lines('Date;Heures pleines (kWh);Heures creuses (kWh)', 60, (i) => `${day(i)};${5 + (i % 3)};${3 + (i % 2)}`),
    ['electricity import 2025-01-01 2025-03-02 360.00', 'electricity import 2025-01-01 2025-03-02 210.00'],
  ],
  [
    'what a tariff counts as produced is what was sent out',
    'Europe/Amsterdam',
    lines(
      'time,electricity consumed (kWh),electricity produced tariff 1 (kWh)',
      60,
      (i) => `${day(i)},${100 + 3 * i},${20 + 2 * i}`,
    ),
    ['electricity import 2025-01-01 2025-03-01 177.00', 'electricity export 2025-01-01 2025-03-01 118.00'],
  ],
  [
    'the whole house beside its heat pump and its car',
    'Europe/London',
    lines(
      'Date,House (kWh),Heat pump (kWh),Car charger (kWh)',
      60,
      (i) => `${day(i)},${20 + (i % 3)},${9 + (i % 4)},${i % 5}`,
    ),
    ['electricity import 2025-01-01 2025-03-02 1260.00', 'electricity heat-pump 2025-01-01 2025-03-02 630.00'],
  ],
  [
    'of highest, mean and lowest the mean, and codes of a weather service',
    'Europe/Paris',
    lines(
      'POSTE;AAAAMMJJ;RR;TN;TX;TM;SHK_TAG',
      60,
      (i) => `7;${day(i).replaceAll('-', '')};0.2;${i % 3};${8 + (i % 3)};${5 + (i % 3)};0`,
    ),
    ['outdoor-temperature weather 2025-01-01 2025-03-02 6.00'],
  ],
  [
    'amounts that fall from month to month are no counter',
    'Europe/London',
    lines('Month,Gas (therms)', 12, (i) => `${month(i)},${80 - i}`),
    [`gas import 2025-01-01 2026-01-01 ${((80 * 12 - 66) * 29.3071).toFixed(2)}`],
  ],
  [
    'text that a spreadsheet shall not take for a number',
    'Europe/London',
    lines('Meter,Date,Electricity (kWh)', 60, (i) => `="0123",="${day(i)}",="${9 + (i % 3)}"`),
    ['electricity import 2025-01-01 2025-03-02 600.00'],
  ],
  [
    'kWh an hour is power',
    'Europe/London',
    lines('Time,Electricity (kWh/h)', 96 * 30, (i) => `${iso(i * 15).slice(0, 16)},${1 + (i % 2)}`),
    ['electricity import 2025-01-01 2025-01-31 1080.00'],
  ],
  [
    'a running total of the month is no use of a day',
    'Europe/London',
    lines('Date,Electricity this month (kWh)', 90, (i) => `${day(i)},${Number(day(i).slice(8)) * 8}`),
    ['electricity import 2025-01-01 2025-04-01 720.00'],
  ],
  [
    'quarters by the names of their months',
    'Europe/London',
    'Period,Gas kWh\nJan - Mar 2025,5000\nApr - Jun 2025,1800\nJul - Sep 2025,700\nOct - Dec 2025,4300\n',
    ['gas import 2025-01-01 2026-01-01 11800.00'],
  ],
  [
    'days by their number in the year',
    'Europe/London',
    lines('Date,Electricity kWh', 60, (i) => `2025-${String(i + 1).padStart(3, '0')},${9 + (i % 3)}`),
    ['electricity import 2025-01-01 2025-03-02 600.00'],
  ],
  [
    'nanoseconds since 1970',
    'Europe/London',
    lines('time,electricity_wh', 24 * 20, (i) => `${START + i * 3_600_000}000000,${400 + (i % 3) * 100}`),
    ['electricity import 2025-01-01 2025-01-21 240.00'],
  ],
  [
    'what feels like the weather is none',
    'Europe/London',
    lines(
      'Time,Dew point (°C),Feels like (°C),Air (°C)',
      24 * 40,
      (i) => `${iso(i * 60).slice(0, 16)},1,2,${(i >> 4) % 7}`,
    ),
    ['outdoor-temperature weather 2025-01-01 2025-02-10 2.90'],
  ],
  [
    'hot water by its volume is water',
    'Europe/Berlin',
    lines('Datum;Warmwasser (m³)', 60, (i) => `${day(i)};${(0.1 + (i % 3) / 10).toFixed(1)}`),
    ['water import 2025-01-01 2025-03-02 12.00'],
  ],
])('%s', (_, zone, text, series) => {
  expect(read(text, zone)).toMatchObject({ asked: [], series });
});

test('what was made, beside the number of the grid’s point, may be all of it or what was sent out: that is asked', () => {
  const rows = `Mois;Production [kWh];PRM\n${MONTHS.map((i) => `${month(i)};${100 + (i % 3)};771`).join('\n')}`;
  expect(read(rows, 'Europe/Paris').asked).toEqual(['made-asked']);
  expect(read(rows, 'Europe/Paris', { role: 'generation' })).toMatchObject({
    asked: [],
    series: ['electricity generation 2025-01-01 2026-01-01 1212.00'],
  });
});

test('midnight after 23:30 of its own date is the end of that day', () => {
  const text = lines('Date,Half hour ending,Electricity (kWh)', 48 * 4, (i) => {
    const ends = iso((i + 1) * 30).slice(11, 16);
    return `${day(Math.floor(i / 48))},${ends},${ends === '00:00' ? 1 : 0.2}`;
  });
  expect(read(text)).toMatchObject({ asked: [], days: ['10.40', '10.40'] });
});

test('hours counted under a word that nobody knows', () => {
  const text = lines(
    'Data;Godzina;Energia elektr. [kWh]',
    24 * 60,
    (i) => `${day(Math.floor(i / 24))};${(i % 24) + 1};0,5`,
  );
  expect(read(text, 'Europe/Warsaw').days).toEqual(['12.00', '12.00']);
});

test('degree days, in headings or in titles, are refused as what they are', () => {
  const byDay = (head: string) => lines(head, 60, (i) => `${day(i)},${8 + (i % 5)}`);
  for (const head of [
    'Celsius-based heating degree days\nDate,HDD',
    'Date,Gradtage',
    'Date,DJU base 18',
    'Date,HDD 65F',
  ])
    expect(read(byDay(head)).asked).toEqual(['degree-days']);
  expect(read(byDay('Heating degree days of the town\nDate,Value')).series).toEqual([]);
});

test('the highest temperature of a day by itself is no weather', () => {
  expect(read(lines('Date,Max Temp (°C)', 60, (i) => `${day(i)},${8 + (i % 5)}`)).series).toEqual([]);
});

test('money in and out of an account is no energy', () => {
  const text = lines('Date,Description,Debit,Credit,Balance', 12, (i) => `${month(i)}-05,Energy,${90 + i},,${900 - i}`);
  expect(read(text).series).toEqual([]);
});

test('hours of weather need no clock in Europe, where energy is asked for it, nor overseas', () => {
  const text = (heading: string) => lines(`Time,${heading}`, 24 * 40, (i) => `${iso(i * 60).slice(0, 16)},${i % 7}`);
  expect(read(text('Temperature (°C)'), 'Europe/Berlin').asked).toEqual([]);
  expect(read(text('Electricity (kWh)'), 'Europe/Berlin').asked).toEqual(['clock-assumed']);
  expect(read(text('Temperature (°C)'), 'America/Chicago').asked).toEqual(['clock-assumed']);
});

test('a packed single file is unpacked and read', () => {
  const text = lines('Date,Electricity (kWh)', 60, (i) => `${day(i)},${9 + (i % 3)}`);
  const packed = gzipSync(new TextEncoder().encode(text));
  expect(read(packed, 'Europe/London', {}, 'meter.csv.gz')).toMatchObject({
    asked: [],
    series: ['electricity import 2025-01-01 2025-03-02 600.00'],
  });
  expect(read(packed.subarray(0, 40), 'Europe/London', {}, 'meter.csv.gz').asked).toEqual(['file-foreign']);
  const twice = new Uint8Array([...packed, ...gzipSync(new TextEncoder().encode('\n2025-03-02,9\n'))]);
  expect(read(twice, 'Europe/London', {}, 'meter.csv.gz').series).toEqual([
    'electricity import 2025-01-01 2025-03-03 609.00',
  ]);
});

test('a packed file or workbook in which one bit has turned is damaged, and none of its numbers is read', () => {
  const text = lines('Date,Electricity (kWh)', 400, (i) => `${day(i)},${9 + ((i * 7919) % 1000) / 100}`);
  const table = writeWorkbook([
    {
      name: 'Use',
      rows: [['Date', 'kWh'], ...Array.from({ length: 400 }, (_, i) => [day(i), 9 + ((i * 7919) % 1000) / 100])],
    },
  ]);
  const alone = gzipSync(new TextEncoder().encode(text));
  const archive = zipSync({ 'meter.csv': new TextEncoder().encode(text) });
  for (const [name, whole] of Object.entries({ 'a.xlsx': table, 'a.csv.gz': alone, 'a.zip': archive })) {
    const wanted = read(whole, 'Europe/London', {}, name).series;
    expect(wanted).toHaveLength(1);
    for (let i = 1; i < 40; i++) {
      const turned = whole.slice();
      turned[Math.floor((i * whole.length) / 40)]! ^= 1 << (i % 8);
      const { series } = read(turned, 'Europe/London', {}, name);
      expect([[], wanted]).toContainEqual(series);
    }
  }
});

test('a counter that is read at uneven times is shared out over the hours', () => {
  const gaps = [30, 61, 300, 59, 600, 7];
  const text = lines('entity,electricity total (kWh),time', 6000, (i) => {
    const seconds = Math.floor(i / 6) * 1057 + gaps.slice(0, i % 6).reduce((sum, one) => sum + one, 0);
    return `meter,${(1000 + (0.4 * seconds) / 3600).toFixed(5)},${new Date(START + seconds * 1000).toISOString()}`;
  });
  const { asked, days } = read(text);
  expect(asked).toEqual([]);
  for (const kWh of days!) expect(Number(kWh)).toBeCloseTo(9.6, 1);
});

test('gallons in Britain may be either, and a tank that empties is no delivery', () => {
  const text = (head: string) => `Date,${head}\n2024-11-04,900\n2025-02-10,700\n2025-10-20,500\n`;
  expect(read(text('Kerosene (gallons)')).asked).toEqual(['unit-guessed']);
  expect(read(text('Litres in tank')).series).toEqual([]);
});

test('a temperature that stays as warm as a room is asked about', () => {
  const text = lines('time,temperature', 24 * 40, (i) => `${iso(i * 60)},${19 + ((i >> 5) % 4)}`);
  expect(read(text).asked).toEqual(['weather-indoors-asked']);
});

test('what loggers write where there is no value is none', () => {
  const text = lines('Time,Electricity kWh', 24 * 30, (i) => `${iso(i * 60).slice(0, 16)},${i % 30 ? 0.5 : -9999}`);
  expect(read(text)).toMatchObject({ asked: [], series: ['electricity import 2025-01-01 2025-01-31 348.00'] });
});

test('the net of days and months cannot be told apart again', () => {
  const net = (head: string) => lines(`Date,${head}`, 60, (i) => `${day(i)},${(i % 5) - 2}`);
  expect(read(net('Net electricity (kWh)')).asked).toEqual(['net-of-days']);
  expect(read(net('Electricity (kWh)')).asked).toContain('net-asked');
  expect(read(net('Electricity (kWh)'), 'Europe/London', { net: true }).asked).toEqual(['net-of-days']);
  const months = lines('Month,Net electricity (kWh)', 12, (i) => `${month(i)},${150 - 40 * (i % 7)}`);
  expect(read(months).asked).toEqual(['net-of-days']);
});

test('one appliance is not taken for the home, nor an estimate for what was measured', () => {
  const text = lines('Date,EV charger electricity (kWh)', 60, (i) => `${day(i)},${9 + (i % 3)}`);
  expect(read(text).asked).toEqual(['part-asked']);
  expect(read(text, 'Europe/London', { role: 'import' }).asked).toEqual([]);
  expect(read(text, 'Europe/London', { beside: 'aside' }).asked).toEqual([]);
  const both = lines('Date,Gas estimate (kWh),Gas actual (kWh)', 60, (i) => `${day(i)},50,${39 + (i % 3)}`);
  expect(read(both)).toMatchObject({ asked: [], series: ['gas import 2025-01-01 2025-03-02 2400.00'] });
});

test('a heading that says more than we know is asked about, one that only says how it was metered is not', () => {
  const days = (head: string) => lines(`Date,${head}`, 60, (i) => `${day(i)},${9 + (i % 3)}`);
  for (const more of ['Electricity line loss (kWh)', 'Stromersparnis Verlust (kWh)', 'Gas allowance (kWh)'])
    expect(read(days(more)).asked).toEqual(['word-asked']);
  const chosen: IntakeChoices[] = [{ role: 'import' }, { columns: { value: 1 } }, { beside: 'aside' }];
  for (const choices of chosen)
    expect(read(days('Electricity line loss (kWh)'), 'Europe/London', choices).asked).toEqual([]);
  for (const plain of [
    'Total mains electricity used this day (kWh)',
    'Gemessener Stromverbrauch (kWh)',
    'Gaz naturel mesuré (kWh)',
  ])
    expect(read(days(plain)).asked).toEqual([]);
});

test('of a weather service every column is accounted for', () => {
  const text = lines('date,tavg,tmin,tmax,prcp,wspd,note', 60, (i) => `${day(i)},${5 + (i % 3)},1,9,0.2,11,ok`);
  const left = ['weather', 'weather', 'weather', 'weather', 'words'];
  expect(read(text)).toMatchObject({ asked: [], uses: ['stamp', 'value', ...left] });
});

test('the highest power beside what was sent out is no use of the home', () => {
  const heads = ['Spidsbelastning (kW)', 'Puissance de pointe (kW)', 'Potenza di picco (kW)', 'Peak load (kW)'];
  for (const head of heads)
    expect(
      read(lines(`Date;Export;${head};Unit`, 60, (i) => `${day(i)};${9 + (i % 3)};${3 + (i % 2)};kWh`)).series,
    ).toEqual(['electricity export 2025-01-01 2025-03-02 600.00']);
});

/** A record that goes from one length of readings to another, with its kWh by the day. */
function changing(first: number, then: number, days: number, side: 'start' | 'end', isPower = false): string {
  const rows: string[] = [];
  for (const [from, step] of [
    [0, first],
    [days * 1440, then],
  ] as const)
    for (let minute = from; minute < from + days * 1440; minute += step) {
      const kW = 0.3 + Math.floor((minute % 1440) / 60) / 40;
      rows.push(`${iso(minute + (side === 'end' ? step : 0))},${(isPower ? kW : (kW * step) / 60).toFixed(5)}`);
    }
  return [
    `${side === 'end' ? 'Interval end' : 'Interval start'},Electricity (${isPower ? 'kW' : 'kWh'})`,
    ...rows,
  ].join('\n');
}
/** Of any day of it. */
const KWH = Array.from({ length: 24 }, (_, hour) => 0.3 + hour / 40).reduce((sum, kW) => sum + kW, 0);

test.each([
  [60, 15, 'start', false],
  [60, 15, 'end', false],
  [60, 15, 'end', true],
  [30, 15, 'start', false],
  [30, 15, 'start', true],
  [15, 60, 'end', false],
] as const)('readings of %i minutes, then of %i, %s stamped, power %s', (first, then, side, isPower) => {
  const text = changing(first, then, 30, side, isPower);
  const newestFirst = [text.split('\n')[0], ...text.split('\n').slice(1).reverse()].join('\n');
  for (const one of [text, newestFirst]) {
    const { asked, series, days } = read(one, 'UTC');
    expect(asked).toEqual([]);
    expect(series).toEqual([`electricity import 2025-01-01 2025-03-02 ${(60 * KWH).toFixed(2)}`]);
    expect(days).toEqual([KWH.toFixed(2), KWH.toFixed(2)]);
  }
});

test('half-hours of which every second is missing for a while are no hours', () => {
  const rows = changing(30, 30, 30, 'start').split('\n');
  const thinned = rows.filter((_, i) => i < 400 || i > 1000 || i % 2 === 1);
  const { series } = read(thinned.join('\n'), 'UTC');
  expect(Number(series[0]!.split(' ')[4])).toBeLessThan(60 * KWH - 80);
});

test('a packed file that is too large is refused for its size, and named where another is read', () => {
  // Digits that do not pack away to next to nothing, as a bomb's would.
  const large = new Uint8Array(LARGEST_EVIDENCE_BYTES + 1).map((_, i) => 48 + (((i * 7919) >> 5) % 10));
  expect(read(gzipSync(large), 'UTC', {}, 'a.csv.gz').asked).toEqual(['file-too-large']);
  const small = new TextEncoder().encode(changing(30, 30, 3, 'start'));
  const both = readFile(
    'a.zip',
    zipSync({ 'large.csv': large, 'small.csv': small }),
    {},
    {
      zone: 'UTC',
      today: '2026-11-25',
      kWhPerUnit,
      gasVolume: GAS,
    },
  );
  const { weight, foundTold } = both.preview.remarks.find(({ code }) => code === 'file-too-large')!;
  expect([weight, foundTold, both.preview.series.length]).toEqual([
    'note',
    { code: 'so-much-of', data: { amount: 17, unit: 'MB (large.csv)' } },
    1,
  ]);
});

describe('the day of a stamp in a table of days', () => {
  const used = (i: number) => 8 + (i % 7);
  const from = (first: string, count: number) =>
    Array.from({ length: count }, (_, i) => new Date(Date.parse(first) + i * 86_400_000).toISOString().slice(0, 10));
  const table = (heading: string, stamps: readonly string[]) =>
    `${heading};Stromverbrauch kWh\n${stamps.map((stamp, i) => `${stamp};${used(i)}`).join('\n')}`;
  const spanOf = (text: string) => read(text).series.map((one) => one.split(' ').slice(2, 4).join(' '));
  const APRIL = ['2025-04-01 2025-05-01'];

  test.each([
    ['the last second', 'Datum', from('2025-04-01', 30).map((day) => `${day} 23:59:59`)],
    ['the last minute', 'Datum', from('2025-04-01', 30).map((day) => `${day} 23:59`)],
    ['the midnight behind it', 'Zeitstempel (Ende)', from('2025-04-02', 30).map((day) => `${day} 00:00`)],
    ['its beginning in the evening before', 'Från Tid', from('2025-03-31', 30).map((day) => `${day} 18:00:01`)],
    ['noon', 'Zeitstempel', from('2025-04-01', 30).map((day) => `${day} 12:00`)],
  ])('%s', (_, heading, stamps) => {
    expect(spanOf(table(heading, stamps))).toEqual(APRIL);
  });

  test('midnights of the home in UTC, on both sides of a change of the clocks', () => {
    const stamps = from('2025-03-15', 40).map((day, i) => `${day} ${i < 15 ? 23 : 22}:00`);
    expect(spanOf(table('Zeitstempel', stamps))).toEqual(['2025-03-16 2025-04-25']);
  });

  test.each([
    ['one evening hour', from('2025-04-01', 30).map((day) => `${day} 20:00`)],
    ['dates from the second of a month to the first of another', from('2025-04-02', 30)],
  ])('%s may begin or end it: asked', (_, stamps) => {
    expect(read(table('Zeitstempel', stamps)).asked).toContain('stamp-side-asked');
  });

  test('a counter that is read late in the evening closes that day', () => {
    const stamps = from('2025-03-31', 31);
    const rows = stamps.map((day, i) => `${day} 23:59;${1000 + 9 * i + (i % 3)}`);
    expect(spanOf(`Datum;Zählerstand Strom (kWh)\n${rows.join('\n')}`)).toEqual(APRIL);
  });
});

test('a record that is nought in every night and every evening is asked about, whatever it is called', () => {
  const rows = Array.from({ length: 240 }, (_, i) => {
    const stamp = new Date(Date.UTC(2025, 2, 1, i)).toISOString().slice(0, 16).replace('T', ' ');
    const hour = i % 24;
    return `${stamp};${hour > 8 && hour < 17 ? 1.2 : 0}`;
  });
  expect(read(`Fra;Kanal 2 (kWh)\n${rows.join('\n')}`).asked).toContain('made-by-day-asked');
});

test('a weight that one piece has is no unit of the column that counts them', () => {
  expect(read('Fecha;Bombonas 12,5 kg\n05/01/2025;2\n11/02/2025;3\n02/05/2025;1\n04/11/2025;2').asked).toContain(
    'unit-guessed',
  );
});

test('dates with gaps in them, and their parts in Finnish', () => {
  expect(read('Datum;Elektřina spotřeba (kWh)\n1. 1. 2025;8\n2. 1. 2025;9\n3. 1. 2025;7\n4. 1. 2025;7').series).toEqual(
    ['electricity import 2025-01-01 2025-01-05 31.00'],
  );
  expect(read('Vuosi;Kk;Pv;Sähkö (kWh)\n2025;1;1;8\n2025;1;2;9\n2025;1;3;7\n2025;1;4;7').series).toEqual([
    'electricity import 2025-01-01 2025-01-05 31.00',
  ]);
});

test.each([
  'Estimé',
  'Estimada',
  'stimata',
  'Geschat',
  'Ersatzwert',
  'Estimeret',
  'szacunkowy',
  'odhad',
  'Arvioitu',
  'Skønnet',
  'Estimated reading',
])('a value marked “%s” counts as estimated, and others do not', (mark) => {
  const rows = Array.from(
    { length: 20 },
    (_, i) => `2025-01-${String(i + 1).padStart(2, '0')};${8 + (i % 5)};${i === 5 ? mark : 'Gemessen'}`,
  );
  const bytes = new TextEncoder().encode(`Datum;Stromverbrauch kWh;Status\n${rows.join('\n')}`);
  const { preview } = readFile(
    'a.csv',
    bytes,
    {},
    { zone: 'Europe/Berlin', today: '2026-11-25', kWhPerUnit, gasVolume: GAS },
  );
  expect(preview.series.map((s) => s.estimatedCount)).toEqual([1]);
});

test('readings behind a transformer, in a title or in a column, are refused by their factor', () => {
  const rows = '01.01.2025;1200\n01.02.2025;1231\n15.03.2025;1258';
  expect(read(`Wandlerfaktor 30\nDatum;Zählerstand Strom kWh\n${rows}`).asked).toContain('readings-times');
  expect(read(`Wandlerfaktor 1\nDatum;Zählerstand Strom kWh\n${rows}`).asked).not.toContain('readings-times');
  const beside = rows.replaceAll(/$/gm, ';10');
  expect(read(`Date;Index électricité (kWh);Coefficient de lecture\n${beside}`).asked).toContain('readings-times');
});

test('a footnote behind a number or a month, and “about” before a number, take no value away', () => {
  const rows = ['Jan 2025;310', 'Feb 2025 *;290', 'Mär 2025;280¹', 'Apr 2025;~ 210', 'Mai 2025;ca. 150'];
  expect(read(`Monat;Stromverbrauch kWh\n${rows.join('\n')}`).series).toEqual([
    'electricity import 2025-01-01 2025-06-01 1240.00',
  ]);
});

test('hours as they are written in Germany, Denmark and on the day the clocks go back', () => {
  const hours = Array.from({ length: 48 }, (_, i) => [i < 24 ? '27' : '28', i % 24] as const);
  const sum = 'electricity import 2025-09-27 2025-09-29 48.00';
  const table = (stamp: (day: string, hour: number) => string) =>
    read(`Beginn;Strom kWh\n${hours.map(([day, hour]) => `${stamp(day, hour)};1`).join('\n')}`, 'Europe/Berlin').series;
  expect(table((day, hour) => `${day}.09.2025 ${hour} Uhr`)).toEqual([sum]);
  expect(table((day, hour) => `${day}-09-2025 kl. ${String(hour).padStart(2, '0')}.00`)).toEqual([sum]);
  const names = ['00', '01', '2A', '2B', ...Array.from({ length: 21 }, (_, i) => String(i + 3).padStart(2, '0'))];
  expect(
    read(`Datum;Beginn;Strom kWh\n${names.map((hour) => `26.10.2025;${hour}:00;1`).join('\n')}`, 'Europe/Berlin')
      .series,
  ).toEqual(['electricity import 2025-10-26 2025-10-27 25.00']);
});

test('power with th and el is the heat pump’s heat and what it draws', () => {
  const rows = Array.from(
    { length: 48 },
    (_, i) => `2025-02-0${1 + Math.floor(i / 24)} ${String(i % 24).padStart(2, '0')}:00;4,0;1,2`,
  );
  expect(
    read(`Zeit;Leistung th (kW);Leistung el (kW)\n${rows.join('\n')}`).series.map((one) =>
      one.split(' ').slice(0, 2).join(' '),
    ),
  ).toEqual(['heat heat-output', 'electricity heat-pump']);
});

test.each([
  ['Zählerstand Verbrauch kWh', 'Zählerstand Einspeisung kWh'],
  ['stand_verbruik_kwh', 'stand_teruglevering_kwh'],
  ['Index consommation kWh', 'Index injection kWh'],
])('of two counters, “%s” and “%s”, neither is left out', (drawn, sent) => {
  const rows = Array.from(
    { length: 31 },
    (_, i) => `2025-01-${String(i + 1).padStart(2, '0')};${1000 + 8 * i};${500 + 3 * i}`,
  );
  expect(read(`Datum;${drawn};${sent}\n${rows.join('\n')}`).series).toEqual([
    'electricity import 2025-01-01 2025-01-31 240.00',
    'electricity export 2025-01-01 2025-01-31 90.00',
  ]);
});

test('gas by its upper heat value is read, and the same by its lower one is not', () => {
  const rows = ['janvier', 'février', 'mars'].map((month, i) => `${month} 2025;${1200 - 100 * i};${1081 - 90 * i}`);
  expect(read(`Mois;Gaz kWh PCS;Gaz kWh PCI\n${rows.join('\n')}`, 'Europe/Paris').series).toEqual([
    'gas import 2025-01-01 2025-04-01 3300.00',
  ]);
});

test('a price that nobody pays shows a unit that is another', () => {
  const bottles = ['2025-09-10,4,320.00', '2025-12-01,6,480.00', '2026-02-12,6,480.00'];
  const ofBottles = ['Date,47 kg propane cylinders,Cost (£)', ...bottles].join('\n');
  expect(read(ofBottles).asked).toEqual(['unit-guessed']);
  expect(read(ofBottles, 'Europe/London', { unit: 'litre' }).asked).toEqual([]);
  // The same gas in litres at 62 p, a year's bills with their standing charge, and a home that stood empty at 53 p a day.
  const litres = bottles.map((row) =>
    row.replace(/,(\d),.*/, (_, n: string) => `,${Number(n) * 92},${Number(n) * 57}`),
  );
  expect(read(['Date,Propane (litres),Cost (£)', ...litres].join('\n')).asked).toEqual([]);
  const asked = (used: (i: number) => number, pounds = (kWh: number) => 16 + 0.27 * kWh) =>
    read(lines('Month,Electricity (kWh),Cost (£)', 12, (i) => `${month(i)},${used(i)},${pounds(used(i)).toFixed(2)}`))
      .asked;
  expect(asked((i) => 200 + 10 * (i % 5))).toEqual([]);
  expect(asked((i) => 7 + (i % 2))).toEqual([]);
  // Wh under the name of kWh, of a very large home.
  expect(
    asked(
      (i) => 15_000 + 10 * (i % 5),
      (kWh) => 0.0003 * kWh,
    ),
  ).toEqual(['unit-price-asked']);
});
