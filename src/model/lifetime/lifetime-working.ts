/** The sums behind the figures of the years to come. */
import type { SystemResult } from '../shapes/appraisal.ts';
import type { Household } from '../shapes/household.ts';
import type { LifetimeInputs } from '../shapes/lifetime.ts';
import { type Told, tell, type Wording } from '../shapes/told.ts';
import type { Working, WorkingInput } from '../shapes/working.ts';
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
  readonly saved: Working;
  readonly simple: Working;
  readonly discounted: Working;
  readonly netPresentValue: Working;
  readonly pumpAnnual: Working;
  readonly besideAnnual: Working;
}

const HEAT_PUMP = tell('heat-pump');
const THE_OTHER = tell('the-other');
const SOURCE = tell('present-worth-source');

/** The workings of all figures; the purchase stands in them only where it is counted. */
export function lifetimeWorkings(parts: WorkingParts): LifetimeWorkings {
  const { inputs, path, pump, beside, sides } = parts;
  const growths = [inputs.electricityGrowth.line, inputs.fuelGrowth.line, inputs.growthSpread.line];
  const bought = parts.whole ? purchaseLines(parts) : [];
  const yearly = [costLine(HEAT_PUMP, pump), costLine(THE_OTHER, beside)];
  const lasting = [inputs.years.line, ...growths];
  const worth = [...bought, ...yearly, ...lasting, inputs.discount.line];
  const left = [leftLine(HEAT_PUMP, sides.pump), leftLine(THE_OTHER, sides.beside)];
  const make = (title: Told, formula: Told, lines: readonly WorkingInput[], value: number, unit: Wording): Working => ({
    title,
    formula,
    inputs: lines,
    result: { value, unit },
    source: SOURCE,
    steps: [pump.cost.working, beside.cost.working].map(({ steps: _, ...rest }, i) => ({
      ...rest,
      title: tell('cost-of-year-of', { whose: i === 0 ? HEAT_PUMP : THE_OTHER }),
    })),
  });
  return {
    saved: make(tell('saved-over-years'), tell('paid-less-paid'), [...bought, ...yearly, ...lasting], path.saved, 'p'),
    simple: make(
      tell('years-until-back'),
      tell('year-stays-below'),
      [...bought, ...yearly, ...lasting],
      ...broughtBack(path.simple, inputs.years.value),
    ),
    discounted: make(
      tell('years-until-back-today'),
      tell('each-discounted'),
      worth,
      ...broughtBack(path.discounted, inputs.years.value),
    ),
    netPresentValue: make(
      tell('worth-of-saved'),
      tell('sum-of-differences'),
      [...worth, ...left],
      path.netPresentValue,
      'p',
    ),
    pumpAnnual: make(tell('level-cost-pump'), tell('worth-by-annuity'), [...worth, ...left], path.pumpAnnual, 'p'),
    besideAnnual: make(tell('level-cost-other'), tell('worth-by-annuity'), [...worth, ...left], path.besideAnnual, 'p'),
  };
}

/** A payback that does not come is no number; what can be said is that so many years are too few. */
const broughtBack = (found: number | null, years: number): [number, Told] =>
  found === null ? [years, tell('too-few-years')] : [found, tell('years')];

function costLine(whose: Told, { cost }: SystemResult): WorkingInput {
  return {
    name: tell('first-year-of', { whose }),
    value: cost.value,
    unit: 'p',
    grade: cost.grade,
    origin: tell('sum-below'),
  };
}

function leftLine(whose: Told, { outlays }: Side): WorkingInput {
  const origin = tell('straight-line');
  return { name: tell('life-left-of', { whose }), value: outlays.leftPence, unit: 'p', grade: 'assumed', origin };
}

function purchaseLines({ purchase, inputs }: WorkingParts): WorkingInput[] {
  const line = (name: Told, given: Household['purchase']['heatPumpGBP']): WorkingInput[] =>
    given ? [{ name, unit: 'GBP', ...given }] : [];
  return [
    ...line(tell('pump-put-in'), purchase.heatPumpGBP),
    ...line(tell('grant'), purchase.grantGBP),
    ...line(tell('present-replaced'), purchase.replacementGBP),
    ...line(tell('machine-again'), purchase.renewalGBP),
    inputs.pumpLife.line,
    ...(purchase.replacementGBP ? [inputs.replacementLife.line, inputs.presentYearsLeft.line] : []),
  ];
}
