/** Shapes of loggers, portals and open data that name, number or nest things in ways of their own; one case a class. */
import { zipSync } from 'fflate';
import { expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { slotOfHeading } from '../../../src/intake/layout/headings.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const read = (text: string, { zone = 'Europe/London', choices = {} as IntakeChoices, fileName = 'a.csv' } = {}) =>
  readBytes(new TextEncoder().encode(text), choices, zone, fileName);

function readBytes(bytes: Uint8Array, choices: IntakeChoices = {}, zone = 'Europe/London', fileName = 'a.csv') {
  const { preview } = readFile(fileName, bytes, choices, {
    zone,
    today: '2026-11-25',
    kWhPerUnit,
    gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
  });
  const asked = preview.remarks.filter((r) => r.weight !== 'note').map(({ code }) => code);
  return {
    asked: [...new Set(asked)],
    noted: preview.remarks.filter((r) => r.weight === 'note').map(({ code }) => code),
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.total.toFixed(1)}`),
    uses: Object.fromEntries((preview.uses ?? []).map(({ column, use }) => [preview.columns[column], use])),
  };
}

const START = Date.UTC(2025, 0, 1);
const at = (hour: number) => new Date(START + hour * 3_600_000).toISOString().slice(0, 16).replace('T', ' ');
const HOURS = Array.from({ length: 480 }, (_, i) => i);
const used = (i: number) => ((i * 7) % 13) / 10 + 0.1;
const table = (heading: string, row: (i: number) => string, count = HOURS.length) =>
  [heading, ...HOURS.slice(0, count).map(row)].join('\n');
const TOTAL = '336.0';
const DAYS = Array.from({ length: 60 }, (_, i) => i);
const day = (i: number) => new Date(START + i * 86_400_000).toISOString().slice(0, 10);

test('three phases are one supply, as amounts and as counters', () => {
  const amounts = table(
    'Time,Electricity L1 (kWh),Electricity L2 (kWh),Electricity L3 (kWh)',
    (i) => `${at(i)},${(used(i) / 2).toFixed(4)},${(used(i) / 4).toFixed(4)},${(used(i) / 4).toFixed(4)}`,
  );
  expect(read(amounts)).toMatchObject({ asked: [], series: [`electricity import ${TOTAL}`] });
  const sums = [0, 0, 0];
  const counters = table('Time,Electricity phase 1 (kWh),Electricity phase 2 (kWh),Electricity phase 3 (kWh)', (i) => {
    const row = `${at(i)},${sums.map((sum) => (5000 + sum).toFixed(4)).join(',')}`;
    sums.forEach((_, phase) => {
      sums[phase]! += used(i) / 3;
    });
    return row;
  });
  const { asked, series } = read(counters);
  expect(asked).toEqual([]);
  expect(series).toEqual([`electricity import ${(336 - used(479)).toFixed(1)}`]);
});

test('a register that is the sum of the others is left out, with its name', () => {
  const rows = HOURS.slice(0, 240).flatMap((i) => [
    `${at(i)},${used(i)},Import total (kWh)`,
    `${at(i)},${used(i) * 0.75},Import day rate (kWh)`,
    `${at(i)},${used(i) * 0.25},Import night rate (kWh)`,
  ]);
  const { noted, series } = read(['Time,Value,Register', ...rows].join('\n'));
  expect(noted).toContain('sum-left-out');
  const sum = HOURS.slice(0, 240).reduce((all, i) => all + used(i), 0);
  expect(series).toEqual([sum * 0.75, sum * 0.25].map((kWh) => `electricity import ${kWh.toFixed(1)}`));
});

test('registers that take turns are one record with no gaps; reactive ones are left out', () => {
  const rows = HOURS.flatMap((i) => [
    `${at(i)};Afname ${i % 24 < 7 ? 'Nacht' : 'Dag'};${used(i)};kWh`,
    `${at(i)};Injectie ${i % 24 < 7 ? 'Nacht' : 'Dag'};${i % 24 > 8 ? 0.1 : 0};kWh`,
  ]);
  const turns = read(['Van;Register;Volume;Eenheid', ...rows].join('\n'), { zone: 'Europe/Brussels' });
  expect(turns.noted).not.toContain('gap');
  expect(turns.series.toSorted()).toEqual(['electricity export 30.0', `electricity import ${TOTAL}`]);
  const codes = HOURS.flatMap((i) => [`${at(i)},AI,${used(i)}`, `${at(i)},AE,0.1`, `${at(i)},RI,0.3`]);
  const { noted, series } = read(['Time,Quantity,kWh', ...codes].join('\n'));
  expect(noted).toContain('columns-left-out');
  expect(series).toEqual([`electricity import ${TOTAL}`, 'electricity export 48.0']);
});

test('units mixed in the cells of a column become one', () => {
  const text = table('Time;Electricity', (i) => `${at(i)};${i % 3 === 0 ? `${used(i) * 1000} Wh` : `${used(i)} kWh`}`);
  const { noted, series } = read(text);
  expect(noted).toContain('unit-converted');
  expect(series).toEqual([`electricity import ${TOTAL}`]);
});

test('degrees that are not named: asked about where they may be of another kind; kelvin is read', () => {
  const inside = (i: number) => 3 + Math.sin(i / 3) * 5 + (i % 4);
  const rows = (heading: string, to: (c: number) => number) =>
    [heading, ...DAYS.map((i) => `${day(i)},${to(inside(i)).toFixed(1)}`)].join('\n');
  const fahrenheit = rows('Date,TAVG', (c) => c * 1.8 + 32);
  expect(read(fahrenheit, { zone: 'America/New_York' }).asked).toEqual(['unit-guessed']);
  const answered = read(fahrenheit, { zone: 'America/New_York', choices: { unit: '°F' } });
  const mean = DAYS.reduce((sum, i) => sum + inside(i), 0) / DAYS.length;
  expect(Number(answered.series[0]!.split(' ')[2])).toBeCloseTo(mean, 0);
  const kelvin = read(rows('Date,Air temperature (K)', (c) => c + 273.15));
  expect(kelvin.asked).toEqual([]);
  expect(Number(kelvin.series[0]!.split(' ')[2])).toBeCloseTo(mean, 0);
});

test('a row of names over a row of values says the unit of the table', () => {
  const text = [
    'Identifiant;Type;Grandeur physique;Grandeur metier;Unite;Pas',
    '01234567;Courbe de charge;Puissance active;Consommation;W;60',
    table('Horodate debut;Valeur', (i) => `${at(i)};${Math.round(used(i) * 1000)}`),
  ].join('\n');
  expect(read(text, { zone: 'Europe/Paris' })).toMatchObject({
    asked: ['clock-assumed'],
    series: [`electricity import ${TOTAL}`],
  });
});

test('cubic feet are no hundreds of them, and a volume of water in gallons is kept in m³', () => {
  const feet = read(
    table('Time,Gas (ft³)', (i) => `${at(i)},${(used(i) * 10).toFixed(2)}`),
    {
      choices: { calorificMJPerM3: 39.5 },
    },
  );
  expect(feet).toMatchObject({ asked: [], series: ['gas import 1066.9'] });
  const water = table('Time,Water (gallons)', (i) => `${at(i)},${used(i) * 10}`);
  expect(read(water)).toMatchObject({ asked: ['unit-guessed'], series: ['water import 15.3'] });
  expect(read(water, { zone: 'America/Chicago' })).toMatchObject({ series: ['water import 12.7'] });
});

test.each<[string, string]>([
  [
    'records within records',
    JSON.stringify({ m: HOURS.map((i) => ({ t: { start: `${at(i)}Z` }, e: { kWh: used(i) } })) }),
  ],
  ['pairs', JSON.stringify({ unit: 'kWh', list: HOURS.map((i) => [START + i * 3_600_000, used(i)]) })],
  ['values by moment', JSON.stringify({ kWh: Object.fromEntries(HOURS.map((i) => [at(i), used(i)])) })],
  ['lists side by side', JSON.stringify({ hourly: { time: HOURS.map(at), kWh: HOURS.map(used) } })],
  ['a record a line', HOURS.map((i) => JSON.stringify({ time: at(i), kWh: used(i) })).join('\n')],
  [
    'elements',
    `<?xml version="1.0"?><a unit="kWh">${HOURS.map((i) => `<r t="${at(i)}" v="${used(i)}"/>`).join('')}</a>`,
  ],
])('programs write %s', (_, text) => {
  const { series } = read(text, { fileName: 'electricity.json' });
  expect(series).toEqual([`electricity import ${TOTAL}`]);
});

test('each record of a file has its own answers', () => {
  const rows = HOURS.flatMap((i) => [`${at(i)},Meter A,${used(i)}`, `${at(i)},Meter B,${used(i) * 3}`]);
  const text = ['Time,Register,Value (kWh)', ...rows].join('\n');
  expect(read(text).asked).toEqual(['carrier-guessed']);
  const ofColumns = {
    'Value (kWh), Meter A': { carrier: 'electricity', role: 'heat-pump' },
    'Value (kWh), Meter B': { carrier: 'gas' },
  } as const;
  const { asked, series } = read(text, { choices: { ofColumns } });
  expect(asked).toEqual([]);
  expect(series).toEqual([`electricity heat-pump ${TOTAL}`, 'gas import 1008.0']);
});

test('what the home used of its own making is asked about, and taken off where the use holds it', () => {
  const own = (i: number) => (i % 24 === 12 ? 0.2 : 0);
  const text = table(
    'Time,Consumption (kWh),Production (kWh),Feed-in (kWh)',
    (i) => `${at(i)},${(used(i) + own(i)).toFixed(3)},${(own(i) * 2).toFixed(3)},${own(i).toFixed(3)}`,
  );
  expect(read(text).asked).toEqual(['own-use-asked']);
  expect(read(text, { choices: { ownUse: 'within' } }).series).toContain(`electricity import ${TOTAL}`);
});

test('months across under names, and a counter that begins anew', () => {
  const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
  const wide = [
    `Meter,Unit,${months.map((month) => `${month}-24`).join(',')},Total`,
    `Electricity,kWh,${months.map(() => '300.5').join(',')},3606`,
    `Gas,kWh,${months.map(() => '900.5').join(',')},10806`,
  ].join('\n');
  expect(read(wide).series.toSorted()).toEqual(['electricity import 3606.0', 'gas import 10806.0']);
  const counter = Array.from(
    { length: 120 },
    (_, i) => `${day(i)},${(i < 70 ? 4000 + i * 9.5 : (i - 70) * 9.5).toFixed(1)}`,
  );
  const { series } = read(['Date,Electricity total (kWh)', ...counter].join('\n'));
  expect(series).toEqual([`electricity import ${(118 * 9.5).toFixed(1)}`]);
});

test('a packed file is read as by itself; of several each in its turn', () => {
  const csv = new TextEncoder().encode(table('Time,Electricity (kWh)', (i) => `${at(i)},${used(i)}`));
  const one = readBytes(zipSync({ 'my/use.csv': csv, 'readme.txt': new TextEncoder().encode('Hello') }));
  expect(one.series).toEqual([`electricity import ${TOTAL}`]);
  const two = zipSync({ 'use.csv': csv, 'other.csv': csv });
  expect(readBytes(two).asked).toEqual(['sheet-packed-asked']);
  expect(readBytes(two, { sheet: 'other.csv' }).asked).toEqual([]);
});

test('a load is no "a day", and one beside another column is no copy of it', () => {
  const text = table('Time,Electricity imported (W),Load sent to grid (W)', (i) => `${at(i)},${used(i) * 1000},100`);
  expect(read(text).series).toEqual([`electricity import ${TOTAL}`, 'electricity export 48.0']);
  const months = ['Fecha;Consumo de electricidad (kWh)', '2025-01;380,21', '2025-02;333,05', '2025-03;340,5'].join(
    '\n',
  );
  expect(read(months, { zone: 'Europe/Madrid' }).series).toEqual(['electricity import 1053.8']);
});

test.each([
  ['Grid draw (kWh),Grid feed (kWh)'],
  ['Wirkarbeit Bezug (kWh),Wirkarbeit Abgabe (kWh)'],
  ['Energie prélevée (kWh),Energie restituée (kWh)'],
  ['Consumo da rete (kWh),Ceduta in rete (kWh)'],
  ['A+ total (kWh),A- total (kWh)'],
])('the two ways of the grid in the words %s', (names) => {
  const { series } = read(table(`Start,${names}`, (i) => `${at(i)},${used(i)},${used(i) / 2}`));
  expect(series).toEqual([`electricity import ${TOTAL}`, 'electricity export 168.0']);
});

test('a column of ways with words that nobody knows is asked about, and with known ones it is not', () => {
  const of = (drawn: string, sent: string) =>
    read(
      HOURS.flatMap((i) => [`${at(i)},${used(i)},${drawn}`, `${at(i)},${used(i) / 2},${sent}`])
        .toSpliced(0, 0, 'Start,Electricity (kWh),Direction')
        .join('\n'),
    );
  expect(of('in', 'out').series).toEqual([`electricity import ${TOTAL}`, 'electricity export 168.0']);
  expect(of('left', 'right').asked).toEqual(['direction-asked']);
  expect(of('consumption', 'production').asked).toEqual(['made-asked']);
});

test('a register that stands still for most of a year is kept', () => {
  const rows = Array.from({ length: 400 }, (_, i) => `${day(i)},${1000 + i * 9},${500 + Math.max(0, i - 380) * 3}`);
  const { series } = read(['Date,Day (kWh),Peak (kWh)', ...rows].join('\n'));
  expect(series).toEqual(['electricity import 3591.0', 'electricity import 57.0']);
});

test('a heat pump that takes nothing for a summer of readings is no counter', () => {
  const most = (i: number) => (i < 500 ? 0 : used(i));
  const rows = Array.from({ length: 640 }, (_, i) => `${at(i)},${most(i)}`);
  const total = Array.from({ length: 640 }, (_, i) => most(i)).reduce((sum, kWh) => sum + kWh, 0);
  const { series } = read(['Start,Heat pump electricity (kWh)', ...rows].join('\n'));
  expect(series).toEqual([`electricity heat-pump ${total.toFixed(1)}`]);
});

test('a place called Wood Lane and a log of use are no wood, a flow is no way, and 24:45 is no clock', () => {
  const of = (heading: string) => read(table(`Start,${heading}`, (i) => `${at(i)},${used(i)}`));
  expect(of('Wood Lane electricity (kWh)')).toMatchObject({ series: [`electricity import ${TOTAL}`] });
  expect(of('Wood Lane gas (kWh)')).toMatchObject({ series: [`gas import ${TOTAL}`] });
  expect(of('Usage logs (kWh)').asked).not.toContain('other-fuel');
  const flow = read(table('Start,Flow (l/min),Production (kWh)', (i) => `${at(i)},${10 + (i % 5)},${used(i)}`));
  expect(flow.series).toEqual([`electricity generation ${TOTAL}`]);
  expect([slotOfHeading('2400'), slotOfHeading('0030'), slotOfHeading('2445')]).toEqual([
    { clock: 1440 },
    { clock: 30 },
    undefined,
  ]);
});

test('a counter in MWh with few rows is no use of thousands of MWh', () => {
  const rows = DAYS.slice(0, 12).map((i) => `${day(i)},${(1000 + i * 0.011).toFixed(3)}`);
  expect(read(['Date,Electricity (MWh)', ...rows].join('\n')).series).toEqual(['electricity import 121.0']);
});

test('weather of services: coded tenths, single spaces, quoted gaps, and a title that is no EPW', () => {
  const degrees = (i: number) => 5 + ((i * 7) % 11);
  const mean = (rows: readonly number[]) => rows.reduce((sum, i) => sum + degrees(i), 0) / rows.length;
  const weather = (rows: readonly number[]) => [`outdoor-temperature weather ${mean(rows).toFixed(1)}`];
  const coded = table(
    '"STATION","DATE","TMP","DEW"',
    (i) => `"7","${at(i).replace(' ', 'T')}:00","+${String(degrees(i) * 10).padStart(4, '0')},1","+0010,1"`,
  );
  expect(read(coded)).toMatchObject({ asked: [], series: weather(HOURS), uses: { DEW: 'weather' } });
  const days = DAYS.map((i) => `2025 ${day(i).slice(5, 7)} ${day(i).slice(8)} ${degrees(i)}.0 ${degrees(i) - 3}.0`);
  expect(read(['Year Mo Dy Tmean Tmin', ...days].join('\n')).series).toEqual(weather(DAYS));
  const quoted = DAYS.map((i) => `"7","${day(i)}","  ${degrees(i)}.0","   1.2"`);
  expect(read(['"STATION","DATE","Temp (°C)","PRCP"', ...quoted].join('\n')).series).toEqual(weather(DAYS));
  const place = table('location,latitude\nA,51.5\n\ntimestamp,A Temperature (°C)', (i) => `${at(i)},${degrees(i)}`);
  expect(read(place).series).toEqual(weather(HOURS));
});

test('hours H01 to H24, columns 0100 to 2400, quarters by name, spans with one year', () => {
  const hours = table(
    'Fecha,Hora,Electricidad (kWh)',
    (i) => `${day(i / 24)},H${String((i % 24) + 1).padStart(2, '0')},${used(i)}`,
  );
  expect(read(hours, { zone: 'Europe/Madrid' }).series).toEqual([`electricity import ${TOTAL}`]);
  const heads = Array.from({ length: 24 }, (_, i) => `${String(i + 1).padStart(2, '0')}00`);
  const rows = DAYS.slice(0, 20).map((d) => [day(d), ...heads.map((_, h) => used(d * 24 + h))].join());
  const across = read(['Electricity (kWh)', ['Date', ...heads].join(), ...rows].join('\n'));
  expect(across).toMatchObject({ series: [`electricity import ${TOTAL}`] });
  const quarters = ['4. kvartal 2023', '1. kvartal 2024', '2. kvartal 2024'].map((q) => `${q},100`);
  expect(read(['Kvartal,Gas (kWh)', ...quarters].join('\n')).series).toEqual(['gas import 300.0']);
  const spans = ['1 Oct–31 Dec 2024', '1 Jan–31 Mar 2025'].map((span) => `${span},100`);
  expect(read(['Period,Gas (kWh)', ...spans].join('\n')).series).toEqual(['gas import 200.0']);
});

test('what is refused says what to do: weeks without a year, coal', () => {
  const weeks = DAYS.map((i) => `${i + 1},${used(i)}`);
  expect(read(['Gas', 'Week,Gas (kWh)', ...weeks].join('\n')).asked).toEqual(['no-year']);
  expect(read(['Delivered,Coal (tonnes)', '2023-10-12,1.5', '2024-02-03,1'].join('\n')).asked).toEqual(['other-fuel']);
});

test('a meter of heat with its two temperatures measures water, and what is left out says why', () => {
  const rows = DAYS.map((i) => `${day(i)},${(12 + i * 0.02).toFixed(2)},${300 + i},61,34`);
  const heat = read(['Date,E1 (MWh),V1 (m3),T1 (°C),T2 (°C)', ...rows].join('\n'));
  expect(heat).toMatchObject({ asked: [], series: ['heat heat-output 1180.0', 'water import 59.0'] });
  const beside = table(
    'Read at,Sent at,Electricity (kWh),Last year (kWh)',
    (i) => `${at(i)},${at(i + 1).slice(0, 14)}07,${used(i)},${used(i)}`,
  );
  expect(read(beside).uses).toMatchObject({ 'Sent at': 'other-time', 'Last year (kWh)': 'to-compare' });
});

test('months that begin on the first are months, where only their ends tell that the month is written first', () => {
  const rows = Array.from({ length: 12 }, (_, month) => {
    const end = new Date(Date.UTC(2025, month + 1, 0)).getUTCDate();
    return `${month + 1}/1/2025,${month + 1}/${end}/2025,${100 + ((month * 5) % 12)}`;
  });
  const { asked, uses, series } = read(['Interval start,End,Electricity used kWh', ...rows].join('\n'), {
    zone: 'America/New_York',
  });
  expect(asked).toEqual([]);
  expect(uses).toMatchObject({ End: 'to' });
  expect(series).toEqual(['electricity import 1266.0']);
});

test('kWh and therms of a bill are two uses where they do not go along: asked, and both may be read', () => {
  const rows = Array.from({ length: 12 }, (_, month) => {
    const therms = 4 + Math.abs(month - 6) * 9;
    return `${((month + 1) % 12) + 1}/1/${month < 11 ? 2024 : 2025},${400 + ((month * 37) % 90)},${therms},50,${therms}`;
  });
  const text = ['Bill Date,kWh,Therms,Electric $,Gas $', ...rows].join('\n');
  const zone = 'America/Chicago';
  expect(read(text, { zone }).asked).toEqual(['column-asked']);
  const both = read(text, { zone, choices: { every: true } });
  expect(both.asked).toEqual(['carrier-guessed']);
  expect(both.series.map((one) => one.split(' ')[0])).toEqual(['electricity', 'gas']);
  // The same gas in both units is one use.
  const same = rows
    .map((row) => row.split(','))
    .map(([date, , therms]) => `${date},${Number(therms) * 29.307},${therms}`);
  expect(read(['Bill Date,kWh,Therms', ...same].join('\n'), { zone }).asked).toEqual([]);
});

test('the volume of a heat meter is no gas, and its energy is read', () => {
  const rows = Array.from({ length: 12 }, (_, month) =>
    [`2024-${String(month + 1).padStart(2, '0')}-01`, (41 + month * 0.7).toFixed(2), 1249 + month * 21].join(),
  );
  const said = read(['Heat meter 1234', 'Log date,Energy [MWh],Volume [m³]', ...rows].join('\n'));
  expect(said).toMatchObject({ asked: [], series: ['heat heat-output 7700.0'] });
  const unsaid = read(['Log date,Energy [MWh],Volume [m³]', ...rows].join('\n')).asked;
  expect(unsaid).toContain('column-asked');
});

test('what a quantity times its rate comes to is money, and numbers of bills name no registers', () => {
  const lines = Array.from({ length: 6 }, (_, month) => {
    const at = `0${month + 1}`;
    const span = `R2${month},2024-${at}-01,2024-${at}-${[31, 29, 31, 30, 31, 30][month]}`;
    const [day, night] = [200 + month * 13, 90 + month * 7];
    const line = (name: string, units: number, pence: number) =>
      [span, name, units, pence, ((units * pence) / 100).toFixed(2)].join();
    return [line('Electricity day units', day, 28.4), line('Electricity night units', night, 9.15)];
  });
  const text = ['Statement,From,To,Description,Quantity,Rate,Amount', ...lines.flat()].join('\n');
  expect(read(text).series).toEqual(['electricity import 1395.0', 'electricity import 645.0']);
  const bills = lines.map(([day]) => day!.split(',').slice(0, 5).toSpliced(3, 1).join());
  expect(read(['Bill number,From,To,Electricity kWh', ...bills].join('\n')).asked).toEqual([]);
});

test('the first of each month over a year’s end is no run of days', () => {
  const rows = Array.from(
    { length: 14 },
    (_, month) => `01/${String((month % 12) + 1).padStart(2, '0')}/${month < 12 ? 2024 : 2025},${5000 + month * 250}`,
  );
  expect(read(['Date,Electricity reading (kWh)', ...rows].join('\n'))).toMatchObject({
    asked: [],
    series: ['electricity import 3250.0'],
  });
  expect(read(['Date,Electricity reading (kWh)', ...rows.slice(0, 12)].join('\n')).asked).toEqual(['date-order-asked']);
});

test('a comma in the brackets of a heading without quotes shifts no name over another column', () => {
  const rows = DAYS.map((i) => `${day(i)},${(1000 + i * 3).toFixed(1)},${(3000 + i * 10).toFixed(1)},3.4`);
  const log = read(['Date,Elec in (kWh, total),Heat out (kWh, total),SCOP', ...rows].join('\n'));
  expect(log.series).toEqual([
    `electricity heat-pump ${((DAYS.length - 1) * 3).toFixed(1)}`,
    `heat heat-output ${((DAYS.length - 1) * 10).toFixed(1)}`,
  ]);
});

test('what the heater behind a compressor draws is the heat pump’s too', () => {
  const heads = [
    'Compressor power (kW),Thermal output (kW),Backup heater (kW)',
    'Verdichter (kW),Wärme (kW),Heizstab (kW)',
  ];
  for (const head of heads) {
    const series = read(table(`Time,${head}`, (i) => `${at(i)},1,3,${i % 10 ? 0 : 3}`)).series;
    expect(series.filter((one) => one.startsWith('electricity heat-pump'))).toHaveLength(2);
  }
});

test('usage without a unit beside the usage of gas is asked about', () => {
  const rows = DAYS.map((i) => `${day(i)},${used(i)},${(used(DAYS.length - i) * 2).toFixed(2)}`);
  expect(read(['from_ts,usage,gas_usage', ...rows].join('\n')).asked).toContain('column-asked');
});

test('spans with the month first, and XML without its first line', () => {
  const names = ['Jan', 'Feb', 'Mar', 'Apr'];
  const spans = names.map((name, i) => `"${name} 1, 2024 - ${name} ${[31, 29, 31, 30][i]}, 2024",${100 + i}`);
  const zone = 'America/New_York';
  expect(read(['Bill period,Electricity (kWh)', ...spans].join('\n'), { zone }).series).toEqual([
    'electricity import 406.0',
  ]);
  const reads = DAYS.map((i) => `<Read><Date>${day(i)}</Date><Consumption>${i + 1}</Consumption></Read>`);
  const xml = `<Usage><Meter fuel="electricity" uom="kWh"/>${reads.join('')}</Usage>\n`;
  const sum = (DAYS.length * (DAYS.length + 1)) / 2;
  expect(read(xml, { fileName: 'a.xml' }).series).toEqual([`electricity import ${sum.toFixed(1)}`]);
});
