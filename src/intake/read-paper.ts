/** A bill on paper: words to evidence, with everything that is not proved left open for the person. */
import { daysBetween, toDayNumber } from '../model/calendar/civil.ts';
import type { Bill } from '../model/shapes/bill.ts';
import type { Series } from '../model/shapes/evidence.ts';
import { writesMonthFirst } from './dates/decide-day-first.ts';
import type { IntakeChoices, IntakeContext, IntakeResult } from './intake.ts';
import { billOfSection, type SectionBill, spanOf } from './paper/bill-of-section.ts';
import type { Box } from './paper/figures.ts';
import { gatherSheets, MOST_PICTURES, type PaperFault, type Sheet } from './paper/gather-sheets.ts';
import { isCompared } from './paper/groups.ts';
import { findLeftOver, type LeftOver, saysNoBill, textOfLeft } from './paper/left-over.ts';
import { isLeftOut, type PaperLine } from './paper/lines.ts';
import { type Looks, lookAtSheets } from './paper/look-at-sheets.ts';
import { moneyOf } from './paper/money.ts';
import { rowsOf } from './paper/page.ts';
import { MOST_PAGES } from './paper/pdf-words.ts';
import { namesOn, rowsWithout } from './paper/people.ts';
import { MOST_POINTS } from './paper/picture.ts';
import { provingMore } from './paper/proving-more.ts';
import { printedAs } from './paper/relations.ts';
import { offerRepairs } from './paper/repair.ts';
import { splitBills } from './paper/split-bills.ts';
import { tariffOfBill } from './paper/tariff-of-bill.ts';
import { type Section, sharedOf, sumQuantity, type Understanding, understand } from './paper/understand.ts';
import { faultsOf, listValues, type ReadSection } from './paper/values.ts';
import { DELIVERED_FUEL, HEAT, INCLUDES_VAT, OTHER_GOODS, SERVICE, WATER } from './paper/vocabulary.ts';
import { periodPicture, periodSeries } from './periods/period-series.ts';
import type { RawPeriod } from './periods/raw-period.ts';
import { emptyPreview, standing } from './read-file.ts';
import { PAPER_SHAPE, type Page, type PaperChoices, type PaperValue } from './terms/paper-reading.ts';
import { stageOf } from './terms/progress.ts';
import { openRemarkBook, type RemarkBook } from './terms/remark-book.ts';
import type { RemarkCode } from './terms/remark-codes.ts';

const FAULTS: Readonly<Record<PaperFault, RemarkCode>> = {
  locked: 'paper-locked',
  broken: 'paper-broken',
  'many-pages': 'paper-many-pages',
  'many-pictures': 'paper-many-pages',
  bomb: 'paper-bomb',
  'no-text': 'paper-no-text',
  'picture-kind': 'picture-kind',
  'picture-broken': 'picture-broken',
  'picture-large': 'picture-large',
  'picture-small': 'picture-small',
};
const isPicture = (sheet: Sheet): boolean => 'points' in sheet;

