/** What has been paid by the end of each year, and what the years save. */
import type { Lifetime, YearPoint } from '../shapes/lifetime.ts';
import type { Working, WorkingInput } from '../shapes/working.ts';
import { rangedWorking } from './ranged.ts';

/** The saving with its range, then each side's payments year by year [p]. */
export function yearsWorkings(lifetime: Lifetime): Working[] {
  const { pump, beside, saved, payback, netPresentValue, inputs } = lifetime;
  const sum = (title: string, points: readonly YearPoint[]): Working => ({
    title,
    formula: 'paid so far + cost of the year at its prices + equipment bought in it',
    inputs: points.map(
      ({ year, value }): WorkingInput => ({
        name: `By the end of year ${year}`,
        value,
        unit: 'p',
        grade: saved.grade,
        origin: 'the year before + this year',
      }),
    ),
    result: { value: points.at(-1)!.value, unit: 'p' },
    steps: [saved.working],
  });
  const rate: Working = {
    title: 'What money later is worth',
    formula: 'an amount / (1 + discount)^year',
    inputs: [inputs.discount.line, inputs.electricityGrowth.line, inputs.fuelGrowth.line],
    result: { value: inputs.discount.value, unit: 'share' },
  };
  return [
    rangedWorking(saved),
    sum('Paid in all with the heat pump', pump),
    sum('Paid in all with the other', beside),
    ...(payback ? [payback.simple.working, payback.discounted.working] : []),
    ...(netPresentValue ? [rangedWorking(netPresentValue), rate] : []),
  ];
}
