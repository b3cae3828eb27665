/** The sums behind what a system buys, costs and emits. */

import type { Demand, Figure, PriceBasis } from '../shapes/appraisal.ts';
import type { Value } from '../shapes/reference.ts';
import { type Told, tell, type Wording } from '../shapes/told.ts';
import type { Grade, Working, WorkingInput } from '../shapes/working.ts';
import { sumOf } from '../units/sums.ts';
import type { Plan } from './plan.ts';
import type { PricedPlan } from './price-plan.ts';
import type { PricesInUse } from './prices-of.ts';
import type { RestOfHome } from './rest-of-home.ts';
import type { Rate } from './uses.ts';

const kWhInput = (name: Wording, value: number, grade: Grade, origin: Wording): WorkingInput => ({
  name,
  value,
  unit: 'kWh',
  grade,
  origin,
});

/** A sum without the sums below it, where those stand under another figure already. */
export const withoutSteps = ({ steps: _, ...working }: Working): Working => working;

/** The prices that a plan's main energy is bought at. */
function basisOf(plan: Plan, prices: PricesInUse): PriceBasis {
  if (plan.carrier === 'electricity') return (plan.hours === 'storage' ? prices.storage! : prices.electricity).basis;
  return prices[plan.carrier]!.basis;
}

export const gradeOfPrice = (plan: Plan, prices: PricesInUse): Grade => basisOf(plan, prices).grade;

export function boughtWorking(plan: Plan, demand: Demand, boughtKWh: number): Working {
  const waterKWh = plan.waterKWh + plan.electricWaterKWh;
  return {
    title: tell('energy-bought'),
    formula: tell('bought-by-use'),
    inputs: [
      kWhInput(tell('heat-for-rooms'), demand.space.value, demand.space.grade, tell('heat-needed-origin')),
      kWhInput(tell('heat-for-water'), demand.water.value, demand.water.grade, tell('heat-needed-origin')),
      ...plan.inputs,
      kWhInput(tell('bought-for-rooms'), plan.spaceKWh, plan.grade, tell('by-factor-or-efficiency')),
      kWhInput(tell('bought-for-water'), waterKWh, plan.grade, tell('by-factor-or-efficiency')),
      ...plan.extras.map((line) => kWhInput(line.working.title, line.kWh, line.grade, line.working.formula)),
      ...(plan.pumpKWh > 0 ? [kWhInput(tell('pump-and-fan'), plan.pumpKWh, 'assumed', plan.pumpSource)] : []),
    ],
    result: { value: boughtKWh, unit: 'kWh' },
    steps: [demand.space.working, demand.water.working, ...plan.steps],
  };
}

/** When electricity is bought for rooms and hot water; a fuel costs the same at any hour. */
function hoursInputs({ plan, waterHours }: PricedPlan): WorkingInput[] {
  const electric = plan.carrier === 'electricity';
  const line = (name: Told, value: Told, origin: Told): WorkingInput => ({ name, value, grade: 'assumed', origin });
  const rooms = tell(`hours-${plan.hours}`);
  const said: WorkingInput = {
    name: tell('hours-of-water'),
    value: tell(`water-${waterHours}`),
    grade: plan.waterHours ? 'estimated' : 'assumed',
    origin: tell(plan.waterHours ? 'typed' : 'custom'),
  };
  return [
    ...(electric ? [line(tell('hours-of-rooms'), rooms, tell('custom'))] : []),
    ...(electric || plan.electricWaterKWh > 0 ? [said] : []),
  ];
}

