/** Every value that was read of a bill, with what proves or contradicts it and where it stands. */
import type { PaperValue, PaperValueKind } from '../terms/paper-reading.ts';
import { kindOfReading, meterName, type SectionBill } from './bill-of-section.ts';
import type { Box, Figure, RowFacts } from './figures.ts';
import { nameOf, type PaperLine, registersOf } from './lines.ts';
import { LEAST_BITS, type Proof, printedAs } from './relations.ts';
import type { Totals } from './totals.ts';
import type { Section, Understanding } from './understand.ts';
import {
  ADDED,
  BILLED_BEFORE,
  GIVEN_BACK,
  LEVY,
  NET,
  PERIOD,
  SERVICE,
  STANDING,
  SUPPORT,
  TAKEN_OFF,
  VAT,
} from './vocabulary.ts';

export interface ReadSection {
  readonly section: Section;
  readonly fuel: 'electricity' | 'gas' | undefined;
  /** Whether the paper says the fuel, rather than the person. */
  readonly fuelSaid: boolean;
  readonly made: SectionBill | undefined;
  /** Sums that do not come out, as printed. */
  readonly faults: readonly { readonly figure: Figure; readonly sum: string }[];
}

export interface ValuesInput {
  readonly understood: Understanding;
  readonly sections: readonly ReadSection[];
  /** Words that the person put right. */
  readonly typed: (box: Box) => boolean;
}

type Draft = Omit<PaperValue, 'key' | 'state' | 'sums' | 'boxes' | 'text' | 'meaning'> & {
  readonly meaning?: PaperValue['meaning'];
};

/** The sums that prove each figure, as they stand on the paper. */
function provingSums({ rows, together, settling }: Understanding, sections: ValuesInput['sections']) {
  const proofs = [
    ...sections.flatMap(({ section }) => proofsOf(section)),
    ...(together?.proofs ?? []),
    ...(settling.proof ? [settling.proof] : []),
  ].filter(({ bits, figures }) => bits >= LEAST_BITS && areSure(figures, rows));
  const sumsOf = new Map<Figure, Set<string>>();
  for (const { figures, sum } of proofs) {
    for (const figure of figures) {
      const known = sumsOf.get(figure);
      if (known) known.add(sum);
      else sumsOf.set(figure, new Set([sum]));
    }
  }
  return sumsOf;
}

/** Whether the rows that a proof reaches over are sure: among others that are not, a part of it may be another's. */
function areSure(figures: readonly Figure[], rows: readonly RowFacts[]): boolean {
  const at = figures.map(({ row }) => row);
  return rows.slice(Math.min(...at), Math.max(...at) + 2).every(({ row }) => !row.isUnsure);
}

