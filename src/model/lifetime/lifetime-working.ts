/** The sums behind the figures of the years to come. */
import type { SystemResult } from '../shapes/appraisal.ts';
import type { Household } from '../shapes/household.ts';
import type { LifetimeInputs } from '../shapes/lifetime.ts';
import type { Grade, Working, WorkingInput } from '../shapes/working.ts';
import { weakestGrade } from '../shapes/working.ts';
import type { Side } from './reckon-path.ts';

/** The figures with every input at its middle, pence and years; null where nothing is brought back. */
export interface MiddlePath {
  readonly saved: number;
  readonly simple: number | null;
  readonly discounted: number | null;
  readonly netPresentValue: number;
  readonly pumpAnnual: number;
  readonly besideAnnual: number;
}

export interface WorkingParts {
  readonly purchase: Household['purchase'];
  readonly inputs: LifetimeInputs;
  readonly pump: SystemResult;
  readonly beside: SystemResult;
  readonly sides: { readonly pump: Side; readonly beside: Side };
  readonly path: MiddlePath;
  readonly whole: boolean;
}

export interface LifetimeWorkings {
  readonly grade: Grade;
  readonly saved: Working;
  readonly simple: Working;
  readonly discounted: Working;
  readonly netPresentValue: Working;
  readonly pumpAnnual: Working;
  readonly besideAnnual: Working;
}

const YEARLY = 'a year: units × (1 + growth)^(year − 1) + standing charge + service, at its end';
const SOURCE = 'geometric gradient series and present worth, any textbook of engineering economics';

/** The workings of all figures; the purchase stands in them only where it is counted. */
export function lifetimeWorkings(parts: WorkingParts): LifetimeWorkings {
  const { inputs, path, pump, beside, sides } = parts;
  const growths = [inputs.electricityGrowth.line, inputs.fuelGrowth.line, inputs.growthSpread.line];
  const bought = parts.whole ? purchaseLines(parts) : [];
  const yearly = [costLine('heat pump', pump), costLine('the other', beside)];
  const lasting = [inputs.years.line, ...growths];
  const worth = [...bought, ...yearly, ...lasting, inputs.discount.line];
  const left = [leftLine('heat pump', sides.pump), leftLine('the other', sides.beside)];
  const make = (
    title: string,
    formula: string,
    lines: readonly WorkingInput[],
    value: number,
    unit: string,
  ): Working => ({
    title,
    formula,
    inputs: lines,
    result: { value, unit },
    source: SOURCE,
    steps: [pump.cost.working, beside.cost.working].map(({ steps: _, ...rest }, i) => ({
      ...rest,
      title: `${rest.title}: ${i === 0 ? 'heat pump' : 'the other'}`,
    })),
  });
  return {
    grade: weakestGrade([...worth, ...left].map(({ grade }) => grade)),
    saved: make(
      'Saved over the years with the heat pump',
      `all that is paid with the other − all that is paid with the heat pump; ${YEARLY}`,
      [...bought, ...yearly, ...lasting],
      path.saved,
      'p',
    ),
    simple: make(
      'Years until the purchase is brought back',
      'the year from which all that was paid with the heat pump stays below the other',
      [...bought, ...yearly, ...lasting],
      ...broughtBack(path.simple, inputs.years.value),
    ),
    discounted: make(
      'Years until it is brought back, in money of today’s worth',
      'the same, each amount / (1 + discount)^year',
      worth,
      ...broughtBack(path.discounted, inputs.years.value),
    ),
    netPresentValue: make(
      'Worth today of all that is saved',
      'sum of each year’s difference / (1 + discount)^year, purchases counted, less the worth of life left at the end',
      [...worth, ...left],
      path.netPresentValue,
      'p',
    ),
    pumpAnnual: make(
      'Level cost a year, heat pump',
      'worth today of all payments / ((1 − (1 + discount)^−years) / discount)',
      [...worth, ...left],
      path.pumpAnnual,
      'pence a year',
    ),
    besideAnnual: make(
      'Level cost a year, the other',
      'worth today of all payments / ((1 − (1 + discount)^−years) / discount)',
      [...worth, ...left],
      path.besideAnnual,
      'pence a year',
    ),
  };
}

/** A payback that does not come is no number; what can be said is that so many years are too few. */
const broughtBack = (found: number | null, years: number): [number, string] =>
  found === null ? [years, 'years are too few'] : [found, 'years'];

function costLine(whose: string, { cost }: SystemResult): WorkingInput {
  return {
    name: `Cost of the first year, ${whose}`,
    value: cost.value,
    unit: 'p',
    grade: cost.grade,
    origin: 'sum below',
  };
}

function leftLine(whose: string, { outlays }: Side): WorkingInput {
  const origin = 'price × years left / life, by a straight line; common practice, no source';
  return { name: `Life left at the end, ${whose}`, value: outlays.leftPence, unit: 'p', grade: 'assumed', origin };
}

function purchaseLines({ purchase, inputs }: WorkingParts): WorkingInput[] {
  const line = (name: string, given: Household['purchase']['heatPumpGBP']): WorkingInput[] =>
    given ? [{ name, unit: 'GBP', ...given }] : [];
  return [
    ...line('Heat pump, put in', purchase.heatPumpGBP),
    ...line('Grant', purchase.grantGBP),
    ...line('Replacing the present system instead', purchase.replacementGBP),
    ...line('The machine again', purchase.renewalGBP),
    inputs.pumpLife.line,
    ...(purchase.replacementGBP ? [inputs.replacementLife.line, inputs.presentYearsLeft.line] : []),
  ];
}
