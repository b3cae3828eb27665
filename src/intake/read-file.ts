/** Reads any evidence file: one function for the preview and for the import, so that both see the same values. */

import { type OwnNumber, type Remark, type Series, standsBeside } from '../model/shapes/evidence.ts';
import type { Wording } from '../model/shapes/told.ts';
import { writesMonthFirst } from './dates/decide-day-first.ts';
import { FORMS } from './forms/index.ts';
import { nothingRead, type ShapeReading } from './importer/shape.ts';
import {
  type IntakeChoices,
  type IntakeContext,
  type IntakePreview,
  type IntakeResult,
  LARGEST_EVIDENCE_BYTES,
} from './intake.ts';
import { accountColumns } from './layout/account-columns.ts';
import { askLeftOut, askOtherFuels } from './layout/ask-left-out.ts';
import { askTitleWords } from './layout/ask-title-words.ts';
import { askTitles } from './layout/ask-titles.ts';
import { evenUnits } from './layout/even-units.ts';
import { askReplaced, askUnread, remarkPreamble } from './layout/explain-strays.ts';
import { plainWords } from './layout/headings.ts';
import { remarkNoFit } from './layout/no-fit.ts';
import { leaveOutOtherMoney } from './layout/other-money.ts';
import { numbersOfSheet } from './layout/own-numbers.ts';
import { peopleOf } from './layout/people-of-sheet.ts';
import { pricesOnly } from './layout/prices-only.ts';
import { remarkSigns } from './layout/quality-marks.ts';
import { splitByRegister } from './layout/register-rows.ts';
import { seasonOf } from './layout/seasons.ts';
import { hasDatesTwice } from './layout/several-tables.ts';
import type { Sheet } from './layout/sheet.ts';
import { fallingLevel } from './layout/tank-level.ts';
import { hasWeekdaysAcross } from './layout/unfold-across.ts';
import { columnName } from './layout/value-cells.ts';
import { FIREWOOD } from './layout/vocabulary.ts';
import { namesWithoutPeople, recordsWithoutPeople, withoutPeople } from './layout/without-people.ts';
import { writeOutYears } from './layout/years-first.ts';
import { openSheet, remarkTooLarge } from './open-sheet.ts';
import { readRegisters } from './read-registers.ts';
import { sumsAmong } from './readings/leave-out-sums.ts';
import { askLoneRegisters } from './readings/lone-registers.ts';
import { SHAPES } from './shapes/index.ts';
import { stageOf } from './terms/progress.ts';
import { listNames, openRemarkBook, type RemarkBook } from './terms/remark-book.ts';
import { recogniseForeign } from './text/foreign.ts';
import { cellText } from './text/table.ts';
import { doubtWeather } from './weather/doubt-weather.ts';
import { type PackedFile, unpackFiles } from './workbook/unpack.ts';

/** A fit below this is no fit. */
const LEAST_FIT = 0.3;
const PREVIEW_ROWS = 12;

export function readFile(
  fileName: string,
  bytes: Uint8Array,
  given: IntakeChoices,
  context: IntakeContext,
): IntakeResult {
  const book = openRemarkBook(fileName, given);
  const packed =
    recogniseForeign(bytes) === 'archive' ? takeFromArchive(fileName, bytes, given, context, book) : undefined;
  if (packed) return ofArchive(fileName, packed, given, context);
  if (book.refused()) return { preview: emptyPreview(fileName, given, book), intervals: [] };
  const whole = readWhole(fileName, bytes, given, context, book);
  if (whole) return whole;
  const laid = layOut(fileName, bytes, given, context, book);
  return laid ? readLaid(laid, given, context, book) : { preview: emptyPreview(fileName, given, book), intervals: [] };
}

/** A sheet whose columns are understood, and how it is read. */
interface Laid {
  readonly sheet: Sheet;
  /** Where its rows name them. */
  readonly registers: ReturnType<typeof splitByRegister>;
  readonly choices: IntakeChoices;
}

function layOut(
  fileName: string,
  bytes: Uint8Array,
  given: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): Laid | undefined {
  const opened = openSheet(fileName, bytes, { onProgress: stageOf(context.onProgress, 0, 0.35) }, book, given);
  if (!opened) return undefined;
  const laid = {
    ...leaveOutOtherMoney(writeOutYears(opened, given, context, book), context, book),
    isMonthFirstHere: writesMonthFirst(context.zone),
    ...(given.dayFirst === undefined ? {} : { dayFirst: given.dayFirst }),
  };
  const choices = laid.workbook?.hasNumbers ? { decimal: '.' as const, ...given } : given;
  const registers = splitByRegister(laid);
  return { sheet: (registers ? undefined : evenUnits(laid, choices, context, book)) ?? laid, registers, choices };
}

