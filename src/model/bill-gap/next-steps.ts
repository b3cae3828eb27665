/** What to read or ask next, so that the joined rest of a bill check can be taken apart. */
import type { BillCheckInput } from '../shapes/bill-check.ts';

export type NextStep =
  /** Read the meter oneself: the bill rests on an estimate. */
  | 'actual-reading'
  /** Daily outdoor temperatures or degree days of these days. */
  | 'outdoor-temperature'
  /** A sub-meter on the heat pump, or the other electricity read apart. */
  | 'heat-pump-meter'
  /** The heat meter, or the heat the machine's own display counts: parts heat used from efficiency. */
  | 'heat-meter'
  /** Flow temperature at the day's outdoor temperature, against the curve estimated. */
  | 'flow-temperature'
  /** Hours of the immersion or backup heater. */
  | 'immersion-hours'
  /** More or fewer people, room temperature, rooms heated, baths, days away. */
  | 'who-is-at-home';

/** A wide estimate must not hide a large rest: from this share of the expected cost on it is asked about. Common practice, no source. */
const LARGE_SHARE = 0.15;

/**
 * Steps in the order of the trade: meter and weather, then who lives there, then the machine.
 * `leftOver` is (actual − expected) / expected; the machine is looked at where the bill is above or far over the middle.
 */
export function nextSteps(
  bill: BillCheckInput,
  verdict: 'inside' | 'above' | 'below' | 'unknown',
  leftOver: number,
  weatherKnown: boolean,
): NextStep[] {
  const high = verdict === 'above' || (verdict === 'inside' && leftOver > LARGE_SHARE);
  const low = verdict === 'below' || (verdict === 'inside' && leftOver < -LARGE_SHARE);
  const steps: NextStep[] = [];
  if (bill.readings !== 'actual' && bill.readKWh === undefined) steps.push('actual-reading');
  if (!weatherKnown) steps.push('outdoor-temperature');
  if (bill.meter === 'whole-house' && bill.heatPumpKWh === undefined) steps.push('heat-pump-meter');
  if (high || low) steps.push('who-is-at-home');
  if (high && bill.immersionKWh === undefined) steps.push('immersion-hours');
  if (high) steps.push('flow-temperature');
  if (high && bill.heatKWh === undefined) steps.push('heat-meter');
  return steps;
}
