import { compareDates } from '../../model/calendar/civil.ts';
import { findSideBySide } from '../../model/comparison/beside.ts';
import { writtenEstimateWorking } from '../../words/explained/estimate-workings.ts';
import { electricityPriceWorking, fuelPriceWorking } from '../../words/explained/prices.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { recordWorking } from '../../words/explained/record.ts';
import type { ShownWorking } from '../../words/working.ts';
import { checkWorking } from '../check/check-working.ts';
import type { OpenDesk } from '../household-context.tsx';
import { costWorking } from '../shared/name-working.ts';

/** The sums behind the thread's lines, from the evidence down to the last check. */
export function threadWorkings(
  desk: Pick<OpenDesk, 'series' | 'evidence' | 'appraisal' | 'estimates' | 'checks'>,
): ShownWorking[] {
  const { series, evidence, appraisal, estimates, checks } = desk;
  const { pump, present } = findSideBySide(appraisal);
  const carrier = present?.carrier ?? 'gas';
  const estimate = estimates.toSorted((a, b) => a.number - b.number).at(-1);
  const check = checks.toSorted((a, b) => compareDates(a.madeOn, b.madeOn)).at(-1);
  return [
    ...series.map((one) => recordWorking(one, evidence)),
    rangedWorking(appraisal.demand.total),
    rangedWorking(appraisal.machine.whole),
    electricityPriceWorking(appraisal),
    ...(carrier === 'electricity' ? [] : [fuelPriceWorking(appraisal, carrier)]),
    costWorking(pump),
    ...(estimate ? [writtenEstimateWorking(estimate)] : []),
    ...(check ? [checkWorking(check)] : []),
  ];
}
