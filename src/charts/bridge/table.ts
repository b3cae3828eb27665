import { gradeName } from '../../words/grades.ts';
import { poundsAndPence } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { BridgeSeries } from './series.ts';

export function bridgeTable({ steps, expected }: BridgeSeries): ChartTable {
  const rows = steps.map((step) => ({
    cells: [step.name, poundsAndPence(step.amount), step.grade ? gradeName(step.grade) : ''],
    ours: step.kind !== 'part',
  }));
  const range = expected
    ? [
        { cells: [say('Estimated for these days and prices, low'), poundsAndPence(expected.low), ''] },
        { cells: [say('Estimated for these days and prices, high'), poundsAndPence(expected.high), ''] },
      ]
    : [];
  return {
    caption: say('From the estimate to the bill. The steps add up to the difference to the penny.'),
    columns: [{ name: say('Step') }, { name: say('Amount'), number: true }, { name: say('How sure it is') }],
    rows: [...rows, ...range],
  };
}
