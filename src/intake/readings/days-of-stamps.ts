/** Which day each row of a table of days is of, where its stamp bears a clock time or its dates may be those of the day after. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import { plainWords } from '../layout/headings.ts';
import type { Dates } from '../layout/read-dates.ts';
import type { Sheet } from '../layout/sheet.ts';
import { columnName } from '../layout/value-cells.ts';
import { PERIOD_END } from '../layout/vocabulary.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { isOfDegrees } from '../terms/units.ts';
import { cellText } from '../text/table.ts';
import type { StampSide } from './stamp-side.ts';

const MINUTES_A_DAY = 1440;
const NOON = 720;
/** From then on a midnight of a clock further east: "23:00" and "22:00" in UTC are those of Berlin. */
const EVENING = 1200;
/** Fewer days may begin and end anywhere. */
const LEAST_DAYS = 27;

/** Day since 1970 of each row: the one in which most of its hours lie. Asks where nothing tells whether it begins or ends there. */
export function daysOfStamps(
  sheet: Sheet,
  column: number,
  dates: Dates,
  choices: IntakeChoices,
  book: RemarkBook,
): Float64Array {
  const side = choices.stamp ?? sideOf(sheet, column, dates);
  if (side === 'unknown')
    book.add('stamp-side-asked', 'question', { column: columnName(sheet, column), expected: 'start' });
  const toMiddle = side === 'start' && dates.kind === 'time' ? NOON - 1 : side === 'end' ? -NOON : 0;
  return dates.civilMinute.subarray(0, dates.count).map((minute) => Math.floor((minute + toMiddle) / MINUTES_A_DAY));
}

/** Undefined where each row is of the date that it bears. */
function sideOf(sheet: Sheet, column: number, dates: Dates): StampSide | 'unknown' | undefined {
  const { heading = '', meaning } = sheet.columns[column] ?? {};
  const minutes = dates.civilMinute.subarray(0, dates.count);
  if (dates.kind !== 'time') return fillsMonthsADayLate(minutes) ? 'unknown' : undefined;
  if (meaning?.role === 'from') return 'start';
  // The last second of a day was read as the midnight after it.
  const ends = /[( ]/.test(heading) && PERIOD_END.test(plainWords(heading).replaceAll(/[()]/g, ' '));
  if (meaning?.role === 'to' || ends || /\D59:59/.test(cellText(sheet.table, dates.rows[0]!, column))) return 'end';
  const clocks = [...new Set(minutes.map((minute) => minute % MINUTES_A_DAY))];
  if (clocks.length === 1 && clocks[0] === 0) return fillsMonthsADayLate(minutes) ? 'unknown' : undefined;
  // Read at any time of the day.
  if (clocks.length > 2) return undefined;
  if (clocks.length === 2) return clocks.every((clock) => clock >= EVENING) ? 'start' : undefined;
  const isWeather = sheet.columns.some(
    (c) => isOfDegrees(c.meaning.unit) || c.meaning.carrier === 'outdoor-temperature',
  );
  return clocks[0] === NOON || isWeather || clocks[0]! >= MINUTES_A_DAY - 1 ? undefined : 'unknown';
}

/** From the second of a month to the first of another: each date may be the one on which its day had ended. */
function fillsMonthsADayLate(minutes: Float64Array): boolean {
  const days = minutes.map((minute) => Math.floor(minute / MINUTES_A_DAY)).sort();
  const dayOfMonth = (day: number) => Number(toCivilDate(day).slice(8));
  return days.length > LEAST_DAYS && dayOfMonth(days[0]!) === 2 && dayOfMonth(days.at(-1)!) === 1;
}
