/** A later bill held against the estimate: what was to be expected, whether the bill is inside it, and where the gap comes from. */

import { withNext } from '../guided-search/guided-search.ts';
import type { BillCheck, BillCheckInput } from '../shapes/bill-check.ts';
import type { Series } from '../shapes/evidence.ts';
import type { Reference } from '../shapes/reference.ts';
import type { TariffVersion } from '../shapes/tariff.ts';
import type { WrittenEstimate } from '../shapes/written-estimate.ts';
import { inclVat, standingPencePerDayInclVat, versionOn } from '../tariff/slot-price.ts';
import { roundToPenny } from '../units/money.ts';
import { sumOf } from '../units/sums.ts';
import { actualWeather } from './actual-weather.ts';
import { isOtherUnknown } from './bill-doubts.ts';
import { findBillFaults } from './bill-faults.ts';
import { type BillPartsInput, billParts } from './bill-parts.ts';
import { spaceInWeather } from './cost-state.ts';
import { estimateForDays, heatPumpOf } from './estimate-for-days.ts';
import { expectedRange } from './expected-range.ts';
import { type ChangedTariff, priceOf, unitsPenceOf } from './price-levers.ts';
import { ownUseOf } from './unit-levers.ts';

/**
 * Holds a bill's units for heating and hot water against the written estimate for the same days [pence].
 * The gap is actual − equal share of the estimated year; its parts (`billParts`) sum to it to the penny. `expected` is the estimate for exactly these days at the bill's price and in the weather that came:
 * (space + kWh a degree day × (degree days that came − typical) + other − own use of what is made at home) × price. The standing charge is
 * left out unless it is known on both sides; service always is.
 * Spans of 1 to 1,100 days; throws RangeError for what `findBillFaults` names.
 */
export function checkBill(input: {
  readonly estimate: WrittenEstimate;
  readonly bill: BillCheckInput;
  readonly reference: Pick<Reference, 'spread'>;
  readonly id: string;
  readonly madeOn: string;
  readonly weather?: Series;
  /** What the tariffs before and after a change ask in these days, where `tariffChange` does not say it. */
  readonly changed?: ChangedTariff;
}): BillCheck {
  const { estimate, bill, reference, id, madeOn, changed = typedChange(bill) } = input;
  const fault = findBillFaults(estimate, bill)[0];
  if (fault) throw new RangeError(fault.code);
  const pump = heatPumpOf(estimate);
  const estimated = estimateForDays(estimate, bill.from, bill.to);
  const weather = actualWeather(bill, estimate.appraisal.demand.baseC, estimated.degreeDays, input.weather);
  const standing = standingOf(estimate, bill, estimated.days);
  const unitsPence = roundToPenny(unitsPenceOf(bill));
  const typical = sumOf(estimated.degreeDays);
  const usedKWh = spaceInWeather(estimated, weather ? weather.degreeDays - typical : 0) + estimated.otherKWh;
  const expectedKWh = Math.max(0, usedKWh - ownUseOf(bill));
  const range = expectedRange({
    expectedPence: roundToPenny(expectedKWh * priceOf(bill, unitsPence)),
    bought: pump.bought,
    days: estimated.days,
    spaceShare: estimated.spaceShare,
    weatherKnown: weather !== null,
    spread: reference.spread,
  });
  const billed = standing?.billedPence ?? 0;
  const expected = { value: range.value + billed, low: range.low + billed, high: range.high + billed };
  const estimatedPence = roundToPenny(estimated.equalSharePence) + (standing?.estimatedPence ?? 0);
  const seasonPence = roundToPenny(estimated.pence) + (standing?.estimatedPence ?? 0);
  const actualPence = unitsPence + billed;
  const verdict = isOtherUnknown(bill) ? 'unknown' : verdictOf(actualPence, expected);
  return withNext({
    id,
    estimateId: estimate.id,
    madeOn,
    input: bill,
    estimatedPence,
    seasonPence,
    estimatedKWh: estimated.spaceKWh + estimated.otherKWh,
    expectedKWh,
    expected,
    actualPence,
    ...(standing ? { standing } : {}),
    verdict,
    parts: billParts({ bill, estimated, pump, weather, standing, changed, estimatedPence, seasonPence, actualPence }),
  });
}

/** A change of tariff of which the price before was typed, at the bill's own hours: all the rest of the bill's price is the change's. */
function typedChange(bill: BillCheckInput): ChangedTariff | null {
  const price = bill.tariffChange?.beforePencePerKWh;
  if (price === undefined) return null;
  return { before: { estimated: price }, after: { estimated: priceOf(bill) }, grade: 'measured' };
}

const verdictOf = (pence: number, { low, high }: { readonly low: number; readonly high: number }) =>
  pence > high ? 'above' : pence < low ? 'below' : 'inside';

/** Standing charge [pence, whole] of the bill's days on both sides; null unless both are known. */
function standingOf(estimate: WrittenEstimate, bill: BillCheckInput, days: number): BillPartsInput['standing'] {
  if (bill.billedStandingPence === undefined) return null;
  const { household, appraisal } = estimate;
  const tariff = household.tariffs.find(({ id }) => id === household.prices.electricityTariffId);
  const perDay = bill.estimatedStandingPencePerDay ?? (tariff && standingWithMeter(versionOn(tariff, appraisal.asOf)));
  if (perDay === undefined) return null;
  return { estimatedPence: roundToPenny(perDay * days), billedPence: roundToPenny(bill.billedStandingPence) };
}

/** Standing charge of a day with that of the heat pump's own meter, where it has one [pence, VAT included]. */
const standingWithMeter = (version: TariffVersion): number =>
  standingPencePerDayInclVat(version) + inclVat(version, version.ownMeter?.pencePerYear ?? 0) / 365;
