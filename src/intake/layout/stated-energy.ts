/** What is said of a column: its unit and what it is of, above it, beside it, in the titles and the other headings. */
import { isTemperature } from '../../model/shapes/evidence.ts';
import { isMissing } from '../numbers/read-number.ts';
import type { EnergyUnit } from '../terms/choices.ts';
import { isOfDegrees, ratioOf } from '../terms/units.ts';
import { cellText, type Table } from '../text/table.ts';
import { type ColumnFacts, isNumberColumn, isWordColumn } from './column-facts.ts';
import { namesRegister, registerOf } from './column-words.ts';
import { isOfVolume, unitOfCounter } from './counter-beside.ts';
import { isOtherUse } from './energy-columns.ts';
import { carrierOfWords, type Energy, plainWords, unitOfSign, unitOfWords } from './headings.ts';
import { isBesideHeat } from './heat-logs.ts';
import type { Sheet } from './sheet.ts';
import { carrierOfTitles, unitOfTitles } from './titles.ts';
import { OF_UNITS, USED, WAY } from './vocabulary.ts';

/** Unit as written: above the column, behind the numbers, in the title lines, in the file's name. */
export function statedUnit(sheet: Sheet, column: ColumnFacts): EnergyUnit | undefined {
  const withSuffix = column.suffix === '' ? undefined : unitOfSign(column.suffix);
  if (column.meaning.unit ?? withSuffix) return column.meaning.unit ?? withSuffix;
  return unitBeside(sheet, column) ?? unitOfTitles(sheet) ?? unitOfCounter(sheet, column);
}

/**
 * A column of one and the same unit in every row; a lone letter under other words may be a mark. Right beside a column it
 * is that one's.
 */
export const unitBeside = (sheet: Sheet, column?: ColumnFacts): EnergyUnit | undefined =>
  unitOfWords(unitWordsBeside(sheet, column));

function unitWordsBeside({ columns, table, firstRow }: Sheet, column?: ColumnFacts): string {
  const all = columns.flatMap((c) => {
    const word = cellText(table, firstRow, c.index);
    const isOfUnits = OF_UNITS.test(plainWords(c.heading));
    // "10 kWh" in every row is a number with a unit as well.
    if (!(isWordColumn(c) || (isOfUnits && c.suffix !== '')) || (!isOfUnits && word.length < 2)) return [];
    const isShort = word.length <= 12 && (isOfUnits || c.meaning.role !== 'quality');
    const said = isShort ? word : /[([]([^)\]]{1,8})[)\]]$/.exec(word)?.[1];
    // In a column of units a letter says degrees.
    const words = plainWords((said ?? '').replace(isOfUnits ? /^(?=[CF]$)/ : /^$/, isOfUnits ? '°' : ''));
    const isUnit = unitOfWords(words) !== undefined && isConstant(table, firstRow, c.index, word);
    return isUnit ? [{ index: c.index, words }] : [];
  });
  return (all.find(({ index }) => index === (column?.index ?? -1) + 1) ?? all[0])?.words ?? '';
}

/** The words that state a column's unit: above it, behind its numbers or in a column of units. */
export function unitWords(sheet: Sheet, column: ColumnFacts): string {
  const said = [column.heading, column.suffix].map(plainWords).find((words) => unitOfWords(words) !== undefined);
  return said ?? unitWordsBeside(sheet, column);
}

export const isColumnOfUnits = (c: ColumnFacts): boolean => isWordColumn(c) && OF_UNITS.test(plainWords(c.heading));

/** What stands behind a number in its cell. */
const BEHIND = /[a-zµ³°]+\d?$/i;

/** The words of a row's unit, in a column of units or behind a number, and their meaning: few words again and again. */
export function unitReader({ table }: Sheet, ofUnits: number | undefined, amounts: number) {
  const known = new Map<string, { readonly words: string; readonly unit: EnergyUnit | undefined }>();
  return (row: number) => {
    const cell = cellText(table, row, ofUnits ?? amounts);
    const text = ofUnits === undefined ? (BEHIND.exec(cell)?.[0] ?? '') : cell;
    const words = known.get(text)?.words ?? plainWords(text);
    const found = known.get(text) ?? { words, unit: unitOfSign(text) };
    known.set(text, found);
    return found;
  };
}

