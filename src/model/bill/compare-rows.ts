/** A bill line by line: what is printed, what it comes to, and the difference. */
import { daysBetween } from '../calendar/civil.ts';
import type { Bill } from '../shapes/bill.ts';
import type { CivilDate } from '../shapes/dates.ts';
import { printedKWh } from './energy.ts';
import { type BillTerms, type Piece, reckonTerms } from './terms.ts';

export interface BillRow {
  readonly kind: 'energy' | 'units' | 'days' | 'standing' | 'adjustment' | 'net' | 'vat' | 'total';
  /** Name of the meter or adjustment; empty for the others. */
  readonly name: string;
  readonly unit: 'kWh' | 'day' | 'p';
  readonly printed?: number;
  readonly reckoned: number;
  /** Printed less reckoned; absent where nothing is printed. */
  readonly difference?: number;
  readonly from?: CivilDate;
  readonly to?: CivilDate;
  /** Units of a line of money, and the prices it was reckoned at. */
  readonly quantity?: number;
  readonly pieces?: readonly Piece[];
  /** Of a standing charge, what its pieces count. */
  readonly per?: 'day' | 'month';
}

/** Every row of a bill under some terms; money rows add up to the last one. */
export function compareRows(bill: Bill, terms: BillTerms): BillRow[] {
  const reckoned = reckonTerms(terms);
  const row = (
    kind: BillRow['kind'],
    name: string,
    printed: number | undefined,
    value: number,
    rest = {},
  ): BillRow => ({
    kind,
    name,
    unit: kind === 'energy' ? 'kWh' : kind === 'days' ? 'day' : 'p',
    ...(printed === undefined ? {} : { printed, difference: printed - value }),
    reckoned: value,
    ...rest,
  });
  return [
    ...bill.meters.map((meter) => {
      const own = terms.units.filter((unit) => unit.meter === meter.name);
      const kWh = own.reduce((sum, unit) => sum + unit.kWh, 0);
      return row('energy', meter.name, printedKWh(bill, meter), kWh);
    }),
    ...terms.units.map(({ from, to, kWh, pieces, meter }, i) =>
      row('units', meter, bill.charges[i]!.pence, reckoned.units[i]!, { from, to, quantity: kWh, pieces }),
    ),
    ...terms.standing.flatMap(({ from, to, unit, pieces }, i) => {
      const line = bill.standing[i]!;
      const quantity = pieces.reduce((sum, piece) => sum + piece.quantity, 0);
      const money = row('standing', '', line.pence, reckoned.standing[i]!, { from, to, quantity, pieces, per: unit });
      if (line.days === undefined) return [money];
      return [row('days', '', line.days, unit === 'day' ? quantity : daysBetween(from, to)), money];
    }),
    ...terms.adjustments.map(({ name, pence }) => row('adjustment', name, pence, pence)),
    row('net', '', bill.netPence, reckoned.netPence),
    row('vat', '', bill.vat.pence, reckoned.vatPence),
    row('total', '', bill.totalPence, reckoned.totalPence),
  ];
}

export interface Gap {
  /** Printed total less reckoned, without sign, pence; 0 where no total is printed. */
  readonly total: number;
  /** The same over the lines of money, without the total. */
  readonly lines: number;
  /** Lines of money that are printed, so that each may be a penny off. */
  readonly count: number;
}

/** How far a bill is from its terms in money. */
export function gapOf(rows: readonly BillRow[]): Gap {
  const money = rows.filter(({ kind, difference }) => difference !== undefined && LINES.includes(kind));
  const total = rows.find(({ kind }) => kind === 'total')?.difference ?? 0;
  return {
    total: Math.abs(total),
    lines: money.reduce((sum, { difference = 0 }) => sum + Math.abs(difference), 0),
    count: money.length,
  };
}
const LINES: readonly BillRow['kind'][] = ['units', 'standing', 'vat'];
