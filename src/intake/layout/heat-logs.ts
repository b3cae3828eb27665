/** Logs of heat pumps and heat meters: heat and the electricity it is made with, side by side. */
import type { RemarkBook } from '../terms/remark-book.ts';
import { isOfDegrees } from '../terms/units.ts';
import { type ColumnFacts, isNumberColumn, isUsed } from './column-facts.ts';
import { isTotal, namesOf } from './column-words.ts';
import { GIVEN, HEAT_PUMP, OF_HEATING, plainWords } from './headings.ts';
import { HEATER, USED } from './log-headings.ts';
import type { Sheet } from './sheet.ts';
import { columnName } from './value-cells.ts';
import { COLD_MADE, MADE, MADE_HERE, OUT_OF_DOORS, WHOLE_HOME } from './vocabulary.ts';

/**
 * Heat and the electricity it is made with, side by side as heat pumps and heat meters log them, in whichever units;
 * the outdoor temperature comes along. Where one of them has a total, its parts are left out. Undefined for other files.
 */
export function logColumns(found: readonly ColumnFacts[], isWithHeaters = false): ColumnFacts[] | undefined {
  const energies = found.filter((c) => !isOfDegrees(c.meaning.unit) && c.meaning.carrier !== 'water');
  const of = (pick: (c: ColumnFacts) => boolean): ColumnFacts[] => {
    const own = energies.filter(pick);
    const inKWh = own.filter((c) => c.meaning.unit === 'kWh');
    const pool = inKWh.length > 0 ? inKWh : own;
    return [...totalsOf(pool)];
  };
  const heat = of((c) => c.meaning.carrier === 'heat');
  const drawn = withoutHeaters(of((c) => c.meaning.carrier === 'electricity'));
  // What the compressor draws is not all: its heater is the heat pump's too.
  const ofCompressor = drawn.length > 0 && drawn.every((c) => COMPRESSOR.test(plainWords(c.heading)));
  const heaters = ofCompressor || isWithHeaters ? heatersBeside(energies, drawn) : [];
  const electricity = [
    ...drawn,
    ...heaters.map((c) => ({
      ...c,
      meaning: { ...c.meaning, carrier: 'electricity', seriesRole: 'heat-pump' } as const,
    })),
  ];
  if (heat.length === 0 || electricity.length === 0) return undefined;
  const outdoor = onlyWeather(found);
  return [...electricity, ...heat, ...outdoor].toSorted((a, b) => a.index - b.index);
}

const COMPRESSOR = /compressor|kompressor|verdichter/;
function withoutHeaters(drawn: readonly ColumnFacts[]): readonly ColumnFacts[] {
  const others = drawn.filter((c) => !HEATER.test(plainWords(c.heading)));
  return others.length > 0 ? others : drawn;
}

const heatersBeside = (energies: readonly ColumnFacts[], drawn: readonly ColumnFacts[]): ColumnFacts[] =>
  energies.filter(
    (c) =>
      drawn.length > 0 &&
      !drawn.includes(c) &&
      c.meaning.carrier !== 'heat' &&
      HEATER.test(plainWords(c.heading)) &&
      c.meaning.unit === drawn[0]!.meaning.unit,
  );

/** Heaters that were used, beside electricity that does not say whether it holds theirs. */
export function doubtfulHeaters(sheet: Sheet, log: readonly ColumnFacts[], all: readonly ColumnFacts[]): ColumnFacts[] {
  const drawn = log.filter((c) => c.meaning.carrier === 'electricity');
  if (drawn.some(isTotal)) return [];
  return heatersBeside(all, drawn).filter(
    (c) => !log.some(({ index }) => index === c.index) && (c.largest > 0 || isUsed(sheet, c, LOOKED_AT)),
  );
}
const LOOKED_AT = 2000;

/** Heat without electricity and with temperatures, as heat meters log it; the volume of the water is no gas. */
export function heatAlone(found: readonly ColumnFacts[], hasMachine: boolean): ColumnFacts[] | undefined {
  const heat = found.filter((c) => c.meaning.carrier === 'heat');
  const outdoor = onlyWeather(found);
  const water = found.filter((c) => c.meaning.carrier === 'water').slice(0, 1);
  const others = found.filter(
    (c) => !isOfDegrees(c.meaning.unit) && !['heat', 'water'].includes(c.meaning.carrier ?? ''),
  );
  if (heat.length === 0 || others.length > 0 || !(hasMachine || outdoor.length > 0 || water.length > 0))
    return undefined;
  const inKWh = heat.filter((c) => c.meaning.unit === 'kWh');
  const pool = inKWh.length > 0 ? inKWh : heat;
  return [...totalsOf(pool), ...water, ...outdoor];
}

/** The totals where there are any; those of heating and of hot water alone are parts, and each circuit may have its own. */
function totalsOf(pool: readonly ColumnFacts[]): readonly ColumnFacts[] {
  const wholes = pool.filter((c) => isTotal(c) && !OF_HEATING.test(plainWords(c.heading)));
  return wholes.length > 0 ? wholes : pool;
}

