import { monthNames, spokenKWh, spokenPounds } from '../../words/numbers.ts';
import { type MonthParts, monthSums } from './series.ts';

export const MONTH_PARTS_NAMES = { heat: 'Heat needed by month', cost: 'Cost by month today' } as const;

export function monthPartsSentence(parts: MonthParts): string {
  const sums = monthSums(parts);
  const heat = parts.what === 'heat';
  if (!sums.every(Number.isFinite)) {
    return heat ? 'We do not know yet how much heat each month needs.' : 'We do not know yet what each month costs.';
  }
  const most = sums.indexOf(Math.max(...sums));
  const least = sums.indexOf(Math.min(...sums));
  if (sums[most]! <= 0) return heat ? 'No heat is needed in any month.' : 'No month costs anything.';
  const spoken = heat ? spokenKWh : spokenPounds;
  const verb = heat ? 'needs' : 'costs';
  return `${monthNames()[most]} ${verb} most, ${spoken(sums[most]!)}. ${monthNames()[least]} ${verb} least, ${spoken(sums[least]!)}.`;
}
