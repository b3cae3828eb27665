/** A workbook to the sheet that holds the data: the first with dates, unless the installer names another. */
import { tell } from '../../model/shapes/told.ts';
import { isNumberColumn } from '../layout/column-facts.ts';
import { layOutSheet, type Sheet } from '../layout/sheet.ts';
import { namesWithoutPeople } from '../layout/without-people.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { readParts } from './parts.ts';
import { readSheetTable, type SheetTable } from './sheet-table.ts';
import { MAX_UNPACKED_BYTES, unpack } from './unpack.ts';

interface Opened {
  /** As it is kept. */
  readonly name: string;
  readonly written: string;
  readonly sheet: Sheet;
  readonly numbers: number;
}

/** Whether the archive has the record that ends one ("PK" 5 6), which may be followed by a comment of up to 64 kB. */
function hasEnd(bytes: Uint8Array): boolean {
  for (let at = bytes.length - 22; at >= Math.max(0, bytes.length - 22 - 0xffff); at--) {
    if (bytes[at] === 0x50 && bytes[at + 1] === 0x4b && bytes[at + 2] === 5 && bytes[at + 3] === 6) return true;
  }
  return false;
}

export function openWorkbook(
  fileName: string,
  bytes: Uint8Array,
  wanted: string | undefined,
  book: RemarkBook,
  onProgress?: (share: number) => void,
): Sheet | undefined {
  const unpacked = unpack(bytes, onProgress);
  if ('fault' in unpacked) {
    if (unpacked.fault === 'too large')
      book.add('workbook-too-large', 'refusal', {
        foundTold: unpacked.found,
        expectedTold: tell('at-most-megabytes', { megabytes: MAX_UNPACKED_BYTES / 1_048_576 }),
      });
    else book.add('workbook-broken', 'refusal', { foundTold: unpacked.found });
    return undefined;
  }
  const parts = readParts(unpacked.parts);
  if ('fault' in parts) {
    if (parts.fault === '' && !hasEnd(bytes)) book.add('workbook-broken', 'refusal', { found: 'it is cut off' });
    else book.add(parts.fault === '' ? 'workbook-locked' : 'workbook-broken', 'refusal', { found: parts.fault });
    return undefined;
  }
  const opened: Opened[] = [];
  let damaged = 0;
  const kept = namesWithoutPeople(parts.sheets.map(({ name }) => name));
  for (const [at, { name: written, part }] of parts.sheets.entries()) {
    const name = kept[at]!;
    const own = unpacked.parts.get(part);
    const read: SheetTable | undefined = own && readSheetTable(own, parts);
    if (!read) damaged++;
    else if (read.table.rowCount > 1)
      opened.push({ name, written, sheet: layOutSheet(fileName, read.table), numbers: read.numbers });
  }
  if (opened.length === 0) {
    if (damaged > 0) book.add('workbook-broken', 'refusal', { found: 'its sheet cannot be read' });
    else book.add('workbook-empty', 'refusal');
    return undefined;
  }
  // A page of notes may have dates, but no amounts.
  const dated = opened.filter(
    ({ sheet: { dateColumn, columns } }) =>
      dateColumn >= 0 && columns.some((c) => c.index !== dateColumn && isNumberColumn(c)),
  );
  const first = dated[0] ?? opened[0]!;
  const taken = opened.find((o) => o.name === wanted || o.written === wanted) ?? first;
  const names = opened.map((o) => o.name);
  if (taken.name !== wanted && taken.written !== wanted && opened.length > 1)
    book.add(dated.length > 1 ? 'sheet-asked' : 'sheet-taken', dated.length > 1 ? 'question' : 'note', {
      count: dated.length,
      found: dated
        .map((o) => o.name)
        .join(', ')
        .slice(0, 120),
      expected: taken.name,
    });
  const workbook = { sheets: names, sheet: taken.name, isFirst: taken === first, hasNumbers: taken.numbers > 0 };
  return { ...taken.sheet, workbook };
}
