/** Rows of several meters or homes, each read on days or at seconds of its own. */
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ } from '../dates/stamp-reader.ts';
import { countAsNumber } from '../numbers/read-number.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isNumberColumn, numberEitherWay } from './column-facts.ts';
import { plainWords, unitOfWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { isDayFirst } from './sheet-step.ts';

type Groups = ReadonlyMap<string, readonly number[]>;

const SAMPLE_ROWS = 4000;
/** Counters fall so seldom, and several that take turns so often, as a share of their steps. Judgements. */
const SELDOM = 0.01;
const OFTEN = 0.2;
/** So many rows of each make their going up telling. A judgement. */
const LEAST_OF_COUNTER = 20;

/** Whether a number goes up under each word and up and down over all: counters that take turns, each at its own seconds. */
export function countApart({ table, columns, firstRow }: Sheet, groups: Groups): boolean {
  const sampled = (rows: readonly number[]) => rows.filter((row) => row < firstRow + SAMPLE_ROWS);
  const parts = [...groups.values()].map(sampled);
  if (parts.some((rows) => rows.length < LEAST_OF_COUNTER)) return false;
  const all = parts.flat().sort((a, b) => a - b);
  return columns.some((c) => {
    if (!isNumberColumn(c) || c.counting || !['value', 'reading'].includes(c.meaning.role)) return false;
    const numbersOf = (rows: readonly number[]) =>
      rows.map((row) => numberEitherWay(cellText(table, row, c.index))).filter((n) => !Number.isNaN(n));
    const falls = (numbers: readonly number[]) => numbers.filter((n, i) => n < numbers[i - 1]!).length;
    const goesUp = (numbers: readonly number[]) =>
      numbers[0]! < numbers.at(-1)! && falls(numbers) <= numbers.length * SELDOM;
    return parts.every((rows) => goesUp(numbersOf(rows))) && falls(numbersOf(all)) > all.length * OFTEN;
  });
}

/** What has a meter of its own. */
const OF_METER =
  /\b(meter|zahler|compteur|contador|contatore|teller|maler|matare|device|gerat)( ?(no|nr|num\w*|id|serial\w*|name|point|ref\w*)\b\.?)*$|\b(mpan|mprn|nmi|icp|pdl|prm|cups|pod|ean|esi ?id|uprn)\b|zahlpunkt|lokation\b|malepunkt|anlaggning|serial|zahlernummer|meternummer|malernummer|matricol|matricul|\b(account|customer|client|contract|konto|kunden?|klant|cliente|contrat\w*)( ?(no|nr|number|id|ref\w*)\b\.?)?$|^site\b|\baddress|adress|anschrift|direccion|indirizzo|propert|premis|household|\b(house|home|flat|apartment|dwelling|plot)\b( ?(no|nr|number|id|name)\.?)?$|building|gebaude|liegenschaft|\bobjekt|wohnung|wohneinheit|logement|vivienda|woning/;

/** Whether a heading is of meters or homes by their names or numbers. */
export const namesMeters = ({ heading, meaning: { unit, carrier } }: ColumnFacts): boolean =>
  unit === undefined && carrier === undefined && OF_METER.test(plainWords(heading));

/** Numbers under the name of a building may be what it used. */
export const numbersMeters = (column: ColumnFacts): boolean =>
  namesMeters(column) &&
  /^(site|plot)$|serial|account|konto|\b(no|nr|number|id|ref\w*)\b|(nummer|matric\w*)$/.test(
    plainWords(column.heading),
  );

/** A meter that was exchanged and one slip come again less often. */
const LEAST_TURNS = 3;
/** Rows of one to those of another, where they are told apart by numbers. A judgement. */
const ALIKE = 1.3;
/** How far the steps of one meter's dates are from each other, as a share of the longest, and those of two meters. Judgements. */
const [EVEN, UNEVEN] = [0.3, 0.5];

/**
 * Whether in order of time the rows come from one to another and back, as those of two meters do: one that followed the
 * other does not. Under words that are not known to be of meters, where each has even steps and all together have not.
 * What goes up over all is one counter.
 */
export function areReadInTurn(sheet: Sheet, column: ColumnFacts, groups: Groups): boolean {
  if ([...groups.keys()].some((word) => unitOfWords(plainWords(word)) !== undefined)) return false;
  const counts = [...groups.values()].map(({ length }) => length);
  if (isNumberColumn(column) && Math.max(...counts) > ALIKE * Math.min(...counts)) return false;
  const dayFirst = isDayFirst(sheet);
  const parts = [...groups].map(([word, rows]) =>
    rows.map((row) => ({ word, row, at: momentOf(sheet, row, dayFirst) })),
  );
  const inTime = parts.flat().toSorted((a, b) => a.at - b.at);
  const turns = inTime.filter(({ word }, i) => i > 0 && word !== inTime[i - 1]!.word).length;
  const goesUp = ({ index }: ColumnFacts) => {
    const numbers = inTime.map(({ row }) => numberEitherWay(cellText(sheet.table, row, index)));
    return !numbers.some((number, i) => number < numbers[i - 1]!);
  };
  const isOneCounter = sheet.columns.some((c) => isNumberColumn(c) && c.meaning.role === 'reading' && goesUp(c));
  if (turns < Math.max(LEAST_TURNS, groups.size) || isOneCounter) return false;
  return namesMeters(column) || (parts.every((part) => spread(part) <= EVEN) && spread(inTime) >= UNEVEN);
}

function spread(rows: readonly { readonly at: number }[]): number {
  const at = rows.map((row) => row.at).toSorted((a, b) => a - b);
  const steps = at.flatMap((one, i) => (i > 0 && one > at[i - 1]! ? [one - at[i - 1]!] : []));
  return steps.length < LEAST_TURNS ? Number.NaN : 1 - Math.min(...steps) / Math.max(...steps);
}

const reader = createStampReader();
function momentOf({ table, dateColumn, dateForm }: Sheet, row: number, dayFirst: boolean): number {
  const cell = cellText(table, row, dateColumn);
  if (dateForm !== 'calendar') return countAsNumber(cell);
  return readStamp(cell, 0, cell.length, dayFirst, reader) === READ ? reader.civilMinute : Number.NaN;
}
