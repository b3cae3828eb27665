/** From the charges to the total: discounts, VAT on the sum or inside it, what was carried over and what is due. */
import { sumOf } from '../../model/units/sums.ts';
import type { Word } from '../terms/paper-reading.ts';
import { type Figure, keptForLast, type RowFacts } from './figures.ts';
import { type Extra, extrasBetween, type PaperLine, signedPence } from './lines.ts';
import type { Row } from './page.ts';
import { isMoney, LEAST_BITS, type Proof, penceOf, printedAs, unsigned } from './relations.ts';
import {
  ADDED,
  BALANCE,
  CONDITIONAL,
  DUE,
  GIVEN_BACK,
  INCLUDES_VAT,
  NET,
  NEXT_PAYMENT,
  PAYMENT,
  STANDING,
  TOTAL,
  VAT,
} from './vocabulary.ts';

export interface VatFound {
  readonly included: boolean;
  readonly rate: Figure;
  readonly tax: Figure;
}

export interface Totals {
  /** Before VAT (or all of it where VAT is inside), pence. */
  readonly netPence: number;
  readonly net?: Figure;
  readonly vat?: VatFound;
  /** Instead of one tax on all: several, each on a part. */
  readonly taxes?: readonly VatFound[];
  readonly total?: Figure;
  readonly totalPence: number;
  readonly before: readonly Extra[];
  readonly after: readonly Extra[];
  readonly proofs: readonly Proof[];
  /** How many printed sums confirm it. */
  readonly confirmed: number;
}

/** What of a row's sum can be the total: any printed sum that no product has taken. */
export interface TotalsInput {
  readonly rows: readonly RowFacts[];
  readonly lines: readonly PaperLine[];
  readonly taken: ReadonlySet<Figure>;
}

/** Below this VAT on the sum and VAT inside it come to the same penny. */
const LEAST_TAX = 5;

const withSign = (figure: Figure, pence: number): string => `${pence < 0 ? '−' : '+'} ${unsigned(figure)}`;
/** Below the last charge the total stands within this many rows. */
const REACH = 30;
const MOST_EXTRAS = 14;

const isRate = ({ kind, value }: Figure): boolean => kind === 'percent' && value > 0 && value <= 30;
/** Points across. */
const IN_CARD = 80;

/** Rows of a table whose head names the tax. */
const COLUMN_ROWS = 14;
/** In the column of a number of the table's head: no other number is nearer to it from either side. */
function isBelow(head: Figure, figure: Figure, { page, words }: Row): boolean {
  const middle = ({ box }: Figure) => box.x + box.width / 2;
  const away = Math.abs(middle(figure) - middle(head));
  return page === head.box.page && words.every(({ x, width }) => Math.abs(x + width / 2 - middle(head)) >= away - 1);
}

/** "VAT", but not "Incl. VAT" or "Total before VAT". */
const isTaxColumn = (heading: string): boolean =>
  VAT.test(heading) &&
  ![NET, INCLUDES_VAT, TOTAL, /(?<!\p{L})(?:inc|ex|with)(?!\p{L})/iu].some((one) => one.test(heading));

interface TaxWords {
  /** Of each row whether it names a tax. */
  readonly isOfTax: readonly boolean[];
  /** Rates in such rows, and those below a heading that names one. */
  readonly elsewhere: readonly Figure[];
  readonly inColumn: readonly Figure[];
  /** What stands below a heading that names a tax and is no rate. */
  readonly below: ReadonlySet<Figure>;
}
/** The words of a page are the same for all charges whose totals are tried. */
const taxWordsOn = keptForLast((rows): TaxWords => {
  const isOfTax = rows.map(({ words }) => VAT.test(words));
  return {
    isOfTax,
    elsewhere: rows.flatMap(({ figures }, at) => (isOfTax[at] ? figures.filter(isRate) : [])),
    inColumn: rows.flatMap(({ figures }) => figures.filter((one) => isRate(one) && VAT.test(one.heading))),
    below: new Set(rows.flatMap(({ figures }) => figures.filter((one) => !isRate(one) && isTaxColumn(one.heading)))),
  };
});

