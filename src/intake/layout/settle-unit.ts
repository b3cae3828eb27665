/** Settles what a column is of and in which unit: as written, else from its size, and says what was guessed. */

import { type Carrier, isTemperature, type SeriesRole } from '../../model/shapes/evidence.ts';
import { DELIVERED_FUELS, isDelivered, isSaleUnit, SALE_UNITS, unitsOf } from '../../model/shapes/heating.ts';
import { type Told, tell } from '../../model/shapes/told.ts';
import { choicesFor, type EnergyUnit, type IntakeChoices, type IntakeContext } from '../terms/choices.ts';
import { listNames, type RemarkBook, tellNumber } from '../terms/remark-book.ts';
import {
  freezingIn,
  isGallon,
  isLiquid,
  isOfDegrees,
  isPower,
  isUnitOf,
  isVolumeOfGas,
  kWhPerUnit,
  LEAST_KWH_A_DAY,
  MOST_KWH_A_DAY,
} from '../terms/units.ts';
import { type ColumnFacts, isWordColumn } from './column-facts.ts';
import { isRegisterName, isWhole, namesItself, unknownWords } from './column-words.ts';
import { askCalorific, gasOf, isHalfTold, isOfAmerica, meanGasFactor } from './gas-factors.ts';
import { type Energy, isOddlyCounted, plainWords, timesOfWords } from './headings.ts';
import { isBesideHeat, mayBePump, tellsOfPump } from './heat-logs.ts';
import type { Sheet } from './sheet.ts';
import { statedCarrier, statedUnit, unitsByRow, unitWords } from './stated-energy.ts';
import { pulsesSaid, saysTenths, titlesOfEnergy, wayOfFileName } from './titles.ts';
import { columnName } from './value-cells.ts';
import {
  APPLIANCE,
  DRAWN,
  ELECTRIC,
  MADE,
  MADE_HERE,
  OF_THE_GRID,
  POWER,
  UNITS_OF_ELECTRICITY,
  USED,
  WAY,
  WHOLE_HOME,
} from './vocabulary.ts';
import { withoutPeople } from './without-people.ts';

export interface Quantity {
  readonly unit: EnergyUnit;
  readonly carrier: Carrier;
  readonly role: SeriesRole;
  /** kWh, °C or m³ in one of the unit; of power, in one reading. */
  readonly kWhPerUnit: number;
  /** What is written for nought: 32 in °F. */
  readonly zeroAt: number;
}

/** Changes numbers as written to kWh, °C or m³, in place. */
export function convertAll(values: Float64Array, { kWhPerUnit: factor, zeroAt }: Quantity): void {
  if (factor !== 1 || zeroAt !== 0) for (let i = 0; i < values.length; i++) values[i] = (values[i]! - zeroAt) * factor;
}

/**
 * @param perDay mean of the column's numbers a day, as written; NaN where days do not tell
 * @param hours length of a reading, which makes energy of power; undefined where rows have no one length
 */
