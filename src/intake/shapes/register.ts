/** Counters: readings of one or several registers that go up, and what was used between them. */
import { isTemperature } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import { type IntakeShape, nothingRead, type ShapeInput } from '../importer/shape.ts';
import { type ColumnFacts, isNumberColumn, numberEitherWay } from '../layout/column-facts.ts';
import { isOfGrid, namesItself } from '../layout/column-words.ts';
import { countsOther } from '../layout/counter-beside.ts';
import { commonUnit, indicesOf, isOtherUse, joinPhases, remarkPhases } from '../layout/energy-columns.ts';
import { explainStrays } from '../layout/explain-strays.ts';
import { plainWords } from '../layout/headings.ts';
import { logColumns, remarkLog } from '../layout/heat-logs.ts';
import { findQualityColumn } from '../layout/quality-marks.ts';
import { quantityColumns } from '../layout/quantity-columns.ts';
import { type Dates, readDates, settleDayFirst } from '../layout/read-dates.ts';
import type { Sheet } from '../layout/sheet.ts';
import { stepOf } from '../layout/sheet-step.ts';
import { statedCarrier, statedUnit } from '../layout/stated-energy.ts';
import { factorOf, isMultiplied } from '../layout/title-words.ts';
import { columnName, settleDecimals } from '../layout/value-cells.ts';
import { AMOUNT } from '../layout/vocabulary.ts';
import { isMissing } from '../numbers/read-number.ts';
import { firstOfMonthAfter } from '../periods/row-periods.ts';
import { leaveOutLater, remarkOrder } from '../readings/remark-order.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import { listNames } from '../terms/remark-book.ts';
import { isOfDegrees, isPower, isVolumeOfGas, MOST_KWH_A_DAY, ratioOf } from '../terms/units.ts';
import { cellText } from '../text/table.ts';
import { readCounter } from './counter-series.ts';

/** Rising values over this many rows are no coincidence. */
const TELLING_ROWS = 30;
const WEEK_MINUTES = 7 * 1440;
/** Over so many a single fall is an exchange. */
const LONG_ROWS = 100;
/** A quarter of a year. */
const LONGEST_ROW_DAYS = 92;

