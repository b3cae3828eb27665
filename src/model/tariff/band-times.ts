/** Which band of a tariff version holds at a clock time. */
import { WEEKDAYS } from '../calendar/civil.ts';
import type { TariffBand, TariffVersion, TariffWindow } from './tariff.ts';

export const MINUTES_PER_DAY = 1440;

/** Minutes after midnight of a clock time such as "07:30"; 1,440 for "24:00". */
export function minuteOf(time: string): number {
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
}

/** Clock time of a minute after midnight; "24:00" for 1,440. */
export function clockTimeOf(minute: number): string {
  return `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
}

/** Whether the window holds at a minute of a day. Month 1 to 12; weekday 0 is Monday; both of the clock's own date. */
export function windowHolds(window: TariffWindow, month: number, weekday: number, minute: number): boolean {
  if (window.months && !window.months.includes(month)) return false;
  if (window.days && !window.days.includes(WEEKDAYS[weekday]!)) return false;
  const from = minuteOf(window.from);
  const to = minuteOf(window.to);
  return from < to ? minute >= from && minute < to : minute >= from || minute < to;
}

/** Whether a band names this minute in one of its windows; a rest band names none. */
export function bandNames(band: TariffBand, month: number, weekday: number, minute: number): boolean {
  return band.times !== 'rest' && band.times.some((window) => windowHolds(window, month, weekday, minute));
}

/** Place in `bands` of the band that holds at a minute, the rest band where no other does; -1 where there is none. */
export function bandAt(version: TariffVersion, month: number, weekday: number, minute: number): number {
  const named = version.bands.findIndex((band) => bandNames(band, month, weekday, minute));
  return named >= 0 ? named : version.bands.findIndex((band) => band.times === 'rest');
}