export async function readPaper(
  fileName: string,
  bytes: Uint8Array,
  choices: IntakeChoices,
  context: IntakeContext,
): Promise<IntakeResult> {
  const keyOf = () => `${fileName} ${bytes.length} ${sumOf(bytes)} ${context.zone}`;
  if (context.seen) return withRepairs(context.seen, readThese(context.seen));
  const going = held && held.key === keyOf() ? held : undefined;
  held = undefined;
  const read = going ?? (await gatherSheets(bytes, context.unpackHeic, stageOf(context.onProgress, 0, GATHERING)));
  if ('fault' in read) return refuse(read.fault, read.page);
  if (!('looks' in read) && !read.sheets.some(isPicture))
    return readPages(fileName, read.sheets as readonly Page[], choices, context);
  if (!context.recognise) throw new Error('pictures are read where there is a recogniser');
  const looks = 'looks' in read ? read.looks : lookAtSheets(read.sheets, context.recognise, context.zone);
  return lookOn(looks, going?.best);

  function refuse(fault: PaperFault, page = fileName): IntakeResult {
    const book = openRemarkBook(page);
    const most = { 'many-pictures': MOST_PICTURES, 'picture-large': MOST_POINTS / 1_000_000 }[fault as string];
    book.add(FAULTS[fault], 'refusal', { expected: String(most ?? MOST_PAGES) });
    return resultOf(fileName, choices, book);
  }

  /** Looks until nothing is left to prove, or no other way to look. */
  async function lookOn(looks: Looks, before: readonly Page[] | undefined): Promise<IntakeResult> {
    let best = before;
    for (let look = best ? 1 : 0; ; look++) {
      const stage = stageOf(context.onProgress, GATHERING + look * A_LOOK, GATHERING + (look + 1) * A_LOOK);
      const found = await looks.next(stage, best ? settledIn(readThese(best)) : []);
      if (!found) return withRepairs(best!, readThese(best!));
      const { pages, isSurer } = found;
      best = !best ? pages : isSurer ? provingMore(pages, best, readThese) : provingMore(best, pages, readThese);
      const result = readThese(best);
      const { paper } = result.preview;
      if (paper?.isWhole) return result;
      if (choices.paper?.glance) {
        held = { key: keyOf(), looks, best };
        return paper ? { ...result, preview: { ...result.preview, paper: { ...paper, isGlance: true } } } : result;
      }
    }
  }

  function readThese(pages: readonly Page[], paper = choices.paper): IntakeResult {
    return readPages(fileName, pages, { ...choices, paper }, context);
  }

  function withRepairs(pages: readonly Page[], result: IntakeResult): IntakeResult {
    const { paper } = result.preview;
    if (!paper) return result;
    const words = choices.paper?.words ?? [];
    const repairs = offerRepairs(
      paper,
      (word) => readThese(pages, { ...choices.paper, words: [...words, word] }).preview.paper,
    );
    return repairs.length === 0 ? result : { ...result, preview: { ...result.preview, paper: { ...paper, repairs } } };
  }
}

/** Where a sum proves a number and a word says what it is, another look finds nothing more. */
const settledIn = ({ preview: { paper } }: IntakeResult): Box[] =>
  (paper?.values ?? []).flatMap(({ state, meaning, boxes }) => (state === 'proved' && meaning === 'said' ? boxes : []));

const GATHERING = 0.15;
/** Share of the work that one look takes; there are at most three. */
const A_LOOK = 0.28;

/** What was seen at a glance, until it is asked for in full. */
let held: { readonly key: string; readonly looks: Looks; readonly best: readonly Page[] } | undefined;

/** Enough to tell one picture from another of the same name and length. */
function sumOf(bytes: Uint8Array): number {
  let sum = 0;
  for (const byte of bytes) sum = (Math.imul(sum, 31) + byte) | 0;
  return sum;
}