export const register: IntakeShape = {
  name: 'counter',

  detect(sheet) {
    if (sheet.dateColumn < 0) return { fit: 0, reason: 'no column of dates' };
    const counters = counterColumns(sheet);
    const column = counters[0];
    if (!column) return { fit: 0.02, reason: 'no column that only goes up' };
    if (amountsBeside(sheet, counters).length > 0)
      return { fit: 0.3, reason: 'a counter, but a column of amounts used as well' };
    if (column.meaning.role === 'reading')
      return { fit: 0.93, reason: tell('named-a-reading', { column: column.heading }) };
    return { fit: 0.91, reason: tell('never-goes-down', { column: columnName(sheet, column.index) }) };
  },

  parse({ sheet, choices, context, book }) {
    const column = choices.columns?.stamp ?? choices.columns?.from ?? sheet.dateColumn;
    const dayFirst = settleDayFirst(sheet, column, choices, context.zone, book);
    const timeColumn = choices.columns?.time ?? stepOf(sheet).timeColumn;
    const written = readDates(sheet, column, timeColumn, dayFirst, context.zone, context.onProgress);
    const stamp = sideOfMonths(sheet, written, choices, book);
    const dates = leaveOutLater(sheet, stamp === 'end' ? atTheirEnd(written) : written, context, book);
    explainStrays(sheet, dates, choices, book);
    const { every = false } = choices;
    const chosen = every ? undefined : choices.columns?.value;
    const several = chosen === undefined ? counterColumns(sheet, choices.shape === register.name) : [];
    const one = chosen === undefined ? (several[0] ?? quantityColumns(sheet, [column])[0]) : sheet.columns[chosen];
    const rivals = chosen === undefined && several.length < 2 && one ? rivalsOf(sheet, one) : [];
    const columns = several.length > 1 ? several : one ? [one, ...(every ? rivals : [])] : [];
    if (columns.length === 0 || dates.count < 2) {
      book.add(one ? 'register-alone' : 'no-numbers', 'refusal', { column: columnName(sheet, column) });
      return nothingRead(choices, dates.count);
    }
    if (columns.length > 1) remarkSeveral(sheet, columns, book);
    // Said to be a counter, the others of the file may still be amounts.
    const amounts = several.length > 0 && choices.shape === register.name ? amountsBeside(sheet, several) : [];
    if (amounts.length > 0)
      book.add('columns-left-out', 'note', {
        found: listNames(amounts.map((c) => columnName(sheet, c.index))),
        expected: listNames(several.map((c) => columnName(sheet, c.index))),
      });
    remarkPhases(sheet, columns, book);
    if (rivals.length > 0 && !every)
      book.add('column-asked', 'question', {
        column: columnName(sheet, columns[0]!.index),
        found: listNames(rivals.map((c) => columnName(sheet, c.index))),
        count: rivals.length,
      });
    const times = readingsTimes(sheet);
    if (times !== undefined) {
      book.add('readings-times', 'refusal', { column: columnName(sheet, columns[0]!.index), found: times });
      return nothingRead(choices, dates.count);
    }
    const newestFirst = remarkOrder(dates, book) === 'newest first';
    const inOrder = orderInTime(dates.civilMinute, dates.count, newestFirst);
    const quality = choices.columns?.quality ?? findQualityColumn(sheet);
    const decimal = settleDecimals(sheet, columns, choices, book);
    const built = columns.flatMap((facts, i) => {
      // The clock is the file's, so it is settled by the first counter and asked about once.
      const counter = { facts, id: `series-${i + 1}`, dates, inOrder, decimal, quality };
      return readCounter(counter, { sheet, choices, context, book }) ?? [];
    });
    const first = built[0];
    if (!first) {
      book.add('register-alone', 'refusal', { column: columnName(sheet, columns[0]!.index) });
      return nothingRead(choices, dates.count);
    }
    if (choices.shape === undefined && built.every((b) => b.series.total === 0))
      book.add('register-still', 'question', {
        column: columnName(sheet, columns[0]!.index),
        found: cellText(sheet.table, dates.rows[0]!, columns[0]!.index),
        count: dates.count,
      });
    return {
      choices: {
        shape: register.name,
        ...commonUnit(built.map((b) => b.quantity)),
        ...(dayFirst === undefined ? {} : { dayFirst }),
        ...(first.clock === undefined ? {} : { clock: first.clock }),
        ...(stamp === undefined ? {} : { stamp }),
        columns: {
          stamp: column,
          ...(timeColumn === undefined ? {} : { time: timeColumn }),
          ...(columns.length === 1 ? { value: columns[0]!.index } : {}),
          ...(quality === undefined ? {} : { quality }),
        },
        decimal,
        ...(columns.length === 1 ? { carrier: first.quantity.carrier, role: first.quantity.role } : {}),
        ...(choices.calorificMJPerM3 === undefined ? {} : { calorificMJPerM3: choices.calorificMJPerM3 }),
      },
      series: built.flatMap((b) => (b.unread ? [b.series, b.unread] : [b.series])),
      intervals: built.flatMap((b) => b.intervals ?? []),
      firstDays: first.firstDays,
      dataRows: dates.count,
      valueColumns: indicesOf(columns),
    };
  },
};

/** On which side of the month that a row names its reading was taken; undefined where rows name days. */
function sideOfMonths(
  sheet: Sheet,
  { kind }: Dates,
  { stamp }: IntakeChoices,
  book: ShapeInput['book'],
): 'start' | 'end' | undefined {
  if (kind !== 'month' && kind !== 'quarter') return undefined;
  const words = sheet.columns.map(({ heading }) => plainWords(heading)).join(' ; ');
  const [begins, ends] = [AT_BEGIN.test(words), AT_END.test(words)];
  const said = begins === ends ? undefined : begins ? 'start' : 'end';
  if (stamp === undefined && said === undefined)
    book.add('period-side-asked', 'question', { column: columnName(sheet, sheet.dateColumn), expected: 'end' });
  return stamp ?? said ?? 'end';
}
const AT_BEGIN = /\b(start|begin(ning)?|opening|anfang|debut|begyndelse|1st|first)\b|monatsanfang/;
const AT_END = /\b(end|closing|ende|fin|eind|einde|slut|ultimo|last)\b|monatsende/;

/** Readings that were taken when their months were over. */
function atTheirEnd(dates: Dates): Dates {
  const months = dates.kind === 'quarter' ? 3 : 1;
  return {
    ...dates,
    civilMinute: dates.civilMinute.map((at) => firstOfMonthAfter(Math.floor(at / 1440), months) * 1440),
  };
}

/** Columns of energy, or of what the counters rose by, that rise and fall beside them. */
const amountsBeside = (sheet: Sheet, counters: readonly ColumnFacts[]): readonly ColumnFacts[] =>
  quantityColumns(sheet, [sheet.dateColumn]).filter(
    (c) =>
      !counters.includes(c) &&
      c.largest > c.smallest &&
      !isCounter(sheet, c) &&
      c.meaning.role === 'value' &&
      (isOfEnergy(sheet, c) ||
        (c.meaning.unit === undefined &&
          // Of a list with faults the readings tell more.
          c.words === 0 &&
          !isTemperatureColumn(c) &&
          counters.some((counter) => countsOther(sheet, counter, c)))),
  );