/** In a cell of two lines that begins with the tax the rate stands under it, with the sum half a line between. */
function underWord(rows: readonly RowFacts[], at: number): Figure[] {
  const { row } = rows[at]!;
  const word = row.words.find(({ text }) => VAT.test(text));
  if (!word) return [];
  return rows.slice(at + 1, at + 3).flatMap(({ row: { page, words }, figures }) => {
    const begins = words.some(({ x, y }) => Math.abs(x - word.x) < ALIGNED && y - word.y < row.height * 3);
    return begins && page === row.page ? figures.filter(({ box }) => box.x - word.x < IN_CARD) : [];
  });
}

/** VAT rows: a share in per cent and a sum of money, in one row or in two that follow each other. */
export function vatRows(rows: readonly RowFacts[], taken: ReadonlySet<Figure>): VatFound[] {
  const { isOfTax, elsewhere, inColumn, below: inTaxColumn } = taxWordsOn(rows);
  return rows.flatMap(({ figures, words }, at) => {
    if (!isOfTax[at]) {
      const [tax, other] = inTaxColumn.size === 0 ? [] : figures.filter((one) => inTaxColumn.has(one));
      // In a table of rates the word stands above the column.
      const rates = tax ? ([figures.filter(isRate), inColumn, elsewhere].find((some) => some.length > 0) ?? []) : [];
      return tax && !other && !taken.has(tax) && isMoney(tax)
        ? rates.map((rate) => ({ rate, tax, included: false }))
        : [];
    }
    const included = INCLUDES_VAT.test(words) || INCLUDES_VAT.test(rows[at]!.text);
    // Small under its tax stands the rate and nothing else.
    const next = rows[at + 1]?.figures ?? [];
    const below = next.every(isRate) ? next : [];
    const near = [...figures, ...(rows[at - 1]?.figures ?? []), ...below, ...underWord(rows, at)].filter(isRate);
    // At the head of a column of taxes.
    const [headRate] = figures.filter(isRate);
    if (headRate && !figures.some(isMoney) && words.split('\t').length > 1) {
      const column = rows
        .slice(at + 1, at + 1 + COLUMN_ROWS)
        .flatMap((one) =>
          one.figures.filter(
            (tax) => isMoney(tax) && !taken.has(tax) && tax.value > 0 && isBelow(headRate, tax, one.row),
          ),
        );
      if (column.length > 0) return column.map((tax) => ({ rate: headRate, tax, included: false }));
    }
    const rates = near.length > 0 ? near : elsewhere;
    // In a card the sum stands under the words, with other cards' lines between.
    const under = rows
      .slice(at + 2, at + 4)
      .flatMap((one) => one.figures)
      .filter(({ box }) => figures.some((one) => isRate(one) && Math.abs(one.box.x - box.x) < IN_CARD));
    const close = [...figures, ...(rows[at + 1]?.figures ?? []), ...under].filter((one) => !taken.has(one));
    return rates.flatMap((rate) =>
      close
        .filter((one) => one !== rate && isMoney(one) && one.value > 0)
        // The words go first, the sum decides.
        .flatMap((tax) => [
          { rate, tax, included },
          { rate, tax, included: !included },
        ]),
    );
  });
}

/** The totals of some charges, confirmed by as many printed sums as can be; undefined where none confirms them. */
export function findTotals({ rows, lines, taken }: TotalsInput): Totals | undefined {
  const bare = sumOf(lines.map(signedPence));
  // The total of an earlier bill, where that bill is taken back.
  const withdrawn = new Set(
    rows.flatMap(({ words, figures }) =>
      figures.some(({ negative }) => negative) && GIVEN_BACK.test(words)
        ? figures.filter((one) => one.negative && isMoney(one)).map(penceOf)
        : [],
    ),
  );
  const printed = rows
    .flatMap(({ figures }) => figures)
    // Charges come to more than nothing: what is printed with a minus is no sum of them.
    .filter((one) => isMoney(one) && !taken.has(one) && one.value > 0 && !one.negative && !withdrawn.has(penceOf(one)));
  const vats = vatRows(rows, taken);
  const extras = extrasAbout({ rows, lines, taken }, vats);
  let best: Totals | undefined;
  const sets = subsetsOf(extras);
  const tryAll = (charged: number) => {
    for (const before of sets) {
      const exactPence = charged + sumOf(before.map(({ pence }) => pence));
      const rest = extras.filter((one) => !before.includes(one));
      const found = settleNet({ rows, lines, printed, vats, exactPence, before, rest, tried: sets.length });
      if (found && (!best || rankOf(found) > rankOf(best))) best = found;
    }
  };
  tryAll(bare);
  const unrounded = unroundedPence(lines);
  if (unrounded !== undefined && (best?.confirmed ?? 0) < ALL_CONFIRMED) tryAll(unrounded);
  return best;
}