export function listValues({ understood, sections, typed }: ValuesInput): PaperValue[] {
  const { rows, together, settling } = understood;
  const sumsOf = provingSums(understood, sections);
  const faults = new Map(sections.flatMap((one) => one.faults.map(({ figure, sum }) => [figure, sum] as const)));
  const values: PaperValue[] = [];
  const isUnsure = (one: RowFacts) => one.row.isUnsure === true;
  // Where some rows are not sure, what no word names may be anything.
  const isDoubtful = rows.some(isUnsure);
  const add = (draft: Draft, figure: Figure, meaning: PaperValue['meaning'] = 'said') => {
    const fault = faults.get(figure);
    const sums = [...(fault === undefined ? [] : [fault]), ...(sumsOf.get(figure) ?? [])];
    const isTyped = typed(figure.box);
    // A sum that fails is shown of what the person typed too.
    const isProved = sums.length > 0 && !(isDoubtful && meaning === 'guessed');
    const state = fault !== undefined ? 'contradicted' : isTyped ? 'typed' : isProved ? 'proved' : 'read';
    values.push({
      key: `${draft.kind}-${values.length}`,
      text: meaning === 'guessed' && figure.oddUnit ? `${figure.text} ${figure.oddUnit}` : figure.text,
      boxes: [figure.box],
      state,
      ...(isTyped ? { isTyped } : {}),
      sums,
      meaning,
      ...draft,
    });
  };
  for (const { section, fuel, fuelSaid, made } of sections) {
    const ofFuel = fuel === undefined ? {} : { fuel };
    const of = (kind: PaperValueKind, name?: string): Draft => ({ kind, ...ofFuel, ...(name ? { name } : {}) });
    if (fuel !== undefined)
      values.push({
        ...of('fuel'),
        key: `fuel-${values.length}`,
        text: fuel,
        boxes: [],
        state: fuelSaid ? 'proved' : 'typed',
        sums: [],
        meaning: 'said',
      });
    const { period } = section;
    if (period) {
      const { pair, proof } = period;
      const boxes = [pair.from.box, pair.to.box];
      const own = [pair.from, pair.to].map(({ row }) => rows[row]!);
      // Where no word says that they are the bill's and other days are unsure, it may be those.
      const others = PERIOD.test(own[0]!.words) ? own : rows;
      const isOther = others.some((one) => isUnsure(one) && one.dates.length > 0);
      const state = boxes.some(typed) ? 'typed' : proof && !isOther ? 'proved' : 'read';
      values.push({
        ...of('period'),
        key: `period-${values.length}`,
        text: `${pair.from.text} – ${pair.to.text}`,
        boxes,
        state,
        sums: proof ? [proof.sum] : [],
        meaning: 'said',
      });
    }
    const groups = registersOf(section.lines);
    // Near rows that are not sure a name that stands twice for the same days, or by a charge of several rows, may be another's.
    const hasSlipped = (own: readonly PaperLine[]) =>
      own.some((line) => isNearUnsure(rowsOfLine(line), rows)) &&
      (new Set(own.map(({ dates }) => dates?.from.day)).size < own.length ||
        (groups.length > 1 && own.some((line) => rowsOfLine(line).size > 1)));
    for (const own of groups) {
      const name = meterName(own[0]!, fuel ?? 'electricity');
      const reading = made?.readings.get(name);
      const isNamed = own[0]!.register !== undefined && !own[0]!.registerGuessed;
      // With readings of its own it is a register, whatever its name.
      const isMetered = own.every(({ quantity }) => section.differences.some(({ used }) => used === quantity));
      const isGivenBack = own.some(
        ({ amount, quantity }) =>
          amount.negative &&
          ![GIVEN_BACK, BILLED_BEFORE].some((one) => one.test(rows[(quantity ?? amount).row]!.words)),
      );
      const isGuessed =
        own.some((line) => line.isGuessed || (isBesideAnother(line, own) && !isInStretches(section))) ||
        hasSlipped(own) ||
        (groups.length > 1 && !isNamed && !isMetered) ||
        isGivenBack;
      const meaning = isGuessed ? 'guessed' : 'said';
      if (reading) {
        // Where its charge stands in a row that is not sure, the register may be another.
        const isOther = own.some(({ quantity, amount }) => isUnsure(rows[(quantity ?? amount).row]!));
        const readings = [['opening', reading.earlier] as const, ['closing', reading.later] as const];
        for (const [kind, figure] of readings)
          add(
            { ...of(kind, name), reading: kindOfReading(figure, reading, rows) },
            figure,
            isOther ? 'guessed' : 'said',
          );
      }
      for (const line of own) addLine(line, name, ['use', 'price', 'charge'], meaning);
    }
    for (const { volume, factor, calorific } of section.gas) {
      add(of('volume'), volume);
      if (factor) add(of('factor'), factor);
      add(of('calorific'), calorific);
    }
    for (const line of section.lines) {
      if (line.kind === 'standing') addLine(line, undefined, ['days', 'standing-price', 'standing-charge'], 'said');
      if (line.kind === 'levy')
        addLine(
          line,
          nameOf((line.quantity ?? line.amount).before),
          ['use', 'price', 'levy'],
          line.isGuessed ? 'guessed' : 'said',
        );
    }
    addTotals(section.totals, of);

    function addLine(
      line: PaperLine,
      name: string | undefined,
      kinds: readonly [PaperValueKind, PaperValueKind, PaperValueKind],
      meaning: PaperValue['meaning'],
    ) {
      if (line.quantity) add(of(kinds[0], name), line.quantity, meaning);
      if (line.price) add(of(kinds[1], name), line.price, meaning);
      add(of(kinds[2], name), line.amount, meaning);
    }
  }
  addTotals(together, (kind, name) => ({ kind, ...(name ? { name } : {}) }));
  for (const { figure, kind } of settling.kept) add({ kind }, figure);
  if (settling.due) add({ kind: 'due' }, settling.due);
  if (settling.next) add({ kind: 'next-payment' }, settling.next);
  return values;

  function addTotals(totals: Totals | undefined, of: (kind: PaperValueKind, name?: string) => Draft) {
    if (!totals) return;
    for (const { figure, name } of [...totals.before, ...totals.after]) {
      if (!values.some(({ kind, boxes }) => kind === 'extra' && boxes[0] === figure.box))
        add(of('extra', name), figure, isNamedExtra(rows[figure.row]!) ? 'said' : 'guessed');
    }
    if (totals.net) add(of('net'), totals.net);
    for (const { rate, tax } of totals.taxes ?? (totals.vat ? [totals.vat] : [])) {
      add(of('vat-rate'), rate);
      add(of('vat'), tax);
    }
    // What follows from a credit that nothing names may be what is due instead.
    const isNamed = totals.after.every(({ figure }) => isNamedExtra(rows[figure.row]!));
    // Without tax it may be the sum before it, where the row of the tax is not sure.
    const isLast = totals.vat !== undefined || totals.taxes !== undefined || !isDoubtful;
    // "Subtotal" is none, where its tax was not found.
    const isNet = totals.total === totals.net && totals.net !== undefined && NET.test(rows[totals.net.row]!.words);
    if (totals.total && !isNet) add(of('total'), totals.total, isNamed && isLast ? 'said' : 'guessed');
  }
}

