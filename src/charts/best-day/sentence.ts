import { clockTimeOf } from '../../model/calendar/civil.ts';
import { grouped } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { BestDaySeries } from './series.ts';

export const bestDayName = () => say('A cold day in the best hours');

/** Less than this is no heat, kW. */
const NO_HEAT_KW = 0.05;

function heatSentence(bestKW: number, usualKW: number): string {
  const usual = grouped(usualKW, 1);
  return bestKW < NO_HEAT_KW
    ? say('The heat pump then rests; at its usual hours it gives {usual} kW of heat.', { usual })
    : say('The heat pump then gives {best} kW of heat, at its usual hours {usual} kW.', {
        best: grouped(bestKW, 1),
        usual,
      });
}

/** What the heat pump does when a kWh costs most, and how warm the rooms stay. */
export function bestDaySentence({ name, pencePerKWh, usualKW, bestKW, roomC }: BestDaySeries): string {
  const most = Math.max(...pencePerKWh);
  const half = pencePerKWh.indexOf(most);
  const atPrice =
    Math.min(...pencePerKWh) === most
      ? [say('On a cold day on “{name}”, a kWh costs the same at every hour.', { name })]
      : [
          say('On a cold day on “{name}”, a kWh costs most from {at}.', { name, at: clockTimeOf(half * 30) }),
          heatSentence(bestKW[half]!, usualKW[half]!),
        ];
  const [coolest, warmest] = [grouped(Math.min(...roomC), 1), grouped(Math.max(...roomC), 1)];
  const rooms =
    coolest === warmest
      ? say('The rooms stay at {most} °C.', { most: warmest })
      : say('The rooms stay between {least} and {most} °C.', { least: coolest, most: warmest });
  return [...atPrice, rooms].join(' ');
}
