import { spokenPounds } from '../../words/numbers.ts';
import type { ChartTable } from '../frame/chart-table.tsx';

export function twentyTable(savingsPence: readonly number[]): ChartTable {
  return {
    caption: 'Twenty futures, each as likely as the others, from worst to best for the heat pump.',
    columns: [{ name: 'Future', number: true }, { name: 'In that future the heat pump costs' }],
    rows: savingsPence.map((saving, index) => ({
      cells: [
        String(index + 1),
        !Number.isFinite(saving)
          ? 'not known'
          : saving === 0
            ? 'the same'
            : `${spokenPounds(Math.abs(saving))} ${saving < 0 ? 'more' : 'less'}`,
      ],
    })),
  };
}
