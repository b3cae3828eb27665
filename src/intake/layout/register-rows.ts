/** Files that name the register of each row in a column: one table for each register, so that each is read by itself. */

import { isDelivered } from '../../model/shapes/heating.ts';
import { monthOfName } from '../dates/month-names.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, UNREADABLE } from '../dates/stamp-reader.ts';
import { countAsNumber, readAwkwardNumber } from '../numbers/read-number.ts';
import { pickRows } from '../text/rewrite-cells.ts';
import { cellText, rowTexts } from '../text/table.ts';
import { MOST_BY_HAND } from './carry-dates.ts';
import { type ColumnFacts, isDateColumn, isMarkColumn, isNumberColumn, isWordColumn } from './column-facts.ts';
import { isOfVolumeRows } from './counter-beside.ts';
import { type Energy, isStoveFuel, meaningOf, plainWords, slotOfHeading, unitOfWords } from './headings.ts';
import { areReadInTurn, countApart, namesMeters, numbersMeters } from './meters-in-turn.ts';
import { isEstimate, YES } from './quality-marks.ts';
import { layOutSheet, type Sheet } from './sheet.ts';
import { stepOf } from './sheet-step.ts';
import { unitBeside } from './stated-energy.ts';
import { AMOUNT, DRAWN, HIGHEST, POWER, RATE_REGISTER, TO_COMPARE, TOTALS, WAY } from './vocabulary.ts';
import { DRAWN_FROM_GRID, energyOf, isFlagOfWay, waysOf, withNoughts } from './ways-in-turn.ts';

export interface RegisterSheet {
  /** As written in the column. */
  readonly register: string;
  readonly sheet: Sheet;
}

export interface RegisterSheets {
  readonly column: number;
  readonly sheets: readonly RegisterSheet[];
  /** Reactive energy, humidity and the like. */
  readonly leftOut: readonly string[];
  /** Whether each moment has one way only, so that the other is nought at it. */
  readonly isNetted: boolean;
}

const MOST_REGISTERS = 8;
/** By their names or numbers; more are those of bills. */
const MOST_METERS = 40;
/** Rows looked at to see whether stamps repeat. */
const SAMPLE_ROWS = 4000;
const CODE_HEADING =
  /register|channel|mpan|mprn|\bnmi\b|\bicp\b|esi ?id|\brate\b|\bmeter\b|kanal|zahler|obis|\btarif|contador|compteur|contatore|teller|maler/;
const USED_FOR_HEATING =
  /(consum|\bused\b|usage|\binput\b|electric|verbrauch|strom).*(heating|dhw|hot water|heizung|warmwasser)|(heating|dhw|hot water|heizung|warmwasser).*(consum|\bused\b|usage|\binput\b|electric|verbrauch|strom)/;

