/** Whether the prices on a bill hold VAT already. */

import type { Bill } from '../../model/shapes/bill.ts';
import { sumOf } from '../../model/units/sums.ts';

/** On domestic fuel and power; VAT Notice 701/19. */
const DOMESTIC_VAT = 0.05;
/** Each of a few lines is rounded. */
const ROUNDING_PENCE = 3;

/** By the words above the prices, else by how the printed lines make the total. Without any sign VAT is taken to be added. */
export function pricesHoldVat(bill: Bill, headings: string): boolean {
  if (/\b(incl?(uding|usive|\.)?|with|inside)\b[ .]*(of )?vat\b/.test(headings)) return true;
  if (/\b(excl?(uding|usive|\.)?|ex|without|before)\b[ .]*vat\b/.test(headings)) return false;
  const { vat, netPence, totalPence } = bill;
  const adjusted = (when: 'before' | 'after') =>
    sumOf(bill.adjustments.map((one) => (one.vat === when ? (one.kind === 'charge' ? one.pence : -one.pence) : 0)));
  const lines = linesOf(bill) + adjusted('before');
  const near = (a: number, b: number) => Math.abs(a - b) <= ROUNDING_PENCE;
  if (vat.pence === 0 || (netPence !== undefined && near(lines, netPence))) return false;
  if (totalPence === undefined) return false;
  const total = totalPence - adjusted('after');
  if (vat.pence !== undefined) return near(lines, total) && !near(lines + vat.pence, total);
  if (vat.rate !== undefined) return near(lines, total) && vat.rate > 0;
  return Math.abs(lines - total) < Math.abs(lines * (1 + DOMESTIC_VAT) - total);
}

function linesOf(bill: Bill): number {
  const units = bill.charges.map((line) => line.pence ?? (line.kWh ?? 0) * (line.pencePerKWh ?? 0));
  const standing = bill.standing.map((line) => line.pence ?? (line.days ?? 0) * (line.pencePerDay ?? 0));
  return sumOf([...units, ...standing]);
}
