import { monthNames, pence, percent } from '../../words/numbers.ts';
import type { WeekPrices } from './series.ts';

export const WEEK_PRICES_NAME = 'The price through a week';

export function weekPricesSentence({ bands, month, steps, isMean, isStepped }: WeekPrices): string {
  const cheapest = bands[0];
  const dearest = bands.at(-1);
  if (!cheapest || !dearest) return 'No price is known for this week.';
  if (bands.length === 1 && isStepped)
    return `After the first ones a unit costs ${pence(cheapest.pence)} at every hour.`;
  if (bands.length === 1) return `A unit costs ${pence(cheapest.pence)} at every hour.`;
  const when = monthNames()[month - 1] ?? 'any month';
  if (isMean) {
    const prices = steps.flatMap((step) => (step.pence === null ? [] : [step.pence]));
    return `In a usual week of ${when} a unit costs ${pence(Math.min(...prices))} to ${pence(Math.max(...prices))}, by the half-hour.`;
  }
  return `In a week of ${when} a unit costs ${pence(cheapest.pence)} at best (“${cheapest.name}”, ${percent(cheapest.share)} of the hours). At worst it costs ${pence(dearest.pence)} (“${dearest.name}”, ${percent(dearest.share)}).`;
}
