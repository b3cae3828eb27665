/** From bytes to a sheet, or to a refusal that says what kind of file it is and what to do with it. */
import { tell } from '../model/shapes/told.ts';
import { type IntakeChoices, type IntakeContext, LARGEST_EVIDENCE_BYTES } from './intake.ts';
import { chooseSheet } from './layout/choose-sheet.ts';
import type { Sheet } from './layout/sheet.ts';
import { tabsForTypedList } from './layout/typed-list.ts';
import { stageOf } from './terms/progress.ts';
import { listNames, type RemarkBook } from './terms/remark-book.ts';
import type { RemarkCode } from './terms/remark-codes.ts';
import { tabsForGaps, tabsForSpaces } from './text/align.ts';
import { decodeText } from './text/decode.ts';
import { recogniseForeign } from './text/foreign.ts';
import { linesOfHtml } from './text/html-rows.ts';
import { isJson, type Listed, linesOfJson } from './text/json-rows.ts';
import { findSeparator } from './text/separator.ts';
import { splitTable } from './text/table.ts';
import { linesOfXml } from './text/xml-rows.ts';
import { openWorkbook } from './workbook/open-workbook.ts';

export function openSheet(
  fileName: string,
  bytes: Uint8Array,
  context: Pick<IntakeContext, 'onProgress'>,
  book: RemarkBook,
  choices: Pick<IntakeChoices, 'sheet' | 'leaveUnread'> = {},
): Sheet | undefined {
  if (bytes.length === 0) {
    book.add('file-empty', 'refusal');
    return undefined;
  }
  if (bytes.length > LARGEST_EVIDENCE_BYTES) {
    remarkTooLarge(bytes, '', 'refusal', book);
    return undefined;
  }
  const foreign = recogniseForeign(bytes);
  if (foreign === 'spreadsheet') return openWorkbook(fileName, bytes, choices.sheet, book, context.onProgress);
  const fromXml = foreign === 'XML' ? linesOfXml(bytes) : undefined;
  if (foreign === 'web page') return openPage(fileName, bytes, choices.sheet, book);
  if (foreign && fromXml === undefined) {
    book.add('file-foreign', 'refusal', { found: foreign });
    return undefined;
  }
  context.onProgress?.(0);
  const decoded = decodeText(bytes);
  context.onProgress?.(0.2);
  if ('fault' in decoded) {
    book.add(decoded.fault === 'empty' ? 'file-empty' : 'file-binary', 'refusal');
    return undefined;
  }
  if (decoded.encoding === 'Latin-1') book.add('encoding-taken', 'note', { found: decoded.encoding });
  const plain = withoutFormulas(decoded.text);
  const listed = fromXml ?? linesOfJson(plain);
  if (listed === undefined && isJson(plain)) {
    book.add('json-not-read', 'refusal');
    return undefined;
  }
  if (listed) remarkLeft(listed, choices, book);
  const found = findSeparator(plain);
  const isLoose = found.separator === ',' || !found.isClear;
  const aligned =
    listed?.text ??
    (isLoose ? tabsForGaps(decoded.text) : undefined) ??
    (found.isClear ? undefined : (tabsForSpaces(decoded.text) ?? tabsForTypedList(decoded.text)));
  const { text, separator, start } =
    aligned === undefined ? { text: plain, ...found } : { text: aligned, separator: '\t', start: 0 };
  const isAscii = decoded.encoding === 'UTF-8' && text === decoded.text && text.length === bytes.length;
  const codes = isAscii ? bytes : undefined;
  const table = splitTable(text, separator, start, stageOf(context.onProgress, 0.2, 1), codes);
  if (!table) {
    book.add('file-too-many-cells', 'refusal');
    return undefined;
  }
  const sheet = chooseSheet(fileName, [{ name: '', table, hasNumbers: false }], choices.sheet, book);
  if (commaInsideNumbers(sheet)) {
    book.add('comma-inside-numbers', 'refusal', {
      row: table.lineOfRow[sheet.firstRow]!,
      found: table.text
        .slice(table.cellFrom[table.rowStart[sheet.firstRow]!], table.cellTo[table.rowStart[sheet.firstRow + 1]! - 1])
        .slice(0, 60),
    });
    return undefined;
  }
  return sheet;
}

/** What a tree of names and values has in lists that bear no times is not read: named, and asked where it may be a use. */
function remarkLeft({ left }: Listed, { leaveUnread }: Pick<IntakeChoices, 'leaveUnread'>, book: RemarkBook): void {
  const [maybe, others] = [left.filter(({ mayBeUse }) => mayBeUse), left.filter(({ mayBeUse }) => !mayBeUse)];
  const say = (code: RemarkCode, weight: 'note' | 'question', lists: typeof left) => {
    const [first] = lists;
    if (first) book.add(code, weight, { found: listNames(lists.map(({ name }) => name)), count: first.count });
  };
  say('lists-left-out', 'note', leaveUnread ? left : others);
  if (!leaveUnread) say('unread-lists-asked', 'question', maybe);
}

/** The tables of a page, as portals also save them under a spreadsheet's name; refused where none has dates. */
function openPage(
  fileName: string,
  bytes: Uint8Array,
  wanted: string | undefined,
  book: RemarkBook,
): Sheet | undefined {
  const decoded = decodeText(bytes);
  const pages = 'fault' in decoded ? [] : linesOfHtml(decoded.text);
  const tables = pages.flatMap((lines) => splitTable(lines, '\t', 0) ?? []);
  const written = tables.map((table, i) => ({ name: tables.length > 1 ? `${i + 1}` : '', table, hasNumbers: false }));
  if (written.length > 0) {
    const sheet = chooseSheet(fileName, written, wanted, book);
    if (sheet.dateColumn >= 0) return sheet;
  }
  book.add('file-foreign', 'refusal', { found: 'web page' });
  return undefined;
}

/** @param packed name of the file within an archive */
export function remarkTooLarge(bytes: Uint8Array, packed: string, weight: 'refusal' | 'note', book: RemarkBook): void {
  book.add('file-too-large', weight, {
    foundTold: tell('so-much-of', {
      amount: Math.ceil(bytes.length / 1_048_576),
      unit: packed === '' ? 'MB' : `MB (${packed})`,
    }),
    expectedTold: tell('at-most-megabytes', { megabytes: LARGEST_EVIDENCE_BYTES / 1_048_576 }),
  });
}

const SEARCHED = 20_000;

/** ="00123", as some files write what a spreadsheet shall not take for a number, is the text within. */
const withoutFormulas = (text: string): string =>
  /(^|[,;\t|])"?="/m.test(text.slice(0, SEARCHED))
    ? text.replaceAll(/(^|[,;\t|])(?:"=""([^"\n]*)"""|="([^"\n]*)")/gm, '$1"$2$3"')
    : text;

/** Two headings and three cells in every row, the last two whole numbers: a decimal comma in a file separated by commas. */
function commaInsideNumbers(sheet: Sheet): boolean {
  const { table, headingRow, firstRow, columns } = sheet;
  if (table.separator !== ',' || headingRow < 0 || sheet.dateColumn < 0 || firstRow >= table.rowCount) return false;
  const headingCells = table.rowStart[headingRow + 1]! - table.rowStart[headingRow]!;
  if (headingCells !== 2 || columns.length !== 3) return false;
  const last = columns[2]!;
  return last.numbers >= last.sampled * 0.8 && Number.isInteger(last.smallest) && last.smallest >= 0;
}