/** The sum before tax, the tax and the total. */
const ALL_CONFIRMED = 3;
/** What charges come to whose amounts are rounded only where they are printed; undefined where one is no exact product. */
function unroundedPence(lines: readonly PaperLine[]): number | undefined {
  if (lines.length < 2 || !lines.every(({ product, amount }) => product && !product.loose && !amount.negative))
    return undefined;
  return sumOf(lines.map(({ quantity, pence }) => quantity!.value * pence!));
}

const ABOVE = 3;
/** Points across. */
const ALIGNED = 3;
/** Sums among and below some charges that may belong to them, and those with a name right above. */
export function extrasAbout({ rows, lines, taken }: TotalsInput, vats: readonly VatFound[]): Extra[] {
  const at = lines.map(({ amount }) => amount.row);
  const [first, last] = [Math.min(...at), Math.max(...at)];
  const fuels = new Set(lines.map((line) => line.fuel));
  const fuel = fuels.size === 1 ? lines[0]?.fuel : undefined;
  const box = lines.find(({ amount }) => amount.row === first)?.amount.box;
  const isInColumn = (one: Figure | undefined) =>
    box && one && isMoney(one) && Math.abs(one.box.x + one.box.width - box.x - box.width) < ALIGNED;
  // What is laid on by name, or stands in the column of the charges.
  const isNamed = ({ row, words, figures }: RowFacts) =>
    row.page === box?.page &&
    (ADDED.test(words) || STANDING.test(words) || (figures.length === 1 && isInColumn(figures[0])));
  const named = rows.slice(Math.max(0, first - ABOVE), first).findIndex(isNamed);
  const from = named < 0 ? first : Math.max(0, first - ABOVE) + named;
  return extrasBetween(rows, taken, from, Math.min(rows.length - 1, last + REACH), fuel)
    .filter(({ figure }) => !isSettling(rows[figure.row]!) && !isOfVat(figure, vats, rows))
    .slice(0, MOST_EXTRAS);
}
const rankOf = ({ confirmed, before, after }: Totals) => confirmed * 10 - before.length - 1.5 * after.length;

/** Tax in the row of its rate; one in the row below may be something else. */
const isOfVat = (figure: Figure, vats: readonly VatFound[], rows: readonly RowFacts[]): boolean =>
  vats.some(({ rate, tax }) => tax === figure && (rate.row === tax.row || VAT.test(rows[tax.row]!.words)));

/** Payments, balances and what is due come after the total, never into it. */
const isSettling = ({ words }: RowFacts): boolean =>
  PAYMENT.test(words) || BALANCE.test(words) || DUE.test(words) || NEXT_PAYMENT.test(words);

const MOST_PAIRED = 6;
/** None, each alone, all, all but each; two of a few. */
export function subsetsOf(extras: readonly Extra[]): Extra[][] {
  const sets = [
    [],
    [...extras],
    ...extras.map((one) => [one]),
    ...extras.map((one) => extras.filter((other) => other !== one)),
    ...(extras.length > MOST_PAIRED
      ? []
      : extras.flatMap((one, i) => extras.slice(i + 1).map((other) => [one, other]))),
  ];
  const seen = new Set<string>();
  return sets.filter((set) => {
    const key = set.map((one) => extras.indexOf(one)).join(' ');
    return !seen.has(key) && seen.add(key);
  });
}

