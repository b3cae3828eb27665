/** Marks of how a reading came about: read, estimated, or read by the customer. */
import { markBeside } from '../numbers/read-number.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { cellText, rowTexts } from '../text/table.ts';
import { type ColumnFacts, isMarkColumn, isNumberColumn, isWordColumn } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { columnName } from './value-cells.ts';

const ESTIMATED = /^(e|est|est\.|projected|~|≈|ca\.?|circa|c\.|approx\.?|approximate(ly)?|about|env\.?|environ)$/i;
/** Words for a value that was not read, by their beginning, in the languages of meter files; accents are left off. */
const NOT_READ =
  /^(estim|geschat|ersatz|hochgerechn|rechnerisch|berechnet|interpol|substitut|stima|szacun|odhad|nahrad|arvio|ansl[a]?e?[tg]|skon|berakn|beregn|berekend|vervang|valeur (de )?remplac|remplace|sustitu|previst)/;
/** In a column that asks whether a reading is an estimate. */
export const YES = /^(y|yes|true|1|ja|oui|si|sí)$/i;
const OF_ESTIMATES = /estim|schatz|stimat|geschat|anslaet/;
/** Signs of a footnote: what they mean only the file itself says. */
const SIGN = /^[*†‡#¹²³⁴⁵]{1,3}\)?$/;
const ANY_SIGN = /[*†‡#¹²³⁴⁵]/;
const EXPLAINED = /(?<![^\s([;,])([*†‡#¹²³⁴⁵]{1,3})\)?\s*[=:–-]?\s*(\p{L}[^*†‡#=]{2,80})/gu;
const OF_CUSTOMER = /\b(customer|own) read|kunde|selbst/;
/** A footnote stands in one of the last rows, in a cell or two. */
const LAST_ROWS = 12;
const CUSTOMER = /^(c|cust|customer|customer read(ing)?|own|self)$/i;

export type Quality = 'actual' | 'estimated' | 'customer' | 'unknown';

/** Mark beside a reading: E, A, C and the words for them. A column named "estimated" answers yes or no. */
export const readQuality = (sheet: Sheet, column: number, row: number): Quality =>
  qualityOf(cellText(sheet.table, row, column), sheet, column);

export const isEstimate = (mark: string): boolean => ESTIMATED.test(mark) || NOT_READ.test(plainWords(mark));

/** The mark beside a number, or a cell that is one. */
const markOf = (text: string): string => markBeside(text) ?? (/^[-+£]?\d{2}/.test(text) ? '' : text);

function qualityOf(text: string, sheet: Sheet, column: number): Quality {
  const cell = markOf(text);
  const isOfEstimates = OF_ESTIMATES.test(plainWords(sheet.columns[column]?.heading ?? ''));
  if (SIGN.test(cell)) {
    const words = legendOf(sheet).get(bareSign(cell));
    if (isOfEstimates || (words !== undefined && (OF_ESTIMATES.test(words) || NOT_READ.test(words))))
      return 'estimated';
    return words !== undefined && OF_CUSTOMER.test(words) ? 'customer' : 'unknown';
  }
  if (isEstimate(cell)) return 'estimated';
  if (YES.test(cell) && isOfEstimates) return 'estimated';
  if (CUSTOMER.test(cell)) return 'customer';
  return cell === '' ? 'unknown' : 'actual';
}

const bareSign = (sign: string): string => sign.replace(')', '');
const legends = new WeakMap<Sheet, ReadonlyMap<string, string>>();

/** What the titles, the headings and the last rows say of signs: "* estimated". */
function legendOf(sheet: Sheet): ReadonlyMap<string, string> {
  const known = legends.get(sheet);
  if (known) return known;
  const { table } = sheet;
  const last = Array.from({ length: Math.min(LAST_ROWS, table.rowCount) }, (_, i) => table.rowCount - 1 - i)
    .map((row) => rowTexts(table, row).filter((cell) => cell !== ''))
    .filter((cells) => cells.length <= 2);
  const texts = [
    ...sheet.preamble.map(({ text }) => text),
    ...sheet.columns.map(({ heading }) => heading),
    ...last.map((cells) => cells.join(' ')),
  ];
  const found = texts.flatMap((text) =>
    [...text.matchAll(EXPLAINED)].map(([, sign, words]) => [sign!, plainWords(words!)] as const),
  );
  const legend = new Map(found);
  legends.set(sheet, legend);
  return legend;
}

/** Names a sign behind the numbers that the file does not explain. */
export function remarkSigns(sheet: Sheet, book: RemarkBook): void {
  const { table, firstRow } = sheet;
  for (const c of sheet.columns) {
    if (!(isNumberColumn(c) && c.marksBeside > 0) && c.meaning.role !== 'quality') continue;
    // Of most files the letters alone tell that no row need be looked at.
    if (!ANY_SIGN.test(table.text)) return;
    for (let row = firstRow; row < table.rowCount; row++) {
      const sign = markOf(cellText(table, row, c.index));
      if (!SIGN.test(sign) || legendOf(sheet).has(bareSign(sign)) || readQuality(sheet, c.index, row) === 'estimated')
        continue;
      book.tally('sign-unknown', 'note', {
        row: table.lineOfRow[row]!,
        column: columnName(sheet, c.index),
        found: sign,
      });
    }
  }
}

/** By its heading, or by cells that are nothing but marks. */
export function findQualityColumn(sheet: Sheet): number | undefined {
  const named = sheet.columns.find(
    (c) =>
      c.meaning.role === 'quality' &&
      c.meaning.bill !== 'opening-kind' &&
      (isWordColumn(c) || c.numbers + c.missing === c.sampled),
  );
  const marked = sheet.columns.filter((c) => isNumberColumn(c) && c.marksBeside > 0);
  const beside = marked.find((c) => c.meaning.bill !== 'opening') ?? marked[0];
  return (named ?? sheet.columns.find(isMarkColumn) ?? beside ?? sheet.columns.find((c) => tellsEstimates(sheet, c)))
    ?.index;
}

/** More than so many different words are remarks or names. A judgement. */
const MOST_MARKS = 6;

/** A column of a few words again and again, one of which says that a value was not read, whatever stands above it. */
function tellsEstimates({ table, firstRow }: Sheet, c: ColumnFacts): boolean {
  if (c.numbers + c.dates + c.clocks > 0 || !['unknown', 'quality', 'index'].includes(c.meaning.role)) return false;
  const words = new Set<string>();
  for (let row = firstRow; row < table.rowCount && words.size <= MOST_MARKS; row++)
    words.add(cellText(table, row, c.index));
  words.delete('');
  if (words.size === 0 || words.size > MOST_MARKS) return false;
  // Letters may be of fuels or ways as well: E beside G is electricity, beside B what is sent out.
  const isLetters = words.size > 1 && [...words].every((word) => /^[EARWMVC]$/.test(word));
  return [...words].some(
    (word) => NOT_READ.test(plainWords(word)) || (isLetters && word === 'E') || /^est\.?$/i.test(word),
  );
}

/** Which readings bear the mark of an estimate. */
export function estimatedRows(
  sheet: Sheet,
  column: number,
  raw: { readonly rows: ArrayLike<number>; readonly count: number },
): Uint8Array {
  const marks = new Uint8Array(raw.count);
  // A few words again and again.
  const known = new Map<string, boolean>();
  for (let i = 0; i < raw.count; i++) {
    const text = cellText(sheet.table, raw.rows[i]!, column);
    const isEstimated = known.get(text) ?? qualityOf(text, sheet, column) === 'estimated';
    known.set(text, isEstimated);
    if (isEstimated) marks[i] = 1;
  }
  return marks;
}