export function settleUnit(
  sheet: Sheet,
  column: ColumnFacts,
  perDay: number,
  hours: number | undefined,
  ofFile: IntakeChoices,
  ofHome: IntakeContext,
  book: RemarkBook,
): Quantity {
  const name = columnName(sheet, column.index);
  const inWords = unitWords(sheet, column);
  const context = gasOf(sheet, inWords, ofHome);
  const choices = choicesFor(ofFile, name);
  const written = choices.unit ?? statedUnit(sheet, column);
  const ofAmerica = isOfAmerica(context);
  // A gallon of the United States is a sixth less than that of Britain.
  const isBareGallon =
    isGallon(written) &&
    choices.unit === undefined &&
    !ofAmerica &&
    !/\b(us|imp\w*|uk)\b/.test(plainWords(column.heading));
  const stated = isBareGallon ? 'imperial gallon' : written;
  const said = statedCarrier(sheet, column);
  const settledCarrier = settleCarrier(sheet, column, { stated, said }, ofFile, book);
  const isOfUnits = settledCarrier === 'electricity' && UNITS_OF_ELECTRICITY.test(plainWords(column.heading));
  const told = stated ?? (isOfUnits && !book.has('carrier-guessed', name) ? 'kWh' : undefined);
  const perReading = hours === undefined ? Number.NaN : (perDay * hours) / 24;
  const mixed = choices.unit === undefined ? unitsByRow(sheet, column) : [];
  if (mixed.length > 1) book.add('units-by-row', 'refusal', { column: name, found: listNames(mixed) });
  const inTenths = isTemperature(settledCarrier) && saysTenths(sheet, column);
  const unit = told ?? (inTenths ? '°C' : guessUnit(settledCarrier, column, perDay, perReading));
  const fits = isUnitOf(settledCarrier, unit);
  const settled: EnergyUnit = fits ? unit : usualUnit(settledCarrier);
  if (!fits) book.add('unit-not-of-carrier', 'question', { column: name, found: unit, expected: settled });
  // The two halves of America write their degrees differently.
  const isSure = settled === '°C' && (!ofAmerica || inTenths);
  // A column of what came in less what went out is two records in one unit.
  if (
    !book.has('unit-guessed', name) &&
    (isBareGallon || (told === undefined && !isSure && settledCarrier !== 'water'))
  )
    book.add('unit-guessed', 'question', {
      column: name,
      carrier: settledCarrier,
      ...meanOf(settledCarrier, perDay, perReading),
      expected: settled,
    });
  const role = settleRole(sheet, column, { carrier: settledCarrier, said }, ofFile, book);
  const byColumns =
    settledCarrier === 'gas' && isVolumeOfGas(settled)
      ? meanGasFactor(sheet, settled, context, choices.calorificMJPerM3)
      : undefined;
  const pulsesPerKWh = choices.pulsesPerKWh ?? (settled === 'pulse' ? pulsesSaid(sheet, column) : undefined);
  const usual = kWhPerUnit(settled, settledCarrier, context, { ...choices, pulsesPerKWh });
  // Tenths of a degree are written without a sign.
  const tenths = inTenths && isOfDegrees(settled) && settled !== 'tenth of °C' ? 0.1 : 1;
  const heading = plainWords(column.heading);
  const times =
    choices.unit === undefined || choices.unit === statedUnit(sheet, column)
      ? timesOfWords(heading) * (inWords === heading ? 1 : timesOfWords(inWords))
      : 1;
  const factor = (byColumns ?? usual * tenths) * times * (isPower(settled) ? (hours ?? 24) : 1);
  if (isPower(settled)) book.tally('espi-power', 'note', { column: name });
  if (settled === 'pulse' && pulsesPerKWh === undefined)
    book.add('pulses-asked', 'question', { column: name, ...tellNumber(Math.round(1 / factor)) });
  const doubted = { column: name, carrier: settledCarrier, expected: settled };
  // What is asked already, or rests on a question of its own, is not asked twice.
  const isOpen = book.has('decimal-asked') || book.has('register-rising-asked');
  const isClear = told !== undefined && choices.unit === undefined && !isOpen;
  // In rows of a day or a month it may be the mean or the peak, and of a peak comes no energy.
  const isOfLongRows = isPower(settled) && (hours === undefined || hours >= 24);
  const isOdd = isOddlyCounted(heading) || isOddlyCounted(inWords);
  if ((isOfLongRows || isOdd) && choices.unit === undefined)
    book.add('unit-doubtful', 'question', {
      ...doubted,
      foundTold: tell('so-much-kwh-a-day', { kWh: threeDigits(perDay * factor) }),
    });
  else if (isClear && isOfDegrees(settled)) doubtDegrees(doubted, column, tenths, perReading, book);
  else if (isClear && settledCarrier !== 'water') doubtUnit(doubted, perDay * factor, role, book);
  if (
    isVolumeOfGas(settled) &&
    settledCarrier !== 'water' &&
    choices.calorificMJPerM3 === undefined &&
    (byColumns === undefined || isHalfTold(sheet, context))
  )
    askCalorific(context, book, byColumns && (byColumns / usual) * context.gasVolume.calorificMJPerM3);
  return {
    unit: settled,
    carrier: settledCarrier,
    role,
    kWhPerUnit: factor,
    zeroAt: freezingIn(settled) / tenths,
  };
}

