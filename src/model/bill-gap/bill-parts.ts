/** The gap between a bill and the written estimate in parts, each with its sum. */

import { addDays } from '../calendar/civil.ts';
import type { SystemResult } from '../shapes/appraisal.ts';
import type { BillCheckInput, BillCheckPart } from '../shapes/bill-check.ts';
import { type Told, tell } from '../shapes/told.ts';
import { weakestGrade } from '../shapes/working.ts';
import { roundToPenny } from '../units/money.ts';
import { sumOf } from '../units/sums.ts';
import type { ActualWeather } from './actual-weather.ts';
import { costOf, estimatedState, type Lever, workingLine as line, spaceInWeather } from './cost-state.ts';
import type { EstimateForDays } from './estimate-for-days.ts';
import { type ChangedTariff, priceLevers } from './price-levers.ts';
import { shapley } from './shapley.ts';
import { unitLevers } from './unit-levers.ts';

const SOURCE = 'L. S. Shapley, A Value for n-Person Games (1953)';
const FORMULA = tell('mean-over-orders');

export interface BillPartsInput {
  readonly bill: BillCheckInput;
  readonly estimated: EstimateForDays;
  readonly pump: SystemResult;
  readonly weather: ActualWeather | null;
  readonly standing: { readonly estimatedPence: number; readonly billedPence: number } | null;
  readonly changed: ChangedTariff | null;
  /** Whole pence, standing charge inside where there is one. */
  readonly estimatedPence: number;
  readonly seasonPence: number;
  readonly actualPence: number;
}

/**
 * Parts [pence, whole] of actual − equal share of the estimated year; they sum to it exactly.
 * The calendar comes first and by itself: it is known before any bill. What remains is split by Shapley value over
 * price, another tariff, hours of use, standing charge, weather, heat used by degree day, hot water, efficiency, heaters and
 * other electricity, with `costOf` as the cost; causes that the evidence cannot separate are one player. Units that were billed
 * and not read are taken off before, at the bill's own price: so much a mended bill would be lower.
 */
export function billParts(input: BillPartsInput): BillCheckPart[] {
  const { bill, estimated, pump, weather, standing, changed, estimatedPence, seasonPence, actualPence } = input;
  const prices = priceLevers(bill, estimated, pump.rates, actualPence - (standing?.billedPence ?? 0), changed);
  const typical = sumOf(estimated.degreeDays);
  const moreDegreeDays = weather ? weather.degreeDays - typical : 0;
  const all: Lever[] = [
    ...prices.levers,
    ...(standing ? [standingLever(standing)] : []),
    ...(weather ? [weatherLever(estimated, weather, typical)] : []),
    ...unitLevers({
      bill,
      estimated,
      spaceFactor: pump.spaceEfficiency,
      waterFactor: pump.waterEfficiency,
      expectedSpaceKWh: spaceInWeather(estimated, moreDegreeDays),
      weatherGrade: weather?.grade ?? null,
    }),
  ];
  const isMetering = ({ cause }: Lever) => cause === 'metering';
  const levers = all.filter((lever) => !isMetering(lever));
  const from = estimatedState(prices.from, standing?.estimatedPence ?? 0);
  const costWith = (switched: readonly Lever[]) =>
    costOf(estimated, Object.assign({}, from, ...switched.map(({ to }) => to)));
  const meteringPence = roundToPenny(costWith(all) - costWith(levers));
  const none = levers.map(() => 0);
  const raw = shapley(
    none,
    levers.map(() => 1),
    (switched) => costWith(levers.filter((_, i) => switched[i])),
  );
  const whole = actualPence - seasonPence - meteringPence;
  // A charge on a bill without units, and the halves of a penny lost in rounding both ends, belong to what is joined.
  const catchAll = catchAllOf(levers);
  raw[catchAll]! += whole - sumOf(raw);
  const pence = pennyParts(raw, whole);
  return [
    daysPart(bill, estimated, estimatedPence, seasonPence),
    ...all.map((lever) =>
      isMetering(lever)
        ? partOf(lever, meteringPence, tell('units-at-bill-price'))
        : partOf(lever, pence[levers.indexOf(lever)]!),
    ),
  ];
}

