/** Cells of one sheet as a table of text, so that every shape reads a workbook as it reads a text file. */
import { clockTimeOf, toCivilDate, twoDigits } from '../../model/calendar/civil.ts';
import { plainSigns } from '../text/decode.ts';
import { codesOf, MAX_CELLS, type Table } from '../text/table.ts';
import { walkXml } from '../text/walk-xml.ts';
import type { CellForm, WorkbookParts } from './parts.ts';

export interface SheetTable {
  readonly table: Table;
  /** Cells that hold numbers, dates not counted, and cells of words. */
  readonly numbers: number;
}

const WIDEST = 400;
const LONGEST_CELL = 400;

/** Undefined where the sheet is damaged or has too many cells. */
export function readSheetTable(bytes: Uint8Array, parts: WorkbookParts): SheetTable | undefined {
  const build = tableBuilder();
  let cells: string[] = [];
  let rowNumber = 0;
  let column = 0;
  let type = 'n';
  let form: CellForm = 'number';
  let value = '';
  let inCell = false;
  let numbers = 0;
  let full = false;
  const isSound = walkXml(bytes, {
    open(name, attribute) {
      if (name === 'row') {
        const said = Number(attribute('r'));
        rowNumber = Number.isInteger(said) && said > rowNumber && said < 2_000_000 ? said : rowNumber + 1;
        cells = [];
      } else if (name === 'c') {
        const place = columnOf(attribute('r') ?? '');
        column = place >= 0 ? place : cells.length;
        type = attribute('t') ?? 'n';
        form = parts.forms[Number(attribute('s') ?? -1)] ?? 'number';
        value = '';
        inCell = true;
      }
    },
    close(name, words) {
      if ((name === 'v' || name === 't') && inCell) value += words.slice(0, LONGEST_CELL);
      else if (name === 'c') {
        inCell = false;
        if (column >= WIDEST) return;
        const text = cellWords(value, type, form, parts);
        if (type === 'n' && form === 'number' && text !== '') numbers++;
        if (text !== '') {
          while (cells.length < column) cells.push('');
          cells[column] = text;
        }
      } else if (name === 'row' && cells.length > 0 && !full) full = !build.add(cells, rowNumber);
    },
  });
  if (!isSound || full) return undefined;
  return { table: build.finish(), numbers };
}

/** "AB12" → 27; -1 where there is no such name. */
function columnOf(reference: string): number {
  const letters = /^[A-Za-z]{1,3}/.exec(reference)?.[0];
  if (!letters) return -1;
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return column - 1;
}

function cellWords(value: string, type: string, form: CellForm, parts: WorkbookParts): string {
  const text = value.replaceAll(/\s+/g, ' ').trim();
  if (type === 's')
    return plainSigns(parts.words[Number(text)] ?? '')
      .replaceAll(/\s+/g, ' ')
      .trim();
  if (type !== 'n' || text === '') return plainSigns(text);
  const number = Number(text);
  if (!Number.isFinite(number)) return text;
  if (form === 'number') return String(Number(number.toPrecision(15)));
  return dayWords(number, form, parts.from1904) ?? String(number);
}

/** Days since the end of 1899 as date and clock; undefined outside the years 1930 to 2100. */
function dayWords(serial: number, form: CellForm, from1904: boolean): string | undefined {
  const clock = (seconds: number) => {
    const base = clockTimeOf(Math.floor(seconds / 60));
    return seconds % 60 === 0 ? base : `${base}:${twoDigits(seconds % 60)}`;
  };
  if (form === 'time' && serial >= 0 && serial <= 1) return clock(Math.round(serial * 86_400));
  const days = serial + (from1904 ? 1462 : 0);
  if (days < 10_959 || days > 73_415) return undefined;
  // Day 25,569 of the spreadsheet's count is 1970-01-01.
  const seconds = Math.round((days - 25_569) * 86_400);
  const day = Math.floor(seconds / 86_400);
  const ofDay = seconds - day * 86_400;
  return form === 'date' && ofDay === 0 ? toCivilDate(day) : `${toCivilDate(day)} ${clock(ofDay)}`;
}

/** Rows of cells to the offsets that a table is made of. */
function tableBuilder(): { add(cells: readonly string[], line: number): boolean; finish(): Table } {
  const pieces: string[] = [];
  const cellFrom: number[] = [];
  const cellTo: number[] = [];
  const rowStart: number[] = [];
  const lineOfRow: number[] = [];
  let at = 0;
  return {
    add(cells, line) {
      if (cellFrom.length + cells.length > MAX_CELLS) return false;
      rowStart.push(cellFrom.length);
      lineOfRow.push(line);
      for (const cell of cells) {
        const text = cell ?? '';
        cellFrom.push(at);
        cellTo.push(at + text.length);
        at += text.length + 1;
      }
      pieces.push(cells.join('\t'));
      return true;
    },
    finish() {
      const text = pieces.join('\n');
      return {
        text,
        codes: codesOf(text),
        separator: '\t',
        rowCount: rowStart.length,
        rowStart: Uint32Array.from([...rowStart, cellFrom.length]),
        lineOfRow: Uint32Array.from(lineOfRow),
        cellFrom: Uint32Array.from(cellFrom),
        cellTo: Uint32Array.from(cellTo),
        escaped: new Set(),
        openEnd: false,
      };
    },
  };
}