/** Undefined where no column tells registers apart, or where each moment stands there once only. */
export function splitByRegister(sheet: Sheet): RegisterSheets | undefined {
  if (sheet.dateColumn < 0) return undefined;
  let repeats: boolean | undefined;
  const isRepeating = () => {
    repeats ??= momentsRepeat(sheet);
    return repeats;
  };
  for (const column of sheet.columns) {
    if (column.index === sheet.dateColumn || isDateColumn(column)) continue;
    const isMark = isMarkColumn(column);
    // Marks of a longer table come from a meter, which plans nothing.
    if (isMark && sheet.table.rowCount > MOST_BY_HAND && column.marks + column.missing === column.sampled) continue;
    const isCode =
      isNumberColumn(column) &&
      (CODE_HEADING.test(plainWords(column.heading)) ||
        numbersMeters(column) ||
        isYesToCompare(column) ||
        isFlagOfWay(column));
    if (!isWordColumn(column) && !isCode) continue;
    const { groups, isWhole } = groupRows(sheet, column) ?? {};
    const ways = groups && waysOf(column, [...groups.keys()]);
    if (
      !groups ||
      groups.size < 2 ||
      isOfPapers(column, [...groups.keys()]) ||
      (isMark && !ways && !holdsOtherThanUse([...groups.keys()], column)) ||
      [...groups.keys()].every(namesMonth) ||
      !(
        isRepeating() ||
        (isWhole &&
          (holdsOtherThanUse([...groups.keys()], column) ||
            ((ways || nameEnergies([...groups.keys()])) && takeTurns(groups)) ||
            countApart(sheet, groups) ||
            areReadInTurn(sheet, column, groups)))
      ) ||
      !standsOnce(sheet, groups)
    )
      continue;
    const others = otherThanUse([...groups.keys()], column);
    const leftOut = [...groups.keys()].filter(
      (register) => others.includes(register) || isOfNoUse(register, [...groups.keys()]),
    );
    // A total of several energies is of none.
    const energies = new Set([...groups.keys()].flatMap((register) => energyOf(register)?.carrier ?? []));
    if (energies.size > 1)
      leftOut.push(...[...groups.keys()].filter((register) => TOTALS.test(register) && !energyOf(register)));
    for (const register of leftOut) groups.delete(register);
    if (groups.size === 0) return undefined;
    const known = new Map(
      [...groups.keys()].map((register) => [register, ways?.known.get(register) ?? energyOf(register)]),
    );
    // Beside the heat that it makes, what heating uses is the heat pump's.
    if ([...known.values()].some((one) => one?.seriesRole === 'heat-output'))
      for (const [register, energy] of known)
        if ((energy?.carrier ?? 'electricity') === 'electricity' && USED_FOR_HEATING.test(plainWords(register)))
          known.set(register, { carrier: 'electricity', seriesRole: 'heat-pump' });
    const hasDirection = [...known.values()].some(
      (one) => one?.seriesRole === 'export' || one?.seriesRole === 'generation',
    );
    const sheets = [...groups].map(([register, rows]) => ({
      register,
      sheet: sheetOf(
        sheet,
        column,
        register,
        known.get(register) ?? (hasDirection ? DRAWN_FROM_GRID : undefined),
        rows,
        (ways?.isDoubtful || WAY.test(plainWords(column.heading))) &&
          !known.get(register) &&
          !AMOUNT.test(plainWords(register)),
      ),
    }));
    const inOneUnit = withoutVolume(sheets);
    const volumes = sheets.filter((one) => !inOneUnit.some(({ register }) => register === one.register));
    const clock = clockColumnOf(sheet);
    const netted =
      !isRepeating() && (hasDirection || ways)
        ? withNoughts(sheet, inOneUnit, (own, row) => momentAt(own, row, clock))
        : undefined;
    return {
      column: column.index,
      sheets: netted ?? joinTurns(sheet, inOneUnit),
      isNetted: netted !== undefined,
      leftOut: [...leftOut, ...volumes.map(({ register }) => register)],
    };
  }
  return undefined;
}

/** Of rows that give the same gas in m³ and in kWh those in kWh, which are then known to be of gas. */
function withoutVolume(sheets: readonly RegisterSheet[]): readonly RegisterSheet[] {
  const [volume, ...others] = sheets.filter(({ register }) => unitOfWords(plainWords(register)) === 'm³');
  const [energy, ...further] = sheets.filter(({ register }) => unitOfWords(plainWords(register)) === 'kWh');
  if (!volume || !energy || others.length + further.length > 0 || !isOfVolumeRows(energy.sheet, volume.sheet))
    return sheets;
  const columns = energy.sheet.columns.map((c) =>
    isNumberColumn(c) && c.meaning.role === 'value' ? { ...c, meaning: { ...c.meaning, carrier: 'gas' as const } } : c,
  );
  return sheets
    .filter((one) => one !== volume)
    .map((one) => (one === energy ? { ...energy, sheet: { ...energy.sheet, columns } } : one));
}

