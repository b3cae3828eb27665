/** Yearly heat for hot water: what is drawn off, and what the cylinder loses. */
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { CYLINDER_LITRES, HOT_C, PEOPLE } from '../shapes/usual-home.ts';
import type { Grade, Working, WorkingInput } from '../shapes/working.ts';
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

const sum = (values: readonly number[]) => values.reduce((total, v) => total + v, 0);

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
  const kWh = sum(monthlyKWh);
  return {
    monthlyKWh,
    kWh,
    errorKWh: draw.share * sum(draw.monthlyKWh),
    grade: draw.grade,
    people: people.value,
    working: {
      title: 'Heat for hot water',
      formula: 'hot water drawn off + cylinder loss × days',
      inputs: [
        {
          name: 'hot water drawn off',
          value: sum(draw.monthlyKWh),
          unit: 'kWh',
          grade: draw.grade,
          origin: 'sum below',
        },
        cylinder.input,
      ],
      result: { value: kWh, unit: 'kWh a year' },
      source: `${reference.hotWater.source}; cylinder loss SAP Tables 2, 2a, 2b`,
      steps: [draw.working],
    },
  };
}

function findPeople(home: Household['home']): WorkingInput & { value: number } {
  if (home.people) return { name: 'people', unit: '', ...home.people };
  if (home.floorAreaM2) {
    const value = peopleOfFloorArea(home.floorAreaM2.value);
    return { name: 'people', value, unit: '', grade: 'assumed', origin: 'from the floor area, SAP Table 1b' };
  }
  return { name: 'people', value: PEOPLE, unit: '', grade: 'assumed', origin: 'mean British household' };
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
    const hot = hotC ?? { value: HOT_C, grade: 'assumed' as const, origin: 'SAP 10.2 Appendix J' };
    const monthlyKWh = drawOfLitres(litresPerDay.value, hot.value, monthDays, reference.hotWater);
    const inputs = [
      { name: 'hot water', unit: 'litres a day', ...litresPerDay },
      { name: 'temperature', unit: '°C', ...hot },
    ];
    const share = litresPerDay.grade === 'measured' ? WATER_ERROR.litresMeasured : WATER_ERROR.litres;
    const formula = '4.18 × litres a day × days × (hot − cold mains)/3600, month by month';
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
        name: 'shower',
        value: SHOWER_LITRES_PER_MINUTE,
        unit: 'litres a minute',
        grade: 'assumed',
        origin: 'vented mixer',
      }
    : { name: 'shower', value: 'electric', grade: 'estimated', origin: 'typed; it heats its own water' };
  const guessed = people.grade === 'assumed';
  return {
    monthlyKWh: kWh,
    share: guessed ? WATER_ERROR.peopleGuessed : WATER_ERROR.people,
    grade: guessed ? 'assumed' : 'estimated',
    working: drawWorking(
      'showers, baths and other uses of so many people, month by month',
      [people, shower],
      kWh,
      reference,
    ),
  };
}

function drawWorking(
  formula: string,
  inputs: readonly WorkingInput[],
  monthlyKWh: readonly number[],
  reference: Reference,
): Working {
  const result = { value: sum(monthlyKWh), unit: 'kWh a year' };
  return { title: 'Hot water drawn off', formula, inputs, result, source: reference.hotWater.source };
}

function reckonCylinder(hotWater: Household['hotWater']): { kWhPerDay: number; input: WorkingInput } {
  const name = 'cylinder loss';
  const unit = 'kWh a day';
  if (hotWater.cylinderLossKWhPerDay) {
    const { value } = hotWater.cylinderLossKWhPerDay;
    return { kWhPerDay: value, input: { name, unit, ...hotWater.cylinderLossKWhPerDay } };
  }
  const litres = hotWater.cylinderLitres?.value ?? CYLINDER_LITRES;
  const value = cylinderLossKWhPerDay({ litres, foamMm: FOAM_MM, separatelyTimed: true });
  const grade = hotWater.cylinderLitres ? 'estimated' : 'assumed';
  const origin = `${litres} litres behind ${FOAM_MM} mm of foam, separately timed; SAP Tables 2, 2a, 2b`;
  return { kWhPerDay: value, input: { name, value, unit, grade, origin } };
}
