/** Which columns hold the energy, litres or degrees, and what each is of. */
import { choicesFor, type EnergyUnit, type IntakeChoices } from '../terms/choices.ts';
import { listNames, type RemarkBook } from '../terms/remark-book.ts';
import { celsiusOf, isOfDegrees, isPower, isVolumeOfGas } from '../terms/units.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isNumberColumn, isUsed, numberEitherWay } from './column-facts.ts';
import {
  isBareAmount,
  isOfGrid,
  isTotal,
  isWhole,
  mayBeMoney,
  namesAmount,
  namesItself,
  namesOf,
  namesRegister,
  namesWay,
  registerOf,
} from './column-words.ts';
import { countsOther, isOfVolume } from './counter-beside.ts';
import { carrierOfWords, plainWords, unitOfWords } from './headings.ts';
import { doubtfulHeaters, heatAlone, logColumns, machineColumns, onlyWeather, remarkLog } from './heat-logs.ts';
import { BEST_UNITS, isEnergyUnit, quantityColumns, saysOutdoors } from './quantity-columns.ts';
import type { Sheet } from './sheet.ts';
import { carrierOfTitles } from './titles.ts';
import { columnName } from './value-cells.ts';
import {
  AMOUNT,
  ELECTRIC,
  MADE_HERE,
  OF_A_STORE,
  OF_LEGS,
  OF_THE_GRID,
  OWN_USE,
  PART_OF,
  WHOLE_HOME,
  withoutBrackets,
} from './vocabulary.ts';

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
  const { every = false } = choices;
  if (chosen !== undefined && !every) {
    const column = sheet.columns[chosen];
    const isOneOfSeveral = quantityColumns(sheet, taken).some(({ index }) => index !== chosen);
    return column ? [isOneOfSeveral ? answered(column) : column] : [];
  }
  // What the person took for something else is no amount.
  const elsewhere = Object.entries(choices.columns ?? {}).flatMap(([as, at]) => (as === 'value' ? [] : [at]));
  const all = quantityColumns(sheet, [...taken, ...elsewhere]).filter((c) => !countsOther(sheet, c));
  const amounts = all.filter((c) => c.meaning.role !== 'reading' && namesAmount(c));
  const named = all.filter(namesAmount);
  const able = amounts.length > 0 ? amounts : named.length > 0 ? named : all;
  // What a battery takes and gives is no use beside what the home takes.
  const ofHome = able.filter(({ heading }) => !OF_A_STORE.test(plainWords(heading)));
  const found = withoutCopies(sheet, ofHome.length > 0 ? ofHome : able);
  const best = found[0];
  if (!best) return [];
  const nameless = isBareAmount(best) ? all.filter((c) => ['index', 'unknown'].includes(c.meaning.role)) : [];
  const unsaid = nameless.find((c) => !isBareAmount(c));
  if (unsaid) {
    const others = all.filter((c) => c !== unsaid && (c === best || nameless.includes(c)));
    book.add('column-asked', 'question', {
      column: columnName(sheet, unsaid.index),
      found: namesOf(sheet, others),
      count: others.length,
    });
    return [unsaid];
  }
  const machine = machineColumns(sheet, taken);
  const energies = logColumns(found, every) ?? heatAlone(found, machine.length > 0);
  const log = energies && [...energies, ...machine].toSorted((a, b) => a.index - b.index);
  if (log) {
    const heaters = choices.every === undefined ? doubtfulHeaters(sheet, log, all) : [];
    if (heaters.length > 0)
      book.add('column-asked', 'question', {
        column: columnName(sheet, log.find((c) => c.meaning.carrier === 'electricity')!.index),
        found: namesOf(sheet, heaters),
        count: heaters.length,
      });
    remarkLog(sheet, log, all, book);
    return log;
  }
  const kinds = named.length === 0 ? [best] : ofEachKind(found);
  const chief = joinPhases(kinds, found).map((c) =>
    askWay(
      withoutOwnUse(sheet, c, all, choices, book),
      kinds.find((other) => other !== c && namesWay(other)),
    ),
  );
  remarkPhases(sheet, chief, book);
  // Beside what is sent out or made, the one whose words say no more of it than those of others do.
  const hasTurns = (c: ColumnFacts) =>
    c.meaning.seriesRole === undefined && found.some((other) => isRival(other, c) && takesTurns(sheet, c, other));
  const doubted =
    chief.length === 1 ? chief[0] : (chief.find(isPlainUse) ?? chief.find(hasTurns) ?? (every ? chief[0] : undefined));
  const rivals = found.filter(
    (c) =>
      doubted !== undefined &&
      !indicesOf(chief).includes(c.index) &&
      !isBehindGrid(c, chief) &&
      (isRival(c, doubted) ||
        ((chief.length === 1 || every) &&
          (isOtherUse(sheet, c, doubted) || isOfUnknownWords(c, doubted) || mayMakeHeat(c, doubted)))) &&
      !isSameWarmth(sheet, c, doubted) &&
      !isWaterOfHeat(sheet, c, doubted) &&
      // Of two columns alike it is no matter which is meant.
      !(c.largest > 0 && c.meaning.unit === doubted.meaning.unit && isCopy(sheet, doubted, c)),
  );
  const columns = every ? [...chief, ...rivals.map(answered)] : chief;
  const read = indicesOf(columns);
  if (doubted && rivals.length > 0 && choices.every === undefined)
    book.add('column-asked', 'question', {
      column: columnName(sheet, doubted.index),
      found: namesOf(sheet, rivals),
      count: rivals.length,
    });
  const leftOut = all.filter((c) => !read.includes(c.index) && c.meaning.role !== 'index' && !mayBeMoney(c, best));
  if (leftOut.length > 0)
    book.add('columns-left-out', 'note', { found: namesOf(sheet, leftOut), expected: namesOf(sheet, columns) });
  if (columns.length > 1)
    book.add('several-series', 'note', {
      count: columns.length,
      found: listNames(columns.map((c) => c.heading)),
    });
  return columns.toSorted((a, b) => a.index - b.index);
}

