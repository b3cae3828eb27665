/** What each charge of a bill is for: energy of a register, standing charge, levy or payment, of which fuel and which days. */
import { monthOfName } from '../dates/month-names.ts';
import { type DateMark, type Figure, isYearless, type RowFacts, yearBefore } from './figures.ts';
import { isMoney, type Product, penceOf } from './relations.ts';
import {
  ELECTRICITY,
  ENERGY,
  EXPORT,
  GAS,
  HEAT,
  LEVY,
  NET,
  NEXT_PAYMENT,
  PAYMENT,
  READING,
  REGISTERS,
  SERVICE,
  STANDING,
  STEP,
  SUPPORT,
  TAKEN_OFF,
  TOTAL,
  VAT,
  WATER,
} from './vocabulary.ts';

/** Water and piped heat are known so that they are left out. */
export type PaperFuel = 'electricity' | 'gas' | 'water' | 'heat';
export const isLeftOut = (fuel: PaperFuel | undefined): fuel is 'water' | 'heat' => fuel === 'water' || fuel === 'heat';
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

export interface DatePair {
  readonly from: DateMark;
  readonly to: DateMark;
  readonly days: number;
}

/** A span shorter than this is no bill, a longer one a contract. */
const [LEAST_DAYS, MOST_DAYS] = [3, 800];

/** Two dates one after the other, a later one second, in one row or in two that follow each other. */
export function pairDates(rows: readonly RowFacts[]): DatePair[] {
  const pairs: DatePair[] = [];
  rows.forEach(({ dates, row }, at) => {
    // In a narrow column the second date stands under the first, perhaps with the middle of the row between.
    const next = rows.slice(at + 1, at + 3).find((one) => one.dates.length > 0);
    const below = next && next.row.page === row.page && next.row.y - row.y < row.height * 2.6 ? next.dates : [];
    const isPair =
      dates.length === 1 && below.length === 1 && (!isList(rows, dates[0]!) || leadsOn(rows[at]!, dates[0]!));
    const far = dates.length === 1 && !isPair ? underWord(rows, at, dates[0]!) : [];
    const alone = isPair ? [...dates, ...below] : [...dates, ...far];
    for (let i = 1; i < alone.length; i++) {
      const [from, to] = [alone[i - 1]!, alone[i]!];
      if (isYearless(to.day)) continue;
      const first = isYearless(from.day) ? { ...from, day: yearBefore(from.day, to.day) } : from;
      const days = to.day - first.day;
      if (days >= LEAST_DAYS && days <= MOST_DAYS) pairs.push({ from: first, to, days });
    }
  });
  return pairs;
}

/** In a side panel the second date stands under the first, with only a "to" between them. */
function underWord(rows: readonly RowFacts[], at: number, { box }: DateMark): readonly DateMark[] {
  const below = rows
    .slice(at + 1, at + PANEL_ROWS)
    .filter(({ row }) => row.page === box.page && row.y - box.y < box.height * PANEL_LINES)
    .map((one) => ({ ...one, own: one.row.words.filter(({ x }) => Math.abs(x - box.x) < box.height) }))
    .filter(({ own }) => own.length > 0);
  const [word, next] = below;
  const date = next?.dates.find(({ box: { x } }) => Math.abs(x - box.x) < box.height);
  return date && LEADS_ON.test(word!.own[0]!.text) ? [date] : [];
}
const [PANEL_ROWS, PANEL_LINES] = [8, 5];
const LEADS_ON = /^(?:[-–−]|to|bis|until|au|t\/m|tot|al?)$/i;

/** A date with a dash or a "to" behind it waits for another. */
function leadsOn({ row }: RowFacts, { box }: DateMark): boolean {
  const next = row.words.find(({ x }) => x >= box.x + box.width - 1);
  return next !== undefined && LEADS_ON.test(next.text);
}

const LIST = 3;
/** Three dates and more under each other are a list, such as readings of earlier bills. */
function isList(rows: readonly RowFacts[], { box }: DateMark): boolean {
  const inColumn = rows.filter(
    ({ dates }) =>
      dates.length === 1 && dates[0]!.box.page === box.page && Math.abs(dates[0]!.box.x - box.x) < box.height,
  );
  return inColumn.length >= LIST;
}

