/** A table as comma-separated text. */
import type { ChartTable } from './chart-table.tsx';

/** A negative number with its money or unit, and nothing behind it that could be reckoned or run. */
const AMOUNT = /^-[£€$]?\d[\d.,]*(?:[\s\u00A0\u202F]?[\p{L}\p{No}%°€$£·\s]*)$/u;

// A cell that a spreadsheet would take for a formula gets an apostrophe; a true minus becomes a hyphen that it can read.
const cell = (text: string): string => {
  const plain = text.replaceAll('−', '-');
  const safe = /^[=+@\t\r]/.test(plain) || (plain.startsWith('-') && !AMOUNT.test(plain)) ? `'${plain}` : plain;
  return quoted(safe);
};

/** A cell of comma-separated text, as RFC 4180 has it. */
export const quoted = (text: string): string => (/[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** The table as comma-separated text, with a byte-order mark so that spreadsheets read the pound sign. */
export function tableCsv(table: ChartTable): string {
  const rows = [table.columns.map((column) => column.name), ...table.rows.map((row) => row.cells)];
  return `\uFEFF${rows.map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}
