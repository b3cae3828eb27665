/** What a bill comes to, from terms in which nothing is left open; rounded where a bill rounds. */

import type { CivilDate } from '../shapes/dates.ts';
import { roundToPenny } from '../units/money.ts';
import { sumOf } from '../units/sums.ts';

/** Part of a line with one price: a share of its units, or some of its days. */
export interface Piece {
  /** Days (or months) that the price holds. */
  readonly quantity: number;
  readonly price: number;
}

export interface UnitTerm {
  readonly meter: string;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly kWh: number;
  /** More than one where the price changes within the line; the units are shared by days. */
  readonly pieces: readonly Piece[];
}

export interface StandingTerm {
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly unit: 'day' | 'month';
  readonly pieces: readonly Piece[];
}

export interface AdjustmentTerm {
  readonly name: string;
  /** With its sign. */
  readonly pence: number;
  readonly vat: 'before' | 'after';
}

export interface BillTerms {
  readonly units: readonly UnitTerm[];
  readonly standing: readonly StandingTerm[];
  readonly adjustments: readonly AdjustmentTerm[];
  readonly vatRate: number;
  /** `added` on the sum; `inside` the prices; `twice` when it is laid on a sum that holds it already. */
  readonly vat: 'added' | 'inside' | 'twice';
}

export interface ReckonedBill {
  readonly units: readonly number[];
  readonly standing: readonly number[];
  readonly netPence: number;
  readonly vatPence: number;
  readonly totalPence: number;
}

/** One line [pence]: each price in it rounded to the penny. */
export function unitPence({ kWh, pieces }: UnitTerm): number {
  const days = sumOf(pieces.map(({ quantity }) => quantity));
  return sumOf(pieces.map(({ quantity, price }) => roundToPenny(kWh * (days > 0 ? quantity / days : 1) * price)));
}

const standingPence = ({ pieces }: StandingTerm): number =>
  sumOf(pieces.map(({ quantity, price }) => roundToPenny(quantity * price)));

/**
 * The bill of some terms [pence]. VAT added = (lines + what bears VAT) × rate, rounded; VAT inside = sum × rate / (1 +
 * rate), rounded, for information. Adjustments after VAT are laid on last. Common practice, no source: a supplier that
 * rounds VAT by the line differs by a penny or two.
 */
export function reckonTerms(terms: BillTerms): ReckonedBill {
  const units = terms.units.map(unitPence);
  const standing = terms.standing.map(standingPence);
  const of = (vat: 'before' | 'after') =>
    sumOf(terms.adjustments.filter((one) => one.vat === vat).map(({ pence }) => pence));
  const lines = sumOf(units) + sumOf(standing) + of('before');
  const { vatRate: rate } = terms;
  if (terms.vat === 'inside') {
    const vatPence = roundToPenny((lines * rate) / (1 + rate));
    return { units, standing, netPence: lines - vatPence, vatPence, totalPence: lines + of('after') };
  }
  const once = roundToPenny(lines * rate);
  const vatPence = terms.vat === 'twice' ? once + roundToPenny((lines + once) * rate) : once;
  return { units, standing, netPence: lines, vatPence, totalPence: lines + vatPence + of('after') };
}
