/** Words with places to an understanding of the bill: its numbers proved as far as they prove each other, and what they mean. */

import { type DatePair, pairDates, swapDayAndMonth } from './date-pairs.ts';
import type { Figure, RowFacts } from './figures.ts';
import { readRows } from './figures.ts';
import { fuelsOn, isLeftOut, type PaperFuel } from './fuel-of.ts';
import { areApart, type ChargeGroup, earlierWords, groupCharges } from './groups.ts';
import {
  contradictedLines,
  dropRepeats,
  type Extra,
  isSupport,
  joinPriceParts,
  linesOf,
  type PaperLine,
  pricelessLines,
  registersOf,
  sumPence,
  sumQuantity,
} from './lines.ts';
import type { Row } from './page.ts';
import { type PaperPeriod, periodOf, spansMonths } from './period.ts';
import {
  type Difference,
  findDifferences,
  findFarProducts,
  findGasSums,
  findProducts,
  type GasSum,
  isMoney,
  type Product,
  penceOf,
} from './relations.ts';
import { findSeveralTaxes, joinTotals } from './several-taxes.ts';
import { findSettling, findTotals, type Settling, type Totals } from './totals.ts';
import { COMPARED, USED } from './vocabulary.ts';

/** The charges of one fuel. */
export interface Section {
  readonly fuel: PaperFuel | undefined;
  readonly lines: readonly PaperLine[];
  readonly period: PaperPeriod | undefined;
  readonly differences: readonly Difference[];
  readonly gas: readonly GasSum[];
  readonly totals: Totals | undefined;
}

export interface Understanding {
  readonly rows: readonly RowFacts[];
  readonly decimal: '.' | ',';
  readonly sections: readonly Section[];
  /** VAT and total over several fuels, where they have one together. */
  readonly together: Totals | undefined;
  readonly settling: Settling;
  readonly isWater: boolean;
  readonly isHeat: boolean;
  /** What was sent out is no use of the home. */
  readonly isExport: boolean;
  /** Charges that no total of this paper holds. */
  readonly leftOut: readonly PaperLine[];
  /** Whether day and month could be exchanged and nothing tells. */
  readonly orderOpen: boolean;
  readonly payments: readonly PaperLine[];
  /** Proved by readings, and what no register was charged for. */
  readonly strayUses: readonly Figure[];
  readonly bits: number;
}

export interface UnderstandChoices {
  readonly decimal?: '.' | ',' | undefined;
  readonly dayFirst?: boolean | undefined;
  /** Whether people of that zone write the month first. */
  readonly monthFirst?: boolean | undefined;
}

/** Reads under both decimal marks and both orders of day and month, and keeps what proves more. */
export function understand(rows: readonly Row[], choices: UnderstandChoices): Understanding {
  const { decimal } = choices;
  const marks = decimal === undefined ? marksOf(rows) : [decimal];
  const read = marks.map((mark) => understandRows(readRows(rows, mark), mark, choices));
  return read.reduce((best, one) => (one.bits > best.bits ? one : best));
}

/** Amounts of money end in a mark and two digits; where both marks do so, or none, each is tried. */
export function marksOf(rows: readonly Row[]): ('.' | ',')[] {
  const ends = (mark: RegExp) => rows.some(({ words }) => words.some(({ text }) => mark.test(text)));
  const [point, comma] = [ends(/\d\.\d{2}(?!\d|[./-]\d)/), ends(/\d,\d{2}(?!\d)/)];
  return point === comma ? ['.', ','] : [point ? '.' : ','];
}

