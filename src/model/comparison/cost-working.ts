/** The sums behind what a system buys, costs and emits. */
import type { Demand, Figure, PriceBasis } from '../shapes/appraisal.ts';
import type { Value } from '../shapes/reference.ts';
import type { Wording } from '../shapes/told.ts';
import type { Grade, Working, WorkingInput } from '../shapes/working.ts';
import type { Plan } from './plan.ts';
import type { PricedPlan } from './price-plan.ts';
import type { PricesInUse } from './prices-of.ts';
import type { RestOfHome } from './rest-of-home.ts';

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
  if (plan.carrier === 'electricity') return (plan.hours === 'storage' ? prices.storage : prices.electricity).basis;
  return prices[plan.carrier].basis;
}

export const gradeOfPrice = (plan: Plan, prices: PricesInUse): Grade => basisOf(plan, prices).grade;

export function boughtWorking(plan: Plan, demand: Demand, boughtKWh: number): Working {
  const waterKWh = plan.waterKWh + plan.electricWaterKWh;
  return {
    title: 'Energy bought in a year',
    formula: 'heat for rooms / its factor or efficiency + heat for hot water / its own + pumps and other lines',
    inputs: [
      kWhInput('Heat for rooms', demand.space.value, demand.space.grade, 'heat needed'),
      kWhInput('Heat for hot water', demand.water.value, demand.water.grade, 'heat needed'),
      ...plan.inputs,
      kWhInput('Bought for rooms', plan.spaceKWh, plan.grade, 'heat / factor or efficiency'),
      kWhInput('Bought for hot water', waterKWh, plan.grade, 'heat / factor or efficiency'),
      ...plan.extras.map((line) => kWhInput(line.working.title, line.kWh, line.grade, line.working.formula)),
      ...(plan.pumpKWh > 0 ? [kWhInput('Pump and fan', plan.pumpKWh, 'assumed', plan.pumpSource)] : []),
    ],
    result: { value: boughtKWh, unit: 'kWh' },
    steps: [demand.space.working, demand.water.working, ...plan.steps],
  };
}

export function costWorking(
  { plan, rates, power, besideSteps }: PricedPlan,
  bought: Working,
  costPence: number,
  prices: PricesInUse,
  standingPence: number,
): Working {
  const basis = basisOf(plan, prices);
  const electricity = prices.electricity.basis;
  return {
    title: 'Cost of a year',
    formula: power
      ? 'units × unit price, band by band + standing charge + charge on power + service'
      : 'units × unit price, band by band + standing charge + service',
    inputs: [
      ...rates.flatMap(({ name, kWh, pencePerKWh, beside }): WorkingInput[] => {
        const { grade, origin } = beside ? electricity : basis;
        return [
          kWhInput(`Units, ${name}`, kWh, plan.grade, 'energy bought'),
          { name: `Unit price, ${name}`, value: pencePerKWh, unit: 'p/kWh', grade, origin },
        ];
      }),
      ...(besideSteps ? [otherUseInput(besideSteps)] : []),
      standingInput(standingPence - (power?.pence ?? 0), prices.gas.basis),
      ...(power
        ? [
            {
              name: 'Charge on power',
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
    source: `${basis.name}: ${basis.origin}`,
    steps: power ? [bought, power.working] : [bought],
  };
}

const otherUseInput = ({ monthlyKWh, grade, origin }: RestOfHome): WorkingInput =>
  kWhInput(
    'Other electricity of the home, which fills the first steps',
    monthlyKWh.reduce((sum, kWh) => sum + kWh, 0),
    grade,
    origin,
  );

function standingInput(value: number, gas: PriceBasis): WorkingInput {
  const name = 'Standing charge';
  if (value > 0) return { name, value, unit: 'p', grade: gas.grade, origin: gas.origin };
  const origin = 'none here: that of electricity is paid in any case';
  return { name, value, unit: 'p', grade: 'measured', origin };
}

export function perHeatWorking(
  { plan, terms, meanPencePerKWh }: PricedPlan,
  of: { readonly perHeat: number; readonly unitsPence: number; readonly heatKWh: number; readonly grade: Grade },
): Working {
  const { grade } = of;
  const pricePerKWh = plan.spaceKWh > 0 ? terms.spacePence / plan.spaceKWh : meanPencePerKWh;
  const rooms: Working = {
    title: 'Cost of a unit of heat for rooms',
    formula: 'unit price / factor or efficiency for rooms',
    inputs: [
      { name: 'Unit price over its hours', value: pricePerKWh, unit: 'p/kWh', grade, origin: 'prices' },
      ...plan.inputs.slice(0, 1),
    ],
    result: { value: pricePerKWh / plan.spaceEfficiency, unit: 'p/kWh' },
  };
  return {
    title: 'Cost of a unit of heat',
    formula: 'cost of the units / heat for rooms and hot water',
    inputs: [
      { name: 'Cost of the units', value: of.unitsPence, unit: 'p', grade, origin: 'cost of a year' },
      kWhInput('Heat', of.heatKWh, plan.grade, 'heat needed'),
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
  const factor = (name: string, { value, unit, source }: Value): WorkingInput => ({
    name,
    value,
    unit,
    grade: 'estimated',
    origin: source,
  });
  return {
    title: 'Carbon of a year',
    formula: 'energy bought × kg CO2e per kWh, each carrier by its own',
    inputs: [
      kWhInput(`Bought, ${plan.carrier}`, bought.value - of.besideKWh, plan.grade, 'energy bought'),
      factor(`Carbon of ${plan.carrier}`, of.main),
      ...(of.besideKWh > 0
        ? [
            kWhInput('Electricity beside it', of.besideKWh, plan.grade, 'energy bought'),
            factor('Carbon of electricity', of.electricity),
          ]
        : []),
    ],
    result: { value: of.carbonKg, unit: 'kg' },
    source: of.main.source,
    steps: [withoutSteps(bought.working)],
  };
}
