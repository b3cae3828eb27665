/** Which column of a tariff file holds the prices of what is bought, and what they are counted in. */
import { type Money, moneysIn } from '../terms/money-words.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { coinOf, type TariffContext } from './home-terms.ts';

export interface PriceColumn {
  readonly column: number;
  /** What a figure of it is multiplied by to be pence (cents) per kWh. */
  readonly pence: number;
  /** Whether its prices hold VAT, where its heading says so. */
  readonly included: boolean | undefined;
  /** Columns of the same prices with or without VAT, and of what is sold. */
  readonly others: readonly number[];
}

const HUNDREDTHS = /(?<![\p{L}\d])(p|pence|penny|ct|cents?|c|øre|öre|ore|rp|rappen|centimes?)(?![\p{L}\d])|¢/u;
/** Hundredths that are of one money; pence stand for those of any in our own files. */
const COINS: readonly (readonly [RegExp, Money])[] = [
  [/(?<![a-z])(ct|cents?|centimes?)(?![a-z])/, '€'],
  [/(?<!\p{L})(øre|öre|ore|rp|rappen)(?!\p{L})|¢/u, 'other'],
];
const PER_KWH = /(?:\/|\b(?:per|pro|je|par|por|al|a)\b) ?k ?wh/;
const PER_MWH = /(?:\/|\b(?:per|pro|je|par|por|al|a)\b) ?m ?wh/;
const PRICE = /\b(prices?|rates?|arbeitspreis|preis|prix|precio|prezzo|prijs|pris)\b|\bvalue.?(inc|exc)/;
const WITH_TAX = /\b(incl?|inclu\w+|inkl\w*|with|brutto|gross|mit|ttc|bruto)\b\.?/;
const WITHOUT_TAX = /\b(excl?|exclu\w+|exkl\w*|ex|without|netto?|zzgl|ohne|ht|sin|sans|hors|uten|ekskl\w*)\b\.?/;
const OF_TAX = new RegExp(
  `${WITH_TAX.source}|${WITHOUT_TAX.source}|\\b(vat|tax|mwst|ust|tva|iva|btw|moms)\\b|[()]`,
  'g',
);
/** A column of names beside that of prices. */
const NAMES = /^(band|name|rate)$/;
const SENT_OUT = /export|feed.?in|outgoing|\bsell|\bsold|sent out|surplus|einspeis|vergutung|vergütung|inject/;

const isPrice = (heading: string): boolean =>
  PRICE.test(heading) ||
  ((HUNDREDTHS.test(heading) || moneysIn(heading).length > 0) && (PER_KWH.test(heading) || PER_MWH.test(heading))) ||
  /^(pence|p|ct|cents?)$/.test(withoutVat(heading));

const withoutVat = (heading: string): string => heading.replaceAll(OF_TAX, ' ').replaceAll(/\s+/g, ' ').trim();

/** A figure of the column in pence (cents) per kWh, to a ten-thousandth where it was counted in something else. */
export const pencePerKWhOf = ({ pence }: PriceColumn, amount: number): number =>
  pence === 1 ? amount : Math.round(amount * pence * 10_000) / 10_000;

/** Undefined where no column has prices. What cannot be taken for certain is refused in `book`, or asked there. */
export function findPriceColumn(
  headings: readonly string[],
  row: number,
  context: TariffContext,
  book: RemarkBook,
): PriceColumn | 'refused' | undefined {
  const { money } = context;
  const small = headings.map((heading) => heading.toLowerCase().replaceAll('_', ' ').trim());
  const prices = small.flatMap((heading, column) => (isPrice(heading) ? [column] : []));
  const named = prices.filter((column) => prices.length === 1 || !NAMES.test(small[column]!));
  const bought = named.filter((column) => !SENT_OUT.test(small[column]!));
  const column = bought.find((one) => WITH_TAX.test(small[one]!)) ?? bought[0];
  const name = (at: number): string => headings[at]!.trim();
  if (column === undefined) {
    if (prices.length === 0) return undefined;
    book.add('tariff-sent-out', 'refusal', { row, column: name(prices[0]!) });
    return 'refused';
  }
  const heading = small[column]!;
  if (new Set(bought.map((one) => withoutVat(small[one]!))).size > 1) {
    book.add('tariff-prices-beside', 'refusal', { row, found: bought.map(name).join(', ') });
    return 'refused';
  }
  const moneys = moneysIn(heading.replaceAll('pence', 'p'));
  const own = COINS.find(([words]) => words.test(heading))?.[1] ?? moneys[0];
  if (money !== undefined && own !== undefined && own !== money) {
    book.add('tariff-other-money', 'refusal', { row, column: name(column) });
    return 'refused';
  }
  const isHundredths = HUNDREDTHS.test(heading);
  if (!isHundredths && moneys.length === 0)
    book.add('tariff-unit-guessed', 'question', {
      row,
      column: name(column),
      expected: coinOf(context),
    });
  return {
    column,
    pence: (isHundredths || moneys.length === 0 ? 1 : 100) * (PER_MWH.test(heading) ? 0.001 : 1),
    included: WITHOUT_TAX.test(heading) ? false : WITH_TAX.test(heading) ? true : undefined,
    others: named,
  };
}
