import { exactPounds, unknown } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { MonthlySeries } from './series.ts';

const cell = (pence: number | null): string => (pence === null ? unknown() : exactPounds(pence));
const total = (values: readonly (number | null)[]): number | null =>
  values.every((value) => value !== null) ? values.reduce<number>((sum, value) => sum + (value ?? 0), 0) : null;

export function monthlyTable({ rows, pumpName, besideName }: MonthlySeries): ChartTable {
  const pick = (row: { pump: number | null; beside: number | null }) =>
    besideName ? [cell(row.pump), cell(row.beside)] : [cell(row.pump)];
  return {
    caption: say('Energy, standing charge and service together, by month of a typical year.'),
    columns: [
      { name: say('Month') },
      { name: pumpName, number: true },
      ...(besideName ? [{ name: besideName, number: true }] : []),
    ],
    rows: [
      ...rows.map((row) => ({ cells: [row.month, ...pick(row)] })),
      {
        cells: [
          say('Year'),
          ...pick({ pump: total(rows.map((row) => row.pump)), beside: total(rows.map((row) => row.beside)) }),
        ],
        ours: true,
      },
    ],
  };
}
