/** What each charge of a bill is for: energy of a register, standing charge, levy or payment, of which fuel and which days. */
import { sumOf } from '../../model/units/sums.ts';
import { monthOfName } from '../dates/month-names.ts';
import type { DatePair } from './date-pairs.ts';
import type { Figure, RowFacts } from './figures.ts';
import { fuelsIn, fuelsOn, type PaperFuel } from './fuel-of.ts';
import { isMoney, type Product, penceOf } from './relations.ts';
import {
  ENERGY,
  EXPORT,
  LEVY,
  NET,
  NEXT_PAYMENT,
  OF_ROOF,
  PAYMENT,
  PERIOD,
  READING,
  REGISTERS,
  SERVICE,
  SHARED_HEAT,
  STANDING,
  STEP,
  SUPPORT,
  TAKEN_OFF,
  TOTAL,
} from './vocabulary.ts';

export type LineKind = 'energy' | 'standing' | 'levy' | 'export' | 'payment' | 'unknown';

export interface PaperLine {
  readonly kind: LineKind;
  readonly fuel: PaperFuel | undefined;
  readonly register: string | undefined;
  /** Named by words that are no known register. */
  readonly registerGuessed?: boolean;
  /** No word says what it is, such as one price of several for the same units. */
  readonly isGuessed?: boolean;
  readonly quantity?: Figure;
  readonly price?: Figure;
  /** Hundredths for one unit or day; undefined where nothing proves pence or pounds. */
  readonly pence?: number;
  readonly amount: Figure;
  readonly product?: Product;
  readonly dates?: DatePair;
}

/** What it is charged at, below nought where it is taken off [hundredths]. */
export const signedPence = ({ amount }: PaperLine): number => (amount.negative ? -penceOf(amount) : penceOf(amount));

/** Below nought where units are given back; those at a price below nought were used like any other. */
export const signedUnits = ({ quantity, price, amount }: PaperLine): number =>
  (amount.negative && !price?.negative ? -1 : 1) * (quantity?.value ?? 0);
export const sumQuantity = (lines: readonly PaperLine[]): number =>
  asPrinted(lines.reduce((sum, line) => sum + signedUnits(line), 0));
/** A sum of printed numbers without what binary fractions leave behind, so that it equals the printed one. */
export const asPrinted = (sum: number): number => Number(sum.toFixed(6));
export const sumPence = (lines: readonly PaperLine[]): number => sumOf(lines.map(signedPence));

/** Lines of energy by the register they are of. */
export function registersOf(lines: readonly PaperLine[]): PaperLine[][] {
  const groups = new Map<string | undefined, PaperLine[]>();
  for (const line of lines) {
    if (line.kind !== 'energy') continue;
    groups.set(line.register, [...(groups.get(line.register) ?? []), line]);
  }
  return [...groups.values()];
}

/** The row above, if it has words only. */
const titleOf = (rows: readonly RowFacts[], at: number): RowFacts[] =>
  rows.slice(Math.max(0, at - 1), at).filter(({ figures, dates }) => figures.length + dates.length === 0);

/** The known register that some words name. */
export function registerNamed(text: string): string | undefined {
  const named = text.replaceAll(/(?:\b(?:per|a|each|pro|je) |\/ ?)(?:day|tag)\b/gi, '');
  return REGISTERS.find(([pattern]) => pattern.test(named))?.[1];
}

const CARD = 4;
/** The register that the words of a charge name; in a card, whose numbers stand below each other, the words above it too. */
function registerOf(quantity: Figure, amount: Figure, rows: readonly RowFacts[], isOther: (row: number) => boolean) {
  const named = registerNamed;
  const own = named(rows[quantity.row]!.words.split('\t').join(' '));
  if (own || quantity.row === amount.row) return own;
  const over = named(quantity.heading);
  if (over) return over;
  for (let at = Math.min(quantity.row, amount.row) - 1; at >= Math.max(0, quantity.row - CARD) && !isOther(at); at--) {
    const found = named(rows[at]!.words);
    if (found) return found;
  }
  return undefined;
}

/** A month or a step of a price by amount is no register. */
const isStep = (name: string): boolean =>
  STEP.test(name) || name.split(' ').some((word) => monthOfName(word.toLowerCase()) > 0);

