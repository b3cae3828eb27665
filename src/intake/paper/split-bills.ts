/** Several bills in one paper: pages that state other days, or write amounts otherwise, begin another bill, if it has charges of its own. */

import { toCivilDate } from '../../model/calendar/civil.ts';
import { type DatePair, pairDates } from './date-pairs.ts';
import { readRows } from './figures.ts';
import type { Row } from './page.ts';
import { statesDays } from './period.ts';
import { marksOf, type Understanding } from './understand.ts';

/** Shorter spans are parts of a bill, or days for paying it. */
const LEAST_DAYS = 20;
/** Days that two spans share, of the shorter, at which they are still one bill's. */
const MOST_SHARED = 0.1;

export interface SplitBills {
  readonly bills: readonly Understanding[];
  /** Their spans, where nothing but the person can say whether they are several bills. */
  readonly doubt?: string;
}

/** @param said what the person said of it */
export function splitBills(
  rows: readonly Row[],
  said: 'one' | 'several' | undefined,
  understandRows: (rows: readonly Row[]) => Understanding,
): SplitBills {
  const whole = understandRows(rows);
  const pages = [...Map.groupBy(rows, ({ page }) => page)];
  if (pages.length < 2 || said === 'one') return { bills: [whole] };
  const groups: { span: DatePair | undefined; marks: string; pages: number[] }[] = [];
  for (const [page, own] of pages) {
    const span = statedSpan(own);
    const marks = marksOf(own).join('');
    const last = groups.at(-1);
    const isOther =
      last?.span && span && sharedDays(last.span, span) < MOST_SHARED * Math.min(last.span.days, span.days);
    // What one of them writes with another decimal sign would be lost in the other's.
    const isWrittenOtherwise = last?.marks.length === 1 && marks.length === 1 && last.marks !== marks;
    if (!last || isOther || isWrittenOtherwise) groups.push({ span, marks, pages: [page] });
    else {
      last.pages.push(page);
      last.span = !last.span || (span && span.days > last.span.days) ? span : last.span;
    }
  }
  const parts = groups.map((group) => ({
    ...group,
    bill: understandRows(rows.filter(({ page }) => group.pages.includes(page))),
  }));
  const charged = parts.filter(({ bill }) => bill.sections.some(({ lines }) => lines.some(({ product }) => product)));
  const isMixed = new Set(groups.map(({ marks }) => marks).filter((marks) => marks.length === 1)).size > 1;
  const isPriced = groups.every((group) =>
    rows.some(({ page, words }) => group.pages.includes(page) && words.some(({ text }) => /[£€$]/.test(text))),
  );
  if (charged.length < 2)
    return { bills: [whole], ...(isMixed && isPriced ? { doubt: pages.map(([page]) => page + 1).join(', ') } : {}) };
  const isComplete = ({ sections, together }: Understanding) =>
    sections.every(({ totals }) => totals !== undefined || together !== undefined);
  if (said === 'several' || (charged.length === parts.length && charged.every(({ bill }) => isComplete(bill))))
    return { bills: charged.map(({ bill }) => bill) };
  const doubt = charged.map(({ span }) => (span ? spanText(span) : '')).join(', ');
  return { bills: [whole], doubt };
}

const spanText = ({ from, to }: DatePair): string => `${toCivilDate(from.day)} – ${toCivilDate(to.day)}`;

/** The longest two dates of a page beside words for the days of a bill, or for a fuel. */
function statedSpan(own: readonly Row[]): DatePair | undefined {
  const rows = readRows(own, '.');
  return pairDates(rows)
    .filter(({ from, to, days }) => days >= LEAST_DAYS && statesDays(`${rows[from.row]!.words} ${rows[to.row]!.words}`))
    .toSorted((a, b) => b.days - a.days)[0];
}

const sharedDays = (a: DatePair, b: DatePair): number =>
  Math.min(a.to.day, b.to.day) - Math.max(a.from.day, b.from.day);
