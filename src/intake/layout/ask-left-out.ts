/** The last look at what was left out: no column that names an energy or a way of its own goes without a record or a question. */
import { isTemperature, type Series } from '../../model/shapes/evidence.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import { listNames, type RemarkBook } from '../terms/remark-book.ts';
import { isOfDegrees, isPower, isVolumeOfGas } from '../terms/units.ts';
import { type ColumnFacts, isMoneyColumn, isNumberColumn } from './column-facts.ts';
import { isADay, isSince, namesOf, unknownWords } from './column-words.ts';
import { countsOther, isOfVolume } from './counter-beside.ts';
import { carrierOfWords, isStoveFuel, plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { columnName } from './value-cells.ts';
import { OF_A_STORE, WHOLE_HOME, withoutBrackets } from './vocabulary.ts';
import { withoutPeople } from './without-people.ts';

/** @param read columns of which a record or a detail was made */
export function askLeftOut(
  sheet: Sheet,
  series: readonly Series[],
  read: readonly number[],
  choices: IntakeChoices,
  book: RemarkBook,
): void {
  const taken = sheet.columns[read[0] ?? -1];
  if (!taken || choices.columns?.value !== undefined || book.has('column-asked')) return;
  const leftOut = sheet.columns.filter(
    (c) =>
      !read.includes(c.index) &&
      (isOfItsOwn(c, series) || isUsage(sheet, c, taken, series)) &&
      !countsOther(sheet, c) &&
      !isSaidAgain(c, taken),
  );
  const [column, found, count] = [columnName(sheet, taken.index), namesOf(sheet, leftOut), leftOut.length];
  if (count === 0) return;
  if (choices.every !== undefined) book.add('columns-left-out', 'note', { found, expected: column });
  else book.add('column-asked', 'question', { column, found, count });
}

/** Asks where wood or coal stands beside what is read, in columns or in rows of their own: its heat is in no record. */
export function askOtherFuels(
  { columns }: Sheet,
  series: readonly Series[],
  rows: readonly string[],
  choices: IntakeChoices,
  book: RemarkBook,
): void {
  if (choices.leaveUnread || series.every(({ carrier }) => isTemperature(carrier))) return;
  const isAmount = (c: ColumnFacts) =>
    isNumberColumn(c) && c.largest > 0 && !isMoneyColumn(c) && c.meaning.role !== 'rate';
  const named = [...columns.filter(isAmount).map(({ heading }) => heading), ...rows];
  const found = named.filter((name) => isStoveFuel(plainWords(name)));
  if (found.length > 0)
    book.add('other-fuel-asked', 'question', { found: listNames(found.map((name) => withoutPeople(name))) });
}

/** The mean of a day, or all since the year began, beside the amounts that it is of. */
const isSaidAgain = (c: ColumnFacts, taken: ColumnFacts): boolean =>
  c.meaning.unit === taken.meaning.unit &&
  [undefined, taken.meaning.carrier].includes(c.meaning.carrier) &&
  c.meaning.seriesRole === taken.meaning.seriesRole &&
  (isADay(c) || isSince(c)) &&
  !isADay(taken) &&
  !isSince(taken);

/** "Usage" without a unit beside "gas usage", of which it is no multiple: of something else. */
const isUsage = (sheet: Sheet, c: ColumnFacts, taken: ColumnFacts, series: readonly Series[]): boolean =>
  c.meaning.role === 'value' &&
  c.meaning.unit === undefined &&
  c.meaning.carrier === undefined &&
  isNumberColumn(c) &&
  c.smallest !== c.largest &&
  !c.counting &&
  USAGE.test(plainWords(c.heading)) &&
  !isMoneyColumn(c) &&
  series.every((one) => one.carrier === 'gas' || one.carrier === 'heat') &&
  !isOfVolume(sheet, taken, c);
const USAGE = /usage|consum|verbrauch|consommation|verbruik|forbrug|electric|strom/;

/** Of an energy that no record is of, or sent out or made where none was. */
function isOfItsOwn(c: ColumnFacts, series: readonly Series[]): boolean {
  const { role, unit, carrier, seriesRole } = c.meaning;
  // Power beside energy is the moment of the same.
  const isAmount = (role === 'value' || role === 'reading') && isNumberColumn(c) && !isPower(unit);
  const isNone = carrier === 'water' || OF_A_STORE.test(plainWords(c.heading));
  if (!isAmount || c.counting || c.smallest === c.largest || isNone) return false;
  if (carrier === undefined) {
    if (unit === undefined || isOfDegrees(unit)) return false;
    // Energy under a word that nobody here knows may be what is meant, or have gone the other way.
    const isUnknown = unknownWords(withoutPeople(c.heading)).length > 0;
    const isHome = WHOLE_HOME.test(plainWords(c.heading)) && !series.some((one) => one.role === 'import');
    return isUnknown || isHome || series.every((one) => isTemperature(one.carrier));
  }
  if (isTemperature(carrier)) return false;
  // The volume beside heat is of the water that carried it, unless its words name gas.
  const isOfHeat = series.length > 0 && series.every((one) => one.carrier === 'heat');
  const words = withoutBrackets(plainWords(c.heading)).replaceAll(/\b(m|ft) ?[3³]/g, ' ');
  if (isOfHeat && isVolumeOfGas(unit) && carrierOfWords(words) === undefined) return false;
  const isOut = seriesRole === 'export' || seriesRole === 'generation';
  return !series.some((one) => one.carrier === carrier && (isOut ? one.role === seriesRole : true));
}
