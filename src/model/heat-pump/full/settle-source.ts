/** Which temperatures the heat is taken at: air, brine as typed, or the ground of the region with its array. */

import { daysInMonth } from '../../calendar/civil.ts';
import type { Question } from '../../shapes/appraisal.ts';
import type { Household } from '../../shapes/household.ts';
import type { ClimateRegion, GroundFacts, Reference, Sourced, Value } from '../../shapes/reference.ts';
import { type Told, tell, type Wording } from '../../shapes/told.ts';
import type { WorkingInput } from '../../shapes/working.ts';
import { sumOf } from '../../units/sums.ts';
import { smoothDailyMeans } from '../../year/mean-preserving.ts';
import type { TypicalYear } from '../../year/typical-year.ts';
import { boreholeTemperature, type GroundYear, groundTemperature, perDay } from './ground-temperature.ts';
import type { Source } from './source.ts';

export interface SettledSource {
  readonly source: Source;
  readonly inputs: readonly WorkingInput[];
  readonly questions: readonly Question[];
}

/** Depths that make sense of a kind of array, m; a depth outside them is most likely meant for the other kind. */
const LIKELY_DEPTH_M = { vertical: [15, 400], horizontal: [0.3, 15] } as const;

/**
 * The ground of a climate region: yearly mean and half swing of the surface from the monthly means of the air.
 * Mean = air + 0.7 K, half swing = 1.22 × that of the air. Source: `reference.ground`.
 */
export function groundOfRegion(region: ClimateRegion, facts: GroundFacts): GroundYear {
  const { monthlyMeanC } = region;
  const meanAirC = sumOf(monthlyMeanC) / 12;
  const halfSwingK = (Math.max(...monthlyMeanC) - Math.min(...monthlyMeanC)) / 2;
  return {
    meanC: meanAirC + facts.meanAboveAirK.value,
    swingK: facts.swingOverAir.value * halfSwingK,
    coldestDay: facts.coldestDay.value,
    diffusivityM2PerDay: perDay(facts.diffusivityM2PerS.value),
  };
}

export function settleSource({ machine }: Household, reference: Reference, year: TypicalYear): SettledSource {
  if (machine.source === 'air') {
    const input: WorkingInput = {
      name: tell('source'),
      value: tell('outdoor-air'),
      grade: 'estimated',
      origin: tell('typical-year-of', { region: year.region.name }),
    };
    return { source: { kind: 'air' }, inputs: [input], questions: [] };
  }
  const brine = machine.full?.brineMonthlyC;
  if (brine) {
    const monthDays = Array.from({ length: 12 }, (_, m) => daysInMonth(year.slots.year, m + 1));
    const byDayC = Float64Array.from(smoothDailyMeans(brine.value, monthDays));
    const value = brine.value.map((c) => c.toFixed(1)).join(', ');
    const input: WorkingInput = {
      name: tell('brine-by-month'),
      value,
      unit: '°C',
      grade: brine.grade,
      origin: brine.origin,
    };
    return { source: { kind: 'typed', byDayC }, inputs: [input], questions: [] };
  }
  return groundArray(machine, reference.ground, year);
}

function groundArray(machine: Household['machine'], facts: GroundFacts, year: TypicalYear): SettledSource {
  const array = machine.full?.ground;
  const kind = array?.kind ?? 'vertical';
  const usual = facts.arrays[kind];
  const questions: Question[] = [];
  const [least, most] = LIKELY_DEPTH_M[kind];
  const typedDepth = array?.depthM;
  const depthFits = typedDepth !== undefined && typedDepth.value >= least && typedDepth.value <= most;
  if (typedDepth && !depthFits) {
    questions.push({
      code: 'array-depth-refused',
      weight: 'refusal',
      stage: 'machine',
      field: 'machine.full.ground.depthM',
      data: { found: typedDepth.value, low: least, high: most, kind },
    });
  }
  const depth = depthFits ? typedDepth : assumed(usual.depthM);
  const drop = array?.dropK ?? assumed(usual.dropK);
  const size = array?.size ?? { value: 1, grade: 'assumed' as const, origin: tell('usual-for-loss') };
  const ground = groundOfRegion(year.region, facts);
  const days = year.slots.dayStart.length - 1;
  const atDay = (day: number) =>
    kind === 'vertical'
      ? boreholeTemperature(ground.meanC, facts.gradientKPerM.value, depth.value)
      : groundTemperature(ground, depth.value, day + 1);
  const line = (name: Told, unit: Wording, given: { value: number; grade: WorkingInput['grade']; origin: Wording }) =>
    ({ name, unit, value: given.value, grade: given.grade, origin: given.origin }) satisfies WorkingInput;
  return {
    source: {
      kind: 'ground',
      undisturbedC: Float64Array.from({ length: days }, (_, day) => atDay(day)),
      dropK: drop.value / size.value,
    },
    inputs: [
      {
        name: tell('array'),
        value: tell(kind === 'vertical' ? 'boreholes' : 'trenches'),
        grade: array ? 'estimated' : 'assumed',
        origin: tell(array ? 'typed' : 'boreholes-untyped'),
      },
      line(tell('depth'), 'm', depth),
      line(tell('surface-mean'), '°C', {
        value: ground.meanC,
        grade: 'assumed',
        origin: facts.meanAboveAirK.source,
      }),
      line(tell('brine-drop'), 'K', drop),
      line(tell('array-size'), tell('of-the-usual'), size),
    ],
    questions,
  };
}

const PROVENANCES = {
  read: 'by-reading',
  memory: 'by-memory',
  computed: 'by-computing',
  'common practice, no source': 'by-custom',
} as const;
/** How a value of the tables was come by, and its source. */
export const tellSource = ({ provenance, source }: Sourced): Told => tell(PROVENANCES[provenance], { source });

const assumed = (value: Value) => ({
  value: value.value,
  grade: 'assumed' as const,
  origin: tellSource(value),
});
