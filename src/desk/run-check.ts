/** Holds a promise against a later bill. */
import type { BillCheck, BillCheckInput, KeptPromise } from '../model/appraisal/promise.ts';
import { findBillFaults } from '../model/bill-gap/bill-faults.ts';
import { checkBill } from '../model/bill-gap/check-bill.ts';
import { toDayNumber } from '../model/calendar/civil.ts';
import type { Series } from '../model/evidence/evidence.ts';
import { reference } from '../reference/index.ts';
import { billFaultSentence } from '../words/refusals.ts';
import { DeskError } from './contract.ts';
import { dayOf } from './days.ts';

export interface CheckRun {
  readonly id: string;
  readonly madeOn: string;
  readonly promise: KeptPromise;
  readonly bill: BillCheckInput;
  readonly series: readonly Series[];
}

export function runCheck({ id, madeOn, promise, bill, series }: CheckRun): BillCheck {
  dayOf(bill.from, 'from');
  dayOf(bill.to, 'to');
  const [fault] = findBillFaults(promise, bill);
  if (fault) throw new DeskError({ code: fault.code, message: billFaultSentence(fault), where: 'the bill' });
  const weather = series.find(
    ({ carrier, from, to }) => carrier === 'outdoor-temperature' && from <= bill.from && to >= bill.to,
  );
  return checkBill({ promise, bill, reference, id, madeOn, ...(weather ? { weather } : {}) });
}

/** Units that the heat pump's own meter shows for the days of a bill; undefined where days are missing. */
export function heatPumpUnits(series: readonly Series[], from: string, to: string): number | undefined {
  const [first, last] = [toDayNumber(from), toDayNumber(to)];
  for (const { role, carrier, days } of series) {
    if (role !== 'heat-pump' || carrier !== 'electricity' || !days) continue;
    const start = toDayNumber(days.first);
    const values = Array.from({ length: last - first }, (_, i) => days.values[first - start + i] ?? null);
    if (values.every((value) => value !== null)) return values.reduce((sum, value) => sum + value, 0);
  }
  return undefined;
}
