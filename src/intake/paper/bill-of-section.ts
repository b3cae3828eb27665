/** The charges of one fuel as the bill that the program knows, so that typed bills and paper are recomputed by the same code. */

import { type CheckedBill, checkBillSums } from '../../model/bill/check-bill-sums.ts';
import { daysBetween, toCivilDate, toDayNumber } from '../../model/calendar/civil.ts';
import {
  Bill,
  type BillAdjustment,
  type BillCharge,
  type BillMeter,
  type BillStanding,
  type ReadingKind,
} from '../../model/shapes/bill.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { PaperChoices } from '../terms/paper-reading.ts';
import type { DatePair } from './date-pairs.ts';
import type { Figure, RowFacts } from './figures.ts';
import {
  type Extra,
  isAround,
  type PaperLine,
  registerNamed,
  registersOf,
  signedPence,
  signedUnits,
  sumPence,
  sumQuantity,
} from './lines.ts';
import { type Difference, penceOf } from './relations.ts';
import type { Totals } from './totals.ts';
import type { Section } from './understand.ts';
import { ACTUAL, BY_CUSTOMER, ESTIMATED, SERVICE } from './vocabulary.ts';

/** The first reading and the last. */
export type Readings = Pick<Difference, 'earlier' | 'later'>;

export interface SectionBill {
  readonly bill: Bill;
  /** Readings by the meter's name. */
  readonly readings: ReadonlyMap<string, Readings>;
  readonly vatRate: number;
  readonly sums: CheckedBill;
  /** Its part, by charges, of discounts and fees on several fuels together, with VAT. */
  readonly sharedPence: number;
}

const NO_GAS = { correction: 1, imperialM3PerHundredCubicFeet: 2.83, calorificMJPerM3: 39.5 };

export interface SectionInput {
  readonly section: Section;
  readonly fuel: 'electricity' | 'gas';
  readonly rows: readonly RowFacts[];
  readonly together: Totals | undefined;
  /** Discounts and fees on several fuels together. */
  readonly shared: readonly Extra[];
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly inclusive: boolean;
  readonly choices: PaperChoices;
}

export const meterName = (line: PaperLine, fuel: 'electricity' | 'gas'): string =>
  line.register ?? (fuel === 'gas' ? 'gas' : 'all hours');

/** kWh for one of what a line counts. */
const kWhPerUnit = ({ quantity, price, product }: PaperLine): number =>
  quantity?.kWh ?? (product?.isByKWh ? 1 : price?.kWh) ?? 1;
const exact = (value: number): number => Number(value.toFixed(9));

