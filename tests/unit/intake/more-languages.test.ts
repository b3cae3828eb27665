/** Swedish, Norwegian, Portuguese, Polish, Czech and Finnish files, and what open data of meters and weather calls its columns. */
import { expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const GAS = { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 };

function read(text: string, zone: string, choices: IntakeChoices = {}) {
  const bytes = new TextEncoder().encode(text);
  const { preview } = readFile('a.csv', bytes, choices, { zone, today: '2026-11-25', kWhPerUnit, gasVolume: GAS });
  return {
    asked: preview.remarks.filter((r) => r.weight !== 'note').map(({ code }) => code),
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.from} ${s.to} ${s.total.toFixed(2)}`),
  };
}

const DAYS = Array.from({ length: 40 }, (_, i) => new Date(Date.UTC(2025, 0, 10 + i)).toISOString().slice(0, 10));
const dotted = (day: string) => day.split('-').reverse().join('.');
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const OF_MONTHS = Array.from({ length: 12 }, (_, i) => 900 - 60 * i + (i > 6 ? 100 * (i - 6) : 0));
const OF_DAYS = DAYS.map((_, i) => 8 + (i % 9) / 4);
const comma = (value: number) => value.toFixed(2).replace('.', ',');

test.each([
  [
    'Förbrukning',
    'Månad',
    'Gasförbrukning',
    'Summa',
    'januari februari mars april maj juni juli augusti september oktober november december',
  ],
  [
    'Zużycie',
    'Miesiąc',
    'Zużycie gazu',
    'Razem',
    'styczeń luty marzec kwiecień maj czerwiec lipiec sierpień wrzesień październik listopad grudzień',
  ],
  [
    'Consumo',
    'Mês',
    'Consumo de gás',
    'Média',
    'janeiro fevereiro março abril maio junho julho agosto setembro outubro novembro dezembro',
  ],
  [
    'Spotřeba',
    'Měsíc',
    'Spotřeba plynu',
    'Celkem',
    'leden únor březen duben květen červen červenec srpen září říjen listopad prosinec',
  ],
])('months of gas under the title “%s 2025”', (title, month, gas, total, names) => {
  const rows = names.split(' ').map((name, i) => `${name};${OF_MONTHS[i]}`);
  const text = [`${title} 2025`, `${month};${gas} (kWh)`, ...rows, `${total};${sum(OF_MONTHS)}`].join('\n');
  expect(read(text, 'Europe/Prague')).toEqual({
    asked: [],
    series: [`gas import 2025-01-01 2026-01-01 ${sum(OF_MONTHS).toFixed(2)}`],
  });
});

test.each([
  ['Datum;Uttag (kWh);Inmatning (kWh)', 'import', 'export'],
  ['Data;Energia pobrana (kWh);Energia oddana (kWh)', 'import', 'export'],
  ['Data;Consumo da rede (kWh);Injeção na rede (kWh)', 'import', 'export'],
  ['Datum;Odběr ze sítě (kWh);Dodávka do sítě (kWh)', 'import', 'export'],
])('both ways under “%s”', (head, ...roles) => {
  const rows = DAYS.map((day, i) => `${dotted(day)};${comma(OF_DAYS[i]!)};${comma(OF_DAYS[i]! / 4)}`);
  const shares = OF_DAYS.map((value) => Number((value / 4).toFixed(2)));
  expect(read([head, ...rows].join('\n'), 'Europe/Warsaw')).toEqual({
    asked: [],
    series: [sum(OF_DAYS), sum(shares)].map(
      (total, i) => `electricity ${roles[i]} 2025-01-10 2025-02-19 ${total.toFixed(2)}`,
    ),
  });
});

test.each([
  ['Datum;Utetemperatur (°C);Värme (kWh)'],
  ['Data;Temperatura zewnętrzna (°C);Ciepło (kWh)'],
  ['Datum;Venkovní teplota (℃);Teplo (kWh)'],
])('weather beside heat under “%s”', (head) => {
  const rows = DAYS.map((day, i) => `${dotted(day)};${comma(((i * 7) % 11) - 3)};${comma(OF_DAYS[i]!)}`);
  const { asked, series } = read([head, ...rows].join('\n'), 'Europe/Warsaw');
  expect(asked).toEqual([]);
  expect(series.map((one) => one.split(' ')[0]).toSorted()).toEqual(['heat', 'outdoor-temperature']);
});

test('largest and smallest of a day’s readings of energy are no temperatures of it', () => {
  const rows = DAYS.map((day, i) => `${day},${OF_DAYS[i]! / 9},${OF_DAYS[i]! / 90},${OF_DAYS[i]}`);
  const { series } = read(['day,energy_max,energy_min,energy_sum', ...rows].join('\n'), 'Europe/London');
  expect(series).toEqual([`electricity import 2025-01-10 2025-02-19 ${sum(OF_DAYS).toFixed(2)}`]);
});

test('power in rows of a month may be a peak: asked', () => {
  const rows = OF_MONTHS.map((_, i) => `2025-${String(i + 1).padStart(2, '0')},${2 + (i % 3) / 2}`);
  const text = ['Month,Electricity (kW)', ...rows].join('\n');
  expect(read(text, 'Europe/Brussels').asked).toContain('unit-doubtful');
  expect(read(text, 'Europe/Brussels', { unit: 'kW' }).asked).not.toContain('unit-doubtful');
});

test('a peak among the registers of a column is left out', () => {
  const rows = DAYS.flatMap((day, i) => [`${day};Afname;${comma(OF_DAYS[i]!)}`, `${day};Piekvermogen;${comma(2)}`]);
  const { series } = read(['Datum;Register;Volume (kWh)', ...rows].join('\n'), 'Europe/Brussels');
  expect(series).toEqual([`electricity import 2025-01-10 2025-02-19 ${sum(OF_DAYS).toFixed(2)}`]);
});

test('the unit and the fuel may stand in a column of kinds', () => {
  const rows = DAYS.map((day, i) => `${OF_DAYS[i]},24 Hr Active Import Interval (kWh),${dotted(day)}`);
  expect(read(['Read Value,Read Type,Read Date', ...rows].join('\n'), 'Europe/Dublin').asked).toEqual([]);
  const gas = DAYS.map((day, i) => `${dotted(day)};Gasmeter;${comma(OF_DAYS[i]!)};kWh`);
  expect(read(['Datum;Metertype;Volume;Eenheid', ...gas].join('\n'), 'Europe/Brussels').series[0]).toMatch(
    /^gas import/,
  );
});

test.each(['Profil +A [kW];Profil -A [kW]', '+A (kW);-A (kW)'])('the two ways under %s', (heads) => {
  const rows = DAYS.slice(0, 4).flatMap((day) =>
    Array.from(
      { length: 96 },
      (_, i) =>
        `${dotted(day)} ${String(Math.floor(i / 4)).padStart(2, '0')}:${String((i % 4) * 15).padStart(2, '0')};${comma(0.4 + (i % 5) / 10)};${comma(0.2)}`,
    ),
  );
  const { series } = read([`Datum;${heads}`, ...rows].join('\n'), 'Europe/Prague', { clock: 'local', stamp: 'start' });
  expect(series.map((one) => one.split(' ')[1])).toEqual(['import', 'export']);
});

test.each([
  'Wassertemperatur',
  'Temperatura da água',
  'Température de l’eau',
  'Vattentemperatur',
  'Teplota vody',
  'Temperatura wody',
])('%s is no weather', (head) => {
  const rows = DAYS.map((day, i) => `${dotted(day)};${comma(((i * 7) % 11) + 2)};${comma(OF_DAYS[i]!)}`);
  const { series } = read([`Datum;${head} (°C);Gas (kWh)`, ...rows].join('\n'), 'Europe/Prague');
  expect(series).toEqual([`gas import 2025-01-10 2025-02-19 ${sum(OF_DAYS).toFixed(2)}`]);
  const alone = DAYS.map((day, i) => `${dotted(day)};${comma(((i * 7) % 11) + 2)}`);
  expect(read([`Datum;${head} (°C)`, ...alone].join('\n'), 'Europe/Prague').series).toEqual([]);
});

test('numbers of hundreds beside 1,152 may make thousands of it: asked, in any language', () => {
  const rows = DAYS.map((day, i) => `${dotted(day)};"${i % 3 === 0 ? 640 + i : `1,${152 + i}`}"`);
  expect(read(['Fecha;Calor [Wh]', ...rows].join('\n'), 'America/Mexico_City').asked).toContain('decimal-asked');
});

test('1,697 of a small unit may be thousands, of a large one it is no home’s', () => {
  const rows = DAYS.map((day, i) => `${dotted(day)};1,${697 + i}`);
  const asked = (unit: string) => read([`Dag;Zonneproductie (${unit})`, ...rows].join('\n'), 'Europe/Amsterdam').asked;
  expect(asked('Wh')).toContain('decimal-asked');
  expect(asked('MJ')).toContain('decimal-asked');
  expect(asked('kWh')).not.toContain('decimal-asked');
});

test.each([0, 1, 2, 3])('a row of the doubled hour that stands twice counts once, row %i of the four', (which) => {
  const stamps = (day: string, clocks: readonly string[]) => clocks.map((clock) => `${day} ${clock}`);
  const clocks = Array.from({ length: 48 }, (_, i) => `${String(i >> 1).padStart(2, '0')}:${i % 2 ? '30' : '00'}`);
  const long = [...clocks.slice(0, 4), '01:00', '01:30', ...clocks.slice(4)];
  const all = ['24', '25', '26', '27'].flatMap((day) => stamps(`2025-10-${day}`, day === '26' ? long : clocks));
  const kWh = all.map((_, i) => 0.2 + ((i * 37) % 101) / 1000);
  const rows = all.map((stamp, i) => `${stamp},${kWh[i]!.toFixed(3)}`);
  const twice = all.indexOf('2025-10-26 01:00') + which;
  const { series } = read(
    ['Start,Electricity used (kWh)', ...rows.toSpliced(twice, 0, rows[twice]!)].join('\n'),
    'Europe/London',
  );
  expect(series).toEqual([`electricity import 2025-10-24 2025-10-28 ${sum(kWh).toFixed(2)}`]);
});

const HALF = sum(OF_DAYS) / 2;
const split = (first: string, second: string, of = 'import', more = '') => [
  `${first}${more};${second}${more}`,
  (v: number) => `${comma(v / 2)};${comma(v / 2)}`,
  [`electricity import`, `electricity ${of}`],
];
test.each([
  split('VT (kWh)', 'NT (kWh)'),
  split('Strefa dzienna (kWh)', 'Strefa nocna (kWh)'),
  split('Haut tarif (kWh)', 'Bas tarif (kWh)'),
  split('Odběr [kWh]', 'Dodávka [kWh]', 'export'),
] as [string, (v: number) => string, string[]][])('two registers of a day, “%s”', (heads, cells, kinds) => {
  const text = [`Datum;${heads}`, ...DAYS.map((day, i) => `${dotted(day)};${cells(OF_DAYS[i]!)}`)].join('\n');
  const { series } = read(text, 'Europe/Prague', { carrier: 'electricity' });
  expect(series.map((one) => one.split(' ').slice(0, 2).join(' '))).toEqual(kinds);
  for (const one of series) expect(Math.abs(Number(one.split(' ').at(-1)) - HALF)).toBeLessThan(0.5);
});

test('columns that nothing tells apart are asked about, and may all be read', () => {
  const text = [
    'Datum;Zähler Anton (kWh);Zähler Berta (kWh)',
    ...DAYS.map((day, i) => `${day};${OF_DAYS[i]};${OF_DAYS[i]! + 1}`),
  ].join('\n');
  expect(read(text, 'Europe/Berlin').asked).toContain('column-asked');
  const { asked, series } = read(text, 'Europe/Berlin', { every: true, carrier: 'electricity' });
  // That both are read says of neither what it counts.
  expect(asked).toEqual(['word-asked', 'word-asked']);
  expect(read(text, 'Europe/Berlin', { every: true, carrier: 'electricity', role: 'import' }).asked).toEqual([]);
  expect(series).toHaveLength(2);
});

test.each([
  ['1° gennaio 2025', (d: number) => `${d}° gennaio 2025`],
  ['1 de enero de 2025', (d: number) => `${d} de enero de 2025`],
])('days written as %s', (_, day) => {
  const rows = Array.from({ length: 31 }, (_, i) => `${day(i + 1)};8,5`);
  expect(read(['Giorno;Energia prelevata (kWh)', ...rows].join('\n'), 'Europe/Rome').series).toEqual([
    'electricity import 2025-01-01 2025-02-01 263.50',
  ]);
});

test('a first day that cannot be read is left out aloud, and is no heading', () => {
  const rows = ['1stes Jan 25;8,5', ...DAYS.map((day) => `${day};8,5`)];
  const { series } = read(['Tag;Netzbezug (kWh)', ...rows].join('\n'), 'Europe/Berlin');
  expect(series).toEqual(['electricity import 2025-01-10 2025-02-19 340.00']);
});

test('Finnish: the district heat of months, and a log of hours', () => {
  const months = 'tammi helmi maalis huhti touko kesä heinä elo syys loka marras joulu'.split(' ');
  const heat = [
    'Kuukausi;Kaukolämpö (MWh)',
    ...months.map((name, i) => `${name}kuu 2025;${comma(OF_MONTHS[i]! / 1000)}`),
  ];
  const [one] = read(heat.join('\n'), 'Europe/Helsinki', { unit: 'MWh' }).series;
  expect(one).toMatch(/^heat heat-output 2025-01-01 2026-01-01/);
  const log = DAYS.flatMap((day) => Array.from({ length: 24 }, (_, h) => `${dotted(day)};${h}:00;0,5`));
  expect(read(['Päivämäärä;Tunti;Kulutus (kWh)', ...log].join('\n'), 'Europe/Helsinki').series).toEqual([
    'electricity import 2025-01-10 2025-02-19 480.00',
  ]);
});

test('gas beside its “spalné teplo” is no heat, and P_el beside Q_th is what the heat pump draws', () => {
  const gas = [
    'Datum;Spotřeba plynu (m3);Spalné teplo (kWh/m3);Spotřeba (kWh)',
    ...DAYS.map((day) => `${day};1,5;10,60;15,9`),
  ];
  expect(read(gas.join('\n'), 'Europe/Prague').series).toEqual(['gas import 2025-01-10 2025-02-19 636.00']);
  const log = [
    'Zeit;P_el [kW];Q_th [kW]',
    ...DAYS.flatMap((day) => Array.from({ length: 24 }, (_, h) => `${day} ${h}:00;1,0;3,5`)),
  ];
  expect(read(log.join('\n'), 'Europe/Vienna').series).toEqual([
    'electricity heat-pump 2025-01-10 2025-02-19 960.00',
    'heat heat-output 2025-01-10 2025-02-19 3360.00',
  ]);
});

test('bags are counted by what they weigh, their price is no amount, and logs in bags are no oil', () => {
  const rows = ['13.10.2023;72;228,00', '14.02.2024;66;240,00', '18.10.2024;72;250,00'];
  for (const bags of ['Säcke Pellets 15 kg', 'Sacs de granulés (15 kg)', 'Sacchi pellet 15 kg'])
    expect(read([`Datum;${bags};Preis €/100 kg`, ...rows].join('\n'), 'Europe/Berlin').series[0]).toMatch(
      / (9936|10368)\.00$/,
    );
  expect(
    read(['Datum;Pellets (Säcke à 8 kg)', ...rows.map((row) => row.slice(0, 13))].join('\n'), 'Europe/Berlin').asked,
  ).toContain('unit-guessed');
  expect(
    read(['Dato;Ved (sekker 60 l)', ...rows.map((row) => row.slice(0, 13))].join('\n'), 'Europe/Oslo').asked,
  ).toEqual(['other-fuel']);
});

test('WP is the heat pump, and VL and RL are no weather', () => {
  const text = [
    'Datum;WP kWh;Haushalt kWh;VL °C;RL °C',
    ...DAYS.map((day, i) => `${day};${OF_DAYS[i]};${OF_DAYS[39 - i]};35,1;30,2`),
  ];
  const { asked, series } = read(text.join('\n'), 'Europe/Berlin', { carrier: 'electricity' });
  expect(asked).toEqual([]);
  expect(series.map((one) => one.split(' ').slice(0, 2).join(' '))).toContain('electricity heat-pump');
});