export const answered = (column: ColumnFacts): ColumnFacts => ({ ...column, isAnswered: true });

/** All that the home uses holds what the grid's column says was drawn. */
const isBehindGrid = (c: ColumnFacts, chief: readonly ColumnFacts[]): boolean =>
  OF_HOME.test(plainWords(c.heading)) &&
  !isTotal(c) &&
  !namesWay(c) &&
  chief.some((other) => OF_THE_GRID.test(plainWords(other.heading)) && other.meaning.seriesRole === undefined);
const OF_HOME = new RegExp(`${WHOLE_HOME.source}|\\bload\\b`);

const PHASE = /\b(?:phase ?|ph ?|leg ?|l)([123])\b|\bphase ([abc])\b|(?<= )([abc])$|^([abc])(?= )/;

/** Heading without the sign of its phase; undefined where it has none. */
function withoutPhase({ heading }: ColumnFacts): string | undefined {
  const words = withoutBrackets(plainWords(heading));
  return PHASE.test(words) ? words.replace(PHASE, '').trim() : undefined;
}

/** Of two legs or three phases the first with the others to be added, and none of the others; any other column as it is. */
export function joinPhases(columns: readonly ColumnFacts[], found: readonly ColumnFacts[]): ColumnFacts[] {
  return columns.flatMap((column): ColumnFacts[] => {
    const name = withoutPhase(column);
    const all = found.filter((c) => withoutPhase(c) === name && c.meaning.unit === column.meaning.unit);
    // "deg C" is named alike in each of three columns: no phases, which each have their own sign.
    if (new Set(all.map((c) => PHASE.exec(withoutBrackets(plainWords(c.heading)))?.[0])).size < all.length)
      return [column];
    const isWholeSupply = all.length === 3 || (all.length === 2 && OF_LEGS.test(plainWords(column.heading)));
    if (name === undefined || !isWholeSupply) return [column];
    return all[0] === column ? [{ ...column, phases: all.slice(1).map((c) => c.index) }] : [];
  });
}

export const indicesOf = (columns: readonly ColumnFacts[]): number[] =>
  columns.flatMap((c) => [c.index, ...(c.phases ?? [])]);

