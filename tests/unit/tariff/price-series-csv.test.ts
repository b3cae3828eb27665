import { describe, expect, test } from 'vitest';
import { readTariff } from '../../../src/intake/read-tariff.ts';
import { toDayNumber } from '../../../src/model/calendar/civil.ts';
import { startOfDay } from '../../../src/model/calendar/zone.ts';
import { findTariffFaults } from '../../../src/model/tariff/check-tariff.ts';
import { priceSeries } from './tariffs.ts';

const ZONE = 'Europe/London';
const read = (text: string, zone = ZONE) => readTariff('prices.csv', new TextEncoder().encode(text), { zone });
const seriesOf = (text: string) => read(text).tariff?.versions[0]?.series;

/** The same prices as a file: instants in UTC, or readings of the local clock. */
function written(
  first: string,
  days: number,
  clock: 'utc' | 'local',
  head: string,
  series = priceSeries(first, days, (day, half) => day + half / 100),
): string {
  const rows = series.days.flatMap(({ date, pencePerKWh }) =>
    pencePerKWh.map((pence, half) => {
      const at = startOfDay(ZONE, toDayNumber(date)) + half * 1_800_000;
      const local = new Intl.DateTimeFormat('sv-SE', { timeZone: ZONE, dateStyle: 'short', timeStyle: 'short' }).format(
        at,
      );
      return `${clock === 'utc' ? new Date(at).toISOString() : local},${pence}`;
    }),
  );
  return `${head}\n${rows.join('\n')}\n`;
}

