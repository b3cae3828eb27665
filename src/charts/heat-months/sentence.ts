import { MONTH_NAMES, spokenKWh } from '../../words/numbers.ts';
import type { HeatMonths } from './layout.ts';

export const HEAT_MONTHS_NAME = 'Heat needed by month';

export function heatMonthsSentence({ spaceKWh, waterKWh }: HeatMonths): string {
  const sums = MONTH_NAMES.map((_, month) => (spaceKWh[month] ?? Number.NaN) + (waterKWh[month] ?? Number.NaN));
  if (!sums.every(Number.isFinite)) return 'We do not know yet how much heat each month needs.';
  const most = sums.indexOf(Math.max(...sums));
  const least = sums.indexOf(Math.min(...sums));
  if (sums[most]! <= 0) return 'No heat is needed in any month.';
  return `${MONTH_NAMES[most]} needs most heat, ${spokenKWh(sums[most]!)}. ${MONTH_NAMES[least]} needs least, ${spokenKWh(sums[least]!)}.`;
}
