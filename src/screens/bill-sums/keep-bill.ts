import type { CheckedBill } from '../../model/bill/check-bill-sums.ts';
import { addDays } from '../../model/calendar/civil.ts';
import type { Bill } from '../../model/shapes/bill.ts';
import type { EvidencePeriod } from '../../model/shapes/evidence.ts';
import { keptDate } from '../../words/numbers.ts';

/** The bill as typed evidence: the units that it should have charged, and the money that it asks. */
export function periodOf(bill: Bill, checked: CheckedBill) {
  const kWh = checked.rows.reduce((sum, { kind, reckoned }) => sum + (kind === 'energy' ? reckoned : 0), 0);
  const isEstimated = bill.meters.some(
    ({ closingKind, ownKWh }) => closingKind === 'estimated' && ownKWh === undefined,
  );
  const period: EvidencePeriod = {
    from: bill.from,
    to: bill.to,
    kWh,
    costPence: checked.printedPence ?? checked.reckonedPence,
    quality: isEstimated ? 'estimated' : 'actual',
  };
  const fuel = bill.fuel === 'gas' ? 'Gas' : 'Electricity';
  // Kept with the household, so it is English, and reworded where it is shown.
  const name = `${fuel} bill, ${keptDate(bill.from)} to ${keptDate(addDays(bill.to, -1))}`;
  return { name, carrier: bill.fuel, role: 'import' as const, periods: [period] };
}
