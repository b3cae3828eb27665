/** The sum behind one part of a year's cost, taken out of the sum of the whole, so that the two never differ. */
import type { Working, WorkingInput } from '../shapes/working.ts';

export type CostPart = 'units' | 'standing' | 'service';

interface PartPlan {
  readonly title: string;
  readonly formula: string;
  readonly isOfIt: (input: WorkingInput) => boolean;
}

const PLANS: { readonly [part in CostPart]: PartPlan } = {
  units: {
    title: 'Units of a year',
    formula: 'units × unit price, band by band',
    isOfIt: ({ name }) => typeof name === 'string' && /^(Units|Unit price|Other electricity of the home), /.test(name),
  },
  standing: {
    title: 'Standing charge of a year',
    formula: 'the standing charge that this way of heating needs, for the days of a year',
    isOfIt: ({ name }) => name === 'Standing charge' || name === 'Charge on power',
  },
  service: {
    title: 'Service of a year',
    formula: 'one yearly visit',
    isOfIt: ({ name }) => name === 'Service of a year',
  },
};

/** One part of the cost of a year [p] with its own inputs; `cost` is the working of the whole cost. */
export function partWorking(cost: Working, part: CostPart, pence: number): Working {
  const { title, formula, isOfIt } = PLANS[part];
  const isPower = (step: Working) => step.title === 'Charge on power';
  const steps = part === 'service' ? [] : (cost.steps ?? []).filter((step) => isPower(step) === (part === 'standing'));
  return {
    title,
    formula,
    inputs: cost.inputs.filter(isOfIt),
    result: { value: pence, unit: 'p' },
    ...(cost.source === undefined || part !== 'units' ? {} : { source: cost.source }),
    ...(steps.length > 0 ? { steps } : {}),
  };
}