interface NetInput {
  readonly rows: readonly RowFacts[];
  readonly lines: readonly PaperLine[];
  readonly printed: readonly Figure[];
  readonly vats: readonly VatFound[];
  /** Before tax; with parts of a penny where the charges are not rounded. */
  readonly exactPence: number;
  readonly before: readonly Extra[];
  readonly rest: readonly Extra[];
  readonly tried: number;
}

function settleNet(input: NetInput): Totals | undefined {
  const { rows, printed, vats, exactPence, before, rest, lines, tried } = input;
  const isUnrounded = !Number.isInteger(exactPence);
  const netPence = Math.round(exactPence);
  if (netPence <= 0) return undefined;
  const prefer = (pence: number, words: RegExp, not: readonly (Figure | undefined)[] = []) => {
    const equal = printed.filter(
      (one) => penceOf(one) === pence && !not.includes(one) && !before.some(({ figure }) => figure === one),
    );
    return equal.find(({ row }) => words.test(rows[row]!.words)) ?? equal[0];
  };
  const parts = [...lines.map(({ amount }) => amount), ...before.map(({ figure }) => figure)];
  const vat = vats.find(({ rate, tax, included }) => {
    // One role a number.
    if (before.some(({ figure }) => figure === tax)) return false;
    const share = rate.value / 100;
    const reckoned = included ? (exactPence * share) / (1 + share) : exactPence * share;
    return Math.abs(reckoned - penceOf(tax)) <= 0.5 + 1e-6 && penceOf(tax) >= LEAST_TAX;
  });
  const isConditional = ({ figure }: Extra) => CONDITIONAL.test(rows[figure.row]!.words);
  if (!vat && before.some(isConditional)) return undefined;
  // Where VAT is inside the prices, their sum is the total and nothing is net.
  const whole = parts.length > 1 ? prefer(netPence, vat?.included ? TOTAL : NET) : undefined;
  const isGross = whole && !vat && INCLUDES_VAT.test(`${whole.heading} ${rows[whole.row]!.text}`);
  const net = vat?.included || isGross ? undefined : whole;
  const share = vat && !vat.included ? vat.rate.value / 100 : 0;
  const grossPence = isUnrounded
    ? Math.round(exactPence * (1 + share))
    : netPence + (vat && !vat.included ? penceOf(vat.tax) : 0);
  const total = vat?.included
    ? (whole ?? prefer(grossPence, TOTAL))
    : prefer(grossPence, TOTAL, [vat ? net : undefined]);
  // Most of what is tried comes to nothing that is printed.
  if (!whole && !vat && !total) return undefined;
  const proofs: Proof[] = [];
  const sumBits = Math.log2(netPence) - Math.log2(Math.max(1, printed.length * tried)) + 4;
  const isSure = sumBits >= LEAST_BITS;
  const signed = (one: Figure) =>
    `${one.negative || before.some(({ figure, pence }) => figure === one && pence < 0) ? '− ' : '+ '}${unsigned(one)}`;
  const sum = isUnrounded
    ? [
        ...lines.map(({ product }) => product!.sum.split(' = ')[0]!),
        ...before.map(({ figure }) => signed(figure)),
      ].join(' + ')
    : parts.map(signed).join(' ').replace(/^\+ /, '');
  if (whole && isSure) proofs.push({ figures: [...parts, whole], sum: `${sum} = ${whole.text}`, bits: sumBits });
  if (vat) {
    const base = whole?.text ?? printedAs(netPence, vat.tax);
    const share = vat.included ? `${vat.rate.text} ÷ (100 % + ${vat.rate.text})` : vat.rate.text;
    proofs.push({
      figures: [...(whole ? [whole] : parts), vat.rate, vat.tax],
      sum: `${share} × ${base} = ${vat.tax.text}`,
      bits: Math.log2(Math.max(1, penceOf(vat.tax))) - Math.log2(vats.length) + 4,
    });
    if (total && !vat.included)
      proofs.push({
        figures: [...(net ? [net] : parts), vat.tax, total],
        sum: isUnrounded
          ? `(${sum}) × (100 % + ${vat.rate.text}) = ${total.text}`
          : `${base} + ${vat.tax.text} = ${total.text}`,
        bits: Math.log2(grossPence),
      });
  }
  const usable = proofs.filter(({ bits }) => bits >= LEAST_BITS);
  const later =
    total || vat
      ? afterVat(
          rest.filter((one) => !isConditional(one)),
          grossPence,
          // A sum said again is no credit, nor what is left without it a total.
          new Set([netPence, grossPence, sumOf(lines.map(signedPence)), ...(vat ? [penceOf(vat.tax)] : [])]),
          (pence, words, not) => {
            const found = prefer(pence, words, not);
            return found && !PAYMENT.test(rows[found.row]!.words) ? found : undefined;
          },
        )
      : undefined;
  const confirmed =
    (whole && isSure ? 1 : 0) + (vat ? 1 : 0) + (total && (vat || parts.length > 1) ? 1 : 0) + (later ? 1 : 0);
  if (confirmed === 0) return undefined;
  if (later)
    usable.push({
      figures: [...(total ? [total] : vat ? [vat.tax] : []), ...later.after.map(({ figure }) => figure), later.total],
      sum: `${total?.text ?? printedAs(grossPence, later.total)} ${later.after.map(({ figure, pence }) => withSign(figure, pence)).join(' ')} = ${later.total.text}`,
      bits: Math.log2(Math.max(1, penceOf(later.total))) - Math.log2(printed.length * tried) + 4,
    });
  const shownTotal = later?.total ?? total;
  return {
    netPence,
    ...(net ? { net } : {}),
    ...(vat ? { vat } : {}),
    ...(shownTotal ? { total: shownTotal } : {}),
    totalPence: later ? penceOf(later.total) : grossPence,
    before,
    after: later?.after ?? [],
    proofs: usable,
    confirmed,
  };
}