function understandRows(
  plain: readonly RowFacts[],
  decimal: '.' | ',',
  { dayFirst, monthFirst }: UnderstandChoices,
): Understanding {
  const differences = findDifferences(plain);
  const gas = findGasSums(plain, differences);
  const isCharge = ({ amount }: Product) => !isSupport(amount, plain[amount.row]!.words);
  const found = findProducts(plain).filter(isCharge);
  const swapped = swapDayAndMonth(plain);
  const make = (rows: readonly RowFacts[]) => {
    const pairs = pairDates(rows);
    const far = findFarProducts(rows, found, usesOf(pairs, found, differences, gas));
    const products = [...found, ...far.filter(isCharge)];
    return { ...sectionsOf(rows, pairs, products, differences, gas), products };
  };
  const isSwapped = swapped !== undefined && (swapped.isOnly || (dayFirst === undefined ? monthFirst : !dayFirst));
  const first = make(isSwapped ? swapped.rows : plain);
  const isOpen = swapped !== undefined && !swapped.isOnly && dayFirst === undefined;
  const second = isOpen ? make(isSwapped ? plain : swapped.rows) : undefined;
  const provedDays = (made: ReturnType<typeof make>) => made.sections.filter(({ period }) => period?.proof).length;
  const chosen = second && provedDays(second) > provedDays(first) ? second : first;
  const daysOf = ({ sections }: ReturnType<typeof make>) =>
    sections
      .flatMap(({ lines, period }) =>
        [period?.pair, ...lines.map(({ dates }) => dates)].map((one) => [one?.from.day, one?.to.day]),
      )
      .join();
  const isNeeded = second !== undefined && daysOf(first) !== daysOf(second);
  const orderOpen = isNeeded && provedDays(first) === provedDays(second);
  const bits = [...chosen.products, ...differences, ...gas].reduce((sum, one) => sum + one.bits, 0);
  return { ...chosen, rows: plain, decimal, orderOpen, bits };
}

/** What some price elsewhere may be for: amounts of use that something proves, and the days between two dates. */
function usesOf(
  pairs: readonly DatePair[],
  products: readonly Product[],
  differences: readonly Difference[],
  gas: readonly GasSum[],
): Figure[] {
  const days = pairs.flatMap((pair) => {
    const { from, to } = pair;
    // A price for a year is the same for 365 days of 365 and 366 of 366; twelve months say which of them.
    const year = [false, true].findIndex((inclusive) => spansMonths(pair, inclusive) === 12);
    return (year < 0 ? [pair.days, pair.days + 1] : [pair.days + year]).map(
      (value): Figure => ({
        row: to.row,
        box: { ...from.box, width: Math.max(from.box.width, to.box.x + to.box.width - from.box.x) },
        text: String(value),
        value,
        decimals: 0,
        negative: false,
        kind: 'days',
        before: '',
        heading: '',
      }),
    );
  });
  return [
    ...new Set([
      ...products.map(({ quantity }) => quantity),
      ...differences.map(({ used }) => used),
      ...gas.map(({ energy }) => energy),
      ...days,
    ]),
  ];
}

/** "Therms used 149", by itself: what was used of all, whatever prices it bears. */
const statedUses = (rows: readonly RowFacts[], used: ReadonlySet<Figure>): Figure[] =>
  rows.flatMap(({ figures, words }) =>
    figures.length === 1 &&
    figures[0]!.kind === 'energy' &&
    !used.has(figures[0]!) &&
    USED.test(words) &&
    !COMPARED.test(words)
      ? figures
      : [],
  );

/** Whether words by it say that it is of another time. */
const isEarlier = ({ amount }: PaperLine, rows: readonly RowFacts[]): boolean =>
  earlierWords(amount, rows) !== undefined;

/** Whatever looks like a charge, from what multiplies out to what only stands in one row. */
function linesOfPage(
  rows: readonly RowFacts[],
  pairs: readonly DatePair[],
  products: readonly Product[],
  uses: readonly Figure[],
  used: ReadonlySet<Figure>,
): PaperLine[] {
  const every = withoutGross(linesOf(rows, products, pairs), rows);
  // Of two that are alike this bill's stays.
  const earlier = new Set(every.filter((line) => isEarlier(line, rows)));
  const inTurn = [...every.filter((line) => !earlier.has(line)), ...earlier];
  const repeated = dropRepeats(inTurn, rows);
  // Charges of equal months repeat too: what the totals say counts.
  const confirmedAs = (lines: readonly PaperLine[]) => {
    const input = { rows, lines, taken: used };
    return Math.max(findTotals(input)?.confirmed ?? 0, findSeveralTaxes(input)?.confirmed ?? 0);
  };
  // Each fuel may have a total of its own.
  const confirmed = (lines: readonly PaperLine[]) => {
    const charges = lines.filter(({ kind }) => !NO_CHARGES.has(kind));
    const byFuel = [...Map.groupBy(charges, ({ fuel }) => fuel).values()];
    return Math.max(confirmedAs(charges), byFuel.length < 2 ? 0 : Math.min(...byFuel.map(confirmedAs)));
  };
  // Equal charges below days of their own, where no total holds those of all.
  const isRepeating = repeated.length < every.length;
  const byDays = isRepeating && confirmed(repeated) === 0 ? dropRepeats(inTurn, rows, true) : repeated;
  const once = byDays.length > repeated.length ? byDays : repeated;
  const isEach = every.length > once.length && confirmed(every) > confirmed(once);
  const counted = (isEach ? every : once).filter((line, _, all) => !isSumOf(line, all, 2));
  // A comparison with other prices is for the same units too, and in no total.
  const addUp = (fuel: PaperFuel | undefined) =>
    confirmed(counted) > 0 || confirmed(counted.filter((line) => line.fuel === fuel)) > 0;
  const proved = joinPriceParts(counted, uses, addUp, rows);
  const failed = contradictedLines(rows, used, pairs);
  const priced = [...proved, ...failed];
  const hasUse = priced.some(({ kind }) => kind === 'energy');
  return [...priced, ...(hasUse ? [] : pricelessLines(rows, used, pairs))].toSorted(
    (a, b) => a.amount.row - b.amount.row,
  );
}

