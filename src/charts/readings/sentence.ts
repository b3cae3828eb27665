import { counted, degrees, grouped, longDate } from '../../words/numbers.ts';
import { carrierName } from '../../words/systems.ts';
import type { ReadingsSeries } from './series.ts';

export const READINGS_NAME = 'The readings';

const amount = (value: number, unit: ReadingsSeries['unit']): string =>
  unit === '°C' ? degrees(value) : `${grouped(value, Math.abs(value) < 10 ? 2 : 0)} kWh`;

export function readingsSentence({ carrier, unit, readings, missing, first, last }: ReadingsSeries): string {
  const values = readings.flatMap((reading) => (reading.value === null ? [] : [reading.value]));
  if (values.length === 0) return 'No readings could be shown.';
  const from = longDate(first);
  const to = longDate(last);
  const span = from === to ? `on ${from}` : `from ${from} to ${to}`;
  const low = values.reduce((a, b) => Math.min(a, b));
  const high = values.reduce((a, b) => Math.max(a, b));
  const name = carrierName(carrier);
  const gap = missing > 0 ? ` ${counted(missing, 'reading is', 'readings are')} missing.` : '';
  return `${name.charAt(0).toUpperCase()}${name.slice(1)} ${span} lies between ${amount(low, unit)} and ${amount(high, unit)}.${gap}`;
}