/** Each bill has a number of its own, and so has its credit. */
const isOfPapers = ({ heading }: ColumnFacts, words: readonly string[]): boolean =>
  words.every((word) => /\d/.test(word)) &&
  /^(invoice|bill|statement|document|doc|credit note|rechnung|beleg|facture|piece|fattura|factura|documento|factuur|faktura|lasku)(s|en)?[ .-]*(no|nr|n[°º]|num\w*|nummer|id|ref\w*|#)?\.?$|^(rechnungs|beleg|dokument|factuur|faktura|fatura|laskun?)(nummer|nr|numero)\.?$|^(numero|n[°º]|nr|no|ref\w*)\.? (de |di |d.)?(facture|factura|fattura|fatura|factuur|faktury|document\w*)$/.test(
    plainWords(heading),
  );

/** "Jan 14 - Feb 12" is when, and no register. */
const namesMonth = (word: string): boolean => /\d/.test(word) && monthOfName(/\p{L}{3,}/u.exec(word)?.[0] ?? '') > 0;

/** "RI" and "RE" stand for reactive energy beside "AI" and "AE". */
function isOfNoUse(register: string, all: readonly string[]): boolean {
  const isReactive = /^r[ei]$/i.test(register) && all.some((other) => /^a[ei]$/i.test(other));
  const isCoded = /^[qk]\d$/i.test(register) && all.some((other) => /^[eb]\d$/i.test(other));
  const words = plainWords(register);
  // "Peak" is a register of the dear hours too.
  const isHighest = HIGHEST.test(words) && !(RATE_REGISTER.test(words) && !POWER.test(words));
  const { role } = meaningOf(register);
  // "Day rate" and "Battery charge" may be registers; money says so.
  const isMoney =
    role === 'bill' ||
    /^((amount )?paid|payments?)$/i.test(register) ||
    (['cost', 'rate'].includes(role) &&
      /[£€$]|\b(costs?|prices?|standing|kosten|preis)\b/.test(register.toLowerCase()));
  return isReactive || isCoded || isHighest || isMoney || role === 'beside';
}

/** Registers of one way of which each moment stands in one only, as a dear and a cheap one do: one record of both. */
function joinTurns(sheet: Sheet, sheets: readonly RegisterSheet[]): readonly RegisterSheet[] {
  const { kind, minutes = 1440 } = stepOf(sheet);
  if (kind !== 'time' || minutes >= 1440) return sheets;
  const clock = clockColumnOf(sheet);
  const value = ({ sheet: own }: RegisterSheet) =>
    own.columns.find((c) => isNumberColumn(c) && c.meaning.role === 'value');
  const ways = Map.groupBy(sheets, (one) => {
    const c = value(one);
    return c && !c.rising && !c.falling && RATE_REGISTER.test(plainWords(one.register))
      ? `${c.meaning.carrier} ${c.meaning.seriesRole} ${c.meaning.unit}`
      : one.register;
  });
  return [...ways.values()].flatMap((group) => {
    const moments = new Set<string>();
    let rows = 0;
    for (const { sheet: own } of group)
      for (let row = own.firstRow; row < own.table.rowCount; row++, rows++) moments.add(momentAt(own, row, clock));
    // The doubled hour of autumn stands there twice.
    if (group.length < 2 || moments.size < rows * 0.99) return group;
    const register = group.map((one) => one.register).join(' + ');
    const { firstRow } = group[0]!.sheet;
    const lines = new Set(group.flatMap(({ sheet: own }) => [...own.table.lineOfRow.subarray(firstRow)]));
    const heads = Array.from({ length: sheet.firstRow }, (_, row) => row);
    const own = Array.from({ length: sheet.table.rowCount }, (_, row) => row).filter(
      (row) => row >= sheet.firstRow && lines.has(sheet.table.lineOfRow[row]!),
    );
    const joined = pickRows(sheet.table, [...heads, ...own]);
    const columns = group[0]!.sheet.columns.map((c) => ({
      ...c,
      heading: c.heading.replace(group[0]!.register, register),
    }));
    return [{ register, sheet: { ...group[0]!.sheet, table: joined, columns } }];
  });
}

