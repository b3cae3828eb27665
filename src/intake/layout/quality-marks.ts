/** Marks of how a reading came about: read, estimated, or read by the customer. */
import { markBeside } from '../numbers/read-number.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isMarkColumn, isNumberColumn, isWordColumn } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';

const ESTIMATED = /^(e|est|est\.|projected|~|≈|ca\.?|circa|c\.|approx\.?|approximate(ly)?|about|\*|env\.?|environ)$/i;
/** Words for a value that was not read, by their beginning, in the languages of meter files; accents are left off. */
const NOT_READ =
  /^(estim|geschat|ersatz|hochgerechn|rechnerisch|berechnet|interpol|substitut|stima|szacun|odhad|nahrad|arvio|ansl[a]?e?[tg]|skon|berakn|beregn|berekend|vervang|valeur (de )?remplac|remplace|sustitu|previst)/;
/** In a column that asks whether a reading is an estimate. */
const YES = /^(y|yes|true|1|ja|oui|si|sí)$/i;
const OF_ESTIMATES = /estim|schatz|stimat|geschat|anslaet/;
const CUSTOMER = /^(c|cust|customer|customer read(ing)?|own|self)$/i;

export type Quality = 'actual' | 'estimated' | 'customer' | 'unknown';

/** Mark beside a reading: E, A, C and the words for them. A column named "estimated" answers yes or no. */
export const readQuality = (sheet: Sheet, column: number, row: number): Quality =>
  qualityOf(cellText(sheet.table, row, column), sheet.columns[column]?.heading);

function qualityOf(text: string, heading = ''): Quality {
  const cell = markBeside(text) ?? (/^[-+£]?\d{2}/.test(text) ? '' : text);
  if (ESTIMATED.test(cell) || NOT_READ.test(plainWords(cell))) return 'estimated';
  if (YES.test(cell) && OF_ESTIMATES.test(plainWords(heading))) return 'estimated';
  if (CUSTOMER.test(cell)) return 'customer';
  return cell === '' ? 'unknown' : 'actual';
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
    const isEstimated = known.get(text) ?? qualityOf(text, sheet.columns[column]?.heading) === 'estimated';
    known.set(text, isEstimated);
    if (isEstimated) marks[i] = 1;
  }
  return marks;
}