/** A credit laid on after VAT, with the total that follows from it. */
function afterVat(
  rest: readonly Extra[],
  grossPence: number,
  known: ReadonlySet<number>,
  prefer: (pence: number, words: RegExp, not?: readonly (Figure | undefined)[]) => Figure | undefined,
) {
  for (const after of subsetsOf(rest.filter(({ figure }) => !known.has(penceOf(figure))))) {
    const pence = grossPence + sumOf(after.map((one) => one.pence));
    if (after.length === 0 || known.has(pence)) continue;
    const total = prefer(
      pence,
      TOTAL,
      after.map(({ figure }) => figure),
    );
    if (total) return { after, total };
  }
  return undefined;
}

export interface Settling {
  readonly due?: Figure;
  /** Budget payments and balances that the due follows from, with their signs. */
  readonly kept: readonly { readonly figure: Figure; readonly pence: number; readonly kind: 'payment' | 'balance' }[];
  readonly next?: Figure;
  readonly proof?: Proof;
}

/** Of several sums in a row each bears the words of its own sentence: those before it, and behind the last one the rest. */
function labelOf({ box }: Figure, { row, words, figures }: RowFacts): string {
  const end = ({ x, width }: Pick<Word, 'x' | 'width'>) => x + width;
  const ends = row.words.filter((word, i) => endsSentence(word.text, row.words[i + 1]?.text)).map(end);
  const from = ends.filter((one) => one <= box.x + 1).at(-1) ?? 0;
  const to = ends.find((one) => one > box.x + 1) ?? Number.POSITIVE_INFINITY;
  const sums = figures.filter((one) => isMoney(one) && one.box.x >= from - 1 && one.box.x < to).map((one) => one.box);
  const between = (start: number, stop: number) =>
    row.words
      .filter(({ x }) => x >= start - 1 && x < stop - 1)
      .map(({ text }) => text)
      .join(' ');
  const left = sums.filter(({ x }) => x < box.x).at(-1);
  const right = sums.find(({ x }) => x > box.x);
  const before = between(left ? end(left) : from, box.x);
  const isNamed = /\p{L}{2}/u.test(before);
  const behind = right && isNamed ? '' : between(end(box), right?.x ?? to);
  const label = `${before} ${behind}`;
  return /\p{L}{2}/u.test(label) ? label : words;
}
const endsSentence = (text: string, next = ''): boolean =>
  /(?:\p{L}{3}|[.,]\d\d|[€£$])[.!?]$/u.test(text) && /^\p{Lu}/u.test(next) && !SHORTENED.test(text);
