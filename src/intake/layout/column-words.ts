/** What the words above a column say of it beside its unit: a whole, a register, a way, money. */
import { listNames } from '../terms/remark-book.ts';
import { isOfDegrees } from '../terms/units.ts';
import type { ColumnFacts } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { columnName } from './value-cells.ts';
import * as vocabulary from './vocabulary.ts';
import { A_DAY, DRAWN, OF_THE_GRID, RATE_REGISTER, SINCE, WHOLE_HOME } from './vocabulary.ts';

/** Whether it holds the mean of a day rather than all that was used; a daily mean of degrees is no amount. */
export const isADay = ({ heading, meaning }: ColumnFacts): boolean =>
  A_DAY.test(plainWords(heading)) && !isOfDegrees(meaning.unit);

/** Whether it holds all since a month or a year began. */
export const isSince = ({ heading }: ColumnFacts): boolean => SINCE.test(plainWords(heading));

export const isTotal = ({ heading }: Pick<ColumnFacts, 'heading'>): boolean =>
  /total|gesamt|totaal|(?<!con|as)sum(?!mer)|\ball\b|overall/i.test(heading);

export const isWhole = (c: ColumnFacts): boolean => isTotal(c) || WHOLE_HOME.test(plainWords(c.heading));

/** What has a sign or a word of the grid is no use of the home. */
export function isOfGrid({ heading, smallest }: ColumnFacts): boolean {
  const words = plainWords(heading);
  return smallest < 0 || DRAWN.test(words) || OF_THE_GRID.test(words) || /\bbezug\b/.test(words);
}

export const namesWay = (c: ColumnFacts): boolean =>
  c.meaning.seriesRole !== undefined || DRAWN.test(plainWords(c.heading));

export const registerOf = (c: ColumnFacts): string => RATE_REGISTER.exec(plainWords(c.heading))?.[0] ?? '';

export const isRegisterName = (heading: string): boolean => RATE_REGISTER.test(plainWords(heading));

/** Of a rate that is the only one of its meter. */
const OF_ALL_HOURS =
  /\b(standard|any ?time|general (usage|supply)|single|(this|each|every|whole|full) day|p1 (meter|port|poort))\b/;

/** The register of some hours that words name; a mean of a day and a price of all hours are none. */
export function registerOfSomeHours(name: string): string | undefined {
  const words = plainWords(name).replace(A_DAY, ' ');
  return OF_ALL_HOURS.test(words) ? undefined : RATE_REGISTER.exec(words)?.[0];
}

export const namesRegister = (c: ColumnFacts): boolean => isRegisterName(c.heading);

/** Whether a heading tells one register from another. */
export const namesItself = (c: ColumnFacts): boolean => c.meaning.carrier !== undefined || namesRegister(c);

export const namesAmount = ({ meaning }: ColumnFacts): boolean =>
  meaning.unit !== undefined ||
  meaning.carrier !== undefined ||
  // A number under "Tag" is the dear register.
  ['value', 'reading', 'stamp'].includes(meaning.role);

const KNOWN: readonly RegExp[] = Object.values(vocabulary)
  .filter((pattern) => pattern instanceof RegExp)
  .map((pattern) => new RegExp(pattern.source, 'g'));

/** Words of a heading that none of our words touches: "saved" in "Electricity saved (kWh)". */
export function unknownWords(heading: string): string[] {
  const words = plainWords(heading);
  const known = KNOWN.flatMap((pattern) =>
    [...words.matchAll(pattern)].map(({ index, 0: { length } }) => [index, index + length] as const),
  );
  return [...words.matchAll(/[\p{Letter}]{3,}/gu)]
    .filter(({ index, 0: { length } }) => !known.some(([from, to]) => from < index + length && index < to))
    .map(([word]) => word);
}

/** "Amount" or "Total" without a unit: money as well as what was used. */
export const isBareAmount = ({ heading, meaning }: ColumnFacts): boolean =>
  meaning.unit === undefined &&
  /^(total|amount|paid|sum|gross|net|betrag)( (paid|due|total|amount))?$/i.test(heading.trim());

/** Such a column beside one that has a unit. */
export const mayBeMoney = (c: ColumnFacts, quantity: ColumnFacts): boolean =>
  c !== quantity && quantity.meaning.unit !== undefined && isBareAmount(c);

export const namesOf = (sheet: Sheet, columns: readonly ColumnFacts[]): string =>
  listNames(columns.map((c) => columnName(sheet, c.index)));
