/** The rule of `readings/fill-gaps.ts` for a record of whole days: the mean of the same weekday of four weeks around. */

import { toCivilDate } from '../../model/calendar/civil.ts';
import { meanOf } from '../../model/units/sums.ts';
import { type FilledSlots, LEAST_ALIKE, LONGEST_FILL_DAYS, WEEKS_ALIKE } from '../readings/fill-gaps.ts';

export interface DayFilling {
  readonly values: (number | null)[];
  readonly filled: FilledSlots;
  readonly left: number;
}

export function fillDays(asRead: readonly (number | null)[], firstDay: number): DayFilling {
  const values = [...asRead];
  const filled: FilledSlots = [];
  let left = 0;
  for (let from = 0; from < asRead.length; from++) {
    if (asRead[from] !== null) continue;
    let to = from;
    while (to < asRead.length && asRead[to] === null) to++;
    for (let i = from; i < to; i++) {
      const kWh = to - from > LONGEST_FILL_DAYS ? null : meanAlike(asRead, i);
      values[i] = kWh;
      if (kWh === null) left++;
      else filled.push({ date: toCivilDate(firstDay + i), firstSlot: 0, slots: 1, kWh });
    }
    from = to;
  }
  return { values, filled, left };
}

function meanAlike(asRead: readonly (number | null)[], at: number): number | null {
  const alike: number[] = [];
  for (let week = -WEEKS_ALIKE; week <= WEEKS_ALIKE; week++) {
    const value = asRead[at + 7 * week];
    if (typeof value === 'number') alike.push(value);
  }
  return alike.length < LEAST_ALIKE ? null : meanOf(alike);
}
