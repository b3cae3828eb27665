import { describe, expect, test } from 'vitest';
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { normalShare } from '../../../src/model/chance/normal-share.ts';
import { estimateDemand } from '../../../src/model/demand/estimate-demand.ts';
import { findChange } from '../../../src/model/demand/find-change.ts';
import { fitRecord } from '../../../src/model/demand/fit-record.ts';
import { changeOf, showChange } from '../../../src/model/demand/house-change.ts';
import { fitLine } from '../../../src/model/demand/least-squares.ts';
import type { HeatRecord } from '../../../src/model/demand/record.ts';
import { fitSignatureAt } from '../../../src/model/demand/signature.ts';
import type { SignatureData } from '../../../src/model/demand/signature-data.ts';
import { Demand } from '../../../src/model/shapes/appraisal.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { reference } from '../../../src/reference/index.ts';
import { type Kind, madeHome } from '../../prove/demand/home.ts';
import { daySeries, household, madeRecord, typed, year } from './fixtures.ts';

const estimate = (series: Series[], present = {}) =>
  estimateDemand({
    household: household({ present: { system: 'gas-condensing', efficiency: typed(0.84, 'measured'), ...present } }),
    series,
    reference,
    year,
  });

/** Two years of days with 40 % less heating from 1 January 2024 on. */
function insulated(slopeAfter: number): Series[] {
  const before = madeRecord({ first: '2023-01-01', days: 365, base: 8, slope: 4, baseC: 15, noise: 4 });
  const after = madeRecord({ first: '2024-01-01', days: 366, base: 8, slope: slopeAfter, baseC: 15, noise: 4 });
  const temperatures = [...before.temperatures, ...after.temperatures];
  return [
    daySeries('gas', 'gas', 'import', '2023-01-01', [...before.use, ...after.use]),
    daySeries('weather', 'outdoor-temperature', 'weather', '2023-01-01', temperatures),
  ];
}

describe('a change in the house during the record', () => {
  const { demand, questions } = estimate(insulated(2.4));
  test('is dated, sized and asked about, and the demand stands on what came after', () => {
    Demand.parse(demand);
    const change = demand.change!;
    expect(Math.abs(toDayNumber(change.on) - toDayNumber('2024-01-01'))).toBeLessThan(15);
    expect(change.shareLow).toBeLessThan(-0.4);
    expect(change.shareHigh).toBeGreaterThan(-0.4);
    expect(change).toMatchObject({
      used: true,
      before: { from: '2023-01-01' },
      after: { to: toCivilDate(toDayNumber('2025-01-01')) },
    });
    expect(demand.signature!.from).toBe(change.on);
    expect(questions).toContainEqual(
      expect.objectContaining({
        code: 'house-changed',
        data: expect.objectContaining({ used: 'after', carrier: 'gas' }),
      }),
    );
    const alone = estimate(
      insulated(2.4).map((s) => ({
        ...s,
        days: { first: change.on, values: s.days!.values.slice(toDayNumber(change.on) - toDayNumber('2023-01-01')) },
      })),
    );
    expect(demand.estimates[0]!.spaceKWh).toBeCloseTo(alone.demand.estimates[0]!.spaceKWh, 6);
  });
  test('is not seen where there is none', () => {
    expect(estimate(insulated(4)).demand.change).toBeUndefined();
  });
  test('is seldom seen in homes that only have habits, and mostly in those that lost four tenths of their loss', () => {
    const kind: Kind = 'gas by day, own weather';
    const seen = (changeTo: number, recordDays: number) =>
      Array.from({ length: 40 }, (_, i) => madeHome(kind, i + 1, { changeTo, recordDays })).filter(
        (home) =>
          estimateDemand({ household: home.household, series: home.series, reference, year: home.year }).demand.change
            ?.used,
      ).length;
    expect(seen(1, 365)).toBeLessThanOrEqual(4);
    expect(seen(0.6, 730)).toBeGreaterThanOrEqual(28);
  });
});

