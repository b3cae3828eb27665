/** Yearly heat for hot water: what is drawn off, and what the cylinder loses. */

import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { type Told, tell } from '../shapes/told.ts';
import { CYLINDER_LITRES, HOT_C, PEOPLE } from '../shapes/usual-home.ts';
import type { Grade, Working, WorkingInput } from '../shapes/working.ts';
import { sumOf } from '../units/sums.ts';
import { cylinderLossKWhPerDay } from './cylinder-loss.ts';
import { WATER_ERROR } from './demand-assumptions.ts';
import { drawOfLitres, drawOfPeople } from './hot-water-draw.ts';
import { peopleOfFloorArea } from './occupancy.ts';

export interface HotWaterDemand {
  readonly monthlyKWh: readonly number[];
  readonly kWh: number;
  /** One standard error. */
  readonly errorKWh: number;
  readonly grade: Grade;
  readonly people: number;
  readonly working: Working;
}

const SHOWER_LITRES_PER_MINUTE = 7;
const FOAM_MM = 50;

/**
 * Hot water of a household, cylinder loss included [kWh a year and by month], with one standard error.
 * Drawn off by litres a day where they are known, else by people, else by floor area. Source: SAP 10.2 Appendix J, SAP Table 2.
 */
export function reckonHotWater(
  household: Household,
  monthDays: readonly number[],
  reference: Reference,
): HotWaterDemand {
  const people = findPeople(household.home);
  const draw = reckonDraw(household, people, monthDays, reference);
  const cylinder = reckonCylinder(household.hotWater);
  const monthlyKWh = monthDays.map((days, m) => draw.monthlyKWh[m]! + cylinder.kWhPerDay * days);
  const kWh = sumOf(monthlyKWh);
  return {
    monthlyKWh,
    kWh,
    errorKWh: draw.share * sumOf(draw.monthlyKWh),
    grade: draw.grade,
    people: people.value,
    working: {
      title: tell('water-heat'),
      formula: tell('drawn-and-cylinder'),
      inputs: [
        {
          name: tell('drawn-off'),
          value: sumOf(draw.monthlyKWh),
          unit: 'kWh',
          grade: draw.grade,
          origin: tell('sum-below'),
        },
        cylinder.input,
      ],
      result: { value: kWh, unit: tell('kwh-a-year') },
      source: tell('water-and-cylinder-source', { source: reference.hotWater.source }),
      steps: [draw.working],
    },
  };
}

function findPeople(home: Household['home']): WorkingInput & { value: number } {
  if (home.people) return { name: tell('people'), unit: '', ...home.people };
  if (home.floorAreaM2) {
    const value = peopleOfFloorArea(home.floorAreaM2.value);
    return { name: tell('people'), value, unit: '', grade: 'assumed', origin: tell('people-by-area') };
  }
  return { name: tell('people'), value: PEOPLE, unit: '', grade: 'assumed', origin: tell('usual-people') };
}

interface Draw {
  readonly monthlyKWh: readonly number[];
  readonly share: number;
  readonly grade: Grade;
  readonly working: Working;
}

function reckonDraw(
  household: Household,
  people: WorkingInput & { value: number },
  monthDays: readonly number[],
  reference: Reference,
): Draw {
  const { litresPerDay, hotC } = household.hotWater;
  if (litresPerDay) {
    const hot = hotC ?? { value: HOT_C, grade: 'assumed' as const, origin: tell('water-temperature-source') };
    const monthlyKWh = drawOfLitres(litresPerDay.value, hot.value, monthDays, reference.hotWater);
    const inputs = [
      { name: tell('hot-water'), unit: tell('litres-a-day'), ...litresPerDay },
      { name: tell('temperature'), unit: '°C', ...hot },
    ];
    const share = litresPerDay.grade === 'measured' ? WATER_ERROR.litresMeasured : WATER_ERROR.litres;
    const formula = tell('litres-by-temperature');
    return {
      monthlyKWh,
      share,
      grade: litresPerDay.grade,
      working: drawWorking(formula, inputs, monthlyKWh, reference),
    };
  }
  const showersDraw = household.present.hotWaterFrom !== 'electric-shower';
  const use = { people: people.value, showerLitresPerMinute: SHOWER_LITRES_PER_MINUTE, showersDraw };
  const { kWh } = drawOfPeople(use, monthDays, reference.hotWater);
  const shower: WorkingInput = showersDraw
    ? {
        name: tell('shower'),
        value: SHOWER_LITRES_PER_MINUTE,
        unit: tell('litres-a-minute'),
        grade: 'assumed',
        origin: tell('vented-mixer'),
      }
    : { name: tell('shower'), value: tell('electric-shower'), grade: 'estimated', origin: tell('shower-heats-itself') };
  const guessed = people.grade === 'assumed';
  return {
    monthlyKWh: kWh,
    share: guessed ? WATER_ERROR.peopleGuessed : WATER_ERROR.people,
    grade: guessed ? 'assumed' : 'estimated',
    working: drawWorking(tell('people-by-month'), [people, shower], kWh, reference),
  };
}

function drawWorking(
  formula: Told,
  inputs: readonly WorkingInput[],
  monthlyKWh: readonly number[],
  reference: Reference,
): Working {
  const result = { value: sumOf(monthlyKWh), unit: tell('kwh-a-year') };
  return { title: tell('water-drawn'), formula, inputs, result, source: reference.hotWater.source };
}

function reckonCylinder(hotWater: Household['hotWater']): { kWhPerDay: number; input: WorkingInput } {
  const name = tell('cylinder-loss');
  const unit = tell('kwh-a-day');
  if (hotWater.cylinderLossKWhPerDay) {
    const { value } = hotWater.cylinderLossKWhPerDay;
    return { kWhPerDay: value, input: { name, unit, ...hotWater.cylinderLossKWhPerDay } };
  }
  const litres = hotWater.cylinderLitres?.value ?? CYLINDER_LITRES;
  const value = cylinderLossKWhPerDay({ litres, foamMm: FOAM_MM, separatelyTimed: true });
  const grade = hotWater.cylinderLitres ? 'estimated' : 'assumed';
  const origin = tell('foamed-cylinder', { litres, foamMm: FOAM_MM });
  return { kWhPerDay: value, input: { name, value, unit, grade, origin } };
}
