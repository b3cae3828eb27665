/** A workbook to the sheet that holds the data. */
import { tell } from '../../model/shapes/told.ts';
import { chooseSheet, type Written } from '../layout/choose-sheet.ts';
import type { Sheet } from '../layout/sheet.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { readParts } from './parts.ts';
import { readSheetTable, type SheetTable } from './sheet-table.ts';
import { MAX_UNPACKED_BYTES, unpack } from './unpack.ts';

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
    book.add(parts.fault === '' ? 'workbook-locked' : 'workbook-broken', 'refusal', { found: parts.fault });
    return undefined;
  }
  const written: Written[] = [];
  let damaged = 0;
  for (const { name, part } of parts.sheets) {
    const own = unpacked.parts.get(part);
    const read: SheetTable | undefined = own && readSheetTable(own, parts);
    if (!read) damaged++;
    else if (read.table.rowCount > 1) written.push({ name, table: read.table, hasNumbers: read.numbers > 0 });
  }
  if (written.length > 0) return chooseSheet(fileName, written, wanted, book);
  if (damaged > 0) book.add('workbook-broken', 'refusal', { found: 'its sheet cannot be read' });
  else book.add('workbook-empty', 'refusal');
  return undefined;
}
