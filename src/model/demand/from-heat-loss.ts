/** Way (b): yearly heat from the heat loss and the degree days to the base temperature that gains imply. */
import type { DemandEstimate, Question } from '../shapes/appraisal.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { tell, type Wording } from '../shapes/told.ts';
import { type Grade, type Working, weakestGrade } from '../shapes/working.ts';
import { degreeDaysFromMeans } from '../weather/degree-days.ts';
import { type DesignOutdoor, designOutdoor } from '../weather/design-outdoor.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import { type BaseTemperature, findBaseTemperature } from './base-temperature.ts';
import { HEAT_LOSS_ERROR } from './demand-assumptions.ts';
import { together } from './figure.ts';
import { ask } from './heat-questions.ts';

export interface HeatLossResult {
  readonly estimate?: DemandEstimate;
  readonly missing?: string;
  readonly baseC?: number;
  /** Heat loss coefficient of the typed heat loss, W/K. */
  readonly wPerK?: number;
  readonly questions: readonly Question[];
}

interface Room {
  readonly value: number;
  readonly grade: Grade;
  readonly origin: Wording;
}

/** Beyond these a coefficient is hardly a home: W/K, and W/K per m² of floor. Common practice, no source. */
const UNLIKELY = { least: 20, most: 2500, leastPerM2: 0.3, mostPerM2: 8 };

/** One standard error of a design temperature taken for the region, K. Common practice, no source. */
const DESIGN_ERROR_K = 1.5;

/** Heat loss coefficient [W/K] of a design load [kW] between room and design outdoor temperature [°C]. */
export function coefficientOfDesignLoad(heatLossKW: number, roomC: number, designOutdoorC: number): number {
  return (heatLossKW * 1000) / (roomC - designOutdoorC);
}

/**
 * Heat for the rooms of a typical year [kWh] = W/K × degree days × 24/1000, with one standard error.
 * Refused for a heat loss of nothing and for a room no warmer than the design outdoor temperature.
 * Source: degree-day method, CIBSE TM41 (from memory).
 */
export function demandFromHeatLoss(
  household: Household,
  room: Room,
  year: TypicalYear,
  reference: Reference,
): HeatLossResult {
  const { heat, home } = household;
  if (!heat.heatLossKW) return { missing: 'no-heat-loss', questions: [] };
  const heatLossKW = heat.heatLossKW.value;
  if (!(heatLossKW > 0)) {
    return {
      missing: 'heat-loss-zero',
      questions: [ask('heat-loss-zero', 'refusal', { heatLossKW }, 'heat.heatLossKW')],
    };
  }
  const outdoor = designOutdoor(heat, year.region, reference);
  if (outdoor.asked) {
    return {
      missing: 'no-design-outdoor',
      questions: [ask('design-temperature-asked', 'question', {}, 'heat.designOutdoorC')],
    };
  }
  if (room.value <= outdoor.value) {
    const data = { roomC: room.value, designOutdoorC: outdoor.value };
    return {
      missing: 'room-below-design',
      questions: [ask('room-below-design', 'refusal', data, 'heat.designOutdoorC')],
    };
  }
  const wPerK = coefficientOfDesignLoad(heatLossKW, room.value, outdoor.value);
  const base = findBaseTemperature(household, room.value, wPerK);
  const questions = [...askDesign(outdoor), ...askLikely(wPerK, home.floorAreaM2?.value)];
  const degreeDays = degreeDaysFromMeans(year.dailyMeanC, base.value);
  const spaceKWh = heatOfDegreeDaysKWh(wPerK, degreeDays);
  const spreadOfBase =
    (degreeDaysFromMeans(year.dailyMeanC, base.value + base.errorK) -
      degreeDaysFromMeans(year.dailyMeanC, base.value - base.errorK)) /
    2;
  const ofLoss = HEAT_LOSS_ERROR[heat.heatLossKW.grade] * spaceKWh;
  const ofDesign = outdoor.grade === 'assumed' ? (spaceKWh * DESIGN_ERROR_K) / (room.value - outdoor.value) : 0;
  const grade = weakestGrade(['estimated', heat.heatLossKW.grade]);
  const working = loadWorking({ heat, room, outdoor, wPerK, base, degreeDays, spaceKWh, year });
  return {
    estimate: {
      way: 'heat-loss',
      spaceKWh,
      spaceErrorKWh: together(ofLoss, ofDesign, heatOfDegreeDaysKWh(wPerK, spreadOfBase)),
      grade,
      working,
    },
    baseC: base.value,
    wPerK,
    questions,
  };
}

function askDesign(outdoor: DesignOutdoor): Question[] {
  if (!outdoor.taken) return [];
  const data = { ...outdoor.taken, outdoorC: outdoor.value };
  return [ask('design-temperature-assumed', 'question', data, 'heat.designOutdoorC')];
}

function askLikely(wPerK: number, floorAreaM2: number | undefined): Question[] {
  const perM2 = floorAreaM2 ? wPerK / floorAreaM2 : 0;
  const likely =
    wPerK >= UNLIKELY.least &&
    wPerK <= UNLIKELY.most &&
    (perM2 === 0 || (perM2 >= UNLIKELY.leastPerM2 && perM2 <= UNLIKELY.mostPerM2));
  if (likely) return [];
  const data = { heatLossWPerK: wPerK, floorAreaM2: floorAreaM2 ?? 0, wattsPerKM2: perM2 };
  return [ask('heat-loss-unlikely', 'question', data, 'heat.heatLossKW')];
}

function loadWorking(of: {
  readonly heat: Household['heat'];
  readonly room: Room;
  readonly outdoor: DesignOutdoor;
  readonly wPerK: number;
  readonly base: BaseTemperature;
  readonly degreeDays: number;
  readonly spaceKWh: number;
  readonly year: TypicalYear;
}): Working {
  const { heat, room, outdoor, wPerK, base, degreeDays, spaceKWh, year } = of;
  const { value, grade, origin } = outdoor;
  return {
    title: tell('room-heat-by-heat-loss'),
    formula: tell('coefficient-by-degree-days'),
    inputs: [
      {
        name: tell('loss-coefficient'),
        value: wPerK,
        unit: 'W/K',
        grade: heat.heatLossKW!.grade,
        origin: tell('sum-below'),
      },
      {
        name: tell('degree-days'),
        value: degreeDays,
        unit: tell('kelvin-days'),
        grade: 'estimated',
        origin: tell('typical-year-of', { region: year.region.name }),
      },
      { name: tell('base-temperature'), value: base.value, unit: '°C', grade: base.grade, origin: base.origin },
    ],
    result: { value: spaceKWh, unit: tell('kwh-a-year') },
    source: tell('degree-day-method', { source: year.region.source }),
    steps: [
      {
        title: tell('heat-loss-coefficient'),
        formula: tell('heat-loss-by-difference'),
        inputs: [
          { name: tell('heat-loss'), unit: 'kW', ...heat.heatLossKW! },
          { name: tell('room-temperature'), value: room.value, unit: '°C', grade: room.grade, origin: room.origin },
          { name: tell('outdoor-temperature'), value, unit: '°C', grade, origin },
        ],
        result: { value: wPerK, unit: 'W/K' },
      },
    ],
  };
}

/** Yearly heat [kWh] of a heat loss coefficient [W/K] over degree days [K·day]: Q = HLC × DD × 24/1000. */
export function heatOfDegreeDaysKWh(heatLossWPerK: number, degreeDays: number): number {
  return (heatLossWPerK * degreeDays * 24) / 1000;
}
