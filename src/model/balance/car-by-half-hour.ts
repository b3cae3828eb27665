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

/**
 * What a car takes by half-hour [kWh]: every day alike, in the cheapest half-hours of its stand and the earliest of those
 * that cost the same; what does not fit into its stand is charged in the half-hours after it. The year's kWh stay whole.
 * Throws RangeError where the charger cannot give as much in a day.
 */
export function carByHalfHour(car: CarAtHome, slots: YearSlots, pencePerKWh: ArrayLike<number>): Float64Array {
  const kWh = new Float64Array(slots.count);
  const days = slots.dayStart.length - 1;
  const perDay = car.kWhPerYear / days;
  const most = car.chargerKW / 2;
  if (perDay > 46 * most) throw new RangeError('the charger cannot give so much in a day');
  const after = (slot: number, minute: number) => slots.minute[slot % slots.count]! >= minute;
  for (let day = 0; day < days; day++) {
    const next = slots.dayStart[day + 1]!;
    let from = slots.dayStart[day]!;
    while (from < next && !after(from, car.fromMinute)) from++;
    const overnight = car.untilMinute <= car.fromMinute;
    let until = overnight ? next : from;
    const last = overnight ? next + (slots.dayStart[(day + 1) % days + 1]! - slots.dayStart[(day + 1) % days]!) : next;
    while (until < last && !after(until, car.untilMinute)) until++;
    const stand = Array.from({ length: until - from }, (_, k) => from + k).toSorted(
      (a, b) => pencePerKWh[a % slots.count]! - pencePerKWh[b % slots.count]! || a - b,
    );
    let left = perDay;
    for (let k = 0; left > 0; k++) {
      const slot = (stand[k] ?? until + k - stand.length) % slots.count;
      // A half-hour that yesterday's charging ran into gives only what it has left.
      const taken = Math.min(left, most - kWh[slot]!);
      kWh[slot]! += taken;
      left -= taken;
    }
  }
  return kWh;
}