/** What a column is of, as it is written or answered; asked where that is not sure. */
function settleCarrier(
  sheet: Sheet,
  column: ColumnFacts,
  { stated, said }: { readonly stated: EnergyUnit | undefined; readonly said: Energy | undefined },
  ofFile: IntakeChoices,
  book: RemarkBook,
): Carrier {
  const name = columnName(sheet, column.index);
  const choices = choicesFor(ofFile, name);
  // The rates of one meter are of one energy.
  const ofRates = isRegisterName(column.heading) ? answeredOfRates(ofFile) : undefined;
  const carrier = choices.carrier ?? carrierFor(stated, said?.carrier) ?? ofRates;
  // Nobody meters electricity in joules, calories or BTU.
  const guessed = stated !== undefined && OF_GAS.has(stated) ? 'gas' : 'electricity';
  if (carrier === undefined && !(namesItself(column) && !column.isAnswered && book.has('carrier-guessed')))
    book.add('carrier-guessed', 'question', { column: name, expected: guessed });
  else if (
    choices.carrier === undefined &&
    (isVolumeOfGas(stated) || (carrier === 'gas' && isBesideVolume(sheet))) &&
    !saysGas(sheet, column) &&
    !hasCalorific(sheet)
  )
    // Water is metered by volume too, and heat beside it.
    book.add('carrier-guessed', 'question', { column: name, expected: 'gas' });
  else if (choices.carrier === undefined && isGallon(stated) && said === undefined)
    // Water is metered by the gallon, and oil is bought by it.
    book.add('carrier-guessed', 'question', { column: name, expected: 'water' });
  else if (choices.carrier === undefined && isSaleUnit(stated) && said?.carrier !== carrier)
    book.add('carrier-guessed', 'question', { column: name, expected: carrier! });
  return carrier ?? guessed;
}

/** Which way a column's energy goes and whether it is all of it; asked where the words do not tell. */
function settleRole(
  sheet: Sheet,
  column: ColumnFacts,
  { carrier, said }: { readonly carrier: Carrier; readonly said: Energy | undefined },
  ofFile: IntakeChoices,
  book: RemarkBook,
): SeriesRole {
  const name = columnName(sheet, column.index);
  const choices = choicesFor(ofFile, name);
  const way = said?.carrier === carrier ? said.seriesRole : undefined;
  // The meter at the grid counts what is sent out, not what the roof makes.
  const mayBeMade = way === 'generation' && !isOfTariff(column) && isBesidePoint(sheet, column);
  const isSent = mayBeMade || (way === 'generation' && isOfTariff(column));
  if (choices.role === undefined && mayBeMade) book.add('made-asked', 'question', { column: name });
  const role = choices.role ?? roleFor(carrier, isSent ? 'export' : way);
  if (choices.role === undefined && mayBeSentOut(sheet, column, role, said?.carrier))
    book.add('direction-asked', 'question', { column: name });
  const byName =
    choices.role === undefined &&
    !book.has('direction-asked') &&
    (role === 'import' ? wayByName(sheet, column) : role === 'generation' && saysUsed(column) && role);
  if (byName) book.add('direction-of-name-asked', 'question', { column: name, expected: byName });
  const ofCars = sheet.columns.filter((c) => c.meaning.unit === undefined && OF_CHARGING.test(plainWords(c.heading)));
  const heading = plainWords(column.heading);
  // A file of a battery or of a car may say beside it what the home took from the grid.
  const isOfHome = OF_THE_GRID.test(heading) || isWhole(column);
  const titles = [plainWords(sheet.fileName.replaceAll(/[-_.]/g, ' ')), ...titlesOfEnergy(sheet)];
  const named = isOfHome
    ? heading
    : [heading, ...titles.map((title) => title.replaceAll(BESIDE_THE_HOME, ' '))].join(' ; ');
  if (
    carrier === 'electricity' &&
    role === 'import' &&
    choices.role === undefined &&
    (APPLIANCE.test(named) || (ofCars.length > 0 && !isWhole(column)))
  )
    book.add('part-asked', 'question', { column: name });
  const mayBeEither =
    role === 'import' ? mayBePump(sheet, column) : isBesideHeat(sheet, column) && !tellsOfPump(sheet, column);
  if (carrier === 'electricity' && choices.role === undefined && mayBeEither)
    book.add('part-pump-asked', 'question', { column: name });
  const isMetered = role === 'import' && (carrier === 'electricity' || carrier === 'gas');
  const unknown = isMetered ? unknownWords(withoutPeople(column.heading)) : [];
  const isAsked = (
    ['carrier-guessed', 'direction-asked', 'direction-of-name-asked', 'part-asked', 'part-pump-asked'] as const
  ).some((code) => book.has(code, ofFile.every ? name : undefined));
  const isChosen = choices.role !== undefined || (!column.isAnswered && ofFile.columns?.value === column.index);
  if (unknown.length > 0 && !isChosen && !isAsked)
    book.add('word-asked', 'question', { column: name, found: listNames(unknown) });
  return role;
}

