import { DELIVERED_FUELS, type PricedCarrier, SALE_UNITS, type SaleUnit, unitsOf } from '../../model/shapes/heating.ts';
import type { Reference } from '../../model/shapes/reference.ts';
import { gasVolumeToKWh } from '../../model/units/gas-volume.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { formatPlain } from '../shared/number-text.ts';

/** A unit in which an amount may be typed, with its conversion. */
export interface TypedUnit {
  readonly name: 'kWh' | 'm³' | 'hundred ft³' | (typeof SALE_UNITS)[SaleUnit]['many'];
  readonly toKWh: (amount: number) => number;
  /** How the conversion is made, for the note under the grid; empty where nothing is converted. */
  readonly sum: string;
}

/** The carriers that can be typed in. */
export const TYPED_CARRIERS: readonly PricedCarrier[] = ['gas', 'electricity', ...DELIVERED_FUELS];

const KWH: TypedUnit = { name: 'kWh', toKWh: (amount) => amount, sum: '' };

/** The units that a carrier is billed in, the usual one first. */
export function unitsFor(carrier: PricedCarrier, reference: Reference, calorificMJPerM3?: number): TypedUnit[] {
  if (carrier === 'electricity') return [KWH];
  if (carrier === 'gas') {
    const { correction, calorificMJPerM3: usual, imperialM3PerHundredCubicFeet: imperial } = reference.gasVolume;
    const factors = {
      correction: correction.value,
      calorificMJPerM3: calorificMJPerM3 ?? usual.value,
      imperialM3PerHundredCubicFeet: imperial.value,
    };
    const rest = say('{correction} × {calorific} MJ per m³ ÷ 3.6', {
      correction: formatPlain(factors.correction),
      calorific: formatPlain(factors.calorificMJPerM3),
    });
    return [
      KWH,
      { name: 'm³', toKWh: (amount) => gasVolumeToKWh(amount, 'm³', factors), sum: `kWh = m³ × ${rest}` },
      {
        name: 'hundred ft³',
        toKWh: (amount) => gasVolumeToKWh(amount, 'hundred ft³', factors),
        sum: say('kWh = hundred ft³ × {value} × {rest}', { value: formatPlain(imperial.value), rest }),
      },
    ];
  }
  const { value: perUnit, source } = reference.kWhPerUnit[carrier];
  const units = unitsOf(carrier).map((unit): TypedUnit => {
    const { count, many } = SALE_UNITS[unit];
    const value = perUnit * count;
    return {
      name: many,
      toKWh: (amount) => amount * value,
      sum: say('kWh = {unit} × {value} ({source})', {
        unit: sayTold(many),
        value: formatPlain(value),
        source: sayTold(source),
      }),
    };
  });
  return [...units, KWH];
}
