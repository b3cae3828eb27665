/** Bills of a two-rate meter, with the units of both its registers. */

import { registerHours, registersOfSomeHours, seriesByMeter } from '../evidence/register-hours.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { Series } from '../shapes/evidence.ts';

/** What a bill of a two-rate tariff says. */
export interface TwoRegisters {
  readonly from: CivilDate;
  /** Exclusive. */
  readonly to: CivilDate;
  readonly dearKWh: number;
  readonly cheapKWh: number;
}

/**
 * Bills that say the units [kWh] of both registers for the same days. A meter counts where exactly two of its registers
 * count some hours and their names say which is the dear one; "Rate 1" and "Rate 2" are added elsewhere, but nobody
 * can tell from them which should be the cheaper.
 */
export function registersOf(series: readonly Series[]): TwoRegisters[] {
  const electric = series.filter(
    ({ carrier, role }) => carrier === 'electricity' && (role === 'import' || role === 'heat-pump'),
  );
  return seriesByMeter(electric).flatMap((ofMeter) => {
    const some = registersOfSomeHours(ofMeter);
    const dear = some.find(({ name }) => registerHours(name) === 'dear');
    const cheap = some.find(({ name }) => registerHours(name) === 'cheap');
    if (some.length !== 2 || !dear || !cheap) return [];
    return (dear.periods ?? []).flatMap(({ from, to, kWh }) => {
      const other = cheap.periods?.find((one) => one.from === from && one.to === to);
      return other ? [{ from, to, dearKWh: kWh, cheapKWh: other.kWh }] : [];
    });
  });
}