describe('a price for each half-hour in a file', () => {
  test.each([
    ['summer, universal time', '2026-06-10', 'utc'],
    ['summer, local time', '2026-06-10', 'local'],
    ['over the clock change in spring, universal time', '2026-03-27', 'utc'],
    ['over the clock change in spring, local time', '2026-03-27', 'local'],
    ['over the clock change in autumn, universal time', '2026-10-23', 'utc'],
    ['over the clock change in autumn, local time with the hour twice', '2026-10-23', 'local'],
  ] as const)('%s', (_, first, clock) => {
    const text = written(first, 4, clock, 'start,price incl VAT p/kWh');
    expect(seriesOf(text)).toEqual(priceSeries(first, 4, (day, half) => day + half / 100));
  });

  test.each([
    ['spring', '2026-03-28', 3],
    ['autumn', '2026-10-24', 3],
  ])('a price for each hour of the local clock holds for both halves, over the change in %s', (_, first, days) => {
    const halves = priceSeries(first, days, (day, half) => day + Math.floor(half / 2) / 100);
    const text = written(first, days, 'local', 'time,p/kWh inc VAT', halves);
    const hourly = text.split('\n').filter((line) => !/:30,/.test(line));
    expect(seriesOf(hourly.join('\n'))).toEqual(halves);
  });

  test('shorter prices are counted at the mean of each half-hour, which is said; a gap stays one', () => {
    const rows = Array.from({ length: 96 }, (_, i) => {
      const clock = `${String(i >> 2).padStart(2, '0')}:${String((i % 4) * 15).padStart(2, '0')}`;
      return `2026-06-10 ${clock},${i === 9 ? '' : i}`;
    });
    const { tariff, remarks } = read(`time,p/kWh\n${rows.join('\n')}`);
    const [day] = tariff!.versions[0]!.series!.days;
    expect(day!.pencePerKWh.slice(0, 6)).toEqual([0.5, 2.5, 4.5, 6.5, null, 10.5]);
    expect(remarks).toContainEqual(expect.objectContaining({ code: 'tariff-prices-averaged', weight: 'note' }));
  });

  test('from and to in one cell below a heading of any name', () => {
    const text =
      'MTU;Day-ahead price [GBP/MWh]\n01.06.2026 00:00 - 01.06.2026 01:00;120\n01.06.2026 01:00 - 01.06.2026 02:00;90';
    expect(seriesOf(text)?.days[0]?.pencePerKWh.slice(0, 5)).toEqual([12, 12, 9, 9, null]);
  });

  test('days down and hours across are refused once, with what to do', () => {
    const head = Array.from({ length: 24 }, (_, hour) => `${String(hour).padStart(2, '0')}:00`).join(',');
    const rows = Array.from(
      { length: 30 },
      (_, day) => `2026-06-${String(day + 1).padStart(2, '0')},${'20,'.repeat(24)}`,
    );
    for (const corner of ['p/kWh', 'Date'])
      expect(read(`${corner},${head}\n${rows.join('\n')}`).remarks.map(({ code }) => code)).toEqual(['tariff-across']);
  });

  test('the head says whether VAT is in the prices', () => {
    const vatOf = (head: string) => read(written('2026-06-10', 2, 'utc', head)).tariff!.versions[0]!.vat;
    expect(vatOf('time,price inc VAT')).toEqual({ rate: 0.05, included: true });
    expect(vatOf('time,pence per kWh excl VAT')).toEqual({ rate: 0.05, included: false });
    expect(vatOf('Zeit,Preis netto')).toEqual({ rate: 0.05, included: false });
    expect(vatOf('Zeit,Preis inkl. MwSt')).toEqual({ rate: 0.05, included: true });
  });

  test('local times are those of the home', () => {
    const text = 'time,p/kWh\n2026-06-10 00:00,1\n2026-06-10 00:30,2\n2026-06-09T22:00Z,1\n';
    expect(read(text, 'Europe/Berlin').tariff?.versions[0]?.series).toMatchObject({
      zone: 'Europe/Berlin',
      days: [{ date: '2026-06-10', pencePerKWh: [1, 2, ...new Array(46).fill(null)] }],
    });
  });

  test('dates with the month first are read so where one of them shows it, and asked about where none does', () => {
    const rows = (day: string) => `time,p/kWh\n${day} 00:00,1\n${day} 00:30,2\n`;
    const found = (day: string, zone?: string) => {
      const { tariff, remarks } = read(rows(day), zone);
      const asked = remarks.map(({ code }) => code).filter((code) => code === 'tariff-date-asked').length;
      return [tariff?.versions[0]?.from, asked];
    };
    expect(found('06/13/2026')).toEqual(['2026-06-13', 0]);
    expect(found('13/06/2026')).toEqual(['2026-06-13', 0]);
    expect(found('06/07/2026')).toEqual(['2026-07-06', 1]);
    expect(found('06/07/2026', 'America/New_York')).toEqual(['2026-06-07', 1]);
  });

  test('times that end each half-hour are refused, those of the beginning taken where both stand', () => {
    const text = (head: string) =>
      `${head}\n2026-06-10 00:00,2026-06-10 00:30,1\n2026-06-10 00:30,2026-06-10 01:00,2\n`;
    expect(read(text('valid_from,valid_to,p/kWh')).tariff?.versions[0]?.series?.days[0]?.pencePerKWh[0]).toBe(1);
    expect(read(text('valid to,valid from,p/kWh')).tariff?.versions[0]?.series?.days[0]?.pencePerKWh[1]).toBe(1);
    expect(read('period ending,p/kWh\n2026-06-10 00:30,1\n2026-06-10 01:00,2\n')).toMatchObject({
      tariff: null,
      remarks: [{ code: 'tariff-row', row: 1, found: 'period ending' }],
    });
  });

  test('prices paid for what is sent out are left beside those of what is bought, and refused alone', () => {
    const text = (head: string) => `time,${head}\n2026-06-10 00:00,5,20\n2026-06-10 00:30,5,21\n`;
    const { tariff } = read(text('export p/kWh,import p/kWh'));
    expect(tariff?.versions[0]?.series?.days[0]?.pencePerKWh.slice(0, 2)).toEqual([20, 21]);
    expect(read(text('export p/kWh,note')).remarks).toMatchObject([{ code: 'tariff-sent-out' }]);
  });

  test('a missing price is left open and then refused with its hour', () => {
    const text = written('2026-06-10', 3, 'local', 'time,p/kWh').replace('2026-06-11 17:30,1.35', '2026-06-11 17:30,');
    expect(findTariffFaults(read(text).tariff!).filter(({ weight }) => weight === 'refusal')).toMatchObject([
      { code: 'series-gap', data: { date: '2026-06-11', time: '17:30', count: 1 } },
    ]);
  });

  test.each([
    [
      'no number',
      'time,p/kWh\n2026-06-10 00:00,12\n2026-06-10 00:30,1O.5\n',
      { code: 'tariff-row', row: 3, found: '1O.5' },
    ],
    ['no time', 'time,p/kWh\n2026-06-10 00:00,12\nsoon,10\n', { code: 'tariff-row', row: 3, found: 'soon' }],
    [
      'off the half-hour',
      'time,p/kWh\n2026-06-10 00:00,12\n2026-06-10 00:30,12\n2026-06-10 01:00,11\n2026-06-10 01:10,10\n',
      { code: 'tariff-row', row: 5 },
    ],
    [
      'an hour that the clock skips',
      'time,p/kWh\n2026-03-29 00:00,12\n2026-03-29 01:00,12\n2026-03-29 02:00,11\n',
      { code: 'tariff-row', row: 3 },
    ],
    ['two prices at once', 'time,p/kWh\n2026-06-10 00:00,12\n2026-06-10 00:00,13\n', { code: 'tariff-row', row: 3 }],
  ])('%s is refused with its line', (_, text, remark) => {
    const { tariff, remarks } = read(text);
    expect(tariff).toBeNull();
    expect(remarks[0]).toMatchObject({ weight: 'refusal', ...remark });
  });

  test('a file of bands is still read as bands', () => {
    const text =
      'tariff,Night\nfuel,electricity\nvalid from,2026-10-01\nstanding,50\nvat,5 % included\nband,from,to,pence per kWh\nnight,00:30,05:30,14\nday,,,30\n';
    expect(read(text).tariff?.versions[0]?.bands.map(({ name }) => name)).toEqual(['night', 'day']);
  });
});
