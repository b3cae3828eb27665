/** The heat pump held against one other system. */

import { quantilesOf, shareAboveZero, TWENTY } from '../chance/quantiles.ts';
import { type Demand, type SystemResult, type Versus, verdictOf } from '../shapes/appraisal.ts';
import { type Told, tell } from '../shapes/told.ts';
import { type Working, weakestGrade } from '../shapes/working.ts';
import { withRange } from './cost-figures.ts';
import { withoutSteps } from './cost-working.ts';
import type { Plan } from './plan.ts';
import type { PricedPlan } from './price-plan.ts';

export interface Side {
  readonly priced: PricedPlan;
  readonly result: SystemResult;
  /** Cost of each possible year, or null without draws. */
  readonly costPence: Float64Array | null;
}

/**
 * Saving [pence a year], its chance and twenty futures; break-even factor [1] and price ratios [1].
 * Break-even factor = electricity price / other price × other efficiency, over the year's heat and each system's own
 * hours: the factor at which a unit of heat costs the same, standing charge, service and pumps left out.
 * `breakEvenFactorAllCosts` has them in. Source of the rule: common practice; check values in tests/outside.
 */
export function holdAgainst(pump: Side, other: Side, demand: Demand, wholeFactor: number): Versus {
  const value = other.result.cost.value - pump.result.cost.value;
  const savings = pump.costPence && other.costPence ? savingsOf(pump.costPence, other.costPence) : null;
  const [low, high, ...twenty] = savings ? quantilesOf(savings, [0.1, 0.9, ...TWENTY]) : [];
  const points = low === undefined || high === undefined ? null : { low, high };
  const grade = weakestGrade([pump.result.cost.grade, other.result.cost.grade]);
  const saving = withRange(value, points, { unit: 'p', grade, working: savingWorking(pump, other, value) });
  const even = value === 0 ? 0.5 : Number(value > 0);
  const chanceLess = savings ? shareAboveZero(savings) : even;
  return {
    against: other.result.id,
    saving,
    chanceLess,
    verdict: verdictOf({ saving, chanceLess }),
    twenty: savings ? twenty : new Array<number>(20).fill(value),
    ...breakEven(pump, other, demand, wholeFactor),
  };
}

/** What the heat pump saves in each possible year: positive where it costs less. */
export function savingsOf(pumpPence: Float64Array, otherPence: Float64Array): Float64Array {
  return otherPence.map((pence, i) => pence - pumpPence[i]!);
}

function breakEven(pump: Side, other: Side, demand: Demand, wholeFactor: number) {
  const heatKWh = demand.space.value + demand.water.value;
  const { terms } = other.priced;
  const fuelKWh = terms.spaceKWh + terms.waterKWh + terms.backupKWh + terms.steadyKWh;
  const fuelPence = terms.spacePence + terms.waterPence + terms.backupPence + terms.steadyPence;
  const electricityPence = pump.priced.meanPencePerKWh;
  const burns = terms.carrier !== 'electricity';
  const none = { breakEvenFactor: null, breakEvenFactorAllCosts: null, priceRatio: null, breakEvenPriceRatio: null };
  // Where hot water is made by electricity beside the fuel, the fuel's part of the heat is set against the fuel.
  const fuelHeatKWh = heatKWh - terms.electricWaterKWh;
  if (!(fuelHeatKWh > 0) || !(fuelKWh > 0) || !(fuelPence > 0) || !(electricityPence > 0)) return none;
  const efficiency = fuelHeatKWh / fuelKWh;
  const fuelPrice = fuelPence / fuelKWh;
  const left = other.result.cost.value - pump.priced.terms.fixedPence - pump.priced.terms.servicePence;
  return {
    breakEvenFactor: (electricityPence / fuelPrice) * efficiency,
    // The pump's units may cost what the other costs in all, less the pump's own standing charge and service.
    breakEvenFactorAllCosts: left > 0 ? (wholeFactor * pump.result.split.unitsPence) / left : null,
    priceRatio: burns ? electricityPence / fuelPrice : null,
    breakEvenPriceRatio: burns ? wholeFactor / efficiency : null,
  };
}

function savingWorking(pump: Side, other: Side, value: number): Working {
  const line = (name: Told, { result }: Side) => ({
    name,
    value: result.cost.value,
    unit: 'p',
    grade: result.cost.grade,
    origin: tell('from-cost-of-year-below'),
  });
  return {
    title: tell('saved-in-year'),
    formula: tell('other-less-pump'),
    inputs: [
      line(tell('cost-of-system', { system: tellSystem(other.priced.plan) }), other),
      line(tell('cost-of-system', { system: tellSystem(pump.priced.plan) }), pump),
    ],
    result: { value, unit: 'p' },
    steps: [withoutSteps(other.result.cost.working), withoutSteps(pump.result.cost.working)],
  };
}

const tellSystem = ({ id, kind }: Plan): Told =>
  tell(id !== 'present' ? `system-${id}` : kind === 'air-source' ? `system-${kind}` : `now-${kind}`);
