/** Sheets of a workbook that are called by years, quarters or months and go on in each other: one record. */
import { monthOfName } from '../dates/month-names.ts';
import { quarterOfName } from '../dates/quarter-names.ts';
import { tableOfRows } from '../text/rewrite-cells.ts';
import { cellText, rowTexts, type Table } from '../text/table.ts';
import { isNumberColumn } from './column-facts.ts';
import { plainWords } from './headings.ts';
import { layOutSheet, type Sheet } from './sheet.ts';
import { PLACE } from './titles.ts';

interface Named {
  readonly written: string;
  readonly sheet: Sheet;
}

const YEAR = /(?<!\d)(?:19|20)\d\d(?!\d)/g;
const SHORT_YEAR = /(?<![\d.])\d\d(?![\d.])/g;
/** Names of months alone may be names of places. */
const LEAST_MONTHS = 3;

/** A sheet whose days, months or quarters have no year, with the one that its name says. */
export function layOutByName(fileName: string, name: string, table: Table): Sheet {
  const sheet = layOutSheet(fileName, table);
  const [year, ...others] = new Set(name.match(YEAR));
  if (sheet.dateColumn >= 0 || year === undefined || others.length > 0) return sheet;
  const rows = Array.from({ length: table.rowCount }, (_, row) => ({
    line: table.lineOfRow[row]!,
    cells: rowTexts(table, row),
  }));
  const dated = layOutSheet(fileName, tableOfRows([{ line: 1, cells: [year] }, ...rows]));
  return dated.dateColumn >= 0 ? dated : sheet;
}

/** What a name says beside when; undefined where it does not say when, or is one of a street. */
function restOf(name: string): { rest: string; hasYear: boolean } | undefined {
  if (plainWords(name).search(PLACE) >= 0) return undefined;
  const bare = name.replaceAll(YEAR, ' ').replaceAll(SHORT_YEAR, ' ');
  const words = bare.split(/[\s_.,/–-]+/).filter((word) => word !== '');
  const others = words.filter((word) => monthOfName(word) === 0 && quarterOfName(word) === 0);
  if (bare === name && others.length === words.length) return undefined;
  return { rest: others.join(' ').toLowerCase(), hasYear: bare !== name };
}

/** Groups of those with dates and amounts whose names and headings differ by nothing but when, and of which no two have one date. */
export function findGoingOn<T extends Named>(dated: readonly T[]): (readonly T[])[] {
  const said = dated.map((one) => ({ one, said: restOf(one.written) }));
  const groups = Map.groupBy(
    said.filter(({ said }) => said !== undefined),
    ({ one, said }) =>
      [said!.rest, said!.hasYear, ...one.sheet.columns.map(({ heading }) => wordsOf(heading))].join('\t'),
  );
  return [...groups.values()].flatMap((group) => {
    const all = group.map(({ one }) => one);
    return all.length >= (group[0]!.said!.hasYear ? 2 : LEAST_MONTHS) && haveOwnDates(all) ? [all] : [];
  });
}

function haveOwnDates(all: readonly Named[]): boolean {
  const known = new Set<string>();
  return all.every(({ sheet }) => {
    const own = datesOf(sheet);
    const isNew = ![...own].some((date) => known.has(date));
    for (const date of own) known.add(date);
    return isNew && sheet.columns.some((c) => c.index !== sheet.dateColumn && isNumberColumn(c));
  });
}

/** A heading may name the year too. */
const wordsOf = (heading: string): string => heading.replaceAll(YEAR, '').trim().toLowerCase();

function datesOf({ table, dateColumn, firstRow }: Sheet): Set<string> {
  const dates = new Set<string>();
  for (let row = firstRow; row < table.rowCount; row++) {
    const cell = cellText(table, row, dateColumn);
    if (/\d/.test(cell)) dates.add(cell);
  }
  return dates;
}

/** Their rows one below the other, under the headings of the first. */
export function joinSheets(fileName: string, sheets: readonly Sheet[]): Sheet {
  const rows = sheets.flatMap(({ table, firstRow }, i) =>
    Array.from({ length: table.rowCount }, (_, row) => row)
      .slice(i === 0 ? 0 : firstRow)
      .map((row) => ({ line: table.lineOfRow[row]!, cells: rowTexts(table, row) })),
  );
  return layOutSheet(fileName, tableOfRows(rows));
}
