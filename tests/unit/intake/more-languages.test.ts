/** Swedish, Norwegian, Portuguese, Polish and Czech files, and what open data of meters and weather calls its columns. */
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
