/** When to put heat into a store that leaks, at the least cost: dynamic programming back through the half-hours. */

/** Even steps of the store on which the cost ahead is known; between them it runs straight. */
const STEPS = 60;
/** Even levels of the heat put in, 0 included, at which its cost is given. */
export const LEVELS = 7;
/** A kWh missed at the end, or below the least, over the dearest that a kWh can cost. */
const MISSED_OVER_DEAREST = 3;
const TINY_KWH = 1e-9;

/** Amounts are kWh of heat; `keep` is the share of the store left after half an hour. */
export interface HeatStore {
  /** Drawn from the store in each half-hour, and the most that can be put in. */
  readonly drawnKWh: Float64Array;
  readonly mostKWh: Float64Array;
  /**
   * Cost of putting in 0, 1, … LEVELS − 1 even parts of the most, half-hour by half-hour [pence]; straight between.
   * Each part costs as much as the one before it or more.
   */
  readonly pence: Float64Array;
  readonly keep: number;
  /** The store begins at 0 and may go down and up to these: down is 0 or below, up 0 or above, not both 0. */
  readonly leastKWh: number;
  readonly fullKWh: number;
}

export interface Shifted {
  readonly heatKWh: Float64Array;
  /** In the store at the end of each half-hour. */
  readonly heldKWh: Float64Array;
  readonly pence: number;
}

/** Cost [pence] of an amount of heat [kWh] in one half-hour, straight between the levels. */
export function penceOfHeat({ mostKWh, pence }: HeatStore, slot: number, heatKWh: number): number {
  const most = mostKWh[slot]!;
  if (most <= 0) return 0;
  const at = Math.min(LEVELS - 1, (heatKWh / most) * (LEVELS - 1));
  const below = Math.min(LEVELS - 2, at | 0);
  const low = pence[slot * LEVELS + below]!;
  return low + (at - below) * (pence[slot * LEVELS + below + 1]! - low);
}

/**
 * The cheapest heat by half-hour [kWh] that keeps the store within its limits: held' = keep × held + heat − drawn.
 * Optimal on the grid of STEPS; the store ends no lower than it began. Where the most is too little, the most is given.
 * Since heat never gets cheaper by the kWh, the cost ahead bends one way only, and one walk over its pieces finds it for all levels.
 */
export function shiftHeat(store: HeatStore): Shifted {
  const { drawnKWh, mostKWh, pence, keep } = store;
  const count = drawnKWh.length;
  const grid = gridOf(store);
  const { least, stepKWh, nodes } = grid;
  const full = least + (nodes - 1) * stepKWh;
  const missedPence = MISSED_OVER_DEAREST * dearest(store);
  /** Least cost of all that is ahead, `ahead[slot × nodes + node]`. */
  const ahead = new Float64Array((count + 1) * nodes);
  for (let node = 0; node < nodes; node++) {
    const short = -(least + node * stepKWh);
    ahead[count * nodes + node] = short > TINY_KWH ? short * missedPence : 0;
  }

  /** What the store is best filled to in one half-hour from what is left before heating, kWh. */
  function fillTo(slot: number, rest: number): number {
    const most = mostKWh[slot]!;
    const high = Math.min(rest + most, full);
    const low = Math.max(rest, least);
    if (high <= low) return Math.max(rest, Math.min(rest + most, low));
    const part = most / (LEVELS - 1);
    const next = (slot + 1) * nodes;
    let to = low;
    let node = Math.floor((to - least) / stepKWh + TINY_KWH);
    let level = Math.floor((to - rest) / part + TINY_KWH);
    while (to < high - TINY_KWH && node < nodes - 1 && level < LEVELS - 1) {
      const gained = (ahead[next + node]! - ahead[next + node + 1]!) / stepKWh;
      const paid = (pence[slot * LEVELS + level + 1]! - pence[slot * LEVELS + level]!) / part;
      if (paid >= gained) break;
      const toNode = least + (node + 1) * stepKWh;
      const toLevel = rest + (level + 1) * part;
      if (toNode <= toLevel) node++;
      if (toLevel <= toNode) level++;
      to = Math.min(toNode, toLevel, high);
    }
    return to;
  }

  for (let slot = count - 1; slot >= 0; slot--) {
    const most = mostKWh[slot]!;
    const part = most / (LEVELS - 1);
    const next = (slot + 1) * nodes;
    const costs = slot * LEVELS;
    // The cost ahead as it runs over what is left before heating: pieces of the store and of the heat, steepest first.
    let node = 0;
    let level = most > 0 ? LEVELS - 1 : 0;
    let from = least - most;
    let value = ahead[next]! + (most > 0 ? pence[costs + LEVELS - 1]! : 0);
    let length = 0;
    let slope = -missedPence;
    for (let i = 0; i < nodes; i++) {
      const rest = keep * (least + i * stepKWh) - drawnKWh[slot]!;
      while (from + length < rest) {
        value += length * slope;
        from += length;
        const ofStore = node < nodes - 1 ? (ahead[next + node + 1]! - ahead[next + node]!) / stepKWh : Infinity;
        const ofHeat = level > 0 ? (pence[costs + level - 1]! - pence[costs + level]!) / part : Infinity;
        if (ofStore <= ofHeat) {
          if (node === nodes - 1) {
            [length, slope] = [Infinity, 0];
            break;
          }
          [length, slope] = [stepKWh, ofStore];
          node++;
        } else {
          [length, slope] = [part, ofHeat];
          level--;
        }
      }
      ahead[slot * nodes + i] = value + (rest - from) * slope;
    }
  }
  const heatKWh = new Float64Array(count);
  const heldKWh = new Float64Array(count);
  let held = 0;
  let total = 0;
  for (let slot = 0; slot < count; slot++) {
    const rest = keep * held - drawnKWh[slot]!;
    held = fillTo(slot, rest);
    heatKWh[slot] = held - rest;
    total += penceOfHeat(store, slot, held - rest);
    heldKWh[slot] = held;
  }
  return { heatKWh, heldKWh, pence: total };
}

/** Levels of the store [kWh] with 0 among them, within its limits. */
function gridOf({ leastKWh, fullKWh }: HeatStore): { least: number; stepKWh: number; nodes: number } {
  const stepKWh = (fullKWh - leastKWh) / STEPS;
  const below = Math.floor(-leastKWh / stepKWh + TINY_KWH);
  const above = Math.floor(fullKWh / stepKWh + TINY_KWH);
  return { least: -below * stepKWh, stepKWh, nodes: below + above + 1 };
}

/** The most that a kWh of heat costs in any half-hour, pence. */
function dearest({ mostKWh, pence }: HeatStore): number {
  let most = 0;
  for (let slot = 0; slot < mostKWh.length; slot++) {
    if (mostKWh[slot]! > 0) most = Math.max(most, pence[slot * LEVELS + LEVELS - 1]! / mostKWh[slot]!);
  }
  return most;
}
