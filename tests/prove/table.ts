/** Proofs as tables: every part answers in this shape, so that one script prints them all. */

export interface ProofTable {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
  /** Whether every row lies within its stated limit. */
  readonly within: boolean;
}

export function printTable({ title, columns, rows, within }: ProofTable): string {
  const cells = [columns, ...rows].map((row) => row.map(String));
  const widths = columns.map((_, i) => Math.max(...cells.map((row) => row[i]?.length ?? 0)));
  const lines = cells.map((row) =>
    row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!))).join('  '),
  );
  const rule = widths.map((width) => '-'.repeat(width)).join('  ');
  return [title, '', lines[0], rule, ...lines.slice(1), '', within ? 'Within the limits.' : 'OUTSIDE THE LIMITS.'].join(
    '\n',
  );
}
