/** What to read or ask next, so that the joined rest of a bill check can be taken apart. */
import type { BillCheckInput } from '../appraisal/promise.ts';

export type NextStep =
  /** Read the meter oneself: the bill rests on an estimate. */
  | 'actual-reading'
  /** Daily outdoor temperatures or degree days of these days. */
  | 'outdoor-temperature'
  /** A sub-meter on the heat pump, or the other electricity read apart. */
  | 'heat-pump-meter'
  /** The heat meter, or the heat the machine's own display counts: parts heat used from efficiency. */
  | 'heat-meter'
  /** Flow temperature at the day's outdoor temperature, against the curve promised. */
  | 'flow-temperature'
  /** Hours of the immersion or backup heater. */
  | 'immersion-hours'
  /** More or fewer people, room temperature, rooms heated, baths, days away. */
  | 'who-is-at-home';

/** Steps in the order of the trade: meter and weather, then who lives there, then the machine. */
export function nextSteps(
  bill: BillCheckInput,
  verdict: 'inside' | 'above' | 'below',
  weatherKnown: boolean,
): NextStep[] {
  const steps: NextStep[] = [];
  if (bill.readings !== 'actual') steps.push('actual-reading');
  if (!weatherKnown) steps.push('outdoor-temperature');
  if (bill.meter === 'whole-house') steps.push('heat-pump-meter');
  if (verdict !== 'inside') steps.push('who-is-at-home');
  if (verdict === 'above') steps.push('immersion-hours', 'flow-temperature', 'heat-meter');
  return steps;
}
