/** Fuel or electricity that a typical year would take, out of the record: by its signature, or by its total alone. */

import { BASE_C } from '../shapes/usual-home.ts';
import { correctForWeather, degreeDaysFromMeans } from '../weather/degree-days.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import { TANK_ERROR } from './demand-assumptions.ts';
import { together } from './figure.ts';
import { degreeDaysOfRecord, type FittedRecord } from './fit-record.ts';
import type { InformedFit } from './informed-fit.ts';
import type { KnownBase } from './known-base.ts';
import { predictInformed } from './predict-informed.ts';
import { habitsOfRecord } from './predict-span.ts';
import type { HeatRecord } from './record.ts';
import { meanWave } from './season.ts';
import { yearDays } from './year-days.ts';

export interface TypicalUse {
  /** Use that follows the weather, kWh a typical year as metered. */
  readonly spaceKWh: number;
  readonly spaceErrorKWh: number;
  /** Use of every day alike, kWh a year as metered. */
  readonly baseKWh: number;
  readonly baseErrorKWh: number;
  readonly baseC: number;
  /** Relative standard error of the weather that stands in; 0 with the record's own. */
  readonly weatherShare: number;
  readonly by: 'signature' | 'total';
  readonly degreeDays: number;
}

/** What the base would be by the methods, and the base temperature where one was typed. */
interface Expected {
  readonly known: KnownBase;
  readonly baseC?: number;
}

const DAYS_OF_YEAR = 365.25;
/** A base temperature that only custom gives may be this far off, K; it matters where the record is not a whole year. */
const BASE_ERROR_K = 1.8;
const TYPED_ERROR_K = 0.8;
/** Share of a winter's difference that the scatter of its months about the line does not show already. Common practice, no source. */
const WINTER_UNSEEN = 0.9;
/** Sun differs from autumn to spring at the same temperature: a part of a year says so much less. Common practice, no source. */
const PART_YEAR_SHARE = 0.1;
const WHOLE_YEAR_DAYS = 330;
/** Below this a span says nothing of the heating, K·day. */
const DEGREE_DAYS_LEAST = 150;

/**
 * Use of a typical year [kWh]. With a signature: slope × degree days and base × days, all base temperatures weighed. With a total only: what the base
 * would take is taken off, the rest goes by degree days. Errors: the fit, the winter where the typical year stood in
 * for the weather, the tank, and the household's habits of so many years. Null where the record is too short to say.
 */
export function typicalUse(
  record: HeatRecord,
  fitted: FittedRecord,
  year: TypicalYear,
  expected: Expected,
  spread: { readonly winter: number; readonly habits: number },
  informed: InformedFit | null,
): TypicalUse | null {
  const years = Math.max(1, fitted.days / DAYS_OF_YEAR);
  const standIn = fitted.weather.weather === 'typical' ? spread.winter / Math.sqrt(years) : 0;
  const weatherShare = informed ? standIn * WINTER_UNSEEN : standIn;
  // Bills show in their scatter how months differ; days do not, and a total shows nothing.
  const byDay = fitted.weather.period === 'day' || !informed;
  const habitsShare = habitsOfRecord({ yearShare: spread.habits, recordYears: fitted.days / DAYS_OF_YEAR, byDay });
  if (informed) {
    const use = predictInformed(informed, yearDays(year));
    return {
      spaceKWh: use.spaceKWh,
      spaceErrorKWh: together(use.spaceErrorKWh, use.spaceKWh * weatherShare, use.spaceKWh * habitsShare),
      baseKWh: use.baseKWh,
      baseErrorKWh: together(use.baseErrorKWh, use.baseKWh * habitsShare),
      baseC: informed.baseC,
      weatherShare,
      by: 'signature',
      degreeDays: degreeDaysFromMeans(year.dailyMeanC, informed.baseC),
    };
  }
  return byTotal(record, fitted, year, expected, { weatherShare, habitsShare });
}

function byTotal(
  record: HeatRecord,
  fitted: FittedRecord,
  year: TypicalYear,
  expected: Expected,
  shares: { readonly weatherShare: number; readonly habitsShare: number },
): TypicalUse | null {
  const baseC = expected.baseC ?? BASE_C;
  const degreeDays = degreeDaysFromMeans(year.dailyMeanC, baseC);
  const { data } = fitted.weather;
  const ofRecord = degreeDaysOfRecord(fitted.weather, baseC);
  if (ofRecord < DEGREE_DAYS_LEAST) return null;
  const days = data.outdoorC.length;
  const yearDays = year.dailyMeanC.length;
  const kWh = data.perDayKWh.reduce((sum, perDay, i) => sum + perDay * data.days[i]!, 0);
  const { known } = expected;
  // A record of the winter months has more of the base than its days say, since hot water and lights take more then.
  const season = data.days.reduce((sum, length, i) => sum + length * meanWave(data.first[i]!, length), 0) / days;
  const byMethod = known.perDayKWh * days * (1 + known.swing * season);
  const baseOfRecord = Math.min(kWh, byMethod);
  const scale = degreeDays / ofRecord;
  const spaceKWh = correctForWeather(kWh - baseOfRecord, degreeDays, ofRecord);
  const meanDelivery = kWh / record.spans.length;
  const tank = record.deliveries ? Math.SQRT2 * TANK_ERROR * meanDelivery : 0;
  const errorK = expected.baseC === undefined ? BASE_ERROR_K : TYPED_ERROR_K;
  const scaleAt = (c: number) => degreeDaysFromMeans(year.dailyMeanC, c) / degreeDaysOfRecord(fitted.weather, c);
  const ofBaseC = Math.abs(scaleAt(baseC + errorK) - scaleAt(baseC - errorK)) / (2 * scale);
  const ofSeason = days < WHOLE_YEAR_DAYS ? PART_YEAR_SHARE : 0;
  const ofHabits = together(shares.weatherShare, shares.habitsShare, ofSeason);
  return {
    spaceKWh,
    spaceErrorKWh: together(
      tank * scale,
      known.methodErrorPerDayKWh * days * scale,
      spaceKWh * together(ofHabits, Number.isFinite(ofBaseC) ? ofBaseC : 1),
    ),
    baseKWh: byMethod > 0 ? (known.perDayKWh * yearDays * baseOfRecord) / byMethod : 0,
    baseErrorKWh: known.methodErrorPerDayKWh * yearDays,
    baseC,
    weatherShare: shares.weatherShare,
    by: 'total',
    degreeDays,
  };
}
