/** What files of Britain, Ireland, America, Australia and New Zealand say in shapes of their own, spreadsheets between. */
import { expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const GAS = { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 };
const KWH_PER_M3 = (1.02264 * 39.5) / 3.6;
/** 1,036 BTU (U.S. Energy Information Administration, heat content of natural gas consumed, 2025), 3412.14 BTU in a kWh. */
const KWH_PER_AMERICAN_FT3 = 1036 / 3412.14;

function read(lines: readonly string[], zone = 'Europe/London', choices: IntakeChoices = {}) {
  const bytes = new TextEncoder().encode(lines.join('\n'));
  const { preview } = readFile('a.csv', bytes, choices, { zone, today: '2026-11-25', kWhPerUnit, gasVolume: GAS });
  return {
    asked: preview.remarks.filter((r) => r.weight !== 'note').map(({ code }) => code),
    noted: preview.remarks.filter((r) => r.weight === 'note').map(({ code }) => code),
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.total.toFixed(1)}`),
    from: preview.series[0]?.from,
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const DAYS = Array.from({ length: 60 }, (_, i) => new Date(Date.UTC(2025, 0, 3 + i)).toISOString().slice(0, 10));
const OF_DAYS = DAYS.map((_, i) => 8 + ((i * 7) % 23) / 4);
const slashed = (day: string) => day.split('-').reverse().join('/');

/** Rows of local days about the end of summer time, each by its clock; every value another one. */
function autumn(days: readonly string[], doubled: string, hour: number, minutes: number) {
  const clocks = Array.from({ length: 1440 / minutes }, (_, i) => i * minutes);
  const inHour = clocks.filter((at) => Math.floor(at / 60) === hour);
  const two = (n: number) => String(n).padStart(2, '0');
  const stamps = days.flatMap((day) =>
    (day === doubled
      ? [...clocks.filter((at) => at < (hour + 1) * 60), ...inHour, ...clocks.filter((at) => at >= (hour + 1) * 60)]
      : clocks
    ).map((at) => `${day} ${two(Math.floor(at / 60))}:${two(at % 60)}`),
  );
  const values = stamps.map((_, i) => 0.2 + ((i * 37) % 101) / 1000);
  return { rows: stamps.map((stamp, i) => `${stamp},${values[i]!.toFixed(3)}`), total: sum(values).toFixed(1) };
}

const BRITISH = ['2025-10-24', '2025-10-25', '2025-10-26', '2025-10-27'];
const AMERICAN = ['2025-10-31', '2025-11-01', '2025-11-02', '2025-11-03'];
const twice = (rows: readonly string[]) => rows.flatMap((row) => [row, row]);

test.each([
  ['each row at once', (rows: string[]) => twice(rows)],
  ['each row thrice', (rows: string[]) => rows.flatMap((row) => [row, row, row])],
  ['from the newest', (rows: string[]) => twice(rows).reverse()],
  ['the file behind itself', (rows: string[]) => [...rows, ...rows]],
  ['the hour only', (rows: string[]) => rows.flatMap((row) => (/26 01:/.test(row) ? [row, row] : [row]))],
])('rows that stand twice count once in the doubled hour too: %s', (_, written) => {
  const { rows, total } = autumn(BRITISH, '2025-10-26', 1, 30);
  const half = read(['Start,Electricity used (kWh)', ...written(rows)], 'Europe/London', { clock: 'local' });
  expect(half.series).toEqual([`electricity import ${total}`]);
  expect(half.noted).not.toContain('duplicate-different');
  const hours = autumn(AMERICAN, '2025-11-02', 1, 60);
  const ofHours = read(['Start,Electricity used (kWh)', ...written(hours.rows)], 'America/Chicago', { clock: 'local' });
  expect(ofHours.series).toEqual([`electricity import ${hours.total}`]);
  expect(ofHours.noted).not.toContain('duplicate-different');
});

test('dates that a spreadsheet turned are turned back where the rows tell; dates of two forms that are right stay', () => {
  const turned = DAYS.map((day, i) => {
    const [year, month, date] = day.split('-');
    return `${Number(date) <= 12 ? `${year}-${date}-${month}` : slashed(day)},${OF_DAYS[i]}`;
  });
  const found = read(['Date,Electricity kWh', ...turned]);
  expect(found.noted).toContain('dates-turned');
  expect(found.noted).not.toContain('not-in-order');
  expect(found.series).toEqual([`electricity import ${sum(OF_DAYS).toFixed(1)}`]);
  // In the order of what they use nothing tells.
  const byUse = turned.toSorted((a, b) => Number(a.split(',')[1]) - Number(b.split(',')[1]));
  expect(read(['Date,Electricity kWh', ...byUse]).asked).toContain('dates-turned-maybe');
  const bills = DAYS.filter((_, i) => i % 4 === 0).map((day, i) => [day, DAYS[i * 4 + 3]!, 20 + (i % 5)] as const);
  const turn = (day: string) => day.replace(/^(\d+)-(\d+)-(0\d|1[0-2])$/, '$1-$3-$2');
  const written = (day: string) => (turn(day) === day && Number(day.slice(8)) > 12 ? slashed(day) : turn(day));
  const both = bills.map(([from, to, kWh]) => `${written(from)},${written(to)},${kWh}`);
  const ofBills = read(['From,To,Electricity kWh', ...both], 'Europe/London', { toInclusive: true });
  expect(ofBills.series).toEqual([`electricity import ${sum(bills.map(([, , kWh]) => kWh)).toFixed(1)}`]);
  const mixed = DAYS.map((day, i) => `${i % 2 ? day : slashed(day)},${OF_DAYS[i]}`);
  expect(read(['Date,Electricity kWh', ...mixed])).toMatchObject({
    asked: [],
    noted: [],
    series: [`electricity import ${sum(OF_DAYS).toFixed(1)}`],
  });
});

test('of a table of sensors the counter is differenced, the temperature is not, and its power is the same use', () => {
  let counter = 900;
  const rows = Array.from({ length: 24 * 12 }, (_, i) => {
    const at = new Date(Date.UTC(2025, 0, 10, i)).toISOString();
    const watts = 300 + ((i * 53) % 400);
    counter += watts / 1000;
    return [
      `sensor.mains_energy,${counter.toFixed(3)},kWh,${at}`,
      `sensor.mains_power,${watts},W,${at}`,
      `sensor.outdoor_temperature,${(4 + (i % 7) / 2).toFixed(1)},°C,${at}`,
    ];
  });
  const found = read(['entity_id,state,unit_of_measurement,last_updated', ...rows.flat()]);
  const used = sum(rows.slice(1).map((row) => Number(row[1]!.split(',')[1]) / 1000));
  expect(found.series[0]).toBe(`electricity import ${used.toFixed(1)}`);
  expect(found.series[1]).toMatch(/^outdoor-temperature weather 5\.[45]$/);
  expect(found.series).toHaveLength(2);
});

test('an estimate above the reading that follows was too high; a note of a new meter makes no counter turn over', () => {
  const estimated = ['13/01/2025,5000,A', '14/02/2025,5300,E', '14/03/2025,5500,E', '15/04/2025,5400,A'];
  expect(read(['Date,Electricity reading kWh,Type', ...estimated])).toMatchObject({
    asked: [],
    series: ['electricity import 400.0'],
  });
  const rows = (note: string) => [
    '13/01/2025,98712,',
    '14/02/2025,99012,',
    `20/02/2025,120,${note}`,
    '14/03/2025,330,',
  ];
  const heading = 'Date,Electricity reading kWh,Note';
  expect(read([heading, ...rows('')]).series).toEqual(['electricity import 1618.0']);
  expect(read([heading, ...rows('smart meter fitted')]).series).toEqual(['electricity import 510.0']);
});

test('a first row whose date cannot be read is no row of headings', () => {
  const rows = ['"Jan 2025 (from 14th)",310', 'Feb 2025,500', 'Mar 2025,420', 'Apr 2025,300'];
  const found = read(['Month,Electricity kWh', ...rows]);
  expect(found.series).toEqual(['electricity import 1220.0']);
  expect(found.noted).toContain('date-unreadable');
});

test.each([
  ['Gas meter (ft3 x100)', [5110, 5210], 100 * 100 * KWH_PER_AMERICAN_FT3, 'calorific-assumed'],
  ['Gas meter reading (Mcf)', [51, 61], 10 * 1000 * KWH_PER_AMERICAN_FT3, 'calorific-assumed'],
  ['Electricity reading (kWh x10)', [4510, 4610], 1000, undefined],
  ['Gas meter reading (MMBtu)', [151, 161], 10 * 293.071, undefined],
  ['Gas meter reading (kBtu)', [151_000, 161_000], 10_000 * 0.293071, undefined],
] as const)('%s counts what its heading says', (heading, [first, last], kWh, asked) => {
  const middle = (first + last) / 2;
  const rows = [`2025-01-13,${first}`, `2025-02-14,${middle}`, `2025-04-15,${last}`];
  const found = read([`Reading date,${heading}`, ...rows], 'America/New_York');
  expect(found.asked.filter((code) => code !== 'carrier-guessed')).toEqual(asked ? [asked] : []);
  expect(Number(found.series[0]?.split(' ')[2]) / kWh).toBeCloseTo(1, 2);
});

const BILLS = [120, 96, 41].map((ccf, m) => `0${m + 1}/01/2025,0${m + 1}/28/2025,${ccf}`);
const KWH_PER_THERM = 29.3071;
test.each<[string, string, string, string[], number]>([
  ['of an American home', 'America/Denver', 'Gas (CCF)', BILLS, 100 * KWH_PER_AMERICAN_FT3],
  [
    'paid in dollars',
    'Europe/London',
    'Gas (CCF),Total ($)',
    BILLS.map((row) => `${row},80`),
    100 * KWH_PER_AMERICAN_FT3,
  ],
  ['of a British home', 'Europe/London', 'Gas (hundred cubic feet)', BILLS, 2.83 * KWH_PER_M3],
  [
    'with its therms',
    'America/Denver',
    'Gas (CCF),Therm factor',
    BILLS.map((row) => `${row},1.042`),
    1.042 * KWH_PER_THERM,
  ],
  [
    'with its BTU',
    'Europe/London',
    'Gas (CCF),Btu per cubic foot',
    BILLS.map((row) => `${row},1042`),
    1.042 * KWH_PER_THERM,
  ],
])('a hundred cubic feet of gas %s have the energy of their country', (_, zone, head, rows, kWh) => {
  const found = read([`Start Date,End Date,${head}`, ...rows], zone, { dayFirst: false });
  const isSaid = /Therm|Btu/.test(head);
  expect(found.asked.includes('calorific-assumed')).toBe(!isSaid);
  expect(Number(found.series[0]?.split(' ')[2]) / (257 * kWh)).toBeCloseTo(1, 3);
});

test('a log in °F and BTU an hour is a heat pump’s: its heat, its electricity and its flow', () => {
  const rows = Array.from(
    { length: 48 },
    (_, i) => `2025-01-${13 + Math.floor(i / 24)} ${i % 24}:00,41.0,95.0,2.0,20000`,
  );
  const found = read(['Time,OAT (°F),LWT (°F),Power (kW),Capacity (BTU/h)', ...rows], 'America/Chicago', {
    clock: 'local',
    stamp: 'start',
  });
  expect(found.series).toEqual([
    'outdoor-temperature weather 5.0',
    'flow-temperature machine 35.0',
    'electricity heat-pump 96.0',
    'heat heat-output 281.3',
  ]);
});

test('registers: B1 is sent out across the day too, a peak is one, rows may stand twice, and numbers of meters tell', () => {
  const slots = Array.from({ length: 48 }, (_, i) => `TP${i + 1}`);
  const across = DAYS.flatMap((day) =>
    (['E1', 'B1', 'K1'] as const).map(
      (code, k) => `${code},${day},${slots.map((_, i) => (0.1 + k / 10 + (i % 5) / 100).toFixed(2))}`,
    ),
  );
  const { series } = read([`Register,Date,${slots}`, ...across], 'Australia/Brisbane');
  expect(series.map((one) => one.split(' ').slice(0, 2).join(' '))).toEqual([
    'electricity import',
    'electricity export',
  ]);
  const ofDay = (name: string, kWh: number) =>
    DAYS.map((day, i) => `${slashed(day)},${name},${(kWh + (i % 6) / 9).toFixed(2)}`);
  const peaks = [...ofDay('Peak Register', 2), ...ofDay('Day Register', 5), ...ofDay('Peak Demand kW', 4)];
  expect(read(['Date,Register,Electricity kWh', ...twice(peaks)]).series).toHaveLength(2);
  const supplies = DAYS.flatMap((day, i) => [
    `1200012345678,${day},${5 + (i % 7)}`,
    `1200098765432,${day},${2 + (i % 5)}`,
  ]);
  expect(read(['MPAN,Date,Electricity kWh', ...supplies]).series).toHaveLength(2);
});

test('beside what was used the highest and lowest of a day are passed over; what is left of a credit is no use', () => {
  const rows = DAYS.map((day, i) => `${day},${OF_DAYS[i]},${60 + (i % 9)},${40 + (i % 7)}`);
  const found = read(['Date,Electricity kWh,High Temp (°F),Low Temp (°F)', ...rows], 'America/Chicago');
  expect(found.series).toContain(`electricity import ${sum(OF_DAYS).toFixed(1)}`);
  const left = DAYS.map((day, i) => `${day},${900 - i * 12.5}`);
  expect(read(['Date,Balance on meter (kWh)', ...left]).series).toEqual([]);
});

test('a period in one cell is read in the order in which none ends before it begins', () => {
  const rows = [
    '1/3/2025 - 2/1/2025,600',
    '2/2/2025 - 3/3/2025,580',
    '3/4/2025 - 4/2/2025,510',
    '4/3/2025 - 5/2/2025,430',
  ];
  const found = read(['Service dates,Electricity kWh', ...rows], 'America/New_York', { toInclusive: true });
  expect(found).toMatchObject({ asked: [], series: ['electricity import 2120.0'] });
});

test('standard hours are a register; bills that stand in one period are no slips', () => {
  const rows = DAYS.map((day, i) => `${day},${2 + (i % 5)},${4 + (i % 7)},${1 + (i % 3)}`);
  const known = read(['Date,Peak (kWh),Standard (kWh),Off-peak (kWh)', ...rows], 'Africa/Johannesburg');
  expect(known.series).toHaveLength(3);
  const bills = ['Jan 14 - Feb 12,600', 'Feb 13 - Mar 14,570', 'Mar 15 - Apr 13,480'].map((row) => `2025,${row}`);
  expect(read(['Year,Service period,Electricity kWh', ...bills], 'America/New_York').asked).toContain('times-doubled');
});

test('a counter read unevenly follows the clock that its stamps show, though its hours are shared out', () => {
  const rows = (offset: (at: number) => number) =>
    Array.from({ length: 1200 }, (_, i) => {
      const at = Date.UTC(2025, 2, 28) + (i * 7 + ((i * i) % 5)) * 60_000;
      return `${new Date(at + offset(at) * 60_000).toISOString().slice(0, 16)},${(500 + i * 0.03).toFixed(2)}`;
    });
  const heading = 'Time,Electricity meter reading (kWh)';
  const local = read([heading, ...rows((at) => (at >= Date.UTC(2025, 2, 30, 1) ? 60 : 0))]);
  expect(local.noted).toContain('counter-uneven');
  expect(local.noted).not.toContain('clock-utc');
  expect(local.asked).toEqual([]);
  expect(read([heading, ...rows(() => 0)]).noted).toContain('clock-utc');
});

test('half-hours across may bear clock times of twelve hours', () => {
  const clocks = Array.from(
    { length: 48 },
    (_, i) => `${(i >> 1) % 12 || 12}:${i % 2 ? '30' : '00'} ${i < 24 ? 'AM' : 'PM'}`,
  );
  const rows = DAYS.map((day, d) => `${day},${clocks.map((_, i) => (0.1 + ((d + i) % 9) / 50).toFixed(2))}`);
  const total = sum(DAYS.flatMap((_, d) => clocks.map((_, i) => 0.1 + ((d + i) % 9) / 50)));
  expect(read([`Electricity kWh on,${clocks}`, ...rows]).series).toEqual([`electricity import ${total.toFixed(1)}`]);
});

/** Two months of ten-minute readings, each day followed by a line of its sum, as `write` sets a date. */
function monthsFrom(first: string, write: (day: number, month: number) => string) {
  const days = Array.from({ length: 59 }, (_, i) => new Date(Date.parse(first) + i * 86_400_000));
  return days.flatMap((date) => {
    const day = write(date.getUTCDate(), date.getUTCMonth() + 1);
    const clocks = Array.from(
      { length: 144 },
      (_, i) => `${String(Math.floor(i / 6)).padStart(2, '0')}:${String((i % 6) * 10).padStart(2, '0')}`,
    );
    return [...clocks.map((clock) => `${day}/2025 ${clock},0.05`), `Total ${day}/2025,7.2`];
  });
}

test('the order of day and month is told by the later rows where a first of January and its sum come first', () => {
  const american = monthsFrom('2025-01-01', (day, month) => `${month}/${day}`);
  expect(read(['Start,Electricity used (kWh)', ...american]).series).toEqual(['electricity import 424.8']);
  const british = monthsFrom('2025-01-01', (day, month) => `${day}/${month}`);
  expect(read(['Start,Electricity used (kWh)', ...british], 'America/Chicago').series).toEqual([
    'electricity import 424.8',
  ]);
});

test('a file most of whose dates no calendar has is refused', () => {
  const american = monthsFrom('2025-01-01', (day, month) => `${month}/${day}`);
  const { asked } = read(['Start,Electricity used (kWh)', ...american], 'Europe/London', { dayFirst: true });
  expect(asked).toContain('rows-undated');
});

test.each([
  'Date,Token number,Units purchased (kWh)',
  'Top-up date,Top-up (£),Electricity units (kWh)',
  'Date,Units left (kWh),Units bought (kWh)',
])('units bought in advance are asked about, and last until the next purchase: %s', (headings) => {
  const days = ['01-04', '01-12', '01-30', '02-03', '02-20', '03-01', '03-14', '03-20', '04-02'];
  const bought = [100, 60, 150, 80, 120, 50, 90, 110, 70];
  const rows = days.map((day, i) => `2025-${day},${[20, 5, 14, 9, 30, 3, 12, 7, 25][i]},${bought[i]}`);
  const { asked, series } = read([headings, ...rows]);
  expect(asked).toEqual(['period-bought-asked']);
  expect(series).toEqual([`electricity import ${sum(bought.slice(0, -1))}.0`]);
});

test('of many columns whole names are listed, and how many more there are', () => {
  const names = Array.from({ length: 30 }, (_, i) => `Circuit ${i + 1} (kWh)`);
  const rows = OF_DAYS.map((value, i) => [DAYS[i], ...names.map(() => value.toFixed(2))].join(','));
  const { preview } = readFile(
    'a.csv',
    new TextEncoder().encode([['Date', ...names].join(','), ...rows].join('\n')),
    {},
    {
      ...{ zone: 'Europe/London', today: '2026-11-25', kWhPerUnit, gasVolume: GAS },
    },
  );
  const lists = preview.remarks.flatMap(({ found }) => (found?.includes(',') ? [found] : []));
  expect(lists.length).toBeGreaterThan(0);
  for (const list of lists) expect(list).toMatch(/^(Date, )?(Circuit \d+ \(kWh\), )+Circuit \d+ \(kWh\) … \(\+\d+\)$/);
});

test.each([
  ['Electricity imported', 'Sent to grid'],
  ['Import', 'Electricity exported'],
])('each direction of a list is a record of its own: %s, %s', (drawn, sent) => {
  const rows = DAYS.flatMap((day, i) => [`${day},${drawn},${OF_DAYS[i]}`, `${day},${sent},${OF_DAYS[i]! / 4}`]);
  const total = sum(OF_DAYS);
  expect(read(['Date,Direction,Value (kWh)', ...rows]).series).toEqual([
    `electricity import ${total.toFixed(1)}`,
    `electricity export ${(total / 4).toFixed(1)}`,
  ]);
});

test('rates and charges are registers unless they speak of money', () => {
  const rows = DAYS.flatMap((day, i) => [`${day},Day rate,${OF_DAYS[i]}`, `${day},Low rate,${OF_DAYS[i]! / 4}`]);
  const { series } = read(['Date,Register,Electricity used (kWh)', ...rows]);
  expect(series).toEqual([OF_DAYS, OF_DAYS.map((v) => v / 4)].map((v) => `electricity import ${sum(v).toFixed(1)}`));
});

test('marks that repeat the cell above swallow no row, and count as what they repeat', () => {
  const rows = DAYS.slice(0, 8).map((day, i) => `${slashed(day)}\t${10_000 + 300 * i}\t${i === 0 ? 'Elec kWh' : '"'}`);
  expect(read(['Date\tMeter reading\tFuel', ...rows], 'Europe/London', { dayFirst: true }).series).toEqual([
    'electricity import 2100.0',
  ]);
  const inTheMiddle = DAYS.slice(0, 8).map((day, i) => `${day},${i === 0 ? 'Gas' : '"'},${OF_DAYS[i]}`);
  expect(read(['Date,Fuel,Used (kWh)', ...inTheMiddle]).series).toEqual([
    `gas import ${sum(OF_DAYS.slice(0, 8)).toFixed(1)}`,
  ]);
  const named = [1, 2, 3, 4, 5].map((month) => `${month === 1 ? '2025' : '〃'},${month},${400 + month}`);
  expect(read(['Year,Month,Electricity kWh', ...named]).series).toEqual(['electricity import 2015.0']);
  // A cell of two lines is one.
  const quoted = DAYS.slice(0, 8).map((day, i) => `${day},"warm,\nbright",${OF_DAYS[i]}`);
  expect(read(['Date,Note,Electricity (kWh)', ...quoted]).series).toEqual([
    `electricity import ${sum(OF_DAYS.slice(0, 8)).toFixed(1)}`,
  ]);
});

test('months folded below their years have those years, and the sum of a year is none of them', () => {
  const folded = ['2024,660', '  Nov,320', '  Dec,340', '2025,1000', '  Jan,350', '  Feb,330', '  Mar,320'];
  expect(read(['Row Labels,Electricity kWh', ...folded, 'Grand Total,1660']).series).toEqual([
    'electricity import 1660.0',
  ]);
  expect(read(['Month,Electricity kWh', '2024,', ...folded.slice(1, 3), '2025,', ...folded.slice(4)]).series).toEqual([
    'electricity import 1660.0',
  ]);
});

test('every other month by name is a bill of two: asked which two', () => {
  const bills = ['Jan', 'Mar', 'May', 'Jul', 'Sep'].map((month, i) => `${month} 2025,${600 - 50 * i}`);
  const found = read(['Bill month,Electricity (kWh)', ...bills]);
  expect(found.asked).toEqual(['period-side-asked']);
  expect(found.noted).not.toContain('period-hole');
});

test('two columns of dates of which one goes on where the other left off are the ends of a bill', () => {
  const edges = ['01/08', '02/07', '03/10', '04/08', '05/08', '06/09'].map((day) => `${day}/2025`);
  const bills = edges.slice(1).map((edge, i) => `${edge.replace(/\/\d\d\//, '/28/')},${edges[i]},${edge},${700 - i}`);
  for (const [one, other] of [
    ['Svc From', 'Svc To'],
    ['Previous', 'Current'],
  ]) {
    const { asked, series } = read([`Stmt Date,${one},${other},Electric kWh`, ...bills], 'America/Chicago');
    expect({ asked, series }).toEqual({ asked: [], series: ['electricity import 3490.0'] });
  }
});

test('energy produced for heating is heat, and what heating used beside it is the heat pump’s', () => {
  const rows = ['Consumed energy heating (kWh),512,430,350', 'Produced energy heating (kWh),1480,1290,1120'];
  expect(read(['Heat pump energy,Jan-25,Feb-25,Mar-25', ...rows]).series).toEqual([
    'electricity heat-pump 1292.0',
    'heat heat-output 3890.0',
  ]);
});

test('what has nothing in any night and most about noon may be made by panels: asked', () => {
  const rows = (from: number, to: number) =>
    DAYS.flatMap((day) =>
      Array.from({ length: 24 }, (_, h) => `${day} ${h}:00,${h >= from && h < to ? 0.5 + (h % 3) / 10 : 0}`),
    );
  const asked = (heading: string, from: number, to: number) => read([`Time,${heading}`, ...rows(from, to)]).asked;
  expect(asked('Energy (kWh)', 7, 18)).toContain('made-by-day-asked');
  expect(asked('Energy (kWh)', 16, 21)).not.toContain('made-by-day-asked');
  expect(asked('Day (kWh)', 7, 18)).not.toContain('made-by-day-asked');
});

test('a counter that falls a little and is above it again was read wrongly once; one that begins anew is another meter', () => {
  const list = (readings: readonly number[]) =>
    read(['Date,Electricity reading kWh', ...readings.map((one, i) => `${slashed(DAYS[i * 11]!)},${one}`)]);
  const slip = list([45_100, 45_480, 44_810, 46_110, 46_330]);
  expect(slip.series).toEqual(['electricity import 1230.0']);
  expect(slip.noted).toContain('register-slip');
  expect(list([45_100, 45_480, 3, 630, 850]).noted).toContain('register-exchange');
});

test('what is written as about so much is an estimate, and so is what bears a star', () => {
  const rows = ['20000', 'c. 20400', '~20700', '20990', '21200*'].map((one, i) => `${slashed(DAYS[i * 12]!)},${one}`);
  const found = read(['Date,Electricity kWh meter', ...rows]);
  expect(found.series).toEqual(['electricity import 1200.0']);
  expect(found.noted).toContain('estimated');
  // Rows above the first number that can be read are no headings.
  const words = ['a lot', 'more', '7', '8', '9'].map((one, i) => `${DAYS[i]},${one}`);
  expect(read(['Date,Electricity kWh', ...words]).noted).toContain('number-unreadable');
});

test.each([
  [['300-320', '200+100', 'about'], 4, true],
  [['300-320', '#VALUE!'], 30, false],
  [['n/a', '-', ''], 4, false],
])('of %j in every %d. row it is asked whether they may be left out: %s', (words, every, isAsked) => {
  const rows = DAYS.map(
    (day, i) => `${day},${i % every === 3 ? words[i % words.length] : OF_DAYS[i % OF_DAYS.length]}`,
  );
  expect(read(['Date,Electricity kWh', ...rows]).asked.includes('unread-asked')).toBe(isAsked);
});
test('of many rows without a date that can be read it is asked whether they may be left out', () => {
  const rows = DAYS.map((day, i) => `${i % 8 === 4 ? 'soon' : day},${OF_DAYS[i % OF_DAYS.length]}`);
  expect(read(['Date,Electricity kWh', ...rows]).asked).toEqual(['unread-asked']);
});

test.each([
  ['Week ending (Sunday)', '2024-12-30', []],
  ['W/E', '2024-12-30', []],
  ['Semaine se terminant le', '2024-12-30', []],
  ['Woche bis', '2024-12-30', []],
  ['Week t/m', '2024-12-30', []],
  ['To', '2024-12-30', ['to-inclusive-asked']],
  ['Reading date', '2024-12-29', []],
  ['Date', '2025-01-05', ['period-side-asked']],
])('rows of weeks below "%s" begin on %s', (heading, from, asked) => {
  const rows = OF_DAYS.slice(0, 20).map((one, i) => {
    const sunday = new Date(Date.UTC(2025, 0, 5 + i * 7)).toISOString().slice(0, 10);
    return `${sunday},${one * 7}`;
  });
  const found = read([`${heading},Electricity kWh`, ...rows]);
  expect([found.from, found.asked]).toEqual([from, asked]);
});

test('weeks written with the words that say so begin on their day', () => {
  const rows = OF_DAYS.slice(0, 20).map((one, i) => {
    const [year, month, day] = new Date(Date.UTC(2025, 0, 6 + i * 7)).toISOString().slice(0, 10).split('-');
    return `${['w/c ', 'Week commencing ', 'wk beginning: '][i % 3]}${day}/${month}/${year},${one * 7}`;
  });
  const found = read(['Week commencing,Electricity kWh', ...rows]);
  expect([found.from, found.asked]).toEqual(['2025-01-06', []]);
});

test('used and produced under the name of a heat pump are its electricity and its heat; under that of a tariff they are not', () => {
  const rows = DAYS.map((day, i) => `${day},${OF_DAYS[i]},${(OF_DAYS[i]! * 3.1).toFixed(1)}`);
  const kinds = (title: string) =>
    read([title, 'Date,kWh used,kWh produced', ...rows]).series.map((one) => one.split(' ').slice(0, 2).join(' '));
  expect(kinds('Heat pump,,')).toEqual(['electricity heat-pump', 'heat heat-output']);
  expect(kinds('Tariff: heat pump,,')).toEqual(['electricity import', 'electricity generation']);
});

test('energy under an unknown word beside two that are read is asked about, read too, or left out', () => {
  const rows = DAYS.map((day, i) => `${day},${OF_DAYS[i]},${20 + (i % 7)},${3 + (i % 5)}`);
  const file = ['Date,Electricity (kWh),Gas (kWh),Quarble (kWh)', ...rows];
  expect(read(file).asked).toEqual(['column-asked']);
  expect(read(file, 'Europe/London', { every: false })).toMatchObject({ asked: [], series: { length: 2 } });
  expect(read(file, 'Europe/London', { every: true })).toMatchObject({
    asked: ['carrier-guessed'],
    series: { length: 3 },
  });
});
test('numbers without a unit or a word are asked about, and are asked about no more once set aside', () => {
  const file = ['Datum,RSK', ...DAYS.map((day, i) => `${day},${OF_DAYS[i]}`)];
  expect(read(file).asked).toEqual(['carrier-guessed', 'unit-guessed']);
  expect(read(file, 'Europe/London', { beside: 'aside' }).asked).toEqual([]);
});

test.each([
  ['Month', ['01/25', '02/25', '03/25', '04/25'], '2025-01-01'],
  ['Month', ['2025M01', '2025M02', '2025M03', '2025M04'], '2025-01-01'],
  ['Month', ['202504', '202503', '202502', '202501'], '2025-01-01'],
  ['Periode', ['2021', '2022', '2023', '2024'], '2021-01-01'],
])('%s of %j are read from %s on', (heading, labels, from) => {
  const found = read([`${heading},Electricity kWh`, ...labels.map((label, i) => `${label},${250 + ((i * 7) % 5)}`)]);
  expect([found.from, found.series, found.asked]).toEqual([from, ['electricity import 1007.0'], []]);
});

test('thousands may stand apart by a thin space', () => {
  const rows = [1204, 1311, 1250].map((kWh, i) => `${i + 1}/2025;${String(kWh).replace(/^1/, '1\u2009')}`);
  expect(read(['Month;Electricity kWh', ...rows]).series).toEqual(['electricity import 3765.0']);
});

test('a list of prices below an empty line is no use', () => {
  const days = DAYS.map((day, i) => `${slashed(day)},${OF_DAYS[i]},1.20`);
  const prices = ['', 'Price from,p/kWh,Standing', '01/01/2025,24.5,60', '01/04/2025,27.0,53'];
  const found = read(['Date,Electricity kWh,Cost', ...days, ...prices]);
  expect(found.series).toEqual([`electricity import ${sum(OF_DAYS).toFixed(1)}`]);
  expect(found.asked).toContain('sheet-tables-asked');
});

test('controlled load is a register beside numbered intervals, and no power', () => {
  const rows = DAYS.slice(0, 20).flatMap((day) =>
    Array.from({ length: 48 }, (_, i) => [
      `General Usage,${slashed(day)},${i + 1},${(0.1 + (i % 5) / 50).toFixed(2)}`,
      `Controlled Load,${slashed(day)},${i + 1},${i < 10 ? 0.9 : 0}`,
    ]).flat(),
  );
  const { series } = read(['Register,Date,Interval,kWh', ...rows], 'Australia/Brisbane');
  expect(series).toEqual(['electricity import 133.2', 'electricity import 180.0']);
});

test('the power and use of heat are heat; what a charge point delivered is asked about as a part of the home’s', () => {
  const log = Array.from(
    { length: 96 },
    (_, i) => `2025-01-05 ${Math.floor(i / 4)}:${['00', '15', '30', '45'][i % 4]},1000,3200,36,31`,
  );
  expect(read(['Time,elec_power W,heat_power W,t_flow °C,t_return °C', ...log]).series.slice(0, 2)).toEqual([
    'electricity heat-pump 24.0',
    'heat heat-output 76.8',
  ]);
  const network = ['Jan', 'Feb', 'Mar'].map((month) => `${month} 2025,400`);
  expect(read(['Month,Heat used (kWh)', ...network]).series).toEqual(['heat heat-output 1200.0']);
  const sessions = DAYS.map((day, i) => `${day},Driveway,${OF_DAYS[i]}`);
  expect(read(['Start date,Charge point,kWh delivered', ...sessions]).asked).toContain('part-asked');
});

test('what is delivered in kWh is metered; of two fuels in one list of deliveries it is asked which', () => {
  const weeks = DAYS.filter((_, i) => i % 7 === 0).map((day, i) => `${slashed(day)},${135 - i},${405 - 3 * i}`);
  const heading = 'Week ending,Space heating used kWh,Space heating delivered kWh';
  expect(read([heading, ...weeks]).series).toEqual(['electricity heat-pump 1179.0', 'heat heat-output 3537.0']);
  const fuels = ['12/10/2024,900,200', '20/01/2025,1000,210', '28/10/2025,950,190'];
  expect(read(['Delivered,Heating oil litres,LPG litres', ...fuels]).asked).toContain('column-asked');
});

test('what panels send to the home is its own use, and centimetres are no litres', () => {
  const rows = DAYS.map(
    (day, i) => `${day},${(OF_DAYS[i]! / 3).toFixed(2)},${(OF_DAYS[i]! / 4).toFixed(2)},${OF_DAYS[i]}`,
  );
  const { series } = read(['Date,PV to home (kWh),PV to grid (kWh),Grid to home (kWh)', ...rows]);
  expect(series.filter((one) => one.includes('generation'))).toEqual([]);
  expect(series).toContain(`electricity import ${sum(OF_DAYS).toFixed(1)}`);
  const dips = DAYS.filter((_, i) => i % 10 === 0).map((day, i) => `${slashed(day)},${100 - 6 * i},${1000 - 60 * i}`);
  expect(read(['Date,Dip (cm),Litres in tank (kerosene)', ...dips]).series).toEqual([]);
});

test('a heading may say in which order its dates are written', () => {
  const rows = Array.from({ length: 12 }, (_, i) => `01/${String(i + 1).padStart(2, '0')}/2025,${OF_DAYS[i]}`);
  const found = read(['Date (MM/DD/YYYY),Electricity (kWh)', ...rows]);
  expect(found).toMatchObject({ asked: [], series: [`electricity import ${sum(OF_DAYS.slice(0, 12)).toFixed(1)}`] });
  expect(read(['Date (dd/mm/yyyy),Electricity (kWh)', ...rows.slice(0, 3)], 'America/Chicago').asked).not.toContain(
    'date-order-asked',
  );
});
