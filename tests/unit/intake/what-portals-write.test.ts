/** What portals and loggers write beside plain amounts: signs behind numbers, units behind them, credits, heat below nought, pages for files. */
import { describe, expect, test } from 'vitest';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { codesOf, previewOf } from './read-text.ts';

const read = (text: string, fileName = 'a.csv', zone = 'Europe/London') => {
  const { preview } = readFile(
    fileName,
    new TextEncoder().encode(text),
    {},
    {
      zone,
      today: '2026-11-25',
      kWhPerUnit,
      gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
    },
  );
  const codes = (weight: string) => [...new Set(preview.remarks.filter((r) => r.weight === weight).map((r) => r.code))];
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.total.toFixed(1)}`),
    estimated: preview.series.map((s) => s.estimatedCount),
    asked: codes('question'),
    refused: codes('refusal'),
    noted: codes('note'),
  };
};
const two = (n: number) => String(n).padStart(2, '0');
const MONTHS = Array.from({ length: 12 }, (_, i) => i);
const lastOf = (i: number) => new Date(Date.UTC(2025, i + 1, 0)).toISOString().slice(0, 10);
const kWh = (i: number) => 300 + ((i * 37) % 90);
const SUM = MONTHS.reduce((sum, i) => sum + kWh(i), 0);

describe('a sign behind numbers', () => {
  const marked = (sign: string, ...more: string[]) =>
    [
      'Month,Electricity (kWh)',
      ...MONTHS.map((i) => `2025-${two(i + 1)},${kWh(i)}${i % 5 === 2 ? sign : ''}`),
      ...more,
    ].join('\n');
  test.each(['*', ' #', '†'])('that the file does not explain is shown: %s', (sign) => {
    const { series, estimated, noted } = read(marked(sign));
    expect({ series, estimated }).toEqual({ series: [`electricity import ${SUM.toFixed(1)}`], estimated: [0] });
    expect(noted).toContain('sign-unknown');
  });
  test.each([
    ['* = estimated reading', 2],
    ['* geschätzter Wert', 2],
    ['* the meter was exchanged in this month', 0],
    ['* actual', 0],
  ])('means what the last row says: %s', (legend, count) => {
    const { estimated, noted } = read(marked('*', legend));
    expect(estimated).toEqual([count]);
    expect(noted).not.toContain('sign-unknown');
  });
  test('means what a title says', () => {
    expect(read(`Readings with * are estimated\n* estimated\n${marked('*')}`).estimated).toEqual([2]);
  });
});

describe('rows that give back', () => {
  const rows = MONTHS.map((i) => `2025-${two(i + 1)}-01,${lastOf(i)},${kWh(i)},${(kWh(i) / 4).toFixed(2)}`);
  const bills = (at: number, ...more: string[]) =>
    ['From,To,Electricity (kWh),Cost', ...rows.slice(0, at), ...more, ...rows.slice(at)].join('\n');
  test('a bill that is taken back and written again', () => {
    const again = [`2025-04-01,2025-04-30,-${kWh(3)},-1.00`, '2025-04-01,2025-04-30,250,62.50'];
    const { series, noted } = read(bills(6, ...again));
    expect(series).toEqual([`electricity import ${(SUM - kWh(3) + 250).toFixed(1)}`]);
    expect(noted).toContain('taken-back');
  });
  test('a correction over several bills, in either order of the rows', () => {
    const text = bills(6, '2025-03-01,2025-06-30,-120,-30.00');
    const [heading, ...lines] = text.split('\n');
    const total = [`electricity import ${(SUM - 120).toFixed(1)}`];
    expect(read(text).series).toEqual(total);
    expect(read([heading, ...lines.toReversed()].join('\n')).series).toEqual(total);
  });
  test('a correction dated on one day is taken off the bill that it lies in', () => {
    const { series, noted } = read(bills(6, '2025-06-30,2025-06-30,-40,-10.00'));
    expect(series).toEqual([`electricity import ${(SUM - 40).toFixed(1)}`]);
    expect(noted).toContain('taken-back');
  });
  test('more than was used, or of days without a bill, is asked about', () => {
    for (const days of ['2025-04-01,2025-04-30', '2024-04-01,2024-04-30']) {
      const text = bills(6, `${days},-9000,-30.00`);
      expect(codesOf(previewOf(text), 'question')).toEqual(['unread-credit-asked']);
      expect(codesOf(previewOf(text, { choices: { leaveUnread: true } }), 'question')).toEqual([]);
    }
  });
  test.each(['0', ''])('money back with use "%s" is no reading', (use) => {
    const { series, noted } = read(bills(6, `2025-06-01,2025-06-30,${use},-66.00`));
    expect(series).toEqual([`electricity import ${SUM.toFixed(1)}`]);
    expect(noted).toContain('money-back');
  });
});

describe('heat below nought', () => {
  const START = Date.UTC(2025, 0, 1);
  const log = (heat: (i: number) => number) =>
    ['Time,Heat output (kWh),Electricity (kWh)']
      .concat(
        Array.from({ length: 720 }, (_, i) => {
          const at = new Date(START + i * 3_600_000).toISOString().slice(0, 16).replace('T', ' ');
          return `${at},${heat(i).toFixed(2)},0.8`;
        }),
      )
      .join('\n');
  const sumOf = (heat: (i: number) => number) =>
    Array.from({ length: 720 }, (_, i) => heat(i)).reduce((a, b) => a + b, 0);
  test('while defrosting is taken off', () => {
    const heat = (i: number) => (i % 31 === 5 ? -0.5 : 2);
    const { series, noted } = read(log(heat));
    expect(series[0]).toBe(`heat heat-output ${sumOf(heat).toFixed(1)}`);
    expect(noted).toContain('heat-taken-back');
  });
  test('over whole days is cooling and stays out', () => {
    const { series, noted } = read(log((i) => (i > 500 && i < 560 ? -1 : 2)));
    expect(series[0]).toBe('heat heat-output 1322.0');
    expect(noted).toContain('negative');
  });
});

describe('units of gas', () => {
  const GJ = [15, 14, 11, 7, 3, 2, 1.5, 1.5, 3, 7, 11, 14.5];
  const TOTAL = GJ.reduce((a, b) => a + b, 0) / 0.0036;
  /** How many of a unit a GJ is: by definition of the therm (105.5056 MJ), the BTU (1055.056 J) and the calorie (4.1868 J). */
  const UNITS: readonly (readonly [string, number])[] = [
    ['GJ', 1],
    ['MMBtu', 0.947_817],
    ['kBtu', 947.817],
    ['Dth', 0.947_817],
    ['therms', 9.478_17],
    ['Gcal', 0.238_846],
  ];
  const near = ([series]: readonly string[]) => Math.round(Number(series?.split(' ')[2]) / TOTAL / 0.000_1) / 10_000;
  test.each(UNITS)('%s above, behind and beside the numbers', (unit, count) => {
    const amounts = GJ.map((value) => (value * count).toFixed(4));
    const rows = (of: (amount: string) => string) =>
      MONTHS.map((i) => `2025-${two(i + 1)},${of(amounts[i]!)}`).join('\n');
    expect(near(read(`Month,Gas (${unit})\n${rows((v) => v)}`).series)).toBeCloseTo(1, 3);
    expect(near(read(`Month,Gas used\n${rows((v) => `${v} ${unit}`)}`).series)).toBeCloseTo(1, 3);
    const beside = read(`Month,Usage,Unit\n${rows((v) => `${v},${unit}`)}`);
    expect(near(beside.series)).toBeCloseTo(1, 3);
    expect(beside.series[0]).toMatch(/^gas/);
  });
  test('a standard cubic metre is not corrected, a metered one is', () => {
    const of = (unit: string) =>
      read(`Month,Gas (${unit})\n${MONTHS.map((i) => `2025-${two(i + 1)},${kWh(i)}`).join('\n')}`).series;
    expect(of('Smc')).toEqual([`gas import ${((SUM * 39.5) / 3.6).toFixed(1)}`]);
    expect(of('m³')).toEqual([`gas import ${((SUM * 1.02264 * 39.5) / 3.6).toFixed(1)}`]);
  });
});

describe('pages with tables', () => {
  const rows = MONTHS.map((i) => [`2025-${two(i + 1)}-01`, lastOf(i), String(kWh(i))]);
  const table = (cells: readonly (readonly string[])[]) =>
    `<table class="t">${cells.map((row) => `<tr>${row.map((cell) => `<td>${cell}</td>`).join('')}</tr>`).join('\r\n')}</table>`;
  const total = [`electricity import ${SUM.toFixed(1)}`];
  const heads = ['From', 'To', 'Electricity&nbsp;(kWh)'];
  test('under the name of a spreadsheet', () => {
    const page = `<html xmlns:x="urn:x"><head><style>td {x: y}</style></head><body>${table([heads, ...rows])}</body></html>`;
    expect(read(page, 'export.xls').series).toEqual(total);
  });
  test('within tables of the layout, with scripts, remarks, and tags that are not closed', () => {
    const open = `<table><tr><th>From<th>To<th>Electricity (kWh)${rows.map((row) => `<tr><td>${row.join('<td>')}`).join('')}</table>`;
    const page = `<!DOCTYPE html><body><!-- <table><tr><td>9 --><script>"<table><tr><td>1</td><td>2"</script><table><tr><td>Menu</td><td>${open}</td></tr></table>`;
    expect(read(page, 'usage.html').series).toEqual(total);
  });
  test('a cell over several rows stands in each of them', () => {
    const cells = MONTHS.map(
      (i) => `<tr><td rowspan="2">2025-${two(i + 1)}<td>Gas<td>${kWh(i)}<tr><td>Electricity<td>${2 * kWh(i)}`,
    );
    const { series } = read(`<table><tr><th>Month<th>Fuel<th>Used (kWh)${cells.join('')}</table>`, 'a.html');
    expect(series).toEqual([`gas import ${SUM.toFixed(1)}`, `electricity import ${(2 * SUM).toFixed(1)}`]);
  });
  test('without one is refused as a page', () => {
    expect(read('<html><body><p>Please log in.</p><table><tr><td>a<td>b</table></body></html>').refused).toEqual([
      'file-foreign',
    ]);
  });
});

test('a register of the evening is read beside those of day and night', () => {
  const rows = Array.from({ length: 40 }, (_, i) => {
    const date = new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10);
    return `${date},${3 + (i % 3)},${2 + (i % 5)},${1 + (i % 2)}`;
  });
  const { series } = read(`Date,Day kWh,Evening kWh,Night kWh\n${rows.join('\n')}`);
  expect(series).toHaveLength(3);
});

describe('m³ in some rows and kWh in others', () => {
  const KWH_IN_M3 = (1.02264 * 39.5) / 3.6;
  const inM3 = (i: number) => i < 5;
  const amount = (i: number) => (inM3(i) ? kWh(i) : 10 * kWh(i));
  const unit = (i: number) => (inM3(i) ? 'm³' : 'kWh');
  const total = MONTHS.reduce((sum, i) => sum + amount(i) * (inM3(i) ? KWH_IN_M3 : 1), 0);
  const list = (heading: string, row: (i: number) => string) =>
    read([heading, ...MONTHS.map((i) => `2025-${two(i + 1)},${row(i)}`)].join('\n'));
  test.each([
    ['behind the numbers', list('Month,Gas used', (i) => `${amount(i)} ${unit(i)}`)],
    ['in a column', list('Month,Gas used,Unit', (i) => `${amount(i)},${unit(i)}`)],
  ])('%s', (_, { series, asked, noted }) => {
    expect(series).toEqual([`gas import ${total.toFixed(1)}`]);
    expect(asked).toEqual(['calorific-assumed']);
    expect(noted).toContain('units-evened');
  });
  test('on the same days are of two fuels', () => {
    const rows = MONTHS.flatMap((i) => [`2025-${two(i + 1)},${kWh(i)},m³`, `2025-${two(i + 1)},${kWh(i)},kWh`]);
    const gas = `gas import ${(SUM * KWH_IN_M3).toFixed(1)}`;
    expect(read(['Month,Used,Unit', ...rows].join('\n')).series).toEqual([gas, `electricity import ${SUM.toFixed(1)}`]);
  });
  test('litres among kWh are refused', () => {
    expect(list('Month,Used', (i) => `${amount(i)} ${inM3(i) ? 'litres' : 'kWh'}`).refused).toContain('units-by-row');
  });
});

test.each(['Cost (£)', 'Standing charge', 'VAT', 'Paid'])(
  'a row of money among rows by kind is none of use: %s',
  (money) => {
    const rows = MONTHS.flatMap((i) => [
      `2025-${two(i + 1)},Electricity (kWh),${kWh(i)}`,
      `2025-${two(i + 1)},${money},${kWh(i) / 4}`,
    ]);
    expect(read(['Month,Kind,Value', ...rows].join('\n')).series).toEqual([`electricity import ${SUM.toFixed(1)}`]);
  },
);

describe('columns beside each other', () => {
  const days = Array.from({ length: 40 }, (_, i) => new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10));
  const used = (i: number) => 9 + ((i * 7) % 11) / 2;
  const total = (of: (i: number) => number) => days.reduce((sum, _, i) => sum + of(i), 0).toFixed(1);
  const daily = (heading: string, row: (i: number) => string) =>
    read([heading, ...days.map((day, i) => `${day};${row(i)}`)].join('\n'));
  test.each([
    'Electricity heating (kWh);Electricity hot water (kWh);Heat heating (kWh);Heat hot water (kWh)',
    'ElectricalEnergyUsed:Heating (kWh);ElectricalEnergyUsed:HotWater (kWh);HeatMade:Heating (kWh);HeatMade:HotWater (kWh)',
    'Strom Heizung (kWh);Strom Warmwasser (kWh);Wärme Heizung (kWh);Wärme Warmwasser (kWh)',
  ])('electricity that makes hot water is no water: %s', (heading) => {
    const { series } = daily(`Date;${heading}`, (i) =>
      [used(i), used(i) / 4, 3 * used(i), used(i) / 2].map((n) => n.toFixed(3)).join(';'),
    );
    expect(series).toEqual([
      `electricity heat-pump ${total(used)}`,
      `electricity heat-pump ${total((i) => used(i) / 4)}`,
      `heat heat-output ${total((i) => 3 * used(i))}`,
      `heat heat-output ${total((i) => used(i) / 2)}`,
    ]);
  });
  test.each(['Compressor starts', 'Compressor hours', 'Verdichterfrequenz', 'HP speed', 'Burner hours'])(
    'what a machine counts is no energy: %s',
    (heading) => {
      const { series } = daily(`Date;${heading};Electricity (kWh)`, (i) => `${3 + (i % 5)};${used(i).toFixed(1)}`);
      expect(series).toEqual([`electricity import ${total(used)}`]);
    },
  );
  test('flow and return in [C] beside a volume are a meter of heat, and m³ × °C is no volume', () => {
    let [heat, water] = [812.4, 14_211];
    const { series } = daily('Dato;Energi 1 [MWh];Volumen 1 [m3];E8 [m3*C];Fremløb [C];Returløb [C]', (i) => {
      heat += used(i) / 1000;
      water += used(i) / 30;
      return [heat.toFixed(4), water.toFixed(2), (water * 70).toFixed(0), 71, 36].join(';').replaceAll('.', ',');
    });
    expect(series.map((one) => one.split(' ')[0])).toEqual(['heat', 'water']);
  });
  test('yes and no beside kWh are no energy; a moment tells the rows of one day apart', () => {
    const quarters = Array.from({ length: 3 * 96 }, (_, i) => new Date(Date.UTC(2025, 0, 31, 23) + i * 900_000));
    const dayOf = (at: Date) => new Date(at.getTime() + 3_600_000).toISOString().slice(0, 10);
    const rows = quarters.map((at, i) => `${dayOf(at)},${at.toISOString()},${(1 + (i % 9)) / 20},${(i % 7) / 10},1,0`);
    const { series, asked, refused } = read(
      ['Datum,Datum_Start,Afname_kWh,Injectie_kWh,Warmtepomp,Zonnepanelen', ...rows].join('\n'),
      'a.csv',
      'Europe/Brussels',
    );
    const sum = (of: (i: number) => number) => quarters.reduce((all, _, i) => all + of(i), 0).toFixed(1);
    expect({ series, asked, refused }).toEqual({
      series: [
        `electricity import ${sum((i) => (1 + (i % 9)) / 20)}`,
        `electricity export ${sum((i) => (i % 7) / 10)}`,
      ],
      asked: [],
      refused: [],
    });
  });
});

test.each(['Read on', 'Ablesung am', 'Relevé le'])(
  'a date beside the old and the new reading is that of the new: %s',
  (when) => {
    const ends = ['2025-01-14', '2025-02-20', '2025-03-17', '2025-04-28', '2025-06-02'];
    const readings = [10_200, 10_512, 10_790, 11_020, 11_260, 11_401];
    const rows = ends.map((day, i) => `${day};${readings[i]};${readings[i + 1]};${readings[i + 1]! - readings[i]!}`);
    const { preview } = readFile(
      'a.csv',
      new TextEncoder().encode([`${when};Reading old;Reading new;Electricity (kWh)`, ...rows].join('\n')),
      { carrier: 'electricity' },
      {
        zone: 'Europe/London',
        today: '2026-11-25',
        kWhPerUnit,
        gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
      },
    );
    expect(preview.series.map(({ from, to, total }) => ({ from, to, total }))).toEqual([
      { from: ends[0], to: ends.at(-1), total: readings.at(-1)! - readings[1]! },
    ]);
  },
);

describe('what a file says in other words', () => {
  const days = Array.from({ length: 40 }, (_, i) => new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10));
  const used = (i: number) => 9 + ((i * 7) % 11) / 2;
  const total = (of: (i: number) => number) => days.reduce((sum, _, i) => sum + of(i), 0).toFixed(1);
  const daily = (heading: string, row: (i: number) => string) =>
    read([heading, ...days.map((day, i) => `${day};${row(i)}`)].join('\n'));
  test.each([
    ['Spotřeba TČ (kWh);Vyrobené teplo (kWh)', 3, true],
    ['Förbrukad energi [kWh];Producerad värme [kWh]', 3.4, true],
    ['Consumed (kWh);Heat produced (kWh)', 2.8, true],
    // A boiler makes less heat than it burns.
    ['Spotřeba (kWh);Vyrobené teplo (kWh)', 0.9, false],
  ])('only a heat pump makes so much more heat than it takes: %s, %f', (heading, times, isHeatPump) => {
    const { series } = daily(`Date;${heading}`, (i) => `${used(i).toFixed(2)};${(times * used(i)).toFixed(2)}`);
    expect(series.includes(`electricity heat-pump ${total(used)}`)).toBe(isHeatPump);
  });
  test('days that go up for weeks are asked about, though they begin high', () => {
    const { asked } = daily(
      'Date;Yield today (Wh);Yield total (kWh)',
      (i) => `${Math.round(70 * used(i))};${(300 + i * 0.7).toFixed(1)}`,
    );
    expect(asked).toContain('register-rising-asked');
  });
  test.each(['Afkøling (°C)', 'Jäähtymä (°C)', 'Avkylning (°C)', 'Spreizung (°C)'])(
    'how far the water cools is no weather: %s',
    (heading) => {
      const { series } = daily(
        `Date;Heat (kWh);Volume (m³);${heading}`,
        (i) => `${used(i)};${used(i) / 30};${20 + (i % 5)}`,
      );
      expect(series.map((one) => one.split(' ')[0])).toEqual(['heat', 'water']);
    },
  );
  test('the gas of another column does not make gas of a counter beside it', () => {
    const hours = Array.from({ length: 400 }, (_, i) => new Date(Date.UTC(2025, 0, 6) + i * 3_600_000).toISOString());
    const sums = [1000, 2000, 10, 500];
    const rows = hours.map((at, i) => {
      [0.2 + (i % 5) / 10, i % 7 === 0 ? 0.3 : 0, i % 9 === 0 ? 0.1 : 0, (i % 3) / 10].forEach((more, k) => {
        sums[k]! += more;
      });
      return [at, ...sums.map((sum) => sum.toFixed(3))].join(';');
    });
    const { series } = read(
      ['TIME;USED_KWH_181;USED_KWH_182;SENT_KWH_281;USED_GAS', ...rows].join('\n'),
      'a.csv',
      'Europe/Amsterdam',
    );
    expect(series.map((one) => one.split(' ').slice(0, 2).join(' '))).toEqual([
      'electricity import',
      'electricity import',
      'electricity export',
      'gas import',
    ]);
  });
  test.each([['Stav VT;Stav NT'], ['Stan strefa dzienna;Stan strefa nocna']])('words for a reading: %s', (heading) => {
    const rows = [0, 1, 2, 3].map((i) => `2025-0${i + 1}-01;${10_234 + 110 * i};${20_456 + 260 * i}`);
    const { series, asked } = read([`Datum;${heading}`, ...rows].join('\n'));
    expect(series).toEqual(['electricity import 330.0', 'electricity import 780.0']);
    expect(asked).toEqual(['unit-guessed']);
  });
});

describe('heat that is made or given, and what it is made with', () => {
  const days = Array.from({ length: 40 }, (_, i) => new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10));
  const used = (i: number) => 9 + ((i * 7) % 11) / 2;
  const total = (times: number) => (times * days.reduce((sum, _, i) => sum + used(i), 0)).toFixed(1);
  const daily = (heading: string, times: readonly number[]) =>
    read(
      [`Date;${heading}`, ...days.map((day, i) => [day, ...times.map((n) => (n * used(i)).toFixed(3))].join(';'))].join(
        '\n',
      ),
    );
  test.each([
    'Conso élec chauffage (kWh);Conso élec ECS (kWh);Énergie restituée chauffage (kWh);Énergie restituée ECS (kWh)',
    'Consumo eléctrico calefacción (kWh);Consumo eléctrico ACS (kWh);Energía entregada calefacción (kWh);Energía entregada ACS (kWh)',
    'Verbruik verwarming (kWh);Verbruik tapwater (kWh);Opbrengst verwarming (kWh);Opbrengst tapwater (kWh)',
  ])('for the rooms and for hot water: %s', (heading) => {
    expect(daily(heading, [1, 0.2, 3, 0.5]).series).toEqual([
      `electricity heat-pump ${total(1)}`,
      `electricity heat-pump ${total(0.2)}`,
      `heat heat-output ${total(3)}`,
      `heat heat-output ${total(0.5)}`,
    ]);
  });
  test.each([
    'Elforbrug varmepumpe (kWh);Varmeproduktion (kWh)',
    'Sähkönkulutus (kWh);Tuotettu lämpö (kWh)',
    'Ottoenergia (kWh);Tuotettu lämpö (kWh)',
    'Consumo bomba de calor (kWh);Energia térmica produzida (kWh)',
    'Consommation pompe à chaleur (kWh);Chaleur produite (kWh)',
    'Consumo pompa di calore (kWh);Calore prodotto (kWh)',
    'Zużycie pompa ciepła (kWh);Ciepło wytworzone (kWh)',
    'Zugeführte Energie (kWh);Abgegebene Energie Heizung (kWh)',
  ])('in a word of its own: %s', (heading) => {
    expect(daily(heading, [1, 3]).series).toEqual([
      `electricity heat-pump ${total(1)}`,
      `heat heat-output ${total(3)}`,
    ]);
  });
  test('energy without a name beside heat is asked about', () => {
    expect(daily('Moottori (kWh);Tuotettu lämpö (kWh)', [1, 3]).asked).toContain('column-asked');
  });
});
