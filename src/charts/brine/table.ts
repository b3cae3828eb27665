import { degrees, longDate, unknown } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { BrineSeries } from './series.ts';

export function brineTable({ readings, freezingC }: BrineSeries): ChartTable {
  return {
    caption:
      freezingC === null
        ? say('Brine at each visit.')
        : say('Brine at each visit. It freezes at {freezing}.', { freezing: degrees(freezingC) }),
    columns: [
      { name: say('Day of the visit') },
      { name: say('Brine in'), number: true },
      { name: say('Brine out'), number: true },
    ],
    rows: readings.map(({ date, inC, outC }) => ({
      cells: [longDate(date), degrees(inC), outC === null ? unknown() : degrees(outC)],
    })),
  };
}
