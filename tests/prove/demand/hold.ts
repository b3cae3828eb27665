/** Fits a part of a household's days and holds what came after against what was to be expected. */
import { COMMON_MONTH_DAYS, toCivilDate } from '../../../src/model/calendar/civil.ts';
import { fitRecord, informFit } from '../../../src/model/demand/fit-record.ts';
import { reckonHotWater } from '../../../src/model/demand/hot-water.ts';
import { knownBase } from '../../../src/model/demand/known-base.ts';
import { predictSpan, yearsOf } from '../../../src/model/demand/predict-span.ts';
import { presentEfficiency } from '../../../src/model/demand/present-efficiency.ts';
import { findRecord } from '../../../src/model/demand/record.ts';
import { yearWave } from '../../../src/model/demand/season.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { degreeDaysFromMeans } from '../../../src/model/weather/degree-days.ts';
import type { TypicalYear } from '../../../src/model/year/typical-year.ts';
import { reference } from '../../../src/reference/index.ts';
import type { MadeDay } from './home.ts';

/** Standard errors between what was expected and what the meter said. */
export type Misses = number[];

const TEN_PERCENT = 1.2816;
export const held = (misses: Misses): number => misses.filter((z) => Math.abs(z) <= TEN_PERCENT).length;

export interface Fitted {
  /** Miss of a stretch of days, in standard errors of the prediction. */
  readonly miss: (days: readonly MadeDay[]) => number;
}

export function fitDays(household: Household, series: readonly Series[], year: TypicalYear): Fitted | null {
  const record = findRecord(household.present.system, series);
  if (!record) return null;
  const weather = series.filter((s) => s.carrier === 'outdoor-temperature');
  const fitted = fitRecord(record, weather, year);
  const efficiency = presentEfficiency(household, record.meter, reference);
  const water = reckonHotWater(household, COMMON_MONTH_DAYS, reference);
  const fit = informFit(fitted, knownBase(household, record.meter, efficiency, water), undefined);
  const { signature } = fitted;
  if (!fit || !signature) return null;
  const habits = {
    yearShare: reference.spread.habits.value,
    recordYears: yearsOf(fitted.days),
    byDay: fitted.weather.period === 'day',
  };
  return {
    miss: (days) => {
      const expected = predictSpan(fit, signature, toCome(days), habits);
      const metered = days.reduce((sum, day) => sum + day.kWh, 0);
      return (metered - expected.kWh) / expected.errorKWh;
    },
  };
}

function toCome(days: readonly MadeDay[]) {
  const outdoorC = days.map((day) => day.outdoorC);
  return {
    days: days.length,
    waveSum: days.reduce((sum, { day }) => sum + yearWave(day), 0),
    degreeDays: (baseC: number) => degreeDaysFromMeans(outdoorC, baseC),
  };
}

/** The calendar months that are there to at least 25 days. */
export function byMonth(days: readonly MadeDay[]): MadeDay[][] {
  const months = Map.groupBy(days, ({ day }) => toCivilDate(day).slice(0, 7));
  return [...months.values()].filter((month) => month.length >= 25);
}
