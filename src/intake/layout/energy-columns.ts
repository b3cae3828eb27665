/** Which columns hold the energy, litres or degrees, and what each is of. */
import type { Carrier, SeriesRole } from '../../model/shapes/evidence.ts';
import type { EnergyUnit, IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { type ColumnFacts, isMoneyColumn, isNumberColumn } from './column-facts.ts';
import { carrierOfWords, plainWords, unitOfWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { columnName } from './value-cells.ts';

/** Number columns that may hold quantities, best first. Costs, rates, counters and calorific values are none. */
export function quantityColumns(sheet: Sheet, taken: readonly (number | undefined)[]): ColumnFacts[] {
  const numbers = sheet.columns.filter(
    (c) =>
      isNumberColumn(c) &&
      !taken.includes(c.index) &&
      !(c.counting && (c.meaning.role === 'index' || c.index === 0)) &&
      !isMoneyColumn(c) &&
      !['rate', 'calorific', 'quality', 'beside', 'bill'].includes(c.meaning.role),
  );
  const score = (c: ColumnFacts) =>
    (c.meaning.unit ? 4 : 0) +
    (c.meaning.role === 'value' ? 2 : 0) +
    (c.meaning.carrier ? 1 : 0) -
    (c.meaning.role === 'index' ? 3 : 0);
  return numbers.toSorted((a, b) => score(b) - score(a) || a.index - b.index);
}

/**
 * Columns read as one series each: the chosen one, else all that name an energy of their own (import and export,
 * electricity and heat), else the registers of one meter; the rest is named as left out.
 */
export function seriesColumns(
  sheet: Sheet,
  choices: IntakeChoices,
  taken: readonly (number | undefined)[],
  book: RemarkBook,
): ColumnFacts[] {
  const chosen = choices.columns?.value;
  if (chosen !== undefined) {
    const column = sheet.columns[chosen];
    return column ? [column] : [];
  }
  const all = quantityColumns(sheet, taken);
  const readings = all.filter((c) => c.meaning.role !== 'reading');
  const found = readings.length > 0 ? readings : all;
  const best = found[0];
  if (!best) return [];
  const machine = machineColumns(sheet, taken);
  const energies = logColumns(found) ?? heatAlone(found, machine.length > 0);
  const log = energies && [...energies, ...machine].toSorted((a, b) => a.index - b.index);
  if (log) {
    remarkLog(sheet, log, all, book);
    return log;
  }
  // One energy in two units (m³ and kWh) is one series; kWh is taken.
  const kWh = found.filter((c) => c.meaning.unit === 'kWh');
  const pool = kWh.length > 0 ? kWh : found;
  const several = pool.filter((c) => c.meaning.unit !== undefined || namesItself(c));
  const registers = several.filter((c) => namesRegister(c));
  const columns =
    several.length > 1 && several.every((c) => namesItself(c))
      ? several
      : registers.length > 1
        ? registers
        : [pool[0] ?? best];
  const leftOut = all.filter((c) => !columns.includes(c) && c.meaning.role !== 'index' && !mayBeMoney(c, best));
  if (leftOut.length > 0)
    book.add('columns-left-out', 'note', {
      found: leftOut
        .map((c) => columnName(sheet, c.index))
        .join(', ')
        .slice(0, 120),
      expected: columns
        .map((c) => columnName(sheet, c.index))
        .join(', ')
        .slice(0, 120),
    });
  if (columns.length > 1)
    book.add('several-series', 'note', {
      count: columns.length,
      found: columns
        .map((c) => c.heading)
        .join(', ')
        .slice(0, 120),
    });
  return columns.toSorted((a, b) => a.index - b.index);
}

/**
 * Heat and the electricity it is made with, side by side as heat pumps and heat meters log them, in whichever units;
 * the outdoor temperature comes along. Where one of them has a total, its parts are left out. Undefined for other files.
 */
export function logColumns(found: readonly ColumnFacts[]): ColumnFacts[] | undefined {
  const energies = found.filter((c) => c.meaning.unit !== '°C');
  const of = (pick: (c: ColumnFacts) => boolean): ColumnFacts[] => {
    const own = energies.filter(pick);
    const inKWh = own.filter((c) => c.meaning.unit === 'kWh');
    const pool = inKWh.length > 0 ? inKWh : own;
    const totals = pool.filter(isTotal);
    return totals.length > 0 ? totals.slice(0, 1) : pool;
  };
  const heat = of((c) => c.meaning.carrier === 'heat');
  const electricity = of((c) => c.meaning.carrier === 'electricity');
  if (heat.length === 0 || electricity.length === 0) return undefined;
  const outdoor = found.filter((c) => c.meaning.carrier === 'outdoor-temperature').slice(0, 1);
  return [...electricity, ...heat, ...outdoor].toSorted((a, b) => a.index - b.index);
}

/** Heat without electricity and with temperatures, as heat meters log it; the volume of the water is no gas. */
function heatAlone(found: readonly ColumnFacts[], hasMachine: boolean): ColumnFacts[] | undefined {
  const heat = found.filter((c) => c.meaning.carrier === 'heat');
  const outdoor = found.filter((c) => c.meaning.carrier === 'outdoor-temperature').slice(0, 1);
  const isWater = (c: ColumnFacts) => c.meaning.unit === 'm³' && !/gas/i.test(c.heading);
  const others = found.filter((c) => c.meaning.unit !== '°C' && c.meaning.carrier !== 'heat' && !isWater(c));
  if (heat.length === 0 || others.length > 0 || !(hasMachine || outdoor.length > 0)) return undefined;
  const inKWh = heat.filter((c) => c.meaning.unit === 'kWh');
  const pool = inKWh.length > 0 ? inKWh : heat;
  const total = pool.find((c) => isTotal(c));
  return [...(total ? [total] : pool), ...outdoor];
}

const isTotal = (c: ColumnFacts): boolean => /total|sum|all\b/i.test(c.heading);

/** Flow, return and source of the machine: the first column of each. */
export function machineColumns(sheet: Sheet, taken: readonly (number | undefined)[]): ColumnFacts[] {
  const own = sheet.columns.filter(
    (c) => c.meaning.seriesRole === 'machine' && isNumberColumn(c) && !taken.includes(c.index),
  );
  return own.filter((c) => own.find((first) => first.meaning.carrier === c.meaning.carrier) === c);
}

/** @param all the columns it was chosen from */
export function remarkLog(
  sheet: Sheet,
  log: readonly ColumnFacts[],
  all: readonly ColumnFacts[],
  book: RemarkBook,
): void {
  const names = (columns: readonly ColumnFacts[]) =>
    columns
      .map((c) => columnName(sheet, c.index))
      .join(', ')
      .slice(0, 120);
  const beside = sheet.columns.filter((c) => c.meaning.role === 'beside' && !log.includes(c));
  const leftOut = [...all.filter((c) => !log.includes(c)), ...beside];
  if (leftOut.length > 0) book.add('columns-left-out', 'note', { found: names(leftOut), expected: names(log) });
  book.add('several-series', 'note', { count: log.length, found: names(log) });
  const pump = log.find((c) => isBesideHeat(sheet, c));
  const said = [sheet.fileName, ...sheet.preamble.map((p) => p.text), ...sheet.columns.map((c) => c.heading)].join(' ');
  if (pump && !/heat ?pump|\bhp\b/i.test(plainWords(said.replaceAll(/[-_.]/g, ' '))))
    book.add('heat-pump-taken', 'note', { column: columnName(sheet, pump.index) });
}

/** One unit for several series only where it is that of them all; temperatures have their own. */
export function commonUnit(quantities: readonly { readonly unit: EnergyUnit }[]): { unit?: EnergyUnit } {
  const unit = quantities[0]?.unit;
  return unit !== undefined && quantities.every((q) => q.unit === unit) ? { unit } : {};
}

/** Electricity beside heat is what the heat was made with, unless it is said to be the whole house's. */
function isBesideHeat(sheet: Sheet, column: ColumnFacts): boolean {
  const words = plainWords(column.heading);
  return (
    column.meaning.carrier === 'electricity' &&
    column.meaning.seriesRole === undefined &&
    !/house|whole|grid|import|mains/.test(words) &&
    sheet.columns.some((c) => c.meaning.carrier === 'heat' && isNumberColumn(c))
  );
}

/** "Amount" or "Total" without a unit, beside a column that has one. */
export const mayBeMoney = (c: ColumnFacts, quantity: ColumnFacts): boolean =>
  c !== quantity &&
  c.meaning.unit === undefined &&
  quantity.meaning.unit !== undefined &&
  /^(total|amount|paid|sum|gross|net|betrag)( (paid|due|total|amount))?$/i.test(c.heading.trim());

/** Whether a heading tells one register from another. */
export const namesItself = (c: ColumnFacts): boolean => c.meaning.carrier !== undefined || namesRegister(c);

const namesRegister = (c: ColumnFacts): boolean =>
  /\b(day|night|peak|off.?peak|low|normal|rate ?[12]|r[12])\b/.test(plainWords(c.heading));

/** Unit as written: above the column, behind the numbers, in the title lines, in the file's name. */
export function statedUnit(sheet: Sheet, column: ColumnFacts): EnergyUnit | undefined {
  const withSuffix = column.suffix === '' ? undefined : unitOfWords(plainWords(column.suffix));
  if (column.meaning.unit ?? withSuffix) return column.meaning.unit ?? withSuffix;
  const titles = plainWords(sheet.preamble.map((p) => p.text).join(' '));
  return unitOfWords(titles) ?? unitOfWords(fileWords(sheet.fileName));
}

const fileWords = (name: string): string => plainWords(name.replace(/\.[a-z]{2,4}$/i, '').replaceAll(/[-_.]/g, ' '));

/** Carrier as written: above the column, in the other headings, in the title lines, in the file's name. */
export function statedCarrier(
  sheet: Sheet,
  column: ColumnFacts,
): { carrier: Carrier; seriesRole?: SeriesRole } | undefined {
  const { carrier, seriesRole } = column.meaning;
  if (isBesideHeat(sheet, column)) return { carrier: 'electricity', seriesRole: 'heat-pump' };
  if (carrier !== undefined) return seriesRole === undefined ? { carrier } : { carrier, seriesRole };
  const headings = sheet.columns.map((c) => plainWords(c.heading)).join(' ; ');
  const titles = plainWords(sheet.preamble.map((p) => p.text).join(' ; '));
  return carrierOfWords(fileWords(sheet.fileName)) ?? carrierOfWords(titles) ?? carrierOfWords(headings);
}
