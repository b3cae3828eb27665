/** When to put heat into a store that leaks, at the least cost: dynamic programming back through the half-hours. */

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

/** How the cost ahead falls over what is held, from the least to the full store, in straight pieces, steepest first. */
interface Pieces {
  readonly lengthKWh: Float64Array;
  readonly pencePerKWh: Float64Array;
}

/** Where the pieces of a search are laid; the next one takes the same room, since its making costs as much as the search. */
let room: Pieces = { lengthKWh: new Float64Array(1024), pencePerKWh: new Float64Array(1024) };

/**
 * The cheapest heat by half-hour [kWh] that keeps the store within its limits: held' = keep × held + heat − drawn.
 * Exact between the levels of heat: since heat never gets cheaper by the kWh, the cost ahead bends one way only, and its
 * pieces are kept as they are. The store ends no lower than it began. Where the most is too little, the most is given.
 */
export function shiftHeat(store: HeatStore): Shifted {
  const { drawnKWh, mostKWh, pence, keep, leastKWh: least, fullKWh: full } = store;
  const count = drawnKWh.length;
  const missedPence = MISSED_OVER_DEAREST * dearest(store);
  let pieces = room;
  const start = new Uint32Array(count + 1);
  const end = new Uint32Array(count + 1);
  let size = 0;
  const add = (lengthKWh: number, pencePerKWh: number) => {
    if (lengthKWh <= TINY_KWH) return;
    if (size === pieces.lengthKWh.length) pieces = room = larger(pieces);
    pieces.lengthKWh[size] = lengthKWh;
    pieces.pencePerKWh[size++] = pencePerKWh;
  };
  add(-least, -missedPence);
  add(full, 0);
  end[count] = size;

  for (let slot = count - 1; slot >= 0; slot--) {
    const most = mostKWh[slot]!;
    const part = most / (LEVELS - 1);
    const from = slot * LEVELS;
    let next = start[slot + 1]!;
    const last = end[slot + 1]!;
    let level = most > 0 ? LEVELS - 1 : 0;
    // Over what is left before heating: pieces of the store and of the heat together, steepest first, cut to the limits.
    const low = keep * least - drawnKWh[slot]!;
    const high = keep * full - drawnKWh[slot]!;
    let at = least - most;
    start[slot] = size;
    if (at > low) add((Math.min(at, high) - low) / keep, -missedPence * keep);
    while (at < high && (next < last || level > 0)) {
      const ofStore = next < last ? pieces.pencePerKWh[next]! : Number.POSITIVE_INFINITY;
      const ofHeat = level > 0 ? (pence[from + level - 1]! - pence[from + level]!) / part : Number.POSITIVE_INFINITY;
      const isStore = ofStore <= ofHeat;
      const to = at + (isStore ? pieces.lengthKWh[next++]! : part);
      if (!isStore) level--;
      if (to > low) add((Math.min(to, high) - Math.max(at, low)) / keep, (isStore ? ofStore : ofHeat) * keep);
      at = to;
    }
    end[slot] = size;
  }

  /** What the store is best filled to in one half-hour from what is left before heating, kWh. */
  function fillTo(slot: number, rest: number): number {
    const most = mostKWh[slot]!;
    const high = Math.min(rest + most, full);
    const low = Math.max(rest, least);
    if (high <= low) return Math.max(rest, Math.min(rest + most, low));
    const part = most / (LEVELS - 1);
    const last = end[slot + 1]!;
    let piece = start[slot + 1]!;
    let pieceEnd = least + pieces.lengthKWh[piece]!;
    let level = Math.floor((low - rest) / part + TINY_KWH);
    let to = low;
    while (to < high - TINY_KWH && level < LEVELS - 1) {
      while (pieceEnd <= to + TINY_KWH && piece < last - 1) pieceEnd += pieces.lengthKWh[++piece]!;
      const paid = (pence[slot * LEVELS + level + 1]! - pence[slot * LEVELS + level]!) / part;
      if (paid >= -pieces.pencePerKWh[piece]!) break;
      const toLevel = rest + (level + 1) * part;
      const toPiece = piece < last - 1 ? pieceEnd : high;
      if (toLevel <= toPiece) level++;
      to = Math.min(toLevel, toPiece, high);
    }
    return to;
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

function larger({ lengthKWh, pencePerKWh }: Pieces): Pieces {
  const grown = (values: Float64Array) => {
    const out = new Float64Array(2 * values.length);
    out.set(values);
    return out;
  };
  return { lengthKWh: grown(lengthKWh), pencePerKWh: grown(pencePerKWh) };
}

/** The most that a kWh of heat costs in any half-hour, pence. */
function dearest({ mostKWh, pence }: HeatStore): number {
  let most = 0;
  for (let slot = 0; slot < mostKWh.length; slot++) {
    if (mostKWh[slot]! > 0) most = Math.max(most, pence[slot * LEVELS + LEVELS - 1]! / mostKWh[slot]!);
  }
  return most;
}
