/** Of which fuel a number of a page is. */
import { monthOfName } from '../dates/month-names.ts';
import { isKnownWord } from '../layout/names.ts';
import { type Figure, keptForLast, type RowFacts } from './figures.ts';
import { isName } from './people.ts';
import { isMoney } from './relations.ts';
import { ELECTRICITY, GAS, HEAT, PERIOD, VAT, WATER } from './vocabulary.ts';

/** Water and piped heat are known so that they are left out. */
export type PaperFuel = 'electricity' | 'gas' | 'water' | 'heat';
export const isLeftOut = (fuel: PaperFuel | undefined): fuel is 'water' | 'heat' => fuel === 'water' || fuel === 'heat';

interface FuelMark {
  readonly row: number;
  readonly x: number;
  readonly end: number;
  readonly fuel: PaperFuel;
  /** A row with an amount names its own amount first of all. */
  readonly isPriced: boolean;
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
/** "Water 18 %", of what electricity is made of; a row with days is none. */
export const isShareOnly = ({ figures, dates, text }: RowFacts): boolean =>
  dates.length < 2 && figures.length > 0 && figures.every(({ kind }) => kind === 'percent') && !VAT.test(text);

/** What ends the name of a company. */
const COMPANY =
  /^(?:Ltd|LTD|Limited|LIMITED|plc|PLC|LL[PC]|Inc|Co|Company|COMPANY|Corporation|Board|Cooperative|G?[Mm]bH|AG|[KOe]G|S\.?A|S\.?[Rr]\.?[Ll]|S\.?p\.?A|S\.?L|B\.?V|N\.?V|A\/S|ApS)[.,;]*$/;
const [MOST_OF_COMPANY, TITLE_ROWS] = [3, 6];
const endsCell = (word: string | undefined): boolean => word === undefined || /^(?:[-–—|·(&]|\d)/.test(word);
const isCapital = (word: string): boolean => /^(?:\p{Lu}|&$|and$|und$)/u.test(word);

/** The places of those words of a cell that are a fuel in the name of a supplier: "Merlewick Gas", "Gorsebank Electric Supply Ltd". */
function inNames(words: readonly string[], isTitle: boolean, known: ReadonlySet<string>): number[] {
  return words.flatMap((word, i) => {
    if (!ELECTRICITY.test(word) && !GAS.test(word)) return [];
    // An address in the net.
    if (/@|\p{L}\.\p{L}{2,}/u.test(word)) return [i];
    const after = words.slice(i + 1, i + 1 + MOST_OF_COMPANY);
    const end = after.findIndex((one) => COMPANY.test(one));
    if (end >= 0 && after.slice(0, end).every(isCapital)) return [i];
    const before = words[i - 1] ?? '';
    if (known.has(pairOf(before, word))) return [i];
    const isLast = /[,.;:]$/.test(word) || endsCell(words[i + 1]);
    return isTitle && isLast && isCapital(word) && isOwn(before) ? [i] : [];
  });
}
const pairOf = (before: string, word: string): string => `${before} ${word.replace(/\P{L}+$/u, '')}`.toLowerCase();
/** A word that no bill needs, as the first of a company's name is. */
const isOwn = (word: string): boolean =>
  isName(word) && !isKnownWord(word) && !PERIOD.test(word) && !NO_NAME.test(word);
const NO_NAME =
  /^(?:the|your|our|ihr(?:e[mnrs]?)?|unser(?:e[mnrs]?)?|votre|notre|uw|ons|vuestra|vostra|din)$|(?:rechnung|nota|liefer\p{L}*)$/iu;

/** The rows that name electricity or gas, without the names of suppliers: who sells power may sell gas too. */
function withoutSuppliers(rows: readonly RowFacts[]): ReadonlyMap<RowFacts, string> {
  // The head of a letter stands above its numbers.
  const isTitle = ({ row, figures }: RowFacts) => {
    const above = rows.findIndex((one) => one.row.page === row.page);
    return figures.length === 0 && rows.slice(above, above + TITLE_ROWS).some((one) => one.row === row);
  };
  const naming = rows
    .filter(({ text }) => ANY_FUEL.test(text))
    .map((facts) => ({ facts, cells: facts.text.split('\t').map((cell) => cell.split(' ')), isTitle: isTitle(facts) }));
  const find = (known: ReadonlySet<string>) =>
    naming.map(({ facts, cells, isTitle }) => ({
      facts,
      cells,
      names: cells.map((words) => inNames(words, isTitle, known)),
    }));
  const first = find(new Set());
  const pairs = first.flatMap(({ cells, names }) =>
    names.flatMap((own, i) =>
      own.flatMap((at) => (isOwn(cells[i]![at - 1] ?? '') ? pairOf(cells[i]![at - 1]!, cells[i]![at]!) : [])),
    ),
  );
  return new Map(
    (pairs.length === 0 ? first : find(new Set(pairs))).map(({ facts, cells, names }) => [
      facts,
      cells.map((words, i) => words.map((word, at) => (names[i]!.includes(at) ? '–' : word)).join(' ')).join('\t'),
    ]),
  );
}

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
export const fuelsOn: (rows: readonly RowFacts[]) => Fuels = keptForLast(findFuels);

function findFuels(rows: readonly RowFacts[]): Fuels {
  const everywhere = new Set<PaperFuel>();
  const inPassing = new Set<PaperFuel>();
  // Running text may tell of a boiler that burns gas for heat that is sold.
  let isSaid = false;
  const texts = withoutSuppliers(rows);
  const marks: FuelMark[] = rows.flatMap((facts, at) => {
    const { row, words, figures, dates } = facts;
    const text = texts.get(facts);
    const named = text === undefined ? [] : fuelsIn(text);
    if (text === undefined || named.length === 0) return [];
    const isPassing = isAside(text) || isShareOnly(facts);
    for (const fuel of named) (isPassing ? inPassing : everywhere).add(fuel);
    if (isPassing) return [];
    const isShort = words.split(/\s/).length <= HEADING_WORDS && !/^\p{Ll}|\.$/u.test(text);
    if (figures.length > 0 || dates.length > 0 || isShort) isSaid = true;
    const isPriced = figures.some(isMoney);
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
      return fuel && !other && count <= HEADING_WORDS ? [{ row: at, x, end, fuel, isPriced }] : [];
    });
  });
  const [only] = everywhere;
  return { of: fuelOf, named: new Set([...everywhere, ...inPassing]) };

  /** Where the heading of a page was not read, the sums on it say more than the last line of the page before. */
  function sumsOfPage({ box: { page } }: Figure, above: FuelMark): PaperFuel | undefined {
    if (rows[above.row]!.row.page === page) return undefined;
    const own = marks.filter(({ row }) => rows[row]!.row.page === page);
    return own.every(({ fuel, isPriced }) => isPriced && fuel === own[0]!.fuel) ? own[0]?.fuel : undefined;
  }

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
      const { x: left, width } = figure.box;
      const isBelow = ({ x, end }: FuelMark) => left < end && left + width > x;
      const flush = together.filter((mark) => isUnder(figure, mark));
      const inColumn = together.length < 2 ? [] : flush.length > 0 ? flush : together.filter(isBelow);
      const mine = inColumn.length === 1 ? inColumn[0] : together.filter(({ x }) => x <= figure.box.x + 4).at(-1);
      if (mine) return (mine.isPriced ? sumsOfPage(figure, mine) : undefined) ?? mine.fuel;
    }
    return everywhere.size === 1 && isSaid ? only : undefined;
  }
}
