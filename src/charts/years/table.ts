import type { YearPoint } from '../../model/shapes/lifetime.ts';
import { exactPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { YearsSeries } from './series.ts';

const cells = ({ value, low, high }: YearPoint) => [value, low, high].map(exactPounds);

export function yearsTable({ kind, pump, beside }: YearsSeries): ChartTable {
  return {
    caption: say(
      '{kind, select, whole {Purchase and running costs} other {Running costs alone}}, paid in total by the end of each year, in today’s money. 8 in 10 homes like yours lie between low and high.',
      { kind },
    ),
    columns: [
      { name: say('Years from now') },
      ...[pump.name, beside.name].flatMap((name) => [
        { name, number: true },
        { name: say('{name}, low', { name }), number: true },
        { name: say('{name}, high', { name }), number: true },
      ]),
    ],
    rows: pump.points.map((point, index) => ({
      cells: [point.year === 0 ? say('now') : String(point.year), ...cells(point), ...cells(beside.points[index]!)],
    })),
  };
}
