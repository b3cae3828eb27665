/** Which heat demand the comparison rests on: one way that the installer picked, or all of them together. */
import type { DemandEstimate, Question } from '../shapes/appraisal.ts';
import type { Household } from '../shapes/household.ts';
import { type Told, tell } from '../shapes/told.ts';
import { BASE_C } from '../shapes/usual-home.ts';
import type { Grade, Working, WorkingInput } from '../shapes/working.ts';
import { type Combined, combine } from './combine.ts';
import { TEN_PERCENT } from './demand-assumptions.ts';
import { leanOf, WIDEST_SIGMA } from './figure.ts';
import type { Gathered } from './gather-estimates.ts';
import { ask } from './heat-questions.ts';
import type { HotWaterDemand } from './hot-water.ts';

export type Choice = NonNullable<Household['heat']['use']>;

export interface Chosen {
  readonly chosen: Choice;
  readonly space: Reckoned;
  readonly water: Reckoned;
  readonly baseC: number;
  readonly questions: readonly Question[];
}

export interface Reckoned {
  readonly value: number;
  readonly error: number;
  readonly grade: Grade;
  readonly working: Working;
  /** What it was raised by for the sum of both; its range stays where it was. */
  readonly lean?: number;
}

const nameOf = ({ way }: DemandEstimate): Told => tell(`from-${way}`);

/** Whether a record knows rooms and hot water together, so that what it takes from the one it gives to the other. */
export const restsOnRecord = (of: {
  readonly estimates: readonly DemandEstimate[];
  readonly chosen: Choice;
}): boolean => of.estimates.some(({ way }) => way === 'record') && (of.chosen === 'record' || of.chosen === 'together');

/** Heat for rooms and hot water [kWh a year], by the way chosen, else all together by inverse variance. */
export function chooseDemand(household: Household, gathered: Gathered, water: HotWaterDemand): Chosen {
  const wish = household.heat.use ?? 'together';
  const there = wish === 'together' || gathered.estimates.some((e) => e.way === wish);
  const chosen = there ? wish : 'together';
  const used = gathered.estimates.filter((e) => chosen === 'together' || e.way === chosen);
  const [rooms, drawn] = [joinSpace(used), joinWater(used, water)];
  return {
    chosen,
    space: lean(rooms, drawn),
    water: lean(drawn, rooms),
    baseC: findBase(household, gathered, chosen),
    questions: there
      ? []
      : [ask('chosen-way-missing', 'question', gathered.missing.find(({ way }) => way === wish)!, 'heat.use')],
  };
}

function findBase(household: Household, gathered: Gathered, chosen: Choice): number {
  const { recordBaseC, heatLossBaseC } = gathered;
  const typed = household.heat.baseC?.value;
  if (chosen === 'heat-loss') return heatLossBaseC ?? typed ?? BASE_C;
  if (chosen === 'record' || chosen === 'together') return recordBaseC ?? typed ?? heatLossBaseC ?? BASE_C;
  return typed ?? heatLossBaseC ?? recordBaseC ?? BASE_C;
}

const inputOf = (e: DemandEstimate, kWh: number, error: number): WorkingInput => ({
  name: nameOf(e),
  value: kWh,
  unit: 'kWh',
  grade: e.grade,
  origin: tell('sum-below-with-error', { errorKWh: error }),
});

function joinSpace(used: readonly DemandEstimate[]): Reckoned {
  const only = used[0]!;
  if (used.length === 1) {
    return { value: only.spaceKWh, error: only.spaceErrorKWh, grade: only.grade, working: only.working };
  }
  const joined = combine(used.map((e) => ({ value: e.spaceKWh, error: e.spaceErrorKWh, grade: e.grade })));
  const inputs = used.map((e) => inputOf(e, e.spaceKWh, e.spaceErrorKWh));
  const steps = used.map((e) => e.working);
  return { ...joined, working: joinedWorking(tell('room-heat'), joined, inputs, steps) };
}

/** What estimates that contradict each other add to a cost: more than their middle, since one may be far too low. */
function lean(reckoned: Reckoned, beside: Reckoned): Reckoned {
  const times = leanOf(reckoned.value, reckoned.error, beside.value);
  if (times === 1) return reckoned;
  const { grade, working } = reckoned;
  const value = reckoned.value * times;
  return {
    value,
    error: reckoned.error * times,
    lean: times,
    grade,
    working: {
      title: working.title,
      formula: tell('middle-by-lean'),
      inputs: [
        { name: tell('middle-of-ways'), value: reckoned.value, unit: 'kWh', grade, origin: tell('sum-below') },
        { name: tell('lean'), value: times, unit: tell('times'), grade: 'assumed', origin: tell('lean-origin') },
      ],
      result: { value, unit: tell('kwh-a-year') },
      source: tell('widest-range', {
        low: Math.exp(-TEN_PERCENT * WIDEST_SIGMA),
        high: Math.exp(TEN_PERCENT * WIDEST_SIGMA),
      }),
      steps: [working],
    },
  };
}

/** The record's hot water has already been joined with the method; the certificate's stands beside either. */
function joinWater(used: readonly DemandEstimate[], method: HotWaterDemand): Reckoned {
  const stated = used.filter((e) => e.waterKWh !== undefined);
  const fromMethod: Reckoned = {
    value: method.kWh,
    error: method.errorKWh,
    grade: method.grade,
    working: method.working,
  };
  const parts: (Reckoned & { name: Told })[] = stated.map((e) => ({
    name: nameOf(e),
    value: e.waterKWh!,
    error: e.waterErrorKWh!,
    grade: e.grade,
    working: e.way === 'record' ? e.working.steps!.at(-1)! : certificateWater(e),
  }));
  if (
    !stated.some((e) => e.way === 'record') &&
    used.some((e) => e.way !== 'certificate' || e.waterKWh === undefined)
  ) {
    parts.push({ name: tell('from-water-method'), ...fromMethod });
  }
  if (parts.length === 1) return parts[0]!;
  const joined = combine(parts);
  const inputs = parts.map((part) => ({
    name: part.name,
    value: part.value,
    unit: 'kWh',
    grade: part.grade,
    origin: tell('sum-below-with-error', { errorKWh: part.error }),
  }));
  const steps = parts.map((part) => part.working);
  return { ...joined, working: joinedWorking(tell('water-heat'), joined, inputs, steps) };
}

function certificateWater(e: DemandEstimate): Working {
  return {
    title: tell('water-heat-by-certificate'),
    formula: tell('certificate-formula'),
    inputs: [inputOf(e, e.waterKWh!, e.waterErrorKWh!)],
    result: { value: e.waterKWh!, unit: tell('kwh-a-year') },
    source: tell('certificate'),
  };
}

function joinedWorking(
  title: Told,
  joined: Combined,
  inputs: readonly WorkingInput[],
  steps: readonly Working[],
): Working {
  const shares = inputs.map(({ name }, i) => tell('share-of-way', { percent: 100 * joined.shares[i]!, way: name }));
  return {
    title,
    formula: tell('mean-of-ways', { shares }),
    inputs,
    result: { value: joined.value, unit: tell('kwh-a-year') },
    source: tell('inverse-variance'),
    steps,
  };
}
