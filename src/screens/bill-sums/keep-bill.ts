import type { Bill } from '../../model/bill/bill.ts';
import type { CheckedBill } from '../../model/bill/check-bill-sums.ts';
import { addDays } from '../../model/calendar/civil.ts';
import type { EvidencePeriod } from '../../model/evidence/evidence.ts';
import { longDate } from '../../words/numbers.ts';

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
  const name = `${fuel} bill, ${longDate(bill.from)} to ${longDate(addDays(bill.to, -1))}`;
  return { name, carrier: bill.fuel, role: 'import' as const, periods: [period] };
}
