import { monthNames, pence, percent } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import type { WeekPrices } from './series.ts';

export const weekPricesName = () => say('Prices through the week');

export function weekPricesSentence({ bands, month, steps, isMean, isStepped }: WeekPrices): string {
  const cheapest = bands[0];
  const dearest = bands.at(-1);
  if (!cheapest || !dearest) return say('No price is known for this week.');
  if (bands.length === 1)
    return isStepped
      ? say('After the first ones a kWh costs {price} at every hour.', { price: pence(cheapest.pence) })
      : say('A kWh costs {price} at every hour.', { price: pence(cheapest.pence) });
  const when = monthNames()[month - 1] ?? say('any month');
  if (isMean) {
    const prices = steps.flatMap((step) => (step.pence === null ? [] : [step.pence]));
    return say('In a normal week of {month} a kWh costs {low} to {high}, by the half-hour.', {
      month: when,
      low: pence(Math.min(...prices)),
      high: pence(Math.max(...prices)),
    });
  }
  return say(
    'In a week of {month} a kWh costs {low} at best (“{cheapest}”, {lowShare} of the hours). At worst it costs {high} (“{dearest}”, {highShare}).',
    {
      month: when,
      low: pence(cheapest.pence),
      cheapest: sayTold(cheapest.name),
      lowShare: percent(cheapest.share),
      high: pence(dearest.pence),
      dearest: sayTold(dearest.name),
      highShare: percent(dearest.share),
    },
  );
}
