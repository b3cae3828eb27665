/** Of the sheets of a workbook and the tables on them, or of the tables of a file, the one that is read. */
import { listNames, type RemarkBook } from '../terms/remark-book.ts';
import type { Table } from '../text/table.ts';
import { isNumberColumn } from './column-facts.ts';
import { homesOf } from './homes-of-list.ts';
import { tablesOf } from './several-tables.ts';
import { layOutSheet, type Sheet } from './sheet.ts';
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
    const homes = homesOf(one.table);
    const parts = homes ?? tablesOf(one.table);
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
    sheet: layOutSheet(fileName, one.table),
  }));
  if (opened.length === 1 && opened[0]!.written === '') return opened[0]!.sheet;
  // A page of notes may have dates, but no amounts.
  const dated = opened.filter(
    ({ sheet: { dateColumn, columns } }) =>
      dateColumn >= 0 && columns.some((c) => c.index !== dateColumn && isNumberColumn(c)),
  );
  const first = dated[0] ?? opened[0]!;
  const taken = opened.find((o) => o.name === wanted || o.written === wanted) ?? first;
  if (taken.name !== wanted && taken.written !== wanted && opened.length > 1) {
    const ofTables = opened.length > written.length ? 'sheet-tables-asked' : 'sheet-asked';
    const asked = opened.some((o) => o.isHome) ? 'sheet-homes-asked' : ofTables;
    book.add(dated.length > 1 ? asked : 'sheet-taken', dated.length > 1 ? 'question' : 'note', {
      count: dated.length,
      found: listNames(dated.map((o) => o.name)),
      expected: taken.name,
    });
  }
  const names = opened.map((o) => o.name);
  return {
    ...taken.sheet,
    workbook: { sheets: names, sheet: taken.name, isFirst: taken === first, hasNumbers: taken.hasNumbers },
  };
}
