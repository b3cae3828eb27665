/** What the price of putting the heat pump in comes to by the month, paid in instalments or by a loan. */
import type { Household } from '../shapes/household.ts';
import type { Instalments } from '../shapes/lifetime.ts';
import { tell } from '../shapes/told.ts';
import type { WorkingInput } from '../shapes/working.ts';

/** Years where nobody has said how many. Common practice, no source. */
export const USUAL_LOAN_YEARS = 10;

/**
 * Level instalment [pence a month] of price less grant over `months` at a rate `i` a month: P i / (1 − (1 + i)^−months), or
 * P / months without interest. Null where no price was given or the grant covers it. Source: standard annuity formula.
 */
export function reckonInstalments({
  heatPumpGBP,
  grantGBP,
  loanYears,
  loanPerYear,
}: Household['purchase']): Instalments | null {
  const pence = 100 * ((heatPumpGBP?.value ?? 0) - (grantGBP?.value ?? 0));
  if (!heatPumpGBP || !(pence > 0)) return null;
  const years = loanYears?.value ?? USUAL_LOAN_YEARS;
  const perYear = loanPerYear?.value ?? 0;
  const rate = perYear / 12;
  const months = 12 * years;
  const value = rate > 0 ? (pence * rate) / -Math.expm1(-months * Math.log1p(rate)) : pence / months;
  const taken = (name: 'loan-years' | 'loan-rate', unit: string, line: Omit<WorkingInput, 'name' | 'unit'>) => ({
    name: tell(name),
    unit,
    ...line,
  });
  return {
    years,
    perYear,
    pence: value,
    working: {
      title: tell('instalment-of-month'),
      formula: tell('loan-annuity'),
      inputs: [
        { name: tell('pump-put-in'), unit: 'GBP', ...heatPumpGBP },
        ...(grantGBP ? [{ name: tell('grant'), unit: 'GBP', ...grantGBP }] : []),
        taken('loan-years', 'years', loanYears ?? { value: years, grade: 'assumed', origin: tell('custom') }),
        taken('loan-rate', 'share', loanPerYear ?? { value: 0, grade: 'assumed', origin: tell('no-interest') }),
      ],
      result: { value, unit: 'p' },
      source: tell('present-worth-source'),
    },
  };
}
