import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balanceHome } from '../../../src/model/balance/balance-home.ts';
import { type Battery, cheapHours, FILL, GIVE, halvesToFill } from '../../../src/model/balance/battery.ts';
import { carByHalfHour } from '../../../src/model/balance/car-by-half-hour.ts';
import { usedAtOnceKWh } from '../../../src/model/balance/used-at-once.ts';
import { yearSlots } from '../../../src/model/calendar/zone.ts';

const slots = yearSlots(2027, 'Europe/London');
const byMinute = (of: (minute: number) => number) => Float64Array.from(slots.minute, of);
const flat = byMinute(() => 25);
const night = byMinute((minute) => (minute < 330 ? 8 : 30));
const load = byMinute((minute) => (minute > 1020 ? 0.6 : 0.15));
const sun = Float64Array.from(slots.minute, (minute, i) =>
  minute > 540 && minute < 960 ? (slots.month[i]! > 2 && slots.month[i]! < 9 ? 1.2 : 0.2) : 0,
);
const battery: Battery = { usableKWh: 8, powerKW: 3, roundTripShare: 0.85, standbyW: 10, fromNight: true };
const sum = (list: ArrayLike<number>) => Array.from(list).reduce((total, one) => total + one, 0);
const cost = (
  { boughtKWh, soldKWh }: { boughtKWh: Float64Array; soldKWh: Float64Array },
  pence: Float64Array,
  exportPence: number,
) => sum(boughtKWh.map((kWh, i) => kWh * pence[i]!)) - exportPence * sum(soldKWh);

describe('sun used in the moment it falls', () => {
  test.each([
    [0.5, 1],
    [1, 0.6748],
    [2, 0.4145],
    [4, 0.25],
  ])('made over needed %d: %d of it', (r, share) => expect(usedAtOnceKWh(r, 1) / r).toBeCloseTo(share, 4));

  test('is no more than made or needed, and never falls as either grows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (made, need) => {
          const used = usedAtOnceKWh(made, need);
          expect(used).toBeLessThanOrEqual(Math.min(made, need) + 1e-12);
          expect(usedAtOnceKWh(made + 0.1, need)).toBeGreaterThanOrEqual(used - 1e-12);
          expect(usedAtOnceKWh(made, need + 0.1)).toBeGreaterThanOrEqual(used - 1e-12);
        },
      ),
    );
  });
});

