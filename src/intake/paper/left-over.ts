/** What stands on a paper and became part of no value, so that nothing of it is left out without a word. */

import { sumOf } from '../../model/units/sums.ts';
import type { PaperValue } from '../terms/paper-reading.ts';
import type { Box, Figure, RowFacts } from './figures.ts';
import { fuelsIn, fuelsOn, isAside, isLeftOut, isShareOnly, type PaperFuel } from './fuel-of.ts';
import { earlierWords, isCompared, isOfPayments } from './groups.ts';
import { asPrinted, nameOf, sumPence, sumQuantity } from './lines.ts';
import { isMoney, penceOf, printedAs } from './relations.ts';
import { findTotals } from './totals.ts';
import type { Understanding } from './understand.ts';
import {
  ADDED,
  BALANCE,
  CANCELLED,
  CONDITIONAL,
  DUE,
  EXPORT,
  FORESEEN,
  HEAT,
  NET,
  NEXT_PAYMENT,
  OF_ROOF,
  OFFER,
  PAYMENT,
  TOTAL,
  VAT,
  WHOLE_HOUSE,
} from './vocabulary.ts';

export interface LeftOver {
  /** What makes it doubtful whether the bill is whole: another fuel, use among the charges, a total nothing comes to. */
  readonly open: readonly Figure[];
  /** The total among them that the charges do not come to, with both sums; absent where more than that is open. */
  readonly wrongTotal?: { readonly figure: Figure; readonly sum: string };
  /** Amounts that are no value and say none again. */
  readonly money: readonly Figure[];
}

/** @param typed whether the person put a word right: such a total is never passed over */
export function findLeftOver(
  understood: Understanding,
  values: readonly PaperValue[],
  typed: (box: Box) => boolean,
): LeftOver {
  const { rows, sections, together, leftOut, settling, isWater, isHeat, isExport, strayUses } = understood;
  const fuels = new Set(sections.map(({ fuel }) => fuel));
  const boxes = new Set(values.flatMap((value) => value.boxes));
  const all = rows.flatMap(({ figures }) => figures).filter(({ value }) => value > 0);
  // What is due is another sum than the total, where nothing proves from what it comes.
  const isSettledOrRead = new Set(
    values.flatMap(({ kind, state, boxes: own }) => (kind === 'due' && state === 'read' ? [] : own)),
  );
  const used = [...all.filter(({ box }) => boxes.has(box)), ...settling.kept.map(({ figure }) => figure)];
  const sums = sumsOf(understood);
  const known = new Set([...used.map(({ value }) => value), ...sums]);
  const aside = new Set(leftOut.flatMap(({ quantity, price, amount }) => [quantity, price, amount]));
  const free = all.filter((one) => !known.has(one.value) && !aside.has(one));
  const isSettled = (one: Figure) =>
    SETTLED.some((words) => words.test(rows[one.row]!.words)) || isOfPayments(one, rows);
  const isElsewhere = (one: Figure) => isCompared([{ amount: one }], rows);
  const isFreeMoney = (one: Figure) => isMoney(one) && one.kind !== 'price' && !isSettled(one);
  const money = free.filter(isFreeMoney);
  const sure = new Set([...used.filter(({ box }) => isSettledOrRead.has(box)).map(({ value }) => value), ...sums]);
  const isMissing = (fuel: PaperFuel) => !isLeftOut(fuel) && !fuels.has(fuel);
  const others = fuels.has(undefined) ? [] : [...fuelsOn(rows).named].filter(isMissing);
  const ofOtherFuel = rows.flatMap(({ figures, words, row, text }) => {
    const own = figures.filter((one) => one.value > 0 && (isMoney(one) || one.kind === 'energy'));
    const named = others.length === 0 || own.length === 0 ? [] : fuelsIn(words);
    if (!named.some(isMissing) || isAside(text)) return [];
    // "Electricity and gas together £325.31".
    const isBoth = (one: Figure) => free.includes(one) && row.words.length <= FEW_WORDS;
    return own.filter((one) => (named.length === 1 || isBoth(one)) && !isElsewhere(one));
  });
  const amongCharges = sections.flatMap(({ lines }) => {
    const at = lines.map(({ amount }) => amount.row);
    const [first, last] = [Math.min(...at), Math.max(...at)];
    return free.filter(
      (one) =>
        one.kind === 'energy' &&
        one.row > first &&
        one.row < last &&
        rows[one.row]!.figures.some(isMoney) &&
        !(isExport && SENT_OUT.some((words) => words.test(rows[one.row]!.words))),
    );
  });
  const ofLeftOut = totalsOf(leftOut, rows);
  const offered = isCompared(leftOut, rows) ? ofLeftOut : [];
  const totals = all.filter((one) => {
    const { row, value, box } = one;
    // What is printed with a minus or as a credit is no sum of charges.
    if (one.negative || sure.has(value) || aside.has(one) || offered.includes(one) || !isFreeMoney(one)) return false;
    const { words } = rows[row]!;
    // Water, heat and what was sent out are in a total of everything.
    if (!TOTAL.test(words) || CONDITIONAL.test(words)) return false;
    return typed(box) || (!isWater && !isHeat && !isExport && value * 100 > leastTotal(sections));
  });
  // So few pence hardly change the tax, which then proves a sum of wrong parts.
  const reckoned = [...sections.map((one) => one.totals), together].flatMap((one) =>
    one ? [one.netPence, one.totalPence] : [],
  );
  const nearly = all.filter((one) => {
    const isOpen = isMoney(one) && !isSettledOrRead.has(one.box) && !aside.has(one);
    const away = Math.min(...reckoned.map((pence) => Math.abs(pence - penceOf(one))));
    return isOpen && away > 0 && away <= NEARLY && SUM_WORDS.some((words) => words.test(rows[one.row]!.words));
  });
  const isOpenSum = (one: Figure) => isMoney(one) && !one.negative && !sure.has(one.value) && !aside.has(one);
  const rivals =
    isWater || isHeat || isExport
      ? []
      : taxedTotals(all.filter(isOpenSum), rows).filter((one) => !ofLeftOut.includes(one));
  // Without a printed total nothing says that a fee is none of the bill's.
  const isTotalled = together?.total !== undefined || sections.every(({ totals: own }) => own?.total !== undefined);
  const last = Math.max(...sections.flatMap(({ lines }) => lines.map(({ amount }) => amount.row)));
  const fees = isTotalled
    ? []
    : money.filter(({ row }) => row > last && row <= last + FEE_ROWS && ADDED.test(rows[row]!.words));
  // Where no reading fits any use, those that are there contradict it; beside one that fits they are earlier ones.
  // Beside its factor and what they come to: the counter of a transformer.
  const isCounted = ({ row, value }: Figure) =>
    rows[row]!.figures.some((by) => by.decimals === 0 && by.value > 1 && known.has(asPrinted(value * by.value)));
  const strays = strayUses.filter(
    (one) => !known.has(one.value) && one.kind !== 'volume' && !isElsewhere(one) && !isCounted(one),
  );
  const isKnown =
    sections.some(({ differences, gas }) => differences.length + gas.length > 0) ||
    known.has(asPrinted(strays.reduce((sum, { value }) => sum + value, 0)));
  const readings = isKnown ? [] : strays;
  const open = [
    ...new Set([
      ...readings,
      // In a row that is not sure it may be a charge.
      ...money.filter(({ row }) => rows[row]!.row.isUnsure),
      ...ofOtherFuel,
      ...(others.length > 0 ? underOtherFuel(rows, free, isMissing) : []),
      ...amongCharges,
      ...fees.filter((one) => !isElsewhere(one)),
      ...[...totals, ...nearly, ...rivals].filter((one) => !isElsewhere(one)),
    ]),
  ];
  const [figure] = open.length === 1 ? open : [];
  const wrongTotal =
    figure && (totals.includes(figure) || nearly.includes(figure))
      ? { figure, sum: sumAgainst(figure, understood) }
      : undefined;
  return { open, ...(wrongTotal ? { wrongTotal } : {}), money: money.filter((one) => !open.includes(one)) };
}

