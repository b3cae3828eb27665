import type { YearAhead } from '../../model/shapes/appraisal.ts';
import { meanOf } from '../../model/units/sums.ts';
import { grouped } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { SignatureSeries } from './series.ts';

/** Days gathered by whole degrees, with what the line says there. */
export function signatureTable(series: SignatureSeries): ChartTable {
  const bins = new Map<number, number[]>();
  for (const { outdoorC, kWhPerDay } of series.points) {
    const degree = Math.round(outdoorC);
    bins.set(degree, [...(bins.get(degree) ?? []), kWhPerDay]);
  }
  const line = (outdoorC: number) =>
    series.basePerDayKWh + series.slopeKWhPerKDay * Math.max(0, series.baseC - outdoorC);
  return {
    caption: say('Average use a day by outdoor temperature, and the line through it.'),
    columns: [
      { name: say('Outside, °C') },
      { name: series.period === 'day' ? say('Days') : say('Bills'), number: true },
      { name: say('Average use, kWh a day'), number: true },
      { name: say('The line, kWh a day'), number: true },
    ],
    rows: [...bins]
      .sort(([a], [b]) => a - b)
      .map(([degree, values]) => ({
        cells: [grouped(degree), String(values.length), grouped(meanOf(values), 1), grouped(line(degree), 1)],
      })),
  };
}

const WINTERS = {
  mild: phrase('mild, 1 in 10'),
  typical: phrase('typical'),
  cold: phrase('cold, 1 in 10'),
} as const;

/** What the meter should show in a mild, a typical and a cold year, each with its range. */
export function yearsAheadTable(years: readonly YearAhead[]): ChartTable {
  return {
    caption: say('What the meter should show in a year to come. 8 such years in 10 lie between low and high.'),
    columns: [
      { name: say('Year') },
      ...[say('degree days'), say('kWh'), say('low'), say('high')].map((name) => ({ name, number: true })),
    ],
    rows: years.map(({ winter, degreeDays, kWh, low, high }) => ({
      cells: [say(WINTERS[winter]), ...[degreeDays, kWh, low, high].map((value) => grouped(value))],
    })),
  };
}
