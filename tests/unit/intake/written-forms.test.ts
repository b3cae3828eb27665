import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { IntakeChoices, IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { localStamp, minutesInDay, startOfDay } from '../../../src/model/calendar/zone.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';
import { ELECTRICITY, type FeedReading, writeFeed } from './write-feed.ts';
import { type Cell, serialOf, writeWorkbook } from './write-workbook.ts';

const contextOf = (zone: string): IntakeContext => ({
  zone,
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
});
const ZONES = ['Europe/London', 'Europe/Dublin', 'Europe/Berlin', 'America/New_York', 'Australia/Adelaide'];
/** Days on which one of the zones changes its clocks in 2025, and one ordinary day. */
const MIDDLES = ['2025-03-30', '2025-10-26', '2025-03-09', '2025-11-02', '2025-06-15'];

/** Whole local days of readings in whole Wh around a given day. */
const written = fc
  .record({
    zone: fc.constantFrom(...ZONES),
    middle: fc.constantFrom(...MIDDLES),
    minutes: fc.constantFrom(15, 30, 60),
    seed: fc.array(fc.integer({ min: 1, max: 3000 }), { minLength: 17, maxLength: 23 }),
  })
  .map(({ zone, middle, minutes, seed }) => {
    let n = 0;
    const days = [-2, -1, 0, 1, 2].map((away) => {
      const day = toDayNumber(middle) + away;
      const wattHours = Array.from({ length: minutesInDay(zone, day) / minutes }, () => seed[n++ % seed.length]!);
      return { date: toCivilDate(day), start: startOfDay(zone, day), wattHours };
    });
    return { zone, minutes, days };
  });
type Written = typeof written extends fc.Arbitrary<infer T> ? T : never;

function expectBack(w: Written, fileName: string, bytes: Uint8Array, choices: IntakeChoices = {}): void {
  const { preview, intervals } = readFile(fileName, bytes, choices, contextOf(w.zone));
  expect(preview.remarks.filter((r) => r.weight === 'refusal').map(remarkSentence)).toEqual([]);
  expect(intervals[0]?.intervalMinutes).toBe(w.minutes);
  expect(intervals[0]?.days.map((d) => [d.date, Array.from(d.values, (v) => Math.round(v * 1000))])).toEqual(
    w.days.map((d) => [d.date, d.wattHours]),
  );
}

const instants = (w: Written): FeedReading[] =>
  w.days.flatMap((d) =>
    d.wattHours.map((value, i) => ({ start: d.start / 1000 + i * w.minutes * 60, duration: w.minutes * 60, value })),
  );

describe('a series written as open meter XML reads back the same', () => {
  test('in any namespace prefix, any order of entries, with every block twice or the rows shuffled', () => {
    const prefixes = fc.constantFrom(
      { atom: '', espi: '' },
      { atom: 'ns0', espi: 'ns1' },
      { atom: '', espi: 'espi' },
      { atom: 'a', espi: '' },
    );
    fc.assert(
      fc.property(written, prefixes, fc.boolean(), fc.boolean(), fc.boolean(), (w, names, backwards, twice, mixed) => {
        const readings = twice ? [...instants(w), ...instants(w)] : instants(w);
        const rows = mixed ? readings.toSorted((a, b) => (a.value % 7) - (b.value % 7)) : readings;
        const record = { point: '1', record: '1', title: 'Supply', kind: 0, type: ELECTRICITY, readings: rows };
        const text = writeFeed([record], { prefixes: names, backwards });
        expectBack(w, 'any.xml', new TextEncoder().encode(text));
      }),
      { numRuns: 60 },
    );
  });
  test('as a counter, from any beginning', () => {
    fc.assert(
      fc.property(written, fc.integer({ min: 0, max: 90_000_000 }), (w, from) => {
        let sum = from;
        const points = instants(w).map((r) => {
          sum += r.value;
          return { start: r.start + r.duration, duration: 0, value: sum };
        });
        const first = { start: points[0]!.start - w.minutes * 60, duration: 0, value: from };
        const type = { ...ELECTRICITY, accumulationBehaviour: 3 };
        const record = { point: '1', record: '1', title: '', kind: 0, type, readings: [first, ...points] };
        expectBack(w, 'any.xml', new TextEncoder().encode(writeFeed([record])));
      }),
      { numRuns: 40 },
    );
  });
  test('several meters stay apart, and export never adds to import', () => {
    fc.assert(
      fc.property(written, (w) => {
        const of = (record: string, flow: number) => ({
          point: '1',
          record,
          title: record,
          kind: 0,
          type: { ...ELECTRICITY, flowDirection: flow },
          readings: instants(w),
        });
        const text = writeFeed([of('in', 1), of('out', 19)]);
        const { preview } = readFile('any.xml', new TextEncoder().encode(text), {}, contextOf(w.zone));
        const sum = w.days.flatMap((d) => d.wattHours).reduce((a, b) => a + b, 0) / 1000;
        expect(preview.series.map((s) => [s.role, s.total.toFixed(6)])).toEqual([
          ['import', sum.toFixed(6)],
          ['export', sum.toFixed(6)],
        ]);
      }),
      { numRuns: 30 },
    );
  });
});

/** UTC minutes, since a local hour that comes twice cannot be told in a cell. */
const utcRows = (w: Written): Cell[][] =>
  instants(w).map((r) => [
    { serial: serialOf(new Date(r.start * 1000).toISOString().slice(0, 16)), form: 'both' },
    r.value / 1000,
  ]);

describe('a series written as a workbook reads back the same', () => {
  test('long, dates as numbers of days, words shared or in place, counted from 1900 or 1904', () => {
    fc.assert(
      fc.property(written, fc.boolean(), fc.boolean(), (w, inline, from1904) => {
        const rows = utcRows(w).map(([at, value]): Cell[] => {
          const cell = at as { serial: number; form: 'both' };
          return [{ ...cell, serial: cell.serial - (from1904 ? 1462 : 0) }, value ?? null];
        });
        const book = writeWorkbook([{ name: 'Data', rows: [['Start (UTC)', 'Electricity kWh'], ...rows] }], {
          inline,
          from1904,
        });
        expectBack(w, 'any.xlsx', book);
      }),
      { numRuns: 40 },
    );
  });
  test('long, local stamps as words', () => {
    fc.assert(
      fc.property(written, (w) => {
        const rows = instants(w).map((r): Cell[] => [
          localStamp(w.zone, r.start * 1000).replace('T', ' '),
          r.value / 1000,
        ]);
        expectBack(w, 'any.xlsx', writeWorkbook([{ name: 'Data', rows: [['Start', 'Electricity kWh'], ...rows] }]));
      }),
      { numRuns: 30 },
    );
  });
});

describe('a packed file that is made to hurt', () => {
  test('noughts without end are given up while they are still few', () => {
    const bomb = zipSync({
      'xl/workbook.xml': strToU8('<workbook><sheets><sheet name="A"/></sheets></workbook>'),
      'xl/worksheets/sheet1.xml': new Uint8Array(30 * 1024 * 1024).fill(48),
    });
    expect(bomb.length).toBeLessThan(100_000);
    const { preview } = readFile('bomb.xlsx', bomb, {}, contextOf('Europe/London'));
    expect(preview.remarks.map(remarkSentence)).toEqual([
      'bomb.xlsx is a damaged workbook (it unpacks to over 250 times its size). Open it, save it again, or save the sheet as CSV.',
    ]);
  });
  test('an archive that understates what is in it is measured, not believed', () => {
    // A pattern of 3,000 bytes packs some hundred times, as no mere noughts do.
    const sheet = new Uint8Array(70 * 1024 * 1024);
    const pattern = Uint8Array.from({ length: 3000 }, (_, i) => 48 + ((i * 7919) % 61));
    for (let at = 0; at < sheet.length; at += pattern.length) sheet.set(pattern.subarray(0, sheet.length - at), at);
    const bomb = zipSync({ 'xl/worksheets/sheet1.xml': sheet }, { level: 1 });
    expect(bomb.length).toBeGreaterThan(70 * 4096);
    const view = new DataView(bomb.buffer, bomb.byteOffset, bomb.byteLength);
    // Uncompressed size in the local header and in the directory (PKWARE APPNOTE 4.3.7 and 4.3.12).
    view.setUint32(22, 100, true);
    for (let at = bomb.length - 200; at < bomb.length - 30; at++)
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 100, true);
    const { preview } = readFile('bomb.xlsx', bomb, {}, contextOf('Europe/London'));
    expect(preview.remarks.map(remarkSentence)).toEqual([
      'bomb.xlsx unpacks to over 64 MB; we read at most 64 MB. Save the sheet you need as CSV.',
    ]);
  });
  test('entities are not expanded, whatever they are called', () => {
    const record = { point: '1', record: '1', title: '&bomb;', kind: 0, type: ELECTRICITY, readings: [] };
    const { preview } = readFile('x.xml', strToU8(writeFeed([record])), {}, contextOf('Europe/London'));
    expect(preview.remarks.map((r) => [r.code, r.weight])).toEqual([['xml-broken', 'refusal']]);
  });
});
