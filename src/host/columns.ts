/** Rows of text in columns: the first to the left, figures to the right. */
export function inColumns(rows: readonly (readonly string[])[]): string[] {
  const widths = rows.reduce<number[]>((most, row) => row.map((cell, i) => Math.max(cell.length, most[i] ?? 0)), []);
  return rows.map((row) =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!)))
      .join('  ')
      .trimEnd(),
  );
}
