/** A register that comes in several files counts each reading once, whatever the order of the files. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Evidence, Series } from '../../../src/model/shapes/evidence.ts';
import { completenessOf, completenessWords } from '../../../src/words/completeness.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';
import { openHome } from './open-home.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);

/** Half-hours from the first of January 2026, UTC; the value tells the place. */
const rowOf = (slot: number, add = 0) =>
  `${new Date(Date.UTC(2026, 0, 1) + slot * 1_800_000).toISOString().slice(0, 16)}Z,${(((slot * 7) % 90) / 100 + add).toFixed(3)}`;
const fileOf = (from: number, to: number, heading = 'Electricity used (kWh)', add = 0) =>
  [`Start,${heading}`, ...Array.from({ length: to - from }, (_, i) => rowOf(from + i, add))].join('\n');

const bare = ({ id: _, evidenceId: __, name: ___, ...rest }: Series) => ({
  ...rest,
  total: Math.round(rest.total * 1e6) / 1e6,
  days: rest.days && { ...rest.days, values: rest.days.values.map((v) => v && Math.round(v * 1e6) / 1e6) },
  dayShape: rest.dayShape?.map((month) => month.map((v) => Math.round(v * 1e6) / 1e6)),
});

describe('half-hours in overlapping files', () => {
  test('a file cut into overlapping pieces, brought in any order, is the whole file again', async () => {
    const LENGTH = 48 * 12;
    const cuts = fc.record({
      /** Where pieces meet, and how far each runs on into the next; never a multiple of a day by design. */
      edges: fc.uniqueArray(fc.integer({ min: 60, max: LENGTH - 60 }), { minLength: 1, maxLength: 4 }),
      overlap: fc.integer({ min: 0, max: 130 }),
      seed: fc.integer(),
    });
    const whole = openHome();
    await whole.create();
    await whole.bring('whole.csv', fileOf(0, LENGTH));
    const expected = (await whole.open()).series.map(bare);
    await fc.assert(
      fc.asyncProperty(cuts, async ({ edges, overlap, seed }) => {
        const starts = [0, ...edges.toSorted((a, b) => a - b)];
        const pieces = starts.map((from, i) => [from, Math.min(LENGTH, (starts[i + 1] ?? LENGTH) + overlap)] as const);
        const home = openHome();
        await home.create();
        for (const [i, [from, to]] of pieces
          .toSorted((a, b) => ((a[0] * seed) % 97) - ((b[0] * seed) % 97))
          .entries()) {
          if (to - from > 4) await home.bring(`piece ${i}.csv`, fileOf(from, to), { stamp: 'start' });
        }
        const covered = pieces.every(([from, to]) => to - from > 4);
        fc.pre(covered);
        const { series } = await home.open();
        expect(series.map(bare)).toEqual(expected);
        const points = await home.call<{ at: string; value: number }[]>('evidence.readings', {
          seriesId: series[0]!.id,
          from: '2026-01-01',
          to: '2026-01-13',
        });
        expect(points).toHaveLength(LENGTH);
        expect(points.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(series[0]!.total, 6);
        home.store.close();
      }),
      { numRuns: 25 },
    );
    whole.store.close();
  });
});

describe('which import counts', () => {
  const codes = (evidence: Evidence) => evidence.remarks.map(({ code }) => code).filter((c) => c.startsWith('overlap'));

  test('where two files differ the newer counts, and taking it back brings the older', async () => {
    const home = openHome();
    await home.create();
    await home.bring('old.csv', fileOf(0, 48 * 10));
    const before = (await home.open()).series;
    const newer = await home.bring('new.csv', fileOf(48 * 4, 48 * 14, 'Electric consumption (kWh)', 0.1));
    expect(newer.remarks.find(({ code }) => code === 'overlap-different')).toMatchObject({
      found: 'old.csv',
      from: '2026-01-05',
      to: '2026-01-11',
      count: 6,
      effectKWh: 28.8,
    });
    const [joined, ...others] = (await home.open()).series;
    expect(others).toEqual([]);
    expect(joined).toMatchObject({ from: '2026-01-01', to: '2026-01-15', present: 672, expected: 672 });
    const alone = before[0]!.days!.values;
    expect(joined!.days!.values.slice(0, 4)).toEqual(alone.slice(0, 4));
    expect(joined!.days!.values[4]).toBeCloseTo(alone[4]! + 4.8, 9);
    await home.call('evidence.undo', { evidenceId: newer.id });
    expect((await home.open()).series).toEqual(before);
    await home.call('evidence.restore', { evidenceId: newer.id });
    expect((await home.open()).series).toEqual([joined]);
  });

  test('an import cut by another clock is not brought again', async () => {
    const home = openHome();
    await home.create();
    const { id } = await home.bring('old.csv', fileOf(0, 48 * 4));
    await home.call('evidence.undo', { evidenceId: id });
    const { household, revision } = await home.open();
    const { revision: next } = await home.call<{ revision: number }>('household.save', {
      household: { ...household, zone: 'America/New_York' },
      revision,
    });
    await expect(home.call('evidence.restore', { evidenceId: id })).rejects.toMatchObject({
      code: 'other-clock',
      message: expect.stringContaining('old.csv was cut into days by the clock of Europe/London'),
    });
    expect((await home.open()).evidence).toEqual([]);
    await home.call('household.save', { household, revision: next });
    await home.call('evidence.restore', { evidenceId: id });
    expect((await home.open()).evidence).toHaveLength(1);
  });

  test('of the same file again the preview says so, and asks nothing of what it repeats', async () => {
    const home = openHome();
    const householdId = await home.create();
    const offer = async (text: string) => {
      const { fileId } = await home.call<{ fileId: string }>('file.offer', { fileName: 'a.csv', bytes: bytesOf(text) });
      return home.call<Evidence>('evidence.preview', { fileId, householdId, choices: {} });
    };
    const text = fileOf(0, 48 * 4);
    expect(codes(await offer(text))).not.toContain('kept-already');
    const { id } = await home.bring('a.csv', text);
    const again = await offer(text);
    expect(again.remarks.filter(({ code }) => /kept|overlap|records/.test(code))).toEqual([
      { code: 'kept-already', weight: 'note', file: 'a.csv' },
    ]);
    await home.call('evidence.undo', { evidenceId: id });
    expect(codes(await offer(text))).not.toContain('kept-already');
  });

  test('the preview says it before anything is kept, and nothing is said once the older is gone', async () => {
    const home = openHome();
    const householdId = await home.create();
    const old = await home.bring('old.csv', fileOf(0, 48 * 4));
    const text = fileOf(48, 48 * 6);
    const { fileId } = await home.call<{ fileId: string }>('file.offer', { fileName: 'new.csv', bytes: bytesOf(text) });
    const preview = await home.call<Evidence>('evidence.preview', { fileId, householdId, choices: {} });
    expect(codes(preview)).toEqual(['overlap-same']);
    expect(remarkSentence(preview.remarks.find(({ code }) => code === 'overlap-same')!)).toBe(
      'new.csv repeats 3 days that old.csv had, 2 January 2026 to 4 January 2026, with the same values. They count once.',
    );
    expect(codes(await home.bring('new.csv', text))).toEqual(['overlap-same']);
    await home.call('evidence.undo', { evidenceId: old.id });
    expect((await home.open()).evidence.flatMap(codes)).toEqual([]);
  });

  test.each([
    { name: 'another register', heading: 'Night electricity (kWh)', series: 2 },
    { name: 'the same register in other words', heading: 'Energy consumption kWh electricity', series: 1 },
    { name: 'export', heading: 'Electricity export (kWh)', series: 2 },
  ])('$name makes $series series', async ({ name, heading, series }) => {
    const home = openHome();
    await home.create();
    await home.bring('one.csv', fileOf(0, 96, 'Electricity used (kWh)'));
    // One rate alone is asked about until it is said what it is.
    await home.bring('two.csv', fileOf(48, 144, heading), { role: name === 'export' ? 'export' : 'import' });
    expect((await home.open()).series).toHaveLength(series);
  });

  test('hours beside half-hours: each day counts once', async () => {
    const home = openHome();
    await home.create();
    await home.bring('half-hours.csv', fileOf(0, 48 * 5));
    const hours = Array.from({ length: 24 * 5 }, (_, i) => {
      const at = new Date(Date.UTC(2026, 0, 4) + i * 3_600_000).toISOString().slice(0, 16);
      return `${at}Z,1`;
    });
    await home.bring('hours.csv', ['Start,Electricity (kWh)', ...hours].join('\n'));
    const { series, evidence } = await home.open();
    expect(series).toHaveLength(1);
    expect(series[0]).toMatchObject({
      from: '2026-01-01',
      to: '2026-01-09',
      present: 8,
      expected: 8,
      resolution: 'day',
    });
    expect(series[0]!.days!.values.slice(3)).toEqual([24, 24, 24, 24, 24]);
    expect(evidence[1]!.remarks.find(({ code }) => code === 'overlap-different')).toMatchObject({ count: 2 });
  });

  test('bills: the same bills again count once, and a newer bill takes its days from an older one', async () => {
    const home = openHome();
    const householdId = await home.create();
    const bill = (from: string, to: string, kWh: number) => ({ from, to, kWh, quality: 'actual' as const });
    const type = (name: string, periods: object[]) =>
      home.call<Evidence>('evidence.type', { householdId, name, carrier: 'gas', role: 'import', periods });
    await type('Bills of winter', [bill('2025-01-01', '2025-02-01', 3100), bill('2025-02-01', '2025-03-01', 2000)]);
    const again = await type('More bills', [
      bill('2025-02-01', '2025-03-01', 2000),
      bill('2025-03-01', '2025-04-01', 900),
    ]);
    expect(codes(again)).toEqual(['overlap-same']);
    expect((await home.open()).series).toMatchObject([{ total: 6000, present: 90, expected: 90 }]);
    await type('Corrected', [bill('2025-01-22', '2025-02-01', 500)]);
    const { series } = await home.open();
    expect(series[0]!.periods!.slice(0, 2)).toMatchObject([
      { from: '2025-01-01', to: '2025-01-22', kWh: 2100, quality: 'estimated' },
      { from: '2025-01-22', to: '2025-02-01', kWh: 500, quality: 'actual' },
    ]);
    expect(series[0]!.total).toBeCloseTo(5500, 9);
  });

  test('two files of one register that make different amounts of the same days are asked about', async () => {
    const home = openHome();
    await home.create();
    await home.bring('a.csv', fileOf(0, 48 * 20));
    const other = fileOf(48 * 5, 48 * 25, 'Electricity used (kWh)', 0.5);
    await expect(home.bring('b.csv', other)).rejects.toThrow('On 15 days that both have they differ by 360 kWh');
    await home.bring('b.csv', other, { beside: 'aside' });
    const { series } = await home.open();
    expect(series.map(({ present }) => present)).toEqual([48 * 20]);
  });

  test('completeness after overlaps counts every day once', async () => {
    const home = openHome();
    await home.create();
    await home.bring('a.csv', fileOf(0, 48 * 40));
    await home.bring('b.csv', fileOf(48 * 30, 48 * 50));
    await home.bring('c.csv', fileOf(48 * 52, 48 * 85));
    const { series } = await home.open();
    expect(series.map((one) => completenessWords(completenessOf(one)))).toEqual(['we have 97 days in 100']);
  });
});
