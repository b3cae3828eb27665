/**
 * Deliveries of fuel: a date and the amount put into the tank or the store. A fill replaces what was burnt since the fill
 * before it, so each delivery belongs to the days before it and the first only starts the count.
 */

import { toCivilDate } from '../../model/calendar/civil.ts';
import type { Carrier } from '../../model/shapes/evidence.ts';
import { isDelivered, isSaleUnit, SALE_UNITS, type SaleUnit, unitsOf } from '../../model/shapes/heating.ts';
import { tell } from '../../model/shapes/told.ts';
import { type IntakeShape, nothingRead } from '../importer/shape.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { isBareAmount, namesOf } from '../layout/column-words.ts';
import { seriesColumns } from '../layout/energy-columns.ts';
import { explainStrays } from '../layout/explain-strays.ts';
import { plainWords } from '../layout/headings.ts';
import { quantityColumns } from '../layout/quantity-columns.ts';
import { type Dates, readDates, settleDayFirst } from '../layout/read-dates.ts';
import { settleUnit } from '../layout/settle-unit.ts';
import type { Sheet } from '../layout/sheet.ts';
import { stepOf } from '../layout/sheet-step.ts';
import { statedCarrier, statedUnit, unitsByRow } from '../layout/stated-energy.ts';
import { columnName, readValues, settleDecimal } from '../layout/value-cells.ts';
import { PIECES, PUT_IN, USED } from '../layout/vocabulary.ts';
import { doubtPrice, readCosts } from '../periods/costs.ts';
import { periodPicture, periodSeries } from '../periods/period-series.ts';
import type { RawPeriod } from '../periods/raw-period.ts';
import { leaveOutLater } from '../readings/remark-order.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { rowTexts } from '../text/table.ts';

const [DAY, WEEK] = [1440, 7 * 1440];
const EVEN_STEPS: ReadonlySet<number | undefined> = new Set([WEEK, 2 * WEEK, 28 * DAY, 30 * DAY, 31 * DAY]);

/** Weeks one after another, or even steps under words for what was used: no tank is filled so. */
function isUseByRow(sheet: Sheet, column: ColumnFacts | undefined): boolean {
  const { kind, minutes } = stepOf(sheet);
  const said = [sheet.fileName, ...sheet.preamble.map(({ text }) => text), column?.heading ?? ''].join(' ; ');
  const words = plainWords(said.replaceAll(/[-_.]/g, ' '));
  if (PUT_IN.test(words) || /purchas|import|order/.test(words)) return false;
  if (kind === 'week') return minutes === WEEK && (column?.numbers ?? 0) >= LEAST_WEEKS;
  return EVEN_STEPS.has(minutes) && USED.test(plainWords(column?.heading ?? ''));
}
const LEAST_WEEKS = 4;

