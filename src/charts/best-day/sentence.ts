import { clockTimeOf } from '../../model/calendar/civil.ts';
import { grouped } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { BestDaySeries } from './series.ts';

export const bestDayName = () => say('A cold day in the best hours');

/** What the heat pump does when a unit costs most, and how warm the rooms stay. */
export function bestDaySentence({ name, pencePerKWh, usualKW, bestKW, roomC }: BestDaySeries): string {
  const half = pencePerKWh.indexOf(Math.max(...pencePerKWh));
  return [
    say('On a cold day on “{name}”, a unit costs most from {at}.', { name, at: clockTimeOf(half * 30) }),
    say('The heat pump then gives {best} kW of heat, at its usual hours {usual} kW.', {
      best: grouped(bestKW[half]!, 1),
      usual: grouped(usualKW[half]!, 1),
    }),
    say('The rooms stay between {least} and {most} °C.', {
      least: grouped(Math.min(...roomC), 1),
      most: grouped(Math.max(...roomC), 1),
    }),
  ].join(' ');
}
