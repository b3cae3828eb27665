/** What is odd about a record, as questions. */
import type { HouseChange, Question } from '../shapes/appraisal.ts';
import type { Household } from '../shapes/household.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import type { FittedRecord } from './fit-record.ts';
import { ask, isUneven } from './heat-questions.ts';
import type { HotWaterDemand } from './hot-water.ts';
import type { HeatRecord } from './record.ts';
import type { TypicalUse } from './record-use.ts';
import type { BaseSplit } from './split-base.ts';

/** Below this the line explains so little that the range alone must carry the answer. Common practice, no source. */
const R2_POOR = 0.4;
/** Share of the base, and heat, from which an unexplained rest is worth a question. Common practice, no source. */
const LEFTOVER_SHARE = 0.35;
const LEFTOVER_KWH = 800;

/** What the household is asked about a change in its house. */
export function askOfChange(change: HouseChange, carrier: string): Question {
  const { on, earliest, latest, share, shareLow, shareHigh, sure, used, before, after } = change;
  return ask('house-changed', 'question', {
    on,
    earliest,
    latest,
    carrier,
    share,
    shareLow,
    shareHigh,
    sure,
    used: used ? 'after' : 'whole',
    beforeSlope: before.slopeKWhPerKDay,
    afterSlope: after.slopeKWhPerKDay,
  });
}

/** A smaller part, such as one day where two bills meet, would be told as 0%. */
const LEAST_SHARE = 0.005;

/** Questions and notes that a record gives rise to. */
export function questionsOfRecord(
  household: Household,
  record: HeatRecord,
  fitted: FittedRecord,
  use: TypicalUse,
  split: BaseSplit,
  water: HotWaterDemand,
  year: TypicalYear,
): Question[] {
  const questions: Question[] = [];
  // What they were added to may have been taken back.
  if (record.series.some(({ beside }) => beside === 'added'))
    questions.push(ask('further-meters-alone', 'question', { carrier: record.carrier }));
  if (record.leftOut > 0) questions.push(ask('periods-left-out', 'note', { count: record.leftOut }));
  if (fitted.estimatedShare >= LEAST_SHARE) {
    const count = record.spans.filter((span) => span.estimated).length;
    questions.push(ask('estimated-readings', 'note', { share: fitted.estimatedShare, count }));
  }
  if (fitted.weather.weather === 'typical') {
    questions.push(ask('typical-weather-stands-in', 'note', { region: year.region.name, days: fitted.days }));
  }
  if (use.by === 'total') {
    const deliveries = record.deliveries ? record.spans.length + 1 : 0;
    questions.push(ask('total-only', 'note', { days: fitted.days, deliveries }));
  }
  if (fitted.signature) {
    const { line, cvRmse } = fitted.signature;
    const { slope, r2 } = line;
    const { period } = fitted.weather;
    if (slope === 0)
      questions.push(ask('no-heating-in-record', 'question', { carrier: record.carrier, r2 }, 'present.system'));
    else if (isUneven({ period, cvRmse })) questions.push(ask('record-uneven', 'question', { period, cvRmse }));
    else if (r2 < R2_POOR) questions.push(ask('record-scatter', 'note', { r2, cvRmse }));
  }
  return [...questions, ...questionsOfBase(household, record, use, split, water)];
}

function questionsOfBase(
  household: Household,
  record: HeatRecord,
  use: TypicalUse,
  split: BaseSplit,
  water: HotWaterDemand,
): Question[] {
  const waterKWh = split.waterKWh ?? 0;
  if (record.meter === 'whole-house') {
    return [ask('whole-house-meter', 'question', { baseKWh: use.baseKWh, waterKWh })];
  }
  const { baseHeatKWh, leftoverKWh } = split;
  // A total alone has no base of its own: it was taken from the hot-water method.
  const isTotal = use.by === 'total';
  if (!isTotal && leftoverKWh > LEFTOVER_KWH && leftoverKWh > LEFTOVER_SHARE * baseHeatKWh) {
    return [ask('base-unexplained', 'question', { leftoverKWh, baseKWh: use.baseKWh, waterKWh })];
  }
  const short = split.waterKWh !== undefined && baseHeatKWh < water.kWh - 2 * water.errorKWh;
  if (!short) return [];
  const people = Math.round(water.people * 10) / 10;
  if (isTotal) return [ask('record-below-hot-water', 'question', { people })];
  const data = { baseHeatKWh, predictedKWh: water.kWh, people };
  return [ask('base-below-hot-water', 'question', data, household.home.people ? undefined : 'home.people')];
}