/** Of several charges for units those without a known register are told apart by their own words. */
function tellApart(lines: readonly PaperLine[], rows: readonly RowFacts[]): PaperLine[] {
  return lines.map((line) => {
    const others = lines.filter(
      ({ kind, fuel, amount }) => kind === 'energy' && fuel === line.fuel && (line.amount.negative || !amount.negative),
    );
    if (line.kind !== 'energy' || line.register !== undefined || others.length < 2) return line;
    // Units that are given back are those of the register they were charged to.
    const charged = line.amount.negative ? chargedBefore(line, others) : undefined;
    if (charged) return { ...line, register: charged.register };
    if (areOfDaysApart(others) || areFromDates(others, lines, rows)) return line;
    const names = new Set(others.map(({ quantity }) => quantity && nameOf(quantity.before)));
    const own =
      nameOf(line.quantity?.before ?? '') || nameOf(rows[(line.quantity ?? line.amount).row - 1]?.words ?? '');
    return names.size > 1 && own !== '' && !isStep(own) ? { ...line, register: own, registerGuessed: true } : line;
  });
}

/** "Gas at the old price, 1 May to 30 June", then the same at the new one. */
const areOfDaysApart = (lines: readonly PaperLine[]): boolean =>
  lines
    .toSorted((a, b) => (a.dates?.from.day ?? 0) - (b.dates?.from.day ?? 0))
    .every(({ dates, amount }, i, all) => {
      const before = all[i - 1]?.dates?.to.day ?? Number.NEGATIVE_INFINITY;
      return dates?.from.row === amount.row && dates.from.day >= before;
    });

/** "Until 30 June", "From 1 July", on a bill with a charge by the day. */
function areFromDates(lines: readonly PaperLine[], all: readonly PaperLine[], rows: readonly RowFacts[]): boolean {
  const starts = lines.flatMap(({ amount: { row } }) =>
    rows[row]!.dates.length === 1 ? rows[row]!.dates[0]!.day : [],
  );
  return new Set(starts).size === lines.length && all.some(({ kind }) => kind === 'standing');
}

/** At a price below nought, for units that other charges are for already: money off them. */
function isTakenOffUnits({ kind, fuel, price, quantity }: PaperLine, all: readonly PaperLine[]): boolean {
  if (kind !== 'energy' || !price?.negative || !quantity) return false;
  const charged = all.filter((one) => one.kind === 'energy' && one.fuel === fuel && !one.price?.negative);
  return charged.some((one) => one.quantity?.value === quantity.value) || sumQuantity(charged) === quantity.value;
}

/** Money off by the unit: no use, and no charge. */
export const isSupport = ({ negative }: Figure, words: string): boolean => negative && SUPPORT.test(words);

/** The charge that a negative line gives back, by its price. */
const chargedBefore = (line: PaperLine, others: readonly PaperLine[]): PaperLine | undefined =>
  line.price?.negative
    ? undefined
    : others.find(
        ({ amount, price, pence }) =>
          !amount.negative && pence !== undefined && (pence === line.pence || price?.value === line.price?.value),
      );

/** The lines that products prove, each with its kind. */
export function linesOf(
  rows: readonly RowFacts[],
  products: readonly Product[],
  pairs: readonly DatePair[],
): PaperLine[] {
  const fuelOf = fuelsOn(rows).of;
  const amounts = new Set(products.map(({ amount }) => amount.row));
  const proved = products.map((product): PaperLine => {
    const { quantity, price, amount, pence } = product;
    const about = wordsAbout(product.figures, rows);
    const isSentOut =
      quantity.kind === 'energy' &&
      ([rows[quantity.row]!, ...titleOf(rows, quantity.row)].some(({ words }) => EXPORT.test(words)) ||
        // A credit for units of the roof is for what it gave away, and no use is less by it.
        (amount.negative && OF_ROOF.test(rows[quantity.row]!.words)));
    // A name with a digit, such as CO2, is not among the words.
    const kind = isSentOut
      ? 'export'
      : isInstalments(product, rows)
        ? 'payment'
        : kindOfLine(quantity, price, `${about} ${rows[quantity.row]!.text}`);
    return {
      kind,
      // Electricity is sold in nothing but kWh.
      ...(kind === 'energy' && (isOfOddUnit(product) || (isBare(product, rows) && fuelOf(amount) !== 'electricity'))
        ? { isGuessed: true }
        : {}),
      fuel: fuelOf(amount),
      register:
        kind === 'energy'
          ? registerOf(quantity, amount, rows, (row) => amounts.has(row) && row !== amount.row)
          : undefined,
      quantity,
      price,
      pence,
      amount,
      product,
      ...datesOf(amount, pairs, rows),
    };
  });
  const inOrder = proved.toSorted((a, b) => a.amount.row - b.amount.row || a.amount.box.x - b.amount.box.x);
  return tellApart(
    inOrder.map((line) => (isTakenOffUnits(line, inOrder) ? { ...line, kind: 'levy', isGuessed: true } : line)),
    rows,
  );
}

