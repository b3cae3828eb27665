import { describe, expect, test } from 'vitest';
import type { IntakeChoices, IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const contextOf = (zone: string): IntakeContext => ({
  zone,
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
});
const DAY = 86_400_000;
const rowsOf = (count: number, minutes: number, row: (at: Date, i: number) => string): string[] =>
  Array.from({ length: count }, (_, i) => row(new Date(Date.UTC(2025, 0, 14) + i * minutes * 60_000), i));
const iso = (at: Date) => at.toISOString().slice(0, 16).replace('T', ' ');
const day = (at: Date) => iso(at).slice(0, 10);

function read(lines: readonly string[], choices: IntakeChoices = {}, zone = 'Europe/London', name = 'file.csv') {
  const { preview } = readFile(name, new TextEncoder().encode(`${lines.join('\n')}\n`), choices, contextOf(zone));
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.from} ${Number(s.total.toFixed(2))}`),
    open: preview.remarks.filter(({ weight }) => weight !== 'note').map(({ code }) => code),
    uses: preview.uses?.map(({ use }) => use),
  };
}

describe('what the header says, holds', () => {
  test.each([
    ['Active power (kW)', 60, '0.5', 24],
    ['Leistung [W]', 15, '500', 24],
    ['Puissance (W)', 30, '500', 24],
  ])('%s every %d minutes of %s is a mean over each', (heading, minutes, value, kWh) => {
    const { series, open } = read([
      `Start,${heading}`,
      ...rowsOf((2 * 1440) / minutes, minutes, (at) => `${iso(at)},${value}`),
    ]);
    expect([series, open]).toEqual([[`electricity import 2025-01-14 ${kWh}`], []]);
  });
  test.each([
    [0, false],
    [2, true],
  ])('an own use that is %d in the one row that differs is asked about: %s', (own, isAsked) => {
    const rows = rowsOf(48, 60, (at, i) => `${iso(at)};1;${i === 40 ? own : 0}`);
    const { open } = read(['Fecha;Consumo_kWh;Energia_autoconsumida_kWh', ...rows], {}, 'Europe/Madrid');
    expect(open.includes('own-use-asked')).toBe(isAsked);
  });
  test('°F are turned into °C; degrees that are no weather in °C are asked about', () => {
    const rows = rowsOf(40, 1440, (at, i) => `${day(at)},${50 + (i % 5) * 9}`);
    expect(read(['Date,Outdoor temperature (°F)', ...rows])).toMatchObject({
      series: ['outdoor-temperature weather 2025-01-14 20'],
      open: [],
    });
    expect(read(['Date,Outdoor temperature (°C)', ...rows]).open).toEqual(['degrees-doubtful']);
  });
  test.each([
    'Einspeisung',
    'Surplus',
    'Injection',
    'Vertido',
    'Immissione',
    'Teruglevering',
    'Solgt til nettet',
    'Exported',
  ])('%s is sent out, whatever the file is called', (word) => {
    const { series } = read(
      [`Date;${word} (kWh)`, ...rowsOf(20, 1440, (at) => `${day(at)};3`)],
      {},
      'Europe/Paris',
      'electricity.csv',
    );
    expect(series).toEqual(['electricity export 2025-01-14 60']);
  });
  test('a file called an export is of use, and an export of electricity is asked about', () => {
    const rows = ['Date,kWh', ...rowsOf(20, 1440, (at) => `${day(at)},8`)];
    expect(read(rows, {}, 'Europe/London', 'export.csv')).toMatchObject({
      series: ['electricity import 2025-01-14 160'],
      open: ['carrier-guessed'],
    });
    expect(read(rows, {}, 'Europe/London', 'electricity-export.csv').open).toEqual(['direction-asked']);
  });
  test.each([
    ['feed-in.csv', 'Electricity (kWh)', ['direction-of-name-asked']],
    ['solar generation.csv', 'Electricity (kWh)', ['direction-of-name-asked']],
    ['electricity export.csv', 'Electricity (kWh)', ['direction-of-name-asked']],
    ['heat pump.csv', 'Electricity used (kWh)', ['direction-of-name-asked']],
    ['heat pump.csv', 'Heat pump electricity (kWh)', []],
    ['feed-in.csv', 'Grid import (kWh)', ['title-way-asked']],
    ['Einspeisung.csv', 'Electricity used (kWh)', ['title-way-asked']],
    ['overskudsproduktion el.csv', 'Elforbrug (kWh)', ['title-way-asked']],
    ['teruglevering.csv', 'Stroomverbruik (kWh)', ['title-way-asked']],
    ['excedentes.csv', 'Consumo electricidad (kWh)', ['title-way-asked']],
    ['netzbezug.csv', 'Einspeisung (kWh)', ['title-way-asked']],
    ['heat pump.csv', 'Gas (kWh)', ['title-energy-asked']],
    ['consommation gaz.csv', 'Electricité (kWh)', ['title-energy-asked']],
    ['consumo gas naturale.csv', 'Energia elettrica (kWh)', ['title-energy-asked']],
    ['heating.csv', 'Gas (kWh)', []],
    ['gas and electricity.csv', 'Gas (kWh)', []],
    ['Solar House.csv', 'Electricity used (kWh)', []],
    ['solar 3.csv', 'Solar export (kWh)', []],
    ['electricity import.csv', 'Electricity (kWh)', []],
    ['meter data export.csv', 'Electricity (kWh)', []],
  ])('of %s, “%s” asks %j', (file, heading, open) => {
    const rows = [`Date,${heading}`, ...rowsOf(20, 1440, (at) => `${day(at)},8`)];
    expect(read(rows, {}, 'Europe/London', file).open).toEqual(open);
  });
  test.each([
    ['Main electricity', 'import'],
    ['Mains electricity', 'import'],
    ['Main pump electricity', 'heat-pump'],
    ['Strom gesamt', 'heat-pump'],
  ])('“%s” beside heat and the heat pump’s own is of role %s', (heading, role) => {
    const rows = rowsOf(20, 1440, (at) => `${day(at)},18,10,31`);
    const head = `Date,${heading} (kWh),Heat pump electricity (kWh),Heat output (kWh)`;
    expect(read([head, ...rows]).series[0]).toMatch(new RegExp(`^electricity ${role} `));
  });
  test.each([
    ['Temperatur (1/10 °C)', []],
    ['Air temp (10ths of C)', []],
    ['Temperature (0.1 °C)', []],
    ['Outdoor temperature', ['unit-guessed']],
  ])('of whole numbers under “%s” tenths of a degree are read, or offered', (heading, open) => {
    const degrees = (i: number) => Math.round(120 - 110 * Math.cos(i / 14) + (((i * 7) % 11) - 5) * 6);
    const rows = rowsOf(90, 1440, (at, i) => `${day(at)},${degrees(i)}`);
    const mean = Array.from({ length: 90 }, (_, i) => degrees(i)).reduce((sum, of) => sum + of) / 900;
    const tenths = [`Date,${heading}`, ...rows];
    expect(read(tenths).open).toEqual(open);
    const series = [`outdoor-temperature weather 2025-01-14 ${Number(mean.toFixed(2))}`];
    expect(read(tenths).series).toEqual(series);
    expect(read(tenths, { unit: 'tenth of °C' })).toMatchObject({ series, open: [] });
  });
  test('a title that names another energy is asked about, until it is said or another column has it', () => {
    const rows = rowsOf(20, 1440, (at) => `${day(at)},8`);
    const titled = ['Gas used by day', 'Date,Electricity (kWh)', ...rows];
    expect(read(titled).open).toEqual(['title-energy-asked']);
    for (const said of [{ carrier: 'gas' }, { carrier: 'electricity' }, { role: 'heat-pump' }] as const)
      expect(read(titled, said).open).toEqual([]);
    const both = ['Gas used by day', 'Date,Electricity (kWh),Gas (kWh)', ...rows.map((row) => `${row},9`)];
    expect(read(both).open).toEqual([]);
  });
  test('a report generated on a day is of use', () => {
    const rows = rowsOf(96, 30, (at) => `${iso(at)};500`);
    expect(read(['Generado el 02/01/2026', 'Desde;Potencia (W)', ...rows]).series).toEqual([
      'electricity import 2025-01-14 24',
    ]);
  });
  test('the water of a heat meter is kept by volume beside its heat', () => {
    const rows = rowsOf(20, 1440, (at) => `${day(at)},1.5,30`);
    expect(read(['Datum,Volumen (m³),Wärmemenge (kWh)', ...rows])).toMatchObject({
      series: ['water import 2025-01-14 30', 'heat heat-output 2025-01-14 600'],
      open: [],
    });
  });
  test('latitude and sunshine are no electricity', () => {
    const rows = rowsOf(70, 1440, (at, i) => `${day(at)},51.5,${i % 9},${(i * 37) % 11}`);
    expect(read(['Date,Latitude,Sunshine (h),Temperature (°C)', ...rows]).uses).toEqual([
      'stamp',
      'identifier',
      'weather',
      'value',
    ]);
    const bare = rows.map((row) => row.split(',').slice(0, 3).join(','));
    expect(read(['Date,Latitude,Sunshine (h)', ...bare]).series).toEqual([]);
  });
  test('of gas by volume and its energy beside it the energy is taken', () => {
    const rows = ['2025-01-01,2025-01-31,100,1118', '2025-02-01,2025-02-28,90,1006'];
    expect(read(['From,To,Gas used (m3),Energy (kWh)', ...rows])).toMatchObject({
      series: ['gas import 2025-01-01 2124'],
      open: [],
    });
  });
  test('pulses wait for the number on the meter', () => {
    const rows = ['Start,Electricity pulses', ...rowsOf(96, 30, (at) => `${iso(at)},100`)];
    expect(read(rows).open).toEqual(['pulses-asked']);
    expect(read(rows, { pulsesPerKWh: 800 })).toMatchObject({ series: ['electricity import 2025-01-14 12'], open: [] });
  });
  test('readings of both signs are two records', () => {
    const rows = rowsOf(96, 30, (at, i) => `${iso(at)},${i % 3 === 0 ? -0.5 : 1}`);
    const both = ['electricity import 2025-01-14 64', 'electricity export 2025-01-14 16'];
    expect(read(['Start,Electricity (kWh)', ...rows])).toMatchObject({ series: both, open: ['net-asked'] });
    expect(read(['Start,Net electricity (kWh)', ...rows])).toMatchObject({ series: both, open: [] });
  });
});

describe('time', () => {
  test('an end stamp in the second column, named in many words', () => {
    const rows = rowsOf(96, 30, (at) => `001,${iso(new Date(at.getTime() + 30 * 60_000))},0.5`);
    expect(read(['Site,Read Date and End Time,Electricity kWh', ...rows]).series).toEqual([
      'electricity import 2025-01-14 48',
    ]);
  });
  test.each([String, (hour: number) => `${String(hour).padStart(2, '0')}:00`])(
    'hours 1 to 24, with 23 and 25 on the days of the clock',
    (written) => {
      const rows: string[] = [];
      for (let at = Date.UTC(2025, 2, 28); at < Date.UTC(2025, 10, 1); at += DAY) {
        const date = day(new Date(at));
        const hours = date === '2025-03-30' ? 23 : date === '2025-10-26' ? 25 : 24;
        for (let hour = 1; hour <= hours; hour++) rows.push(`${date};${written(hour)};0,5`);
      }
      const { series, open } = read(['Fecha;Hora;Consumo eléctrico (kWh)', ...rows], {}, 'Europe/Madrid');
      expect([series, open]).toEqual([[`electricity import 2025-03-28 ${rows.length / 2}`], []]);
    },
  );
  test('hours 01:00 to 24:00 by the clock leave the hour of spring out', () => {
    const rows: string[] = [];
    for (let at = Date.UTC(2025, 2, 28); at < Date.UTC(2025, 3, 2); at += DAY) {
      const date = day(new Date(at));
      for (let hour = 1; hour <= 24; hour++)
        if (date !== '2025-03-30' || hour !== 2) rows.push(`${date};${String(hour).padStart(2, '0')}:00;0,5`);
    }
    const { series, open } = read(['Date;Heure;Consommation électricité (kWh)', ...rows], {}, 'Europe/Paris');
    expect([series, open]).toEqual([[`electricity import 2025-03-28 ${rows.length / 2}`], []]);
  });
  test('monthly stamps with offsets are months, and those of another clock are asked about', () => {
    const rows = [
      '2024-12-31T23:00:00Z,300',
      '2025-01-31T23:00:00Z,280',
      '2025-02-28T23:00:00Z,250',
      '2025-03-31T22:00:00Z,200',
    ];
    const file = ['Period,Electricity kWh', ...rows];
    expect(read(file, {}, 'Europe/Madrid')).toMatchObject({ series: ['electricity import 2025-01-01 1030'], open: [] });
    expect(read(file).open).toEqual(['zone-asked']);
  });
  test.each([
    ['Start', 0, 0],
    ['End', 1_800_000, 0],
    ['End', 0, 1_800_000],
  ])('a home abroad whose clock was not named is asked about: %s, %i, %i', (heading, before, after) => {
    const rows: string[] = [];
    for (let at = Date.UTC(2025, 2, 28); at < Date.UTC(2025, 3, 2); at += 1_800_000) {
      const civil = at + before + (at + before >= Date.UTC(2025, 2, 30, 1) ? 7_200_000 : 3_600_000);
      rows.push(`${iso(new Date(civil + after))},0.4`);
    }
    const file = [`${heading},Electricity kWh`, ...rows];
    expect(read(file, {}, 'Europe/Berlin').open).toEqual([]);
    expect(read(file).open).toEqual(['zone-asked']);
  });
  test('a column named start begins its periods', () => {
    const rows = ['2025-01-03,900', '2025-02-05,700', '2025-03-02,500', '2025-04-07,200'];
    expect(read(['Start,Gas kWh', ...rows])).toMatchObject({ series: ['gas import 2025-01-03 2100'], open: [] });
  });
});

describe('registers, weather and size', () => {
  test('six rates of a daily counter are six records', () => {
    const rows = rowsOf(
      40,
      1440,
      (at, i) => `${day(at)},${[1, 2, 3, 4, 5, 6].map((r) => 1000 * r + i * (r + 0.5)).join(',')}`,
    );
    const heads = [1, 2, 3, 4, 5, 6].map((r) => `EAS F${r} (kWh)`).join(',');
    expect(read([`Date,${heads}`, ...rows]).series.length).toBe(6);
  });
  test('rows of which each time stands twice are no record', () => {
    const rows = rowsOf(40, 30, (at, i) => `${iso(at)},0.${1 + (i % 5)}\n${iso(at)},0.${3 + (i % 6)}`);
    expect(read(['Start,Electricity kWh', ...rows])).toMatchObject({ series: [], open: ['times-doubled'] });
  });
  test.each([
    ['the same', () => '500'],
    ['another', (i: number) => String(500 + (i % 7))],
  ])('rows that are seconds apart and of %s power are no repeats', (_, power) => {
    const rows = Array.from({ length: 900 }, (_row, i) => {
      const at = new Date(Date.UTC(2025, 0, 14) + i * 8000).toISOString();
      return `${at.slice(0, 19).replace('T', ' ')},${power(i)}`;
    });
    expect(read(['Start,Electricity (W)', ...rows]).open).toEqual(['below-minutes']);
  });
  test.each([
    ['flow_temp,return_temp,power_kW', '35,30,0.5', ['part-pump-asked']],
    ['flow_temp,return_temp,house_kW', '35,30,0.5', []],
    ['brine_in_C,elec_W', '4,500', ['part-pump-asked']],
  ])('electricity among %s may be of the heat pump alone', (heads, cells, asked) => {
    expect(read([`Time,${heads}`, ...rowsOf(48, 60, (at) => `${iso(at)},${cells}`)]).open).toEqual(asked);
  });
  test('power of heat and of electricity in a log is what comes of each', () => {
    const rows = rowsOf(48, 60, (at) => `${iso(at)},5,35,30,2,0.5`);
    expect(read(['Time,outdoor_temp,flow_temp,return_temp,heat_kW,elec_kW', ...rows]).series).toEqual(
      expect.arrayContaining(['heat heat-output 2025-01-14 96', 'electricity heat-pump 2025-01-14 24']),
    );
  });
  test('means of many years are not the weather of the year in their stamps', () => {
    const rows = rowsOf(300, 1440, (at, i) => `${day(at)},${(8 + 7 * Math.sin(i / 58)).toFixed(2)}`);
    expect(read(['Date,Temperature (°C)', ...rows]).open).toEqual(['weather-smooth-asked']);
    expect(read(['Mean of 1991-2020', 'Date,Temperature (°C)', ...rows]).open).toEqual(['weather-asked']);
    expect(read(['Date,Temperature (°C)', ...rows], { weatherMeasured: true }).open).toEqual([]);
  });
  test('a cold hour of 60 kWh of gas is kept', () => {
    const rows = rowsOf(48, 60, (at, i) => `${iso(at)},${i === 7 ? 60 : 4}`);
    expect(read(['Start,Gas kWh', ...rows]).series).toEqual(['gas import 2025-01-14 248']);
  });
});