/** The same from words that stand already in their places. */
export function readPages(
  fileName: string,
  pages: readonly Page[],
  choices: IntakeChoices,
  context: IntakeContext,
): IntakeResult {
  const book = openRemarkBook(fileName);
  const said = choices.paper ?? {};
  const corrected = withWords(pages, said.words ?? []);
  const how = { decimal: choices.decimal, dayFirst: choices.dayFirst, monthFirst: writesMonthFirst(context.zone) };
  const rows = rowsOf(corrected);
  const people = namesOn(corrected, rows);
  const { bills, doubt } = splitBills(rowsWithout(people, rows), said.bills, (some) => understand(some, how));
  const text = textOf(corrected);
  const { money = context.money ?? '£', other } = moneyOf(text);
  if (other !== undefined) {
    book.add('paper-other-money', 'refusal', { found: other });
    return resultOf(fileName, choices, book);
  }
  const isWater = bills.some((one) => one.isWater);
  const isHeat = bills.some((one) => one.isHeat);
  // Wood that is brought is reckoned like energy, and no word names a fuel that is metered.
  const isNamed = bills.some(({ sections }) => sections.some(({ fuel, gas }) => fuel !== undefined || gas.length > 0));
  const goods = isNamed ? undefined : DELIVERED_FUEL.exec(text)?.[0];
  if (goods !== undefined || bills.every(({ sections }) => sections.length === 0)) {
    const isSeen = pages.some(({ picture }) => picture);
    // Of a picture a word that stands once may be misread.
    const stands = (words: RegExp) => !isSeen || [...text.matchAll(new RegExp(words, 'giu'))].length > 1;
    const delivered = goods ?? OTHER_GOODS.exec(text)?.[0];
    if (!isHeat && !isWater && delivered !== undefined && stands(OTHER_GOODS))
      book.add('paper-other-bill', 'refusal', { found: delivered });
    else if (isHeat && stands(HEAT)) book.add('paper-heat-only', 'refusal');
    else if (isWater && stands(WATER)) book.add('paper-water-only', 'refusal');
    else book.add(isSeen ? 'picture-no-bill' : 'paper-no-bill', 'refusal');
    return resultOf(fileName, choices, book);
  }
  if (doubt !== undefined) book.add('paper-several-asked', 'question', { found: doubt });
  if (bills.length > 1) book.add('paper-several', 'note', { count: bills.length });
  const isSeveral =
    bills.length > 1 ||
    bills.some(({ sections }) => sections.some((one, i) => sections.findIndex(({ fuel }) => fuel === one.fuel) < i));
  const settled = isSeveral ? { ...choices, paper: withoutDays(said) } : choices;
  const read = bills.map((understood, i) => {
    const sections = understood.sections.map((section) => readSection(section, understood, settled, book));
    const typed = typedBoxes(corrected, said);
    const listed = listValues({ understood, sections, typed });
    const over = findLeftOver(understood, listed, typed);
    ask({ values: listed, over, understood, sections }, settled, book, context.today);
    const values = [...listed, ...(over.wrongTotal ? [wrongTotalOf(over.wrongTotal, typed)] : [])];
    return { sections, values: i === 0 ? values : values.map((one) => ({ ...one, key: `${i} ${one.key}` })) };
  });
  const sections = read.flatMap((one) => one.sections);
  const values = read.flatMap((one) => one.values);
  const isOther = context.money ? money !== context.money : money === '$' && how.monthFirst !== true;
  if (isOther && !said.money) book.add('paper-money-asked', 'question', { found: money });
  else if (money !== (context.money ?? '£')) book.add('paper-money', 'note', { found: money });
  if (sections.some(({ section: { lines } }) => sumQuantity(lines.filter(({ kind }) => kind === 'energy')) < 0)) {
    book.add('paper-given-back', 'refusal');
    return resultOf(fileName, choices, book);
  }
  const series = [...Map.groupBy(sections, ({ fuel }) => fuel).values()]
    .flatMap((own, i) => seriesOf(own, i, (one) => sections.indexOf(one) + 1, context, book, said))
    .map((one) => standing(one, choices));
  const tariffs = read
    .at(-1)!
    .sections.flatMap(({ made, fuel, section }) =>
      made && fuel && section.lines.every(({ kind, price }) => kind !== 'energy' || price)
        ? (tariffOfBill(made.bill, made.vatRate) ?? [])
        : [],
    );
  const services = sections.flatMap(({ made }) => (made ? servicesOf(made.bill) : []));
  if (services.length > 0)
    book.add('paper-services-left-out', 'note', {
      found: services.map(({ name, pence }) => `${name} ${(pence / 100).toFixed(2)}`).join('; '),
    });
  const shared = bills.flatMap(sharedOf);
  if (shared.length > 0)
    book.add('paper-shared', 'note', { found: shared.map(({ name, figure }) => `${name} ${figure.text}`).join('; ') });
  if (isWater) book.add('paper-water-left-out', 'note');
  if (isHeat) book.add('paper-heat-left-out', 'note');
  if (bills.some(({ isExport }) => isExport)) book.add('paper-export-left-out', 'note');
  book.add('paper-names-left-out', 'note');
  const remarks = book.list();
  if (pages.some(({ picture }) => picture) && remarks.some(({ code }) => OF_BAD_PICTURES.has(code)))
    book.add('picture-unclear', 'note');
  const isOpen = remarks.some(({ weight }) => weight !== 'note');
  const isWhole =
    !isOpen &&
    CONFIRMED.every((answer) => !said[answer]) &&
    values.every(({ kind, state, meaning }) => KEPT_APART.has(kind) || (state === 'proved' && meaning === 'said'));
  return {
    preview: {
      ...emptyPreview(fileName, choices, book),
      shape: PAPER_SHAPE,
      candidates: [{ shape: PAPER_SHAPE, fit: 1, reason: 'words of a bill with their places' }],
      choices: { ...choices, decimal: bills[0]!.decimal },
      dataRows: series.length,
      series,
      firstDays: series[0] ? periodPicture(series[0]) : [],
      paper: { pages: [...pages], values, isWhole, tariffs },
    },
    intervals: [],
    people: [...people],
  };
}