function sectionsOf(
  rows: readonly RowFacts[],
  pairs: readonly DatePair[],
  products: readonly Product[],
  differences: readonly Difference[],
  gas: readonly GasSum[],
) {
  const used = new Set(products.flatMap(({ price, amount }) => [price, amount]));
  const uses = [
    ...differences.map(({ used: one }) => one),
    ...gas.map(({ energy }) => energy),
    ...statedUses(rows, used),
  ];
  const all = namingHeld(linesOfPage(rows, pairs, products, uses, used), rows, pairs, used);
  const { of: fuelOf, named } = fuelsOn(rows);
  // Water stands among what electricity is made of, too.
  const isWaterCharged =
    named.has('water') &&
    rows.some(({ figures }) =>
      figures.some((one) => (isMoney(one) || one.kind === 'volume') && fuelOf(one) === 'water'),
    );
  // Where all charges are of another time, the person is asked.
  const isNow = all.some((line) => line.kind === 'energy' && !isEarlier(line, rows));
  const isLeft = (line: PaperLine) => isNow && isEarlier(line, rows);
  const charges = all.filter((line) => !isLeftOut(line.fuel) && !NO_CHARGES.has(line.kind) && !isLeft(line));
  const fuels = [...new Set(charges.filter(({ kind }) => kind === 'energy').map(({ fuel }) => fuel))];
  const taken = new Set<Figure>([
    ...used,
    ...all.flatMap(({ quantity, price, amount }) => [
      amount,
      ...(quantity ? [quantity] : []),
      ...(price ? [price] : []),
    ]),
    ...differences.flatMap(({ figures }) => figures),
    ...gas.flatMap(({ figures }) => figures),
  ]);
  const linesOfFuel = (fuel: PaperFuel | undefined) =>
    // A charge of no known fuel goes with the only one there is.
    charges.filter((line) => line.fuel === fuel || (fuels.length === 1 && line.fuel === undefined));
  // What another fuel comes to is no sum of this one's.
  const takenFor = (fuel: PaperFuel | undefined) => {
    const sums = new Set(fuels.flatMap((one) => (one === fuel ? [] : sumPence(linesOfFuel(one)))));
    if (sums.size === 0) return taken;
    sums.delete(sumPence(linesOfFuel(fuel)));
    return new Set([
      ...taken,
      ...rows.flatMap(({ figures }) => figures.filter((one) => isMoney(one) && sums.has(penceOf(one)))),
    ]);
  };
  const plain = fuels.map((fuel) => {
    const input = { rows, lines: linesOfFuel(fuel), taken: takenFor(fuel) };
    const one = findTotals(input);
    // One of two taxes fits the charges with a price alone; the total is of all.
    return one?.vat && !one.total ? (findSeveralTaxes(input) ?? one) : one;
  });
  // A total may hold what is left out here: water, heat, or what no word names.
  const others = all.filter(
    ({ fuel, kind }) => kind === 'unknown' || kind === 'export' || (isLeftOut(fuel) && kind !== 'payment'),
  );
  const everything = [...fuels.flatMap(linesOfFuel), ...others];
  const isOpen = fuels.length + others.length > 1 && plain.some((one) => (one?.vat ?? one?.taxes) === undefined);
  const held = isOpen ? findTotals({ rows, lines: everything, taken }) : undefined;
  // Water bears another tax, or none.
  const apart =
    isOpen && !held?.vat && fuels.length > 1
      ? findTotals({ rows, lines: fuels.flatMap(linesOfFuel), taken })
      : undefined;
  const over = apart?.vat ? apart : held;
  const parts = fuels.map((fuel, i): readonly Part[] => {
    const lines = linesOfFuel(fuel);
    const whole = { lines, totals: plain[i], pairs };
    return plain[i]?.vat || plain[i]?.taxes || over?.vat ? [whole] : partsOf(rows, whole, taken);
  });
  const single = parts.map(([first]) => first?.totals);
  const together = over?.vat || single.some((one) => one === undefined) ? over : undefined;
  const kept = new Set(parts.flat().flatMap(({ lines }) => lines));
  const sections = parts.flatMap((own, i) => own.map((part) => sectionOf(fuels[i], part)));
  function sectionOf(fuel: PaperFuel | undefined, { lines, totals, pairs: near }: Part): Section {
    const energies = lines.filter(({ kind }) => kind === 'energy');
    const mine = gas.filter(
      ({ energy }) =>
        energies.some(({ quantity }) => quantity === energy) || Math.abs(sumQuantity(energies) - energy.value) < 0.02,
    );
    return {
      fuel,
      lines,
      period: periodOf(near, lines, rows),
      differences: differences.filter((one) => belongs(one, energies, mine)),
      gas: mine.filter((one, i) => mine.findIndex((other) => workingOf(other) === workingOf(one)) === i),
      totals: together?.vat ? beforeVat(totals) : totals,
    };
  }
  const sum =
    together?.totalPence ??
    sections.reduce((total, { totals, lines }) => total + (totals?.totalPence ?? sumPence(lines)), 0);
  return {
    sections,
    together,
    settling: findSettling(
      rows,
      sum,
      new Set(
        [...taken].filter(
          (one) => !all.some(({ kind, amount }) => (kind === 'payment' || kind === 'export') && amount === one),
        ),
      ),
    ),
    isWater:
      isWaterCharged || (sections.length === 0 && named.has('water') && !named.has('electricity') && !named.has('gas')),
    isHeat: named.has('heat') || all.some(({ fuel }) => fuel === 'heat'),
    isExport: all.some(({ kind }) => kind === 'export'),
    // Of a fuel of which only the days were charged the use may be lost; what is in the total and no word names is a charge.
    leftOut: [...charges, ...all.filter(isLeft), ...(together === undefined ? [] : all.filter(isNameless))].filter(
      (line) =>
        !kept.has(line) && !sections.some((section) => repeatsWithTax(line, section) || isSumOf(line, section.lines)),
    ),
    strayUses: [
      ...differences
        .filter((one) => !sections.some(({ differences: own }) => own.includes(one)))
        .map(({ used: stray }) => stray),
      ...gas
        .filter((one) => !sections.some((own) => own.gas.some((other) => workingOf(other) === workingOf(one))))
        .map(({ energy }) => energy),
    ],
    payments: all.filter(({ kind }) => kind === 'payment'),
  };
}

