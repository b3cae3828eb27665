/** The days of a bill: which two dates of the page they lie between, and whether the last one belongs to it. */

import { monthOf, toCivilDate, yearOf } from '../../model/calendar/civil.ts';
import type { DatePair } from './date-pairs.ts';
import type { RowFacts } from './figures.ts';
import { fuelsIn } from './fuel-of.ts';
import { holdsReadings, type PaperLine } from './lines.ts';
import type { Proof } from './relations.ts';
import { COMPARED, EARLIER, PERIOD, READING } from './vocabulary.ts';

export interface PaperPeriod {
  readonly pair: DatePair;
  /** Whether the last day belongs to the bill; undefined where no count of days says. */
  readonly inclusive: boolean | undefined;
  readonly proof?: Proof;
}

/** The days of the bill: the longest two dates that a proved count of days or months fits, else those near the words for it. */
export function periodOf(
  pairs: readonly DatePair[],
  lines: readonly PaperLine[],
  rows: readonly RowFacts[],
): PaperPeriod | undefined {
  const standing = lines.filter(({ kind, product }) => kind === 'standing' && product);
  const dayLines = standing.filter(({ quantity }) => quantity?.kind !== 'months');
  const counts = dayLines.map(({ quantity }) => quantity!);
  const all = counts.reduce((sum, { value }) => sum + value, 0);
  const monthly = standing.flatMap(({ quantity }) => (quantity?.kind === 'months' ? quantity : []));
  const months = monthly.reduce((sum, { value }) => sum + value, 0);
  const fits = (pair: DatePair): PaperPeriod | undefined => {
    const inRow = rows[pair.to.row]!.figures.filter(({ kind }) => kind === 'days');
    const known = [
      ...(counts.length > 1 ? [{ value: all, figures: counts }] : []),
      ...[...counts, ...inRow].map((one) => ({ value: one.value, figures: [one] })),
    ];
    for (const { value, figures } of known) {
      for (const inclusive of [false, true]) {
        if (pair.days + (inclusive ? 1 : 0) !== value) continue;
        const sum = `${pair.from.text} – ${pair.to.text} = ${figures.map(({ text }) => text).join(' + ')}`;
        return { pair, inclusive, proof: { figures, sum, bits: Math.log2(value) + 4 } };
      }
    }
    for (const inclusive of [false, true]) {
      const spanned = spansMonths(pair, inclusive);
      const each = monthly.filter(({ value }) => value === spanned);
      const counted = each.length > 0 ? each.slice(0, 1) : spanned === months ? monthly : [];
      if (counted.length === 0) continue;
      const sum = `${pair.from.text} – ${pair.to.text} = ${counted.map(({ text }) => text).join(' + ')}`;
      return { pair, inclusive, proof: { figures: counted, sum, bits: 8 } };
    }
    return undefined;
  };
  // Each of two papers in one file states its own days.
  const notOver = ({ pair: { from } }: PaperPeriod) =>
    Number(!lines.some(({ dates }) => dates?.from.row === from.row && dates.from.day === from.day));
  const ofOther = ({ pair: { from, to } }: PaperPeriod) => {
    const [named, other] = fuelsIn(`${rows[from.row]!.words} ${rows[to.row]!.words}`);
    return named !== undefined && !other && lines.some(({ fuel }) => fuel !== undefined && fuel !== named);
  };
  // Days of readings may fit the same count a day aside; those that the bill states go first.
  const ofReadings = ({ pair: { from } }: PaperPeriod) =>
    Number(saysReadings(rows[from.row]!) || holdsReadings(rows[from.row]!));
  const stated = pairs.filter(({ from, to }) => !EARLIER.test(`${rows[from.row]!.words} ${rows[to.row]!.words}`));
  const own = [...stated, ...joinedStretches(lines)];
  const fitting = own
    .flatMap((pair) => fits(pair) ?? [])
    .toSorted((a, b) =>
      Math.abs(b.pair.days - a.pair.days) > 1
        ? b.pair.days - a.pair.days
        : ofReadings(a) - ofReadings(b) || notOver(a) - notOver(b),
    );
  if (fitting[0]) {
    const { pair, inclusive } = fitting[0];
    // Reading days may be a day aside, and a longer statement about it leaves open which of the two is meant.
    const isOpen =
      ofReadings(fitting[0]) ||
      ofOther(fitting[0]) ||
      own.some((other) => holds(other, pair, rows)) ||
      dayLines.some((one) => isApart(one, pair));
    return isOpen ? { pair, inclusive } : fitting[0];
  }
  const named = own.filter(({ from, to }) => PERIOD.test(`${rows[from.row]!.words} ${rows[to.row]!.words}`));
  const [longest] = (named.length > 0 ? named : own).toSorted((a, b) => b.days - a.days);
  // From the first of a month to the last of one, both belong to it.
  const isWhole = longest && toCivilDate(longest.from.day).endsWith('-01') && spansMonths(longest, true) > 0;
  return longest && { pair: longest, inclusive: isWhole ? true : undefined };
}

/** Days of charges that follow each other without a gap, such as those before and after a change of price. */
function joinedStretches(lines: readonly PaperLine[]): DatePair[] {
  const stretches = lines
    .flatMap(({ dates }) => dates ?? [])
    .filter(({ from, to }, i, all) => all.findIndex((one) => one.from.day === from.day && one.to.day === to.day) === i)
    .toSorted((a, b) => a.from.day - b.from.day);
  const [first, last] = [stretches[0], stretches.at(-1)];
  const gaps = new Set(stretches.slice(1).map(({ from }, i) => from.day - stretches[i]!.to.day));
  const isChain = gaps.size === 1 && (gaps.has(0) || gaps.has(1));
  return first && last && isChain ? [{ from: first.from, to: last.to, days: last.to.day - first.from.day }] : [];
}

/** Whether a charge states days of its own, by their count too, that are not among those of a bill. */
const isApart = ({ dates, quantity }: PaperLine, { from, to }: DatePair): boolean =>
  dates !== undefined &&
  (dates.from.day < from.day || dates.to.day > to.day) &&
  [dates.days, dates.days + 1].includes(quantity!.value);

/** A row that names a meter, and no number with it, may state any days. */
const saysReadings = ({ words, figures }: RowFacts): boolean =>
  READING.test(figures.length > 0 ? words : words.replaceAll(/\bmeters?\b/gi, ' '));

/** "Jaarnota stroom 1 maart 2025 t/m 28 februari 2026": the words of a period, or a fuel. */
export const statesDays = (words: string): boolean => PERIOD.test(words) || fuelsIn(words).length > 0;

const LONGEST_BILL = 400;
/** Whether two dates lie about two others, as the days of a bill lie about those of a part of it. */
function holds(outer: DatePair, inner: DatePair, rows: readonly RowFacts[]): boolean {
  const isAbout = outer.from.day <= inner.from.day && outer.to.day >= inner.to.day && outer.days > inner.days + 1;
  const words = `${rows[outer.from.row]!.words} ${rows[outer.to.row]!.words}`;
  return isAbout && outer.days < LONGEST_BILL && statesDays(words) && !COMPARED.test(words);
}

/** Whole calendar months between two days; NaN where they are none. */
export function spansMonths({ from, to }: DatePair, inclusive: boolean): number {
  const [first, last] = [toCivilDate(from.day), toCivilDate(to.day + (inclusive ? 1 : 0))];
  if (first.slice(8) !== last.slice(8)) return Number.NaN;
  return (yearOf(last) - yearOf(first)) * 12 + monthOf(last) - monthOf(first);
}
