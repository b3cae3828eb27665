/** Market documents (the pattern of IEC 62325): points of a period by their position, in XML and in JSON. */
import { expect, test } from 'vitest';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const gasVolume = { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 };

function read(fileName: string, text: string) {
  const context = { zone: 'Europe/Copenhagen', today: '2026-11-25', kWhPerUnit, gasVolume };
  const { preview } = readFile(fileName, new TextEncoder().encode(text), { carrier: 'electricity' }, context);
  return {
    asked: preview.remarks.filter(({ weight }) => weight !== 'note').map(({ code }) => code),
    series: preview.series.map(
      (s) =>
        `${s.role} ${s.from} ${s.to} ${s.total.toFixed(2)} ${s.present}/${s.expected} ${s.intervalMinutes ?? 'day'}`,
    ),
  };
}

interface Block {
  readonly start: string;
  readonly end: string;
  readonly resolution: string;
  /** Amount by position; none where a position is left out. */
  readonly amounts: readonly (number | undefined)[];
}
const xmlOf = ({ start, end, resolution, amounts }: Block) =>
  `<Period><timeInterval><start>${start}</start><end>${end}</end></timeInterval><resolution>${resolution}</resolution>${amounts
    .map((kWh, i) =>
      kWh === undefined
        ? ''
        : `<Point><position>${i + 1}</position><quantity>${kWh}</quantity><quality>A04</quality></Point>`,
    )
    .join('')}</Period>`;
const documentOf = (blocks: readonly Block[], said = '') =>
  `<?xml version="1.0"?><m:Metered_MarketDocument xmlns:m="urn:x"><mRID>a1</mRID><Series><quantity_Measure_Unit.name>KWH</quantity_Measure_Unit.name>${said}${blocks.map(xmlOf).join('\n')}</Series></m:Metered_MarketDocument>`;

/** Midnights of Copenhagen in UTC about both changes of its clocks in 2025, 30 March and 26 October. */
const midnight = (day: number) => {
  const at = Date.UTC(2025, 0, 1) + day * 86_400_000;
  const isSummer = at > Date.UTC(2025, 2, 30) && at <= Date.UTC(2025, 9, 26);
  return `${new Date(at - (isSummer ? 2 : 1) * 3_600_000).toISOString().slice(0, 16)}Z`;
};
const hoursBetween = (from: string, to: string) => (Date.parse(to) - Date.parse(from)) / 3_600_000;
const amount = (i: number) => 0.1 + ((i * 29) % 83) / 100;
const daysOf = (first: number, count: number, minutes: number): Block[] =>
  Array.from({ length: count }, (_, n) => {
    const [start, end] = [midnight(first + n), midnight(first + n + 1)];
    const amounts = Array.from({ length: (hoursBetween(start, end) * 60) / minutes }, (_, i) => amount(n * 100 + i));
    return { start, end, resolution: minutes === 60 ? 'PT1H' : `PT${minutes}M`, amounts };
  });
const sum = (blocks: readonly Block[]) =>
  blocks.flatMap(({ amounts }) => amounts.map((kWh) => kWh ?? 0)).reduce((all, kWh) => all + kWh, 0);

test.each([
  ['quarter-hours about the change in spring', 84, 15],
  ['half-hours about the change in autumn', 292, 30],
  ['hours', 10, 60],
])('a period a day of %s', (_, first, minutes) => {
  const blocks = daysOf(first, 12, minutes);
  const points = blocks.flatMap(({ amounts }) => amounts).length;
  const { asked, series } = read('a.xml', documentOf(blocks));
  expect(asked).toEqual([]);
  expect(series).toHaveLength(1);
  expect(series[0]).toContain(` ${sum(blocks).toFixed(2)} ${points}/${points} ${minutes}`);
});

test('one period a day of one point each, over both changes of the clocks', () => {
  const blocks = Array.from({ length: 330 }, (_, n) => ({
    start: midnight(n),
    end: midnight(n + 1),
    resolution: 'P1D',
    amounts: [7 + (n % 9)],
  }));
  const { asked, series } = read('a.xml', documentOf(blocks));
  expect(asked).toEqual([]);
  expect(series).toEqual([`import 2025-01-01 2025-11-27 ${sum(blocks).toFixed(2)} 330/330 day`]);
});

test('the same in JSON, its start with an offset', () => {
  const [block] = daysOf(20, 1, 60);
  const Point = block!.amounts.map((kWh, i) => ({ position: `${i + 1}`, 'out_Quantity.quantity': `${kWh}` }));
  const timeInterval = { start: '2025-01-21T00:00+01:00', end: '2025-01-22T00:00+01:00' };
  const Series = [{ mRID: '1', 'measurement_Unit.name': 'KWH', Period: [{ resolution: 'PT1H', timeInterval, Point }] }];
  const { series } = read('a.json', JSON.stringify({ result: [{ Metered_MarketDocument: { mRID: 'x', Series } }] }));
  expect(series).toEqual([`import 2025-01-21 2025-01-22 ${sum([block!]).toFixed(2)} 24/24 60`]);
});

test('a position that is left out is a gap, and in blocks goes on as the one before it', () => {
  const [one, two] = daysOf(40, 2, 60);
  const holed = [one!, { ...two!, amounts: two!.amounts.map((kWh, i) => (i === 5 || i === 23 ? undefined : kWh)) }];
  const apart = read('a.xml', documentOf(holed));
  expect(apart.series[0]).toContain(` ${sum(holed).toFixed(2)} 46/4`);
  const blocks = read('a.xml', documentOf(holed, '<curveType>A03</curveType>'));
  expect(blocks.series[0]).toContain(` ${(sum(holed) + amount(104) + amount(122)).toFixed(2)} 48/48`);
});

test('consumption and production of one document are told apart', () => {
  const both = ['E17', 'E18'].map((type, n) => {
    const blocks = daysOf(50, 3, 60).map((block) => ({
      ...block,
      amounts: block.amounts.map((kWh) => (kWh ?? 0) * (n + 1)),
    }));
    return {
      sum: sum(blocks),
      text: `<TimeSeries><marketEvaluationPoint.type>${type}</marketEvaluationPoint.type><measurement_Unit.name>KWH</measurement_Unit.name>${blocks.map(xmlOf).join('')}</TimeSeries>`,
    };
  });
  const { series } = read(
    'a.xml',
    `<?xml version="1.0"?><X_MarketDocument>${both.map(({ text }) => text).join('')}</X_MarketDocument>`,
  );
  expect(series.map((s) => s.split(' ')[0])).toEqual(['import', 'export']);
  expect(series.map((s) => s.split(' ')[3])).toEqual(both.map((one) => one.sum.toFixed(2)));
});