/** "Outdoor temperature" may have no unit. */
const isTemperatureColumn = ({ meaning: { unit, carrier } }: ColumnFacts): boolean =>
  isOfDegrees(unit) || (unit === undefined && carrier !== undefined && isTemperature(carrier));

/** By its own words, or by a unit that the titles give to all. */
function isOfEnergy(sheet: Sheet, column: ColumnFacts): boolean {
  const unit = statedUnit(sheet, column);
  return (unit !== undefined || column.meaning.carrier !== undefined) && !isTemperatureColumn(column) && !isPower(unit);
}

/** In the order of time it goes up but for an exchange of the meter. */
function isCounter(sheet: Sheet, c: ColumnFacts): boolean {
  const [backs, ons] = stepOf(sheet).isNewestFirst ? [c.rises, c.falls] : [c.falls, c.rises];
  return onlyRises(sheet, c) || (c.numbers >= LONG_ROWS && backs <= 1 && ons > c.numbers * 0.5);
}

/** The register of the dear days stands still for a year of others; amounts that begin with noughts fall again. */
function movesLater(sheet: Sheet, { index, smallest, largest, meaning }: ColumnFacts): boolean {
  if (smallest !== largest || meaning.role === 'index') return false;
  const { table, firstRow } = sheet;
  let end = table.rowCount - 1;
  while (end > firstRow && isMissing(cellText(table, end, index))) end--;
  if (cellText(table, end, index) === cellText(table, firstRow, index)) return false;
  const way = stepOf(sheet).isNewestFirst ? -1 : 1;
  let last = smallest;
  for (let row = firstRow; row <= end; row++) {
    const number = numberEitherWay(cellText(table, row, index));
    if ((number - last) * way < 0) return false;
    if (!Number.isNaN(number)) last = number;
  }
  return last !== smallest;
}

/** What goes up and is more in each row than a home could use in its days. */
function isTooMuch(sheet: Sheet, c: ColumnFacts): boolean {
  const kWh = c.meaning.unit && ratioOf(c.meaning.unit, 'kWh');
  const { minutes, kind } = stepOf(sheet);
  const days = minutes === undefined ? LONGEST_ROW_DAYS : minutes / 1440;
  return (
    kWh !== undefined && kind !== 'week' && onlyRises(sheet, c) && c.smallest * kWh > MOST_KWH_A_DAY * Math.max(1, days)
  );
}

/** In the order of time; what falls while the days go on is no counter. */
const onlyRises = (sheet: Sheet, { rising, falling }: ColumnFacts): boolean =>
  stepOf(sheet).isNewestFirst ? falling : rising;

function remarkSeveral(sheet: Sheet, columns: readonly ColumnFacts[], book: ShapeInput['book']): void {
  if (logColumns(columns)) {
    remarkLog(sheet, columns, columns, book);
    return;
  }
  const found = listNames(columns.map((c) => columnName(sheet, c.index)));
  book.add('several-series', 'note', { count: columns.length, found });
}

/**
 * Columns named a reading that rise with at most a few falls, or that rise over many rows; several only where each
 * tells by its words what it counts.
 * @param isChosen whether it was said that they are counters, so that few rows are enough
 */
