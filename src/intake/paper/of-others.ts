/**
 * Sums that a page works out for somebody else, for a time to come, for another year or at other prices. Words above a block or
 * a column say so; what stands there is no part of the bill, however well it proves itself.
 */
import { type RowFacts, readRows } from './figures.ts';
import { cellsOf, type Row, textOfRow } from './page.ts';
import { isMoney, penceOf } from './relations.ts';
import { marksOf } from './understand.ts';
import { DUE, EARLIER, NET, OTHERS, PAYMENT, SET_BESIDE, TOTAL, VAT } from './vocabulary.ts';

export interface OwnRows {
  readonly rows: readonly Row[];
  /** What was left out: the words above it and the largest of its sums. */
  readonly others: readonly string[];
  /** Nothing else on the paper is of energy or money: it is left in for the person to judge. */
  readonly isAll: boolean;
}

const SAY_SO = [OTHERS, EARLIER, SET_BESIDE];

/** The rows of a paper without what is of others. */
export function withoutOthers(rows: readonly Row[], decimal = marksOf(rows)[0]!): OwnRows {
  const text = rows.map((row) => textOfRow(row).text).join('\n');
  if (!SAY_SO.some((one) => one.test(text))) return { rows, others: [], isAll: false };
  const facts = readRows(rows, decimal);
  const blocks = [...blocksOf(facts), ...columnsOf(facts)];
  const dropped = new Set(blocks.flatMap(({ words }) => words));
  if (dropped.size === 0) return { rows, others: [], isAll: false };
  const own = rows.map((row) => ({ ...row, words: row.words.filter((word) => !dropped.has(word)) }));
  const isAll = !readRows(own, decimal).some(({ figures }) => figures.some(isOfBill));
  const others = blocks.map(({ title, sum }) => `${title}: ${sum}`);
  return { rows: isAll ? rows : own.filter(({ words }) => words.length > 0), others, isAll };
}

interface Block {
  readonly title: string;
  readonly sum: string;
  readonly words: readonly Row['words'][number][];
}
type Figure = RowFacts['figures'][number];

const isOfBill = (one: Figure): boolean => one.value > 0 && (isMoney(one) || one.kind === 'energy');
const isCharge = ({ figures }: RowFacts): boolean =>
  figures.some(isMoney) && figures.some(({ kind }) => kind === 'energy' || kind === 'days' || kind === 'months');
/** Words alone, or with a year, some months or days, a share. */
const isHead = ({ figures }: RowFacts): boolean =>
  figures.every(({ kind, decimals }) => kind === 'months' || kind === 'days' || (kind === 'plain' && decimals === 0));
const isTitle = (row: RowFacts): boolean => isHead(row) && !row.text.includes('\t') && !/[.;,]$/.test(row.text);

/** Words of a title that may tell of somebody else; more are running text. */
const TITLE_WORDS = 14;
/** Heights of a line between a title and what stands below it. */
const CLOSE = 2.5;

/** A title that says it is of others, and what stands below it until the next title or behind its total. */
function blocksOf(rows: readonly RowFacts[]): Block[] {
  const blocks: Block[] = [];
  for (let at = 0; at < rows.length; at++) {
    const head = rows[at]!;
    const { text } = head;
    const count = text.split(' ').filter((word) => !/\d/.test(word)).length;
    if (!isTitle(head) || !OTHERS.test(text) || count > TITLE_WORDS || goesOn(rows[at + 1])) continue;
    const end = endOfBlock(rows, at);
    const below = rows.slice(at + 1, end).filter(({ row }) => row.page !== head.row.page || isOver(head.row, row));
    if (!below.some(isCharge)) continue;
    blocks.push(
      blockOf(
        text,
        [head, ...below].flatMap(({ row }) => row.words),
        below.flatMap(({ figures }) => figures),
      ),
    );
    at = end - 1;
  }
  return blocks;
}

/** Running text begins its next line with a small letter, and ends. */
const goesOn = (below: RowFacts | undefined): boolean => /^\p{Ll}.*\.$/u.test(below?.text ?? '');

