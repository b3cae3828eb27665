import { unknown } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import { savingText } from './layout.ts';

export function twentyTable(savingsPence: readonly number[]): ChartTable {
  return {
    caption: say('Twenty futures, each as likely as the others, from worst to best for the heat pump.'),
    columns: [{ name: say('Future'), number: true }, { name: say('In that future the heat pump costs') }],
    rows: savingsPence.map((saving, index) => ({
      cells: [String(index + 1), Number.isFinite(saving) ? savingText(saving) : unknown()],
    })),
  };
}