/** The dates in the other order of day and month, where they can be read so, and whether that is the only way. */
export function swapDayAndMonth(rows: readonly RowFacts[]): { rows: RowFacts[]; isOnly: boolean } | undefined {
  const slashed = rows.flatMap(({ dates }) => dates).filter(({ text }) => /^\d{1,2}[/-]\d{1,2}[/-]/.test(text));
  const numbers = slashed.map(({ text }) => text.split(/[/-]/).map(Number));
  const first = numbers.filter(([one = 0]) => one > 12).length;
  const second = numbers.filter(([, two = 0]) => two > 12).length;
  if (first > 0 || !slashed.some(({ otherDay }) => otherDay !== undefined)) return undefined;
  const swapped = rows.map((one) => ({
    ...one,
    dates: one.dates.map((date) =>
      date.otherDay === undefined ? date : { ...date, day: date.otherDay, otherDay: date.day },
    ),
  }));
  return { rows: swapped, isOnly: second > 0 };
}

interface FuelMark {
  readonly row: number;
  readonly x: number;
  readonly end: number;
  readonly fuel: PaperFuel;
}

const FUELS: readonly (readonly [RegExp, PaperFuel])[] = [
  [ELECTRICITY, 'electricity'],
  [GAS, 'gas'],
  [WATER, 'water'],
  [HEAT, 'heat'],
];
/** Most rows name none, and one search takes half the time of four. */
const ANY_FUEL = new RegExp(FUELS.map(([{ source }]) => source).join('|'), 'iu');
export const fuelsIn = (text: string): PaperFuel[] =>
  ANY_FUEL.test(text) ? FUELS.flatMap(([words, fuel]) => (words.test(text) ? [fuel] : [])) : [];
const HEADING_WORDS = 8;
/** What stands on bills of any fuel. */
const ASIDE =
  /smell|fuel mix|nuclear|renewable|kernkraft|kernenergie|erneuerbar|energieträger|leak|emergency|geruch|notfall|störung|\bhot water\b|warmwasser/i;
export const isAside = (text: string): boolean => ASIDE.test(text);
/** "Water 18 %", of what electricity is made of. */
const isShareOnly = (figures: readonly Figure[], text: string): boolean =>
  figures.length > 0 && figures.every(({ kind }) => kind === 'percent') && !VAT.test(text);

const IN_COLUMN = 4;
/** In one column with a heading: set flush with it on either side, or about its middle. */
function isUnder({ box }: Figure, { x, end }: FuelMark): boolean {
  const right = box.x + box.width;
  return [box.x - x, right - end, (box.x + right - x - end) / 2].some((off) => Math.abs(off) < IN_COLUMN);
}

interface Fuels {
  /** Which fuel a number belongs to: by its own row, else by the nearest heading above, of two beside each other the one on its side. */
  readonly of: (figure: Figure) => PaperFuel | undefined;
  /** Those that any row names. */
  readonly named: ReadonlySet<PaperFuel>;
}
const foundFuels = new WeakMap<readonly RowFacts[], Fuels>();

export function fuelsOn(rows: readonly RowFacts[]): Fuels {
  const known = foundFuels.get(rows);
  if (known) return known;
  const made = findFuels(rows);
  foundFuels.set(rows, made);
  return made;
}

function findFuels(rows: readonly RowFacts[]): Fuels {
  const everywhere = new Set<PaperFuel>();
  const inPassing = new Set<PaperFuel>();
  // Running text may tell of a boiler that burns gas for heat that is sold.
  let isSaid = false;
  const marks: FuelMark[] = rows.flatMap(({ text, row, words, figures, dates }, at) => {
    const named = fuelsIn(text);
    if (named.length === 0) return [];
    const isPassing = isAside(text) || isShareOnly(figures, text);
    for (const fuel of named) (isPassing ? inPassing : everywhere).add(fuel);
    if (isPassing) return [];
    const isShort = words.split(/\s/).length <= HEADING_WORDS && !/^\p{Ll}|\.$/u.test(text);
    if (figures.length > 0 || dates.length > 0 || isShort) isSaid = true;
    let word = 0;
    const cells = text.split('\t').map((cell) => {
      const parts = cell.split(' ');
      const x = row.words[word]?.x ?? 0;
      word += parts.length;
      const last = row.words[word - 1];
      // "Gas bill, 21 February 2026 to 20 May 2026" is as short as it is without its days.
      const count = parts.filter((part) => !/\d/.test(part) && monthOfName(part.toLowerCase()) === 0).length;
      return { cell, x, end: last ? last.x + last.width : x, count };
    });
    return cells.flatMap(({ cell, x, end, count }) => {
      const [fuel, other] = cells.length > 1 ? fuelsIn(cell) : named;
      return fuel && !other && count <= HEADING_WORDS ? [{ row: at, x, end, fuel }] : [];
    });
  });
  const [only] = everywhere;
  return { of: fuelOf, named: new Set([...everywhere, ...inPassing]) };

  function fuelOf(figure: Figure): PaperFuel | undefined {
    const own = fuelsIn(figure.before);
    if (own.length === 1) return own[0];
    const inRow = fuelsIn(rows[figure.row]!.words);
    if (inRow.length === 1 && own.length === 0) return inRow[0];
    for (let i = marks.length - 1; i >= 0; ) {
      const at = marks[i]!.row;
      const together = marks.filter((mark) => mark.row === at);
      i -= together.length;
      if (at >= figure.row) continue;
      const inColumn = together.length > 1 ? together.filter((mark) => isUnder(figure, mark)) : [];
      const mine = inColumn.length === 1 ? inColumn[0] : together.filter(({ x }) => x <= figure.box.x + 4).at(-1);
      if (mine) return mine.fuel;
    }
    return everywhere.size === 1 && isSaid ? only : undefined;
  }
}

