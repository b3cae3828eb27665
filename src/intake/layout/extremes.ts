/** Tables that give the highest and the lowest temperature of each day or month and no mean: that of both stands for it. */
import { isTemperature } from '../../model/shapes/evidence.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { isOfDegrees } from '../terms/units.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isNumberColumn, numberEitherWay } from './column-facts.ts';
import { namesOf } from './column-words.ts';
import { plainWords } from './headings.ts';
import { quantityColumns } from './quantity-columns.ts';
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

/** Next to the ground it is colder than where the air is measured. */
const AT_GROUND = /grass|ground|soil|concrete|boden|erdb|gras|(?<!\d)(5|10|20) ?cm/;

/** Columns of the highest or the lowest temperature of the air; more than one of a kind are of several places. */
export function extremesOf(sheet: Sheet, role: 'maximum' | 'minimum'): ColumnFacts[] {
  const all = sheet.columns.filter((c) => c.meaning.role === role && isNumberColumn(c));
  // "Wind max" has no degrees where others have.
  const warm = all.filter((c) => isOfDegrees(c.meaning.unit));
  const ofDegrees = warm.length > 0 ? warm : all;
  const ofAir = ofDegrees.filter((c) => !AT_GROUND.test(plainWords(c.heading)));
  return ofAir.length > 0 ? ofAir : ofDegrees;
}

/** Whether a column of temperatures lies between both in every row, as their mean does whatever it is called. */
function liesBetween({ table, firstRow }: Sheet, c: ColumnFacts, low: ColumnFacts, high: ColumnFacts): boolean {
  const isWarmth = c.meaning.carrier === 'outdoor-temperature' || isOfDegrees(c.meaning.unit);
  if (!isWarmth || !isNumberColumn(c) || c.index === low.index || c.index === high.index) return false;
  let between = 0;
  for (let row = firstRow; row < Math.min(table.rowCount, firstRow + LOOKED_AT); row++) {
    const [own, least, most] = [c, low, high].map(({ index }) => numberEitherWay(cellText(table, row, index)));
    if (own! < least! || own! > most!) return false;
    if (own! > least! && own! < most!) between++;
  }
  return between >= TELLING_ROWS;
}
const LOOKED_AT = 200;
/** In so many rows it lies between the two. A judgement. */
const TELLING_ROWS = 20;

/** Beside what was used the weather is passed over. */
const hasEnergy = (sheet: Sheet): boolean =>
  quantityColumns(sheet, [sheet.dateColumn]).some(
    ({ meaning: { unit, role, carrier } }) =>
      role === 'value' &&
      !isOfDegrees(unit) &&
      (unit !== undefined || (carrier !== undefined && !isTemperature(carrier))),
  );

/** Highest and lowest temperature of the day in two columns, without a mean; theirs stands for the day's. */
export function findExtremes(
  sheet: Sheet,
  book: RemarkBook,
): { maximum: ColumnFacts; minimum: ColumnFacts } | undefined {
  const [maxima, minima] = [extremesOf(sheet, 'maximum'), extremesOf(sheet, 'minimum')];
  const [[maximum], [minimum]] = [maxima, minima];
  const isMean = (c: ColumnFacts) =>
    isNumberColumn(c) &&
    c.meaning.carrier === 'outdoor-temperature' &&
    c.meaning.role === 'value' &&
    MEAN.test(plainWords(c.heading));
  if (!maximum || !minimum || sheet.columns.some(isMean) || hasEnergy(sheet)) return undefined;
  if (maxima.length > 1 || minima.length > 1)
    book.add('places-several', 'refusal', { found: namesOf(sheet, [...maxima, ...minima]) });
  else if (sheet.columns.some((c) => liesBetween(sheet, c, minimum, maximum))) return undefined;
  return { maximum, minimum };
}
