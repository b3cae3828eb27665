/** Accounts for every column of a table: what it was used as, or why nothing was made of it. */
import type { ColumnUse } from '../../model/shapes/evidence.ts';
import type { IntakePreview } from '../terms/preview.ts';
import { type ColumnFacts, isDateColumn, isMarkColumn, isMoneyColumn, isNumberColumn } from './column-facts.ts';
import { isOtherFuel, plainWords, slotOfHeading } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { stepOf } from './sheet-step.ts';
import { DEGREE_DAYS, MADE_HERE, NOT_ACTIVE, OTHER_WEATHER, OWN_USE, PART_OF, TO_COMPARE } from './vocabulary.ts';

interface Read {
  readonly choices: IntakePreview['choices'];
  readonly valueColumns?: readonly number[];
  readonly detailColumns?: readonly number[];
  /** Column that names the register of each row. */
  readonly kindColumn?: number | undefined;
  /** Names of records that were left out as the sums of others. */
  readonly sums: readonly string[];
  readonly isAcross: boolean;
}

export function accountColumns(sheet: Sheet, read: Read): { column: number; use: ColumnUse }[] {
  return sheet.columns.map((c) => ({ column: c.index, use: usedAs(sheet, c, read) ?? leftOutAs(c) }));
}

const CHOSEN = ['stamp', 'time', 'from', 'to', 'value', 'cost', 'quality'] as const;

function usedAs(sheet: Sheet, c: ColumnFacts, read: Read): ColumnUse | undefined {
  const chosen = CHOSEN.find((name) => read.choices.columns?.[name] === c.index);
  if (chosen) return chosen;
  if (read.valueColumns?.includes(c.index)) return read.sums.includes(c.heading) ? 'sum' : 'value';
  if (read.isAcross && isNumberColumn(c) && slotOfHeading(c.heading) !== undefined) return 'value';
  if (read.detailColumns?.includes(c.index)) return 'detail';
  if (read.kindColumn === c.index) return 'kind';
  const { timeColumn, endTimeColumn } = stepOf(sheet);
  if (c.index === timeColumn) return 'time';
  return c.index === endTimeColumn && read.choices.columns?.to !== undefined ? 'to' : undefined;
}

function leftOutAs(c: ColumnFacts): ColumnUse {
  const words = plainWords(c.heading);
  const { role, unit, carrier, bill } = c.meaning;
  if (c.missing === c.sampled) return 'empty';
  if (isMoneyColumn(c)) return 'money';
  if (role === 'rate') return 'price';
  if (role === 'calorific' || bill === 'correction') return 'calorific';
  if (OWN_USE.test(words) || (role === 'beside' && MADE_HERE.test(words))) return 'own-use';
  if (role === 'beside' && PART_OF.test(words)) return 'sum';
  const isExtreme = role === 'maximum' || role === 'minimum';
  if (OTHER_WEATHER.test(words) || DEGREE_DAYS.test(words) || (isExtreme && unit === undefined)) return 'weather';
  if (isOtherFuel(words)) return 'other-fuel';
  if (TO_COMPARE.test(words)) return 'to-compare';
  if (NOT_ACTIVE.test(words) || role === 'beside') return 'not-energy';
  if (isDateColumn(c) || role === 'time') return 'other-time';
  if (role === 'index' && c.heading !== '') return 'identifier';
  if (isMarkColumn(c) || role === 'quality') return 'marks';
  if (!isNumberColumn(c)) return 'words';
  if (c.counting) return 'identifier';
  return unit !== undefined || carrier !== undefined || role === 'value' || role === 'reading'
    ? 'other-amount'
    : 'unknown';
}