/**
 * The units of a column that measure different things from row to row: by a column of units, or behind its numbers. Beside
 * one that is known a word that is not is another.
 */
export function unitsByRow(sheet: Sheet, column: ColumnFacts): readonly string[] {
  const { columns, table, firstRow } = sheet;
  const counts = new Map<EnergyUnit, number>();
  const unknown = new Set<string>();
  // Headings may be written again further down.
  const headings = new Set(columns.map(({ heading }) => plainWords(heading)));
  const all = column.meaning.unit === undefined ? columns.filter(isColumnOfUnits) : [];
  const own = all.filter(({ index }) => index === column.index + 1);
  const beside = own.length > 0 ? own : all;
  const readers = beside.map((c) => unitReader(sheet, c.index, column.index));
  if (column.suffix !== '') readers.push(unitReader(sheet, undefined, column.index));
  for (const read of readers)
    for (let row = firstRow; row < table.rowCount; row++) {
      const { unit, words } = read(row);
      if (unit !== undefined) counts.set(unit, (counts.get(unit) ?? 0) + 1);
      else if (beside.length > 0 && !isMissing(words) && !headings.has(words)) unknown.add(words);
    }
  const often = [...counts].filter(([, rows]) => beside.length > 0 || rows > 1).map(([unit]) => unit);
  const [first] = often;
  if (counts.size > 0 && unknown.size > 0) return [...often, ...unknown];
  return beside.length > 0 || often.some((unit) => ratioOf(unit, first!) === undefined) ? often : [];
}

/**
 * Carrier as written: above the column, in the file's name, in the title lines, in the other headings; a direction is
 * taken from the column's own words, or from the file's where no column names one.
 */
export function statedCarrier(sheet: Sheet, column: ColumnFacts): Energy | undefined {
  const { carrier, seriesRole } = column.meaning;
  if (isBesideHeat(sheet, column)) return { carrier: 'electricity', seriesRole: 'heat-pump' };
  if (carrier !== undefined) return seriesRole === undefined ? { carrier } : { carrier, seriesRole };
  const others = sheet.columns.filter((c) => c !== column && isNumberColumn(c)).map((c) => c.meaning);
  const hasDirection = others.some((m) => m.seriesRole === 'export' || m.seriesRole === 'generation');
  if (hasDirection) return { carrier: 'electricity' };
  const said = carrierOfTitles(sheet) ?? carrierBeside(sheet);
  const unit = statedUnit(sheet, column);
  const isAmount = (unit !== undefined && !isOfDegrees(unit)) || USED.test(plainWords(column.heading));
  // A file may be called "temp" for many reasons, and a title of the weather is not of every column.
  if (said && !((isAmount || column.isAnswered) && isTemperature(said.carrier))) return said;
  // Rates side by side are of electricity: no other fuel is metered so.
  if (namesRegister(column) && registersOf(sheet).size > 1) return { carrier: 'electricity' };
  if ((unit === undefined || isOfElectricity(unit)) && isMeteredAsElectricity(sheet)) return { carrier: 'electricity' };
  // The weather beside an amount says nothing of it.
  const isAside = (words: string) => isAmount && carrierOfWords(words)?.carrier === 'outdoor-temperature';
  const named = sheet.columns
    .filter((c) => c.meaning.role !== 'calorific')
    .filter((c) => c === column || !isNumberColumn(c) || !(isOtherUse(sheet, column, c) || isApart(sheet, column, c)))
    .filter((c) => !(column.isAnswered && c !== column && isNumberColumn(c) && isAnEnergy(c)))
    .map((c) => plainWords(c.heading))
    .filter((words) => !isAside(words));
  // "Electric $" and "Gas $" side by side tell of neither.
  const kinds = new Set(named.flatMap((words) => carrierOfWords(words)?.carrier ?? []));
  kinds.delete('outdoor-temperature');
  if (kinds.size > 1) return undefined;
  const beside = carrierOfWords(named.join(' ; '));
  return beside && { carrier: beside.carrier };
}