/** Words of rows that are said to be forecasts, of another year or of another fuel, or the yes of a column that asks so. */
function otherThanUse(words: readonly string[], { heading }: ColumnFacts): readonly string[] {
  const isAsking = TO_COMPARE.test(plainWords(heading));
  const sellsFuel = words.some((word) => isDelivered(energyOf(word)?.carrier));
  return words.filter(
    (word) =>
      (isAsking && YES.test(word)) ||
      (TO_COMPARE.test(plainWords(word)) && !isEstimate(word)) ||
      (sellsFuel && isStoveFuel(plainWords(word)) && energyOf(word) === undefined),
  );
}

const isYesToCompare = ({ heading, smallest, largest }: ColumnFacts): boolean =>
  TO_COMPARE.test(plainWords(heading)) && smallest >= 0 && largest <= 1;

/** Whether some rows are such and others not. */
function holdsOtherThanUse(words: readonly string[], column: ColumnFacts): boolean {
  const others = otherThanUse(words, column);
  return others.length > 0 && others.length < words.length;
}

/** Rows of each word, and whether all that are dated have one. Undefined where there are too many words for registers. */
function groupRows(sheet: Sheet, column: ColumnFacts): { groups: Map<string, number[]>; isWhole: boolean } | undefined {
  const { table, firstRow } = sheet;
  const groups = new Map<string, number[]>();
  const most = namesMeters(column) ? MOST_METERS : MOST_REGISTERS;
  let isWhole = true;
  for (let row = firstRow; row < table.rowCount; row++) {
    const word = cellText(table, row, column.index);
    // A row without a date is no reading: headings again, totals.
    if ((word === '' && !isWhole) || !isStamped(sheet, row) || TOTALS.test(cellText(table, row, 0))) continue;
    if (word === '') {
      isWhole = false;
      continue;
    }
    const group = groups.get(word);
    if (group) group.push(row);
    else if (groups.size >= most) return undefined;
    else groups.set(word, [row]);
  }
  return { groups, isWhole };
}

function isStamped({ table, dateColumn, dateForm }: Sheet, row: number): boolean {
  const cell = cellText(table, row, dateColumn);
  if (dateForm !== 'calendar') return !Number.isNaN(countAsNumber(cell));
  return readStamp(cell, 0, cell.length, true, createStampReader()) !== UNREADABLE;
}

/** Whether most moments stand in several rows, one for each register; a row that is written again is none of its own. */
function momentsRepeat(sheet: Sheet): boolean {
  const { table, firstRow } = sheet;
  const clock = clockColumnOf(sheet);
  const end = Math.min(table.rowCount, firstRow + SAMPLE_ROWS);
  const moments = new Set<string>();
  const texts = new Set<string>();
  const textOf = (row: number) => rowTexts(table, row).join('\t');
  for (let row = firstRow; row < end; row++) {
    moments.add(momentAt(sheet, row, clock));
    texts.add(textOf(row));
  }
  if (moments.size <= texts.size * 0.75) return true;
  // Registers one after another, each longer than the sample, repeat its moments further down.
  if (table.rowCount <= end) return false;
  let again = 0;
  for (let row = end; row < table.rowCount && again <= 100; row += 7)
    if (moments.has(momentAt(sheet, row, clock)) && !texts.has(textOf(row))) again++;
  return again > 100;
}

/** Whether words name different energies or ways, and most words one: rows of two are never one record, whatever their dates. */
function nameEnergies(words: readonly string[]): boolean {
  const named = words.flatMap((word) => {
    const energy = energyOf(word);
    if (energy) return [`${energy.carrier} ${energy.seriesRole}`];
    return DRAWN.test(plainWords(word)) ? ['electricity undefined'] : [];
  });
  return new Set(named).size > 1 && named.length * 2 > words.length;
}

