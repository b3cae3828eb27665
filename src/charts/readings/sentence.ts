import { counted, grouped, longDate } from '../../words/numbers.ts';
import { carrierName } from '../../words/systems.ts';
import type { ReadingsSeries } from './series.ts';

export const READINGS_NAME = 'The readings';

export function readingsSentence({ carrier, unit, readings, missing, first, last }: ReadingsSeries): string {
  const values = readings.flatMap((reading) => (reading.value === null ? [] : [reading.value]));
  if (values.length === 0) return 'No readings could be shown.';
  const [from, to] = [longDate(first), longDate(last)];
  const span = from === to ? `On ${from}` : `From ${from} to ${to}`;
  const digits = unit === '°C' ? 1 : values.some((value) => Math.abs(value) >= 10) ? 0 : 2;
  const low = grouped(
    values.reduce((a, b) => Math.min(a, b)),
    digits,
  );
  const high = grouped(
    values.reduce((a, b) => Math.max(a, b)),
    digits,
  );
  const gap = missing > 0 ? ` ${counted(missing, 'reading is', 'readings are')} missing.` : '';
  return `${span} each reading of ${carrierName(carrier)} lies between ${low} and ${high} ${unit}.${gap}`;
}