/** What is counted has a unit, and it is none that is known: behind the count, behind the price or above its column. */
const isOfOddUnit = ({ quantity, price }: Product): boolean =>
  quantity.kind === 'plain' &&
  (quantity.oddUnit !== undefined || price.oddUnit !== undefined || ODD_HEADING.test(quantity.heading));
const ODD_HEADING = /[([](?!k?wh|units?|einheiten)\p{L}{1,6}[)\]]/iu;

/** A count without a unit, of which no word beside it or above says that it is of energy: a unit price may be for a litre. */
const isBare = ({ quantity: { kind, row, heading }, price }: Product, rows: readonly RowFacts[]): boolean =>
  kind === 'plain' &&
  price.per === undefined &&
  !/kwh|(?<!\p{L})(?:units?(?! (?:price|cost|rate|charge))|einheiten)(?!\p{L})/iu.test(
    `${rows[row]!.words} ${heading}`,
  );

/** Charges for the same units and days at prices of their own, such as energy, network and levies: the units count once. */
export function joinPriceParts(
  lines: readonly PaperLine[],
  uses: readonly Figure[],
  addUp: (fuel: PaperFuel | undefined) => boolean,
  rows: readonly RowFacts[],
): PaperLine[] {
  const groups = Map.groupBy(
    lines.filter(
      ({ kind, register, registerGuessed, quantity, amount }) =>
        kind === 'energy' &&
        (register === undefined || registerGuessed) &&
        quantity?.kind === 'energy' &&
        !amount.negative &&
        !STEP.test(quantity.before),
    ),
    ({ fuel, quantity, dates, amount }) =>
      `${fuel} ${quantity!.value} ${dates?.from.day} ${dates?.to.day} ${ownDay(amount, rows)}`,
  );
  const energies = lines.filter(({ kind, quantity, amount }) => kind === 'energy' && quantity && !amount.negative);
  /** Whether the units of several registers come to those of a charge, which is then one more price for them. */
  const isOverAll = ({ fuel, quantity }: PaperLine): boolean => {
    const rest = energies.filter((one) => one.fuel === fuel && one.quantity!.value !== quantity!.value);
    return rest.length > 1 && Math.abs(sumQuantity(rest) - quantity!.value) < 1e-6 && addUp(fuel);
  };
  const over = new Set([...groups.values()].filter(([one]) => isOverAll(one!)).flat());
  const parts = [...groups.values()].filter((own) => {
    if (over.has(own[0]!)) return false;
    const units = own[0]!.quantity!.value;
    const isBelow = new Set(own.map(({ amount }) => amount.row)).size === own.length;
    const isSum = uses.some(({ value }) => value === units * own.length);
    return own.length > 1 && isBelow && !isSum && addUp(own[0]!.fuel);
  });
  const isProved = ({ quantity }: PaperLine) => uses.some(({ value }) => value === quantity!.value);
  return lines.map((line) => {
    if (over.has(line))
      return { ...withoutRegister(line), kind: 'levy', ...(isProved(line) ? {} : { isGuessed: true }) };
    const own = parts.find((one) => one.includes(line));
    if (!own) return line;
    const dearest = own.reduce((a, b) => ((b.pence ?? 0) > (a.pence ?? 0) ? b : a));
    return {
      ...withoutRegister(line),
      kind: line === dearest ? 'energy' : 'levy',
      ...(isProved(line) ? {} : { isGuessed: true }),
    };
  });
}

function withoutRegister({ registerGuessed: _, ...bare }: PaperLine): PaperLine {
  return { ...bare, register: undefined };
}

/** Rows that look like a charge and whose numbers do not multiply out. */
export function contradictedLines(
  rows: readonly RowFacts[],
  taken: ReadonlySet<Figure>,
  pairs: readonly DatePair[],
): PaperLine[] {
  const fuelOf = fuelsOn(rows).of;
  return rows.flatMap(({ figures, words }) => {
    if (figures.length < 3) return [];
    const free = figures.filter((one) => !taken.has(one));
    const amounts = free.filter((one) => isMoney(one) && one.decimals === 2);
    const prices = free.filter(({ kind }) => kind === 'price');
    const quantities = figures.filter(({ kind }) => kind === 'energy' || kind === 'days');
    const [amount, price, quantity] = [amounts[0], prices[0], quantities[0]];
    if (!amount || !price || !quantity || amounts.length > 1 || prices.length > 1 || NEXT_PAYMENT.test(words))
      return [];
    if (isSupport(amount, words)) return [];
    const kind = kindOfLine(quantity, price, words);
    const pence = price.hundredths === undefined ? undefined : price.value * price.hundredths;
    return [
      {
        kind,
        fuel: fuelOf(amount),
        register: kind === 'energy' ? registerOf(quantity, amount, rows, () => true) : undefined,
        quantity,
        price,
        ...(pence === undefined ? {} : { pence }),
        amount,
        ...datesOf(amount, pairs, rows),
      },
    ];
  });
}

