/** Lays the signature through a household's record once and keeps it, since a slider asks for it many times a second. */
import type { Series } from '../shapes/evidence.ts';
import { BASE_C } from '../shapes/usual-home.ts';
import { degreeDaysFromMeans } from '../weather/degree-days.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import { fitInformed, type InformedFit } from './informed-fit.ts';
import type { KnownBase } from './known-base.ts';
import type { HeatRecord } from './record.ts';
import { ownTemperatures, putWeather, type RecordWeather } from './record-weather.ts';
import { degreesPerDay, type FittedSignature, fitSignature } from './signature.ts';

export interface FittedRecord {
  readonly weather: RecordWeather;
  /** Absent where the record is too short or too even to lay a line through. */
  readonly signature?: FittedSignature;
  readonly days: number;
  readonly kWh: number;
  readonly estimatedShare: number;
}

const DAYS_LEAST = 60;
const SPANS_LEAST = 4;
/** Difference in degrees below the base between the mildest and the coldest span that a slope needs, K. */
const CONTRAST_K = 4;

interface Kept {
  readonly spans: string;
  readonly series: readonly Series[];
  readonly weather: readonly Series[];
  readonly year: TypicalYear;
  readonly fitted: FittedRecord;
}
const kept = new WeakMap<Series, Kept[]>();

const same = (a: readonly unknown[], b: readonly unknown[]) => a.length === b.length && a.every((v, i) => v === b[i]);

/** The record with its weather and, where it can bear one, its energy signature. Kept by the identity of the series. */
export function fitRecord(record: HeatRecord, weatherSeries: readonly Series[], year: TypicalYear): FittedRecord {
  const key = record.series[0]!;
  const entries = kept.get(key) ?? [];
  // The part after a change has the same series and fewer spans.
  const spans = `${record.spans[0]?.first} ${record.spans.length}`;
  const known = entries.find(
    (e) => e.year === year && e.spans === spans && same(e.series, record.series) && same(e.weather, weatherSeries),
  );
  if (known) return known.fitted;
  const fitted = layLine(record, weatherSeries, year);
  kept.set(key, [{ spans, series: record.series, weather: weatherSeries, year, fitted }, ...entries.slice(0, 3)]);
  return fitted;
}

function layLine(record: HeatRecord, weatherSeries: readonly Series[], year: TypicalYear): FittedRecord {
  const weather = putWeather(record, ownTemperatures(weatherSeries), year);
  const days = record.spans.reduce((sum, span) => sum + span.days, 0);
  const kWh = record.spans.reduce((sum, span) => sum + span.kWh, 0);
  const estimatedDays = record.spans.reduce((sum, span) => sum + (span.estimated ? span.days : 0), 0);
  const fitted = { weather, days, kWh, estimatedShare: estimatedDays / days };
  return canBearLine(record, weather) ? { ...fitted, signature: fitSignature(weather.data) } : fitted;
}

const informedFits = new WeakMap<FittedSignature, { readonly key: string; readonly fit: InformedFit }>();

/** How far a month's temperature is from the typical month's, K; from memory of British monthly means. */
const MONTH_ERROR_K = 1.3;

/** All base temperatures weighed, of the record as fitted; kept while what is known of the base stays the same. */
export function informFit(fitted: FittedRecord, known: KnownBase, typedBaseC: number | undefined): InformedFit | null {
  const { signature, weather } = fitted;
  if (!signature || fitted.kWh <= 0) return null;
  const key = JSON.stringify([known, typedBaseC]);
  const kept = informedFits.get(signature);
  if (kept?.key === key) return kept.fit;
  const weatherErrorK = weather.weather === 'typical' ? MONTH_ERROR_K : 0;
  const fit = fitInformed(weather.data, signature, {
    known,
    weatherErrorK,
    ...(typedBaseC === undefined ? {} : { typedBaseC }),
  });
  informedFits.set(signature, { key, fit });
  return fit;
}

function canBearLine(record: HeatRecord, weather: RecordWeather): boolean {
  // A tank's slips say when it was filled, not when it was emptied; only their total can be trusted.
  if (record.deliveries) return false;
  const spans = weather.data.days.length;
  if (spans < (weather.period === 'day' ? DAYS_LEAST : SPANS_LEAST)) return false;
  const x = degreesPerDay(weather.data, BASE_C);
  return Math.max(...x) - Math.min(...x) >= CONTRAST_K;
}

/** Degree days of the spans of a record to a base temperature [K·day]. */
export const degreeDaysOfRecord = (weather: RecordWeather, baseC: number): number =>
  degreeDaysFromMeans(weather.data.outdoorC, baseC);
