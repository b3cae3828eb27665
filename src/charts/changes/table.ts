import { signedPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { ChangeRow } from './series.ts';

export function changesTable(rows: readonly ChangeRow[]): ChartTable {
  return {
    caption: say('Each change by itself, all else as it is: what it does to the cost of a year.'),
    columns: [{ name: say('Change') }, { name: say('A year'), number: true }],
    rows: rows.map((row) => ({ cells: [row.name, signedPounds(row.pence)] })),
  };
}