export const deliveries: IntakeShape = {
  name: 'deliveries',

  detect(sheet) {
    if (sheet.dateColumn < 0) return { fit: 0, reason: 'no column of dates' };
    const step = stepOf(sheet);
    if (step.toColumn !== undefined || step.kind === 'month')
      return { fit: 0.1, reason: 'periods rather than single dates' };
    if (step.kind === 'time' || (step.minutes !== undefined && step.minutes <= 1440))
      return { fit: 0.05, reason: 'rows too close in time' };
    const quantities = quantityColumns(sheet, [sheet.dateColumn]);
    if (isUseByRow(sheet, quantities[0])) return { fit: 0.1, reason: 'what each week or month used' };
    const words = plainWords(
      `${sheet.fileName.replaceAll(/[-_.]/g, ' ')} ${sheet.columns.map((c) => c.heading).join(' ')}`,
    );
    const soldSo = quantities.some((c) => isSaleUnit(c.meaning.unit));
    const said = quantities[0] && statedCarrier(sheet, quantities[0])?.carrier;
    if (soldSo) return { fit: 0.92, reason: 'a date and an amount of fuel in each row' };
    // What the grid or a heat pump delivers is metered in kWh.
    const isMetered = quantities.some((c) => c.meaning.unit === 'kWh' || c.meaning.unit === 'MWh');
    if (quantities.length > 0 && !isMetered && /deliver|tanker|\bfill/.test(words))
      return { fit: 0.85, reason: 'a date and an amount delivered in each row' };
    if (quantities.length > 0 && isDelivered(said))
      return { fit: 0.8, reason: 'the file speaks of a fuel that is delivered' };
    return { fit: 0.05, reason: 'no amount of fuel' };
  },

  parse({ sheet, choices, context, book }) {
    const column = choices.columns?.stamp ?? choices.columns?.from ?? sheet.dateColumn;
    const dayFirst = settleDayFirst(sheet, column, choices, context.zone, book);
    const found = readDates(sheet, column, undefined, dayFirst, context.zone, context.onProgress);
    const dates = leaveOutLater(sheet, found, context, book);
    explainStrays(sheet, dates, choices, book);
    const [facts, ...others] = dates.count === 0 ? [] : seriesColumns(sheet, choices, [column], book);
    if (!facts) {
      book.add(dates.count === 0 ? 'no-readable-rows' : 'no-numbers', 'refusal', { column: columnName(sheet, column) });
      return nothingRead(choices, dates.count);
    }
    const beside = { column: columnName(sheet, facts.index), found: namesOf(sheet, others), count: others.length };
    if (others.length > 0 && choices.every !== false) book.add('column-asked', 'question', beside);
    else if (others.length > 0) book.add('columns-left-out', 'note', { found: beside.found, expected: beside.column });
    if (
      isBareAmount(facts) &&
      choices.role === undefined &&
      choices.columns?.value === undefined &&
      !book.has('column-asked')
    )
      book.add('amount-asked', 'question', { column: columnName(sheet, facts.index) });
    const decimal = settleDecimal(sheet, facts.index, choices, book);
    const values = readValues(sheet, facts.index, dates.rows, dates.count, decimal, tell('amount-of-fuel'), book);
    const isSaid =
      choices.unit !== undefined || statedUnit(sheet, facts) !== undefined || unitsByRow(sheet, facts).length > 1;
    const isOfPieces = PIECES.test(plainWords(facts.heading)) || middleOf(values) < LEAST_FILL;
    const unit = isSaid || isOfPieces ? undefined : onlyUnit(statedCarrier(sheet, facts)?.carrier);
    const withUnit = unit === undefined ? choices : { ...choices, unit };
    const quantity = settleUnit(sheet, facts, Number.NaN, undefined, withUnit, context, book);
    const costs = readCosts(sheet, dates, facts, true, { ...choices, decimal }, context, book);
    const fills = readFills(sheet, dates, values, costs.pence, book);
    const raw: RawPeriod[] = fills.slice(1).map((fill, i) => ({
      fromDay: fills[i]!.day,
      toDay: fill.day,
      quantity: fill.amount,
      kWh: fill.amount * quantity.kWhPerUnit,
      ...(Number.isNaN(fill.costPence) ? {} : { costPence: fill.costPence }),
      quality: 'actual',
      line: sheet.table.lineOfRow[dates.rows[fill.index]!]!,
    }));
    const first = fills[0];
    const series = periodSeries('series-1', facts.heading || quantity.carrier, quantity, raw, book);
    if (!series || !first) {
      book.add('delivery-alone', 'refusal', first ? { from: toCivilDate(first.day) } : {});
      return nothingRead(choices, dates.count);
    }
    doubtPrice(series, quantity.unit, columnName(sheet, facts.index), costs, choices, book);
    book.add('delivery-rule', 'note', {
      row: sheet.table.lineOfRow[dates.rows[first.index]!]!,
      from: toCivilDate(first.day),
      foundTold: tell('so-much-of', {
        amount: first.amount,
        unit: isSaleUnit(quantity.unit) ? SALE_UNITS[quantity.unit].many : quantity.unit,
      }),
      effectKWh: first.amount * quantity.kWhPerUnit,
    });
    return {
      choices: {
        shape: deliveries.name,
        unit: quantity.unit,
        ...(dayFirst === undefined ? {} : { dayFirst }),
        columns: { stamp: column, value: facts.index, ...(costs.column === undefined ? {} : { cost: costs.column }) },
        decimal,
        carrier: quantity.carrier,
        role: quantity.role,
      },
      series: [series],
      intervals: [],
      firstDays: periodPicture(series),
      dataRows: dates.count,
      valueColumns: [facts.index],
    };
  },
};

/** Fewer litres are brought to no tank: bottles, drums or cubic metres. A judgement. */
const LEAST_FILL = 20;

function middleOf(values: Float64Array): number {
  const amounts = values.filter((value) => value > 0).sort();
  return amounts[amounts.length >> 1] ?? Number.NaN;
}

/** Most fuels are delivered in one unit, which needs no saying; what nobody names is taken for litres, and asked about. */
function onlyUnit(carrier: Carrier | undefined): SaleUnit | undefined {
  if (!isDelivered(carrier)) return 'litre';
  const [first, ...others] = unitsOf(carrier);
  return others.length === 0 ? first : undefined;
}

interface Fill {
  readonly day: number;
  readonly amount: number;
  readonly costPence: number;
  readonly index: number;
}

/** In order of time; two slips of one day are one fill, and the same slip again is none. */
function readFills(
  { table }: Sheet,
  { civilMinute, rows, count }: Dates,
  values: Float64Array,
  pence: Float64Array | undefined,
  book: RemarkBook,
): Fill[] {
  const byDay = new Map<number, Fill>();
  const slips = new Set<string>();
  for (let i = 0; i < count; i++) {
    const amount = values[i]!;
    if (Number.isNaN(amount) || amount <= 0) continue;
    const day = Math.floor(civilMinute[i]! / 1440);
    const slip = rowTexts(table, rows[i]!).join('\t');
    if (slips.has(slip)) {
      book.tally('duplicate-same', 'note', { row: table.lineOfRow[rows[i]!]!, from: toCivilDate(day), count: 1 });
      continue;
    }
    slips.add(slip);
    const known = byDay.get(day);
    const costPence = pence?.[i] ?? Number.NaN;
    byDay.set(
      day,
      known
        ? { ...known, amount: known.amount + amount, costPence: known.costPence + costPence }
        : { day, amount, costPence, index: i },
    );
  }
  return [...byDay.values()].sort((a, b) => a.day - b.day);
}
