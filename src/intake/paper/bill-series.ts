/** Bills on paper as a record of what was used and paid, one period a bill. */
import { addDays, daysBetween, toDayNumber } from '../../model/calendar/civil.ts';
import type { Bill } from '../../model/shapes/bill.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import { periodSeries } from '../periods/period-series.ts';
import type { RawPeriod } from '../periods/raw-period.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import type { SectionBill } from './bill-of-section.ts';
import type { ReadSection } from './values.ts';
import { SERVICE } from './vocabulary.ts';

/** The bills of one fuel as a series of periods. */
export function seriesOf(
  own: readonly ReadSection[],
  at: number,
  rowOf: (section: ReadSection) => number,
  book: RemarkBook,
  choices: IntakeChoices,
): Series[] {
  const said = choices.paper ?? {};
  const fuel = own[0]?.fuel;
  const made = own.flatMap((one) => (one.made ? [{ ...one, made: one.made, row: rowOf(one) }] : []));
  if (made.length === 0 || !fuel) return [];
  const twice = made.find(({ made: { bill } }, i) => made.slice(0, i).some((one) => isOtherUse(one.made.bill, bill)));
  if (twice)
    book.add('paper-same-days', 'refusal', {
      foundTold: tell('day-to-day', {
        low: { on: twice.made.bill.from },
        high: { on: addDays(twice.made.bill.to, -1) },
      }),
    });
  const raw = made.map((one) => periodOf(one, one.made, one.row));
  const quantity = { unit: 'kWh', carrier: fuel, role: 'import', zeroAt: 0, kWhPerUnit: 1 } as const;
  const series = periodSeries(`series-${at + 1}`, fuel, quantity, raw, book, choices);
  return series ? [{ ...series, bills: made.map(({ row, made: { bill } }) => ({ row, bill })) }] : [];

  function periodOf(
    { section }: ReadSection,
    { bill, sums, vatRate, sharedPence }: SectionBill,
    row: number,
  ): RawPeriod {
    const kWh = kWhOf(bill);
    // A penny of rounding is the supplier's.
    const isAsPrinted = said.asPrinted || sums.agrees;
    const total = isAsPrinted && bill.totalPence !== undefined ? bill.totalPence : sums.reckonedPence;
    // A credit is no lower use and no lower price; what was laid on is paid like the rest, unless it is for no energy.
    const credits = (section.totals?.after ?? []).reduce((sum, { pence }) => sum + Math.min(0, pence), 0);
    const taxed = bill.vat.included ? 1 : 1 + vatRate;
    const services = servicesOf(bill).reduce((sum, { pence, vat }) => sum + pence * (vat === 'before' ? taxed : 1), 0);
    return {
      fromDay: toDayNumber(bill.from),
      toDay: toDayNumber(bill.from) + daysBetween(bill.from, bill.to),
      quantity: kWh,
      kWh,
      costPence: total - credits - Math.round(services) + sharedPence,
      quality: qualityOf(bill),
      line: row,
    };
  }
}

const kWhOf = ({ meters }: Bill): number => Number(meters.reduce((sum, { kWh = 0 }) => sum + kWh, 0).toFixed(6));
/** The same days with another use: a bill that was put right, or another meter's. */
const isOtherUse = (a: Bill, b: Bill): boolean => a.from === b.from && a.to === b.to && kWhOf(a) !== kWhOf(b);

/** What was charged for beside energy and its supply. */
export const servicesOf = ({ adjustments }: Bill): Bill['adjustments'] =>
  adjustments.filter(({ kind, name }) => kind === 'charge' && SERVICE.test(name));

function qualityOf({ meters }: Bill): RawPeriod['quality'] {
  const kinds = meters.flatMap(({ openingKind, closingKind }) => [openingKind, closingKind]);
  if (kinds.includes('estimated')) return 'estimated';
  if (kinds.includes('customer')) return 'customer';
  return kinds.every((kind) => kind === 'actual') ? 'actual' : 'unknown';
}
