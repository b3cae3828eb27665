/** The sum behind one part of a year's cost, taken out of the sum of the whole, so that the two never differ. */

import { type Told, type ToldCode, tell, type Wording } from '../shapes/told.ts';
import type { Working } from '../shapes/working.ts';

export type CostPart = 'units' | 'standing' | 'service';

interface PartPlan {
  readonly title: Told;
  readonly formula: Told;
  readonly codes: readonly ToldCode[];
  /** The same lines in estimates from before there were codes. */
  readonly texts: RegExp;
}

const PLANS: { readonly [part in CostPart]: PartPlan } = {
  units: {
    title: tell('units-of-year'),
    formula: tell('units-by-band'),
    codes: ['units-at', 'price-at', 'hours-of-rooms', 'hours-of-water', 'other-use'],
    texts: /^(Units|Unit price|Other electricity of the home), /,
  },
  standing: {
    title: tell('standing-of-year'),
    formula: tell('standing-by-days'),
    codes: ['standing-charge', 'charge-on-power'],
    texts: /^(Standing charge|Charge on power)$/,
  },
  service: {
    title: tell('service-of-year'),
    formula: tell('one-visit'),
    codes: ['service-of-year'],
    texts: /^Service of a year$/,
  },
};
const isOf = (told: Wording, { codes, texts }: Pick<PartPlan, 'codes' | 'texts'>): boolean =>
  typeof told === 'string' ? texts.test(told) : codes.includes(told.code);
const POWER = { codes: ['charge-on-power'], texts: /^Charge on power$/ } as const;

/** One part of the cost of a year [p] with its own inputs; `cost` is the working of the whole cost. */
export function partWorking(cost: Working, part: CostPart, pence: number): Working {
  const plan = PLANS[part];
  const isPower = ({ title }: Working) => isOf(title, POWER);
  const steps = part === 'service' ? [] : (cost.steps ?? []).filter((step) => isPower(step) === (part === 'standing'));
  return {
    title: plan.title,
    formula: plan.formula,
    inputs: cost.inputs.filter(({ name }) => isOf(name, plan)),
    result: { value: pence, unit: 'p' },
    ...(cost.source === undefined || part !== 'units' ? {} : { source: cost.source }),
    ...(steps.length > 0 ? { steps } : {}),
  };
}