/** Where a bill prints no prices: use and its charge in one row. The price is then what they come to. */
export function pricelessLines(
  rows: readonly RowFacts[],
  taken: ReadonlySet<Figure>,
  pairs: readonly DatePair[],
): PaperLine[] {
  const fuelOf = fuelsOn(rows).of;
  return rows.flatMap(({ figures, words }): PaperLine[] => {
    const amounts = figures.filter((one) => isMoney(one) && !taken.has(one) && one.value > 0);
    const uses = figures.filter(({ kind, value }) => kind === 'energy' && value > 0);
    const [amount, quantity] = [amounts[0], uses[0]];
    if (!amount || !quantity || amounts.length > 1 || uses.length > 1 || NO_CHARGE.some((one) => one.test(words)))
      return [];
    const register = registerOf(quantity, amount, rows, () => true);
    const pence = penceOf(amount) / quantity.value;
    return [
      { kind: 'energy', fuel: fuelOf(amount), register, quantity, pence, amount, ...datesOf(amount, pairs, rows) },
    ];
  });
}
const NO_CHARGE: readonly RegExp[] = [NEXT_PAYMENT, PAYMENT, TOTAL];

/** "Instalments paid: 11 × 120.00": a bare count of sums of money. */
const isInstalments = ({ quantity, price }: Product, rows: readonly RowFacts[]): boolean =>
  price.kind === 'money' && /^\d+$/.test(quantity.text) && PAYMENT.test(rows[quantity.row]!.words);

const wordsAbout = (figures: readonly Figure[], rows: readonly RowFacts[]): string => {
  const at = [...new Set(figures.map(({ row }) => row))];
  return [...at.map((row) => rows[row]!.words), ...figures.map(({ heading }) => heading)].join(' ');
};

function kindOfLine(quantity: Figure, price: Figure, about: string): LineKind {
  // What radiators count is no energy.
  if (quantity.kind !== 'days' && SHARED_HEAT.test(about)) return 'unknown';
  if (quantity.kind !== 'energy') {
    if (STANDING.test(about)) return 'standing';
    if (SERVICE.test(about)) return 'levy';
    if (quantity.kind !== 'days' && PAYMENT.test(about)) return 'payment';
  }
  if (
    quantity.kind === 'days' ||
    quantity.kind === 'months' ||
    price.per === 'day' ||
    price.per === 'month' ||
    price.per === 'year'
  )
    return 'standing';
  if (LEVY.test(about) && !/arbeitspreis|unit rate/i.test(about)) return 'levy';
  // By volume alone nobody knows the energy.
  if (quantity.kind === 'volume') return 'unknown';
  if (quantity.kind === 'energy' || price.per === 'unit' || ENERGY.test(about)) return 'energy';
  return 'unknown';
}

/** The days of a line: those in its own row, else those of a heading above without any money. */
function datesOf(amount: Figure, pairs: readonly DatePair[], rows: readonly RowFacts[]): { dates?: DatePair } {
  const own = pairs.find(({ from, to }) => isAround(from.row, to.row, amount.row));
  if (own) return { dates: own };
  const above = pairs.filter(
    ({ from, to }) =>
      from.row < amount.row &&
      !READING.test(rows[from.row]!.words) &&
      !holdsReadings(rows[from.row]!) &&
      !rows[to.row]!.figures.some(isMoney) &&
      from.row === to.row,
  );
  const nearest = above.at(-1);
  return nearest ? { dates: nearest } : {};
}

/** In a table whose head names readings, or with a count beside each of two days. */
export const holdsReadings = ({ figures, dates, words }: RowFacts): boolean =>
  figures.some(({ kind, heading }) => kind === 'reading' || READING.test(heading)) ||
  (dates.length > 1 &&
    !figures.some(isMoney) &&
    !PERIOD.test(words) &&
    figures.filter(({ kind, decimals }) => kind === 'plain' && decimals === 0).length > 1);

/** In the row itself, or in its upper and lower half where its cells have two lines. */
export const isAround = (from: number, to: number, row: number): boolean =>
  from <= row && to >= row && to - from <= 2 && (from === to || (from < row && to > row));

