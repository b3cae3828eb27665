/** How values of a working are written: the number, its unit, the line that names an input. */
import type { WorkingInput } from '../model/shapes/working.ts';
import {
  degrees,
  exactKWh,
  exactPercent,
  factor,
  grouped,
  pence,
  poundsAndPence,
  threeDigits,
  unknown,
} from './numbers.ts';
import { say } from './say.ts';
import { keyOf, type Shown, sayTold } from './say-told.ts';

/** A sum as it is shown: what the model tells, or one that words put together of its results. */
export interface ShownInput extends Omit<WorkingInput, 'name' | 'value' | 'unit' | 'origin'> {
  readonly name: Shown;
  readonly value: number | Shown;
  readonly unit?: Shown | undefined;
  readonly origin: Shown;
}
export interface ShownWorking {
  readonly result: { readonly value: number; readonly unit: Shown };
  readonly title: Shown;
  readonly formula: Shown;
  readonly inputs: readonly ShownInput[];
  readonly source?: Shown | undefined;
  readonly steps?: readonly ShownWorking[] | undefined;
}

export const inputKey = ({ name, value, unit, origin }: ShownInput): string =>
  [name, value, unit ?? '', origin].map((one) => (typeof one === 'number' ? one : keyOf(one))).join('|');

const significant = (value: number): string => {
  const size = Math.abs(value);
  if (size === 0 || Number.isInteger(value)) return grouped(value);
  if (size >= 100) return grouped(value);
  if (size >= 1) return grouped(value, 2).replace(/[.,]?0+$/, '');
  return threeDigits(value);
};

/** A value with its unit, as it stands in a working: "£1,194.35", "13,874 kWh", "84%", "3.4". */
export function workingValue(value: number | Shown, unit?: Shown): string {
  if (typeof value !== 'number') return unit && unit !== '' ? `${sayTold(value)} ${sayTold(unit)}` : sayTold(value);
  if (!Number.isFinite(value)) return unknown();
  switch (unit) {
    case 'pence':
    case 'pence a year':
      return poundsAndPence(value);
    case 'p':
      return value !== 0 && Math.abs(value) < 100 ? pence(value) : poundsAndPence(value);
    case 'p/kWh':
      return say('{price} per kWh', { price: pence(value) });
    case 'GBP':
    case '£':
      return poundsAndPence(value * 100);
    case 'kWh':
      return Math.abs(value) >= 10 ? exactKWh(value) : `${significant(value)} kWh`;
    case '°C':
      return degrees(value);
    case 'factor':
      return factor(value);
    case 'share':
      return exactPercent(value);
    case '':
    case '1':
    case undefined:
      return significant(value);
    default:
      return `${significant(value)} ${sayTold(unit)}`;
  }
}