function readLaid(laid: Laid, given: IntakeChoices, context: IntakeContext, book: RemarkBook): IntakeResult {
  const { sheet, registers, choices } = laid;
  const looked = registers?.sheets[0]?.sheet ?? sheet;
  const candidates = SHAPES.map((shape) => ({ shape: shape.name, ...shape.detect(looked) })).sort(
    (a, b) => b.fit - a.fit,
  );
  const best = candidates[0];
  const wanted = choices.shape ?? (best && best.fit >= LEAST_FIT ? best.shape : undefined);
  const shape = SHAPES.find((s) => s.name === wanted);
  remarkSheet(sheet, choices, book);
  const read = parse(laid, shape, best?.reason ?? '', context, book);
  if (read.valueColumns && shape?.name !== 'days across')
    askLeftOut(sheet, read.series, [...read.valueColumns, ...(read.detailColumns ?? [])], choices, book);
  askOtherFuels(sheet, read.series, registers?.leftOut ?? [], choices, book);
  // A reading of a counter that is missing takes nothing from the sum.
  if (shape?.name !== 'counter') askUnread(sheet, read, choices, book);
  askReplaced(read.series, choices, book);
  const sums = sumsAmong(read.series, choices, !registers, book);
  const reading = {
    ...read,
    series: read.series.filter(({ id }) => !sums.has(id)),
    intervals: read.intervals.filter(({ seriesId }) => !sums.has(seriesId)),
  };
  askLoneRegisters(sheet, reading.series, choices, book);
  askTitles(sheet, reading.series, choices, book);
  askTitleWords(sheet, reading.series, choices, book);
  doubtAsWeather(sheet, reading.series, choices, book);
  context.onProgress?.(1);
  const namesOfSums = read.series.flatMap(({ id, name }) => (sums.has(id) ? [name] : []));
  const settled = { shape: shape?.name ?? null, candidates, reading, namesOfSums };
  return { ...previewOf(laid, settled, given, book), intervals: book.refused() ? [] : reading.intervals };
}

/** What is said of the sheet, however it is read. */
function remarkSheet(sheet: Sheet, choices: IntakeChoices, book: RemarkBook): void {
  remarkPreamble(sheet, book);
  remarkSigns(sheet, book);
  if (choices.columns?.stamp === undefined && hasDatesTwice(sheet)) book.add('tables-beside', 'refusal');
  const { turned } = sheet;
  if (turned)
    book.add(turned.isCertain ? 'dates-turned' : 'dates-turned-maybe', turned.isCertain ? 'note' : 'refusal', {
      row: turned.line,
      found: turned.found,
      count: turned.count,
    });
  const titles = [sheet.fileName, ...sheet.preamble.map(({ text }) => text)];
  const wood = titles.find((title) => FIREWOOD.test(plainWords(title)));
  if (wood !== undefined && !sheet.columns.some(({ meaning }) => meaning.carrier !== undefined))
    book.add('other-fuel', 'refusal', { column: withoutPeople(wood) });
  if (sheet.dateForm === 'serial') book.add('dates-are-serials', 'note');
}

/** @param reason why the shape that fits best fits no better */
function parse(
  { sheet, registers, choices }: Laid,
  shape: (typeof SHAPES)[number] | undefined,
  reason: Wording,
  context: IntakeContext,
  book: RemarkBook,
): ShapeReading {
  if (hasWeekdaysAcross(sheet.table)) {
    book.add('weekdays-across', 'refusal');
    return nothingRead(choices, 0);
  }
  const season = seasonOf(sheet);
  if (season !== undefined) {
    book.add('rows-of-seasons', 'refusal', { found: season });
    return nothingRead(choices, 0);
  }
  const isChosen = choices.columns?.value !== undefined || choices.unit !== undefined;
  const prices = isChosen ? [] : pricesOnly(sheet);
  if (prices.length > 0) {
    book.add('prices-only', 'refusal', { found: listNames(prices) });
    return nothingRead(choices, 0);
  }
  if (!shape || sheet.dateColumn < 0) {
    remarkNoFit(sheet, reason, book);
    return nothingRead(choices, 0);
  }
  const level = fallingLevel(sheet);
  if (level) {
    book.add('tank-level', 'refusal', { column: columnName(sheet, level.index) });
    return nothingRead(choices, 0);
  }
  if (registers) return readRegisters(registers, shape, choices, context, book);
  const onProgress = stageOf(context.onProgress, 0.35, 1);
  return shape.parse({ sheet, choices, context: { ...context, onProgress }, book });
}

