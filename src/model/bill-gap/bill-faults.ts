/** What keeps a bill from being held against a written estimate, as data. */

import { daysBetween } from '../calendar/civil.ts';
import type { BillCheckInput } from '../shapes/bill-check.ts';
import type { WrittenEstimate } from '../shapes/written-estimate.ts';
import { priceOf } from './price-levers.ts';

export interface BillFault {
  readonly code:
    | 'bill-ends-before-it-begins'
    | 'bill-too-long'
    | 'bill-price-missing'
    | 'bill-in-credit'
    | 'bill-price-unlikely'
    | 'tariff-changed-later'
    | 'estimate-without-heat-pump';
  readonly data: { readonly [name: string]: string | number };
}

const MOST_DAYS = 1100;
/** Beyond these no home pays for a kWh of electricity, whatever its hours: most likely the unit is another. Common practice, no source. */
const LIKELY_PENCE = { low: 1, high: 150 } as const;

/** Faults of a bill and written estimate; with none, `checkBill` answers. */
export function findBillFaults(estimate: WrittenEstimate, bill: BillCheckInput): BillFault[] {
  const faults: BillFault[] = [];
  const days = daysBetween(bill.from, bill.to);
  if (days <= 0) faults.push({ code: 'bill-ends-before-it-begins', data: { from: bill.from, to: bill.to } });
  if (days > MOST_DAYS) faults.push({ code: 'bill-too-long', data: { days, most: MOST_DAYS } });
  if (bill.pencePerKWh === 0 && bill.totalPence === undefined && bill.boughtKWh > 0) {
    faults.push({ code: 'bill-price-missing', data: { boughtKWh: bill.boughtKWh } });
  }
  // Credits and payments are taken off: at a price below nothing no range would mean anything.
  if (bill.totalPence !== undefined && bill.totalPence < 0 && bill.boughtKWh > 0) {
    faults.push({ code: 'bill-in-credit', data: { totalPence: bill.totalPence } });
  }
  const pence = priceOf(bill);
  if (pence > 0 && (pence < LIKELY_PENCE.low || pence > LIKELY_PENCE.high)) {
    faults.push({ code: 'bill-price-unlikely', data: { pence, ...LIKELY_PENCE } });
  }
  const { tariffChange } = bill;
  if (tariffChange && tariffChange.on >= bill.to)
    faults.push({ code: 'tariff-changed-later', data: { on: tariffChange.on, to: bill.to } });
  if (!estimate.appraisal.systems.some(({ id }) => id === 'heat-pump')) {
    faults.push({ code: 'estimate-without-heat-pump', data: {} });
  }
  return faults;
}
