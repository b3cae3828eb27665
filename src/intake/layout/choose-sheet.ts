/** Of the sheets of a workbook and the tables on them, or of the tables of a file, the one that is read. */
import { listNames, type RemarkBook } from '../terms/remark-book.ts';
import type { Table } from '../text/table.ts';
import { isNumberColumn } from './column-facts.ts';
import { withoutRulers } from './find-headings.ts';
import { homesOf } from './homes-of-list.ts';
import { findGoingOn, joinSheets, layOutByName } from './join-sheets.ts';
import { tablesOf } from './several-tables.ts';
import type { Sheet } from './sheet.ts';
import { namesWithoutPeople } from './without-people.ts';

export interface Written {
  /** As it is written; empty where the file is one table. */
  readonly name: string;
  readonly table: Table;
  readonly hasNumbers: boolean;
}

/** The first with dates, unless the installer names another, by its name as written or as kept. */
export function chooseSheet(
  fileName: string,
  written: readonly Written[],
  wanted: string | undefined,
  book: RemarkBook,
): Sheet {
  const tables = written.flatMap((one) => {
    const table = withoutRulers(one.table) ?? one.table;
    const homes = homesOf(table);
    const parts = homes ?? tablesOf(table);
    return parts.map((part) => ({
      ...one,
      isHome: homes !== undefined,
      ...part,
      name: [one.name, part.name].filter((word) => word !== '').join(': '),
    }));
  });
  const kept = namesWithoutPeople(tables.map(({ name }) => name));
  const opened = tables.map((one, at) => ({
    ...one,
    name: kept[at]!,
    written: one.name,
    sheet: layOutByName(fileName, one.name, one.table),
  }));
  if (opened.length === 1 && opened[0]!.written === '') return opened[0]!.sheet;
  // A page of notes may have dates, but no amounts.
  const withData = opened.filter(
    ({ sheet: { dateColumn, columns } }) =>
      dateColumn >= 0 && columns.some((c) => c.index !== dateColumn && isNumberColumn(c)),
  );
  const groups = findGoingOn(withData.filter(({ isHome }) => !isHome));
  const joined = groups.map((going) => ({
    ...going[0]!,
    ...namesOfAll(going),
    going,
    sheet: joinSheets(
      fileName,
      going.map(({ sheet }) => sheet),
    ),
  }));
  const dated = [...joined, ...withData.filter((one) => !groups.some((going) => going.includes(one)))];
  opened.unshift(...joined);
  const first = dated[0] ?? opened[0]!;
  const taken = opened.find((o) => o.name === wanted || o.written === wanted) ?? first;
  const own = joined.find((one) => one === taken);
  if (own)
    book.add('sheets-joined', 'note', { count: own.going.length, found: listNames(own.going.map(({ name }) => name)) });
  const isSettled = opened.length === 1 || (own && dated.length === 1);
  if (taken.name !== wanted && taken.written !== wanted && !isSettled) {
    const homes = dated.filter(({ isHome }) => isHome);
    const named = homes.length > 0 ? homes : dated;
    const ofTables = tables.length > written.length ? 'sheet-tables-asked' : 'sheet-asked';
    const asked = opened.some((o) => o.isHome) ? 'sheet-homes-asked' : ofTables;
    book.add(dated.length > 1 ? asked : 'sheet-taken', dated.length > 1 ? 'question' : 'note', {
      count: named.length,
      found: listNames(named.map((o) => o.name)),
      expected: taken.name,
    });
  }
  const names = opened.map((o) => o.name);
  return {
    ...taken.sheet,
    workbook: { sheets: names, sheet: taken.name, isFirst: taken === first, hasNumbers: taken.hasNumbers },
  };
}

const namesOfAll = (all: readonly { readonly name: string }[]): { name: string; written: string } => {
  const name = all
    .map((one) => one.name)
    .join(' + ')
    .slice(0, LONGEST_NAME);
  return { name, written: name };
};
/** As choices keep them. */
const LONGEST_NAME = 200;
