/** A list of several homes, each row under the name of its own: a table for each, of which one is asked for. */
import { isDated, minuteEitherWay } from '../dates/read-stamp.ts';
import { pickRows, rewriteCells } from '../text/rewrite-cells.ts';
import { cellCount, cellText, rowTexts, type Table } from '../text/table.ts';
import { numberEitherWay } from './column-facts.ts';
import { plainWords, unitOfWords } from './headings.ts';
import { TOTALS } from './vocabulary.ts';

const SEARCHED_ROWS = 40;
const MOST_HOMES = 60;
const NUMBERED = '( ?(no|nr|number|id|name|ref|nummer|numero)\\.?)?$';
const HOME = new RegExp(
  `^(flat|apartment|apt|dwelling|wohnung|wohneinheit|whg|appartement|logement|vivienda|apartamento|appartamento|woning|lejlighed|lagenhet|leilighet|mieszkanie|huoneisto)${NUMBERED}`,
);
/** These head other columns too, so that what stands below has to be numbered. */
const MAYBE_HOME = new RegExp(`^((unit|property|plot|lot)${NUMBERED}|(house|home|household) ?(no|nr|number|id)\\.?$)`);
/** Under these two homes may follow each other, or one may be written in two ways. */
const PLACE = new RegExp(
  `^(property|premises|site|address|house|home|household|dwelling|location|objekt|liegenschaft|adresse|anschrift|haus|standort|pand|adres|direccion|inmueble|indirizzo|immobile|ejendom|adress|fastighet)${NUMBERED}`,
);
/** Fewer rows may be remarks. */
const LEAST_IN_TURN = 2;
/** Rows of one home to those of another, where a gap is in one. A judgement. */
const ALIKE = 1.3;

export interface Home {
  readonly name: string;
  readonly table: Table;
  /** False of all homes in one, for the names may be of a single one. */
  readonly isHome?: false;
}

/** Undefined where no column is of homes, or where it names only one. */
export function homesOf(table: Table): readonly Home[] | undefined {
  for (let head = 0; head < Math.min(SEARCHED_ROWS, table.rowCount - 2); head++) {
    const cells = cellCount(table, head);
    if (cells < 3) continue;
    for (let column = 0; column < cells; column++) {
      const heading = plainWords(cellText(table, head, column));
      const inTurn = PLACE.test(heading) ? homesInTurn(table, head, column) : undefined;
      if (inTurn) {
        const all = { name: [...inTurn.keys()].join(' + '), table, isHome: false as const };
        return [...splitHomes(table, head, column, inTurn), all];
      }
      if (!HOME.test(heading) && !MAYBE_HOME.test(heading)) continue;
      const homes = rowsByHome(table, head, column, !HOME.test(heading));
      if (homes) return splitHomes(table, head, column, homes);
    }
  }
  return undefined;
}

function rowsByHome(table: Table, head: number, column: number, isMaybe: boolean): Map<string, number[]> | undefined {
  const homes = new Map<string, number[]>();
  for (let row = head + 1; row < table.rowCount; row++) {
    const name = cellText(table, row, column);
    const own = homes.get(name);
    if (own) own.push(row);
    else if (name === '' || TOTALS.test(name)) continue;
    else if (homes.size >= MOST_HOMES || unitOfWords(plainWords(name)) !== undefined) return undefined;
    else if (isMaybe && !/\d/.test(name)) return undefined;
    else homes.set(name, [row]);
  }
  if (homes.size < 2) return undefined;
  const counts = [...homes.values()].map(({ length }) => length);
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  // Numbers may be what one home used: those of homes come again as often as one another.
  const areNumbers = [...homes.keys()].every((name) => !Number.isNaN(numberEitherWay(name)));
  if (areNumbers && (least < 2 || most > ALIKE * least)) return undefined;
  // One row each is a list of bills, or months across.
  return most > 1 || rowTexts(table, homes.values().next().value![0]!).some(isDated) ? homes : undefined;
}

/** Homes of which one begins where another ends, as of a household that moved. */
function homesInTurn(table: Table, head: number, column: number): Map<string, number[]> | undefined {
  const dateColumn = rowTexts(table, head + 1).findIndex(isDated);
  if (dateColumn < 0) return undefined;
  const homes = new Map<string, number[]>();
  const minutes: number[] = [];
  let last = '';
  for (let row = head + 1; row < table.rowCount; row++) {
    const name = cellText(table, row, column);
    const date = cellText(table, row, dateColumn);
    if (!isDated(date) || TOTALS.test(name)) continue;
    const isAnother = name !== last && homes.has(name);
    if (name === '' || isAnother || homes.size > MOST_HOMES) return undefined;
    minutes.push(minuteEitherWay(date));
    if (name === last) homes.get(name)!.push(row);
    else homes.set(name, [row]);
    last = name;
  }
  const isInOrder = [1, -1].some((way) => minutes.every((one, i) => i === 0 || (one - minutes[i - 1]!) * way >= 0));
  const isTurn = homes.size > 1 && [...homes.values()].every(({ length }) => length >= LEAST_IN_TURN);
  return isInOrder && isTurn ? homes : undefined;
}

function splitHomes(table: Table, head: number, column: number, homes: ReadonlyMap<string, readonly number[]>) {
  const above = Array.from({ length: head + 1 }, (_, row) => row);
  const heading = cellText(table, head, column);
  return [...homes].map(([name, rows]) => ({
    name: !/^\d+\w?$/.test(name) ? name : `${heading} ${name}`,
    // Which home it is is no number of its own.
    table: rewriteCells(pickRows(table, [...above, ...rows]), (row, c) =>
      row >= head && c === column ? [] : undefined,
    ),
  }));
}
