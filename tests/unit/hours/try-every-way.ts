/** Small stores at random, and the cheapest of all ways to fill one. */
import { type HeatStore, LEVELS, penceOfHeat } from '../../../src/model/hours/shift-heat.ts';

function* even(seed: number): Generator<number> {
  let state = seed * 7919 + 17;
  while (true) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    yield state / 4294967296;
  }
}

/** Prices of 5 to 40 pence, heat that costs more the more is made at once. */
export function randomStore(seed: number, count: number): HeatStore {
  const numbers = even(seed);
  const next = (from: number, to: number) => from + (to - from) * (numbers.next().value as number);
  const drawnKWh = Float64Array.from({ length: count }, () => next(0.3, 1.2));
  const mostKWh = drawnKWh.map((kWh) => kWh * next(1.2, 2.5));
  const dearer = next(0, 0.4);
  const pence = new Float64Array(count * LEVELS);
  for (let slot = 0; slot < count; slot++) {
    const price = next(5, 40);
    for (let level = 0; level < LEVELS; level++) {
      const part = level / (LEVELS - 1);
      pence[slot * LEVELS + level] = price * mostKWh[slot]! * part * (1 + dearer * part);
    }
  }
  return { drawnKWh, mostKWh, pence, keep: next(0.94, 0.995), leastKWh: -next(0.5, 2), fullKWh: next(0.3, 1.5) };
}

/** Cost [pence] of the cheapest of all ways in `levels` even parts of each half-hour's most; the last half-hour closes the store. */
export function cheapestByTrying(store: HeatStore, levels: number): number {
  const { drawnKWh, mostKWh, keep, leastKWh, fullKWh } = store;
  const count = drawnKWh.length;
  let best = Number.POSITIVE_INFINITY;
  const go = (slot: number, held: number, pence: number): void => {
    if (pence >= best) return;
    const rest = keep * held - drawnKWh[slot]!;
    if (slot === count - 1) {
      const heat = Math.max(0, -rest);
      if (heat <= mostKWh[slot]! && rest + heat <= fullKWh)
        best = Math.min(best, pence + penceOfHeat(store, slot, heat));
      return;
    }
    for (let level = 0; level <= levels; level++) {
      const heat = (mostKWh[slot]! * level) / levels;
      const after = rest + heat;
      if (after >= leastKWh && after <= fullKWh) go(slot + 1, after, pence + penceOfHeat(store, slot, heat));
    }
  };
  go(0, 0, 0);
  return best;
}