/** Discounts and fees that are on no fuel by itself. */
export function sharedOf({ together, sections }: Understanding): Extra[] {
  const own = new Set(sections.flatMap(({ totals }) => totals?.before.map(({ figure }) => figure) ?? []));
  const fees = together?.after.filter(({ pence }) => pence > 0) ?? [];
  return [...(together?.before ?? []), ...fees].filter(({ figure }) => !own.has(figure));
}

/** Of charges that stand before tax and with it beside each other those before it. */
function withoutGross(lines: readonly PaperLine[], rows: readonly RowFacts[]): PaperLine[] {
  const byRow = Map.groupBy(lines, ({ amount }) => amount.row);
  if (byRow.size === lines.length) return [...lines];
  const rates = rows.flatMap(({ figures }) => figures.filter(({ kind, value }) => kind === 'percent' && value > 0));
  return lines.filter(
    ({ amount, quantity }) =>
      !byRow
        .get(amount.row)!
        .some(
          (net) =>
            net.quantity?.value === quantity?.value &&
            rates.some(({ value }) => Math.abs(penceOf(net.amount) * (1 + value / 100) - penceOf(amount)) <= 1),
        ),
  );
}

/** Hundredths of money that no kWh costs. */
const DEAR = 100;
/** What no word names and the printed sums hold beside the charges of the only fuel is a charge like them. */
function namingHeld(
  all: readonly PaperLine[],
  rows: readonly RowFacts[],
  pairs: readonly DatePair[],
  used: ReadonlySet<Figure>,
): readonly PaperLine[] {
  const charges = all.filter((line) => !isLeftOut(line.fuel) && !NO_CHARGES.has(line.kind) && !isEarlier(line, rows));
  const [fuel, ...others] = new Set(charges.flatMap((line) => (line.kind === 'energy' ? [line.fuel] : [])));
  // At so much a piece, or as often as there are days: other units may be energy whose unit was lost.
  const isNoEnergy = ({ quantity, pence = 0 }: PaperLine) =>
    pence >= DEAR || pairs.some(({ days }) => [days, days + 1].includes(quantity?.value ?? 0));
  const mayBeHeld = (line: PaperLine) =>
    isNameless(line) &&
    (line.fuel === undefined || line.fuel === fuel) &&
    line.quantity?.kind !== 'volume' &&
    isNoEnergy(line);
  const nameless = all.filter((line) => mayBeHeld(line) && !isEarlier(line, rows));
  if (nameless.length === 0 || others.length > 0) return all;
  const taken = new Set([...used, ...all.map(({ amount }) => amount)]);
  const confirmed = (lines: readonly PaperLine[]) => findTotals({ rows, lines, taken })?.confirmed ?? 0;
  if (confirmed([...charges, ...nameless]) <= confirmed(charges)) return all;
  return all.map((line) => (nameless.includes(line) ? { ...line, kind: 'levy', isGuessed: true } : line));
}