const isOfElectricity = (unit: EnergyUnit): boolean => ['Wh', 'kWh', 'MWh', 'W', 'kW'].includes(unit);

/** Numbers of supply points that only electricity has, and those of gas; CUPS, ICP and MPRN are of either. */
const ELECTRIC_POINT = /^(mpan|nmi|esi ?id|pod|prm|pdl)(?![a-z])/;
const NUMBERED = /\d[\p{L}\d ]{5}/u;
const GAS_POINT = /(?<![a-z])(mprn?|pdr|pce|mirn|gprn)(?![a-z])/;
const REACTIVE = /(?<![a-z])k?va(r|rh|hr|rs)(?![a-z])|reactive|reaktiv|blindarbeit|reactiva|reattiva/;

/** Where the file names a supply point of electricity, or reactive energy, which gas has not. */
function isMeteredAsElectricity({ columns, preamble }: Sheet): boolean {
  const headings = columns.map(({ heading }) => plainWords(heading));
  const titles = preamble.map(({ text }) => plainWords(text));
  if ([...headings, ...titles].some((words) => GAS_POINT.test(words))) return false;
  const isPoint = columns.some(
    ({ meaning: { role } }, i) => (role === 'index' || role === 'unknown') && ELECTRIC_POINT.test(headings[i]!),
  );
  const isTitled = titles.some((words) => ELECTRIC_POINT.test(words) && NUMBERED.test(words));
  return isPoint || isTitled || headings.some((words) => REACTIVE.test(words));
}

const isAnEnergy = ({ meaning: { carrier, role } }: ColumnFacts): boolean =>
  carrier !== undefined && ['value', 'reading'].includes(role);

/** Amounts of a fuel that do not go along with the column say nothing of it. */
const isApart = (sheet: Sheet, column: ColumnFacts, { meaning, ...facts }: ColumnFacts): boolean =>
  meaning.carrier !== undefined &&
  meaning.unit === undefined &&
  ['value', 'reading'].includes(meaning.role) &&
  !isOfVolume(sheet, column, { meaning, ...facts });

const OF_FUELS =
  /\btype\b|\btipo\b|metertype|zahler(art|typ)|malertype|parameter|quantity|variable|measurement|\bfield\b|commodity|\bfuel|service|utility|indicator|entity|sensor|statistic|energieart|sparte|medium|media\b|\bprodu[ck]t(?![a-z])|^energi|fluide|suministro|fornitura|\btuot(e|teen)\b|(?<![a-z])(rodzaj|druh|soort|typ|type|slags?|lajin?) (de |af )?(energi|media|produ[ck]t)/;

const OF_CODES = /\bobis\b|\bregister\b|\bkanal\b|\bchannel\b|kennzahl|kennziffer/;

/** A column that names one and the same energy in every row. */
function carrierBeside({ columns, table, firstRow }: Sheet): Energy | undefined {
  for (const c of columns) {
    const heading = plainWords(c.heading);
    if (!isWordColumn(c) || !(OF_FUELS.test(heading) || WAY.test(heading) || OF_CODES.test(heading))) continue;
    const word = cellText(table, firstRow, c.index);
    const carrier = carrierOfWords(plainWords(word));
    if (carrier && isConstant(table, firstRow, c.index, word)) return carrier;
  }
  return undefined;
}

const registersOf = ({ columns }: Sheet): ReadonlySet<string> =>
  new Set(columns.filter((c) => isNumberColumn(c) && namesRegister(c)).map(registerOf));

const SAMPLE_ROWS = 300;

function isConstant(table: Table, firstRow: number, column: number, word: string): boolean {
  const end = Math.min(table.rowCount - 1, firstRow + SAMPLE_ROWS);
  for (let row = firstRow; row < end; row++) {
    const cell = cellText(table, row, column);
    if (cell !== '' && cell !== word) return false;
  }
  return true;
}
