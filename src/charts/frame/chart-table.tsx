/** The data of a picture as a real table. */
export interface ChartColumn {
  readonly name: string;
  readonly number?: boolean;
}
export interface ChartRow {
  readonly cells: readonly string[];
  /** The heat pump's row, set bold. */
  readonly ours?: boolean;
}
export interface ChartTable {
  readonly caption: string;
  readonly columns: readonly ChartColumn[];
  readonly rows: readonly ChartRow[];
}

const alignment = (column: ChartColumn | undefined) => (column?.number ? 'number' : undefined);

export function ChartTableView({ table }: { readonly table: ChartTable }) {
  return (
    <table className="chart-table">
      <caption>{table.caption}</caption>
      <thead>
        <tr>
          {table.columns.map((column) => (
            <th key={column.name} scope="col" className={alignment(column)}>
              {column.name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {table.rows.map((row) => (
          <tr key={row.cells.join('|')} className={row.ours ? 'ours' : undefined}>
            {row.cells.map((cell, index) => {
              const column = table.columns[index];
              return index === 0 ? (
                <th key={column?.name} scope="row">
                  {cell}
                </th>
              ) : (
                <td key={column?.name} className={alignment(column)}>
                  {cell}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

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
