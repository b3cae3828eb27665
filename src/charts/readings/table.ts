import { grouped } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { ReadingsSeries } from './series.ts';

const MOST_ROWS = 400;
const stampOf = (minute: number): string => new Date(minute * 60_000).toISOString().slice(0, 16).replace('T', ' ');

/** The readings themselves while they are few; of a long series each day's sum, or mean for temperatures. */
export function readingsTable({ readings, unit }: ReadingsSeries): ChartTable {
  const digits = unit === '°C' ? 1 : 3;
  if (readings.length <= MOST_ROWS) {
    return {
      caption: say('Readings by local clock time.'),
      columns: [{ name: say('Time') }, { name: unit, number: true }],
      rows: readings.map(({ minute, value }) => ({
        cells: [stampOf(minute), value === null ? say('missing') : grouped(value, digits)],
      })),
    };
  }
  const days = new Map<string, { sum: number; known: number; missing: number }>();
  for (const { minute, value } of readings) {
    const name = stampOf(minute).slice(0, 10);
    const day = days.get(name) ?? { sum: 0, known: 0, missing: 0 };
    days.set(name, {
      sum: day.sum + (value ?? 0),
      known: day.known + (value === null ? 0 : 1),
      missing: day.missing + (value === null ? 1 : 0),
    });
  }
  return {
    caption: unit === '°C' ? say('Average of each day.') : say('Sum of each day.'),
    columns: [{ name: say('Day') }, { name: unit, number: true }, { name: say('Missing'), number: true }],
    rows: [...days].map(([name, day]) => ({
      cells: [
        name,
        day.known === 0 ? say('missing') : grouped(unit === '°C' ? day.sum / day.known : day.sum, digits),
        String(day.missing),
      ],
    })),
  };
}