/** The part that stands for the most causes, the last of equals. */
function catchAllOf(levers: readonly Lever[]): number {
  let best = 0;
  levers.forEach(({ joined }, i) => {
    if ((joined?.length ?? 1) >= (levers[best]!.joined?.length ?? 1)) best = i;
  });
  return best;
}

function partOf({ cause, joined, grade, title, inputs }: Lever, pence: number, formula?: Told): BillCheckPart {
  const result = { value: pence, unit: 'pence' };
  const by = formula ? { formula } : { formula: FORMULA, source: SOURCE };
  const working = { title, ...by, inputs: [...inputs], result };
  return { cause, ...(joined ? { joined: [...joined] } : {}), pence, grade, working };
}

function daysPart(
  bill: BillCheckInput,
  estimated: EstimateForDays,
  estimatedPence: number,
  seasonPence: number,
): BillCheckPart {
  const inputs = [
    line(tell('units-of-estimate'), estimated.yearPence, 'pence', 'estimated', tell('the-estimate')),
    line(
      tell('days-of-bill'),
      estimated.days,
      tell('days'),
      'measured',
      tell('bill-of', { from: { on: bill.from }, to: { on: addDays(bill.to, -1) } }),
    ),
    line(tell('equal-share'), estimatedPence, 'pence', 'estimated', tell('worked-out')),
    line(tell('exactly-these-days'), seasonPence, 'pence', 'estimated', tell('typical-year-of-estimate')),
  ];
  const formula = tell('exact-less-equal');
  const pence = seasonPence - estimatedPence;
  const working = { title: tell('days-of-year'), formula, inputs, result: { value: pence, unit: 'pence' } };
  return { cause: 'days', pence, grade: 'estimated', working };
}

function standingLever({ estimatedPence, billedPence }: NonNullable<BillPartsInput['standing']>): Lever {
  return {
    cause: 'standing-charge',
    to: { standingPence: billedPence },
    grade: 'measured',
    title: tell('standing-charge-part'),
    inputs: [
      line(tell('standing-estimated'), estimatedPence, 'pence', 'measured', tell('tariff-of-estimate')),
      line(tell('standing-billed'), billedPence, 'pence', 'measured', tell('the-bill')),
    ],
  };
}

function weatherLever(estimated: EstimateForDays, weather: ActualWeather, typical: number): Lever {
  const moreDegreeDays = weather.degreeDays - typical;
  return {
    cause: 'weather',
    to: { moreDegreeDays },
    grade: weakestGrade([weather.grade, 'estimated']),
    title: tell('weather'),
    inputs: [
      line(tell('typical-days'), typical, tell('kelvin-days'), 'estimated', tell('typical-year-of-estimate')),
      line(tell('days-that-came'), weather.degreeDays, tell('kelvin-days'), weather.grade, weather.origin),
      line(tell('units-a-degree-day'), estimated.kWhPerDegreeDay, 'kWh', 'estimated', tell('the-estimate')),
      line(tell('room-units-typical'), estimated.spaceKWh, 'kWh', 'estimated', tell('the-estimate')),
      line(tell('room-units-came'), spaceInWeather(estimated, moreDegreeDays), 'kWh', 'estimated', tell('worked-out')),
    ],
  };
}

/**
 * Rounds the parts of a sum to whole pence so that they still sum to `totalPence` [pence].
 * Each part is rounded down and the pennies left over go to those that lost most by it (largest remainder), so no part
 * moves by a penny or more where the parts sum to the total before rounding. `totalPence` is a whole number.
 */
export function pennyParts(parts: readonly number[], totalPence: number): number[] {
  if (!Number.isInteger(totalPence)) throw new RangeError(`${totalPence} is not a whole number of pence`);
  const whole = parts.map(Math.floor);
  const left = totalPence - sumOf(whole);
  if (Math.abs(left) > parts.length) throw new RangeError(`parts that miss ${totalPence} by ${left} pence`);
  const byLoss = parts.map((part, place) => ({ place, loss: part - whole[place]! })).sort((a, b) => b.loss - a.loss);
  const step = Math.sign(left);
  for (let i = 0; i < Math.abs(left); i++) {
    whole[byLoss[step > 0 ? i : parts.length - 1 - i]!.place]! += step;
  }
  return whole.map((pence) => pence + 0);
}
