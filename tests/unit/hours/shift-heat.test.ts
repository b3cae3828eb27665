/** The cheapest hours against every other way to lay the same heat. */
import { describe, expect, test } from 'vitest';
import { type HeatStore, LEVELS, penceOfHeat, shiftHeat } from '../../../src/model/hours/shift-heat.ts';
import { cheapestByTrying, randomStore } from './try-every-way.ts';

const missedKWh = ({ leastKWh, fullKWh }: HeatStore, held: Float64Array) =>
  held.reduce((worst, kWh) => Math.max(worst, leastKWh - kWh, kWh - fullKWh), 0);

describe('the cheapest heat by half-hour', () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8])('is within half a hundredth of trying every way, case %i', (seed) => {
    const store = randomStore(seed, 6);
    const found = shiftHeat(store);
    const tried = cheapestByTrying(store, 10);
    expect(found.pence).toBeLessThanOrEqual(tried + 0.005 * Math.abs(tried));
    expect(missedKWh(store, found.heldKWh)).toBeLessThan(1e-6);
    expect(found.heldKWh.at(-1)).toBeGreaterThan(-1e-6);
  });

  test.each([11, 12, 13])(
    'keeps heat, and costs no more than the usual hours nor less than the cheapest unit, case %i',
    (seed) => {
      const store = randomStore(seed, 400);
      const { heatKWh, heldKWh, pence } = shiftHeat(store);
      const sum = (values: Float64Array) => values.reduce((total, one) => total + one, 0);
      // Heat given less heat drawn is what is held at the end and what the store lost on the way.
      const lost = [...heldKWh].reduce(
        (total, _, slot) => total + (1 - store.keep) * (slot > 0 ? heldKWh[slot - 1]! : 0),
        0,
      );
      expect(sum(heatKWh)).toBeCloseTo(sum(store.drawnKWh) + heldKWh.at(-1)! + lost, 6);
      const usual = [...store.drawnKWh].reduce((total, kWh, slot) => total + penceOfHeat(store, slot, kWh), 0);
      expect(pence).toBeLessThan(usual);
      let cheapest = Number.POSITIVE_INFINITY;
      for (let slot = 0; slot < 400; slot++) {
        for (let level = 1; level < LEVELS; level++) {
          cheapest = Math.min(
            cheapest,
            (store.pence[slot * LEVELS + level]! * (LEVELS - 1)) / level / store.mostKWh[slot]!,
          );
        }
      }
      expect(pence).toBeGreaterThanOrEqual(cheapest * sum(heatKWh));
    },
  );

  test('one price and a machine alike at all hours: cools as far as is accepted, since warmth lost costs', () => {
    const even = (value: number) => new Float64Array(200).fill(value);
    const pence = Float64Array.from({ length: 200 * LEVELS }, (_, i) => (i % LEVELS) * 5);
    const { heldKWh } = shiftHeat({
      drawnKWh: even(1),
      mostKWh: even(2),
      pence,
      keep: 0.98,
      leastKWh: -3,
      fullKWh: 1.5,
    });
    expect(heldKWh[100]).toBeCloseTo(-3, 6);
    expect(heldKWh.at(-1)).toBeCloseTo(0, 6);
  });
});
