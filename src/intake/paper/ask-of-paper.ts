/** What a bill on paper leaves open for the person, and what is named beside. */
import { toDayNumber } from '../../model/calendar/civil.ts';
import { sumOf } from '../../model/units/sums.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { PaperValue } from '../terms/paper-reading.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import type { RowFacts } from './figures.ts';
import { isCompared } from './groups.ts';
import { type LeftOver, saysNoBill, textOfLeft } from './left-over.ts';
import { type PaperLine, sumPence, sumQuantity } from './lines.ts';
import { penceOf, printedAs } from './relations.ts';
import type { Understanding } from './understand.ts';
import type { ReadSection } from './values.ts';
import { BILLED_BEFORE, INCLUDES_VAT, PAYMENT } from './vocabulary.ts';

interface ReadBill {
  readonly values: readonly PaperValue[];
  readonly over: LeftOver;
  readonly understood: Understanding;
  readonly sections: readonly ReadSection[];
}

/** What the paper leaves open blocks keeping until a person has answered it. */
export function ask(
  { values, over, understood, sections }: ReadBill,
  choices: IntakeChoices,
  book: RemarkBook,
  today: string,
): void {
  const said = choices.paper ?? {};
  const { orderOpen, rows, together } = understood;
  // What does not come out goes first: put right, it often answers the rest.
  const against = [
    ...values.filter(({ state }) => state === 'contradicted').map(({ sums }) => sums[0]!),
    ...sections.flatMap(recomputed),
    ...lackingCharges(understood),
  ];
  if (against.length > 0 && !said.asPrinted)
    book.add('paper-contradicted-asked', 'question', {
      count: against.length,
      found: [...new Set(against)].slice(0, 3).join('; '),
    });
  if (orderOpen && choices.dayFirst === undefined) {
    const found = rows.flatMap(({ dates }) => dates).find(({ otherDay }) => otherDay !== undefined);
    book.add('date-order-asked', 'question', { found: found?.text ?? '', expected: 'day first' });
  }
  const hasVat =
    together?.vat !== undefined || sections.every(({ section }) => section.totals?.vat ?? section.totals?.taxes);
  // Where money is dollars, energy bears no VAT.
  const isDollars = () => book.list().some(({ code, found }) => code.startsWith('paper-money') && found === '$');
  if (!hasVat && said.vat === undefined && !isDollars()) {
    const isSaid = rows.some(({ text }) => INCLUDES_VAT.test(text));
    book.add('paper-vat-asked', 'question', isSaid ? { found: 'included' } : {});
  }
  const lonely = sections.filter(({ section }) => !section.totals && !together);
  if (lonely.length > 0 && !said.complete)
    book.add('paper-total-asked', 'question', {
      found: lonely.flatMap(({ section }) => section.lines.map(({ amount }) => amount.text)).join(' + '),
    });
  const { leftOut } = understood;
  if (leftOut.length > 0) {
    const isSaid = isCompared(leftOut, rows);
    const found = leftOut.slice(0, 4).map(sumOfLine).join('; ');
    if (isSaid || said.leftOut) book.add('paper-left-out', 'note', { found });
    else book.add('paper-left-out-asked', 'question', { found });
  }
  const before = rows.filter(takesOffUnits);
  if (before.length > 0 && !said.billedBefore)
    book.add('paper-billed-before-asked', 'question', {
      found: before
        .map(({ text }) => text.replaceAll('\t', ' '))
        .join('; ')
        .slice(0, 120),
      expected: sections
        .map(({ section }) => `${sumQuantity(section.lines.filter(({ kind }) => kind === 'energy'))} kWh`)
        .join(', '),
    });
  const noBill = saysNoBill(understood) ?? futureDay(sections);
  if (noBill !== undefined && !said.isBill)
    book.add('paper-no-bill-asked', 'question', { found: noBill.slice(0, 120) });
  const namesOf = (some: typeof over.money) =>
    some
      .slice(0, 6)
      .map((one) => textOfLeft(one, understood))
      .join('; ');
  if (over.open.length > 0 && !said.leftOver)
    book.add('paper-fuel-left-asked', 'question', {
      found: over.wrongTotal ? `${namesOf(over.open)} (${over.wrongTotal.sum})` : namesOf(over.open),
    });
  if (over.money.length > 0)
    book.add('paper-money-left-out', 'note', { count: over.money.length, found: namesOf(over.money) });
  const left = values.filter(({ state }) => state === 'read');
  const open = left.filter(({ kind }) => !KEPT_APART.has(kind));
  if (open.length > 0 && !said.looked)
    book.add('paper-unproved-asked', 'question', {
      count: open.length,
      found: fewOf(open),
    });
  const guessed = values.filter(({ meaning }) => meaning === 'guessed');
  if (guessed.length > 0 && !said.meant)
    book.add('paper-meaning-asked', 'question', {
      count: guessed.length,
      found: fewOf(guessed),
    });
  if (sections.some(({ made }) => !made) && !book.list().some(({ weight }) => weight === 'question'))
    book.add('paper-no-bill', 'refusal');

  /** What ends long after today has not been used yet. */
  function futureDay(some: readonly ReadSection[]): string | undefined {
    const ends = some.flatMap(({ made }) => made?.bill.to ?? []);
    return ends.find((end) => toDayNumber(end) > toDayNumber(today) + DAYS_AHEAD);
  }

  function recomputed({ made, section, faults }: ReadSection): string[] {
    // A charge that does not multiply out is named already.
    if (!made || faults.length > 0) return [];
    const { rows: lines, printedPence, reckonedPence, agrees } = made.sums;
    const worst = lines.find(({ difference = 0, unit }) => unit === 'p' && Math.abs(difference) > 1);
    // Under a total of several fuels each charge stands for itself.
    if (section.totals === undefined ? !worst : agrees) return [];
    const [printed, reckoned] = worst
      ? [worst.printed!, worst.reckoned]
      : [printedPence ?? reckonedPence, reckonedPence];
    const like = section.lines[0]!.amount;
    const line = section.lines.find(({ amount }) => penceOf(amount) === printed);
    const days = lines.find(({ kind }) => kind === 'days')?.reckoned;
    // The charge multiplies out, but is for other days than the bill is.
    if (worst?.kind === 'standing' && worst.per === 'day' && days && line?.quantity && line.price)
      return [
        `${line.quantity.text.replace(/\d+/, `${days}`)} × ${line.price.text} (${printedAs(reckoned, like)}) ≠ ${line.amount.text}`,
      ];
    return [`${printedAs(reckoned, like)} ≠ ${line ? sumOfLine(line) : printedAs(printed, like)}`];
  }
}
/** What the proved total holds and the charges that would be saved do not come to; water, heat and what was sent out are named elsewhere. */
function lackingCharges({ together, sections, isWater, isHeat, isExport }: Understanding): string[] {
  if (!together?.total || isWater || isHeat || isExport) return [];
  const lines = sections.flatMap((one) => one.lines);
  const [held, saved] = [together.netPence - sumOf(together.before.map(({ pence }) => pence)), sumPence(lines)];
  // Charges may be rounded only where they are printed.
  if (Math.abs(held - saved) <= 1 + lines.length / 2) return [];
  const sum = lines.map(({ amount }) => amount.text).join(' + ');
  return [`${sum} (${printedAs(saved, together.total)}) ≠ ${printedAs(held, together.total)}`];
}

/** Units of use, and no money paid, that a row says another bill was for. */
const takesOffUnits = ({ words, figures }: RowFacts): boolean =>
  BILLED_BEFORE.test(words) &&
  !PAYMENT.test(words) &&
  figures.some(
    ({ kind, decimals, value }) =>
      value > 0 && (kind === 'energy' || kind === 'volume' || (kind === 'plain' && decimals !== 2)),
  );
const sumOfLine = ({ product, amount }: PaperLine): string => product?.sum ?? amount.text;
/** A bill may be dated a little ahead. */
const DAYS_AHEAD = 7;
const fewOf = (values: readonly PaperValue[]): string =>
  values
    .map(({ text }) => text)
    .slice(0, 6)
    .join(', ');
/** Money that moves between household and supplier is no cost; nothing of it is kept. */
export const KEPT_APART: ReadonlySet<PaperValue['kind']> = new Set(['payment', 'balance', 'due', 'next-payment']);
