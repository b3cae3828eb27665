import { describe, expect, test } from 'vitest';
import { addDays } from '../../../src/model/calendar/civil.ts';
import { meterDays } from '../../../src/model/findings/meter-days.ts';
import { findSteps } from '../../../src/model/findings/steps.ts';
import { cameAtOnce, changeKind, findLineChange, findTwoLines } from '../../../src/model/findings/two-lines.ts';
import { FIRST, noise, textbook } from './made-days.ts';

/** Two days without use but for these powers [kW] from reading `start` on; the second day `gap` days after the first. */
function stepsIn(start: number, kW: readonly number[], { minutes = 30, gap = 1 } = {}) {
  const perDay = 1440 / minutes;
  const all = new Array<number>(2 * perDay).fill(0);
  all.splice(start, kW.length, ...kW);
  const days = [0, gap].map((offset, day) => ({
    date: addDays(FIRST, offset),
    values: all.slice(day * perDay, (day + 1) * perDay).map((one) => (one * minutes) / 60),
  }));
  return findSteps(meterDays({ meter: 'heat-pump', intervalMinutes: minutes, days })!);
}
const level = (kW: number, count: number) => new Array<number>(count).fill(kW);

/** Day, first reading, readings, height, ramp, kWh. */
type Row = readonly [number, number, number, number, number | null, number];
const LONG = { minutes: 60 };
const HOLE = { gap: 2 };

