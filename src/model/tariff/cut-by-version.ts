/** The days of a bill, cut to the versions of a tariff. */
import { daysBetween } from '../calendar/civil.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { Tariff, TariffVersion } from '../shapes/tariff.ts';
import { versionOn } from './slot-price.ts';

/** The days of a bill that one version prices; `to` exclusive. */
export interface BillSpan {
  readonly version: TariffVersion;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly days: number;
}

/** Cuts the days from `from` to `to` (exclusive) where a new version of the tariff begins. */
export function cutByVersion(tariff: Tariff, from: CivilDate, to: CivilDate): BillSpan[] {
  const begins = tariff.versions.map((version) => version.from).filter((date) => date > from && date < to);
  const cuts = [from, ...[...new Set(begins)].sort(), to];
  return cuts.slice(1).map((end, i) => {
    const start = cuts[i]!;
    return { version: versionOn(tariff, start), from: start, to: end, days: daysBetween(start, end) };
  });
}