/** What half a picture or an unclear one leaves open. */
const OF_BAD_PICTURES: ReadonlySet<string> = new Set([
  'paper-period-asked',
  'paper-total-asked',
  'paper-unproved-asked',
  'paper-contradicted-asked',
  'paper-fuel-left-asked',
]);

/** What a person confirmed instead of a sum. */
const CONFIRMED = ['looked', 'complete', 'meant', 'leftOut', 'leftOver', 'isBill', 'money', 'asPrinted'] as const;

/** Days that were typed are those of one bill. */
const withoutDays = ({ from: _, to: __, ...said }: PaperChoices): PaperChoices => said;

const resultOf = (fileName: string, choices: IntakeChoices, book: RemarkBook): IntakeResult => ({
  preview: emptyPreview(fileName, choices, book),
  intervals: [],
});

/** The pages with the words that the person put right. */
function withWords(pages: readonly Page[], typed: NonNullable<PaperChoices['words']>): readonly Page[] {
  if (typed.length === 0) return pages;
  return pages.map((page, number) => ({
    ...page,
    words: page.words.map((word, at) => ({
      ...word,
      text: typed.find((one) => one.page === number && one.at === at)?.text ?? word.text,
    })),
  }));
}

const textOf = (pages: readonly Page[]): string =>
  pages.flatMap(({ words }) => words.map((word) => word.text)).join(' ');

function typedBoxes(pages: readonly Page[], { words }: PaperChoices): (box: Box) => boolean {
  const corrected = (words ?? []).flatMap(({ page, at }) => {
    const word = pages[page]?.words[at];
    return word ? [{ page, ...word }] : [];
  });
  return (box) =>
    corrected.some(
      (one) =>
        one.page === box.page &&
        one.x < box.x + box.width &&
        one.x + one.width > box.x &&
        one.y < box.y + box.height &&
        one.y + one.height > box.y,
    );
}

/** One fuel of the paper: its days settled or asked for, its bill made. */
function readSection(
  section: Section,
  understood: Understanding,
  choices: IntakeChoices,
  book: RemarkBook,
): ReadSection {
  const said = choices.paper ?? {};
  const { rows, together } = understood;
  const chosen = choices.carrier === 'electricity' || choices.carrier === 'gas' ? choices.carrier : undefined;
  const named = isLeftOut(section.fuel) ? undefined : section.fuel;
  const byUnit = section.gas.length > 0 ? ('gas' as const) : undefined;
  const fuel = named ?? byUnit ?? chosen;
  const faults = faultsOf(section, rows, together !== undefined);
  const { period } = section;
  if (fuel === undefined) book.add('paper-fuel-asked', 'question');
  if (!period && !(said.from && said.to)) book.add('paper-period-asked', 'question');
  const inclusive = period?.inclusive ?? choices.toInclusive;
  if (period && period.inclusive === undefined && choices.toInclusive === undefined && !said.to)
    book.add('to-inclusive-asked', 'question', { found: period.pair.to.text });
  const span = period ? spanOf(period.pair, inclusive ?? true) : undefined;
  const [from, to] = [said.from ?? span?.from, said.to ?? span?.to];
  const made =
    fuel && from && to && from < to
      ? billOfSection({
          section,
          fuel,
          rows,
          together,
          shared: sharedOf(understood),
          from,
          to,
          inclusive: inclusive ?? true,
          choices: said,
        })
      : undefined;
  return { section, fuel, fuelSaid: (named ?? byUnit) !== undefined, made, faults };
}

interface ReadBill {
  readonly values: readonly PaperValue[];
  readonly over: LeftOver;
  readonly understood: Understanding;
  readonly sections: readonly ReadSection[];
}

/** A total that the charges do not come to stands among the values, so that it is marked on the page. */
const wrongTotalOf = (
  { figure, sum }: NonNullable<LeftOver['wrongTotal']>,
  typed: (box: Box) => boolean,
): PaperValue => ({
  key: 'total-wrong',
  kind: 'total',
  text: figure.text,
  boxes: [figure.box],
  state: 'contradicted',
  ...(typed(figure.box) ? { isTyped: true } : {}),
  sums: [sum],
  meaning: 'said',
});

