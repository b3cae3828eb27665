/** Rows in several units of one thing, and gas in m³ in some and in kWh in others, in one unit: by a column of units or what stands behind the numbers. */
import { readAwkwardNumber } from '../numbers/read-number.ts';
import type { EnergyUnit, IntakeChoices, IntakeContext } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { isUnitOf, isVolumeOfGas, kWhPerUnit, ratioOf } from '../terms/units.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isNumberColumn } from './column-facts.ts';
import { gasFactorsOf, gasOf } from './gas-factors.ts';
import { timesOfWords } from './headings.ts';
import { layOutSheet, type Sheet } from './sheet.ts';
import { isColumnOfUnits, statedCarrier, unitReader } from './stated-energy.ts';
import { columnName } from './value-cells.ts';

const isEnergy = (unit: EnergyUnit): boolean => ratioOf(unit, 'kWh') !== undefined;

/** Tonnes beside kilograms, Wh beside kWh, in the unit of the first row; undefined where a row's unit is none of those. */
function evenAlike(sheet: Sheet, ofUnits: ColumnFacts, amounts: ColumnFacts, book: RemarkBook): Sheet | undefined {
  const { table, firstRow } = sheet;
  const unitAt = unitReader(sheet, ofUnits.index, amounts.index);
  const rows = Array.from({ length: table.rowCount - firstRow }, (_, i) => firstRow + i).filter(
    (row) => cellText(table, row, ofUnits.index) !== '',
  );
  const decimal = signOf(rows.map((row) => cellText(table, row, amounts.index)));
  const into = rows.length > 0 ? unitAt(rows[0]!).unit : undefined;
  if (into === undefined || decimal === undefined) return undefined;
  const others = new Set(rows.flatMap((row) => (unitAt(row).unit === into ? [] : [unitAt(row).unit])));
  if ([...others].some((unit) => unit === undefined || ratioOf(unit, into) === undefined)) return undefined;
  const name = cellText(table, rows[0]!, ofUnits.index);
  if (rows.every((row) => cellText(table, row, ofUnits.index) === name)) return undefined;
  const even = rewriteCells(table, (row, column) => {
    const unit = row < firstRow ? undefined : unitAt(row).unit;
    if (unit === undefined) return undefined;
    if (column === ofUnits.index) return [name];
    if (unit === into) return undefined;
    const amount = column === amounts.index ? readAwkwardNumber(cellText(table, row, column), decimal) : Number.NaN;
    return Number.isNaN(amount) ? undefined : [(amount * ratioOf(unit, into)!).toFixed(6).replace('.', decimal)];
  });
  if (others.size > 0)
    book.add('units-evened', 'note', {
      column: columnName(sheet, amounts.index),
      found: [...others].join(', '),
      expected: into,
    });
  return { ...sheet, ...layOutSheet(sheet.fileName, even) };
}

/**
 * The sheet with its kWh as the volume that they are of, so that they come back as they were whatever the calorific value
 * is; undefined for other sheets. Two units on one day are of two fuels, and stay.
 */
export function evenUnits(
  sheet: Sheet,
  { calorificMJPerM3, unit: chosen }: IntakeChoices,
  ofHome: IntakeContext,
  book: RemarkBook,
): Sheet | undefined {
  const { table, firstRow, dateColumn } = sheet;
  if (dateColumn < 0 || chosen !== undefined) return undefined;
  const ofUnits = sheet.columns.find((c) => isColumnOfUnits(c));
  const amounts = sheet.columns.find(
    (c) =>
      isNumberColumn(c) &&
      c.index !== dateColumn &&
      (ofUnits ? c.meaning.unit === undefined : c.suffix !== '') &&
      isAmount(c),
  );
  const alike = ofUnits && amounts && evenAlike(sheet, ofUnits, amounts, book);
  if (alike) return alike;
  if (!amounts || ![undefined, 'gas'].includes(statedCarrier(sheet, amounts)?.carrier)) return undefined;
  const unitAt = unitReader(sheet, ofUnits?.index, amounts.index);
  const rows = Array.from({ length: table.rowCount - firstRow }, (_, i) => firstRow + i);
  const units = new Set(rows.flatMap((row) => unitAt(row).unit ?? []));
  const [volume, ...others] = [...units].toSorted((a, b) => Number(isVolumeOfGas(b)) - Number(isVolumeOfGas(a)));
  if (!volume || !isVolumeOfGas(volume) || others.length === 0 || !others.every(isEnergy)) return undefined;
  const name = unitAt(rows.find((row) => unitAt(row).unit === volume)!).words;
  if (timesOfWords(name) !== 1) return undefined;
  const dated = rows.map((row) => cellText(table, row, dateColumn)).filter((cell) => cell !== '');
  const decimal = signOf(rows.map((row) => cellText(table, row, amounts.index)));
  if (new Set(dated).size < dated.length || decimal === undefined) return undefined;
  const context = gasOf(sheet, name, ofHome);
  const factorAt = gasFactorsOf(sheet, volume, context, calorificMJPerM3);
  const usual = kWhPerUnit(volume, 'gas', context, { ...(calorificMJPerM3 === undefined ? {} : { calorificMJPerM3 }) });
  const even = rewriteCells(table, (row, column) => {
    const unit = row < firstRow ? undefined : unitAt(row).unit;
    if (unit === undefined || unit === volume || !isUnitOf('gas', unit)) return undefined;
    if (column === ofUnits?.index) return [name];
    if (column !== amounts.index) return undefined;
    const own = factorAt?.(row) ?? Number.NaN;
    const kWh = readAwkwardNumber(cellText(table, row, column), decimal) * ratioOf(unit, 'kWh')!;
    const written = (kWh / (Number.isNaN(own) ? usual : own)).toFixed(6).replace('.', decimal);
    return [ofUnits ? written : `${written} ${name}`];
  });
  book.add('units-evened', 'note', {
    column: columnName(sheet, amounts.index),
    found: others.join(', '),
    expected: volume,
  });
  return { ...sheet, ...layOutSheet(sheet.fileName, even) };
}

const isAmount = ({ meaning: { role } }: ColumnFacts): boolean => role === 'value' || role === 'unknown';

/** The decimal sign that every number can have; undefined where both can be and differ. */
function signOf(cells: readonly string[]): '.' | ',' | undefined {
  const both = cells.map((cell) => ({ '.': readAwkwardNumber(cell, '.'), ',': readAwkwardNumber(cell, ',') }));
  const can = (sign: '.' | ',', other: '.' | ',') =>
    both.every((one) => !Number.isNaN(one[sign]) || Number.isNaN(one[other]));
  if (!can('.', ',')) return can(',', '.') ? ',' : undefined;
  const isClear = !can(',', '.') || both.every((one) => Number.isNaN(one['.']) || one['.'] === one[',']);
  return isClear ? '.' : undefined;
}