describe('the break beside every cut tried by hand', () => {
  /** Spans of some days whose temperatures go round a year; use by one slope before the break and another after it. */
  function madeSpans(
    count: number,
    length: number,
    breakAt: number,
    slopes: readonly [number, number],
    noise: number,
    halfK = 7,
  ) {
    const x = Array.from({ length: count }, (_, i) => 7 - halfK * Math.cos((2 * Math.PI * (i * length + 20)) / 180));
    const rough = (i: number) => ((i * 7919) % 13) / 6 - 1 + (((i + 3) * 104_729) % 7) / 6 - 0.5;
    const data: SignatureData = {
      first: Int32Array.from(x, (_, i) => i * length),
      days: Float64Array.from(x, () => length),
      perDayKWh: Float64Array.from(x, (below, i) => 6 + slopes[i < breakAt ? 0 : 1]! * below + noise * rough(i)),
      outdoorC: Float64Array.from(x.flatMap((below) => new Array<number>(length).fill(15 - below))),
      start: Uint32Array.from({ length: count + 1 }, (_, i) => i * length),
    };
    return { x, data };
  }
  function slowly({ x, data }: ReturnType<typeof madeSpans>, usualSpread: (days: number) => number) {
    const [y, w, n] = [[...data.perDayKWh], [...data.days], x.length];
    const sum = (values: readonly number[]) => values.reduce((total, v) => total + v, 0);
    const line = (from: number, to: number) => fitLine(x.slice(from, to), y.slice(from, to), w.slice(from, to));
    const contrast = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
    const cold = (from: number, to: number) => sum(x.slice(from, to).map((below, i) => below * w[from + i]!));
    let last = Number.NEGATIVE_INFINITY;
    const cuts = [];
    for (let i = 5; i <= n - 5; i++) {
      const [before, after] = [sum(w.slice(0, i)), sum(w.slice(i))];
      const share = cold(0, i) / cold(0, n);
      if (before < 120 || after < 120 || share < 0.2 || share > 0.8 || before - last < 7) continue;
      if (contrast(x.slice(0, i)) < 4 || contrast(x.slice(i)) < 4) continue;
      last = before;
      const [one, other] = [line(0, i), line(i, n)];
      cuts.push({ i, one, other, error: one.squaredError + other.squaredError, before, after });
    }
    if (cuts.length === 0) return null;
    const best = cuts.reduce((least, cut) => (cut.error < least.error ? cut : least));
    const residual = x.map((below, i) => {
      const { intercept, slope } = i < best.i ? best.one : best.other;
      return Math.sqrt(w[i]!) * (y[i]! - intercept - slope * below);
    });
    const together = sum(residual.map((r, i) => (i === 0 || i === best.i ? 0 : r * residual[i - 1]!)));
    const rho = Math.min(0.95, Math.max(0, together / sum(residual.map((r) => r * r))));
    const widen = (1 + rho) / (1 - rho);
    const near = cuts.filter(({ error }) => error - best.error <= (3.84 * widen * best.error) / (n - 5));
    const ratio = best.other.slope / best.one.slope;
    const fit = Math.sqrt(
      widen * ((best.one.slopeError / best.one.slope) ** 2 + (best.other.slopeError / best.other.slope) ** 2),
    );
    const usual = Math.hypot(usualSpread(best.before), usualSpread(best.after));
    const sure = normalShare(Math.abs(Math.log(ratio)) / Math.hypot(fit, usual));
    if (Math.abs(ratio - 1) < 0.15 || sure < 0.97) return null;
    return {
      index: best.i,
      earliest: near[0]!.i,
      latest: near.at(-1)!.i,
      share: ratio - 1,
      shareError: ratio * fit,
      sure,
    };
  }
  test.each([
    ['40 weeks, in the middle', madeSpans(40, 7, 20, [3, 2], 1), true],
    ['too near the beginning for its days', madeSpans(40, 7, 16, [3, 2], 0.2), true],
    ['too near the end', madeSpans(40, 7, 24, [3, 2], 0.2), true],
    ['12 spans of 10 days before it', madeSpans(36, 10, 12, [3, 1.5], 0.3), true],
    ['12 spans of 10 days after it', madeSpans(36, 10, 24, [3, 1.5], 0.3), true],
    ['5 months before it', madeSpans(14, 30, 5, [3, 1.5], 0.2), true],
    ['4 months before it', madeSpans(14, 30, 4, [3, 1.5], 0.2), true],
    ['5 months after it', madeSpans(14, 30, 9, [3, 1.5], 0.2), true],
    ['days of a year and a half', madeSpans(540, 1, 270, [3, 2.2], 2), true],
    ['days, the break beside a trial', madeSpans(400, 1, 203, [3, 2], 0.5), true],
    ['an ill-determined one', madeSpans(60, 7, 30, [3, 2], 4), true],
    ['use that rises', madeSpans(60, 7, 30, [2, 3], 1), true],
    ['a small change', madeSpans(60, 7, 30, [3, 2.6], 0.2), false],
    ['one like habits', madeSpans(60, 7, 30, [3, 2.5], 0.2), false],
    ['too short a record', madeSpans(34, 7, 17, [3, 2], 0.2), false],
    ['ten spans and no fewer', madeSpans(10, 30, 5, [3, 1.5], 0.2), true],
  ] as const)('%s', (_name, made, there) => {
    const usualSpread = (days: number) => 0.1 / Math.sqrt(Math.max(1, days / 365));
    const expected = slowly(made, usualSpread);
    const found = findChange(made.data, fitSignatureAt(made.data, 15), { usualSpread });
    expect(found !== null).toBe(there);
    if (!expected || !found) return expect(found).toBe(expected);
    expect([found.index, found.earliest, found.latest]).toEqual([expected.index, expected.earliest, expected.latest]);
    for (const one of ['share', 'shareError', 'sure'] as const) expect(found[one]).toBeCloseTo(expected[one], 8);
  });
  test.each([
    ['14 % less', [3, 2.58], 7, null],
    ['16 % less', [3, 2.52], 7, 30],
    ['14 % more', [3, 3.42], 7, null],
    ['16 % more', [3, 3.48], 7, 30],
    ['16 % less where mild and cold lie 4.2 K apart', [3, 2.52], 2.1, 30],
    ['the same where they lie 3.8 K apart', [3, 2.52], 1.9, null],
  ] as const)('%s', (_name, slopes, halfK, index) => {
    const { data } = madeSpans(60, 7, 30, slopes, 0.01, halfK);
    const found = findChange(data, fitSignatureAt(data, 15), { usualSpread: () => 0.02 });
    expect(found?.index ?? null).toBe(index);
    if (found) expect(found.share).toBeCloseTo(slopes[1] / slopes[0] - 1, 2);
  });
  test('no break where no more is used the colder it is', () => {
    const { data } = madeSpans(40, 7, 20, [-3, -2], 0.2);
    const usualSpread = () => 0.05;
    expect(findChange(data, fitSignatureAt(data, 15), { usualSpread })).toBeNull();
    const turned = madeSpans(40, 7, 20, [5, -1], 0.2).data;
    expect(findChange(turned, fitSignatureAt(turned, 15), { usualSpread })).toBeNull();
  });

  test('as it is shown, and what it leaves of the record', () => {
    const { data } = madeSpans(52, 7, 26, [3, 1.8], 1);
    const series = [daySeries('gas', 'gas', 'import', '1970-01-01', [])];
    const spans = [...data.first].map((first, i) => ({
      first,
      days: 7,
      kWh: 7 * data.perDayKWh[i]!,
      estimated: false,
    }));
    const record: HeatRecord = { meter: 'fuel', carrier: 'gas', series, spans, deliveries: false, leftOut: 0 };
    const fitted = fitRecord(
      record,
      [daySeries('w', 'outdoor-temperature', 'weather', '1970-01-01', [...data.outdoorC])],
      year,
    );
    const spread = { winter: 0.1, habits: 0.05 };
    const changed = changeOf(record, fitted, spread)!;
    // Habits of one year, and of months that a record of seven heating months a year evens out; its own weather adds nothing.
    const usualSpread = (days: number) => Math.hypot(0.05, 0.12 / Math.sqrt(Math.max(1, (7 * days) / 365.25)));
    const found = findChange(fitted.weather.data, fitted.signature!, { usualSpread })!;
    expect(changed.found).toEqual(found);
    expect(changeOf(record, fitted, spread)!.found).toBe(changed.found);
    expect(changed.sureEnough).toBe(found.sure >= 0.98);
    expect(changed.after).toEqual({ ...record, spans: spans.slice(found.index) });
    const dateOf = (index: number) => toCivilDate(7 * index);
    const part = (from: number, to: number, line: (typeof found)['before']) => ({
      from: dateOf(from),
      to: dateOf(to),
      count: to - from,
      baseC: fitted.signature!.baseC,
      basePerDayKWh: line.intercept,
      slopeKWhPerKDay: line.slope,
      r2: line.r2,
    });
    expect(showChange(fitted, found, true)).toEqual({
      on: dateOf(found.index),
      earliest: dateOf(found.earliest),
      latest: dateOf(found.latest),
      share: found.share,
      shareLow: expect.closeTo(found.share - 1.2816 * found.shareError, 12),
      shareHigh: expect.closeTo(found.share + 1.2816 * found.shareError, 12),
      sure: found.sure,
      used: true,
      before: part(0, found.index, found.before),
      after: part(found.index, 52, found.after),
    });
    // Weather that stands in for both sides hides a change of this size.
    const standIn = fitRecord(record, [], year);
    const byTypical = findChange(standIn.weather.data, standIn.signature!, {
      usualSpread: (days) => Math.hypot(usualSpread(days), 0.9),
    });
    expect(changeOf(record, standIn, { winter: 0.9, habits: 0.05 })?.found ?? null).toEqual(byTypical);
  });
});

