/** What a home buys and sends out in each half-hour, of what it needs, what its roof makes and what its battery moves. */
import type { YearSlots } from '../calendar/zone.ts';
import { type Battery, cheapHours, FILL, GIVE, halvesToFill } from './battery.ts';
import { usedAtOnceKWh } from './used-at-once.ts';

export interface HomeByHalfHour {
  readonly slots: YearSlots;
  readonly loadKWh: Float64Array;
  readonly sunKWh?: Float64Array | undefined;
  readonly battery?: Battery | undefined;
  /** Price of each half-hour, VAT included. */
  readonly pencePerKWh: Float64Array;
  /** What is paid for a kWh sent out. */
  readonly exportPence: number;
}

export interface HomeBalance {
  /** By half-hour. */
  readonly boughtKWh: Float64Array;
  readonly soldKWh: Float64Array;
  /** Of the year: sun not sent out, what went into the battery from the grid and came out of it, and its losses with its own draw. */
  readonly ownUseKWh: number;
  readonly filledKWh: number;
  readonly givenKWh: number;
  readonly batteryLossKWh: number;
  /** Of the losses those of the sun, as much of them as it was of what went into the battery. */
  readonly sunLossKWh: number;
  /** What the battery holds more at the end than at the start. */
  readonly leftKWh: number;
}

/** The days before New Year that fill a battery as it will be at New Year. */
const RUN_UP_SLOTS = 4 * 48;

/** Of the half-hours that fill it from empty, how many are tried: fewer are cheaper where the others hardly pay. */
const FILL_SHARES = [1, 0.5, 0.25, 0];
/** The most expensive half-hours of a day for which it may be kept back. */
const GIVE_HALVES = [12, 1];

/**
 * The home's balance over a year [kWh by half-hour]. Sun is used first as it falls, then stored, then sent out; the battery
 * gives when the home needs more than the roof makes. One that may be filled from the grid is set, once for the year, as
 * costs least with its prices: at which of a day's prices it fills and gives, then whether it leaves room for a usual day's
 * surplus of the month or surplus is sent out. It knows a day's prices and no weather.
 * Bought + made = needed + sent out + losses + left.
 */
export function balanceHome(home: HomeByHalfHour): HomeBalance {
  const { slots, battery = NO_BATTERY, sunKWh, loadKWh, pencePerKWh } = home;
  const standbyKWh = battery.standbyW / 2000;
  const usedKWh = new Float64Array(slots.count);
  if (sunKWh) for (let i = 0; i < slots.count; i++) usedKWh[i] = usedAtOnceKWh(sunKWh[i]!, loadKWh[i]! + standbyKWh);
  const flow: Flow = { home, battery, usedKWh, standbyKWh };
  const noRoom = new Float64Array(12);
  const tryOne = (setting: Setting): Tried => {
    const balance = run(flow, setting);
    return { setting, balance, pence: costPence(balance, home) };
  };
  let best = tryOne({ storeSun: true, modes: null, roomKWh: noRoom });
  const keep = (setting: Setting) => {
    const one = tryOne(setting);
    if (one.pence < best.pence) best = one;
  };
  if (!battery.fromNight) return best.balance;
  const tried: Uint8Array[] = [];
  let plan = { fillHalves: 0, giveHalves: slots.count };
  const tryPlan = (fillHalves: number, giveHalves: number) => {
    const modes = cheapHours(pencePerKWh, slots, battery, { fillHalves, giveHalves });
    if (!modes.includes(FILL) || tried.some((before) => before.every((mode, i) => mode === modes[i]))) return;
    tried.push(modes);
    keep({ storeSun: true, modes, roomKWh: noRoom });
    if (best.setting.modes === modes) plan = { fillHalves, giveHalves };
  };
  for (const share of FILL_SHARES) tryPlan(Math.max(1, Math.ceil(share * halvesToFill(battery))), slots.count);
  const { modes } = best.setting;
  if (!modes) return best.balance;
  for (const giveHalves of GIVE_HALVES) tryPlan(plan.fillHalves, giveHalves);
  if (sunKWh) {
    const { setting } = best;
    keep({ ...setting, roomKWh: usualSurplus(flow) });
    // Sun is worth more sent out than kept only where it is paid better than the cheapest hour.
    if (pencePerKWh.some((pence) => pence < home.exportPence)) keep({ ...setting, storeSun: false });
  }
  return best.balance;
}

