/** Files of prices, which belong among the tariffs and not among what was used. */
import { type ColumnFacts, isMoneyColumn, isNumberColumn } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { fileWords } from './titles.ts';
import { columnName } from './value-cells.ts';
import { AMOUNT } from './vocabulary.ts';

/** "p/kWh", "EUR pro MWh"; a price with its figure before it, as beside the use, heads no column of prices. */
const PRICE_OF_ENERGY =
  /(?<!\d ?)(?<![a-z\d])(p|pence|ct|cents?|[£€$]|gbp|eur|euros?|usd|chf|dkk|sek|nok|kr|ore|rp) ?[)\]]? ?(?:\/|\b(?:per|pro|je|par|por|al|pr)\b) ?[km]?wh/;
const PRICES = /\b(prices?|tariffs?|unit rates?|preise?|strompreise?|tarife?|prix|precios?|prezzi|prijzen|priser)\b/;

/** Of the rates that stand by the kWh, carbon is no money. */
const CARBON = /co ?2|carbon|kohlen|carbone/;
const BESIDE = new Set(['index', 'time', 'from', 'to', 'quality']);

const isOfMoney = (c: ColumnFacts): boolean =>
  isMoneyColumn(c) || (c.meaning.role === 'rate' && !CARBON.test(plainWords(c.heading)));

/** The title that says so, or the names of the columns of prices or of money, where nothing else can be an amount. */
export function pricesOnly(sheet: Sheet): readonly string[] {
  const numbers = sheet.columns.filter((c) => isNumberColumn(c) && !BESIDE.has(c.meaning.role) && !c.counting);
  const money = numbers.filter(isOfMoney);
  const areMoney = money.length > 0 && money.length === numbers.length;
  // Headings that say what was counted are believed before any title.
  if (!areMoney && numbers.some(({ meaning: { unit, carrier } }) => unit !== undefined || carrier !== undefined))
    return [];
  const titles = [...sheet.preamble.map(({ text }) => text), sheet.columns[sheet.dateColumn]?.heading ?? ''];
  const said = titles.find((title) => PRICE_OF_ENERGY.test(plainWords(title)));
  if (said !== undefined) return [said];
  if (areMoney) return money.map((c) => columnName(sheet, c.index));
  const name = fileWords(sheet);
  return PRICES.test(name) && !AMOUNT.test(name) ? [sheet.fileName] : [];
}
