/** When an electric car is charged at home. */
import type { YearSlots } from '../calendar/zone.ts';

export interface CarAtHome {
  /** Charged at home over the year. */
  readonly kWhPerYear: number;
  readonly chargerKW: number;
  /** Clock times, minutes after midnight, between which it stands plugged in; over midnight where `until` is not later. */
  readonly fromMinute: number;
  readonly untilMinute: number;
}

/** Whether it stands plugged in at a minute of the day. */
export const standsAt = ({ fromMinute, untilMinute }: CarAtHome, minute: number): boolean =>
  fromMinute < untilMinute
    ? minute >= fromMinute && minute < untilMinute
    : minute >= fromMinute || minute < untilMinute;

/** The day on which the clock goes forward. */
const SHORTEST_DAY_SLOTS = 46;

/**
 * What a car takes by half-hour [kWh]: every day alike, in the cheapest half-hours of its stand and the earliest of those
 * that cost the same; what does not fit into its stand is charged in the half-hours after it. The year's kWh stay whole
 * as far as the charger can give them.
 */
export function carByHalfHour(car: CarAtHome, slots: YearSlots, pencePerKWh: ArrayLike<number>): Float64Array {
  const kWh = new Float64Array(slots.count);
  const days = slots.dayStart.length - 1;
  const most = car.chargerKW / 2;
  const perDay = Math.min(car.kWhPerYear / days, SHORTEST_DAY_SLOTS * most);
  const after = (slot: number, minute: number) => slots.minute[slot % slots.count]! >= minute;
  for (let day = 0; day < days; day++) {
    const next = slots.dayStart[day + 1]!;
    let from = slots.dayStart[day]!;
    while (from < next && !after(from, car.fromMinute)) from++;
    const overnight = car.untilMinute <= car.fromMinute;
    let until = overnight ? next : from;
    const last = overnight
      ? next + (slots.dayStart[((day + 1) % days) + 1]! - slots.dayStart[(day + 1) % days]!)
      : next;
    while (until < last && !after(until, car.untilMinute)) until++;
    let left = perDay;
    const charge = (slot: number) => {
      // A half-hour that yesterday's charging ran into gives only what it has left.
      const taken = Math.min(left, most - kWh[slot]!);
      kWh[slot]! += taken;
      left -= taken;
    };
    while (left > 0) {
      let best = -1;
      for (let at = from; at < until; at++) {
        const slot = at % slots.count;
        if (kWh[slot]! < most && (best < 0 || pencePerKWh[slot]! < pencePerKWh[best]!)) best = slot;
      }
      if (best < 0) break;
      charge(best);
    }
    for (let at = until; left > 0; at++) charge(at % slots.count);
  }
  return kWh;
}