/** Whether standing charges beside each other are for days that together are those of the bill, such as before and after a change of price. */
function isInStretches({ lines, period }: Section): boolean {
  const counts = lines.flatMap(({ kind, quantity, product }) =>
    kind === 'standing' && product && quantity?.kind === 'days' ? quantity : [],
  );
  const days = counts.reduce((sum, { value }) => sum + value, 0);
  return (
    new Set(counts.map(({ row }) => row)).size < counts.length &&
    period?.proof?.figures.length === counts.length &&
    days > 0
  );
}

const rowsOfLine = ({ quantity, price, amount }: PaperLine): ReadonlySet<number> =>
  new Set([quantity, price, amount].flatMap((figure) => figure?.row ?? []));
const NEAR = 10;
const isNearUnsure = (at: ReadonlySet<number>, rows: readonly RowFacts[]): boolean =>
  rows.slice(Math.max(0, Math.min(...at) - NEAR), Math.max(...at) + NEAR).some(({ row }) => row.isUnsure);

/** Charges at different prices beside each other are of two meters or fuels, and the words over them are lost. */
const isBesideAnother = ({ amount, pence }: PaperLine, own: readonly PaperLine[]): boolean =>
  own.some(
    (one) =>
      one.amount !== amount &&
      one.amount.box.page === amount.box.page &&
      Math.abs(one.amount.box.y - amount.box.y) < amount.box.height &&
      one.pence !== pence,
  );

/**
 * A charge for energy or days whose other numbers were lost looks like any sum; only words that say so make it an extra.
 * A standing charge for days without a price is one all the same: "Grundpreis, 365 Tage".
 */
function isNamedExtra({ words, figures }: RowFacts): boolean {
  const isCharge = figures.some(
    ({ kind }) => kind === 'energy' || kind === 'price' || (kind === 'days' && !STANDING.test(words)),
  );
  return EXTRA.some((one) => one.test(words)) && (!isCharge || SUPPORT.test(words)) && !VAT.test(words);
}
const EXTRA: readonly RegExp[] = [TAKEN_OFF, SUPPORT, ADDED, SERVICE, LEVY, STANDING];

function proofsOf(section: Section): Proof[] {
  const { lines, differences, gas, period, totals } = section;
  return [
    ...lines.flatMap(({ product }) => product ?? []),
    ...differences,
    ...gas,
    ...(period?.proof ? [period.proof] : []),
    ...(totals?.proofs ?? []),
  ];
}

/** The charges whose numbers do not multiply out, and a total that the charges do not come to. */
export function faultsOf(section: Section, rows: readonly RowFacts[], isCovered: boolean): ReadSection['faults'] {
  const lines = section.lines.flatMap(({ product, quantity, price, pence, amount }) => {
    if (product || !quantity || !price) return [];
    // Units that cost nothing prove nothing and contradict nothing.
    if (amount.value === 0 && (price.value === 0 || quantity.value === 0)) return [];
    const reckoned = pence === undefined ? '' : ` (${printedAs(quantity.value * pence, amount)})`;
    return [{ figure: amount, sum: `${quantity.text} × ${price.text}${reckoned} ≠ ${amount.text}` }];
  });
  if (section.totals || isCovered) return lines;
  const last = Math.max(...section.lines.map(({ amount }) => amount.row));
  const total = rows
    .slice(last + 1)
    .flatMap(({ figures, words }) =>
      /total|gesamt|summe|brutto|charges/i.test(words) ? figures.filter(({ kind }) => kind === 'money') : [],
    )[0];
  if (!total) return lines;
  const sum = section.lines.map(({ amount }) => amount.text).join(' + ');
  const reckoned = section.lines.reduce((all, { amount }) => all + (amount.negative ? -amount.value : amount.value), 0);
  return [...lines, { figure: total, sum: `${sum} (${printedAs(reckoned * 100, total)}) ≠ ${total.text}` }];
}