/** A charge of which no word or unit says what it is for. */
const isNameless = ({ kind, fuel }: PaperLine): boolean => kind === 'unknown' && !isLeftOut(fuel);

/** The same charge again, with its tax. */
function repeatsWithTax({ quantity, amount }: PaperLine, { lines, totals }: Section): boolean {
  const { vat } = totals ?? {};
  if (!vat || vat.included) return false;
  return lines.some(
    (line) =>
      line.amount.row === amount.row &&
      line.quantity?.value === quantity?.value &&
      Math.abs(penceOf(line.amount) * (1 + vat.rate.value / 100) - penceOf(amount)) <= 1,
  );
}

/** All units and what they cost, at the price that they come to. */
function isSumOf({ kind, fuel, quantity, amount }: PaperLine, lines: readonly PaperLine[], least = 1): boolean {
  const energies = lines.filter((one) => one.kind === 'energy' && one.fuel === fuel && one.amount !== amount);
  return (
    kind === 'energy' &&
    energies.length >= least &&
    penceOf(amount) === sumPence(energies) &&
    quantity?.value === sumQuantity(energies)
  );
}

/** Kinds of lines that are no charge for what the home used. */
const NO_CHARGES: ReadonlySet<PaperLine['kind']> = new Set(['payment', 'unknown', 'export']);

interface Part {
  readonly lines: readonly PaperLine[];
  readonly totals: Totals | undefined;
  readonly pairs: readonly DatePair[];
}

/** The charges of one fuel as one bill, or as those stretches of them that a tax and a total hold. */
function partsOf(rows: readonly RowFacts[], whole: Part, taken: ReadonlySet<Figure>): readonly Part[] {
  const { lines, pairs } = whole;
  const totals = findSeveralTaxes({ rows, lines, taken });
  if (totals) return [{ ...whole, totals }];
  const groups = groupCharges(rows, lines, pairs, taken);
  if (groups.length === 0) return [whole];
  const apart = groups.every((one, i) => groups.slice(i + 1).every((other) => areApart(one, other)));
  if (apart) return groups;
  const all = groups.flatMap((one: ChargeGroup) => one.lines);
  return [{ lines: all, totals: joinTotals(groups, rows), pairs }];
}

/** The same working printed twice is one. */
const workingOf = ({ volume, factor, calorific }: GasSum): string =>
  `${volume.value} ${factor?.value} ${calorific.value}`;

/** Where VAT is laid on all fuels together, what one of them comes to is before VAT. */
function beforeVat(totals: Totals | undefined): Totals | undefined {
  if (!totals || totals.vat) return totals;
  const { total, net = total, ...rest } = totals;
  return { ...rest, ...(net ? { net } : {}) };
}

/** A difference of readings belongs to the register whose charges, or whose gas, come to what it says was used. */
function belongs({ used }: Difference, energies: readonly PaperLine[], gas: readonly GasSum[]): boolean {
  if (gas.some(({ volume }) => volume === used || volume.value === used.value)) return true;
  return registersOf(energies).some(
    (own) => own.some(({ quantity }) => quantity === used) || Math.abs(sumQuantity(own) - used.value) < 1e-6,
  );
}
