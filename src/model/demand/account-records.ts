/** Accounts for every record of a household: what the comparison uses it for, or why it does not. */
import { seriesByMeter } from '../evidence/register-hours.ts';
import { splitMeter } from '../evidence/sum-registers.ts';
import { type Evidence, type FileAccount, isTemperature, type RecordUse, type Series } from '../shapes/evidence.ts';
import { carrierOf, isFuel } from '../shapes/heating.ts';
import type { Household } from '../shapes/household.ts';
import { findRecord } from './record.ts';

/** @param imports files as they were imported @param joined their records as the comparison takes them */
export function accountFiles(
  { present }: Household,
  imports: readonly Evidence[],
  joined: readonly Series[],
): FileAccount[] {
  const record = findRecord(present.system, joined);
  const registers = seriesByMeter(joined).flatMap((ofMeter) => splitMeter(ofMeter).added);
  return imports.map(({ fileName, columns, series }) => ({
    fileName,
    ...(columns ? { columns } : {}),
    records: series.map((one) => ({ name: one.name, ...purposeOf(one) })),
  }));

  function purposeOf(series: Series): { use: RecordUse; days?: number } {
    const { id, carrier, role, beside } = series;
    if (beside !== undefined) return { use: beside };
    if (role === 'export') return { use: 'sent-out' };
    if (role === 'generation') return { use: 'made-here' };
    if (carrier === 'water') return { use: 'water' };
    if (isTemperature(carrier)) return { use: carrier === 'outdoor-temperature' ? 'weather' : 'machine' };
    if (!joined.some((one) => one.id === id)) return { use: 'joined' };
    const days = record?.daysOf?.get(id);
    if (days !== undefined) return days > 0 ? { use: 'heat', days } : { use: 'covered' };
    const isOfRecord = record?.carrier === carrier && record.series[0]?.role === role;
    if (isOfRecord && registers.some((one) => one.id === id)) return { use: 'heat-register' };
    if (isOfRecord) return { use: 'covered' };
    const isRest = carrier === 'electricity' && role === 'import' && isFuel(carrierOf(present.system));
    return { use: isRest ? 'rest-of-home' : 'other-way' };
  }
}
