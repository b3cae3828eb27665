import type { Carrier } from '../../model/evidence/evidence.ts';
import type { Reference } from '../../model/reference.ts';

/** A unit in which an amount may be typed, with what one of it is worth. */
export interface TypedUnit {
  readonly name: 'kWh' | 'm³' | 'litres';
  readonly kWhEach: number;
  /** How the conversion was made, for the note under the grid. */
  readonly sum: string;
}

/** The carriers that can be typed in, with how they are said. */
export const TYPED_CARRIERS = ['gas', 'electricity', 'oil', 'lpg'] as const satisfies readonly Carrier[];
export type TypedCarrier = (typeof TYPED_CARRIERS)[number];

const KWH: TypedUnit = { name: 'kWh', kWhEach: 1, sum: '' };
/** MJ in one kWh, by definition. */
const MJ_PER_KWH = 3.6;

export function unitsFor(carrier: TypedCarrier, reference: Reference, calorificMJPerM3?: number): TypedUnit[] {
  if (carrier === 'electricity') return [KWH];
  if (carrier === 'gas') {
    const correction = reference.gasVolume.correction.value;
    const calorific = calorificMJPerM3 ?? reference.gasVolume.calorificMJPerM3.value;
    return [
      KWH,
      {
        name: 'm³',
        kWhEach: (correction * calorific) / MJ_PER_KWH,
        sum: `kWh = m³ × ${correction} × ${calorific} MJ per m³ ÷ ${MJ_PER_KWH}`,
      },
    ];
  }
  const value = reference.kWhPerLitre[carrier];
  return [{ name: 'litres', kWhEach: value.value, sum: `kWh = litres × ${value.value} (${value.source})` }, KWH];
}

export const amountToKWh = (amount: number, unit: TypedUnit): number => amount * unit.kWhEach;
