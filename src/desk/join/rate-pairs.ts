/** The day and night registers of one meter, which bills and files list as two series. */
import type { EvidencePeriod, Series } from '../../model/evidence/evidence.ts';
import type { TwoRegisters } from '../../model/findings/registers-swapped.ts';
import { registerName } from './register-name.ts';

const CHEAP = /^(night|off ?peak|low|cheap)$/;
const DEAR = /^(day|peak|high|normal|standard|dear)$/;

/** Two series of one import, the one named for the dear hours and the other for the cheap. */
export interface RatePair {
  readonly dear: Series;
  readonly cheap: Series;
}

/** Pairs where one import has exactly one register of each name; any others are left as they are. */
export function findRatePairs(series: readonly Series[]): RatePair[] {
  const meters = Map.groupBy(
    series.filter(({ carrier, role }) => carrier === 'electricity' && (role === 'import' || role === 'heat-pump')),
    ({ evidenceId, role, resolution, intervalMinutes }) => [evidenceId, role, resolution, intervalMinutes].join('|'),
  );
  return [...meters.values()].flatMap((ofMeter) => {
    const dear = ofMeter.filter(({ name }) => DEAR.test(registerName(name)));
    const cheap = ofMeter.filter(({ name }) => CHEAP.test(registerName(name)));
    return ofMeter.length === 2 && dear.length === 1 && cheap.length === 1
      ? [{ dear: dear[0]!, cheap: cheap[0]! }]
      : [];
  });
}

/** Bills that say the units of both registers for the same days. */
export function registersOf(series: readonly Series[]): TwoRegisters[] {
  return findRatePairs(series).flatMap(({ dear, cheap }) =>
    (dear.periods ?? []).flatMap(({ from, to, kWh }) => {
      const other = sameDays(cheap, { from, to });
      return other ? [{ from, to, dearKWh: kWh, cheapKWh: other.kWh }] : [];
    }),
  );
}

const sameDays = ({ periods }: Series, { from, to }: Pick<EvidencePeriod, 'from' | 'to'>) =>
  periods?.find((one) => one.from === from && one.to === to);
