import { describe, expect, test } from 'vitest';
import { remarkRivals } from '../../../src/desk/join/remark-rivals.ts';
import { accountFiles } from '../../../src/model/demand/account-records.ts';
import { findRivals, settleBeside } from '../../../src/model/evidence/rivals.ts';
import type { Evidence, Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';

const days = (id: string, first: string, values: (number | null)[], more: Partial<Series> = {}): Series => ({
  id,
  evidenceId: id,
  name: id,
  carrier: 'gas',
  role: 'import',
  resolution: 'day',
  from: first,
  to: new Date(Date.parse(first) + values.length * 86_400_000).toISOString().slice(0, 10),
  total: values.reduce<number>((sum, v) => sum + (v ?? 0), 0),
  days: { first, values },
  present: values.length,
  expected: values.length,
  estimatedCount: 0,
  ...more,
});
/** An appraisal that took the record and its weather. */
const TAKEN = {
  demand: { estimates: [{ way: 'record' }], chosen: 'together', missing: [] },
  climate: { recordWeather: 'own' },
  questions: [],
} as never;
const ten = (kWh: number) => new Array<number>(10).fill(kWh);

describe('two records of one kind', () => {
  test('that follow each other are none that differ', () => {
    expect(findRivals([days('a', '2025-01-01', ten(40)), days('b', '2025-01-11', ten(90))])).toEqual([]);
  });
  test('that overlap alike are none either, bills and days too', () => {
    const bill = days('b', '2025-01-01', [], {
      resolution: 'period',
      to: '2025-01-11',
      periods: [{ from: '2025-01-01', to: '2025-01-11', kWh: 410, quality: 'actual' }],
    });
    const { days: _, ...bills } = bill;
    expect(findRivals([days('a', '2025-01-01', ten(40)), bills])).toEqual([]);
  });
  test('of the same days with other values are told, with their days and by how much', () => {
    const [found] = findRivals([days('a', '2025-01-01', ten(40)), days('b', '2025-01-03', ten(10))]);
    expect([found?.one.id, found?.other.id, found?.days, found?.more]).toEqual(['a', 'b', 8, 240]);
  });
  test('are asked about by their columns, and a bill, whose record has no name, by its kind of energy', () => {
    const series = [days('Gas used', '2025-01-01', ten(40)), days('gas', '2025-01-03', ten(10))];
    const files = series.map((own) => ({ fileName: `${own.name}.pdf`, series: [own] })) as unknown as Evidence[];
    const asked = [series[0]!, series[1]!].map((own) =>
      remarkSentence(remarkRivals(series, files, (one) => one === own)[0]!),
    );
    expect(asked[0]).toMatch(/^Gas used\.pdf: column "Gas used" and gas\.pdf are of one kind\. On 8 days/);
    expect(asked[1]).toMatch(/^gas\.pdf: gas and Gas used\.pdf, Gas used are of one kind\./);
  });
  test('of two registers of one meter are two, though they come to the same', () => {
    const of = (name: string, evidenceId = name) => days(name, '2025-01-01', ten(10), { evidenceId });
    expect(findRivals([of('Day units (kWh)'), of('Night units (kWh)')])).toHaveLength(1);
    expect(findRivals([of('Tarif 1'), of('Tarif 2')])).toHaveLength(1);
    expect(findRivals([of('Day units (kWh)'), of('Day usage', 'other')])).toEqual([]);
    expect(findRivals([of('Off-peak (kWh)'), of('Night (kWh)')])).toEqual([]);
    expect(findRivals([of('Day units (kWh)'), of('Electricity (kWh)')])).toEqual([]);
  });
  test('of other carriers, roles, or what is sent out, are not held against each other', () => {
    const sun = { carrier: 'electricity', role: 'export' } as const;
    expect(findRivals([days('a', '2025-01-01', ten(40)), days('b', '2025-01-01', ten(9), { carrier: 'oil' })])).toEqual(
      [],
    );
    expect(findRivals([days('a', '2025-01-01', ten(4), sun), days('b', '2025-01-01', ten(9), sun)])).toEqual([]);
  });
});

const billed = (
  id: string,
  bills: readonly (readonly [from: string, to: string, kWh: number])[],
  more: Partial<Series> = {},
) => {
  const periods = bills.map(([from, to, kWh]) => ({ from, to, kWh, quality: 'actual' as const }));
  const { days: _, ...bare } = days(id, '2025-01-01', [], { resolution: 'period', periods, ...more });
  return bare;
};

describe('how far apart, and for how long', () => {
  test.each([
    [7, 50, 45, null],
    [7, 50, 44.9, 7 * 5.1],
    [7, 44.9, 50, -7 * 5.1],
    // An estimate at the end may be put right; another home's few days are all other ones.
    [3, 50, 36, null],
    [3, 50, 34, 3 * 16],
    [2, 50, 10, null],
  ])('%i days of %d and of %d kWh, of which the second goes on', (count, mine, theirs, more) => {
    const [found] = findRivals(
      [mine, theirs].map((kWh, i) => days(`${i}`, '2025-01-01', new Array(count + i).fill(kWh))),
    );
    if (more === null) expect(found).toBeUndefined();
    else expect([found?.days, found?.more]).toEqual([count, expect.closeTo(more, 9)]);
  });
  test.each([
    [50, 49.6, undefined],
    [50, 49.4, 7 * 0.6],
  ])('where neither goes on, %d and %d kWh are asked about beyond a rounding', (mine, theirs, apart) => {
    const [found] = findRivals([mine, theirs].map((kWh, i) => days(`${i}`, '2025-01-01', new Array(7).fill(kWh))));
    expect(found?.apart).toEqual(apart && expect.closeTo(apart, 9));
  });
  test('days that one of them lacks do not count; a bill is spread over its days, two of one day are added', () => {
    const bills = billed('b', [
      ['2025-01-01', '2025-01-11', 200],
      ['2025-01-01', '2025-01-05', 40],
    ]);
    // 30 kWh a day to 4 January, 20 from then on; the other has 40 a day but for two days.
    const other = days(
      'a',
      '2025-01-01',
      ten(40)
        .with(0, null as never)
        .with(9, null as never),
    );
    const [found] = findRivals([other, bills]);
    expect([found?.days, found?.more]).toEqual([8, expect.closeTo(8 * 40 - (3 * 30 + 5 * 20), 9)]);
    expect(findRivals([other, { ...bills, periods: undefined } as unknown as Series])).toEqual([]);
  });
  test('two meters that come to the same in all but not day by day are two; one meter read at another hour is one', () => {
    const turned = (more: number) => ten(40).map((kWh, i) => kWh + (i % 2 ? more : -more));
    const [found] = findRivals([days('a', '2025-01-01', turned(6)), days('b', '2025-01-01', turned(-6))]);
    expect([found?.more, found?.apart]).toEqual([0, 120]);
    expect(findRivals([days('a', '2025-01-01', turned(1)), days('b', '2025-01-01', turned(-1))])).toEqual([]);
  });
  test('of the weather by more than thermometers of one place stray', () => {
    const weather = { carrier: 'outdoor-temperature', role: 'weather' } as const;
    const pair = (apart: number) =>
      findRivals([days('a', '2025-01-01', ten(-1), weather), days('b', '2025-01-01', ten(apart - 1), weather)]);
    expect(pair(1.9)).toEqual([]);
    expect(pair(2.1)).toMatchObject([{ days: 10, apart: expect.closeTo(21, 9) }]);
  });
  test('a bill tells only where the other knows most of its days: the rest may be dearer', () => {
    const year = billed('year', [['2025-01-01', '2026-01-01', 3650]]);
    expect(findRivals([year, days('winter', '2025-01-01', new Array(90).fill(25))])).toEqual([]);
    expect(findRivals([year, days('all', '2025-01-01', new Array(365).fill(25))])).toHaveLength(1);
    // 90 days of 45 kWh are more than the year; of 0.5 they leave 13 a day for the rest.
    expect(findRivals([year, days('more', '2025-01-01', new Array(90).fill(45))])).toMatchObject([{ days: 90 }]);
    expect(findRivals([days('less', '2025-01-01', new Array(90).fill(0.5)), year])).toMatchObject([{ days: 90 }]);
  });
  test('two flats with the same months on their bills are two, as soon as the months differ', () => {
    const months = (first: number, second: number) =>
      [['2025-01-01', '2025-02-01', first] as const, ['2025-02-01', '2025-03-01', second] as const] as const;
    expect(findRivals([billed('a', months(300, 200)), billed('b', months(200, 300))])).toHaveLength(1);
    expect(findRivals([billed('a', months(300, 200)), billed('b', months(301, 200))])).toEqual([]);
  });
  const months = (kWh: readonly number[], first = 0) =>
    kWh.map((of, i) => {
      const [from, to] = [first + i, first + i + 1].map((m) =>
        new Date(Date.UTC(2025, m, 1)).toISOString().slice(0, 10),
      );
      return [from!, to!, of] as const;
    });
  const yearOf = [900, 760, 640, 420, 210, 120, 100, 100, 160, 380, 620, 840];
  const byMonth = (change: (kWh: number, i: number) => number) =>
    billed('later', months([...yearOf.slice(4), ...yearOf.slice(0, 6)].map(change), 4), {
      from: '2025-05-01',
      to: '2026-07-01',
    });
  const others = [0.94, 1.05, 0.97, 1.06, 0.95, 1.04, 0.96, 1.05];
  test.each([
    ['the same', (kWh: number) => kWh, 0],
    ['by another calorific value', (kWh: number) => 1.02 * kWh, 0],
    ['read at another hour', (kWh: number, i: number) => kWh + (i % 2 ? 8 : -8), 0],
    ['two of them put right', (kWh: number, i: number) => (i === 6 ? 1.15 : i === 7 ? 0.9 : 1) * kWh, 0],
    ['those of a like home', (kWh: number, i: number) => others[i % 8]! * kWh, 1],
  ] as const)('bills of the same months that go on, %s', (_, change, asked) => {
    expect(findRivals([billed('a', months(yearOf), { to: '2026-01-01' }), byMonth(change)])).toHaveLength(asked);
  });
  test('bills of a like home beside the days of this one', () => {
    const perDay = months(yearOf).flatMap(([from, to, kWh]) => {
      const count = (Date.parse(to) - Date.parse(from)) / 86_400_000;
      return new Array<number>(count).fill(kWh / count);
    });
    const ofHome = days('days', '2025-01-01', perDay);
    const bills = (change: (kWh: number, i: number) => number) => billed('bills', months(yearOf.map(change)));
    expect(findRivals([ofHome, bills((kWh, i) => kWh + (i % 2 ? 20 : -20))])).toEqual([]);
    // More heating and less hot water than here, and in all the same.
    const [found] = findRivals([ofHome, bills((kWh) => (kWh > 500 ? 1.06 : 0.88) * kWh)]);
    expect(found?.apart).toBeGreaterThan(200);
  });
  test('what was said already is asked no more', () => {
    expect(findRivals([days('a', '2025-01-01', ten(4)), days('b', '2025-01-01', ten(9), { beside: 'added' })])).toEqual(
      [],
    );
  });
});

describe('once it is said what they are', () => {
  test('a further meter is added on the days of both', () => {
    const [sum, ...others] = settleBeside([
      days('a', '2025-01-01', ten(40)),
      days('b', '2025-01-03', [...ten(10), 1], { beside: 'added' }),
    ]);
    expect(others).toEqual([]);
    expect([sum?.from, sum?.to, sum?.total, sum?.days?.values]).toEqual([
      '2025-01-03',
      '2025-01-11',
      400,
      new Array(8).fill(50),
    ]);
  });
  test('days are added to the bills of the other', () => {
    const { days: _, ...bills } = days('b', '2025-01-01', [], {
      resolution: 'period',
      to: '2025-01-11',
      periods: [{ from: '2025-01-01', to: '2025-01-11', kWh: 100, quality: 'actual' }],
    });
    const [sum] = settleBeside([bills, days('a', '2025-01-01', ten(40), { beside: 'added' })]);
    expect(sum?.periods?.map(({ kWh }) => kWh)).toEqual([500]);
  });
  test('their names, days and shapes of a day are put together; what only one has is lost', () => {
    const shape = [[1, 2], [3]];
    const own = days('a', '2025-01-01', [1, null, 3, 4], { dayShape: shape, dayPeaks: [[9]], filled: [] });
    const further = days('b', '2025-01-02', [10, 30, 40, 50], { dayShape: [[10, 20], [30]], beside: 'added' });
    const { dayPeaks: _, filled: __, ...rest } = own;
    expect(settleBeside([own, further])).toEqual([
      {
        ...rest,
        name: 'a + b',
        from: '2025-01-03',
        to: '2025-01-05',
        total: 77,
        days: { first: '2025-01-03', values: [33, 44] },
        dayShape: [[11, 22], [33]],
        present: 2,
        expected: 2,
      },
    ]);
    const hole = days('c', '2025-01-01', [5, 6, null, 8], { beside: 'added' });
    expect(settleBeside([{ ...own, days: { first: '2025-01-01', values: [1, 2, 3, 4] } }, hole])[0]).toMatchObject({
      days: { values: [6, 8, null, 12] },
      total: 26,
      present: 3,
      expected: 4,
    });
    const [none] = settleBeside([own, days('d', '2025-03-01', [1], { beside: 'added' })]);
    expect([none?.from, none?.to, none?.days?.values, none?.present]).toEqual(['2025-01-01', '2025-01-02', [null], 0]);
    expect(none).not.toHaveProperty('dayShape');
  });
  test('bills of which the other knows every day; the first of all if none is without a word', () => {
    const bills = billed('b', [
      ['2025-01-01', '2025-01-03', 10],
      ['2025-01-03', '2025-01-06', 20],
      ['2025-01-09', '2025-01-12', 30],
    ]);
    const [sum, ...others] = settleBeside([
      days('a', '2025-01-01', ten(40), { beside: 'added' }),
      { ...bills, beside: 'added' },
      days('c', '2025-01-01', ten(5), { carrier: 'oil' }),
    ]);
    expect([sum?.name, sum?.from, sum?.to, sum?.total, sum?.resolution]).toEqual([
      'a + b',
      '2025-01-01',
      '2025-01-06',
      80 + 10 + 120 + 20,
      'period',
    ]);
    expect(sum?.periods).toEqual([
      { from: '2025-01-01', to: '2025-01-03', kWh: 90, quality: 'actual' },
      { from: '2025-01-03', to: '2025-01-06', kWh: 140, quality: 'actual' },
    ]);
    expect(others.map(({ id }) => id)).toEqual(['c']);
    const [nothing] = settleBeside([bills, days('a', '2026-01-01', ten(40), { beside: 'added' })]);
    expect([nothing?.from, nothing?.to, nothing?.total, nothing?.periods]).toEqual([bills.from, bills.to, 0, []]);
  });
  test('whichever of two tells of a day has the further one, bills and readings of one meter too', () => {
    const further = days('c', '2025-01-01', ten(4), { beside: 'added' });
    const found = settleBeside([
      days('a', '2025-01-01', ten(1)),
      billed('b', [['2025-01-01', '2025-01-11', 12]]),
      further,
    ]);
    expect(found.map(({ name, total }) => [name, total])).toEqual([
      ['a + c', 50],
      ['b + c', 52],
    ]);
    // Day and night of one meter are added later: with both it would count twice.
    const registers = ['day', 'night'].map((name, i) => days(name, '2025-01-01', ten(i + 1), { evidenceId: 'meter' }));
    expect(settleBeside([...registers, further]).map(({ name, total }) => [name, total])).toEqual([
      ['day + c', 50],
      ['night', 20],
    ]);
  });
  test('what counts instead of part of it in another resolution has the further one too', () => {
    const found = settleBeside([
      billed('a', [['2025-01-01', '2025-01-11', 100]]),
      days('right', '2025-01-06', [3, 3, 3, 3, 3], { beside: 'instead' }),
      days('c', '2025-01-01', ten(4), { beside: 'added' }),
    ]);
    // Five days of 10 kWh and five of 3, and 4 more on each.
    expect(found.reduce((sum, { total }) => sum + total, 0)).toBeCloseTo(5 * 10 + 5 * 3 + 10 * 4, 9);
  });
  test('two that stand by themselves stay two', () => {
    const settled = [days('a', '2025-01-01', ten(1)), days('b', '2025-01-01', ten(2))];
    expect(settleBeside(settled)).toEqual(settled);
  });
  test('what is kept aside is gone, and every record is accounted for', () => {
    const own = [days('a', '2025-01-01', ten(40)), days('b', '2025-01-01', ten(10), { beside: 'aside' })];
    const joined = settleBeside(own);
    expect(joined.map(({ id }) => id)).toEqual(['a']);
    const household = {
      ...emptyHousehold('h', 'Fern'),
      present: { ...emptyHousehold('h', 'Fern').present, system: 'gas-condensing' as const },
    };
    const weather = days('w', '2025-01-01', ten(5), { carrier: 'outdoor-temperature', role: 'weather' });
    const sun = days('s', '2025-01-01', ten(3), { carrier: 'electricity', role: 'generation' });
    const file = {
      id: 'e',
      householdId: 'h',
      fileName: 'f',
      importedOn: '',
      sha256: '',
      shape: '',
      remarks: [],
      series: [...own, weather, sun].map((one) => ({ ...one, name: one.id })),
    };
    const [account] = accountFiles(household, [file], [...joined, weather, sun], TAKEN);
    expect(account!.records.map(({ name, use }) => `${name} ${use}`)).toEqual([
      'a heat',
      'b aside',
      'w weather',
      's made-here',
    ]);
  });
  test('what came of a record is told as the comparison says it', () => {
    const [own, weather] = [
      days('a', '2025-01-01', ten(40)),
      days('w', '2025-01-01', ten(5), { carrier: 'outdoor-temperature', role: 'weather' }),
    ];
    const empty = emptyHousehold('h', 'Fern');
    const household = { ...empty, present: { ...empty.present, system: 'gas-condensing' as const } };
    const file = {
      id: 'e',
      householdId: 'h',
      fileName: 'f',
      importedOn: '',
      sha256: '',
      shape: '',
      remarks: [],
      series: [own, weather],
    };
    const usesBy = (demand: unknown, recordWeather: string) =>
      accountFiles(household, [file], [own, weather], {
        demand,
        climate: { recordWeather },
        questions: [],
      } as never)[0]!.records.map(({ use }) => use);
    const made = [{ way: 'record' }];
    expect(usesBy({ estimates: made, chosen: 'together', missing: [] }, 'own')).toEqual(['heat', 'weather']);
    expect(usesBy({ estimates: made, chosen: 'heat-loss', missing: [] }, 'own')).toEqual(['other-figure', 'weather']);
    const [account] = accountFiles(household, [file], [{ ...own, to: '2025-01-21' }, weather], TAKEN);
    expect(account!.records[0]!.use).toBe('heat-joined');
    const short = { estimates: [], chosen: 'together', missing: [{ way: 'record', reason: 'record-too-short' }] };
    expect(usesBy(short, 'typical')).toEqual(['too-short', 'weather-aside']);
  });
});

describe('what counts instead of another', () => {
  const right = { beside: 'instead' } as const;
  test('takes its days from readings, and stands there', () => {
    const [joined, ...others] = settleBeside([
      days('a', '2025-01-01', ten(40)),
      days('b', '2025-01-09', [10, null, 12], right),
    ]);
    expect(others).toEqual([]);
    expect(joined).toMatchObject({ id: 'a', from: '2025-01-01', to: '2025-01-12', total: 8 * 40 + 10 + 40 + 12 });
    expect(joined!.days!.values.slice(7)).toEqual([40, 10, 40, 12]);
  });
  test('a corrected bill takes the place of the wrong one, and of part of a longer one by its days', () => {
    const [joined, ...others] = settleBeside([
      billed('a', [
        ['2025-01-01', '2025-01-31', 300],
        ['2025-01-31', '2025-02-10', 900],
      ]),
      { ...billed('b', [['2025-01-21', '2025-02-10', 250]]), ...right },
    ]);
    expect(others).toEqual([]);
    expect(joined!.periods!.map(({ from, to, kWh }) => [from, to, kWh])).toEqual([
      ['2025-01-01', '2025-01-21', 200],
      ['2025-01-21', '2025-02-10', 250],
    ]);
    expect(joined!.total).toBe(450);
  });
  test('beside what is told otherwise it stands for itself, and the other lacks its days', () => {
    const joined = settleBeside([
      days('a', '2025-01-01', ten(40)),
      { ...billed('b', [['2025-01-06', '2025-01-11', 100]]), ...right },
    ]);
    expect(joined.map(({ id }) => id)).toEqual(['a', 'b']);
    expect(joined[0]!.total).toBe(200);
    expect(joined[1]!.periods).toMatchObject([{ kWh: 100 }]);
  });
  test('leaves another kind as it is', () => {
    const other = days('a', '2025-01-01', ten(40), { carrier: 'electricity' });
    expect(settleBeside([other, days('b', '2025-01-01', ten(10), right)])[0]).toEqual(other);
  });
});