function doubtAsWeather(sheet: Sheet, series: readonly Series[], choices: IntakeChoices, book: RemarkBook): void {
  const titles = [sheet.fileName, ...sheet.preamble.map(({ text }) => text)];
  const said = [
    ...titles,
    ...sheet.columns.flatMap(({ heading, meaning }) => (meaning.role === 'beside' ? [] : [heading])),
  ];
  const apart = (words: readonly string[]) => words.join(' ; ').replaceAll(/[_.]/g, ' ');
  for (const one of series) doubtWeather(one, apart(titles), apart(said), choices, book);
}

interface Settled {
  readonly shape: string | null;
  readonly candidates: IntakePreview['candidates'];
  readonly reading: ShapeReading;
  /** Of records left out since they are the sum of others. */
  readonly namesOfSums: readonly string[];
}

/** All that the installer sees of it, without the people that the file names. */
function previewOf(
  { sheet, registers, choices }: Laid,
  { shape, candidates, reading, namesOfSums }: Settled,
  given: IntakeChoices,
  book: RemarkBook,
): Pick<IntakeResult, 'preview' | 'people'> {
  const people = peopleOf(sheet);
  const numbers = numbersOfSheet(sheet, registers?.column);
  const own = { ...reading, kindColumn: registers?.column, sums: namesOfSums, isAcross: shape === 'days across' };
  const uses = accountColumns(sheet, own).map((one) => ({
    ...one,
    name: withoutPeople(columnName(sheet, one.column), people),
  }));
  const ofSheets = reading.series.map((one) => ofSheet(one, sheet, numbers));
  const series = recordsWithoutPeople(ofSheets, people).map((one) => standing(one, choices));
  const refused = book.refused();
  return {
    people,
    preview: {
      fileName: sheet.fileName,
      shape,
      candidates,
      choices: {
        ...reading.choices,
        ...(sheet.workbook ? { sheet: sheet.workbook.sheet } : {}),
        ...(given.every === undefined ? {} : { every: given.every }),
        ...(given.fill ? { fill: given.fill } : {}),
        ...(given.ownUse ? { ownUse: given.ownUse } : {}),
        ...(given.ofColumns ? { ofColumns: given.ofColumns } : {}),
        ...(given.beside ? { beside: given.beside } : {}),
        ...(given.besideOf ? { besideOf: given.besideOf } : {}),
      },
      ...(sheet.workbook ? { sheets: [...sheet.workbook.sheets] } : {}),
      columns: sheet.columns.map((c) => columnName(sheet, c.index)),
      // Where nothing was read nothing was left out for another.
      ...(shape === null ? {} : { uses }),
      rows: previewRows(sheet),
      dataRows: reading.dataRows,
      part: {
        ...((sheet.workbook?.sheets.length ?? 0) > 1 ? { sheet: sheet.workbook!.sheet } : {}),
        ...(reading.valueColumns ? { columns: [...new Set(reading.valueColumns)] } : {}),
      },
      series: refused ? [] : series,
      firstDays: refused ? [] : [...reading.firstDays],
      remarks: book.list(),
    },
  };
}

interface Packed extends PackedFile {
  /** Names of the files with data. */
  readonly all: readonly string[];
  readonly remarks: readonly Remark[];
}

/** The file that is taken: the first with data, unless the installer names another. */
function takeFromArchive(
  fileName: string,
  bytes: Uint8Array,
  { sheet }: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): Packed | undefined {
  const unpacked = unpackFiles(fileName, bytes) ?? [];
  const found = unpacked.filter((one) => holdsData(one, context));
  for (const { name, bytes: inside } of unpacked)
    if (inside.length > LARGEST_EVIDENCE_BYTES)
      remarkTooLarge(inside, withoutPeople(name), found.length > 0 ? 'note' : 'refusal', book);
  const names = namesWithoutPeople(found.map(({ name }) => name));
  const files = found.map((one, at) => ({ ...one, name: names[at]! }));
  const taken = files.find(({ name }, at) => name === sheet || found[at]!.name === sheet) ?? files[0];
  if (!taken) return undefined;
  const all = files.map(({ name }) => name);
  if (sheet === undefined || ![taken.name, found[files.indexOf(taken)]!.name].includes(sheet))
    book.add(all.length > 1 ? 'sheet-packed-asked' : 'sheet-packed-taken', all.length > 1 ? 'question' : 'note', {
      count: all.length,
      found: listNames(all),
      expected: taken.name,
    });
  return { ...taken, all, remarks: book.list() };
}