/** A use beside what the home made may hold what it used of that: asked, and taken off where it does. */
function withoutOwnUse(
  sheet: Sheet,
  column: ColumnFacts,
  all: readonly ColumnFacts[],
  choices: IntakeChoices,
  book: RemarkBook,
): ColumnFacts {
  const { seriesRole, carrier = 'electricity', unit } = column.meaning;
  const isCoded = column.meaning.carrier !== undefined && !ELECTRIC.test(plainWords(column.heading));
  const isUse = seriesRole === undefined && carrier === 'electricity' && !isOfGrid(column) && !isCoded;
  const of = (role: string) => all.find((c) => c.meaning.seriesRole === role && c.meaning.unit === unit);
  const own = sheet.columns.find((c) => {
    const said = plainWords(c.heading);
    const isOfRoof = PART_OF.test(said) && MADE_HERE.test(said);
    const isOwn = isOfRoof ? [unit, undefined].includes(unitOfWords(said)) : unitOfWords(said) === unit;
    return isNumberColumn(c) && (OWN_USE.test(said) || isOfRoof) && isOwn && isUsed(sheet, c);
  });
  const [made, sent] = [of('generation'), of('export')];
  if (!isUse || isOfDegrees(unit) || !(own || made)) return column;
  const { ownUse } = choicesFor(choices, columnName(sheet, column.index));
  if (ownUse === undefined)
    book.add('own-use-asked', 'question', {
      column: columnName(sheet, column.index),
      found: columnName(sheet, (own ?? made)!.index),
    });
  if (ownUse !== 'within') return column;
  if (own) return { ...column, less: [own.index] };
  // Made and not sent out was used at home.
  return { ...column, less: [made!.index], ...(sent ? { phases: [...(column.phases ?? []), sent.index] } : {}) };
}

const isOneKind = (a: ColumnFacts, b: ColumnFacts): boolean =>
  a.meaning.unit === b.meaning.unit &&
  a.meaning.carrier === b.meaning.carrier &&
  a.meaning.seriesRole === b.meaning.seriesRole &&
  registerOf(a) === registerOf(b) &&
  (withoutPhase(a) === undefined || a.heading === b.heading);

/** So much of another column a repeat of it has at least: rows of sums stand under the first of them only. */
const COPIED_SHARE = 0.9;

function isCopy({ table, firstRow }: Sheet, a: ColumnFacts, b: ColumnFacts): boolean {
  let left = 0;
  for (let row = firstRow; row < table.rowCount; row++) {
    const copy = cellText(table, row, b.index);
    const own = cellText(table, row, a.index);
    if (own === copy || numberEitherWay(own) === numberEitherWay(copy)) continue;
    if (copy !== '') return false;
    left++;
  }
  return left <= (1 - COPIED_SHARE) * (table.rowCount - firstRow);
}

/** A column that repeats another cell by cell is the same record again. */
function withoutCopies(sheet: Sheet, columns: readonly ColumnFacts[]): ColumnFacts[] {
  return columns.filter(
    (c, i) =>
      !columns
        .slice(0, i)
        .some((known) => (c.largest > 0 || c.smallest < 0) && isOneKind(known, c) && isCopy(sheet, known, c)),
  );
}

export function remarkPhases(sheet: Sheet, columns: readonly ColumnFacts[], book: RemarkBook): void {
  for (const column of columns)
    if (column.phases)
      book.add('phases-added', 'note', {
        found: indicesOf([column])
          .map((c) => columnName(sheet, c))
          .join(', '),
      });
}

const unitRank = ({ meaning: { unit } }: ColumnFacts): number => {
  const rank = BEST_UNITS.indexOf(unit);
  return rank >= 0 ? rank : isPower(unit) ? BEST_UNITS.length : unit === undefined ? 99 : BEST_UNITS.length + 1;
};