/** Of several temperatures that may be the weather's none is taken by its place. */
export function onlyWeather(found: readonly ColumnFacts[]): readonly ColumnFacts[] {
  const all = found.filter((c) => c.meaning.carrier === 'outdoor-temperature' || isOfDegrees(c.meaning.unit));
  const outside = all.filter((c) => OUT_OF_DOORS.test(plainWords(c.heading)));
  return all.length === 1 ? all : outside.length === 1 ? outside : [];
}

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
  const names = (columns: readonly ColumnFacts[]) => namesOf(sheet, columns);
  const isRead = (c: ColumnFacts) => log.some(({ index }) => index === c.index);
  const beside = sheet.columns.filter((c) => c.meaning.role === 'beside' && !isRead(c));
  const leftOut = [...all.filter((c) => !isRead(c)), ...beside];
  if (leftOut.length > 0) book.add('columns-left-out', 'note', { found: names(leftOut), expected: names(log) });
  book.add('several-series', 'note', { count: log.length, found: names(log) });
  const pump = log.find((c) => isBesideHeat(sheet, c));
  const said = [sheet.fileName, ...sheet.preamble.map((p) => p.text), ...sheet.columns.map((c) => c.heading)].join(' ');
  if (pump && tellsOfPump(sheet, pump) && !/heat ?pump|\bhp\b/i.test(plainWords(said.replaceAll(/[-_.]/g, ' '))))
    book.add('heat-pump-taken', 'note', { column: columnName(sheet, pump.index) });
}

/** What only the log of a heat pump has beside its temperatures. */
const OF_PUMP =
  /\b(brine|compressor|defrost|evaporator|condenser|s?cop)\b|kompressor|verdichter|abtauung|verflussiger|verdampfer/;

/** Whether electricity that says nothing of the whole house stands among what a heat pump logs, and nothing else is its own. */
export const mayBePump = (sheet: Sheet, { heading }: ColumnFacts): boolean =>
  !isOfWhole(plainWords(heading)) &&
  !sheet.columns.some((c) => c.meaning.seriesRole === 'heat-pump') &&
  sheet.columns.some((c) => c.meaning.seriesRole === 'machine' || OF_PUMP.test(plainWords(c.heading)));

/** The main meter is the home's, the main pump is not. */
const OF_WHOLE = /house|whole|grid|import|\bmains?(?! (heat|pump|circ|unit|compr))/;
const isOfWhole = (words: string): boolean => OF_WHOLE.test(words) || WHOLE_HOME.test(words);

/** Electricity beside heat is what the heat was made with, unless it is the whole house's or the heat comes through a street. */
export function isBesideHeat(sheet: Sheet, column: ColumnFacts): boolean {
  const words = plainWords(column.heading);
  const heat = sheet.columns.filter((c) => c.meaning.carrier === 'heat' && isNumberColumn(c));
  return (
    column.meaning.carrier === 'electricity' &&
    column.meaning.seriesRole === undefined &&
    // What stands beside what was sent out is the home's.
    !sheet.columns.some((c) => c.meaning.seriesRole === 'export' && isNumberColumn(c)) &&
    // "Strom gesamt" is all that the machine took.
    !isOfWhole(words.replaceAll(/gesamt/g, ' ')) &&
    heat.length > 0 &&
    !heat.some((c) => OF_A_NETWORK.test(plainWords(c.heading)))
  );
}

/** Heat that is bought. */
const OF_A_NETWORK =
  /fernwarme|nahwarme|fjernvarme|fjarrvarme|kaukolam|stads(verwarming|warmte)|district|chauffage urbain|teleriscald/;

const GOES_IN = /\bin(put)?\b|\bconso\b/;
const COMES_OUT = /\bout(put)?\b/;
/** Electric and thermal power of one machine. */
const OF_BOTH_POWERS = /\bp ?(el|th)\b|heizstab|backup heater/;

/**
 * Whether anything but the heat itself says that electricity beside it made it: the name of the machine, what only a
 * machine has, or words for what goes in and what comes out.
 */
export function tellsOfPump(sheet: Sheet, { heading }: ColumnFacts): boolean {
  const headings = sheet.columns.map((c) => plainWords(c.heading));
  const titles = [sheet.fileName, ...sheet.preamble.map(({ text }) => text)].join(' ; ').replaceAll(/[-_.]/g, ' ');
  const isMade = (c: ColumnFacts) =>
    c.meaning.carrier === 'heat' &&
    [MADE, MADE_HERE, GIVEN, COMES_OUT].some((words) => words.test(plainWords(c.heading)));
  const saysUsed = [USED, GOES_IN].some((words) => words.test(plainWords(heading)));
  return (
    [...headings, plainWords(titles)].some(
      (words) => HEAT_PUMP.test(words) || /\b(hp|wp|pac|ashp|gshp)\b/.test(words),
    ) ||
    headings.some((words) => OF_PUMP.test(words) || OF_BOTH_POWERS.test(words) || COLD_MADE.test(words)) ||
    sheet.columns.some((c) => c.meaning.seriesRole === 'machine') ||
    (saysUsed && sheet.columns.some(isMade))
  );
}