describe('what else the record shows', () => {
  const known = madeRecord({ first: '2023-01-01', days: 730, base: 8, slope: 3, baseC: 14, noise: 4 });
  const { demand } = estimate([known.gas, known.outdoor]);
  test('heat loss: 3 kWh/K·day × 0.84 × 1000/24 = 105 W/K lies in its range', () => {
    expect(demand.recordHeatLoss!.low).toBeLessThan(105);
    expect(demand.recordHeatLoss!.high).toBeGreaterThan(105);
    expect(Math.abs(demand.recordHeatLoss!.value / 105 - 1)).toBeLessThan(0.1);
  });
  test('years to come: mild below typical below cold, each within its own range, the winter only in the heating', () => {
    const [mild, typical, cold] = demand.yearsAhead!;
    for (const one of demand.yearsAhead!) {
      expect(one.low).toBeLessThan(one.kWh);
      expect(one.high).toBeGreaterThan(one.kWh);
    }
    expect(cold!.kWh - typical!.kWh).toBeCloseTo(typical!.kWh - mild!.kWh, 6);
    expect(cold!.degreeDays / typical!.degreeDays).toBeCloseTo(1 + 1.2816 * reference.spread.winter.value, 9);
    const heating = typical!.kWh - 8 * 365;
    expect(Math.abs((cold!.kWh - typical!.kWh) / heating / (1.2816 * reference.spread.winter.value) - 1)).toBeLessThan(
      0.15,
    );
  });
  test('a stove widens the range, is put in units, and moves nothing', () => {
    const stove = estimate([known.gas, known.outdoor], { otherHeat: 'wood stove' });
    const [plain, wide] = [demand.estimates[0]!, stove.demand.estimates[0]!];
    expect(wide.spaceKWh).toBe(plain.spaceKWh);
    expect(wide.spaceErrorKWh).toBeGreaterThan(plain.spaceErrorKWh);
    const asked = stove.questions.find((q) => q.code === 'other-heat')!;
    // A tenth of all heat is a ninth of what the main heating makes.
    expect(asked.data.perhapsKWh).toBeCloseTo(plain.spaceKWh / 9, 6);
  });
});