/** The row above, if it has words only. */
const titleOf = (rows: readonly RowFacts[], at: number): RowFacts[] =>
  rows.slice(Math.max(0, at - 1), at).filter(({ figures, dates }) => figures.length + dates.length === 0);

/** The known register that some words name. */
export function registerNamed(text: string): string | undefined {
  const named = text.replaceAll(/\b(?:per|a|each|pro|je) (?:day|tag)\b/gi, '');
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
    if (areOfDaysApart(others)) return line;
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

/** Money off by the unit: no use, and no charge. */
export const isSupport = ({ negative }: Figure, words: string): boolean => negative && SUPPORT.test(words);

/** The charge that a negative line gives back, by its price. */
const chargedBefore = (line: PaperLine, others: readonly PaperLine[]): PaperLine | undefined =>
  others.find(({ amount, pence }) => !amount.negative && pence !== undefined && pence === line.pence);

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
      [rows[quantity.row]!, ...titleOf(rows, quantity.row)].some(({ words }) => EXPORT.test(words));
    // A name with a digit, such as CO2, is not among the words.
    const kind = isSentOut
      ? 'export'
      : isInstalments(product, rows)
        ? 'payment'
        : kindOfLine(quantity, price, `${about} ${rows[quantity.row]!.text}`);
    return {
      kind,
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
  return tellApart(inOrder, rows);
}

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
  const parts = [...groups.values()].filter((own) => {
    const units = own[0]!.quantity!.value;
    const isBelow = new Set(own.map(({ amount }) => amount.row)).size === own.length;
    const isSum = uses.some(({ value }) => value === units * own.length);
    return own.length > 1 && isBelow && !isSum && addUp(own[0]!.fuel);
  });
  return lines.map((line) => {
    const own = parts.find((one) => one.includes(line));
    if (!own) return line;
    const dearest = own.reduce((a, b) => ((b.pence ?? 0) > (a.pence ?? 0) ? b : a));
    const { registerGuessed: _, ...bare } = line;
    const isProved = uses.some(({ value }) => value === line.quantity!.value);
    return {
      ...bare,
      register: undefined,
      kind: line === dearest ? 'energy' : 'levy',
      ...(isProved ? {} : { isGuessed: true }),
    };
  });
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
      !rows[to.row]!.figures.some(isMoney) &&
      from.row === to.row,
  );
  const nearest = above.at(-1);
  return nearest ? { dates: nearest } : {};
}

/** In the row itself, or in its upper and lower half where its cells have two lines. */
export const isAround = (from: number, to: number, row: number): boolean =>
  from <= row && to >= row && to - from <= 2 && (from === to || (from < row && to > row));

/** In a list of days each charge has its own. */
const ownDay = ({ row }: Figure, rows: readonly RowFacts[]): number | undefined => rows[row]!.dates[0]?.day;

/** A summary says again what stands elsewhere: the same three numbers count once. */
export function dropRepeats(lines: readonly PaperLine[], rows: readonly RowFacts[]): PaperLine[] {
  const seen = new Set<string>();
  return lines.filter(({ fuel, quantity, price, amount, kind, dates }) => {
    const own = dates && dates.from.row === amount.row ? dates.from.day : ownDay(amount, rows);
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
    const share = free.length === 2 && isShare(one!, two!) ? two : undefined;
    // Beside each other stand those of two fuels.
    const fuelOf = free.length > 1 && fuel ? fuelsOn(rows).of : undefined;
    const own = share ? [share] : fuelOf ? free.filter((some) => fuelOf(some) === fuel) : free;
    if (own.length !== 1) return [];
    const [figure] = own;
    const name = own === free ? words : figure!.before.split('\t').at(-1)!;
    const off = figure!.negative || TAKEN_OFF.test(words);
    return [{ figure: figure!, pence: off ? -penceOf(figure!) : penceOf(figure!), name: nameOf(name) }];
  });
}

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