/** Whether a word comes again after another: one supplier after the other, whatever their names, is one record. */
const takeTurns = (groups: ReadonlyMap<string, readonly number[]>): boolean => {
  const [first, second] = [...groups.values()].sort((a, b) => a[0]! - b[0]!);
  return second !== undefined && first!.at(-1)! > second[0]!;
};

/** Whether each moment stands but once under each word, so that the words tell the rows apart. */
function standsOnce(sheet: Sheet, groups: ReadonlyMap<string, readonly number[]>): boolean {
  const clock = clockColumnOf(sheet);
  for (const rows of groups.values()) {
    const moments = new Set<string>();
    // A row that is written again is no second kind, nor is the doubled hour of autumn.
    const texts = new Set<string>();
    for (const row of rows.slice(0, SAMPLE_ROWS)) {
      moments.add(momentAt(sheet, row, clock));
      texts.add(rowTexts(sheet.table, row).join('\t'));
    }
    if (moments.size < texts.size * 0.9) return false;
  }
  return true;
}

const clockColumnOf = (sheet: Sheet): number | undefined =>
  stepOf(sheet).timeColumn ??
  sheet.columns.find((c) => c.clocks > 0 && c.index !== sheet.dateColumn && slotOfHeading(c.heading) === undefined)
    ?.index;
const momentAt = ({ table, dateColumn }: Sheet, row: number, clock: number | undefined): string =>
  `${cellText(table, row, dateColumn)} ${clock === undefined ? '' : cellText(table, row, clock)}`;

function sheetOf(
  sheet: Sheet,
  column: ColumnFacts,
  register: string,
  carrier: Energy | undefined,
  rows: readonly number[],
  isOfUnknownWay: boolean,
): Sheet {
  const { table, firstRow } = sheet;
  const heads = Array.from({ length: firstRow }, (_, row) => row);
  const own = layOutSheet(sheet.fileName, pickRows(table, [...heads, ...rows]));
  const unit = unitOfWords(plainWords(register)) ?? unitBeside(own) ?? column.meaning.unit;
  const name = Number.isNaN(readAwkwardNumber(register, '.')) ? register : `register ${register}`;
  // What the word of a row is about is the amount in it, not every number.
  const hasAmount = own.columns.some((c) => isNumberColumn(c) && c.meaning.role === 'value');
  return {
    ...own,
    ...(own.columns.some((c) => slotOfHeading(c.heading) !== undefined) ? { register: name } : {}),
    columns: own.columns.map((c): ColumnFacts => {
      if (c.index === column.index) return { ...c, marks: 0, meaning: { role: 'index' } };
      if (c.meaning.role === 'index' && c.heading !== '') return c;
      if (!isNumberColumn(c) || ['cost', 'rate', 'calorific', 'quality', 'beside'].includes(c.meaning.role)) return c;
      if (hasAmount && c.meaning.role === 'unknown') return c;
      const isOfDay = slotOfHeading(c.heading) !== undefined;
      const heading = isOfDay ? [c.heading] : [c.heading, name];
      return {
        ...c,
        ...(isOfUnknownWay ? { isOfUnknownWay } : {}),
        heading: heading.filter((word) => word !== '').join(', '),
        meaning: {
          ...c.meaning,
          ...(carrier && (c.meaning.carrier === undefined || carrier.seriesRole !== undefined) ? carrier : {}),
          ...(c.meaning.unit === undefined && unit !== undefined ? { unit } : {}),
        },
      };
    }),
    ...(sheet.workbook ? { workbook: sheet.workbook } : {}),
    ...(sheet.dayFirst === undefined ? {} : { dayFirst: sheet.dayFirst }),
    ...(sheet.isMonthFirstHere ? { isMonthFirstHere: true } : {}),
  };
}
