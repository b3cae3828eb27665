/** Tables that give the highest and the lowest temperature of each day or month and no mean: that of both stands for it. */
import type { IntakeChoices } from '../terms/choices.ts';
import { type ColumnFacts, isNumberColumn } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';

/** Name of such a record. */
export const MEAN_OF_BOTH = 'mean of highest and lowest';

/** The highest values become the means of both, in place. */
export function takeMeans(highest: Float64Array, lowest: Float64Array): void {
  for (let i = 0; i < highest.length; i++) highest[i] = (highest[i]! + lowest[i]!) / 2;
}

export const asTemperature = (choices: IntakeChoices): IntakeChoices => ({
  ...choices,
  carrier: 'outdoor-temperature',
  role: 'weather',
});

const MEAN =
  /\b(mean|average|avg|mittel(wert)?|moy(enne)?|media|gemiddelde?|middel|tmk?|tg|tavg|tmed|t ?mean|tas)\b|mitteltemp|^temp(erature?|eratura|eratuur|eratur)?$/;

/** Highest and lowest temperature of the day in two columns, without a mean; theirs stands for the day's. */

export function findExtremes(sheet: Sheet): { maximum: ColumnFacts; minimum: ColumnFacts } | undefined {
  const maximum = sheet.columns.find((c) => c.meaning.role === 'maximum' && isNumberColumn(c));
  const minimum = sheet.columns.find((c) => c.meaning.role === 'minimum' && isNumberColumn(c));
  const isMean = (c: ColumnFacts) =>
    isNumberColumn(c) &&
    c.meaning.carrier === 'outdoor-temperature' &&
    c.meaning.role === 'value' &&
    MEAN.test(plainWords(c.heading));
  return maximum && minimum && !sheet.columns.some(isMean) ? { maximum, minimum } : undefined;
}