/** One column of each energy, direction and register; of one use in two units (m³ and kWh, kWh and kW) the better. */
function ofEachKind(found: readonly ColumnFacts[]): ColumnFacts[] {
  const amounts = found.filter((c) => !isOfDegrees(c.meaning.unit) && c.meaning.carrier !== 'outdoor-temperature');
  const inEnergy = amounts.some((c) => BEST_UNITS.includes(c.meaning.unit) && c.meaning.unit !== undefined);
  // Power beside energy is the peak or the moment of the same, unless it names a way of its own.
  const energies = inEnergy ? amounts.filter((c) => !isPower(c.meaning.unit) || namesWay(c)) : amounts;
  if (energies.length === 0) return firstOf(found);
  const inKWh = energies.some((c) => c.meaning.unit === 'kWh');
  const temperatures = inKWh ? [] : onlyWeather(found.filter((c) => !amounts.includes(c)));
  const kinds = Map.groupBy(
    energies,
    (c) => `${c.meaning.carrier ?? ''} ${c.meaning.seriesRole ?? ''} ${registerOf(c)}`,
  );
  const several = [...kinds.values()].flatMap((ofKind) => {
    const rank = Math.min(...ofKind.map(unitRank));
    return ofKind.filter((c) => unitRank(c) === rank);
  });
  const telling = several.filter(namesItself);
  const unnamed = several.filter((c) => !namesItself(c));
  const isOutside = (c: ColumnFacts) => c.meaning.seriesRole === 'export' || c.meaning.seriesRole === 'generation';
  // What the home uses in all is no purchase where what it draws stands beside it; beside what it sends out it is one.
  if (telling.length > 0 && telling.every(isOutside))
    return [
      ...firstOf(unnamed.toSorted((a, b) => Number(isOfGrid(b)) - Number(isOfGrid(a)) || isWholeFirst(a, b))),
      ...telling,
      ...temperatures,
    ];
  // Gas by volume beside its energy without a name is one use in two units; the energy is taken.
  const energy = unnamed.find((c) => unitRank(c) < BEST_UNITS.length);
  if (energy && telling.every(({ meaning: { unit } }) => isVolumeOfGas(unit))) return [energy];
  // What the heat pump draws is a part of what the home does.
  const isPart = (c: ColumnFacts) => isOutside(c) || c.meaning.seriesRole === 'heat-pump';
  if (telling.length > 0 && telling.every(isPart))
    return [...(unnamed.length === 1 ? unnamed : firstOf(unnamed.filter(isWhole))), ...telling, ...temperatures];
  const registers = telling.filter(namesRegister);
  if (telling.length === 0) return unnamed.slice(0, 1);
  if (unnamed.length === 0 || telling.some((c) => c.meaning.carrier !== undefined))
    return telling.length > 1 || temperatures.length === 0 ? telling : [...telling, ...temperatures];
  return registers.length > 1 ? registers : [several[0]!];
}

const isWholeFirst = (a: ColumnFacts, b: ColumnFacts): number => Number(isWhole(b)) - Number(isWhole(a));

const firstOf = (columns: readonly ColumnFacts[]): ColumnFacts[] => columns.slice(0, 1);

/** Gas by volume or in therms, and energy without a name that is not the gas's. */
export const isOtherUse = (sheet: Sheet, a: ColumnFacts, b: ColumnFacts): boolean =>
  [
    [a, b],
    [b, a],
  ].some(
    ([energy, volume]) =>
      (isVolumeOfGas(volume!.meaning.unit) || volume!.meaning.unit === 'therm') &&
      energy!.meaning.carrier === undefined &&
      BEST_UNITS.includes(energy!.meaning.unit) &&
      energy!.meaning.unit !== undefined &&
      !isOfVolume(sheet, energy!, volume!),
  );

/** Beside energy that the titles call heat, a volume that is not said to be of gas is of the water that carried it. */
const isWaterOfHeat = (sheet: Sheet, c: ColumnFacts, taken: ColumnFacts): boolean =>
  isVolumeOfGas(c.meaning.unit) &&
  carrierOfWords(withoutBrackets(plainWords(c.heading)).replaceAll(/\b(m|ft) ?[3³]/g, ' ')) === undefined &&
  isEnergyUnit(taken.meaning.unit) &&
  (taken.meaning.carrier ?? carrierOfTitles(sheet)?.carrier) === 'heat';

