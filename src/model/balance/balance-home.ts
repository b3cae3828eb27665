/** What a home buys and sends out in each half-hour, of what it needs, what its roof makes and what its battery moves. */
import type { YearSlots } from '../calendar/zone.ts';
import { type Battery, cheapHours, FILL, GIVE } from './battery.ts';
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

/**
 * The home's balance over a year [kWh by half-hour]. Sun is used first as it falls, then stored, then sent out; the battery
 * gives when the home needs more than the roof makes. One that may be filled from the grid is set, once for the year, as
 * costs least with its prices: filled whole, filled with room left for a usual day's surplus of the month, or not at all;
 * and surplus stored, or sent out. It knows a day's prices and no weather. Bought + made = needed + sent out + losses + left.
 */
export function balanceHome(home: HomeByHalfHour): HomeBalance {
  const { slots, battery = NO_BATTERY, sunKWh, loadKWh } = home;
  const standbyKWh = battery.standbyW / 2000;
  const usedKWh = new Float64Array(slots.count);
  if (sunKWh) for (let i = 0; i < slots.count; i++) usedKWh[i] = usedAtOnceKWh(sunKWh[i]!, loadKWh[i]! + standbyKWh);
  const flow: Flow = { home, battery, usedKWh, standbyKWh };
  const fill = battery.fromNight ? cheapHours(home.pencePerKWh, slots, battery) : null;
  const noRoom = new Float64Array(12);
  const settings: Setting[] = [{ storeSun: true, modes: null, roomKWh: noRoom }];
  if (fill?.includes(FILL)) {
    settings.push({ storeSun: true, modes: fill, roomKWh: noRoom });
    if (sunKWh) {
      settings.push({ storeSun: true, modes: fill, roomKWh: usualSurplus(flow) });
      // Sun is worth more sent out than kept only where it is paid better than the cheapest hour.
      if (home.pencePerKWh.some((pence) => pence < home.exportPence))
        settings.push({ storeSun: false, modes: fill, roomKWh: noRoom });
    }
  }
  return settings
    .map((setting) => run(flow, setting))
    .reduce((best, one) => (costPence(one, home) < costPence(best, home) ? one : best));
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