const OF_GAS: ReadonlySet<EnergyUnit> = new Set(['kJ', 'MJ', 'GJ', 'Gcal', 'BTU', 'MMBTU']);

/** What was answered of the registers of a file, where that is one thing. */
function answeredOfRates({ ofColumns = {} }: IntakeChoices): Carrier | undefined {
  const answered = Object.entries(ofColumns).flatMap(([name, { carrier }]) =>
    carrier !== undefined && isRegisterName(name) ? [carrier] : [],
  );
  return new Set(answered).size === 1 ? answered[0] : undefined;
}

/** A unit may settle the carrier, or contradict what the words said. */
function carrierFor(unit: EnergyUnit | undefined, said: Carrier | undefined): Carrier | undefined {
  if (isOfDegrees(unit)) return said !== undefined && isTemperature(said) ? said : 'outdoor-temperature';
  if (isGallon(unit)) return isLiquid(said) ? said : 'water';
  if (said === 'water' && (unit === undefined || isUnitOf('water', unit))) return 'water';
  if (isSaleUnit(unit)) {
    const soldSo = DELIVERED_FUELS.filter((fuel) => unitsOf(fuel).includes(unit));
    return soldSo.find((fuel) => fuel === said) ?? soldSo[0];
  }
  if (isVolumeOfGas(unit) || unit === 'therm') return said === 'lpg' ? 'lpg' : 'gas';
  if (said === undefined && isPower(unit)) return 'electricity';
  return said;
}

/** In more than the unit, which water has too. */
function saysGas(sheet: Sheet, { heading, meaning }: ColumnFacts): boolean {
  if (meaning.carrier !== undefined && meaning.carrier !== 'gas') return true;
  const words = plainWords([heading, sheet.fileName, ...sheet.preamble.map(({ text }) => text)].join(' ; '));
  return (
    /gas|gaz|metan|plyn|\bsmc\b/.test(words) ||
    sheet.columns.some((c) => c.meaning.carrier === 'gas' && /gas|gaz|plyn/.test(plainWords(c.heading)))
  );
}

const isBesideVolume = ({ columns }: Sheet): boolean => columns.some(({ meaning: { unit } }) => isVolumeOfGas(unit));

const hasCalorific = ({ columns }: Sheet): boolean => columns.some((c) => c.meaning.role === 'calorific');

function roleFor(carrier: Carrier, said: SeriesRole | undefined): SeriesRole {
  if (said !== undefined) return said;
  if (isTemperature(carrier)) return carrier === 'outdoor-temperature' ? 'weather' : 'machine';
  return carrier === 'heat' ? 'heat-output' : 'import';
}

/** The registers of a tariff are those of the meter at the grid. */
const isOfTariff = ({ heading }: ColumnFacts): boolean =>
  /tari(ff?|ef) ?\d|\bt[12]\b|[12][.:]8[.:][12]/.test(plainWords(heading));

/** The number of the grid's metering point or a word for the way stands beside it, and no panels are named. */
const isBesidePoint = ({ columns }: Sheet, { heading }: ColumnFacts): boolean =>
  !/photovolt|fotovolt|solcelle|zonnepan/.test(plainWords(heading)) &&
  columns.some(
    (c) => (isWordColumn(c) && WAY.test(plainWords(c.heading))) || POINT_OF_GRID.test(plainWords(c.heading)),
  );
const POINT_OF_GRID = /(?<![a-z])(nmi|esi ?id|icp|mpan|cups|prm|pdl)(?![a-z])/;

