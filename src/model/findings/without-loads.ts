/** Readings with the even loads taken out, so that a heater does not pass for a change of habits. */
import type { EvenLoad } from './even-loads.ts';
import type { MeterDays } from './meter-days.ts';

/** The same days less the units of these loads, each step's height taken off its readings; never below zero. */
export function withoutLoads(days: MeterDays, loads: readonly EvenLoad[]): MeterDays {
  if (loads.length === 0) return days;
  const kWh = Float64Array.from(days.kWh);
  const { perDay, hours } = days;
  for (const { steps } of loads) {
    for (const step of steps) {
      const first = step.day * perDay + step.slot;
      const base = (days.kWh[first - 1]! + days.kWh[first + step.slots]!) / 2;
      for (let i = first; i < first + step.slots; i++) {
        const full = Math.min(Math.max(0, days.kWh[i]! - base), step.powerKW * hours);
        kWh[i] = Math.max(0, days.kWh[i]! - full);
      }
    }
  }
  const dayKWh = new Float64Array(days.count);
  kWh.forEach((value, i) => {
    dayKWh[Math.floor(i / perDay)]! += value;
  });
  return { ...days, kWh, dayKWh };
}

/** The whole house less the machine's own meter, for the days that both have; null where they are read differently. */
export function withoutMachine(house: MeterDays, machine: MeterDays): MeterDays | null {
  if (house.perDay !== machine.perDay) return null;
  const place = new Map(Array.from(machine.dayNumber, (day, i) => [day, i]));
  const both = Array.from(house.dayNumber.keys()).filter((i) => place.has(house.dayNumber[i]!));
  const { perDay } = house;
  const kWh = new Float64Array(both.length * perDay);
  const dayKWh = new Float64Array(both.length);
  both.forEach((from, day) => {
    const other = place.get(house.dayNumber[from]!)!;
    for (let i = 0; i < perDay; i++) {
      const value = Math.max(0, house.kWh[from * perDay + i]! - machine.kWh[other * perDay + i]!);
      kWh[day * perDay + i] = value;
      dayKWh[day]! += value;
    }
  });
  return {
    ...house,
    count: both.length,
    dayNumber: Int32Array.from(both, (i) => house.dayNumber[i]!),
    outdoorC: Float64Array.from(both, (i) => house.outdoorC[i]!),
    kWh,
    dayKWh,
  };
}
