/** What a record of open meter data is of: carrier, role, unit and kWh in one of its values. */

import type { Carrier, SeriesRole } from '../../model/shapes/evidence.ts';
import { isSaleUnit } from '../../model/shapes/heating.ts';
import { type Told, tell } from '../../model/shapes/told.ts';
import type { Quantity } from '../layout/settle-unit.ts';
import type { EnergyUnit, IntakeChoices, IntakeContext } from '../terms/choices.ts';
import { isUnitOf, kWhPerUnit } from '../terms/units.ts';
import type { ReadingType } from './feed.ts';

/** kWhPerUnit is that of one value as written, powers of ten included. */
export interface RecordQuantity extends Quantity {
  /** Mean power over each interval rather than energy. */
  readonly isPower: boolean;
  readonly isCounter: boolean;
  readonly isNet: boolean;
  readonly unitSaid: boolean;
  /** Values as written are in this many of the unit. */
  readonly writtenTimes: number;
}

/** Unit of ours and what one of the code's unit is in it. 72, 169, 42, 119, 128, 132 and 38 as in published feeds; 31 (J) and 134 (l) from memory. */
const UNIT_OF_CODE: Record<number, { readonly unit: EnergyUnit; readonly times: number; readonly power?: true }> = {
  72: { unit: 'Wh', times: 1 },
  38: { unit: 'Wh', times: 1, power: true },
  169: { unit: 'therm', times: 1 },
  42: { unit: 'm³', times: 1 },
  119: { unit: 'hundred ft³', times: 0.01 },
  // 100,000 BTU to the therm; 3.6 MJ to the kWh; 3.785411784 litres to the US gallon, by definition.
  132: { unit: 'therm', times: 1e-5 },
  31: { unit: 'Wh', times: 1 / 3600 },
  128: { unit: 'litre', times: 3.785411784 },
  134: { unit: 'litre', times: 1 },
};

const CARRIER_OF_COMMODITY: Record<number, Carrier> = { 1: 'electricity', 2: 'electricity', 7: 'gas', 8: 'lpg' };
const CARRIER_OF_SERVICE: Record<number, Carrier> = { 0: 'electricity', 1: 'gas' };
/** Delta data is the default; these count upwards. */
const COUNTERS = new Set([1, 3, 9]);
const REVERSE = 19;
const NET = 4;

export type QuantityOrReason = RecordQuantity | { readonly leftOut: Told };

/** @param choices those of the installer where they are meant for this record */
export function quantityOf(
  type: ReadingType | undefined,
  serviceKind: number | undefined,
  choices: IntakeChoices,
  context: IntakeContext,
): QuantityOrReason {
  const code = type?.uom === undefined ? undefined : UNIT_OF_CODE[type.uom];
  if (type?.uom !== undefined && !code && choices.unit === undefined)
    return { leftOut: tell('unit-code', { number: type.uom }) };
  const said = carrierOf(type, serviceKind);
  if (said === 'none' && choices.carrier === undefined)
    return {
      leftOut:
        type?.commodity === undefined
          ? tell('service-kind', { number: serviceKind ?? 0 })
          : tell('commodity', { number: type.commodity }),
    };
  const byUnit: Carrier = code && ['therm', 'm³', 'hundred ft³'].includes(code.unit) ? 'gas' : 'electricity';
  const carrier = choices.carrier ?? (said === undefined || said === 'none' ? byUnit : said);
  const own = ownUnit(code, type?.powerOfTen ?? 0, carrier);
  const unit = choices.unit ?? own.unit;
  const times = unit === own.unit ? own.times : 10 ** leftOver(code?.unit, type?.powerOfTen ?? 0);
  if (isSaleUnit(unit) && !isUnitOf(carrier, unit)) return { leftOut: tell('litres-of-another') };
  const role: SeriesRole = choices.role ?? (type?.flow === REVERSE ? 'export' : 'import');
  return {
    unit,
    carrier,
    role,
    zeroAt: 0,
    kWhPerUnit: times * kWhPerUnit(unit, carrier, context, choices),
    isPower: code?.power === true,
    isCounter: type?.accumulation !== undefined && COUNTERS.has(type.accumulation),
    isNet: type?.flow === NET && choices.role === undefined,
    unitSaid: code !== undefined || choices.unit !== undefined,
    writtenTimes: times,
  };
}

function carrierOf(type: ReadingType | undefined, serviceKind: number | undefined): Carrier | 'none' | undefined {
  if (type?.commodity) return CARRIER_OF_COMMODITY[type.commodity] ?? 'none';
  if (serviceKind === undefined || Number.isNaN(serviceKind)) return undefined;
  return CARRIER_OF_SERVICE[serviceKind] ?? 'none';
}

/** Watt-hours times a thousand are called kWh, as people do; other powers of ten stay a factor. */
function ownUnit(
  code: { readonly unit: EnergyUnit; readonly times: number } | undefined,
  powerOfTen: number,
  carrier: Carrier,
): { unit: EnergyUnit; times: number } {
  // Without a code the standard's commonest unit is taken, and asked about.
  const base = code ?? { unit: carrier === 'gas' ? ('therm' as const) : ('Wh' as const), times: 1 };
  if (base.unit === 'Wh' && base.times === 1) {
    if (powerOfTen === 3) return { unit: 'kWh', times: 1 };
    if (powerOfTen === 6) return { unit: 'MWh', times: 1 };
  }
  return { unit: base.unit, times: base.times * 10 ** powerOfTen };
}

/** Power of ten that stays when the installer names another unit: none where it only made kWh of Wh. */
const leftOver = (unit: EnergyUnit | undefined, powerOfTen: number): number =>
  (unit === undefined || unit === 'Wh') && (powerOfTen === 3 || powerOfTen === 6) ? 0 : powerOfTen;
