/** A register of some hours is no whole home: where the file has no other one of the same days, it is asked. */
import { daysBetween, toDayNumber } from '../../model/calendar/civil.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import { isWordColumn } from '../layout/column-facts.ts';
import { registerOfSomeHours, unknownWords } from '../layout/column-words.ts';
import type { Sheet } from '../layout/sheet.ts';
import { registersOfTitles } from '../layout/titles.ts';
import { choicesFor, type IntakeChoices } from '../terms/choices.ts';
import { listNames, type RemarkBook } from '../terms/remark-book.ts';
import { cellText } from '../text/table.ts';

/** Two rates of a home take turns by the hour or by the weekday; a longer stretch of one of them lacks the other [days]. A judgement. */
const LONGEST_TURN = 14;
/** Of its days so many have to be in another register too. A judgement. */
const SHARED = 0.75;
const MOST_REGISTERS = 8;
const LEAST_NUMBERED = 3;

export function askLoneRegisters(
  sheet: Sheet,
  series: readonly Series[],
  choices: IntakeChoices,
  book: RemarkBook,
): void {
  const ofHome = series.filter(({ carrier, role }) => carrier === 'electricity' && role === 'import');
  const [only] = ofHome;
  if (!only) return;
  const said =
    ofHome.length === 1
      ? (registerOfSomeHours(only.name) ?? registersInTurn(sheet, only) ?? registersOfTitles(sheet))
      : undefined;
  for (const one of ofHome) {
    const own = said ?? registerOfSomeHours(one.name);
    const { role, beside } = choicesFor(choices, one.name);
    // Registers that take turns were read as one record of all hours, and its name has both.
    const isJoined = new Set(one.name.split(' + ').map(registerOfSomeHours)).size > 1;
    if (own === undefined || isJoined || role !== undefined || (choices.besideOf?.[one.name] ?? beside) !== undefined)
      continue;
    if (ofHome.some((other) => other !== one && sharedDays(one, other) >= SHARED * daysBetween(one.from, one.to)))
      continue;
    book.add('part-register-asked', 'question', { column: one.name, found: own });
  }
}

const spanOf = ({ from, to }: Series): readonly [number, number] => [toDayNumber(from), toDayNumber(to)];

function sharedDays(one: Series, other: Series): number {
  const [[from, to], [otherFrom, otherTo]] = [spanOf(one), spanOf(other)];
  return Math.min(to, otherTo) - Math.max(from, otherFrom);
}

/** The registers of a column that names one for each row, where one of them stands there alone for long. */
function registersInTurn(sheet: Sheet, one: Series): string | undefined {
  const { table, firstRow, columns } = sheet;
  const rows = table.rowCount - firstRow;
  const longest = (LONGEST_TURN / Math.max(1, daysBetween(one.from, one.to))) * rows;
  for (const column of columns) {
    const first = cellText(table, firstRow, column.index);
    // Most columns of words name no register, and are not looked at any further.
    if (!isWordColumn(column) || !namesOneOnly(first, column.heading)) continue;
    const names = new Set<string>();
    let [previous, turn, longestTurn, named] = ['', 0, 0, 0];
    for (let row = firstRow; row < table.rowCount && names.size <= MOST_REGISTERS; row++) {
      const name = cellText(table, row, column.index);
      if (name === '') continue;
      names.add(name);
      named++;
      turn = name === previous ? turn + 1 : 1;
      longestTurn = Math.max(longestTurn, turn);
      previous = name;
    }
    // Numbers of bills, "R22" and "R23", stand there once each.
    if (names.size === named && named >= LEAST_NUMBERED) continue;
    if (names.size > MOST_REGISTERS || ![...names].every((name) => namesOneOnly(name, column.heading))) continue;
    return longestTurn > longest ? listNames([...names]) : undefined;
  }
  return undefined;
}

/** "Day" and "evening" may be when something was read, "normal" how well; of a rate or a register they name it. */
const OF_ANYTHING =
  /^(normal|day|night|morning|afternoon|evening|tag|nacht|abend|jour|nuit|soir|dia|noche|dag|nat|aften)$/;
const OF_REGISTERS = /regist|\brate|tari|\bband|fascia|zahlwerk|time of use|\btou\b|poste|strefa/;

function namesOneOnly(cell: string, heading: string): boolean {
  const register = registerOfSomeHours(cell);
  if (register === undefined || unknownWords(cell).length > 0) return false;
  return !OF_ANYTHING.test(register) || OF_REGISTERS.test(`${cell} ${heading}`.toLowerCase());
}
