/** What a home buys and sends out in each half-hour, of what it needs, what its roof makes and what its battery moves. */

import type { YearSlots } from '../calendar/zone.ts';
import { sumOf } from '../units/sums.ts';
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
 * gives when the home needs more than the roof makes. One that may be filled from the grid is set, once for each month, as
 * costs least with its prices: at which of a day's prices it fills and gives, whether it leaves room for a usual day's
 * surplus of the month, and whether surplus is sent out. It knows a day's prices and no weather.
 * Bought + made = needed + sent out + losses + left.
 */
export function balanceHome(home: HomeByHalfHour): HomeBalance {
  const { slots, battery = NO_BATTERY, sunKWh, loadKWh, pencePerKWh } = home;
  const standbyKWh = battery.standbyW / 2000;
  const usedKWh = new Float64Array(slots.count);
  if (sunKWh) for (let i = 0; i < slots.count; i++) usedKWh[i] = usedAtOnceKWh(sunKWh[i]!, loadKWh[i]! + standbyKWh);
  const flow: Flow = { home, battery, usedKWh, standbyKWh };
  const tried: Tried[] = [];
  const tryOne = (setting: Setting) => {
    const balance = run(flow, setting);
    tried.push({ setting, balance, penceByMonth: penceByMonth(balance, home) });
  };
  const never: Setting = { modes: new Uint8Array(slots.count), roomKWh: new Float64Array(12), stores: YES };
  tryOne(never);
  if (!battery.fromNight) return tried[0]!.balance;
  let plan = { fillHalves: 0, giveHalves: slots.count };
  const tryPlan = (fillHalves: number, giveHalves: number) => {
    const modes = cheapHours(pencePerKWh, slots, battery, { fillHalves, giveHalves });
    if (tried.some(({ setting }) => isSame(setting.modes, modes))) return;
    tryOne({ ...never, modes });
    if (cheapest(tried).setting.modes === modes) plan = { fillHalves, giveHalves };
  };
  for (const share of FILL_SHARES) tryPlan(Math.max(1, Math.ceil(share * halvesToFill(battery))), slots.count);
  if (tried.length === 1) return tried[0]!.balance;
  for (const giveHalves of GIVE_HALVES) tryPlan(plan.fillHalves, giveHalves);
  if (sunKWh) {
    const { setting } = cheapest(tried);
    tryOne({ ...setting, roomKWh: usualSurplus(flow) });
    // Sun is worth more sent out than kept only where it is paid better than the cheapest hour.
    if (pencePerKWh.some((pence) => pence < home.exportPence)) tryOne({ ...setting, stores: NO });
  }
  tryOne(monthByMonth(tried, slots));
  return cheapest(tried).balance;
}

function isSame(a: Uint8Array, b: Uint8Array): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

const YES = new Uint8Array(12).fill(1);
const NO = new Uint8Array(12);

const cheapest = (tried: readonly Tried[]): Tried =>
  tried.reduce((best, one) => (sumOf(one.penceByMonth) < sumOf(best.penceByMonth) ? one : best));

/** In each month as the setting has it that costs least in it. */
function monthByMonth(tried: readonly Tried[], { count, month }: YearSlots): Setting {
  const best = Array.from({ length: 12 }, (_, m) =>
    tried.reduce((least, one) => (one.penceByMonth[m]! < least.penceByMonth[m]! ? one : least)),
  ).map(({ setting }) => setting);
  const modes = new Uint8Array(count);
  for (let i = 0; i < count; i++) modes[i] = best[month[i]!]!.modes[i]!;
  return {
    modes,
    roomKWh: Float64Array.from(best, ({ roomKWh }, m) => roomKWh[m]!),
    stores: Uint8Array.from(best, ({ stores }, m) => stores[m]!),
  };
}

const NO_BATTERY: Battery = { usableKWh: 0, powerKW: 0, roundTripShare: 1, standbyW: 0, fromNight: false };

/** What a balance costs by month [pence]: bought at the price of its half-hour less what is sent out. */
function penceByMonth({ boughtKWh, soldKWh }: HomeBalance, { slots, pencePerKWh, exportPence }: HomeByHalfHour) {
  const pence = new Float64Array(12);
  for (let i = 0; i < slots.count; i++)
    pence[slots.month[i]!]! += boughtKWh[i]! * pencePerKWh[i]! - soldKWh[i]! * exportPence;
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
  readonly penceByMonth: Float64Array;
}
interface Setting {
  /** Whether it fills, is held back or gives, by half-hour. */
  readonly modes: Uint8Array;
  /** By month: what filling leaves empty, and whether surplus goes into it (1) or is sent out (0). */
  readonly roomKWh: Float64Array;
  readonly stores: Uint8Array;
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

function run({ home, battery, usedKWh, standbyKWh }: Flow, { modes, roomKWh, stores }: Setting): HomeBalance {
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
    const mode = modes[i]!;
    const month = slots.month[i]!;
    let through = 0;
    if (stores[month]) {
      through = Math.min(surplus, most, (capacity - stored) / oneWay);
      stored += through * oneWay;
      surplus -= through;
      taken += through;
    }
    if (mode === FILL) {
      const empty = capacity - Math.min(capacity, roomKWh[month]!) - stored;
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