/** Undefined where the numbers make no bill, such as a price below nought, or charges of nought with a discount to share out. */
export function billOfSection(input: SectionInput): SectionBill | undefined {
  const { section, fuel, rows, together, from, to, choices } = input;
  const { lines, totals } = section;
  const energies = lines.filter(({ kind }) => kind === 'energy');
  const gas = fuel === 'gas' && section.gas.length === 1 ? section.gas[0] : undefined;
  const readings = new Map<string, Readings>();
  const registers = registersOf(lines);
  const several = registers.length > 1;
  const meters = registers.map((own): BillMeter => {
    const name = meterName(own[0]!, fuel);
    const units = sumQuantity(own);
    const kWh = exact(units * kWhPerUnit(own[0]!));
    const fitting = section.differences.filter(({ used }) =>
      gas
        ? gas.volume.value === used.value
        : Math.abs(used.value - units) < 1e-6 || own.some(({ quantity }) => quantity === used),
    );
    // Two registers may have used as much: readings beside words for another register are that one's.
    const namedBy = ({ used }: Difference) => registerNamed(rows[used.row]!.words.split('\t').join(' '));
    const mine = several ? fitting.filter((one) => [undefined, own[0]!.register].includes(namedBy(one))) : fitting;
    const whole = mine.filter(({ used }) => gas || Math.abs(used.value - units) < 1e-6);
    const found =
      whole.find((one) => namedBy(one) === own[0]!.register) ??
      (whole.length === 1 || !several ? whole[0] : undefined) ??
      joined(mine, units);
    if (found) readings.set(name, found);
    // A counter of therms or of cubic feet that a factor turns into them is no counter of kWh.
    const isCounter = kWhPerUnit(own[0]!) === 1;
    return {
      name,
      kWh,
      ...(found && isCounter
        ? {
            opening: found.earlier.value,
            openingKind: kindOfReading(found.earlier, found, rows),
            closing: found.later.value,
            closingKind: kindOfReading(found.later, found, rows),
          }
        : gas
          ? { metered: gas.volume.value }
          : {}),
    };
  });
  const taxes = totals?.taxes ?? [];
  const vat = taxes.length > 0 ? undefined : (totals?.vat ?? together?.vat);
  const rate = vat && exact(vat.rate.value / 100);
  // Of several taxes each stands as a charge, and what is laid on none of them again.
  const included = vat ? vat.included : taxes.length > 0 || choices.vat === 'included';
  const draft = {
    fuel,
    from,
    to,
    meterUnit: gas ? (gas.imperial ? 'hundred ft³' : 'm³') : 'kWh',
    ...(gas
      ? {
          correction: gas.factor?.value ?? 1,
          calorificMJPerM3: exact(gas.calorific.value > 20 ? gas.calorific.value : gas.calorific.value * 3.6),
        }
      : {}),
    meters,
    charges: energies.map(
      (line): BillCharge => ({
        meter: meterName(line, fuel),
        ...daysOfLine(line, input),
        ...(line.quantity ? { kWh: exact(signedUnits(line) * kWhPerUnit(line)) } : {}),
        ...(line.pence === undefined
          ? {}
          : { pencePerKWh: exact(((line.price?.negative ? -1 : 1) * line.pence) / kWhPerUnit(line)) }),
        pence: signedPence(line),
      }),
    ),
    standing: standingOf(input),
    adjustments: [
      ...lines
        .filter((line) => line.kind === 'levy' || isGivenBack(line))
        .map((line) => adjustment(levyName(line), signedPence(line), 'before')),
      ...taxes.map(({ rate: { text }, tax }) => adjustment(`VAT ${text}`, penceOf(tax), 'before')),
      ...[...(totals?.before ?? [])].map((extra) => adjustment(extra.name, extra.pence, 'before')),
      ...[...(totals?.after ?? [])].map((extra) => adjustment(extra.name, extra.pence, 'after')),
    ],
    vat: {
      included,
      ...(rate === undefined ? {} : { rate }),
      ...(totals?.vat ? { pence: penceOf(totals.vat.tax) } : {}),
    },
    ...(totals?.net && !included ? { netPence: penceOf(totals.net) } : {}),
    ...(totals?.total && !together ? { totalPence: penceOf(totals.total) } : {}),
  };
  const bill = Bill.safeParse(draft);
  const vatRate = rate ?? 0;
  const sharedPence = sharedPart(input, included ? 0 : vatRate);
  if (!bill.success || sharedPence === undefined) return undefined;
  const sums = checkBillSums({ bill: bill.data, gas: NO_GAS, vatRate });
  return {
    bill: bill.data,
    readings,
    vatRate,
    sums,
    sharedPence,
  };
}

/** @returns pence with VAT, by what this fuel was charged of all; undefined where all charges come to nought, so that no part is known */
function sharedPart({ section, together, shared }: SectionInput, vatRate: number): number | undefined {
  if (!together) return 0;
  const all = together.netPence - together.before.reduce((sum, { pence }) => sum + pence, 0);
  const forEnergy = shared.filter(({ name, pence }) => pence < 0 || !SERVICE.test(name));
  const pence = forEnergy.reduce((sum, one) => sum + one.pence * (together.before.includes(one) ? 1 + vatRate : 1), 0);
  if (pence === 0) return 0;
  return all === 0 ? undefined : Math.round((pence * sumPence(section.lines)) / all);
}

/** Stretches that follow each other, such as those before and after a change of price, from the first reading to the last. */
function joined(stretches: readonly Difference[], units: number): Readings | undefined {
  const inOrder = stretches.toSorted((a, b) => a.earlier.value - b.earlier.value);
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  const isChain = inOrder.every((one, i) => i === 0 || one.earlier.value === inOrder[i - 1]!.later.value);
  if (!first || !last || !isChain || Math.abs(last.later.value - first.earlier.value - units) > 1e-6) return undefined;
  return { earlier: first.earlier, later: last.later };
}

/** Days that are not charged for, such as those of a power cut. */
const isGivenBack = ({ kind, amount }: PaperLine): boolean => kind === 'standing' && amount.negative;

const levyName = ({ quantity, amount }: PaperLine): string =>
  (quantity ?? amount).before.replaceAll(/\s+/g, ' ').trim().slice(0, 60) || 'levy';

function adjustment(name: string, pence: number, vat: 'before' | 'after'): BillAdjustment {
  const kind = pence > 0 ? 'charge' : vat === 'before' ? 'discount' : 'credit';
  return { kind, name: name || kind, pence: Math.abs(pence), vat };
}

/** The first day and the first day after, as the bill counts its last day. */
export const spanOf = ({ from, to }: DatePair, inclusive: boolean): { from: CivilDate; to: CivilDate } => ({
  from: toCivilDate(from.day),
  to: toCivilDate(to.day + (inclusive ? 1 : 0)),
});

