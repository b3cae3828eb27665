/** Boiling and condensing: pressure by temperature and back. */
import type { Refrigerant, SaturationRow } from '../shapes/refrigerant.ts';

/** `dew` where vapour is compared (suction), `bubble` where liquid is (condenser outlet). Equal in a pure fluid. */
export type Side = 'dew' | 'bubble';

const KELVIN = 273.15;
/** So that a pressure reckoned at the very end of the table is found again. */
const ROUNDING = 1e-12;
const pressureOf = (row: SaturationRow, side: Side) => (side === 'dew' ? row.dewBar : row.bubbleBar);
const inverse = (row: SaturationRow) => 1 / (row.temperatureC + KELVIN);

/** The lower of the two rows that enclose a value; NaN-safe callers check the range first. */
function lowerRow(rows: readonly SaturationRow[], value: number, read: (row: SaturationRow) => number): number {
  let index = 0;
  while (index < rows.length - 2 && read(rows[index + 1]!) <= value) index += 1;
  return index;
}

/**
 * Saturation pressure [bar absolute] at a temperature [°C]; null outside the table.
 * ln p is a straight line in 1/T between rows (Clausius and Clapeyron). Valid −30 to 70 °C.
 */
export function pressureAt(refrigerant: Refrigerant, temperatureC: number, side: Side): number | null {
  const { rows } = refrigerant;
  if (!(temperatureC >= rows[0]!.temperatureC && temperatureC <= rows.at(-1)!.temperatureC)) return null;
  const index = lowerRow(rows, temperatureC, (row) => row.temperatureC);
  const [low, high] = [rows[index]!, rows[index + 1]!];
  const share = (1 / (temperatureC + KELVIN) - inverse(low)) / (inverse(high) - inverse(low));
  const [lowLog, highLog] = [Math.log(pressureOf(low, side)), Math.log(pressureOf(high, side))];
  return Math.exp(lowLog + share * (highLog - lowLog));
}

/** Saturation temperature [°C] at a pressure [bar absolute], the inverse of `pressureAt`; null outside the table. */
export function temperatureAt(refrigerant: Refrigerant, barAbsolute: number, side: Side): number | null {
  const { rows } = refrigerant;
  const read = (row: SaturationRow) => pressureOf(row, side);
  if (!(barAbsolute >= read(rows[0]!) * (1 - ROUNDING) && barAbsolute <= read(rows.at(-1)!) * (1 + ROUNDING)))
    return null;
  const index = lowerRow(rows, barAbsolute, read);
  const [low, high] = [rows[index]!, rows[index + 1]!];
  const share = (Math.log(barAbsolute) - Math.log(read(low))) / (Math.log(read(high)) - Math.log(read(low)));
  return 1 / (inverse(low) + share * (inverse(high) - inverse(low))) - KELVIN;
}