function endOfBlock(rows: readonly RowFacts[], start: number): number {
  let charged = false;
  let totalled = false;
  for (let at = start + 1; at < rows.length; at++) {
    const [row, above] = [rows[at]!, rows[at - 1]!];
    const { words, figures } = row;
    if (row.row.page !== above.row.page && (!charged || totalled)) return at;
    const hasSum = figures.some(isMoney);
    const isSum = hasSum && !isCharge(row) && [TOTAL, NET, VAT].some((one) => one.test(words));
    if (totalled && (!isSum || DUE.test(words) || PAYMENT.test(words))) return at;
    // Right below a title stands its second line.
    const isClose = isTitle(above) && row.row.y - above.row.y < CLOSE * row.row.height;
    const isSecond = !charged && isClose && (OTHERS.test(row.text) || !OWN.test(row.text));
    if (isTitle(row) && figures.length === 0 && row.dates.length === 0 && !isSecond) return at;
    charged ||= isCharge(row);
    totalled ||= charged && isSum && TOTAL.test(words) && !NET.test(words);
  }
  return rows.length;
}
/** What begins the part of the page that is of this home. */
const OWN =
  /(?<!\p{L})(?:this (?:bill|period|quarter|month|statement|home)|you|your (?:bill|charges|costs?|plan|account)|charges|(?:ihre? )?(?:\p{L}*rechnung|kosten|tarif)|votre|vos|uw|su|sus|la tua|le tue|vostr[aeio]|din|dine|dit)(?!\p{L})/iu;

const spanOf = (words: Row['words']): [number, number] => [
  Math.min(...words.map(({ x }) => x)),
  Math.max(...words.map(({ x, width }) => x + width)),
];
function isOver(head: Row, row: Row): boolean {
  const [[left, right], [from, to]] = [spanOf(head.words), spanOf(row.words)];
  return left < to && right > from;
}

const IN_COLUMN = 4;
/** Heads beside each other of which some say that they are of others, and what stands below those. */
function columnsOf(rows: readonly RowFacts[]): Block[] {
  return rows.flatMap((head, at): Block[] => {
    if (!isHead(head) || !head.text.includes('\t')) return [];
    const cells = cellsOf(head.row.words).map((words) => {
      const text = words.map((word) => word.text).join(' ');
      return { text, words, span: spanOf(words), isOther: SAY_SO.some((one) => one.test(text)) };
    });
    if (cells.every(({ isOther }) => isOther) || !cells.some(({ isOther }) => isOther)) return [];
    const below = rows.slice(at + 1, endOfTable(rows, at));
    const columnOf = ([left, right]: [number, number]) => {
      const flush = cells.filter(({ span: [x, end] }) =>
        [left - x, right - end, (left + right - x - end) / 2].some((off) => Math.abs(off) < IN_COLUMN),
      );
      const under = flush.length > 0 ? flush : cells.filter(({ span: [x, end] }) => left < end && right > x);
      return under.length === 1 ? under[0] : cells.filter(({ span: [x] }) => x <= left + IN_COLUMN).at(-1);
    };
    const parts = below.flatMap(({ row, figures }) =>
      cellsOf(row.words).flatMap((words, _, all) => {
        const span = spanOf(words);
        // Running text goes from before the first column into the next.
        const isText = all.length === 1 && span[0] < cells[0]!.span[0] - IN_COLUMN;
        const inside = figures.filter(({ box }) => box.x >= span[0] - 1 && box.x < span[1]);
        return isText || inside.length === 0 ? [] : [{ cell: columnOf(span), words, inside }];
      }),
    );
    const sumsOf = (isOther: boolean) =>
      parts.filter(({ cell }) => cell?.isOther === isOther).flatMap(({ inside }) => inside.filter(isMoney));
    // Readings of the last bill and of this one are of one table.
    if (sumsOf(true).length < LEAST_SUMS || sumsOf(false).length < LEAST_SUMS) return [];
    return cells
      .filter(({ isOther }) => isOther)
      .flatMap((cell) => {
        const mine = parts.filter((one) => one.cell === cell);
        const all = mine.flatMap(({ inside }) => inside);
        return all.some(isMoney)
          ? [blockOf(cell.text, [...cell.words, ...mine.flatMap(({ words }) => words)], all)]
          : [];
      });
  });
}
const LEAST_SUMS = 2;

function endOfTable(rows: readonly RowFacts[], head: number): number {
  const { page } = rows[head]!.row;
  const end = rows.findIndex(
    (row, i) =>
      i > head &&
      (row.row.page !== page ||
        (row.figures.length + row.dates.length === 0 &&
          (isTitle(row) || rows.slice(head + 1, i).some(({ figures }) => figures.length > 0)))),
  );
  return end < 0 ? rows.length : end;
}

function blockOf(title: string, words: Block['words'], figures: readonly Figure[]): Block {
  const [largest] = figures.filter(isMoney).toSorted((a, b) => penceOf(b) - penceOf(a));
  return { title: title.slice(0, 80), sum: largest?.text ?? '', words };
}