/** Totals that follow from a sum and its tax: another bill than the one that was read. */
const taxedTotals = (sums: readonly Figure[], rows: readonly RowFacts[]): Figure[] =>
  sums.filter((total) => {
    const near = sums.filter((one) => one !== total && Math.abs(one.row - total.row) <= TAX_ROWS);
    return near.some(
      (tax) =>
        VAT.test(rows[tax.row]!.words) &&
        near.some((net) => {
          const share = penceOf(tax) / penceOf(net);
          return share > LEAST_SHARE && share < MOST_SHARE && penceOf(net) + penceOf(tax) === penceOf(total);
        }),
    );
  });
/** Rows between a total and its tax, and taxes on energy as a share. */
const [TAX_ROWS, LEAST_SHARE, MOST_SHARE] = [4, 0.04, 0.28];

/** What charges of an offer or a forecast come to. */
function totalsOf(lines: Understanding['leftOut'], rows: readonly RowFacts[]): Figure[] {
  const taken = new Set(lines.flatMap(({ product }) => product?.figures ?? []));
  const found = lines.length < 2 ? undefined : findTotals({ rows, lines, taken });
  return [found?.net, found?.vat?.tax, found?.total].flatMap((one) => one ?? []);
}

/** "£388.95 + £19.45 (408.40) ≠ £418.40". */
function sumAgainst(figure: Figure, { sections, together }: Understanding): string {
  const all = together ? [together] : sections.flatMap(({ totals }) => totals ?? []);
  const printed = (pence: number) => printedAs(pence, figure);
  const parts = all.flatMap(({ net, netPence, vat, totalPence, after }) =>
    all.length > 1 || after.length > 0
      ? [printed(totalPence)]
      : [net?.text ?? printed(netPence), ...(vat && !vat.included ? [vat.tax.text] : [])],
  );
  const reckoned = printed(all.reduce((sum, { totalPence }) => sum + totalPence, 0));
  return `${parts.join(' + ')}${parts.length > 1 ? ` (${reckoned})` : ''} ≠ ${figure.text}`;
}