/** "Lieferung" is to the home or from it; an "export" of electricity may be a file that was exported. */
function mayBeSentOut(sheet: Sheet, column: ColumnFacts, role: SeriesRole, said: Carrier | undefined): boolean {
  if (said !== undefined && said !== 'electricity') return false;
  if (column.isOfUnknownWay) return role === 'import';
  const heading = plainWords(column.heading);
  const file = plainWords(sheet.fileName.replaceAll(/[-_.]/g, ' '));
  // Any file may be called an export.
  const named = /[a-z]/.test(file.replaceAll(/ [a-z]{2,4}$|exports?|data/g, '')) ? [file] : [];
  const isOfExport = [...named, ...sheet.preamble.map(({ text }) => plainWords(text))].some((words) =>
    /\bexport/.test(words),
  );
  if (role === 'generation') return isOfExport && !MADE_HERE.test(heading) && !MADE.test(heading);
  if (role !== 'import') return false;
  // A counter without a word beside amounts that were sent out may count those.
  const isOut = (c: ColumnFacts) => c.meaning.seriesRole === 'export' && c.meaning.role !== 'reading' && !c.rising;
  if (column.meaning.role === 'reading' && column.meaning.carrier === undefined && sheet.columns.some(isOut))
    return true;
  if (/(?<![a-z])lieferung(?![a-z])/.test(heading)) return true;
  const isTitled = sheet.preamble.some(({ text }) => mayTellOfExport(plainWords(text)));
  if (isTitled && !DRAWN.test(heading) && !USED.test(heading)) return true;
  return /\bexport/.test(file) && ELECTRIC.test(file) && !ELECTRIC.test(heading) && !DRAWN.test(heading);
}

/** What the name of a file such as "feed-in" or "heat pump" says of "Electricity (kWh)", where no heading says where it went. */
function wayByName(sheet: Sheet, column: ColumnFacts): SeriesRole | undefined {
  const heading = plainWords(column.heading);
  const isTold = sheet.columns.some((c) => c.meaning.seriesRole !== undefined && c.meaning.seriesRole !== 'weather');
  if (column.meaning.carrier !== 'electricity' || isTold || DRAWN.test(heading) || isWhole(column)) return undefined;
  const way = wayOfFileName(sheet);
  if (way === 'heat-pump') return way;
  if (USED.test(heading)) return undefined;
  const file = plainWords(sheet.fileName.replaceAll(/[-_.]/g, ' '));
  return mayTellOfExport(file) && (ELECTRIC.test(file) || way !== undefined) ? 'export' : way;
}

/** "EV tariff" and "house with car" are of all. */
const BESIDE_THE_HOME =
  /(?<![a-z])(with|and|incl\w*|plus|mit|und|inkl\w*|avec|et|con|met|en|med|og|och|e|y)(?![a-z]).*|[&+].*|\S+ (tariff?|rate|plan|saver)(?![a-z])/g;

/** Beside amounts they are those of a car. */
const OF_CHARGING =
  /\b(charge ?points?|charging ?(points?|sessions?|stations?)|(car |ev )?chargers?|sessions?|vehicles?|wall ?box)\b/;

/** "Solar consumption" was made, or used, or is all that a home with panels takes. */
function saysUsed({ heading }: ColumnFacts): boolean {
  const words = plainWords(heading);
  return (USED.test(words) || WHOLE_HOME.test(words)) && !/generat|erzeug|generac/.test(words) && !MADE.test(words);
}

/** With such words it is what was done with the file. */
const ERRAND =
  /\b(data|csv|file|report|full) exports?\b|\bexport(s|ed)? ?(of|on|at|by|from|to|date|time|file|data|report|tool)\b|20\d\d/;
/** A title such as "Energy export" is what was done with the file, or where the energy went. */
const mayTellOfExport = (words: string): boolean =>
  /\bexport(s|ed)?\b/.test(words) && !ERRAND.test(words) && !USED.test(words);

/** No home's store takes so many kg at once. A judgement. */
const MOST_DELIVERED = 30_000;