/** What the paper leaves open blocks keeping until a person has answered it. */
function ask(
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
    if (!made || faults.length > 0 || section.totals === undefined) return [];
    const { rows: lines, printedPence, reckonedPence, agrees } = made.sums;
    if (agrees) return [];
    const worst = lines.find(({ difference = 0, unit }) => unit === 'p' && Math.abs(difference) > 1);
    const [printed, reckoned] = worst
      ? [worst.printed!, worst.reckoned]
      : [printedPence ?? reckonedPence, reckonedPence];
    const like = section.lines[0]!.amount;
    return [`${printedAs(reckoned, like)} ≠ ${printedAs(printed, like)}`];
  }
}
const sumOfLine = ({ product, amount }: PaperLine): string => product?.sum ?? amount.text;
/** A bill may be dated a little ahead. */
const DAYS_AHEAD = 7;
const fewOf = (values: readonly PaperValue[]): string =>
  values
    .map(({ text }) => text)
    .slice(0, 6)
    .join(', ');
/** Money that moves between household and supplier is no cost; nothing of it is kept. */
const KEPT_APART: ReadonlySet<PaperValue['kind']> = new Set(['payment', 'balance', 'due', 'next-payment']);

/** The bills of one fuel as a series of periods. */
function seriesOf(
  own: readonly ReadSection[],
  at: number,
  rowOf: (section: ReadSection) => number,
  context: IntakeContext,
  book: RemarkBook,
  said: PaperChoices,
): Series[] {
  const fuel = own[0]?.fuel;
  const made = own.flatMap((one) => (one.made ? [{ ...one, made: one.made, row: rowOf(one) }] : []));
  if (made.length === 0 || !fuel) return [];
  const twice = made.find(({ made: { bill } }, i) => made.slice(0, i).some((one) => isOtherUse(one.made.bill, bill)));
  if (twice) book.add('paper-same-days', 'refusal', { found: `${twice.made.bill.from} – ${twice.made.bill.to}` });
  const raw = made.map((one) => periodOf(one, one.made, one.row));
  const quantity = { unit: 'kWh', carrier: fuel, role: 'import', zeroAt: 0, kWhPerUnit: 1 } as const;
  const series = periodSeries(`series-${at + 1}`, fuel, quantity, raw, book);
  return series ? [{ ...series, bills: made.map(({ row, made: { bill } }) => ({ row, bill })) }] : [];

  function periodOf(
    { section }: ReadSection,
    { bill, sums, vatRate, sharedPence }: SectionBill,
    row: number,
  ): RawPeriod {
    const kWh = kWhOf(bill);
    if (toDayNumber(bill.to) > toDayNumber(context.today) + 1)
      book.add('after-today', 'note', { found: bill.to, expected: context.today, count: 1 });
    const total = said.asPrinted && bill.totalPence !== undefined ? bill.totalPence : sums.reckonedPence;
    // A credit is no lower use and no lower price; what was laid on is paid like the rest, unless it is for no energy.
    const credits = (section.totals?.after ?? []).reduce((sum, { pence }) => sum + Math.min(0, pence), 0);
    const taxed = bill.vat.included ? 1 : 1 + vatRate;
    const services = servicesOf(bill).reduce((sum, { pence, vat }) => sum + pence * (vat === 'before' ? taxed : 1), 0);
    return {
      fromDay: toDayNumber(bill.from),
      toDay: toDayNumber(bill.from) + daysBetween(bill.from, bill.to),
      quantity: kWh,
      kWh,
      costPence: total - credits - Math.round(services) + sharedPence,
      quality: qualityOf(bill),
      line: row,
    };
  }
}

const kWhOf = ({ meters }: Bill): number => Number(meters.reduce((sum, { kWh = 0 }) => sum + kWh, 0).toFixed(6));
/** The same days with another use: a bill that was put right, or another meter's. */
const isOtherUse = (a: Bill, b: Bill): boolean => a.from === b.from && a.to === b.to && kWhOf(a) !== kWhOf(b);

/** What was charged for beside energy and its supply. */
const servicesOf = ({ adjustments }: Bill): Bill['adjustments'] =>
  adjustments.filter(({ kind, name }) => kind === 'charge' && SERVICE.test(name));

function qualityOf({ meters }: Bill): RawPeriod['quality'] {
  const kinds = meters.flatMap(({ openingKind, closingKind }) => [openingKind, closingKind]);
  if (kinds.includes('estimated')) return 'estimated';
  if (kinds.includes('customer')) return 'customer';
  return kinds.every((kind) => kind === 'actual') ? 'actual' : 'unknown';
}
