/** Accounts for every record of a household: what the comparison uses it for, or why it does not. */
import { seriesByMeter } from '../evidence/register-hours.ts';
import { splitMeter } from '../evidence/sum-registers.ts';
import { isTemperature, type Series } from '../shapes/evidence.ts';
import { carrierOf, isFuel } from '../shapes/heating.ts';
import type { Household } from '../shapes/household.ts';
import { findRecord } from './record.ts';

export type RecordUse =
  | 'heat'
  | 'heat-register'
  | 'rest-of-home'
  | 'weather'
  | 'machine'
  | 'joined'
  | 'added'
  | 'aside'
  | 'covered'
  | 'other-way'
  | 'sent-out'
  | 'made-here'
  | 'water';

export interface RecordAccount {
  readonly series: Series;
  readonly use: RecordUse;
  /** Days that it tells of the record of heating. */
  readonly days?: number;
}

/** @param own records as they were imported @param joined the same as the comparison takes them */
export function accountRecords(
  { present }: Household,
  own: readonly Series[],
  joined: readonly Series[],
): RecordAccount[] {
  const record = findRecord(present.system, joined);
  const registers = seriesByMeter(joined).flatMap((ofMeter) => splitMeter(ofMeter).added);
  return own.map((series): RecordAccount => {
    const { id, carrier, role, beside } = series;
    if (beside !== undefined) return { series, use: beside };
    if (role === 'export') return { series, use: 'sent-out' };
    if (role === 'generation') return { series, use: 'made-here' };
    if (carrier === 'water') return { series, use: 'water' };
    if (isTemperature(carrier)) return { series, use: carrier === 'outdoor-temperature' ? 'weather' : 'machine' };
    if (!joined.some((one) => one.id === id)) return { series, use: 'joined' };
    const days = record?.daysOf?.get(id);
    if (days !== undefined) return days > 0 ? { series, use: 'heat', days } : { series, use: 'covered' };
    const isOfRecord = record?.carrier === carrier && record.series[0]?.role === role;
    if (isOfRecord && registers.some((one) => one.id === id)) return { series, use: 'heat-register' };
    if (isOfRecord) return { series, use: 'covered' };
    const isRest = carrier === 'electricity' && role === 'import' && isFuel(carrierOf(present.system));
    return { series, use: isRest ? 'rest-of-home' : 'other-way' };
  });
}