/** Energy under words of which none is known, beside energy that is: it may be another of the home's. */
const isOfUnknownWords = (c: ColumnFacts, taken: ColumnFacts): boolean =>
  isEnergyUnit(c.meaning.unit) &&
  isEnergyUnit(taken.meaning.unit) &&
  c.meaning.role === 'value' &&
  !namesItself(c) &&
  !isWhole(c) &&
  !AMOUNT.test(plainWords(c.heading)) &&
  /[a-z]{3}/.test(withoutUnits(c.heading));

/** Energy without a name beside heat may be what the heat was made with. */
const mayMakeHeat = (c: ColumnFacts, taken: ColumnFacts): boolean =>
  taken.meaning.carrier === 'heat' && c.meaning.carrier === undefined && isEnergyUnit(c.meaning.unit) && !isWhole(c);

/** Beside what is sent out or made such energy may be anything. */
const askWay = (c: ColumnFacts, named: ColumnFacts | undefined): ColumnFacts =>
  named && isOfUnknownWords(c, named) ? { ...c, isOfUnknownWay: true } : c;

const withoutUnits = (heading: string): string =>
  withoutBrackets(plainWords(heading)).replaceAll(/\b([mk]?wh|[mg]j|therms?|btus?)\b/g, ' ');

/** A column that could be meant as well as the one that was taken: the same unit, and no more said. */
function isRival(c: ColumnFacts, taken: ColumnFacts): boolean {
  return (
    (c.meaning.unit === taken.meaning.unit || (isOfDegrees(c.meaning.unit) && isOfDegrees(taken.meaning.unit))) &&
    c.meaning.carrier === taken.meaning.carrier &&
    c.meaning.role === taken.meaning.role &&
    (!isTotal(taken) || isTotal(c)) &&
    (!saysOutdoors(taken) || saysOutdoors(c)) &&
    !mayBeMoney(c, taken)
  );
}

/** One temperature in two kinds of degrees. */
function isSameWarmth({ table, firstRow }: Sheet, a: ColumnFacts, b: ColumnFacts): boolean {
  if (a.meaning.unit === b.meaning.unit) return false;
  for (let row = firstRow; row < Math.min(table.rowCount, firstRow + LOOKED_AT); row++) {
    const [one, other] = [a, b].map(({ index, meaning: { unit } }) =>
      celsiusOf(numberEitherWay(cellText(table, row, index)), unit),
    );
    if (Math.abs(one! - other!) > ROUNDED_C) return false;
  }
  return true;
}
/** Whole degrees of either kind. */
const ROUNDED_C = 0.8;

const LOOKED_AT = 200;

/** Whether no row has both and each has rows of its own: one record in two columns, as "billed" and "not yet billed". */
function takesTurns({ table, firstRow }: Sheet, a: ColumnFacts, b: ColumnFacts): boolean {
  const step = Math.max(1, Math.floor((table.rowCount - firstRow) / LOOKED_AT));
  let [onlyA, onlyB] = [0, 0];
  for (let row = firstRow; row < table.rowCount; row += step) {
    const [hasA, hasB] = [a, b].map(({ index }) => !Number.isNaN(numberEitherWay(cellText(table, row, index))));
    if (hasA && hasB) return false;
    if (hasA) onlyA++;
    if (hasB) onlyB++;
  }
  return onlyA > 0 && onlyB > 0;
}

/** Energy that is neither of the whole home nor of the grid by its words, and goes no way. */
const isPlainUse = (c: ColumnFacts): boolean =>
  isEnergyUnit(c.meaning.unit) &&
  !namesWay(c) &&
  !namesRegister(c) &&
  !isWhole(c) &&
  !isOfGrid(c) &&
  !AMOUNT.test(plainWords(c.heading));

/** One unit for several series only where it is that of them all; temperatures have their own. */
export function commonUnit(quantities: readonly { readonly unit: EnergyUnit }[]): { unit?: EnergyUnit } {
  const unit = quantities[0]?.unit;
  return unit !== undefined && quantities.every((q) => q.unit === unit) ? { unit } : {};
}
