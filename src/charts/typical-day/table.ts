import { clockTimeOf } from '../../model/calendar/civil.ts';
import { grouped, uncapitalised, unknown } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { DaySeries } from './series.ts';

const kW = (value: number): string => (Number.isFinite(value) ? `${grouped(value, 2)} kW` : unknown());

export function dayTable(series: DaySeries): ChartTable {
  const { otherwiseKW } = series;
  return {
    caption: say('Average power by the clock: {finding}.', { finding: uncapitalised(series.name) }),
    columns: [
      { name: say('From') },
      { name: say('These days'), number: true },
      ...(otherwiseKW ? [{ name: say('Days as cold'), number: true }] : []),
    ],
    rows: series.seenKW.map((seen, i) => ({
      cells: [clockTimeOf(i * series.minutes), kW(seen), ...(otherwiseKW ? [kW(otherwiseKW[i]!)] : [])],
    })),
  };
}
