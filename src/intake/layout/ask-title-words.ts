/** A title, or the name of the file, that makes other than the home's own amounts of the numbers is carried out or asked. */
import type { Series } from '../../model/shapes/evidence.ts';
import { isFuel } from '../../model/shapes/heating.ts';
import { choicesFor, type IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { isOfDegrees } from '../terms/units.ts';
import type { ColumnFacts } from './column-facts.ts';
import { isADay, isTotal } from './column-words.ts';
import { carrierOfWords, plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { statedUnit } from './stated-energy.ts';
import { FORESEEN, factorOf, MEAN, OF_EACH, OTHER_HOMES } from './title-words.ts';
import { titlesOfEnergy } from './titles.ts';
import { A_DAY, POWER } from './vocabulary.ts';
import { withoutPeople } from './without-people.ts';

/** Of two things at once: the mean and the sum. */
const OF_BOTH = /(?<![a-z])(total|sum|summe|somme|suma|somma|and|und|et|og|och)(?![a-z])|[&+]/;

/** Whether the title says that a column holds the mean of a day, and no column says so of itself. */
export const isADayByTitle = (sheet: Sheet, column: ColumnFacts): boolean =>
  !isOfDegrees(statedUnit(sheet, column)) &&
  !isTotal(column) &&
  !sheet.columns.some(isADay) &&
  titlesOfEnergy(sheet).some(
    (words) => A_DAY.test(words) && !OF_BOTH.test(words) && carrierOfWords(words)?.carrier !== 'outdoor-temperature',
  );

export function askTitleWords(sheet: Sheet, series: readonly Series[], choices: IntakeChoices, book: RemarkBook): void {
  const headings = sheet.columns.map(({ heading }) => plainWords(heading));
  const titles = titlesOfEnergy(sheet);
  for (const one of series) {
    const isMetered = one.carrier === 'electricity' || isFuel(one.carrier);
    if (choicesFor(choices, one.name).role !== undefined || one.role !== 'import' || !isMetered) continue;
    // Power is a mean by itself, and so is the amount of a day.
    const isMean = one.resolution === 'period' && !headings.some((words) => MEAN.test(words) || A_DAY.test(words));
    const found = titles.find((words) => {
      const rest = book.has('per-day-multiplied', one.name) ? words.replace(A_DAY, ' ') : words;
      const patterns = [FORESEEN, OTHER_HOMES, OF_EACH, ...(isMean && !POWER.test(rest) ? [MEAN, A_DAY] : [])];
      return factorOf(rest) !== undefined || patterns.some((pattern) => pattern.test(rest));
    });
    if (found !== undefined)
      book.add('title-word-asked', 'question', { column: one.name, found: withoutPeople(found) });
  }
}