const NO_BATTERY: Battery = { usableKWh: 0, powerKW: 0, roundTripShare: 1, standbyW: 0, fromNight: false };

/** What a balance costs [pence]: bought at the price of its half-hour less what is sent out. */
function costPence({ boughtKWh, soldKWh }: HomeBalance, { pencePerKWh, exportPence }: HomeByHalfHour): number {
  let pence = 0;
  for (let i = 0; i < boughtKWh.length; i++) pence += boughtKWh[i]! * pencePerKWh[i]! - soldKWh[i]! * exportPence;
  return pence;
}

interface Flow {
  readonly home: HomeByHalfHour;
  readonly battery: Battery;
  /** Sun used as it falls. */
  readonly usedKWh: Float64Array;
  readonly standbyKWh: number;
}
interface Tried {
  readonly setting: Setting;
  readonly balance: HomeBalance;
  readonly pence: number;
}
interface Setting {
  readonly storeSun: boolean;
  /** Null where it is never filled from the grid. */
  readonly modes: Uint8Array | null;
  /** What filling leaves empty, by month. */
  readonly roomKWh: Float64Array;
}
/** What a mean day of each month has over [kWh]. */
function usualSurplus({ home: { slots, sunKWh }, usedKWh }: Flow): Float64Array {
  const surplus = new Float64Array(12);
  const halfHours = new Float64Array(12);
  for (let i = 0; i < slots.count; i++) {
    surplus[slots.month[i]!]! += sunKWh![i]! - usedKWh[i]!;
    halfHours[slots.month[i]!]! += 1;
  }
  return surplus.map((kWh, month) => (kWh * 48) / halfHours[month]!);
}

function run({ home, battery, usedKWh, standbyKWh }: Flow, { storeSun, modes, roomKWh }: Setting): HomeBalance {
  const { slots, loadKWh, sunKWh } = home;
  const capacity = battery.usableKWh;
  const most = battery.powerKW / 2;
  const oneWay = Math.sqrt(battery.roundTripShare);
  const boughtKWh = new Float64Array(slots.count);
  const soldKWh = new Float64Array(slots.count);
  let stored = 0;
  let [atStart, made, sold, taken, filled, given] = NOTHING;
  for (let step = -RUN_UP_SLOTS; step < slots.count; step++) {
    if (step === 0) {
      atStart = stored;
      [made, sold, taken, filled, given] = NOTHING;
    }
    const i = step < 0 ? step + slots.count : step;
    const sun = sunKWh ? sunKWh[i]! : 0;
    let surplus = sun - usedKWh[i]!;
    let unmet = loadKWh[i]! + standbyKWh - usedKWh[i]!;
    made += sun;
    const mode = modes ? modes[i]! : GIVE;
    let through = 0;
    if (storeSun) {
      through = Math.min(surplus, most, (capacity - stored) / oneWay);
      stored += through * oneWay;
      surplus -= through;
      taken += through;
    }
    if (mode === FILL) {
      const empty = capacity - Math.min(capacity, roomKWh[slots.month[i]!]!) - stored;
      const bought = Math.max(0, Math.min(most - through, empty / oneWay));
      stored += bought * oneWay;
      unmet += bought;
      filled += bought;
    } else if (mode === GIVE) {
      const out = Math.min(unmet, most - through, stored * oneWay);
      stored -= out / oneWay;
      unmet -= out;
      given += out;
    }
    boughtKWh[i] = unmet;
    soldKWh[i] = surplus;
    sold += surplus;
  }
  const leftKWh = stored - atStart;
  const batteryLossKWh = taken + filled - given - leftKWh + standbyKWh * slots.count;
  return {
    boughtKWh,
    soldKWh,
    ownUseKWh: made - sold,
    filledKWh: filled,
    givenKWh: given,
    batteryLossKWh,
    sunLossKWh: taken > 0 ? (batteryLossKWh * taken) / (taken + filled) : 0,
    leftKWh,
  };
}

const NOTHING: readonly [number, number, number, number, number, number] = [0, 0, 0, 0, 0, 0];
