/** A change in the house as the screens and documents see it, and the part of the record that it leaves to build on. */

import { toCivilDate } from '../calendar/civil.ts';
import type { HouseChange, SignaturePart } from '../shapes/appraisal.ts';
import { TEN_PERCENT } from './demand-assumptions.ts';
import { type FoundChange, findChange } from './find-change.ts';
import type { FittedRecord } from './fit-record.ts';
import type { FittedLine } from './least-squares.ts';
import { habitsOfRecord, yearsOf } from './predict-span.ts';
import type { HeatRecord } from './record.ts';
import type { SignatureData } from './signature-data.ts';

/** From here on the part before is no longer this home. Common practice, no source. */
const SURE_ENOUGH = 0.98;

export interface ChangedRecord {
  readonly found: FoundChange;
  /** The record after the change alone. */
  readonly after: HeatRecord;
  readonly sureEnough: boolean;
}

interface Spread {
  readonly winter: number;
  readonly habits: number;
}

const known = new WeakMap<FittedRecord, { readonly found: FoundChange | null }>();

/** The change in a fitted record, or null; looked for once. */
export function changeOf(record: HeatRecord, fitted: FittedRecord, spread: Spread): ChangedRecord | null {
  const { signature, weather } = fitted;
  if (!signature) return null;
  let kept = known.get(fitted);
  if (!kept) {
    const standIn = weather.weather === 'typical' ? spread.winter : 0;
    const usualSpread = (days: number) => {
      const habits = habitsOfRecord({ yearShare: spread.habits, recordYears: yearsOf(days), byDay: true });
      return Math.hypot(habits, standIn / Math.sqrt(Math.max(1, yearsOf(days))));
    };
    kept = { found: findChange(weather.data, signature, { usualSpread }) };
    known.set(fitted, kept);
  }
  const { found } = kept;
  if (!found) return null;
  const on = weather.data.first[found.index]!;
  return {
    found,
    after: { ...record, spans: record.spans.filter((span) => span.first >= on) },
    sureEnough: found.sure >= SURE_ENOUGH,
  };
}

/** The change with the lines on its two sides. */
export function showChange(fitted: FittedRecord, found: FoundChange, used: boolean): HouseChange {
  const { data } = fitted.weather;
  const dateOf = (index: number) => toCivilDate(data.first[index]!);
  const reach = TEN_PERCENT * found.shareError;
  const baseC = fitted.signature!.baseC;
  return {
    on: dateOf(found.index),
    earliest: dateOf(found.earliest),
    latest: dateOf(found.latest),
    share: found.share,
    shareLow: found.share - reach,
    shareHigh: found.share + reach,
    sure: found.sure,
    used,
    before: partOf(data, 0, found.index, found.before, baseC),
    after: partOf(data, found.index, data.days.length, found.after, baseC),
  };
}

function partOf(data: SignatureData, from: number, to: number, line: FittedLine, baseC: number): SignaturePart {
  const last = to - 1;
  return {
    from: toCivilDate(data.first[from]!),
    to: toCivilDate(data.first[last]! + data.days[last]!),
    count: to - from,
    baseC,
    basePerDayKWh: line.intercept,
    slopeKWhPerKDay: line.slope,
    r2: line.r2,
  };
}