export function costWorking(
  priced: PricedPlan,
  rates: readonly Rate[],
  bought: Working,
  costPence: number,
  prices: PricesInUse,
): Working {
  const { plan, power, besideSteps, standingPence, gridPence } = priced;
  const basis = basisOf(plan, prices);
  const electricity = prices.electricity.basis;
  return {
    title: tell('cost-of-year'),
    formula: tell(power ? 'units-standing-power-service' : 'units-standing-service'),
    inputs: [
      ...rates.flatMap(({ name, kWh, pencePerKWh, beside }): WorkingInput[] => {
        const { grade, origin } = beside ? electricity : basis;
        return [
          kWhInput(tell('units-at', { name }), kWh, plan.grade, tell('energy-bought-origin')),
          { name: tell('price-at', { name }), value: pencePerKWh, unit: 'p/kWh', grade, origin },
        ];
      }),
      ...hoursInputs(priced),
      ...(besideSteps ? [otherUseInput(besideSteps)] : []),
      standingInput(standingPence, prices.gas.basis),
      ...(gridPence === 0
        ? []
        : [
            {
              name: tell('terms-of-grid'),
              value: gridPence,
              unit: 'p',
              grade: electricity.grade,
              origin: electricity.origin,
            },
          ]),
      ...(power
        ? [
            {
              name: tell('charge-on-power'),
              value: power.pence,
              unit: 'p',
              grade: 'assumed' as const,
              origin: power.working.formula,
            },
          ]
        : []),
      plan.serviceGBP,
    ],
    result: { value: costPence, unit: 'p' },
    source: tell('name-and-origin', { name: basis.name, origin: basis.origin }),
    steps: power ? [bought, power.working] : [bought],
  };
}

const otherUseInput = ({ monthlyKWh, grade, origin }: RestOfHome): WorkingInput =>
  kWhInput(tell('other-use'), sumOf(monthlyKWh), grade, origin);

function standingInput(value: number, gas: PriceBasis): WorkingInput {
  const name = tell('standing-charge');
  if (value > 0) return { name, value, unit: 'p', grade: gas.grade, origin: gas.origin };
  const origin = tell('no-standing-here');
  return { name, value, unit: 'p', grade: 'measured', origin };
}

export function perHeatWorking(
  { plan, terms, meanPencePerKWh }: PricedPlan,
  of: { readonly perHeat: number; readonly unitsPence: number; readonly heatKWh: number; readonly grade: Grade },
): Working {
  const { grade } = of;
  const pricePerKWh = plan.spaceKWh > 0 ? terms.spacePence / plan.spaceKWh : meanPencePerKWh;
  const rooms: Working = {
    title: tell('heat-unit-for-rooms'),
    formula: tell('price-by-factor'),
    inputs: [
      { name: tell('price-over-hours'), value: pricePerKWh, unit: 'p/kWh', grade, origin: tell('the-prices') },
      ...plan.inputs.slice(0, 1),
    ],
    result: { value: pricePerKWh / plan.spaceEfficiency, unit: 'p/kWh' },
  };
  return {
    title: tell('heat-unit'),
    formula: tell('units-by-heat'),
    inputs: [
      { name: tell('cost-of-units'), value: of.unitsPence, unit: 'p', grade, origin: tell('from-cost-of-year') },
      kWhInput(tell('heat'), of.heatKWh, plan.grade, tell('heat-needed-origin')),
    ],
    result: { value: of.perHeat, unit: 'p/kWh' },
    steps: [rooms],
  };
}

export function carbonWorking(
  plan: Plan,
  bought: Figure,
  of: { readonly besideKWh: number; readonly main: Value; readonly electricity: Value; readonly carbonKg: number },
): Working {
  const factor = (name: Told, { value, unit, source }: Value): WorkingInput => ({
    name,
    value,
    unit,
    grade: 'estimated',
    origin: source,
  });
  const carrier = tell(`carrier-${plan.carrier}`);
  return {
    title: tell('carbon-of-year'),
    formula: tell('carbon-by-carrier'),
    inputs: [
      kWhInput(tell('bought-of', { carrier }), bought.value - of.besideKWh, plan.grade, tell('energy-bought-origin')),
      factor(tell('carbon-of', { carrier }), of.main),
      ...(of.besideKWh > 0
        ? [
            kWhInput(tell('electricity-beside'), of.besideKWh, plan.grade, tell('energy-bought-origin')),
            factor(tell('carbon-of', { carrier: tell('carrier-electricity') }), of.electricity),
          ]
        : []),
    ],
    result: { value: of.carbonKg, unit: 'kg' },
    source: of.main.source,
    steps: [withoutSteps(bought.working)],
  };
}
