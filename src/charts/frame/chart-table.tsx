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