/** In a list of days each charge has its own. */
const ownDay = ({ row }: Figure, rows: readonly RowFacts[]): number | undefined => rows[row]!.dates[0]?.day;

/** A summary says again what stands elsewhere: the same three numbers count once. */
export function dropRepeats(
  lines: readonly PaperLine[],
  rows: readonly RowFacts[],
  /** Whether charges below days of their own are others. */
  isByDays = false,
): PaperLine[] {
  const seen = new Set<string>();
  return lines.filter(({ fuel, quantity, price, amount, kind, dates }) => {
    const own = dates && (isByDays || dates.from.row === amount.row) ? dates.from.day : ownDay(amount, rows);
    const key = `${kind} ${fuel} ${quantity?.value} ${price?.value} ${amount.negative} ${amount.value} ${own}`;
    return !seen.has(key) && seen.add(key);
  });
}

export interface Extra {
  readonly figure: Figure;
  readonly pence: number;
  readonly name: string;
}

/** Sums between the charges and their total that no product makes: discounts, fees, credits; with their sign. */
export function extrasBetween(
  rows: readonly RowFacts[],
  taken: ReadonlySet<Figure>,
  from: number,
  to: number,
  fuel: PaperFuel | undefined,
): Extra[] {
  return rows.slice(from, to + 1).flatMap(({ figures, words }) => {
    const sums = figures.filter((one) => isMoney(one) && !taken.has(one) && one.kind !== 'price');
    if (sums.length === 0) return [];
    const [other, more] = fuelsIn(words);
    if (fuel && other && !more && other !== fuel) return [];
    if ((TOTAL.test(words) || NET.test(words)) && !TAKEN_OFF.test(words)) return [];
    // A price with more places is no sum.
    const free = sums.length > 1 ? sums.filter(({ decimals }) => decimals === 2) : sums;
    // "5.11 % of 39.13 €: 2.00 €".
    const [one, two] = free;
    const isShare = (base: Figure, share: Figure) =>
      figures.some(
        ({ kind, value }) => kind === 'percent' && Math.abs(base.value * value - penceOf(share)) <= 0.5 + 1e-6,
      );
    // "38 kW at £1.41: £53.58".
    const isTimes = (price: Figure, sum: Figure) =>
      figures.some(({ kind, value }) => kind === 'other' && Math.abs(value * penceOf(price) - penceOf(sum)) <= 0.5);
    const share = free.length === 2 && (isShare(one!, two!) || isTimes(one!, two!)) ? two : undefined;
    // Beside each other stand those of two fuels.
    const fuelOf = free.length > 1 && fuel ? fuelsOn(rows).of : undefined;
    // "1 year at £14.20: £14.20" says one sum twice.
    const isOnce = free.length === 2 && one!.value === two!.value && one!.negative === two!.negative;
    const own = share ? [share] : isOnce ? [two!] : fuelOf ? free.filter((some) => fuelOf(some) === fuel) : free;
    if (own.length !== 1) return [];
    const [figure] = own;
    const name = own === free ? words : figure!.before.split('\t').at(-1)!;
    const off = figure!.negative || TAKEN_OFF.test(words);
    return [
      { figure: figure!, pence: off ? -penceOf(figure!) : penceOf(figure!), name: nameOf(name).replace(COUNTED, '') },
    ];
  });
}

/** What was counted, behind a name whose number is taken out: "Grundpreis 365 Tage", "Abonnement (6 mois)"; not "of a month". */
const COUNTED =
  /(?<=\p{L})(?<! (?:an?|per|each|every|pro|je|par|of|in|for|the)) \(? ?(?:days?|tagen?|tage|dagen|jours?|giorni|días|months?|monate?n?|mois|maanden|mes[ei]s?|mesi|kWh) ?\)?$/iu;

/** The words of a row without anything that could name a person or an account. */
export const nameOf = (words: string): string =>
  words
    .replaceAll(/[£€%]|\S*@\S*|\S*\d\S*/g, ' ')
    // "Discount for Mrs Sample", "Gutschrift für Frau Muster", "rebate, account".
    .replace(
      /(?<=\p{L}.*)(?<!\p{L})(?:for|für|mr|mrs|ms|miss|dr|frau|herrn?|account|konto|kundenn\p{L}*)(?!\p{L}).*$/iu,
      ' ',
    )
    .replaceAll(/\s+/g, ' ')
    .trim()
    .replace(/^[^\p{L}]+|[^\p{L})]+$/gu, '')
    .slice(0, 60);