describe('steps', () => {
  test.each([
    ['none', 4, [], {}, []],
    ['of 0.7 kW', 4, level(0.7, 3), {}, [[0, 4, 3, 0.7, null, 1.05]]],
    ['smaller', 4, level(0.69, 3), {}, []],
    ['one reading alone', 4, [3], {}, [[0, 4, 1, 3, null, 1.5]]],
    ['two readings', 4, [3, 3], {}, [[0, 4, 2, 3, null, 3]]],
    ['cut by the clock at both ends', 4, [1, 3, 3, 1.5], {}, [[0, 4, 4, 3, 0, 4.25]]], // (1 + 3 + 3 + 1.5) / 2
    ['a first reading of a twelfth belongs to it', 4, [0.25, 3, 3, 3], {}, [[0, 4, 4, 3, 0, 4.625]]],
    // 0.24 kW is not yet a step: it stands before it, a quarter of it in the base of 0.06 kW.
    ['less stands before it', 4, [0.24, 3, 3, 3], {}, [[0, 5, 3, 2.94, null, 4.41]]],
    ['rising within', 4, [1, 2.8, 3, 3.2, 1], {}, [[0, 4, 5, 3, 0.4 / 3, 5.5]]],
    ['down to four fifths', 4, [2, 2, 1.6, 1.6], {}, [[0, 4, 4, 1.8, -0.4 / 1.8, 3.6]]],
    ['further down: two levels', 4, [2, 2, 1.58, 1.58], {}, []],
    ['up to six fifths', 4, [2, 2, 2.4, 2.4], {}, [[0, 4, 4, 2.2, 0.4 / 2.2, 4.4]]],
    ['further up', 4, [2, 2, 2.42], {}, []],
    ['over at 35 %, which is half in its base', 4, [2, 2, 0.7], {}, [[0, 4, 2, 1.65, null, 1.65]]],
    ['a little more is its cut last reading', 4, [2, 2, 0.72], {}, [[0, 4, 3, 2, null, 2.36]]],
    // 0.4 kW two readings off is the same state of the home: a quarter of it is in the base.
    ['alike before', 2, [0.4, 0, 3, 3, 3], {}, [[0, 4, 3, 2.9, null, 4.35]]],
    ['unlike before', 2, [0.42, 0, 3, 3, 3], {}, [[0, 4, 3, 3, null, 4.5]]],
    ['alike after', 4, [3, 3, 3, 0, 0.4], {}, [[0, 4, 3, 2.9, null, 4.35]]],
    ['unlike after', 4, [3, 3, 3, 0, 0.42], {}, [[0, 4, 3, 3, null, 4.5]]],
    ['alike by the hour', 2, [0.4, 0, 3, 3, 3], LONG, [[0, 4, 3, 2.9, null, 8.7]]],
    ['unlike by the hour', 2, [0.42, 0, 3, 3, 3], LONG, [[0, 4, 3, 3, null, 9]]],
    ['on top of another', 4, [1.2, 1.2, 1.2, 4.2, 4.2, 4.2, 1.2, 1.2], {}, [[0, 7, 3, 3, null, 4.5]]],
    [
      'two, one reading apart',
      4,
      [3, 3, 0, 2, 2],
      {},
      [
        [0, 4, 2, 3, null, 3],
        [0, 7, 2, 2, null, 2],
      ],
    ],
    ['twelve hours, cut at both ends', 4, [1.5, ...level(3, 24), 1.5], {}, [[0, 4, 26, 3, 0, 37.5]]],
    ['thirteen and a half hours', 4, level(3, 27), {}, []],
    ['fourteen hours by the hour', 4, level(3, 14), LONG, [[0, 4, 14, 3, 0, 42]]],
    ['fifteen hours by the hour', 4, level(3, 15), LONG, []],
    ['over midnight', 46, level(3, 4), {}, [[0, 46, 4, 3, 0, 6]]],
    ['over a missing day', 46, level(3, 4), HOLE, []],
    ['at midnight', 48, [3, 3], {}, [[1, 0, 2, 3, null, 3]]],
    ['at the midnight after a missing day', 48, [3, 3], HOLE, []],
    ['a reading later', 49, [3, 3], HOLE, [[1, 1, 2, 3, null, 3]]],
    ['until midnight', 46, [3, 3], {}, [[0, 46, 2, 3, null, 3]]],
    ['until the midnight before a missing day', 46, [3, 3], HOLE, []],
    ['a reading earlier', 45, [3, 3], HOLE, [[0, 45, 2, 3, null, 3]]],
    ['from the second reading of all', 1, [3, 3], {}, [[0, 1, 2, 3, null, 3]]],
    ['to the last but one', 93, [3, 3], {}, [[1, 45, 2, 3, null, 3]]],
    ['the last but one alone', 94, [3], {}, [[1, 46, 1, 3, null, 1.5]]],
    ['to the last: nobody knows how it ends', 94, [3, 3], {}, []],
    ['to the last, falling', 93, [3, 3, 1.5], {}, []],
  ] as [string, number, number[], { minutes?: number; gap?: number }, Row[]][])(
    '%s',
    (_, start, kW, options, expected) => {
      const steps = stepsIn(start, kW, options);
      expect(steps.map(({ day, slot, slots }) => [day, slot, slots])).toEqual(expected.map((row) => row.slice(0, 3)));
      steps.forEach(({ powerKW, ramp, kWh }, i) => {
        expect(powerKW).toBeCloseTo(expected[i]![3], 9);
        if (ramp === null) expect(expected[i]![4]).toBeNull();
        else expect(ramp).toBeCloseTo(expected[i]![4]!, 9);
        expect(kWh).toBeCloseTo(expected[i]![5], 9);
      });
    },
  );
});

describe('changes of level and line', () => {
  const x = Array.from({ length: 120 }, (_, i) => 6 + 5 * noise(i));
  test('two lines part on their day; the same line has nothing to part', () => {
    const lines = findLineChange(
      x,
      x.map((value, i) => (i < 50 ? 2 + value : 2 + 1.4 * value) + 0.1 * noise(i + 0.4)),
      20,
    )!;
    expect(lines.at).toBe(50);
    expect(lines.after.slope).toBeCloseTo(1.4, 1);
    expect(lines.change).toBeCloseTo(0.4 * 6, 0);
    expect(
      findTwoLines(
        x,
        x.map((value, i) => 2 + value + noise(i + 0.2)),
        20,
      )!.f,
    ).toBeLessThan(6);
  });
  test('too few days are no answer', () => {
    expect(findTwoLines([1, 2, 3], [1, 2, 3], 2)).toBeNull();
  });
  test('lines over days of other temperatures are not compared', () => {
    const apart = x.map((value, i) => (i < 60 ? value + 20 : value));
    expect(
      findLineChange(
        apart,
        apart.map((value) => value ** 1.3),
        20,
      ),
    ).toBeNull();
  });
});

