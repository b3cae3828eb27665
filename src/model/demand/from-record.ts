/** Way (a): yearly heat out of the fuel or electricity record, corrected for the weather. */
import type { DemandEstimate, Figure, HouseChange, Question, Signature, YearAhead } from '../shapes/appraisal.ts';
import type { Series } from '../shapes/evidence.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import { together } from './figure.ts';
import { type FittedRecord, fitRecord, informFit } from './fit-record.ts';
import type { HotWaterDemand } from './hot-water.ts';
import { changeOf, showChange } from './house-change.ts';
import { knownBase } from './known-base.ts';
import { otherHeatKWh } from './other-heat.ts';
import { yearsOf } from './predict-span.ts';
import { presentEfficiency } from './present-efficiency.ts';
import { findRecord, type HeatRecord } from './record.ts';
import { askOfChange, questionsOfRecord } from './record-questions.ts';
import { typicalUse } from './record-use.ts';
import { estimateOfRecord } from './record-working.ts';
import { showSignature } from './show-signature.ts';
import { fitSignatureAt } from './signature.ts';
import { splitBase } from './split-base.ts';
import { heatLossOfRecord, yearsAhead } from './years-ahead.ts';

export interface RecordResult {
  readonly estimate?: DemandEstimate;
  readonly missing?: string;
  readonly baseC?: number;
  readonly signature?: Signature;
  readonly change?: HouseChange;
  readonly yearsAhead?: YearAhead[];
  readonly heatLoss?: Figure;
  readonly weather: 'own' | 'typical' | 'none';
  readonly estimatedShare: number;
  readonly questions: readonly Question[];
}

export interface RecordInput {
  readonly household: Household;
  readonly series: readonly Series[];
  readonly reference: Reference;
  readonly year: TypicalYear;
  readonly water: HotWaterDemand;
}

const NOTHING = { weather: 'none', estimatedShare: 0, questions: [] } as const;

/**
 * Heat for rooms and hot water in a typical year [kWh] = use as metered × seasonal efficiency, with one standard error.
 * Needs a record of the fuel that heats the home; reasons where it cannot be had: "no-record", "record-too-short".
 */
export function demandFromRecord(input: RecordInput): RecordResult {
  const { household, series, reference, year } = input;
  const record = findRecord(household.present.system, series);
  if (!record) return { ...NOTHING, missing: 'no-record' };
  const weatherSeries = series.filter((s) => s.carrier === 'outdoor-temperature');
  const whole = fitRecord(record, weatherSeries, year);
  const spread = { winter: reference.spread.winter.value, habits: reference.spread.habits.value };
  const changed = changeOf(record, whole, spread);
  const afterwards = changed?.sureEnough ? fitRecord(changed.after, weatherSeries, year) : null;
  const used =
    afterwards?.signature && changed ? { record: changed.after, fitted: afterwards } : { record, fitted: whole };
  const answer = answerOf(input, used.record, used.fitted, spread);
  if (!changed) return answer;
  const change = showChange(whole, changed.found, used.fitted === afterwards);
  return { ...answer, change, questions: [askOfChange(change, record.carrier), ...answer.questions] };
}

interface Spread {
  readonly winter: number;
  readonly habits: number;
}

function answerOf(input: RecordInput, record: HeatRecord, fitted: FittedRecord, spread: Spread): RecordResult {
  const { household, reference, year, water } = input;
  const efficiency = presentEfficiency(household, record.meter, reference);
  const known = knownBase(household, record.meter, efficiency, water);
  const informed = informFit(fitted, known, household.heat.baseC?.value);
  const typed = household.heat.baseC?.value;
  const expected = { known, ...(typed === undefined ? {} : { baseC: typed }) };
  const use = typicalUse(record, fitted, year, expected, spread, informed);
  const { weather, period } = fitted.weather;
  if (!use) return { ...NOTHING, weather, estimatedShare: fitted.estimatedShare, missing: 'record-too-short' };
  const base = { kWh: use.baseKWh, errorKWh: use.baseErrorKWh, seen: use.by === 'signature' };
  const split = splitBase(base, record.meter, household, efficiency.water, water);
  const estimate = widenForOtherHeat(
    household,
    estimateOfRecord(record, fitted, use, { split, water }, efficiency, reference),
  );
  const plain = fitted.signature;
  const habits = { yearShare: spread.habits, recordYears: yearsOf(fitted.days), byDay: period === 'day' };
  const outlook = informed && plain ? { informed, plain, habits, weatherShare: use.weatherShare } : null;
  return {
    estimate,
    baseC: use.baseC,
    weather,
    estimatedShare: fitted.estimatedShare,
    ...(plain
      ? {
          signature: showSignature(
            record,
            fitted,
            informed ? fitSignatureAt(fitted.weather.data, informed.baseC) : plain,
          ),
        }
      : {}),
    ...(outlook ? { yearsAhead: yearsAhead(outlook, year, spread.winter) } : {}),
    ...(outlook && use.spaceKWh > 0 ? { heatLoss: heatLossOfRecord(outlook, efficiency.space, estimate.grade) } : {}),
    questions: questionsOfRecord(household, record, fitted, use, split, water, year),
  };
}

/**
 * A stove's heat is in no meter. How much it is nobody knows, so the figure stays as metered (the stove goes on) and its
 * range grows by a usual second heater's share.
 */
function widenForOtherHeat(household: Household, estimate: DemandEstimate): DemandEstimate {
  const kWh = otherHeatKWh(household, estimate.spaceKWh);
  return kWh > 0 ? { ...estimate, spaceErrorKWh: together(estimate.spaceErrorKWh, kWh) } : estimate;
}
