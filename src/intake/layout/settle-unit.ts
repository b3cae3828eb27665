/** Settles what a column is of and in which unit: as written, else from its size, and says what was guessed. */
import { type Carrier, isTemperature, type SeriesRole } from '../../model/shapes/evidence.ts';
import {
  DELIVERED_FUELS,
  type DeliveredFuel,
  FUELS,
  isDelivered,
  isSaleUnit,
  unitsOf,
} from '../../model/shapes/heating.ts';
import type { EnergyUnit, IntakeChoices, IntakeContext } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { isUnitOf, isVolumeOfGas, kWhPerUnit, LEAST_KWH_A_DAY, MOST_KWH_A_DAY } from '../terms/units.ts';
import type { ColumnFacts } from './column-facts.ts';
import { statedCarrier, statedUnit } from './energy-columns.ts';
import type { Sheet } from './sheet.ts';
import { columnName } from './value-cells.ts';

export interface Quantity {
  readonly unit: EnergyUnit;
  readonly carrier: Carrier;
  readonly role: SeriesRole;
  readonly kWhPerUnit: number;
}

/** @param perDay mean of the column's numbers a day, as written; NaN where days do not tell */
export function settleUnit(
  sheet: Sheet,
  column: ColumnFacts,
  perDay: number,
  choices: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): Quantity {
  const name = columnName(sheet, column.index);
  const stated = choices.unit ?? statedUnit(sheet, column);
  const said = statedCarrier(sheet, column);
  const carrier = choices.carrier ?? carrierFor(stated, said?.carrier);
  if (carrier === undefined && !book.has('carrier-guessed'))
    book.add('carrier-guessed', 'question', { column: name, expected: 'electricity' });
  else if (choices.carrier === undefined && isSaleUnit(stated) && said?.carrier !== carrier)
    book.add('carrier-guessed', 'question', { column: name, expected: FUELS[carrier as DeliveredFuel].written });
  const settledCarrier = carrier ?? 'electricity';
  const unit = stated ?? guessUnit(settledCarrier, perDay);
  const fits = isUnitOf(settledCarrier, unit);
  const settled: EnergyUnit = fits ? unit : isTemperature(settledCarrier) ? '°C' : 'kWh';
  if (!fits) book.add('unit-not-of-carrier', 'question', { column: name, found: unit, expected: settled });
  if (stated === undefined && settled !== '°C')
    book.add('unit-guessed', 'question', {
      column: name,
      carrier: settledCarrier,
      found: perDayText(perDay),
      expected: settled,
    });
  const factor = kWhPerUnit(settled, settledCarrier, context, choices.calorificMJPerM3);
  if (choices.unit === undefined && settled !== '°C')
    doubtUnit({ column: name, carrier: settledCarrier, expected: settled }, perDay * factor, book);
  if (
    isVolumeOfGas(settled) &&
    choices.calorificMJPerM3 === undefined &&
    !sheet.columns.some((c) => c.meaning.role === 'calorific')
  )
    book.add('calorific-assumed', 'question', { expected: String(context.gasVolume.calorificMJPerM3) });
  const role = choices.role ?? roleFor(settledCarrier, said?.carrier === settledCarrier ? said.seriesRole : undefined);
  return { unit: settled, carrier: settledCarrier, role, kWhPerUnit: factor };
}

/** A unit may settle the carrier, or contradict what the words said. */
function carrierFor(unit: EnergyUnit | undefined, said: Carrier | undefined): Carrier | undefined {
  if (unit === '°C') return said !== undefined && isTemperature(said) ? said : 'outdoor-temperature';
  if (isSaleUnit(unit)) {
    const soldSo = DELIVERED_FUELS.filter((fuel) => unitsOf(fuel).includes(unit));
    return soldSo.find((fuel) => fuel === said) ?? soldSo[0];
  }
  if (unit === 'm³' || unit === 'hundred ft³' || unit === 'therm') return said === 'lpg' ? 'lpg' : 'gas';
  return said;
}

function roleFor(carrier: Carrier, said: SeriesRole | undefined): SeriesRole {
  if (said !== undefined) return said;
  if (isTemperature(carrier)) return carrier === 'outdoor-temperature' ? 'weather' : 'machine';
  return carrier === 'heat' ? 'heat-output' : 'import';
}

function guessUnit(carrier: Carrier, perDay: number): EnergyUnit {
  if (isTemperature(carrier)) return '°C';
  if (isDelivered(carrier)) return unitsOf(carrier)[0]!;
  return perDay > MOST_KWH_A_DAY ? 'Wh' : 'kWh';
}

const perDayText = (perDay: number): string => (Number.isNaN(perDay) ? '' : `${Number(perDay.toPrecision(3))} a day`);

function doubtUnit(
  settled: { readonly column: string; readonly carrier: Carrier; readonly expected: EnergyUnit },
  kWhPerDay: number,
  book: RemarkBook,
): void {
  const isSmall = settled.expected === 'Wh' || settled.expected === 'kWh';
  const isOdd = kWhPerDay > MOST_KWH_A_DAY || (isSmall && kWhPerDay > 0 && kWhPerDay < LEAST_KWH_A_DAY);
  if (isOdd)
    book.add('unit-doubtful', 'question', { ...settled, found: `${Number(kWhPerDay.toPrecision(3))} kWh a day` });
}
