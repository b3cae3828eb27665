/** What has been paid by the end of each year, and what the years save. */
import type { Lifetime, YearPoint } from '../../model/shapes/lifetime.ts';
import { runningByMonth } from '../lifetime.ts';
import { inWords, type Said } from '../say-told.ts';
import type { ShownInput, ShownWorking } from '../working.ts';
import { rangedWorking } from './ranged.ts';

/** The saving with its range, then each side's payments year by year [p]. */
export function yearsWorkings(lifetime: Lifetime): ShownWorking[] {
  const { pump, beside, saved, payback, netPresentValue, inputs } = lifetime;
  const sum = (title: Said, points: readonly YearPoint[]): ShownWorking => ({
    title,
    formula: inWords('paid so far + cost of the year at its prices + equipment bought in it'),
    inputs: points.map(
      ({ year, value }): ShownInput => ({
        name: inWords('By the end of year {year, number}', { year }),
        value,
        unit: 'p',
        grade: saved.grade,
        origin: inWords('the year before + this year'),
      }),
    ),
    result: { value: points.at(-1)!.value, unit: 'p' },
    steps: [saved.working],
  });
  const rate: ShownWorking = {
    title: inWords('What money later is worth'),
    formula: inWords('an amount / (1 + discount)^year'),
    inputs: [inputs.discount.line, inputs.electricityGrowth.line, inputs.fuelGrowth.line],
    result: { value: inputs.discount.value, unit: 'share' },
  };
  return [
    rangedWorking(saved),
    sum(inWords('Paid in all with the heat pump'), pump),
    sum(inWords('Paid in all with the other'), beside),
    ...(payback ? [payback.simple.working, payback.discounted.working] : []),
    ...instalmentWorkings(lifetime),
    ...(netPresentValue ? [rangedWorking(netPresentValue), rate] : []),
  ];
}

/** The instalment of a month, then what it comes to with running either side by the month of the first year [p]. */
export function instalmentWorkings(lifetime: Pick<Lifetime, 'instalments' | 'pump' | 'beside'>): ShownWorking[] {
  const { instalments } = lifetime;
  if (!instalments) return [];
  const running = runningByMonth(lifetime);
  const line = (name: Said, value: number, origin: Said): ShownInput => ({
    name,
    value,
    unit: 'p',
    grade: 'estimated',
    origin,
  });
  const firstYear = inWords('cost of the first year / 12');
  return [
    instalments.working,
    {
      title: inWords('Instalment and running together, by the month'),
      formula: inWords('instalment + running the heat pump'),
      inputs: [
        line(inWords('Instalment'), instalments.pence, inWords('the sum above')),
        line(inWords('Running the heat pump'), running.pump, firstYear),
        line(inWords('Running the other'), running.beside, firstYear),
      ],
      result: { value: instalments.pence + running.pump, unit: 'p' },
    },
  ];
}
