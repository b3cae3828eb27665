import { exactPounds, monthNames, spokenKWh } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { type MonthParts, monthSums } from './series.ts';

export const monthPartsName = (what: MonthParts['what']) =>
  what === 'heat' ? say('Heat needed by month') : say('Cost by month today');

export function monthPartsSentence(parts: MonthParts): string {
  const sums = monthSums(parts);
  const heat = parts.what === 'heat';
  if (!sums.every(Number.isFinite)) {
    return heat
      ? say('We do not know yet how much heat each month needs.')
      : say('We do not know yet what each month costs.');
  }
  const most = sums.indexOf(Math.max(...sums));
  const least = sums.indexOf(Math.min(...sums));
  if (sums[most]! <= 0) return heat ? say('No heat is needed in any month.') : say('No month costs anything.');
  const spoken = heat ? spokenKWh : exactPounds;
  return say(
    '{most} {what, select, heat {needs} other {costs}} most, {amount}. {least} {what, select, heat {needs} other {costs}} least, {leastAmount}.',
    {
      most: monthNames()[most]!,
      what: parts.what,
      amount: spoken(sums[most]!),
      least: monthNames()[least]!,
      leastAmount: spoken(sums[least]!),
    },
  );
}
