/** Rows that are of another kind than the others: forecasts, other units, a reading that sticks out, a second value for one time. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const two = (n: number) => String(n).padStart(2, '0');
const range = (n: number) => Array.from({ length: n }, (_, i) => i);
const totals = (content: readonly string[], given = {}) => {
  const preview = previewOf(content, given);
  return { totals: preview.series.map(({ total }) => Number(total.toFixed(1))), preview };
};

describe('forecasts', () => {
  const degrees = (i: number) => 3 + ((i * 7) % 5);
  const weather = (heading: string, mark: (day: number) => string) => [
    `Time,Outdoor temperature (°C),${heading}`,
    ...range(12 * 24).map(
      (h) => `2025-02-${two(1 + Math.floor(h / 24))} ${two(h % 24)}:00,${degrees(h)},${mark(Math.floor(h / 24))}`,
    ),
  ];
  test.each([
    ['kind', 'observed', 'forecast'],
    ['Art', 'gemessen', 'Vorhersage'],
    ['type', 'observation', 'prévision'],
    ['forecast', 'no', 'yes'],
    ['is_forecast', '0', '1'],
  ])('are left out by name: %s %s', (heading, measured, forecast) => {
    const preview = previewOf(weather(heading, (day) => (day < 9 ? measured : forecast)));
    expect(preview.series[0]).toMatchObject({ from: '2025-02-01', to: '2025-02-10' });
    expect(preview.series).toHaveLength(1);
    expect(codesOf(preview)).toContain('columns-left-out');
  });
  test.each([
    ['notes', (day: number) => (day === 3 ? 'the forecast was for snow and it came' : '')],
    ['kind', (day: number) => (day < 9 ? 'observed' : 'projected')],
  ])('are not what a remark or an estimate is: %s', (heading, mark) => {
    const preview = previewOf(weather(heading, mark));
    expect(preview.series[0]).toMatchObject({ from: '2025-02-01', to: '2025-02-13' });
    expect(codesOf(preview)).not.toContain('registers-by-column');
  });
});

describe('units of a column of their own', () => {
  const bought = (amounts: readonly (readonly [string, string])[], fuel: string) => [
    `Date,${fuel} delivered,Unit`,
    ...amounts.map(([amount, unit], i) => `${two(3 + i)}/${two(1 + i * 2)}/2024,${amount},${unit}`),
  ];
  test.each([
    ['one thing, tonnes and kg', 'Pellets', ['4.5 t', '300 kg', '4 Tonnen', '450 kg'], 22_800],
    ['tonnes as in Austria', 'Pellets', ['3.2 to', '3.5 to', '3.8 to'], 35_040],
    ['one unit in two spellings', 'Heating oil', ['900 litres', '500 L', '1000 ltr'], 15_450],
  ])('%s', (_, fuel, cells, kWh) => {
    const { totals: found, preview } = totals(
      bought(
        cells.map((cell) => cell.split(' ') as [string, string]),
        fuel,
      ),
    );
    expect(found).toEqual([kWh]);
    expect(codesOf(preview, 'refusal')).toEqual([]);
  });
  test('Wh among kWh', () => {
    const rows = range(9).map((i) => `2025-01-0${i + 1},${i === 4 ? '900,Wh' : `${8 + i},kWh`}`);
    const { totals: found, preview } = totals(['Date,Electricity,Unit', ...rows]);
    expect(found).toEqual([96.9]);
    expect(codesOf(preview)).toContain('units-evened');
    expect(codesOf(preview, 'question')).not.toContain('unit-guessed');
  });
  // How many litres a gallon or a drum has the file does not say.
  test.each(['gallons', 'drums'])('litres beside %s are refused', (unit) => {
    const rows = bought(
      [
        ['1000', 'litres'],
        ['200', unit],
        ['900', 'litres'],
        ['500', 'litres'],
      ],
      'Heating oil',
    );
    expect(codesOf(previewOf(rows), 'refusal')).toEqual(['units-by-row']);
  });
  test('gallons alone are asked about and taken for those of Britain', () => {
    const { preview } = totals(
      bought(
        [
          ['200', 'gallons'],
          ['220', 'gallons'],
          ['100', 'gallons'],
        ],
        'Heating oil',
      ),
    );
    expect(preview.series[0]?.periods?.[0]).toMatchObject({ quantity: 220, unit: 'imperial gallon' });
    expect(codesOf(preview, 'question')).toContain('unit-guessed');
  });
});

describe('fuel that is counted by the piece', () => {
  const bought = (heading: string, amounts: readonly number[]) => [
    `Date,${heading}`,
    ...amounts.map((amount, i) => `${two(13 + i)}/${two(1 + i * 2)}/2024,${amount}`),
  ];
  test.each([
    ['Propane bottles', [2, 2, 1, 2]],
    ['Heating oil drums', [30, 30, 60]],
    ['Heating oil', [2, 1.5, 2]],
  ])('is no amount in litres: %s', (heading, amounts) => {
    expect(codesOf(previewOf(bought(heading, amounts)), 'question')).toContain('unit-guessed');
  });
  test('what fills a tank needs no unit', () => {
    expect(codesOf(previewOf(bought('Heating oil', [500, 1000, 900])), 'question')).toEqual([]);
  });
  test('what one bottle holds is no amount either', () => {
    const rows = [2, 2, 1, 2].map((n, i) => `${13 + i}/0${1 + i * 2}/2024,${n},47 kg`);
    const preview = previewOf(['Date,Propane bottles,Size', ...rows]);
    expect(preview.series[0]?.name).toBe('Propane bottles');
    expect(codesOf(preview, 'question')).toContain('unit-guessed');
  });
});

describe('a reading above all that follow it', () => {
  const read = (readings: readonly number[], notes: readonly string[] = []) =>
    totals([
      'Date,Electricity meter reading kWh,Remarks',
      ...readings.map((reading, i) => `${13 + i}/03/2025,${reading},${notes[i] ?? ''}`),
    ]);
  test('is a slip of the pen and left out', () => {
    const { totals: found, preview } = read([5000, 5012, 5025, 5036, 5409, 5061, 5072, 5085]);
    expect(found).toEqual([85]);
    expect(codesOf(preview)).toContain('register-peak');
  });
  test.each([
    ['another meter begins near nought', [5000, 5012, 5025, 5036, 3, 15, 27], [], 'register-exchange'],
    [
      'a note tells of another meter',
      [5000, 5012, 5025, 5409, 5061, 5072],
      ['', '', '', '', 'new meter'],
      'register-exchange',
    ],
    ['it may be the last one that is wrong', [5000, 5012, 5025, 5036, 5409, 5061], [], 'register-exchange'],
    ['the one that follows is too low', [5000, 5012, 5025, 5036, 5030, 5061, 5072], [], 'register-slip'],
  ])('stays where %s', (_, readings, notes, code) => {
    const { preview } = read(readings, notes);
    expect(codesOf(preview)).toContain(code);
    expect(codesOf(preview)).not.toContain('register-peak');
  });
});

describe('a counter that falls from just below a power of ten', () => {
  const read = (readings: readonly number[]) =>
    previewOf([
      'Date,Electricity meter reading kWh',
      ...readings.map((reading, i) => `2024-${two(1 + i)}-01,${reading}`),
    ]);
  test('turns over by as much as it rises otherwise', () => {
    const preview = read([9120, 9234, 9340, 9450, 9560, 9670, 9780, 9890, 14, 120]);
    expect(preview.series[0]?.total).toBeCloseTo(1000);
    expect(codesOf(preview)).toContain('register-rollover');
  });
  test('is another meter where it would be far more', () => {
    const preview = read([9120, 9214, 9310, 9404, 9500, 9594, 9690, 14, 110]);
    expect(codesOf(preview)).toContain('register-exchange');
    expect(preview.series[0]?.total).toBeCloseTo(9690 - 9120 + 96);
  });
});

describe('noughts at the end of a list of months', () => {
  const list = (heading: string, amounts: readonly number[]) =>
    previewOf([`Month,${heading}`, ...amounts.map((amount, i) => `2025-${two(1 + i)},${amount}`)]);
  test('are not filled in yet', () => {
    const preview = list('Electricity kWh', [420, 390, 360, 400, 310, 0, 0]);
    expect(preview.series[0]).toMatchObject({ to: '2025-06-01', total: 1880 });
    expect(preview.remarks.find(({ code }) => code === 'not-filled')).toMatchObject({ from: '2025-06-01', count: 2 });
  });
  test.each([
    ['of gas in summer', 'Gas kWh', [1420, 1390, 960, 400, 0, 0, 0]],
    ['of what is sent out', 'Exported electricity kWh', [20, 90, 160, 200, 310, 0]],
    ['of a home that stood empty before', 'Electricity kWh', [420, 0, 360, 400, 310, 0]],
  ])('stay where they are %s', (_, heading, amounts) => {
    const preview = list(heading, amounts);
    expect(preview.series[0]?.periods).toHaveLength(amounts.length);
    expect(codesOf(preview)).not.toContain('not-filled');
  });
});

describe('another value for one time', () => {
  const month = (second: number) => [
    'Month,Gas kWh',
    ...range(12).map((i) => `2024-${two(i + 1)},${1000 + ((i * 7) % 12)}`),
    `2024-04,${second}`,
  ];
  test('is asked about where it moves the sum', () => {
    expect(codesOf(previewOf(month(1309)), 'question')).toContain('unread-doubled-asked');
    expect(codesOf(previewOf(month(1309), { choices: { leaveUnread: true } }), 'question')).toEqual([]);
  });
  test('is named where it hardly does, and where it is the same', () => {
    expect(codesOf(previewOf(month(1010)))).toEqual(['duplicate-different']);
    expect(codesOf(previewOf(month(1009)))).toEqual(['duplicate-same']);
  });
});

describe('the sum that a sheet states', () => {
  const sheet = (total: string, ...more: string[]) => [
    'Month,Gas kWh,Electricity kWh',
    ...range(12).map((i) => `2024-${two(i + 1)},${1000 + 30 * (i % 7)},${300 + (i % 5)}`),
    ...more,
    total,
  ];
  const gas = range(12).reduce((sum, i) => sum + 1000 + 30 * (i % 7), 0);
  const power = range(12).reduce((sum, i) => sum + 300 + (i % 5), 0);
  const asked = (total: string, ...more: string[]) => codesOf(previewOf(sheet(total, ...more)), 'question');
  test('is that of the rows', () => expect(asked(`Total,${gas},${power}`)).toEqual([]));
  test('may be rounded, and of one column alone', () => expect(asked(`Total,${gas + 3},`)).toEqual([]));
  test('may be a mean', () => expect(asked(`Average,${gas / 12},${power / 12}`)).toEqual([]));
  test.each([
    ['the first', `Total,${gas + 900},${power}`],
    ['the second', `Sum,${gas},${power + 290}`],
  ])('is asked about where %s column comes to something else', (_, total) => {
    expect(asked(total)).toEqual(['unread-total-asked']);
    const answered = previewOf(sheet(total), { choices: { leaveUnread: true } });
    expect(codesOf(answered, 'question')).toEqual([]);
  });
  test('tells of a row whose date was not read', () =>
    expect(asked(`Total,${gas + 900},${power + 310}`, 'Jan?,900,310')).toContain('unread-total-asked'));
});

test('the first bill begins its days before its date, where they are written', () => {
  const bills = [
    'Bill date,Days,Therms',
    '2024-01-19,31,65',
    '2024-02-20,32,61',
    '2024-03-18,30,50',
    '2024-04-19,31,35',
  ];
  const { series } = previewOf(bills);
  expect(series[0]?.periods?.map(({ from, to }) => [from, to])).toEqual([
    ['2023-12-19', '2024-01-19'],
    ['2024-01-19', '2024-02-20'],
    ['2024-02-20', '2024-03-18'],
    ['2024-03-18', '2024-04-19'],
  ]);
});

describe('all since a year began, by the month', () => {
  const used = range(12).map((i) => 300 + ((i * 37) % 110));
  const sums = used.map((_, i) => used.slice(0, i + 1).reduce((sum, one) => sum + one, 0));
  const list = (heading: string, values: readonly number[]) =>
    previewOf([`Month,${heading}`, ...values.map((value, i) => `2024-${two(i + 1)},${value}`)]);
  test.each(['Electricity kWh YTD', 'Electricity kWh (year to date)', 'Strom kWh seit Jahresbeginn'])(
    'is what each month adds where “%s” says so',
    (heading) => {
      const preview = list(heading, sums);
      expect(preview.series[0]?.periods?.map(({ kWh }) => kWh)).toEqual(used);
      expect(codesOf(preview)).toEqual(['counts-from-year']);
    },
  );
  test('is asked about where nothing says so, or it begins with far more than a month', () => {
    expect(codesOf(list('Electricity kWh', sums), 'question')).toContain('register-rising-asked');
    const late = list(
      'Electricity kWh YTD',
      sums.map((sum) => sum + 9000),
    );
    expect(codesOf(late, 'question')).toContain('register-rising-asked');
  });
});