/** Chow's F at the best day and the t of the difference over the days in common, each place tried one by one. */
function slowChange(x: readonly number[], y: readonly number[], least: number) {
  const n = y.length;
  const splitAt = (at: number) =>
    [textbook(x.slice(0, at), y.slice(0, at)), textbook(x.slice(at), y.slice(at))] as const;
  const places = Array.from({ length: n - 2 * least + 1 }, (_, i) => i + least);
  const errors = places.map((at) => splitAt(at)[0].sse + splitAt(at)[1].sse);
  const least2 = Math.min(...errors);
  const at = places[errors.indexOf(least2)]!;
  const [before, after] = splitAt(at);
  const residuals = [...before.residuals, ...after.residuals];
  const together = residuals.reduce((sum, value, i) => sum + (i === 0 || i === at ? 0 : value * residuals[i - 1]!), 0);
  const own = residuals.reduce((sum, value) => sum + value ** 2, 0);
  const rho = Math.min(0.9, Math.max(0, together / own));
  const fewer = (1 - rho) / (1 + rho);
  const f = ((textbook(x, y).sse - least2) / 2 / (least2 / (n - 4))) * fewer;
  const seen = x.slice(0, at).sort((a, b) => a - b);
  const [low, high] = [seen[Math.floor(0.05 * (at - 1))]!, seen[Math.ceil(0.95 * (at - 1))]!];
  const common = places.length === 0 ? [] : y.map((_, i) => i).filter((i) => i >= at && x[i]! >= low && x[i]! <= high);
  const mean = common.reduce((sum, i) => sum + x[i]!, 0) / common.length;
  const change = after.at(mean) - before.at(mean);
  const t = Math.abs(change) / Math.sqrt((before.varianceAt(mean) + after.varianceAt(mean)) / fewer);
  return { at, f, rho, common, change, was: before.at(mean), t };
}

