/** A bill worked out again from readings, dates and tariff, with what would explain a difference. */

import type { Bill } from '../shapes/bill.ts';
import type { Tariff } from '../shapes/tariff.ts';
import { type BillRow, compareRows, type Gap, gapOf } from './compare-rows.ts';
import type { GasConstants } from './energy.ts';
import { expectedTerms } from './recompute-lines.ts';
import { listSuspicions, type Suspicion } from './suspicions.ts';
import type { BillTerms } from './terms.ts';

export interface Explanation {
  /** One thing, or two that only together close the difference. */
  readonly causes: readonly Pick<Suspicion, 'code' | 'data'>[];
  /** `whole` leaves a penny at most, also in each printed line; `most` closes four fifths or more. */
  readonly reach: 'whole' | 'most';
  /** Of the total, or of the lines where the total agrees; pence without sign. */
  readonly leftPence: number;
}

export interface CheckedBill {
  readonly rows: readonly BillRow[];
  readonly printedPence?: number;
  readonly reckonedPence: number;
  /** Printed less reckoned; above 0 the bill asks too much. Absent where no total is printed. */
  readonly differencePence?: number;
  /** Whether every printed sum of money is within a penny. */
  readonly agrees: boolean;
  readonly explanations: readonly Explanation[];
}

export interface BillSumsInput {
  readonly bill: Bill;
  readonly gas: GasConstants;
  /** What homes pay, where no tariff says it: 0.05. */
  readonly vatRate: number;
  readonly tariff?: Tariff | undefined;
}

const PENNY = 1;
/** What is left of a difference that is explained for the most part. */
const MOST_LEFT = 0.2;
const MOST_SHOWN = 3;

/**
 * Checks the sums of a bill [pence, to the penny]. Expected are the units between the readings (gas: units × 2.83 if
 * hundred cubic feet × correction × calorific value / 3.6), the tariff's prices of the days, the days from first to last
 * and VAT; each suspicion is reckoned anew and named only where it closes the difference to a penny, or four fifths of it.
 */
export function checkBillSums(input: BillSumsInput): CheckedBill {
  const { bill } = input;
  const expected = expectedTerms(input);
  const rows = compareRows(bill, expected);
  const gap = gapOf(rows);
  const agrees = gap.total <= PENNY && isClosed(gap);
  const { reckoned, printed, difference } = rows.find(({ kind }) => kind === 'total')!;
  return {
    rows,
    ...(printed === undefined ? {} : { printedPence: printed }),
    reckonedPence: reckoned,
    ...(difference === undefined ? {} : { differencePence: difference }),
    agrees,
    explanations: agrees ? [] : explain(bill, expected, gap, listSuspicions(input, expected)),
  };
}

/** A penny for the total and one for each printed line, since a supplier may round elsewhere. */
const isClosed = ({ total, lines, count }: Gap): boolean => total <= PENNY && lines <= count * PENNY;

/** The difference that counts: that of the total, or of the lines where their errors cancel in it. */
const sizeOf = (gap: Gap, ofLines: boolean): number => (ofLines ? gap.lines : gap.total);

function explain(bill: Bill, expected: BillTerms, before: Gap, suspicions: readonly Suspicion[]): Explanation[] {
  const ofLines = before.total <= PENNY;
  const tried = suspicions.map((one) => ({ one, gap: gapOf(compareRows(bill, one.change(expected))) }));
  const single = tried.flatMap(({ one, gap }) => judge([one], gap, before, ofLines));
  if (single.some(({ reach }) => reach === 'whole')) return ranked(single);
  const pairs: Explanation[] = [];
  for (const [place, first] of suspicions.entries()) {
    for (const second of suspicions.slice(place + 1)) {
      if (first.code === second.code) continue;
      const gap = gapOf(compareRows(bill, second.change(first.change(expected))));
      pairs.push(...judge([first, second], gap, before, ofLines).filter(({ reach }) => reach === 'whole'));
    }
  }
  // Two causes are held out only where lines are printed that both must close; a total alone fits too many pairs.
  return ranked(before.count >= LINES_FOR_PAIRS ? [...pairs, ...single] : single);
}
const LINES_FOR_PAIRS = 2;

function judge(causes: readonly Suspicion[], gap: Gap, before: Gap, ofLines: boolean): Explanation[] {
  const named = causes.map(({ code, data }) => ({ code, data }));
  const leftPence = sizeOf(gap, ofLines);
  if (isClosed(gap)) return [{ causes: named, reach: 'whole', leftPence }];
  const closesMost = leftPence <= sizeOf(before, ofLines) * MOST_LEFT && gap.lines <= before.lines;
  return closesMost && gap.total <= Math.max(before.total, PENNY) ? [{ causes: named, reach: 'most', leftPence }] : [];
}

/**
 * The closest first, each cause once; where one closes all, what closes only most is left out. That the units do not
 * follow from the readings says no more than the line itself, and gives way to whatever says why.
 */
function ranked(list: readonly Explanation[]): Explanation[] {
  const isWhole = ({ reach }: Explanation) => reach === 'whole';
  const isReason = ({ causes }: Explanation) => causes.some(({ code }) => code !== 'units-not-from-readings');
  const whole = list.some(isWhole);
  const reason = list.some((one) => isWhole(one) && isReason(one));
  const fitting = list
    .filter((one) => !whole || isWhole(one))
    .filter((one) => !reason || isReason(one))
    .toSorted((a, b) => a.causes.length - b.causes.length || a.leftPence - b.leftPence);
  const seen = new Set<string>();
  return fitting
    .filter(({ causes }) => {
      const key = causes.map(({ code }) => code).join(' ');
      return !seen.has(key) && seen.add(key);
    })
    .slice(0, MOST_SHOWN);
}
