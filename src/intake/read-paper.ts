/** A bill on paper: words to evidence, with everything that is not proved left open for the person. */

import { tell } from '../model/shapes/told.ts';
import { writesMonthFirst } from './dates/decide-day-first.ts';
import type { IntakeChoices, IntakeContext, IntakeResult } from './intake.ts';
import { numbersInText } from './layout/own-numbers.ts';
import { ask, KEPT_APART } from './paper/ask-of-paper.ts';
import { billOfSection, spanOf } from './paper/bill-of-section.ts';
import { seriesOf, servicesOf } from './paper/bill-series.ts';
import type { Box } from './paper/figures.ts';
import { isLeftOut } from './paper/fuel-of.ts';
import { gatherSheets, MOST_PICTURES, type PaperFault, type Sheet } from './paper/gather-sheets.ts';
import { findLeftOver, type LeftOver } from './paper/left-over.ts';
import { type PaperLine, sumQuantity } from './paper/lines.ts';
import { type Looks, lookAtSheets } from './paper/look-at-sheets.ts';
import { moneyOf } from './paper/money.ts';
import { withoutOthers } from './paper/of-others.ts';
import { rowsOf, textOfRow } from './paper/page.ts';
import { MOST_PAGES } from './paper/pdf-words.ts';
import { namesOn, rowsWithout } from './paper/people.ts';
import { MOST_POINTS } from './paper/picture.ts';
import { leaningRows, provingMore } from './paper/proving-more.ts';
import { isMoney } from './paper/relations.ts';
import { offerRepairs } from './paper/repair.ts';
import { splitBills } from './paper/split-bills.ts';
import { tariffOfBill } from './paper/tariff-of-bill.ts';
import { type Section, sharedOf, type Understanding, understand } from './paper/understand.ts';
import { faultsOf, listValues, type ReadSection } from './paper/values.ts';
import { DELIVERED_FUEL, ELECTRICITY, GAS, HEAT, OTHER_GOODS, SHARED_HEAT, WATER } from './paper/vocabulary.ts';
import { periodPicture } from './periods/period-series.ts';
import { emptyPreview, standing } from './read-file.ts';
import { tellMoney } from './terms/money-words.ts';
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
  packed: 'picture-kind',
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
  const keyOf = () => `${fileName} ${bytes.length} ${fingerprintOf(bytes)} ${context.zone}`;
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
    let best = before && { pages: before, result: readThese(before) };
    for (let look = best ? 1 : 0; ; look++) {
      const stage = stageOf(context.onProgress, GATHERING + look * A_LOOK, GATHERING + (look + 1) * A_LOOK);
      const found = await looks.next(stage, best ? settledIn(best.result) : []);
      if (!found) return withRepairs(best!.pages, best!.result);
      const { pages, isSurer } = found;
      const [own, other] = isSurer || !best ? [pages, best?.pages] : [best.pages, pages];
      best = leaningRows(other ? provingMore(own, other, readThese) : own, readThese);
      const { result } = best;
      const { paper } = result.preview;
      if (paper?.isWhole) return result;
      if (choices.paper?.glance) {
        held = { key: keyOf(), looks, best: best.pages };
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
function fingerprintOf(bytes: Uint8Array): number {
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
  const own = withoutOthers(rowsWithout(people, rows), choices.decimal);
  const { bills, doubt } = splitBills(own.rows, said.bills, (some) => understand(some, how));
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
  const goods = isNamed ? undefined : (DELIVERED_FUEL.exec(text) ?? SHARED_HEAT.exec(text))?.[0];
  if (goods !== undefined || bills.every(({ sections }) => sections.length === 0)) {
    const isSeen = pages.some(({ picture }) => picture);
    // Of a picture a word that stands once may be misread.
    const stands = (words: RegExp) => !isSeen || [...text.matchAll(new RegExp(words, 'giu'))].length > 1;
    const delivered = goods ?? OTHER_GOODS.exec(text)?.[0];
    const isShared = SHARED_HEAT.test(goods ?? '');
    if (own.others.length > 0) book.add('paper-others-only', 'refusal', { found: own.others.join('; ') });
    else if ((isShared || (!isHeat && !isWater)) && delivered !== undefined && stands(OTHER_GOODS))
      book.add('paper-other-bill', 'refusal', { found: delivered });
    else if (isHeat && stands(HEAT)) book.add('paper-heat-only', 'refusal');
    else if (isWater && stands(WATER)) book.add('paper-water-only', 'refusal');
    else if (GAS.test(text) && bills.some(isByVolume) && !/\d ?kWh/.test(text)) book.add('paper-by-volume', 'refusal');
    else if (pages.some(isUnclear)) book.add('picture-no-bill', 'refusal');
    else book.add(isSeen ? 'picture-no-use' : 'paper-no-bill', 'refusal');
    return resultOf(fileName, choices, book);
  }
  if (doubt !== undefined) book.add('paper-several-asked', 'question', { found: doubt });
  if (bills.length > 1) book.add('paper-several', 'note', { count: bills.length });
  if (bills.some(holdsTwoUnnamed)) {
    book.add('paper-two-fuels', 'refusal');
    return resultOf(fileName, choices, book);
  }
  const isSeveral =
    bills.length > 1 ||
    bills.some(({ sections }) => sections.some((one, i) => sections.findIndex(({ fuel }) => fuel === one.fuel) < i));
  const settled = isSeveral ? { ...choices, paper: withoutDays(said) } : choices;
  // Goes first: of dollars nobody is asked for a VAT.
  const isOther = context.money ? money !== context.money : money === '$' && how.monthFirst !== true;
  if (isOther && !said.money) book.add('paper-money-asked', 'question', { found: money });
  else if (money !== (context.money ?? '£')) book.add('paper-money', 'note', { found: money });
  const read = bills.map((understood, i) => {
    const sections = understood.sections.map((section) => readSection(section, understood, settled, book));
    const typed = typedBoxes(corrected, said);
    const listed = listValues({ understood, sections, typed });
    const over = findLeftOver(understood, listed, typed);
    ask({ values: listed, over, understood, sections }, settled, book, context.today);
    const values = [...listed, ...(over.wrongTotal ? [wrongTotalOf(over.wrongTotal, typed)] : [])];
    return { sections, values: i === 0 ? values : values.map((one) => ({ ...one, key: `${i} ${one.key}` })) };
  });
  const found = own.others.join('; ');
  if (found !== '' && !own.isAll) book.add('paper-others-left-out', 'note', { found });
  else if (found !== '' && !said.isBill && !book.list().some(({ code }) => code === 'paper-no-bill-asked'))
    book.add('paper-no-bill-asked', 'question', { found });
  const sections = read.flatMap((one) => one.sections);
  const values = read.flatMap((one) => one.values);
  if (sections.some(({ section: { lines } }) => sumQuantity(lines.filter(({ kind }) => kind === 'energy')) < 0)) {
    // Nothing that was asked until then could change it.
    const only = openRemarkBook(fileName);
    only.add('paper-given-back', 'refusal');
    return resultOf(fileName, choices, only);
  }
  const numbers = numbersInText(rows.map((row) => textOfRow(row).text));
  const series = [...Map.groupBy(sections, ({ fuel }) => fuel).values()]
    .flatMap((own, i) => seriesOf(own, i, (one) => sections.indexOf(one) + 1, book, choices))
    .map((one) => standing(numbers.length > 0 ? { ...one, numbers } : one, choices));
  const tariffs = read
    .at(-1)!
    .sections.flatMap(({ made, fuel, section }) =>
      made && fuel && section.lines.every(({ kind, price }) => kind !== 'energy' || price)
        ? (tariffOfBill(made.bill, made.vatRate, bills.at(-1)!.rows) ?? [])
        : [],
    );
  const services = sections.flatMap(({ made }) => (made ? servicesOf(made.bill) : []));
  if (services.length > 0)
    book.add('paper-services-left-out', 'note', {
      foundTold: tell('these', {
        parts: services.map(({ name, pence }) =>
          tell('name-and-sum', { name, sum: tellMoney(pence / 100, money === '$' ? 'other' : money) }),
        ),
      }),
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

/** A better picture may show more. */
const isUnclear = ({ picture, isClear }: Page): boolean => picture !== undefined && !isClear;

/** Volume with its price, and no energy anywhere. */
const isByVolume = ({ rows }: Understanding): boolean =>
  rows.some(({ figures }) => figures.some(({ kind }) => kind === 'volume') && figures.some(isMoney)) &&
  !rows.some(({ figures }) => figures.some(({ kind }) => kind === 'energy'));

/** Two charges for units and two standing charges for the same days, none with a name: mostly of two fuels whose headings are lost. */
const holdsTwoUnnamed = ({ sections }: Understanding): boolean =>
  sections.some(({ fuel, gas, lines, period }) => {
    if (fuel !== undefined || gas.length > 0) return false;
    const prices = (kind: PaperLine['kind']) =>
      lines.filter(({ register, registerGuessed, ...one }) => one.kind === kind && (!register || registerGuessed));
    const days = prices('standing').flatMap(({ quantity, pence }) =>
      quantity?.kind === 'days' && (!period || quantity.value >= period.pair.days)
        ? { count: quantity.value, pence }
        : [],
    );
    const isTwice = days.some((one) => days.some((other) => other.count === one.count && other.pence !== one.pence));
    return isTwice && new Set(prices('energy').map(({ pence }) => pence)).size > 1;
  });

/** What half a picture or an unclear one leaves open. */
const OF_BAD_PICTURES: ReadonlySet<string> = new Set([
  'paper-vat-asked',
  'paper-period-asked',
  'paper-total-asked',
  'paper-unproved-asked',
  'paper-contradicted-asked',
  'paper-fuel-left-asked',
]);

/** What a person confirmed instead of a sum. */
const CONFIRMED = [
  'looked',
  'complete',
  'meant',
  'leftOut',
  'leftOver',
  'billedBefore',
  'isBill',
  'money',
  'asPrinted',
] as const;

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
  // A supplier may be called after gas; by day and night only electricity is sold.
  const isByRates = section.lines.some(
    ({ kind, register, registerGuessed }) => kind === 'energy' && register !== undefined && !registerGuessed,
  );
  const isByDayOnly = section.fuel === undefined && isByRates && !rows.some(({ text }) => GAS.test(text));
  // No gas meter counts kWh; who supplies by name electricity alone sells no heat.
  const isByCounter =
    section.fuel === undefined &&
    section.differences.length > 0 &&
    rows.some(({ text }) => ELECTRICITY.test(text)) &&
    !rows.some(({ text }) => GAS.test(text) || HEAT.test(text));
  const byUnit = section.gas.length > 0 ? 'gas' : isByDayOnly || isByCounter ? 'electricity' : undefined;
  const isDoubtful = section.fuel === 'gas' && !byUnit && isByRates;
  const named = isLeftOut(section.fuel) || isDoubtful ? undefined : section.fuel;
  const fuel = named ?? byUnit ?? chosen;
  const faults = faultsOf(section, rows, together !== undefined);
  const { period } = section;
  if (fuel === undefined) book.add('paper-fuel-asked', 'question');
  const isBackwards = said.from !== undefined && said.to !== undefined && said.from >= said.to;
  if (!period && (isBackwards || !(said.from && said.to)))
    book.add('paper-period-asked', 'question', isBackwards ? { found: said.to } : {});
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
