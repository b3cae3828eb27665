import type { Demand, MachineResult } from '../../model/shapes/appraisal.ts';
import { exactKWh, grouped } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import { estimateRows, factorRows, type RangeRow } from './series.ts';

function rangesTable(
  caption: string,
  [what, middle]: readonly [string, string],
  rows: readonly RangeRow[],
  written: (value: number) => string,
): ChartTable {
  return {
    caption,
    columns: [
      { name: what },
      { name: middle, number: true },
      { name: say('Low'), number: true },
      { name: say('High'), number: true },
    ],
    rows: rows.map((row) => ({
      cells: [row.name, ...[row.middle, row.low, row.high].map(written)],
      ours: row.kind !== 'beside',
    })),
  };
}

export function factorTable(machine: MachineResult): ChartTable {
  return rangesTable(
    say('Seasonal factor at {boundary}. 8 in 10 homes like yours lie between low and high.', {
      boundary: machine.fieldSpread.boundary,
    }),
    [say('What'), say('As worked out')],
    factorRows(machine),
    (value) => grouped(value, 2),
  );
}

export function estimatesTable(demand: Demand): ChartTable {
  return rangesTable(
    say('Heat for the rooms in a typical year. 8 in 10 homes like yours lie between low and high.'),
    [say('Way'), say('Most likely')],
    estimateRows(demand),
    exactKWh,
  );
}
