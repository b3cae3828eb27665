import { capitalised, exactKWh, exactPounds, monthNames } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import { type MonthParts, monthSums } from './series.ts';

export function monthPartsTable(parts: MonthParts): ChartTable {
  const exact = parts.what === 'heat' ? exactKWh : exactPounds;
  const sums = monthSums(parts);
  return {
    caption:
      parts.what === 'heat'
        ? say('Heat needed in a typical year, by month.')
        : say('Cost by month of a typical year. Fixed means standing charge and service, spread evenly.'),
    columns: [
      { name: say('Month') },
      { name: capitalised(parts.lower.name), number: true },
      { name: capitalised(parts.upper.name), number: true },
      { name: say('Together'), number: true },
    ],
    rows: monthNames().map((name, month) => ({
      cells: [
        name,
        exact(parts.lower.values[month] ?? Number.NaN),
        exact(parts.upper.values[month] ?? Number.NaN),
        exact(sums[month]!),
      ],
    })),
  };
}
