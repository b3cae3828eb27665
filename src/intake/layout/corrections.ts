/** Rows of a table by hand that correct others: "Mar 2023 correction; -40" is a row of March below nought. */
import { isDated } from '../dates/read-stamp.ts';
import { countAsNumber } from '../numbers/read-number.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellCount, cellText, type Table } from '../text/table.ts';
import { MOST_BY_HAND } from './carry-dates.ts';

/** From memory of bills. */
const CORRECTION =
  /(?<!\p{L})(correct(ion|ed)|adjust(ment|ed)|credit(ed)?( note)?|revers(al|ed)|refund|rebill(ed)?|re-?billing|gutschrift|korrektur|korrigiert|storno|stornierung|berichtigung|nachberechnung|erstattung|avoir|r[eé]gularisation|rectification|annulation|abono|regularizaci[oó]n|rectificaci[oó]n|anulaci[oó]n|conguaglio|rettifica|nota di credito|creditnota|correctie|verrekening|kredit(nota)?|korrektion|korrigering|regulering|korreksjon|korekta|zwrot|oprava|dobropis|hyvitys|oikaisu|corre[cç][aã]o|acerto)(?!\p{L})/iu;

/** Whether the words of a row say that it corrects others. */
export const saysCorrection = (text: string): boolean => CORRECTION.test(text);

/**
 * The date of a row below nought without the word for a correction beside it; a row above nought may be in the place of
 * another as well, and is left as it is. Undefined where there are none.
 */
export function plainCorrections(table: Table): Table | undefined {
  if (table.rowCount > MOST_BY_HAND || !CORRECTION.test(table.text)) return undefined;
  const plain = new Map<number, string>();
  for (let row = 0; row < table.rowCount; row++) {
    const amounts: number[] = [];
    const dates: (readonly [cell: number, text: string])[] = [];
    for (let column = 0; column < cellCount(table, row); column++) {
      const cell = cellText(table, row, column);
      const amount = countAsNumber(cell);
      if (!Number.isNaN(amount)) amounts.push(amount);
      else if (cell.length <= 60 && CORRECTION.test(cell))
        dates.push([
          table.rowStart[row]! + column,
          cell.replace(CORRECTION, ' ').replaceAll(/^[\s:,;()–-]+|[\s:,;()–-]+$/gu, ''),
        ]);
    }
    if (amounts[0]! < 0)
      for (const [cell, text] of dates) if (text.split(/ [-–] /).every((one) => isDated(one))) plain.set(cell, text);
  }
  if (plain.size === 0) return undefined;
  return rewriteCells(table, (row, column) => {
    const text = plain.get(table.rowStart[row]! + column);
    return text === undefined ? undefined : [text];
  });
}
