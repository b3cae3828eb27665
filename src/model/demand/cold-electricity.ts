/** Electricity beside a fuel that rises with the cold: heaters that nobody spoke of bring heat that the fuel's record lacks. */
import { besideHeatPump } from '../evidence/beside-heat-pump.ts';
import type { Question } from '../shapes/appraisal.ts';
import type { Series } from '../shapes/evidence.ts';
import { carrierOf, isFuel } from '../shapes/heating.ts';
import type { Household } from '../shapes/household.ts';
import { BASE_C } from '../shapes/usual-home.ts';
import { sumOf } from '../units/sums.ts';
import { degreeDaysFromMeans } from '../weather/degree-days.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import { ask } from './heat-questions.ts';
import { findRecord } from './record.ts';
import { ownTemperatures, putWeather } from './record-weather.ts';
import { degreesPerDay } from './signature.ts';
import type { SignatureData } from './signature-data.ts';

/** Lights, tumble dryers and pumps of a home without heaters take less than this share of its year more in the cold. Common practice, no source. */
const SHARE_LEAST = 0.35;
/** Less of it is a heater in a bathroom now and then, kWh a year. Common practice, no source. */
const LEAST_KWH = 1000;
/** Mean degrees below the usual base temperature of spans that are mild and of those that are cold, K; so many days of each. Judgements. */
const [MILD_K, COLD_K, DAYS_LEAST] = [2, 5, 28];

/** Of a roof's own use less is bought in summer, which looks alike. */
const hasRoof = ({ roof }: Household, series: readonly Series[]) =>
  roof !== undefined || series.some(({ role }) => role === 'export' || role === 'generation');

/**
 * Asks what the electricity that follows the cold [kWh of a typical year] was for, where the home is heated by a fuel and
 * nobody named electric heaters; nothing where too few mild or cold days are known. Middles of both, since weeks away would make a line steep.
 */
export function askOfColdElectricity(
  household: Household,
  series: readonly Series[],
  year: TypicalYear,
): readonly Question[] {
  const { system, otherHeat } = household.present;
  if (!isFuel(carrierOf(system)) || otherHeat === 'electric heaters' || hasRoof(household, series)) return [];
  const record = findRecord('direct-electric', besideHeatPump(series, household.taken?.on).imports);
  const weather = series.filter(({ carrier }) => carrier === 'outdoor-temperature');
  if (!record) return [];
  const { data } = putWeather(record, ownTemperatures(weather), year);
  const below = degreesPerDay(data, BASE_C);
  const [mild, cold] = [middleOf(data, below, (k) => k < MILD_K), middleOf(data, below, (k) => k >= COLD_K)];
  if (!mild || !cold) return [];
  const slope = (cold.kWh - mild.kWh) / (cold.k - mild.k);
  const inColdKWh = slope * degreeDaysFromMeans(year.dailyMeanC, BASE_C);
  const isLarge = inColdKWh >= LEAST_KWH && inColdKWh >= SHARE_LEAST * (inColdKWh + mild.kWh * year.dailyMeanC.length);
  return isLarge ? [ask('electricity-in-the-cold', 'question', { inColdKWh }, 'present.otherHeat')] : [];
}

/** Middle use a day and degrees below the base of the spans wanted, each day of them counted once; weeks away change neither. */
function middleOf(data: SignatureData, below: Float64Array, isWanted: (k: number) => boolean) {
  const spans = [...below.keys()].filter((i) => isWanted(below[i]!));
  const days = sumOf(spans.map((i) => data.days[i]!));
  if (days < DAYS_LEAST) return null;
  const middle = (of: ArrayLike<number>) => {
    let left = days / 2;
    const inOrder = spans.toSorted((a, b) => of[a]! - of[b]!);
    const at = inOrder.find((i) => {
      left -= data.days[i]!;
      return left <= 0;
    });
    return of[at!]!;
  };
  return { kWh: middle(data.perDayKWh), k: middle(below) };
}
