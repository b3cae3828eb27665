/** A later bill held against the promise: what was to be expected, whether the bill is inside it, and where the gap comes from. */
import type { BillCheck, BillCheckInput, KeptPromise } from '../appraisal/promise.ts';
import type { Series } from '../evidence/evidence.ts';
import type { Reference } from '../reference.ts';
import { roundToPenny } from '../units/money.ts';
import { actualWeather } from './actual-weather.ts';
import { findBillFaults } from './bill-faults.ts';
import { billParts, type CostSide } from './bill-parts.ts';
import { expectedRange } from './expected-range.ts';
import { nextSteps } from './next-steps.ts';
import { heatPumpOf, type PromisedDays, promisedDays } from './promised-days.ts';

/**
 * Holds a bill's units for heating and hot water against the promise for the same days [pence].
 * The gap is actual − equal share of the promised year; its parts (days, price, weather where known, rest) sum to it to
 * the penny. `expected` is the promise for exactly these days at the bill's price and in the weather that came:
 * (space + kWh a degree day × (degree days that came − typical) + other) × price. Standing charge and service are left out.
 * Spans of 1 to 1,100 days; throws RangeError for what `findBillFaults` names.
 */
export function checkBill(input: {
  readonly promise: KeptPromise;
  readonly bill: BillCheckInput;
  readonly reference: Pick<Reference, 'spread'>;
  readonly id: string;
  readonly madeOn: string;
  readonly weather?: Series;
}): BillCheck {
  const { promise, bill, reference, id, madeOn } = input;
  const fault = findBillFaults(promise, bill)[0];
  if (fault) throw new RangeError(fault.code);
  const promised = promisedDays(promise, bill.from, bill.to);
  const weather = actualWeather(bill, promise.appraisal.demand.baseC, promised.degreeDays, input.weather);
  const { from, to, actualPence } = costSides(bill, promised, weather?.degreeDays);
  const expectedKWh = to.spaceKWh + promised.otherKWh;
  const expected = expectedRange({
    expectedPence: roundToPenny(expectedKWh * to.pencePerKWh),
    bought: heatPumpOf(promise).bought,
    days: promised.days,
    spaceShare: promised.spaceShare,
    weatherKnown: weather !== null,
    spread: reference.spread,
  });
  const promisedPence = roundToPenny(promised.equalSharePence);
  const seasonPence = roundToPenny(promised.pence);
  const verdict = actualPence > expected.high ? 'above' : actualPence < expected.low ? 'below' : 'inside';
  const leftOver = expected.value > 0 ? actualPence / expected.value - 1 : 0;
  return {
    id,
    promiseId: promise.id,
    madeOn,
    input: bill,
    promisedPence,
    seasonPence,
    promisedKWh: promised.spaceKWh + promised.otherKWh,
    expectedKWh,
    expected,
    actualPence,
    verdict,
    parts: billParts({ bill, promised, weather, from, to, promisedPence, seasonPence, actualPence }),
    next: nextSteps(bill, verdict, leftOver, weather !== null),
  };
}

/** A meter shows no less; below it a charge has no price a unit. */
const LEAST_METERED_KWH = 0.001;

/** The two sides of the split. A total that is not units × price moves the price, since the units were metered. */
function costSides(
  bill: BillCheckInput,
  promised: PromisedDays,
  degreeDays: number | undefined,
): { from: CostSide; to: CostSide; actualPence: number } {
  const actualPence = roundToPenny(bill.totalPence ?? bill.boughtKWh * bill.pencePerKWh);
  const promisedKWh = promised.spaceKWh + promised.otherKWh;
  const typical = promised.degreeDays.reduce((sum, value) => sum + value, 0);
  const change = degreeDays === undefined ? 0 : promised.kWhPerDegreeDay * (degreeDays - typical);
  const spaceKWh = Math.max(0, promised.spaceKWh + change);
  const billPrice = bill.boughtKWh >= LEAST_METERED_KWH ? actualPence / bill.boughtKWh : bill.pencePerKWh;
  const promisedPrice = promisedKWh > 0 ? promised.pence / promisedKWh : billPrice;
  return {
    from: { pencePerKWh: promisedPrice, spaceKWh: promised.spaceKWh, unexplainedKWh: 0 },
    to: { pencePerKWh: billPrice, spaceKWh, unexplainedKWh: bill.boughtKWh - spaceKWh - promised.otherKWh },
    actualPence,
  };
}
