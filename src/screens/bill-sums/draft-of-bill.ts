/** A bill from a file as the draft that a person would have typed of it. */

import { addDays } from '../../model/calendar/civil.ts';
import type { Bill, BillMeter } from '../../model/shapes/bill.ts';
import { type BillDraft, emptyBill, type LineDraft } from './bill-lines-draft.ts';

export function draftOfBill(bill: Bill): BillDraft {
  const { adjustments, vat } = bill;
  return {
    ...emptyBill(bill.fuel),
    from: bill.from,
    lastDay: addDays(bill.to, -1),
    meterUnit: bill.meterUnit,
    correction: bill.correction,
    calorific: bill.calorificMJPerM3,
    lines: bill.charges.map((charge, at): LineDraft => {
      const isFirst = bill.charges.findIndex(({ meter }) => meter === charge.meter) === at;
      const meter = isFirst ? bill.meters.find(({ name }) => name === charge.meter) : undefined;
      return {
        name: charge.meter,
        from: isFirst ? '' : (charge.from ?? ''),
        estimated: meter !== undefined && isEstimated(meter),
        opening: meter?.opening,
        closing: meter?.closing,
        metered: meter?.metered,
        kWh: charge.kWh,
        pencePerKWh: charge.pencePerKWh,
        pounds: pounds(charge.pence),
        ownKWh: meter?.ownKWh,
      };
    }),
    standing:
      bill.standing.length === 0
        ? [{ from: '' }]
        : bill.standing.map(({ from, days, pencePerDay, pence }, at) => ({
            from: at === 0 ? '' : (from ?? ''),
            days,
            pencePerDay,
            pounds: pounds(pence),
          })),
    adjustments: adjustments.map(({ kind, name, pence, vat: side }) => ({
      kind,
      name,
      pounds: pence / 100,
      vat: side,
    })),
    vatIncluded: vat.included,
    vatPercent: vat.rate === undefined ? '5' : String(Number((vat.rate * 100).toFixed(2))),
    vatPounds: pounds(vat.pence),
    netPounds: pounds(bill.netPence),
    totalPounds: pounds(bill.totalPence),
  };
}

const isEstimated = ({ openingKind, closingKind }: BillMeter): boolean =>
  openingKind === 'estimated' || closingKind === 'estimated';
const pounds = (pence: number | undefined): number | undefined => (pence === undefined ? undefined : pence / 100);
