/** In which money a paper's amounts are. */

const POUNDS = /£|\bGBP\b|\bpounds\b/g;
const EUROS = /€|\bEUR\b|\b[Ee]uros?\b/g;
/** A$ and R$ are no dollars of the United States. */
const DOLLARS = /(?<!\p{L})(?:US ?)?\$|\bUSD\b|\bdollars?\b/gu;

const countOf = (text: string, sign: RegExp): number => text.match(sign)?.length ?? 0;

/** Names and signs that are nothing else. */
const NAMES =
  /(?=[\p{Lu}\p{Sc}køözfr])(?:(?<![\p{L}\d])(?:CHF|DKK|SEK|NOK|ISK|PLN|CZK|HUF|RON|Kč|[Kk]r\.?|[øö]re|[Kk]ron(?:er|or|ur|en)|z[łl]ot\p{L}+|zł|SFr\.?|[Ff]ranken|[Ff]rancs?|[Rr]appen|forints?)(?![\p{L}])|(?<!\p{L})(?!US\$)\p{Lu}{1,2}\$|(?![£€$¢])\p{Sc})/gu;
/** Short ones that may be other words: only right before or behind an amount with its hundredths. */
const SHORT = String.raw`[A-Z]{3}|S?Fr\.?|Rp\.?|z[łl]|Ft|[Ll]ei|TL|Rs?\.?|лв\.?`;
const AMOUNT = String.raw`\d[\d.,'’ ]*[.,]\d{2}(?![\d.,]\d|\d)`;
const BESIDE = new RegExp(
  `(?=[A-Zzlл])(?:(?<![\\p{L}\\d])(?:${SHORT})(?= ?[-−–]?${AMOUNT})|(?<=\\d[.,]\\d{2} ?)(?:${SHORT})(?![\\p{L}\\d])|(?<=\\()(?:${SHORT})(?=\\)))`,
  'gu',
);
/** The codes of ISO 4217 that the platform knows. */
const CODES = new Set(Intl.supportedValuesOf('currency').filter((code) => !['GBP', 'EUR', 'USD'].includes(code)));

export interface MoneyOfText {
  /** The sign that stands most often. */
  readonly money?: '£' | '€' | '$' | undefined;
  /** Money that no bill is read in, where it stands more often than any that is: as it is written most often. */
  readonly other?: string | undefined;
}

export function moneyOf(text: string): MoneyOfText {
  const [euros, dollars, pounds] = [countOf(text, EUROS), countOf(text, DOLLARS), countOf(text, POUNDS)];
  const money = euros > Math.max(dollars, pounds) ? '€' : dollars > pounds ? '$' : pounds > 0 ? '£' : undefined;
  const beside = (text.match(BESIDE) ?? []).filter((one) => !/^[A-Z]{3}$/.test(one) || CODES.has(one));
  // A bill has several amounts; once it may be a Friday or STD for standing.
  const short = beside.filter((one, i) => beside.indexOf(one) !== i || beside.includes(one, i + 1));
  const others = [...(text.match(NAMES) ?? []), ...short];
  if (others.length <= pounds + euros + dollars) return { money };
  const counts = [...Map.groupBy(others, (one) => one)].toSorted(([, a], [, b]) => b.length - a.length);
  return { money, other: counts[0]?.[0] };
}
