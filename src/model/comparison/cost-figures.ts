/** A priced plan as a result: every figure with its range and the sum it came from. */

import { COMMON_MONTH_DAYS } from '../calendar/civil.ts';
import { Z90 } from '../chance/normal-quantile.ts';
import { tenAndNinety } from '../chance/quantiles.ts';
import type { Demand, Figure, SystemResult } from '../shapes/appraisal.ts';
import type { Reference } from '../shapes/reference.ts';
import { type Grade, type Working, weakestGrade } from '../shapes/working.ts';
import { shareForRooms, type Years } from '../uncertainty/simulate.ts';
import { sumOf } from '../units/sums.ts';
import { boughtWorking, carbonWorking, costWorking, gradeOfPrice, perHeatWorking } from './cost-working.ts';
import type { PricedPlan } from './price-plan.ts';
import type { PricesInUse } from './prices-of.ts';
import { monthsOf, ratesOf } from './uses.ts';

export interface ResultContext {
  readonly demand: Demand;
  readonly prices: PricesInUse;
  /** Relative standard deviation of a winter's heat. */
  readonly winter: number;
  readonly carbonKgPerKWh: Reference['carbonKgPerKWh'];
}

/** The figure with the 10 and 90 % points of its draws, widened to hold the value itself; the value alone without draws. */
export function withRange(
  value: number,
  points: { readonly low: number; readonly high: number } | null,
  rest: { unit: string; grade: Grade; working: Working },
): Figure {
  return { value, low: Math.min(value, points?.low ?? value), high: Math.max(value, points?.high ?? value), ...rest };
}

/** One system's result from its priced plan and, where there are draws, its possible years. */
export function systemResult(priced: PricedPlan, years: Years | null, context: ResultContext): SystemResult {
  const { plan, terms } = priced;
  const monthly = byMonth(priced);
  const rates = ratesOf(priced.uses);
  const { demand, prices, winter } = context;
  const boughtKWh = sumOf(monthly.boughtKWh);
  const split = {
    unitsPence: sumOf(monthly.unitsPence),
    standingPence: sumOf(monthly.standingPence),
    servicePence: sumOf(monthly.servicePence),
  };
  const costPence = split.unitsPence + split.standingPence + split.servicePence;
  const heatKWh = demand.space.value + demand.water.value;
  const grade = weakestGrade([plan.grade, gradeOfPrice(plan, prices)]);
  const points = (values: Float64Array | undefined) => (values ? tenAndNinety(values) : null);
  const bought = withRange(boughtKWh, points(years?.boughtKWh), {
    unit: 'kWh',
    grade: plan.grade,
    working: boughtWorking(plan, demand, boughtKWh),
  });
  const cost = withRange(costPence, points(years?.costPence), {
    unit: 'p',
    grade,
    working: costWorking(priced, rates, bought.working, costPence, prices),
  });
  const forRooms = shareForRooms({ spaceKWh: demand.space.value, waterKWh: demand.water.value });
  const weatherPence = terms.spacePence + terms.backupPence * forRooms;
  const perHeat = heatKWh > 0 ? split.unitsPence / heatKWh : 0;
  return {
    id: plan.id,
    kind: plan.kind,
    carrier: plan.carrier,
    spaceEfficiency: plan.spaceEfficiency,
    waterEfficiency: plan.waterEfficiency,
    grade: plan.grade,
    bought,
    ownElectricityKWh: terms.ownElectricityKWh + terms.electricWaterKWh,
    cost,
    split,
    monthly,
    rates: rates.map(({ name, kWh, pencePerKWh }) => ({ name, kWh, pencePerKWh })),
    pencePerKWhHeat: withRange(perHeat, points(years?.pencePerKWhHeat), {
      unit: 'p/kWh',
      grade,
      working: perHeatWorking(priced, { perHeat, unitsPence: split.unitsPence, heatKWh, grade }),
    }),
    pencePerKWhSpaceHeat: plan.spaceKWh > 0 ? terms.spacePence / demand.space.value : 0,
    carbonKg: carbonFigure(priced, bought, context),
    // A winter met one year in ten on either side: the part of the units that goes with the heat for the rooms.
    coldYearPence: costPence + weatherPence * Z90 * winter,
    mildYearPence: costPence - weatherPence * Math.min(1, Z90 * winter),
    ...(plan.asDesigned ? { asDesigned: designedCost(priced, costPence) } : {}),
    ...(years ? { yearToYear: yearToYear(years) } : {}),
  };
}

/** Energy [kWh] and cost [pence] by month. */
function byMonth({ uses, terms, power, standingPence, gridPence }: PricedPlan): SystemResult['monthly'] {
  return {
    ...monthsOf(uses),
    standingPence: COMMON_MONTH_DAYS.map(
      (days, month) => (days * (standingPence + gridPence)) / 365 + (power?.byMonthPence[month] ?? 0),
    ),
    servicePence: COMMON_MONTH_DAYS.map((days) => (terms.servicePence * days) / 365),
  };
}

/** Cost of the year [pence] with the factors of the design: units for rooms and hot water go with 1 / factor, all else stays. */
function designedCost({ plan, terms }: PricedPlan, costPence: number): NonNullable<SystemResult['asDesigned']> {
  const { space, water, reachedShare } = plan.asDesigned!;
  const saved =
    terms.spacePence * (1 - plan.spaceEfficiency / space) + terms.waterPence * (1 - plan.waterEfficiency / water);
  return { costPence: costPence - saved, reachedShare };
}

function yearToYear({ onlyYearsPence }: Years): NonNullable<SystemResult['yearToYear']> {
  const { low, high } = tenAndNinety(onlyYearsPence);
  return { lowPence: low, highPence: high };
}

/** Carbon of the energy bought: its range is that of the energy, a boiler's own electricity staying as it is. */
function carbonFigure({ plan, terms }: PricedPlan, bought: Figure, { carbonKgPerKWh }: ResultContext): Figure {
  const besideKWh = terms.ownElectricityKWh + terms.electricWaterKWh;
  const main = carbonKgPerKWh[plan.carrier];
  const electricity = carbonKgPerKWh.electricity;
  const carbonOf = (boughtKWh: number) =>
    Math.max(0, boughtKWh - besideKWh) * main.value + besideKWh * electricity.value;
  return {
    value: carbonOf(bought.value),
    low: carbonOf(bought.low),
    high: carbonOf(bought.high),
    unit: 'kg',
    grade: plan.grade,
    working: carbonWorking(plan, bought, { besideKWh, main, electricity, carbonKg: carbonOf(bought.value) }),
  };
}
