/** Bills, meter readings and deliveries typed at the table, turned into periods of evidence. */

import { addDays, daysBetween } from '../../model/calendar/civil.ts';
import { isCivilDate } from '../../model/shapes/dates.ts';
import type { EvidencePeriod } from '../../model/shapes/evidence.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { readNumber, sayNumber } from '../shared/number-text.ts';
import type { TypedUnit } from './typed-units.ts';

export type TypedKind = 'bills' | 'readings' | 'deliveries';

/** One row as it stands in the grid. For readings and deliveries only `from` is used, as their day. */
export interface TypedRow {
  readonly from: string;
  readonly to: string;
  readonly amount: string;
  readonly costPounds: string;
  readonly estimated: boolean;
}

export const EMPTY_ROW: TypedRow = { from: '', to: '', amount: '', costPounds: '', estimated: false };

export interface RowFault {
  readonly row: number;
  readonly cell: keyof TypedRow;
  readonly sentence: string;
}

export interface TypedSheet {
  readonly kind: TypedKind;
  readonly unit: TypedUnit;
  /** Whether the last day written on a bill belongs to it. */
  readonly toInclusive: boolean;
  readonly rows: readonly TypedRow[];
}

export interface TypedResult {
  readonly periods: readonly EvidencePeriod[];
  readonly faults: readonly RowFault[];
}

const MAX_DAYS_IN_ROW = 800;

const isBlank = (row: TypedRow) => row.from === '' && row.to === '' && row.amount === '' && row.costPounds === '';

interface ReadRow {
  readonly row: number;
  readonly from: string;
  readonly to: string;
  readonly amount: number;
  readonly costPence: number | undefined;
  readonly estimated: boolean;
}

/** Reads the sheet. Blank rows are skipped; a row with a fault gives no period, and its fault names the row. */
export function readTypedSheet(sheet: TypedSheet): TypedResult {
  const faults: RowFault[] = [];
  const read: ReadRow[] = [];
  sheet.rows.forEach((row, index) => {
    if (isBlank(row)) return;
    const before = faults.length;
    const fault = (cell: keyof TypedRow, sentence: string) =>
      faults.push({ row: index + 1, cell, sentence: say('Row {row}: {sentence}', { row: index + 1, sentence }) });
    const day = (cell: 'from' | 'to', missing: string) => {
      if (isCivilDate(row[cell])) return;
      fault(cell, row[cell] === '' ? missing : say('“{text}” is no day. Write it as 31/12/2025.', { text: row[cell] }));
    };
    day('from', sheet.kind === 'bills' ? say('the first day is missing.') : say('the day is missing.'));
    if (sheet.kind === 'bills') day('to', say('the last day is missing.'));
    const amount = readNumber(row.amount);
    if (amount.kind === 'empty')
      fault('amount', say('the amount in {unit} is missing.', { unit: sayTold(sheet.unit.name) }));
    if (amount.kind === 'not a number') fault('amount', say('“{text}” is not a number.', { text: amount.text }));
    if (amount.kind === 'number' && amount.value < 0) {
      fault(
        'amount',
        say('the amount is {value}; less than nothing cannot be used.', { value: sayNumber(amount.value) }),
      );
    }
    const cost = readNumber(row.costPounds);
    if (cost.kind === 'not a number')
      fault('costPounds', say('“{text}” is not an amount of money.', { text: cost.text }));
    if (faults.length > before || amount.kind !== 'number') return;
    read.push({
      row: index + 1,
      from: row.from,
      to: sheet.kind === 'bills' ? (sheet.toInclusive ? addDays(row.to, 1) : row.to) : row.from,
      amount: amount.value,
      costPence: cost.kind === 'number' ? Math.round(cost.value * 100) : undefined,
      estimated: row.estimated,
    });
  });
  const spans = sheet.kind === 'bills' ? read : betweenDays(read, sheet.kind);
  const periods = spans.flatMap((span) => toPeriod(span, sheet.unit, faults));
  periods.sort((a, b) => (a.from < b.from ? -1 : 1));
  findOverlaps(periods, faults);
  return { periods, faults };
}

/** Readings and deliveries name one day each; what was used lies between one day and the next. */
function betweenDays(read: readonly ReadRow[], kind: 'readings' | 'deliveries'): ReadRow[] {
  const sorted = [...read].sort((a, b) => (a.from < b.from ? -1 : 1));
  return sorted.slice(1).map((later, index) => {
    const earlier = sorted[index]!;
    // A delivery fills the tank again: its amount is what was burnt since the delivery before.
    const amount = kind === 'readings' ? later.amount - earlier.amount : later.amount;
    const estimated = later.estimated || (kind === 'readings' && earlier.estimated);
    return { ...later, from: earlier.from, to: later.from, amount, estimated };
  });
}

function toPeriod(span: ReadRow, unit: TypedUnit, faults: RowFault[]): EvidencePeriod[] {
  const days = daysBetween(span.from, span.to);
  const fault = (cell: keyof TypedRow, sentence: string) =>
    faults.push({ row: span.row, cell, sentence: say('Row {row}: {sentence}', { row: span.row, sentence }) });
  if (days <= 0) {
    fault('to', say('the last day comes before the first, or both are the same day.'));
    return [];
  }
  if (days > MAX_DAYS_IN_ROW) {
    fault('to', say('{days} days in one row are too many. Is a year mistyped?', { days }));
    return [];
  }
  if (span.amount < 0) {
    fault('amount', say('this reading is lower than the one before. If the meter was changed, make two lists.'));
    return [];
  }
  return [
    {
      from: span.from,
      to: span.to,
      kWh: unit.toKWh(span.amount),
      quantity: span.amount,
      unit: unit.name,
      ...(span.costPence === undefined ? {} : { costPence: span.costPence }),
      quality: span.estimated ? 'estimated' : 'actual',
      row: span.row,
    },
  ];
}

function findOverlaps(periods: readonly EvidencePeriod[], faults: RowFault[]): void {
  periods.slice(1).forEach((later, index) => {
    const earlier = periods[index]!;
    if (later.from >= earlier.to) return;
    faults.push({
      row: later.row ?? 0,
      cell: 'from',
      sentence: say('Row {row}: its days overlap those of row {earlier}. Each day belongs to one row only.', {
        row: later.row ?? 0,
        earlier: earlier.row ?? 0,
      }),
    });
  });
}