function holdsData({ name, bytes }: PackedFile, context: IntakeContext): boolean {
  if (bytes.length > LARGEST_EVIDENCE_BYTES || recogniseForeign(bytes) === 'archive') return false;
  if (FORMS.some((one) => one.matches(bytes))) return true;
  return (
    (openSheet(name, bytes, { ...context, onProgress: () => context.onProgress?.(0) }, openRemarkBook(name))
      ?.dateColumn ?? -1) >= 0
  );
}

/** One file of an archive, read as it would be by itself; its records bear its name where there are others. */
function ofArchive(fileName: string, packed: Packed, given: IntakeChoices, context: IntakeContext): IntakeResult {
  const { sheet: _, ...choices } = given;
  const own = readFile(packed.name.split('/').at(-1)!, packed.bytes, choices, context);
  const isAlone = packed.all.length === 1;
  const series = own.preview.series.map((one) =>
    isAlone ? one : standing({ ...one, name: `${packed.name}: ${one.name}` }, given),
  );
  const remarks = own.preview.remarks.map((remark) => ({ ...remark, file: fileName }));
  return {
    ...own,
    preview: {
      ...own.preview,
      fileName,
      choices: { ...own.preview.choices, sheet: packed.name },
      ...(isAlone ? {} : { sheets: [...packed.all], part: { ...own.preview.part, sheet: packed.name } }),
      series,
      remarks: [...packed.remarks, ...remarks],
    },
  };
}

/** What a record is beside others of its kind, where the installer said it. */
export function standing(series: Series, choices: IntakeChoices): Series {
  const beside = choices.besideOf?.[series.name] ?? choices.beside;
  if (beside === undefined || (beside !== 'aside' && !standsBeside(series))) return series;
  return beside === 'goes-on' ? { ...series, goesOn: true } : { ...series, beside };
}

/** Every sheet but the one that is taken by itself names its records, so that no two sheets' are one. */
function ofSheet(series: Series, { workbook }: Sheet, numbers: readonly OwnNumber[]): Series {
  const own = numbers.length > 0 && standsBeside(series) ? { ...series, numbers: [...numbers] } : series;
  return workbook && !workbook.isFirst ? { ...own, name: `${workbook.sheet}: ${series.name}` } : own;
}

/** Files that are no table, such as meter data in XML; undefined where the file may be a table. */
function readWhole(
  fileName: string,
  bytes: Uint8Array,
  choices: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): IntakeResult | undefined {
  const form = bytes.length > LARGEST_EVIDENCE_BYTES ? undefined : FORMS.find((one) => one.matches(bytes));
  const reading = form?.read({ fileName, bytes, choices, context, book });
  if (!form || !reading) return undefined;
  for (const series of reading.series) doubtWeather(series, '', reading.titles ?? '', choices, book);
  context.onProgress?.(1);
  const refused = book.refused();
  const { columns, rows, dataRows } = reading;
  return {
    preview: {
      fileName,
      shape: form.name,
      candidates: [{ shape: form.name, fit: 1, reason: form.reason }],
      choices: {
        ...reading.choices,
        ...(choices.fill ? { fill: choices.fill } : {}),
        ...(choices.beside ? { beside: choices.beside } : {}),
        ...(choices.besideOf ? { besideOf: choices.besideOf } : {}),
      },
      columns: [...columns],
      rows,
      dataRows,
      series: refused ? [] : recordsWithoutPeople(reading.series).map((one) => standing(one, choices)),
      firstDays: refused ? [] : [...reading.firstDays],
      remarks: book.list(),
    },
    intervals: refused ? [] : reading.intervals,
  };
}

function previewRows(sheet: Sheet): IntakePreview['rows'] {
  const { table, firstRow, columns } = sheet;
  const rows: IntakePreview['rows'] = [];
  for (let row = firstRow; row < Math.min(table.rowCount, firstRow + PREVIEW_ROWS); row++)
    rows.push({
      line: table.lineOfRow[row]!,
      cells: columns.map((_, column) => cellText(table, row, column).slice(0, 80)),
    });
  return rows;
}

/** What stands in a preview before anything was understood. */
export function emptyPreview(fileName: string, choices: IntakeChoices, book: RemarkBook): IntakePreview {
  return {
    fileName,
    shape: null,
    candidates: [],
    choices,
    columns: [],
    rows: [],
    dataRows: 0,
    series: [],
    firstDays: [],
    remarks: book.list(),
  };
}