describe('against every day tried one by one', () => {
  const spread = (n: number) => Array.from({ length: n }, (_, i) => 6 + 5 * noise(i));
  const flat = (n: number) => new Array<number>(n).fill(0);
  /** Errors of which each keeps so much of the one before. */
  const errors = (n: number, kept: number) => {
    let last = 0;
    return Array.from({ length: n }, (_, i) => {
      last = kept * last + noise(i + 0.3);
      return last;
    });
  };
  const row = (x: readonly number[], at: number, error: readonly number[], by: (x: number) => number) =>
    x.map((value, i) => 3 + 0.8 * value + error[i]! + (i < at ? 0 : by(value)));
  const moved = spread(120).map((value, i) => value + (i < 70 ? 0 : 4));
  const cases: [string, readonly number[], readonly number[]][] = [
    ['steeper', spread(120), row(spread(120), 50, errors(120, 0), (x) => 0.3 * x)],
    ['less steep', spread(120), row(spread(120), 50, errors(120, 0), (x) => -0.3 * x)],
    ['a level without weather', flat(80), row(flat(80), 45, errors(80, 0), () => 2)],
    ['neighbours alike', spread(140), row(spread(140), 60, errors(140, 0.6), () => 4)],
    ['neighbours very alike', spread(160), row(spread(160), 80, errors(160, 0.995), () => 40)],
    ['neighbours unlike', spread(120), row(spread(120), 70, errors(120, -0.7), () => 3)],
    ['partly at other temperatures', moved, row(moved, 70, errors(120, 0), () => 2)],
    ['on the first day that may be', spread(70), row(spread(70), 20, errors(70, 0), () => 5)],
    ['on the last day that may be', spread(70), row(spread(70), 50, errors(70, 0), () => 5)],
    ['nothing', spread(90), row(spread(90), 40, errors(90, 0), () => 0)],
  ];
  const compare = (x: readonly number[], y: readonly number[]) => {
    const slow = slowChange(x, y, 20);
    const lines = findTwoLines(x, y, 20)!;
    expect(lines.at).toBe(slow.at);
    expect(lines.rho).toBeCloseTo(slow.rho, 9);
    expect(lines.f / slow.f).toBeCloseTo(1, 6);
    const change = findLineChange(x, y, 20);
    expect(change !== null).toBe(slow.common.length >= 10 && slow.f >= 10 && slow.t >= 6);
    if (!change) return;
    expect(change.common).toEqual(slow.common);
    expect(change.change).toBeCloseTo(slow.change, 8);
    expect(change.was).toBeCloseTo(slow.was, 8);
    expect(change.t / slow.t).toBeCloseTo(1, 6);
  };
  test.each(cases)('%s', (_, x, y) => compare(x, y));
  test('the smallest change that is no chance', () => {
    for (let k = 40; k < 140; k++)
      compare(
        spread(70),
        row(spread(70), 35, errors(70, 0), () => k / 100),
      );
    // Steady days before and unsteady ones after: here F decides and not t.
    const unsteady = errors(120, 0).map((error, i) => (i < 20 ? error / 50 : 1.5 * error));
    for (let k = 20; k < 160; k++)
      compare(
        flat(120),
        row(flat(120), 20, unsteady, () => k / 80),
      );
  });
  test('half of the days in common are enough, one fewer is not', () => {
    for (const [common, isEnough] of [
      [10, true],
      [9, false],
    ] as const) {
      const x = Array.from({ length: 60 }, (_, i) => (i < 30 ? i / 3 : i < 30 + common ? 5 : 40));
      const y = row(
        x,
        30,
        errors(60, 0).map((error) => error / 10),
        () => 8,
      );
      expect(findLineChange(x, y, 20) !== null).toBe(isEnough);
    }
  });
  test('a row without any error has no change', () => {
    expect(findTwoLines(flat(60), flat(60), 20)).toMatchObject({ f: 0, rho: 0 });
    expect(findTwoLines(flat(39), flat(39), 20)).toBeNull();
    expect(findTwoLines(flat(40), flat(40), 20)).not.toBeNull();
  });
  test('with the cold or steady, by which explains the more of it', () => {
    const cold = Array.from({ length: 40 }, (_, i) => (i * 7) % 11);
    const kinds = Array.from({ length: 21 }, (_, k) => {
      const by = cold.map((value, i) => (1 - k / 20) * value + (k / 20) * 5 + noise(i + 0.7));
      const change = { before: { intercept: 2, slope: 0.5 }, common: [...cold.keys()].slice(5) };
      const y = cold.map((value, i) => 2 + 0.5 * value + by[i]!);
      const [more, colds] = [by.slice(5), cold.slice(5)];
      const mean = more.reduce((sum, value) => sum + value, 0) / more.length;
      const share =
        more.reduce((sum, value, i) => sum + value * colds[i]!, 0) / colds.reduce((sum, value) => sum + value ** 2, 0);
      const steady = more.reduce((sum, value) => sum + (value - mean) ** 2, 0);
      const following = more.reduce((sum, value, i) => sum + (value - share * colds[i]!) ** 2, 0);
      const kind = changeKind(change as unknown as Parameters<typeof changeKind>[0], cold, y, cold);
      expect(kind).toBe(following < steady ? 'with-the-cold' : 'steady');
      return kind;
    });
    expect(kinds).toContain('steady');
    expect(kinds).toContain('with-the-cold');
    const none = { before: { intercept: 0, slope: 0 }, common: [0, 1, 2] } as unknown as Parameters<
      typeof changeKind
    >[0];
    expect(changeKind(none, [0, 0, 0], [1, 1, 1.2], [0, 0, 0])).toBe('steady');
  });
});

