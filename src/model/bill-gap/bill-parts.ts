/** The gap between a bill and the promise in parts, each with its sum. */
import type { BillCheckInput, BillCheckPart } from '../appraisal/promise.ts';
import type { Grade, Working, WorkingInput } from '../working.ts';
import { weakestGrade } from '../working.ts';
import type { ActualWeather } from './actual-weather.ts';
import { pennyParts } from './penny-parts.ts';
import type { PromisedDays } from './promised-days.ts';
import { shapley } from './shapley.ts';

/** The three things that a bill's cost is made of here, as promised or as they came. */
export interface CostSide {
  readonly pencePerKWh: number;
  /** Units for the rooms in the typical weather or in the weather that came, kWh. */
  readonly spaceKWh: number;
  /** Units beyond those expected, kWh: 0 in the promise. */
  readonly unexplainedKWh: number;
}

const SOURCE = 'L. S. Shapley, A Value for n-Person Games (1953)';
const FORMULA = '(units for rooms + other units + unexplained units) × price; mean over every order of the changes';

/**
 * Parts [pence, whole] of actual − equal share of the promised year; they sum to it exactly.
 * The calendar comes first and by itself: it is known before any bill. What remains is split by Shapley value over
 * price, weather and the rest, with cost = (space + other + unexplained) × price.
 */
export function billParts(input: {
  readonly bill: BillCheckInput;
  readonly promised: PromisedDays;
  readonly weather: ActualWeather | null;
  readonly from: CostSide;
  readonly to: CostSide;
  readonly promisedPence: number;
  readonly seasonPence: number;
  readonly actualPence: number;
}): BillCheckPart[] {
  const { bill, promised, weather, from, to, promisedPence, seasonPence, actualPence } = input;
  const cost = ([price, space, unexplained]: readonly number[]) => (space! + promised.otherKWh + unexplained!) * price!;
  const raw = shapley(
    [from.pencePerKWh, from.spaceKWh, from.unexplainedKWh],
    [to.pencePerKWh, to.spaceKWh, to.unexplainedKWh],
    cost,
  );
  const whole = actualPence - seasonPence;
  // A charge on a bill without units, and the halves of a penny lost in rounding both ends, belong to the rest.
  raw[2]! += whole - (raw[0]! + raw[1]! + raw[2]!);
  const pence = pennyParts(weather ? raw : [raw[0]!, raw[2]!], whole);
  return [
    daysPart(bill, promised, promisedPence, seasonPence),
    pricePart(bill, from, to, pence[0]!),
    ...(weather ? [weatherPart(promised, weather, from, to, pence[1]!)] : []),
    restPart(bill, weather !== null, promised, to, pence.at(-1)!),
  ];
}

function part(cause: string, pence: number, working: Omit<Working, 'result'>, grade: Grade): BillCheckPart {
  return { cause, pence, grade, working: { ...working, result: { value: pence, unit: 'pence' } } };
}

const line = (name: string, value: number | string, unit: string, grade: Grade, origin: string): WorkingInput => ({
  name,
  value,
  unit,
  grade,
  origin,
});

function daysPart(
  bill: BillCheckInput,
  promised: PromisedDays,
  promisedPence: number,
  seasonPence: number,
): BillCheckPart {
  const inputs = [
    line('Units of the promised year', promised.yearPence, 'pence', 'estimated', 'the promise'),
    line('Days of the bill', promised.days, 'days', 'measured', `the bill, ${bill.from} to ${bill.to}`),
    line('Equal share of the year for these days', promisedPence, 'pence', 'estimated', 'worked out'),
    line('The promise for exactly these days', seasonPence, 'pence', 'estimated', 'typical year of the promise'),
  ];
  const formula = 'the promise for exactly these days − equal share of the year';
  return part('days', seasonPence - promisedPence, { title: 'Days of the year', formula, inputs }, 'estimated');
}

function pricePart(bill: BillCheckInput, from: CostSide, to: CostSide, pence: number): BillCheckPart {
  const origin = bill.totalPence === undefined ? 'the bill' : 'the bill: cost of the units ÷ units';
  const inputs = [
    line('Price promised', from.pencePerKWh, 'p/kWh', 'measured', 'the promise, mean over these days'),
    line('Price on the bill', to.pencePerKWh, 'p/kWh', 'measured', origin),
  ];
  return part('price', pence, { title: 'Unit price', formula: FORMULA, inputs, source: SOURCE }, 'measured');
}

function weatherPart(
  promised: PromisedDays,
  weather: ActualWeather,
  from: CostSide,
  to: CostSide,
  pence: number,
): BillCheckPart {
  const typical = promised.degreeDays.reduce((sum, value) => sum + value, 0);
  const inputs = [
    line('Degree days of a typical year, these days', typical, 'K·day', 'estimated', 'typical year of the promise'),
    line('Degree days that came', weather.degreeDays, 'K·day', weather.grade, weather.origin),
    line('Units for rooms a degree day', promised.kWhPerDegreeDay, 'kWh', 'estimated', 'the promise'),
    line('Units for rooms in typical weather', from.spaceKWh, 'kWh', 'estimated', 'the promise'),
    line('Units for rooms in the weather that came', to.spaceKWh, 'kWh', 'estimated', 'worked out'),
  ];
  const grade = weakestGrade([weather.grade, 'estimated']);
  return part('weather', pence, { title: 'Weather', formula: FORMULA, inputs, source: SOURCE }, grade);
}

function restPart(
  bill: BillCheckInput,
  weatherKnown: boolean,
  promised: PromisedDays,
  to: CostSide,
  pence: number,
): BillCheckPart {
  const meterGrade: Grade = bill.readings === 'estimated' ? 'estimated' : 'measured';
  const inputs = [
    line('Units expected', to.spaceKWh + promised.otherKWh, 'kWh', 'estimated', 'the promise'),
    line('Units on the bill', bill.boughtKWh, 'kWh', meterGrade, `the bill, ${bill.readings} readings`),
    line('Other electricity taken off', bill.otherKWh, 'kWh', bill.otherKWh > 0 ? 'estimated' : 'measured', 'the bill'),
    line('Units not expected', to.unexplainedKWh, 'kWh', 'estimated', 'worked out'),
  ];
  const joined = `Heat used, hot water, efficiency and other electricity${weatherKnown ? '' : ', and weather'}, joined`;
  const assumed = bill.readings !== 'actual' || bill.meter === 'whole-house' || !weatherKnown;
  const grade: Grade = assumed ? 'assumed' : 'estimated';
  return part('rest', pence, { title: joined, formula: FORMULA, inputs, source: SOURCE }, grade);
}
