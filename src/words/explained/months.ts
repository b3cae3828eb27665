/** The twelve months behind a picture of a year, each a line that sums to the year. */

import { WARNED } from '../../model/bill-gap/expected-range.ts';
import type { Demand, SystemResult } from '../../model/shapes/appraisal.ts';
import type { Grade } from '../../model/shapes/working.ts';
import { sumOf } from '../../model/units/sums.ts';
import { monthNames } from '../numbers.ts';
import { inWords, type Said } from '../say-told.ts';
import type { ShownInput, ShownWorking } from '../working.ts';

const monthLines = (
  values: readonly number[],
  rest: { readonly unit: string; readonly grade: Grade; readonly origin: Said },
): ShownInput[] => {
  const names = monthNames();
  return values.map((value, month) => ({ name: { said: names[month]! }, value, ...rest }));
};

/** What a system costs by the month [p]: units × price + standing charge + a twelfth of the service. */
export function costByMonth({ monthly, cost }: Pick<SystemResult, 'monthly' | 'cost'>, title: Said): ShownWorking {
  const fixed = monthly.standingPence.map((pence, month) => pence + monthly.servicePence[month]!);
  const { grade } = cost;
  return {
    title,
    formula: inWords(
      'a month: its heat / factor or efficiency × unit price + standing charge and service of the month',
    ),
    inputs: [
      ...monthLines(
        monthly.unitsPence.map((pence, month) => pence + fixed[month]!),
        { unit: 'p', grade, origin: inWords('degree days of the month in the typical year, at the prices below') },
      ),
      {
        name: inWords('A month on average'),
        value: cost.value / 12,
        unit: 'p',
        grade,
        origin: inWords('cost of the year / 12'),
      },
      {
        name: inWords('A month of the first year, enough for 9 in 10 homes'),
        value: cost.high / 12,
        unit: 'p',
        grade: 'estimated',
        origin: inWords('high end of the cost of the year / 12'),
      },
    ],
    result: { value: cost.value, unit: 'p' },
    steps: [
      {
        title: inWords('kWh of each month: {title}', { title: title.said }),
        formula: inWords('kWh × unit price'),
        inputs: monthLines(monthly.unitsPence, {
          unit: 'p',
          grade,
          origin: inWords('kWh of the month at the prices below'),
        }),
        result: { value: sumOf(monthly.unitsPence), unit: 'p' },
      },
      cost.working,
    ],
  };
}

/** Units bought by the month [kWh], with the units from which on to call. */
export function unitsByMonth(
  { monthly, bought }: Pick<SystemResult, 'monthly' | 'bought'>,
  /** Units of each month from which on to call, kWh. */
  warnings: readonly number[],
): ShownWorking {
  const { grade } = bought;
  return {
    title: inWords('kWh of each month'),
    formula: inWords('heat of the month / factor or efficiency + pumps and other lines'),
    inputs: monthLines(monthly.boughtKWh, {
      unit: 'kWh',
      grade,
      origin: inWords('degree days of the month in the typical year'),
    }),
    result: { value: bought.value, unit: 'kWh' },
    steps: [
      bought.working,
      {
        title: inWords('When to call'),
        formula: inWords(
          'kWh of the month × (1 + how far a month may stray upwards): 1 usual month in {months} and 1 year in {years} lie above with nothing wrong',
          { months: Math.round(1 / WARNED.month), years: Math.round(1 / WARNED.year) },
        ),
        inputs: monthLines(warnings, {
          unit: 'kWh',
          grade: 'estimated',
          origin: inWords('the range of the year, and how habits and weather differ from month to month'),
        }),
        result: { value: bought.high, unit: 'kWh' },
      },
      {
        title: inWords('October to March together'),
        formula: inWords('the six months of the cold half'),
        inputs: monthLines(monthly.boughtKWh, { unit: 'kWh', grade, origin: inWords('as above') }).filter(
          (_, month) => month < 3 || month > 8,
        ),
        result: {
          value: monthly.boughtKWh.reduce((sum, kWh, month) => (month < 3 || month > 8 ? sum + kWh : sum), 0),
          unit: 'kWh',
        },
      },
    ],
  };
}

/** Heat for rooms and taps by the month [kWh]. */
export function heatByMonth({ monthlySpaceKWh, monthlyWaterKWh, total, space, water }: Demand): ShownWorking {
  return {
    title: inWords('Heat of each month'),
    formula: inWords('rooms by the degree days of the month, hot water by its days and how cold the mains is'),
    inputs: monthLines(
      monthlySpaceKWh.map((kWh, month) => kWh + monthlyWaterKWh[month]!),
      { unit: 'kWh', grade: total.grade, origin: inWords('typical year of the region') },
    ),
    result: { value: total.value, unit: 'kWh' },
    steps: [
      {
        title: inWords('Hot water of each month'),
        formula: inWords('litres × rise in temperature, and what the cylinder loses'),
        inputs: monthLines(monthlyWaterKWh, {
          unit: 'kWh',
          grade: water.grade,
          origin: inWords('hot water of the year'),
        }),
        result: { value: water.value, unit: 'kWh' },
        steps: [water.working],
      },
      space.working,
    ],
  };
}
