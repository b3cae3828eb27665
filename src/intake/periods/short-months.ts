/**
 * A month that holds far less than its like: one that was not over when the file was made, in which somebody moved in, or
 * that was not read. Asked, since an empty home writes the same.
 */
import type { Quantity } from '../layout/settle-unit.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import type { RawPeriod } from './raw-period.ts';

/** Below this share of the same month of another year an amount is doubted; below that of the month beside it where there is none. Judgements. */
const SHORT = 0.5;
const SHORT_BESIDE = 0.4;
/** What heats falls more steeply from one month to the next. A judgement. */
const SHORT_OF_HEATING = 0.1;
const LEAST_PERIODS = 4;
const DAYS_OF_YEAR = 365;

/** @returns those that count: all, or all but the short ones where they are said to be parts */
export function askShortMonths(
  raw: readonly RawPeriod[],
  { carrier, role }: Quantity,
  { shortMonths }: IntakeChoices,
  column: string,
  book: RemarkBook,
): readonly RawPeriod[] {
  if (role === 'export' || role === 'generation') return raw;
  const inOrder = raw.toSorted((a, b) => a.fromDay - b.fromDay);
  // Noughts that end a list are seen as not filled in.
  const months = inOrder.slice(0, inOrder.findLastIndex(({ kWh }) => kWh !== 0) + 1);
  if (months.length < LEAST_PERIODS) return raw;
  const steep = carrier === 'electricity' && role === 'import' ? SHORT_BESIDE : SHORT_OF_HEATING;
  const isShort = (one: RawPeriod, beside: RawPeriod): boolean => {
    const others = months.filter((other) => other !== one && isSameMonth(other, one));
    const isLow = (other: RawPeriod, share: number) => perDay(one) < share * perDay(other);
    return isLow(beside, others.length > 0 ? 1 : steep) && others.every((other) => isLow(other, SHORT));
  };
  const edges = [
    [months[0]!, months[1]!],
    [months.at(-1)!, months.at(-2)!],
  ] as const;
  const short = edges.flatMap(([edge, beside]) => (isShort(edge, beside) ? [edge] : []));
  // No home with a fridge goes through a month without electricity.
  if (carrier === 'electricity' && role === 'import')
    short.push(...months.slice(1, -1).filter(({ kWh }, i) => kWh === 0 && months[i]!.kWh > 0));
  if (short.length === 0) return raw;
  const [first] = short.toSorted((a, b) => a.fromDay - b.fromDay);
  const said = { row: first!.line, column, effectKWh: first!.kWh, count: short.length };
  if (shortMonths === undefined) book.add('short-month-asked', 'question', said);
  if (shortMonths !== 'parts') return raw;
  book.add('short-month-left-out', 'note', said);
  return raw.filter((one) => !short.includes(one));
}

const perDay = ({ kWh, fromDay, toDay }: RawPeriod): number => kWh / (toDay - fromDay);

const isSameMonth = (a: RawPeriod, b: RawPeriod): boolean => {
  const years = (a.fromDay - b.fromDay) / DAYS_OF_YEAR;
  return Math.abs(years - Math.round(years)) * DAYS_OF_YEAR < 3 && Math.round(years) !== 0;
};
