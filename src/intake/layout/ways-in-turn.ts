/** Rows of what was drawn and what was sent out, told apart by a word, a letter or a yes and no. */
import { pickRows, rewriteCells } from '../text/rewrite-cells.ts';
import { type ColumnFacts, isNumberColumn } from './column-facts.ts';
import { carrierOfWords, type Energy, plainWords } from './headings.ts';
import { energiesByPartner } from './log-headings.ts';
import { YES } from './quality-marks.ts';
import type { Sheet } from './sheet.ts';
import { stepOf } from './sheet-step.ts';
import { AMOUNT, DRAWN, USED, WAY } from './vocabulary.ts';

export interface Ways {
  readonly known: ReadonlyMap<string, Energy>;
  /** Whether the letters may stand for something else. */
  readonly isDoubtful: boolean;
}

const NO = /^(0|n|no|false|nein|non|nee|nej)$/i;
/** Drawn and sent out, or nothing of the kind. */
const DOUBTFUL = ['i e', '+ -', 'c p'];
/** Under such a heading letters stand for kinds. */
const OF_KINDS = /^(type|typ|tipo|art|kind|code|mode|dir|register|channel|kanal|canal)\b/;

export const DRAWN_FROM_GRID: Energy = { carrier: 'electricity' };

/** "A+" is drawn and "A-" sent out, as meters show it. */
export function energyOf(register: string): Energy | undefined {
  const words = plainWords(register);
  if (/^\+?a\+|received/.test(words)) return DRAWN_FROM_GRID;
  return /^-?a[-−–](?!\d{2})/.test(words) ? { carrier: 'electricity', seriesRole: 'export' } : carrierOfWords(words);
}

/** What the words of a column say of the way, with the column's own heading; undefined where they say nothing of it. */
export function waysOf({ heading }: ColumnFacts, words: readonly string[]): Ways | undefined {
  const above = plainWords(heading);
  const named = carrierOfWords(above.replace(/^is ?/, ''));
  const [yes, no] = [words.find((word) => YES.test(word)), words.find((word) => NO.test(word))];
  if (named?.seriesRole === 'export' && words.length === 2 && yes !== undefined && no !== undefined)
    return { known: new Map([[yes, named] as const, [no, { carrier: 'electricity' }] as const]), isDoubtful: false };
  const partners = energiesByPartner(words.map(plainWords));
  if (partners.size > 0)
    return {
      known: new Map(
        words.flatMap((word) => (partners.has(plainWords(word)) ? [[word, partners.get(plainWords(word))!]] : [])),
      ),
      isDoubtful: false,
    };
  const energies = words.flatMap((word) => {
    const energy = energyOf(word);
    return energy ? [[word, energy] as const] : [];
  });
  const isUse = (word: string) => [DRAWN, USED, AMOUNT].some((of) => of.test(plainWords(word)));
  const isOut = energies.some(([, { seriesRole }]) => seriesRole === 'export');
  if (isOut && (WAY.test(above) || words.every((word) => energyOf(word) || isUse(word))))
    return { known: new Map(energies), isDoubtful: false };
  const letters = words.map((word) => word.toLowerCase());
  const isDoubtful =
    (WAY.test(above) || OF_KINDS.test(above)) &&
    DOUBTFUL.some((both) => letters.length === 2 && letters.toSorted().join() === both.split(' ').toSorted().join());
  return isDoubtful ? { known: new Map(), isDoubtful } : undefined;
}

/** Whether numbers under a heading are a yes and no of what was sent out. */
export const isFlagOfWay = ({ heading, smallest, largest }: ColumnFacts): boolean =>
  smallest === 0 && largest === 1 && carrierOfWords(plainWords(heading).replace(/^is ?/, ''))?.seriesRole === 'export';

interface Part {
  readonly register: string;
  readonly sheet: Sheet;
}

/**
 * Ways of which each moment has one only, as a meter writes that nets them by the reading: where a row of the one stands the
 * other is nought. Undefined where both may be at one moment, where they are counters, or where each has even steps of its
 * own, since then they are read in turn.
 */
export function withNoughts<T extends Part>(
  sheet: Sheet,
  parts: readonly T[],
  momentAt: (sheet: Sheet, row: number) => string,
): T[] | undefined {
  const { kind, minutes = 1440 } = stepOf(sheet);
  const isAmount = (c: ColumnFacts) => isNumberColumn(c) && c.meaning.role === 'value';
  const isCounter = (c: ColumnFacts) => c.meaning.role === 'reading' || c.rising || c.falling;
  if (kind !== 'time' || minutes >= 1440 || parts.length !== 2) return undefined;
  if (parts.some((part) => !part.sheet.columns.some(isAmount) || part.sheet.columns.filter(isAmount).some(isCounter)))
    return undefined;
  if (!parts.some((part) => stepOf(part.sheet).minutes === minutes)) return undefined;
  const linesOf = ({ sheet: { table, firstRow } }: Part) => new Set(table.lineOfRow.subarray(firstRow));
  const own = parts.map(linesOf);
  const rows = Array.from({ length: sheet.table.rowCount }, (_, row) => row).filter(
    (row) => row < sheet.firstRow || own.some((lines) => lines.has(sheet.table.lineOfRow[row]!)),
  );
  const moments = new Set(rows.map((row) => momentAt(sheet, row)));
  // The doubled hour of autumn stands there twice.
  if (moments.size < rows.length * 0.99) return undefined;
  const both = pickRows(sheet.table, rows);
  return parts.map((part, at) => ({
    ...part,
    sheet: {
      ...part.sheet,
      table: rewriteCells(both, (row, column) =>
        row >= sheet.firstRow && !own[at]!.has(both.lineOfRow[row]!) && isAmountAt(part.sheet, column)
          ? ['0']
          : undefined,
      ),
    },
  }));

  function isAmountAt({ columns }: Sheet, index: number): boolean {
    return columns.some((c) => c.index === index && isAmount(c));
  }
}