function guessUnit(carrier: Carrier, column: ColumnFacts, perDay: number, perReading: number): EnergyUnit {
  if (isTemperature(carrier)) return guessDegrees(perReading, column);
  if (carrier === 'water') return 'm³';
  if (isDelivered(carrier)) {
    const units = unitsOf(carrier);
    return units.find((unit) => column.largest * SALE_UNITS[unit].count < MOST_DELIVERED) ?? units.at(-1)!;
  }
  if (POWER.test(plainWords(column.heading)) && !Number.isNaN(perReading)) return perReading > 20 ? 'W' : 'kW';
  // What is too much for a home even in Wh may be power.
  if (perDay / 1000 > MOST_KWH_A_DAY && (perReading * 24) / 1000 <= MOST_KWH_A_DAY) return 'W';
  return perDay > MOST_KWH_A_DAY ? 'Wh' : 'kWh';
}

/** A mean over 25 °C is no record of a home that is heated; in kelvin every weather is over 200. A judgement. */
function guessDegrees(mean: number, { smallest, largest }: ColumnFacts): EnergyUnit {
  const isWhole = Number.isInteger(smallest) && Number.isInteger(largest);
  const isTooFar = largest > HOTTEST_F || smallest < COLDEST_F;
  if (isWhole && isTooFar && mean <= MOST_MEAN_TENTHS && largest - smallest > LEAST_SPAN_K) return 'tenth of °C';
  return mean > COLDEST_MEAN_K ? 'K' : mean > WARM_MEAN_C || largest > HOTTEST_C ? '°F' : '°C';
}

const usualUnit = (carrier: Carrier): EnergyUnit =>
  isTemperature(carrier) ? '°C' : carrier === 'water' ? 'm³' : 'kWh';

/** No inhabited place has such a mean over days, or such an hour. Common practice, no source. */
const HOTTEST_MEAN_C = 42;
const HOTTEST_C = 56;
const WARM_MEAN_C = 25;
const COLDEST_MEAN_K = 200;
/** No weather in °F is outside these, none in kelvin has such a span, and no heated home such a mean. Judgements. */
const [COLDEST_F, HOTTEST_F] = [-80, 140];
const LEAST_SPAN_K = 100;
const MOST_MEAN_TENTHS = 250;
/** A mean below the first and never above the second was hardly written in °F. A judgement. */
const COLDEST_MEAN_F = 28;
const COLD_MOST_F = 46;

/** Degrees of the one kind under the name of the other. */
function doubtDegrees(
  doubted: { readonly column: string; readonly carrier: Carrier; readonly expected: EnergyUnit },
  column: ColumnFacts,
  scale: number,
  written: number,
  book: RemarkBook,
): void {
  if (doubted.carrier !== 'outdoor-temperature') return;
  const [mean, smallest, largest] = [written * scale, column.smallest * scale, column.largest * scale];
  const isOdd =
    doubted.expected === '°C'
      ? mean > HOTTEST_MEAN_C || smallest > HOTTEST_MEAN_C
      : doubted.expected === 'K'
        ? mean < COLDEST_MEAN_K
        : mean < COLDEST_MEAN_F && largest < COLD_MOST_F;
  if (isOdd)
    book.add('degrees-doubtful', 'question', {
      ...doubted,
      foundTold: tell('figure', { figure: threeDigits(mean) }),
    });
}

const threeDigits = (value: number): number => Number(value.toPrecision(3));

/** What the numbers come to: a day, or of temperatures on the mean. */
function meanOf(carrier: Carrier, perDay: number, perReading: number): { foundTold?: Told } {
  if (isTemperature(carrier)) return { foundTold: tell('amount-on-the-mean', { amount: threeDigits(perReading) }) };
  return Number.isNaN(perDay) ? {} : { foundTold: tell('amount-a-day', { amount: threeDigits(perDay) }) };
}

function doubtUnit(
  settled: { readonly column: string; readonly carrier: Carrier; readonly expected: EnergyUnit },
  kWhPerDay: number,
  role: SeriesRole,
  book: RemarkBook,
): void {
  // What a roof sends out in winter may be next to nothing.
  const isSmall = !isSaleUnit(settled.expected) && role !== 'export' && role !== 'generation';
  const isOdd = kWhPerDay > MOST_KWH_A_DAY || (isSmall && kWhPerDay > 0 && kWhPerDay < LEAST_KWH_A_DAY);
  if (isOdd)
    book.add('unit-doubtful', 'question', {
      ...settled,
      foundTold: tell('so-much-kwh-a-day', { kWh: threeDigits(kWhPerDay) }),
    });
}