/** Pence. */
const NEARLY = 25;
const SUM_WORDS: readonly RegExp[] = [TOTAL, NET, DUE];
/** Below the last charge. */
const FEE_ROWS = 6;
/** More of them are running text. */
const FEW_WORDS = 8;
/** Rows of a fuel's part of the page, and its width in points. */
const PART_ROWS = 20;
const PART_WIDTH = 280;
/** Use and money that nothing took, below a heading that is the name of another fuel. */
function underOtherFuel(
  rows: readonly RowFacts[],
  free: readonly Figure[],
  isMissing: (fuel: PaperFuel) => boolean,
): readonly Figure[] {
  if (!free.some(({ kind }) => kind === 'energy')) return [];
  const heads = rows.flatMap((facts, at) => {
    const { row, text } = facts;
    // "Natural gas 31 %" of what electricity is made of is above nothing of its own.
    if (fuelsIn(text).length === 0 || isShareOnly(facts)) return [];
    return row.words.flatMap((word) => {
      const [fuel] = fuelsIn(word.text);
      const isAlone = row.words.every((one) => one === word || Math.abs(one.x - word.x) > word.width + row.height);
      return fuel && isMissing(fuel) && isAlone ? [{ at, word, row }] : [];
    });
  });
  const under = free.filter(({ row, box }) =>
    heads.some(
      ({ at, word, row: { page } }) =>
        row > at &&
        row - at < PART_ROWS &&
        box.page === page &&
        box.x + box.width > word.x - 4 &&
        box.x < word.x + PART_WIDTH,
    ),
  );
  return under.some(({ kind }) => kind === 'energy')
    ? under.filter((one) => one.kind === 'energy' || isMoney(one))
    : [];
}

const SENT_OUT: readonly RegExp[] = [EXPORT, OF_ROOF];
const SETTLED: readonly RegExp[] = [BALANCE, DUE, NEXT_PAYMENT, PAYMENT];
const leastTotal = (sections: Understanding['sections']): number =>
  Math.min(...sections.map(({ totals }) => totals?.netPence ?? Number.POSITIVE_INFINITY));

/** What the values come to together: use and charges of all lines, totals of all fuels. */
function sumsOf({ sections, together }: Understanding): number[] {
  const totals = sections.map(({ totals: own }) => own?.totalPence ?? 0);
  const sums = [together?.totalPence ?? 0, sumOf(totals)];
  // Before a credit that is laid on after tax.
  const gross = sections.map(({ totals: own }) =>
    own ? own.netPence + (own.vat && !own.vat.included ? penceOf(own.vat.tax) : 0) : 0,
  );
  const uses = sections.map(({ lines }) => sumQuantity(lines.filter(({ kind }) => kind === 'energy')));
  const energies = sections.map(({ lines }) => sumPence(lines.filter(({ kind }) => kind === 'energy')));
  return [...[...sums, ...gross, ...energies].map((pence) => pence / 100), ...uses];
}

/** "Gas, as per your plan £94.00". */
export const textOfLeft = (figure: Figure, { rows }: Understanding): string =>
  `${nameOf(rows[figure.row]!.words)} ${figure.text}`.trim();

const TITLE = 8;
/** The word that says a paper is an offer, a forecast, a cancelled bill, one of several households or pay for what was sent out; undefined where none does. */
export function saysNoBill({ rows, sections, isExport }: Understanding): string | undefined {
  const used = new Set(
    sections.flatMap(({ lines, totals }) => [...lines.map(({ amount }) => amount.row), totals?.total?.row]),
  );
  const isNamed = sections.every(({ fuel }) => fuel !== undefined);
  for (const [at, { text, figures }] of rows.entries()) {
    const isTitle = at < TITLE && figures.length === 0;
    const found =
      // What was sent out and no use beside it; heat, and no fuel.
      (isTitle && !isExport && EXPORT.exec(text)) ||
      (!isNamed && HEAT.exec(text)) ||
      CANCELLED.exec(text) ||
      (isTitle && OFFER.exec(text)) ||
      (used.has(at) && (FORESEEN.exec(text) ?? WHOLE_HOUSE.exec(text)));
    if (found) return found[0];
  }
  const energies = sections.flatMap(({ lines }) => lines.filter(({ kind }) => kind === 'energy'));
  return energies.map(({ amount }) => earlierWords(amount, rows)).find((words) => words !== undefined);
}
