/** Accounts for every record that a bill check was given: what it used it for, or why it did not. */
import { seriesByMeter } from '../evidence/register-hours.ts';
import { splitMeter } from '../evidence/sum-registers.ts';
import type { BillCheckInput } from '../shapes/bill-check.ts';
import { isTemperature, type RecordAccount, type RecordUse, type Series } from '../shapes/evidence.ts';
import { isFuel } from '../shapes/heating.ts';

/** Ids of the records that each part of the check looked at; what stands first counts. */
export interface UsedInCheck {
  /** Of which units, heat or doubts about the bill were taken. */
  readonly bill: ReadonlySet<string>;
  /** Of all days of the bill. */
  readonly weather: ReadonlySet<string>;
  /** Of which causes were looked for by hours, bills or registers. */
  readonly causes: ReadonlySet<string>;
  /** Of which the months since the estimate are told. */
  readonly months: ReadonlySet<string>;
}

/** @param series the registers one by one, joined over their imports */
export function accountCheck(
  bill: Pick<BillCheckInput, 'from' | 'to'>,
  series: readonly Series[],
  used: UsedInCheck,
): RecordAccount[] {
  const sums = seriesByMeter(series).map((ofMeter) => splitMeter(ofMeter).added.map(({ id }) => id));
  /** Registers of one meter are used together, under the name of the first. */
  const isIn = (ids: ReadonlySet<string>, id: string) =>
    ids.has(id) || sums.some((ofMeter) => ofMeter.includes(id) && ofMeter.some((one) => ids.has(one)));
  const purposeOf = ({ id, carrier, role, beside, from, to }: Series): RecordUse => {
    if (beside === 'aside') return 'aside';
    if (isIn(used.bill, id)) return 'bill-days';
    if (used.weather.has(id)) return 'bill-weather';
    if (isIn(used.causes, id)) return 'causes';
    if (isIn(used.months, id)) return 'months';
    if (role === 'export') return 'sent-out';
    if (role === 'generation') return 'made-here';
    if (carrier === 'water') return 'water';
    if (isTemperature(carrier) && carrier !== 'outdoor-temperature') return 'not-asked';
    if (from >= bill.to || to <= bill.from) return 'other-days';
    if (isFuel(carrier)) return 'other-energy';
    return from > bill.from || to < bill.to ? 'part-of-days' : 'said-otherwise';
  };
  return series.map((one) => ({ name: one.name, use: purposeOf(one) }));
}
