/** Cost column beside a quantity, in pence. */

import { daysBetween } from '../../model/calendar/civil.ts';
import { isUse, type Series } from '../../model/shapes/evidence.ts';
import { isDelivered } from '../../model/shapes/heating.ts';
import { tell } from '../../model/shapes/told.ts';
import { sumOf } from '../../model/units/sums.ts';
import { type ColumnFacts, isMoneyColumn, isNumberColumn } from '../layout/column-facts.ts';
import { mayBeMoney } from '../layout/column-words.ts';
import { plainWords } from '../layout/headings.ts';
import { moneyOfColumn } from '../layout/other-money.ts';
import type { Dates } from '../layout/read-dates.ts';
import type { Sheet } from '../layout/sheet.ts';
import { columnName, readValues, settleDecimal } from '../layout/value-cells.ts';
import { ALL_OF_COST, PART_OF_COST } from '../layout/vocabulary.ts';
import { choicesFor, type EnergyUnit, type IntakeChoices, type IntakeContext } from '../terms/choices.ts';
import { type Money, tellMoney } from '../terms/money-words.ts';
import type { RemarkBook } from '../terms/remark-book.ts';

export interface Costs {
  readonly column: number | undefined;
  /** NaN where none is written. */
  readonly pence: Float64Array | undefined;
  /** Whether it is what the units alone cost, and no total. */
  readonly isUnits?: boolean;
  readonly money?: Money;
}

/** With several energies in one file a cost belongs to the one that its heading names. */
export function readCosts(
  sheet: Sheet,
  dates: Dates,
  quantity: ColumnFacts,
  alone: boolean,
  choices: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): Costs {
  const costs = sheet.columns
    .filter((c) => isNumberColumn(c) && !c.isOtherMoney && (isMoneyColumn(c) || mayBeMoney(c, quantity)))
    .filter(({ heading }) => !isPartOfCost(plainWords(heading)))
    .filter(({ meaning: { bill } }) => bill === undefined || ['total', 'fuel-cost', 'unit-charge'].includes(bill))
    // What the units alone cost is taken where nothing else is.
    .toSorted((a, b) => Number(a.meaning.bill === 'unit-charge') - Number(b.meaning.bill === 'unit-charge'));
  const totals = costs.find((c) => c.meaning.bill === 'total' || /total|incl/i.test(c.heading));
  const chosen =
    choices.columns?.cost !== undefined
      ? sheet.columns[choices.columns.cost]
      : alone
        ? (totals ?? costs[0])
        : costs.find((c) => c.meaning.carrier !== undefined && c.meaning.carrier === quantity.meaning.carrier);
  const shared = totals ?? costs[0];
  if (!chosen && shared && shared.meaning.carrier === undefined && !book.has('cost-of-several')) {
    const sum = readValues(
      sheet,
      shared.index,
      dates.rows,
      dates.count,
      choices.decimal ?? '.',
      tell('an-amount'),
      book,
    )
      .filter((v) => !Number.isNaN(v))
      .reduce((total, v) => total + v, 0);
    const inPence = shared.meaning.inPence === true || shared.suffix === 'p';
    book.add('cost-of-several', 'note', {
      column: columnName(sheet, shared.index),
      foundTold: tellMoney(inPence ? sum / 100 : sum, moneyOfColumn(sheet, shared, context)),
    });
  }
  if (!chosen) return { column: undefined, pence: undefined };
  const decimal = settleDecimal(sheet, chosen.index, choices, book);
  const values = readValues(sheet, chosen.index, dates.rows, dates.count, decimal, tell('amount-in-pounds'), book);
  const inPence = chosen.meaning.inPence === true || chosen.suffix === 'p';
  const pence = values.map((v) => (inPence ? v : Math.round(v * 10_000) / 100));
  const isUnits = chosen.meaning.bill === 'unit-charge';
  return { column: chosen.index, pence, isUnits, money: moneyOfColumn(sheet, chosen, context) };
}

/** "Network charge": never what the row cost. */
const isPartOfCost = (words: string): boolean => PART_OF_COST.test(words) && !ALL_OF_COST.test(words);

/** Beyond these nobody pays for a kWh, in hundredths of whatever money, what is delivered and what is metered. Common practice, no source. */
const LEAST_PENCE = 0.2;
const MOST_PENCE = { delivered: 300, metered: 1000 } as const;
/** A standing charge that no home exceeds, a day; without use it is all that is paid. */
const MOST_STANDING_PENCE = 200;

/** Cost and amount of the same rows show a unit that cannot be: bottles for litres, Wh for kWh. What was chosen stands. */
export function doubtPrice(
  { periods = [], carrier, role, name }: Series,
  unit: EnergyUnit,
  column: string,
  { money = '£' }: Costs,
  choices: IntakeChoices,
  book: RemarkBook,
): void {
  if (choicesFor(choices, name).unit !== undefined || !isUse({ carrier, role })) return;
  // The unit is asked about already.
  if (book.has('unit-guessed', column)) return;
  const paid = periods.filter(({ costPence = 0, kWh }) => costPence > 0 && kWh > 0);
  const pence = sumOf(paid.map(({ costPence = 0 }) => costPence));
  const kWh = sumOf(paid.map((one) => one.kWh));
  const days = sumOf(paid.map(({ from, to }) => daysBetween(from, to)));
  const most = isDelivered(carrier)
    ? MOST_PENCE.delivered * kWh
    : MOST_PENCE.metered * kWh + MOST_STANDING_PENCE * days;
  if (kWh === 0 || (pence >= LEAST_PENCE * kWh && pence <= most)) return;
  const price = tellMoney(Number((pence / kWh / 100).toPrecision(2)), money);
  book.add('unit-price-asked', 'question', {
    column,
    carrier,
    expected: unit,
    foundTold: tell('price-of-a-kwh', { price }),
  });
}
