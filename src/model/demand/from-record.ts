/** Way (a): yearly heat out of the fuel or electricity record, corrected for the weather. */
import type { DemandEstimate, Question, Signature } from '../appraisal/appraisal.ts';
import type { Series } from '../evidence/evidence.ts';
import type { Household } from '../household/household.ts';
import type { Reference } from '../reference.ts';
import type { TypicalYear } from '../weather/typical-year.ts';
import { cookingGasKWh } from './assumptions.ts';
import { fitRecord, informFit } from './fit-record.ts';
import type { HotWaterDemand } from './hot-water.ts';
import { knownBase } from './known-base.ts';
import { type PresentEfficiency, presentEfficiency } from './present-efficiency.ts';
import { findRecord, type HeatRecord } from './record.ts';
import { questionsOfRecord } from './record-questions.ts';
import { typicalUse } from './record-use.ts';
import { estimateOfRecord } from './record-working.ts';
import { showSignature } from './show-signature.ts';
import { fitSignatureAt } from './signature.ts';
import { splitBase } from './split-base.ts';

export interface RecordResult {
  readonly estimate?: DemandEstimate;
  readonly missing?: string;
  readonly baseC?: number;
  readonly signature?: Signature;
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
  const { household, series, reference, year, water } = input;
  const record = findRecord(household.present.system, series);
  if (!record) return { ...NOTHING, missing: 'no-record' };
  const weatherSeries = series.filter((s) => s.carrier === 'outdoor-temperature');
  const fitted = fitRecord(record, weatherSeries, year);
  const efficiency = presentEfficiency(household, record.meter, reference);
  const spread = { winter: reference.spread.winter.value, habits: reference.spread.habits.value };
  const known = knownBase(household, record.meter, efficiency, water);
  const informed = informFit(fitted, known, household.heat.baseC?.value);
  const use = typicalUse(record, fitted, year, expectedBase(input, record, efficiency), spread, informed);
  const { weather } = fitted.weather;
  if (!use) return { ...NOTHING, weather, estimatedShare: fitted.estimatedShare, missing: 'record-too-short' };
  const base = { kWh: use.baseKWh, errorKWh: use.baseErrorKWh };
  const split = splitBase(base, record.meter, household, efficiency.water, water);
  return {
    estimate: estimateOfRecord(record, fitted, use, split, efficiency, reference),
    baseC: use.baseC,
    weather,
    estimatedShare: fitted.estimatedShare,
    ...(fitted.signature
      ? {
          signature: showSignature(
            record,
            fitted,
            informed ? fitSignatureAt(fitted.weather.data, informed.baseC) : fitted.signature,
          ),
        }
      : {}),
    questions: questionsOfRecord(household, record, fitted, use, split, water, year),
  };
}

/** What the record's base would be by the hot-water method, where only a total is known. */
function expectedBase(input: RecordInput, record: HeatRecord, efficiency: PresentEfficiency) {
  const { household, water } = input;
  const elsewhere = household.present.hotWaterFrom === 'immersion' && record.meter === 'fuel';
  const cookingKWh = record.meter === 'fuel' && household.present.cooksOnGas ? cookingGasKWh(water.people) : 0;
  const typed = household.heat.baseC?.value;
  return {
    baseKWh: (elsewhere ? 0 : water.kWh / efficiency.water.value) + cookingKWh,
    baseErrorKWh: elsewhere ? 0 : water.errorKWh / efficiency.water.value,
    ...(typed === undefined ? {} : { baseC: typed }),
  };
}