describe('whether it came on a day', () => {
  /** y = a + b x + d from a day on, by the normal equations of three unknowns; d and its standard error. */
  function stepOf(rows: readonly (readonly [x: number, since: number, y: number])[]) {
    const design = rows.map(([x, since]) => [1, x, since]);
    const normal = [0, 1, 2].map((i) => [0, 1, 2].map((k) => design.reduce((sum, row) => sum + row[i]! * row[k]!, 0)));
    const right = [0, 1, 2].map((i) => design.reduce((sum, row, place) => sum + row[i]! * rows[place]![2], 0));
    const det = (m: readonly (readonly number[])[]) =>
      m[0]![0]! * (m[1]![1]! * m[2]![2]! - m[1]![2]! * m[2]![1]!) -
      m[0]![1]! * (m[1]![0]! * m[2]![2]! - m[1]![2]! * m[2]![0]!) +
      m[0]![2]! * (m[1]![0]! * m[2]![1]! - m[1]![1]! * m[2]![0]!);
    const whole = det(normal);
    const solved = [0, 1, 2].map((column) => det(normal.map((row, i) => row.with(column, right[i]!))) / whole);
    const left = rows.reduce(
      (sum, [x, since, y]) => sum + (y - solved[0]! - solved[1]! * x - solved[2]! * since) ** 2,
      0,
    );
    const variance = (left / (rows.length - 3)) * ((normal[0]![0]! * normal[1]![1]! - normal[0]![1]! ** 2) / whole);
    return { d: solved[2]!, error: Math.sqrt(variance) };
  }
  test.each([
    ['of 160', 160, 80, 0.3, false],
    ['with few before it', 110, 20, 0.3, false],
    ['with so few after it that nobody can tell', 110, 90, 0.3, true],
    ['unsteady', 120, 60, 4, false],
  ])('beside the sum written out: a day %s', (_, count, at, rough, last) => {
    const answers = Array.from({ length: 21 }, (_, k) => {
      // From all on the day to all little by little over the 120 days about it.
      const little = (i: number) => Math.min(1, Math.max(0, (i - at + 60) / 120));
      const x = Array.from({ length: count }, (_, i) => 6 + 5 * noise(i));
      const y = x.map(
        (value, i) =>
          2 + value + rough * noise(i + 0.4) + 4 * ((1 - k / 20) * (i >= at ? 1 : 0) + (k / 20) * little(i)),
      );
      const lines = [x.slice(0, at), x.slice(at)].map((part, side) => {
        const line = textbook(part, side === 0 ? y.slice(0, at) : y.slice(at));
        return { intercept: line.at(0), slope: line.at(1) - line.at(0) };
      });
      const [from, to] = [Math.max(0, at - 30), Math.min(count, at + 30)];
      const rows = x.slice(from, to).map((value, i) => [value, from + i >= at ? 1 : 0, y[from + i]!] as const);
      const { d, error } = stepOf(rows);
      const meanX = rows.reduce((sum, [value]) => sum + value, 0) / rows.length;
      const [before, after] = lines;
      const differ = after!.intercept - before!.intercept + (after!.slope - before!.slope) * meanX;
      const expected = d / differ >= 0.5 && Math.abs(d) >= 3 * error;
      const found = cameAtOnce({ at, before, after } as unknown as Parameters<typeof cameAtOnce>[0], x, y).isAtOnce;
      expect(found, `${k}`).toBe(expected);
      return found;
    });
    expect(answers[0]).toBe(true);
    expect(answers[20]).toBe(last);
  });
});