const SHORTENED = /^(?:in[ck]l|excl?|zzgl|abzgl|zuzügl|ggf|bzw|mwst|ust|approx|acct|str)\.$/i;

/** What is due after payments and balances; kept apart from what the energy cost. */
export function findSettling(rows: readonly RowFacts[], totalPence: number, taken: ReadonlySet<Figure>): Settling {
  const free = rows.flatMap((row) =>
    row.figures
      .filter((one) => isMoney(one) && one.value > 0 && !taken.has(one))
      .map((figure) => ({ figure, words: labelOf(figure, row) })),
  );
  const of = (words: RegExp, not?: RegExp) =>
    free.flatMap((one) => (words.test(one.words) && !not?.test(one.words) ? [one.figure] : []));
  const next = of(NEXT_PAYMENT)[0];
  const dues = of(DUE, NEXT_PAYMENT);
  const moved = [
    ...of(PAYMENT, NEXT_PAYMENT)
      .filter((one) => !CONDITIONAL.test(rows[one.row]!.words))
      .map((figure) => ({ figure, kind: 'payment' as const })),
    ...of(BALANCE, NEXT_PAYMENT)
      .filter((one) => !isOfPages(one, rows))
      .map((figure) => ({ figure, kind: 'balance' as const })),
  ]
    .filter(({ figure }, i, all) => all.findIndex((one) => one.figure === figure) === i && !dues.includes(figure))
    .slice(0, 5);
  const nextOf = next ? { next } : {};
  for (const due of dues) {
    for (let mask = 1; mask < 3 ** moved.length; mask++) {
      const kept = moved.flatMap(({ figure, kind }, i) => {
        const sign = [0, -1, 1][Math.floor(mask / 3 ** i) % 3]!;
        return sign === 0 ? [] : [{ figure, kind, pence: sign * penceOf(figure) }];
      });
      const reckoned = totalPence + sumOf(kept.map(({ pence }) => pence));
      if (kept.length === 0 || Math.abs(reckoned) !== penceOf(due)) continue;
      const bits = Math.log2(penceOf(due)) - Math.log2(3 ** moved.length * dues.length) + 4;
      if (bits < LEAST_BITS) continue;
      const sum = kept.map(({ figure, pence }) => withSign(figure, pence)).join(' ');
      return {
        due,
        kept,
        ...nextOf,
        proof: {
          figures: [...kept.map(({ figure }) => figure), due],
          sum: `${printedAs(totalPence, due)} ${sum} = ${reckoned < 0 ? '−' : ''}${unsigned(due)}`,
          bits,
        },
      };
    }
  }
  // Of two sums that are called due nothing tells which is.
  const [due] = new Set(dues.map(penceOf)).size === 1 ? dues : [];
  const known = moved.filter(
    ({ figure }) =>
      !isSumOfOthers(
        figure,
        moved.map((one) => one.figure),
      ),
  );
  return {
    ...(due ? { due } : {}),
    kept: known.map(({ figure, kind }) => ({ figure, kind, pence: penceOf(figure) })),
    ...nextOf,
  };
}

/** "Carried forward 272.47" at the foot of a page and brought forward at the head of the next: no balance. */
const isOfPages = (one: Figure, rows: readonly RowFacts[]): boolean =>
  rows.some(({ words, figures }, at) =>
    figures.some(
      (other) =>
        other.box.page !== one.box.page &&
        penceOf(other) === penceOf(one) &&
        BALANCE.test(words) &&
        BALANCE.test(rows[one.row]!.words) &&
        at !== one.row,
    ),
  );

/** What two or more of the others come to is their sum, no further payment. */
function isSumOfOthers(one: Figure, all: readonly Figure[]): boolean {
  const others = all.filter((other) => other !== one && penceOf(other) < penceOf(one));
  return others.length > 1 && sumOf(others.map(penceOf)) === penceOf(one);
}