function counterColumns(sheet: Sheet, isChosen = false): ColumnFacts[] {
  const columns = quantityColumns(sheet, [sheet.dateColumn, stepOf(sheet).toColumn]).filter(
    (c) => !isTemperatureColumn(c) && !isPower(c.meaning.unit) && (!c.counting || c.meaning.unit !== undefined),
  );
  // Of months a counter that begins anew each year falls in every twelfth.
  const falls = (stepOf(sheet).minutes ?? 0) > WEEK_MINUTES ? 0.1 : 0.02;
  const named = columns.filter(
    (c) => c.meaning.role === 'reading' && Math.min(c.falls, c.rises) <= 1 + c.numbers * falls,
  );
  // Beside a column that must be one what goes up is a reading as well.
  const isSure = isChosen || named.length > 0 || columns.some((c) => isTooMuch(sheet, c));
  // "Verbrauch" beside a reading of the same unit is what it rose by, though it may rise as well.
  const isRise = (c: ColumnFacts) =>
    AMOUNT.test(plainWords(c.heading)) &&
    named.some(
      (n) =>
        n.meaning.unit === c.meaning.unit &&
        (c.meaning.seriesRole ?? n.meaning.seriesRole) === n.meaning.seriesRole &&
        c.largest <= n.largest - n.smallest,
    );
  const others = columns.filter((c) => named.includes(c) || !isRise(c));
  const rising = others.filter((c) =>
    isSure
      ? onlyRises(sheet, c) || movesLater(sheet, c)
      : c.numbers >= TELLING_ROWS && (isCounter(sheet, c) || movesLater(sheet, c)),
  );
  const all = [...named, ...rising.filter((c) => !named.includes(c))];
  // A register that is not kept stands still beside the amounts.
  const moves = (c: ColumnFacts) => c.largest > c.smallest || movesLater(sheet, c);
  const found = columns.some((c) => moves(c) && c.meaning.role !== 'index') ? all.filter(moves) : all;
  const log = logColumns(found);
  if (log) return log;
  const joined = joinPhases(found, found).toSorted((a, b) => a.index - b.index);
  const telling = joined.filter((c) => namesItself(c));
  const unnamed = joined.filter((c) => !telling.includes(c) && c.meaning.unit === telling[0]?.meaning.unit);
  // Beside what is sent out the one other counter is what is drawn; beside what is made it may be all that is used.
  // So does the one beside a counter of the heat pump, which is a part of it.
  const isBesideOutside =
    unnamed.length === 1 &&
    telling.every((c) => isOutside(c) || c.meaning.seriesRole === 'heat-pump') &&
    (!telling.some(isMade) || isOfGrid(unnamed[0]!));
  const several = isBesideOutside ? joined.filter((c) => telling.includes(c) || unnamed.includes(c)) : telling;
  if (several.length > 1 && new Set(several.map((c) => c.heading)).size === several.length) return several;
  // What ran through a heat meter stands beside its energy: a volume says less of itself, gas or water.
  const first = joinPhases(found, found);
  const energy = first.find((c) => isOfEnergyUnit(c));
  return energy && first[0] && isVolumeOfGas(first[0].meaning.unit) ? [energy] : first.slice(0, 1);
}

const isOfEnergyUnit = ({ meaning: { unit } }: ColumnFacts): boolean =>
  unit !== undefined && !isPower(unit) && ratioOf(unit, 'kWh') !== undefined;

const isMade = ({ meaning: { seriesRole } }: ColumnFacts): boolean => seriesRole === 'generation';
const isOutside = ({ meaning: { seriesRole } }: ColumnFacts): boolean =>
  seriesRole === 'export' || seriesRole === 'generation';

/** Other counters that say no less of themselves than the one that is taken. */
function rivalsOf(sheet: Sheet, taken: ColumnFacts): ColumnFacts[] {
  const { unit, carrier, role } = taken.meaning;
  // The volume beside heat is of water.
  const isHeat = statedCarrier(sheet, taken)?.carrier === 'heat';
  return quantityColumns(sheet, [sheet.dateColumn, stepOf(sheet).toColumn]).filter(
    (c) =>
      !indicesOf([taken]).includes(c.index) &&
      c.largest > c.smallest &&
      (c.rising || c.falling || c.meaning.role === 'reading') &&
      !c.counting &&
      ((isOtherUse(sheet, c, taken) && !(isHeat && isVolumeOfGas(c.meaning.unit))) ||
        (c.meaning.unit === unit &&
          (c.meaning.carrier === carrier ||
            [c.meaning.carrier, carrier].includes(undefined) ||
            isOutside(c) ||
            isOutside(taken)) &&
          c.meaning.role === role)),
  );
}

function orderInTime(civil: Float64Array, count: number, newestFirst: boolean): number[] {
  const order = Array.from({ length: count }, (_, i) => (newestFirst ? count - 1 - i : i));
  // Stable, so that the doubled autumn hour stays in the order of the file; a step back of an hour is that hour.
  const disorder = order.some((at, i) => i > 0 && civil[at]! < civil[order[i - 1]!]! - 120);
  return disorder ? order.sort((a, b) => civil[a]! - civil[b]!) : order;
}

/** The factor of the readings that a title or a column of one number names, as written; undefined where there is none but 1. */
function readingsTimes(sheet: Sheet): string | undefined {
  for (const { text } of sheet.preamble) {
    const factor = factorOf(plainWords(text));
    if (factor !== undefined) return factor;
  }
  const column = sheet.columns.find(
    (c) => isNumberColumn(c) && isMultiplied(plainWords(c.heading)) && c.smallest === c.largest && c.largest !== 1,
  );
  return column && cellText(sheet.table, sheet.firstRow, column.index);
}