describe('the balance of a home', () => {
  test('keeps energy: bought and made is needed, sent out, lost and left, whatever the battery and the prices', () => {
    fc.assert(
      fc.property(
        fc.record({
          usableKWh: fc.double({ min: 0, max: 30, noNaN: true }),
          powerKW: fc.double({ min: 0.1, max: 10, noNaN: true }),
          roundTripShare: fc.double({ min: 0.3, max: 1, noNaN: true }),
          standbyW: fc.double({ min: 0, max: 100, noNaN: true }),
          fromNight: fc.boolean(),
        }),
        fc.double({ min: -20, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.boolean(),
        (battery, nightPence, exportPence, sunny) => {
          const pencePerKWh = byMinute((minute) => (minute < 330 ? nightPence : 30));
          const home = { slots, loadKWh: load, pencePerKWh, exportPence, battery, sunKWh: sunny ? sun : undefined };
          const got = balanceHome(home);
          const made = sunny ? sum(sun) : 0;
          const needed = sum(load) + sum(got.soldKWh) + got.batteryLossKWh + got.leftKWh;
          expect(sum(got.boughtKWh) + made).toBeCloseTo(needed, 6);
          expect(Math.min(...got.boughtKWh)).toBeGreaterThanOrEqual(-1e-9);
          expect(Math.min(...got.soldKWh)).toBeGreaterThanOrEqual(-1e-9);
          expect(got.batteryLossKWh).toBeGreaterThanOrEqual(-1e-6);
          expect(Math.max(...got.boughtKWh)).toBeLessThanOrEqual(
            0.6 + (battery.powerKW + battery.standbyW / 1000) / 2 + 1e-9,
          );
          if (!battery.fromNight) expect(got.filledKWh).toBe(0);
        },
      ),
      { numRuns: 25 },
    );
  });

  test('without roof and battery is what the home needs; a battery of 0 is none', () => {
    const plain = balanceHome({ slots, loadKWh: load, pencePerKWh: flat, exportPence: 5 });
    expect(plain.boughtKWh).toEqual(load);
    const empty = { ...battery, usableKWh: 0, standbyW: 0 };
    expect(balanceHome({ slots, loadKWh: load, pencePerKWh: night, exportPence: 5, battery: empty })).toEqual(plain);
  });

  test('filled in cheap hours a battery costs less than empty, and loses a share of what goes through it', () => {
    const home = { slots, loadKWh: load, pencePerKWh: night, exportPence: 5 };
    const never = balanceHome({ ...home, battery: { ...battery, fromNight: false, standbyW: 0 } });
    const got = balanceHome({ ...home, battery: { ...battery, standbyW: 0 } });
    expect(cost(got, night, 5)).toBeLessThan(cost(never, night, 5));
    expect(got.givenKWh).toBeCloseTo(0.85 * got.filledKWh, -1.5);
    // 8 kWh, once a day, as much as the home needs by day.
    expect(got.givenKWh).toBeLessThanOrEqual(365 * 8 * Math.sqrt(0.85) + 8);
    got.boughtKWh.forEach((kWh, i) => {
      if (slots.minute[i]! >= 330) expect(kWh).toBeLessThanOrEqual(load[i]!);
    });
  });

  test('is never dearer for leave to be filled at night, with sun and without', () => {
    for (const sunKWh of [sun, undefined])
      for (const exportPence of [2, 9, 20])
        for (const pencePerKWh of [flat, night]) {
          const home = { slots, loadKWh: load, pencePerKWh, exportPence, sunKWh };
          const [yes, no] = [true, false].map((fromNight) =>
            balanceHome({ ...home, battery: { ...battery, fromNight } }),
          );
          expect(cost(yes!, pencePerKWh, exportPence)).toBeLessThanOrEqual(cost(no!, pencePerKWh, exportPence) + 1e-6);
        }
  });

  test('on three prices one that is slow or loses half fills at the cheapest, and gives where that pays', () => {
    const three = byMinute((minute) => (minute < 180 ? 14 : minute >= 960 && minute < 1140 ? 41 : 25));
    const morning = byMinute((minute) => (minute >= 420 && minute < 720 ? 0.6 : 0.05));
    const home = { slots, loadKWh: morning, pencePerKWh: three, exportPence: 5 };
    for (const change of [{ powerKW: 0.8, usableKWh: 10 }, { roundTripShare: 0.5 }]) {
      const got = balanceHome({ ...home, battery: { ...battery, ...change, standbyW: 0 } });
      expect(got.filledKWh).toBeGreaterThan(100);
      got.boughtKWh.forEach((kWh, i) => {
        if (three[i]! > 14) expect(kWh).toBeLessThanOrEqual(morning[i]!);
        // A kWh at 14 p that loses half on its way costs 28 p.
        if (three[i] === 25 && change.roundTripShare) expect(kWh).toBe(morning[i]);
      });
    }
  });

  test('is filled in the months whose sun does not fill it', () => {
    const { boughtKWh } = balanceHome({
      slots,
      loadKWh: load,
      sunKWh: sun,
      pencePerKWh: night,
      exportPence: 0,
      battery,
    });
    const filledIn = (month: number) =>
      sum(boughtKWh.map((kWh, i) => (slots.month[i] === month ? Math.max(0, kWh - load[i]! - 0.005) : 0)));
    expect(filledIn(0)).toBeGreaterThan(31 * 4);
    expect(filledIn(6)).toBeLessThan(0.5 * filledIn(0));
  });

  test('at one price nothing is filled from the grid; below zero it is', () => {
    const plan = { fillHalves: halvesToFill(battery), giveHalves: 48 };
    expect(cheapHours(flat, slots, battery, plan)).not.toContain(FILL);
    const paid = cheapHours(
      byMinute((minute) => (minute < 120 ? -5 : 30)),
      slots,
      battery,
      plan,
    );
    expect(paid[0]).toBe(FILL);
    expect(paid[20]).toBe(GIVE);
  });
});

describe('a car charged at home', () => {
  const car = { kWhPerYear: 2548, chargerKW: 7.4, fromMinute: 18 * 60, untilMinute: 7 * 60 };
  test('takes its year whole, within its charger, in the cheapest hours of its stand', () => {
    for (const year of [2027, 2028]) {
      const ofYear = yearSlots(year, 'Europe/London');
      const pence = Float64Array.from(ofYear.minute, (minute) => (minute < 330 ? 8 : 30));
      const kWh = carByHalfHour(car, ofYear, pence);
      expect(sum(kWh)).toBeCloseTo(2548, 6);
      expect(Math.max(...kWh)).toBeLessThanOrEqual(3.7);
      expect(sum(kWh.filter((_, i) => pence[i] === 8))).toBeCloseTo(2548, 6);
    }
  });

  test('begins as it comes home where all hours cost the same', () => {
    const kWh = carByHalfHour(car, slots, flat);
    kWh.forEach((one, i) => {
      if (one > 0) expect(slots.minute[i]).toBeGreaterThanOrEqual(18 * 60);
    });
  });

  test('goes on after a stand that is too short, and charges by day where it stands by day', () => {
    const short = carByHalfHour({ ...car, untilMinute: 18 * 60 + 30, fromMinute: 18 * 60 }, slots, night);
    expect(sum(short)).toBeCloseTo(2548, 6);
    const byDay = carByHalfHour({ ...car, fromMinute: 600, untilMinute: 900 }, slots, night);
    byDay.forEach((one, i) => {
      if (one > 0) expect(slots.minute[i]! >= 600 && slots.minute[i]! < 900).toBe(true);
    });
  });

  test('a charger that cannot give as much gives all that it can', () => {
    const kWh = carByHalfHour({ ...car, kWhPerYear: 1e6, chargerKW: 1 }, slots, night);
    expect(Math.max(...kWh)).toBeLessThanOrEqual(0.5);
    expect(sum(kWh)).toBeCloseTo(23 * 365, 6);
  });
});
