/** Invented energy use, half-hour by half-hour, in local days of 46, 48 or 50 slots. */
import { toCivilDate } from '../src/model/calendar/civil.ts';
import { localStamp, minutesInDay, startOfDay } from '../src/model/calendar/zone.ts';
import { type MadeDay, normal } from './made-weather.ts';

export const ZONE = 'Europe/London';

export interface MadeSlot {
  /** Start of the half-hour, ms since 1970 UTC. */
  readonly startMs: number;
  /** Clock reading at its start, "2025-10-26T01:30". */
  readonly local: string;
  readonly hour: number;
  readonly kWh: number;
}

/** Half-hours of each day, with the energy that `useKWh` gives for the clock hour. */
export function madeSlots(days: readonly MadeDay[], useKWh: (day: MadeDay, hour: number) => number): MadeSlot[] {
  return days.flatMap((day) => {
    const start = startOfDay(ZONE, day.dayNumber);
    return Array.from({ length: minutesInDay(ZONE, day.dayNumber) / 30 }, (_, i) => {
      const startMs = start + i * 1_800_000;
      const local = localStamp(ZONE, startMs);
      const hour = Number(local.slice(11, 13)) + Number(local.slice(14, 16)) / 60;
      return { startMs, local, hour, kWh: Math.max(0, useKWh(day, hour)) };
    });
  });
}

/** Lights, kitchen, laundry: a low night, a morning and an evening, more in the dark months. kWh in one half-hour. */
export function ordinaryUse(yearKWh: number, random: () => number): (day: MadeDay, hour: number) => number {
  const mean = yearKWh / 17_520;
  return (day, hour) => {
    const month = Number(toCivilDate(day.dayNumber).slice(5, 7));
    const dark = 1 + 0.22 * Math.cos(((month - 1) / 6) * Math.PI);
    const shape = 0.45 + bump(hour, 7.5, 1.3) * 0.9 + bump(hour, 13, 2.5) * 0.4 + bump(hour, 18.7, 2) * 1.8;
    const kettle = random() < 0.05 ? 0.6 * random() : 0;
    return mean * dark * shape * 1.02 * (0.75 + 0.5 * random()) + kettle * mean * 4;
  };
}

/** Heat that the house asks for on a day, kWh. */
export function heatOfDay(day: MadeDay, heatLossWPerK: number, baseC: number, random: () => number): number {
  const asked = (heatLossWPerK * 24 * Math.max(0, baseC - day.meanC)) / 1000;
  return Math.max(0, asked * (1 + 0.09 * normal(random)));
}

const bump = (hour: number, centre: number, width: number) => Math.exp(-(((hour - centre) / width) ** 2));