/** The days of one line, where they are a part of the bill's and are meant for it. */
function daysOfLine(
  line: PaperLine,
  { from, to, inclusive, section }: SectionInput,
): { from?: CivilDate; to?: CivilDate } {
  if (!line.dates) return {};
  const span = spanOf(line.dates, inclusive);
  const inside = span.from >= from && span.to <= to && (span.from > from || span.to < to);
  if (!inside) return {};
  const own = isAround(line.dates.from.row, line.dates.to.row, line.amount.row);
  const days = daysBetween(span.from, span.to);
  // Of a charge that counts its days itself they are those of no other.
  const counts = line.quantity?.kind === 'days' ? [line] : section.lines;
  const counted = counts.some(({ quantity }) => quantity?.kind === 'days' && quantity.value === days);
  return own || counted ? span : {};
}

/** Standing charges that name no days follow each other from the first day on. */
function standingOf(input: SectionInput): BillStanding[] {
  const { section, from, to } = input;
  const lines = section.lines.filter((line) => line.kind === 'standing' && !isGivenBack(line));
  let next = toDayNumber(from);
  // Of two meters each has its charge for all days.
  const together = lines.reduce((sum, { quantity }) => sum + (quantity?.kind === 'days' ? quantity.value : 0), 0);
  const isEach = together > toDayNumber(to) - next + 1;
  return lines.map((line): BillStanding => {
    const days = line.quantity?.kind === 'months' ? undefined : line.quantity?.value;
    const dated = daysOfLine(line, input);
    const span =
      dated.from !== undefined || days === undefined || lines.length === 1 || isEach
        ? dated
        : { from: toCivilDate(next), to: toCivilDate(Math.min(next + days, toDayNumber(to))) };
    if (days !== undefined) next += days;
    return {
      ...span,
      ...(days === undefined ? {} : { days }),
      ...(line.pence === undefined || days === undefined ? {} : { pencePerDay: line.pence }),
      pence: signedPence(line),
    };
  });
}

/**
 * As the words beside one of two readings say; between two of a row those behind each, but those before each where the
 * first has some before it and the last none behind it.
 */
export function kindOfReading(reading: Figure, { earlier, later }: Readings, rows: readonly RowFacts[]): ReadingKind {
  const { row, text, figures } = rows[reading.row]!;
  const wordsBetween = (from: number, to: number) =>
    row.words
      .filter((word) => word.x >= from - 1 && word.x < to - 1)
      .map((word) => word.text)
      .join(' ');
  const endOf = ({ box }: Figure) => box.x + box.width;
  const wordsBehind = (one: Figure) =>
    wordsBetween(endOf(one), figures.find(({ box }) => box.x > one.box.x)?.box.x ?? Number.POSITIVE_INFINITY);
  const wordsBefore = (one: Figure) => {
    const left = figures.filter(({ box }) => box.x < one.box.x).at(-1);
    // "(you read it)" or E right behind the reading before this one is said of that one.
    return left
      ? wordsBetween(endOf(left), one.box.x).replace(/^(?:\([^)]*\)|[EAC](?=[ ,;]|$))/, '')
      : wordsBetween(0, one.box.x);
  };
  const [first, last] = earlier.box.x < later.box.x ? [earlier, later] : [later, earlier];
  const isSaidBefore =
    first.row === last.row &&
    // "Readings: 4102 estimated, 4530".
    !/[,;)]$/.test(wordsBehind(first)) &&
    [wordsBefore(first), wordsBefore(last)].every((words) => namedKind(words)) &&
    !namedKind(wordsBehind(last));
  const right = figures.find(({ box }) => box.x > reading.box.x);
  const beside = isSaidBefore ? '' : wordsBehind(reading);
  // In running text what is said of the last number may begin the next line.
  const wrapped = /^\([^)]*\)/.exec(rows[reading.row + 1]?.text ?? '')?.[0] ?? '';
  const behind = right || beside !== '' ? beside : wrapped;
  const letter = /\d([EAC])[,;]?$/.exec(wordsBetween(reading.box.x, reading.box.x + reading.box.width))?.[1] ?? '';
  const alone = figures.filter(({ kind }) => kind === 'reading' || kind === 'plain').length < 2 ? text : '';
  for (const words of [letter, behind, wordsBefore(reading), reading.heading, alone]) {
    const kind = namedKind(words);
    if (kind) return kind;
  }
  return 'unknown';
}

function namedKind(words: string): ReadingKind | undefined {
  const letter = /^\W*([EAC])(?:\W*$|[,;])/.exec(words)?.[1];
  if (ESTIMATED.test(words) || letter === 'E') return 'estimated';
  if (BY_CUSTOMER.test(words) || letter === 'C') return 'customer';
  if (ACTUAL.test(words) || letter === 'A') return 'actual';
  return undefined;
}
