/**
 * Pennies of a bill in whole numbers only, so that the check rests on no arithmetic of the program.
 * Units in thousandths of a kWh, prices in thousandths of a penny: a product is in millionths of a penny.
 */
const MILLION = 1_000_000n;

/** Halves up; below zero, halves away from zero. */
function divideRounded(value: bigint, by: bigint): bigint {
  const size = value < 0n ? -value : value;
  const rounded = (2n * size + by) / (2n * by);
  return value < 0n ? -rounded : rounded;
}

/** A figure written with at most three decimals, in thousandths: "31.62" gives 31620. */
export function thousandths(written: string): bigint {
  const [whole = '0', part = ''] = written.replace('-', '').split('.');
  const value = BigInt(whole) * 1000n + BigInt(part.padEnd(3, '0').slice(0, 3));
  return written.startsWith('-') ? -value : value;
}

/** Pence of so many units at so many pence. */
export const times = (quantity: string, price: string): bigint =>
  divideRounded(thousandths(quantity) * thousandths(price), MILLION);

/** VAT [pence] on a sum, rate in whole per cent. */
export const vatOn = (pence: bigint, percent: bigint): bigint => divideRounded(pence * percent, 100n);
/** VAT [pence] inside a sum. */
export const vatIn = (pence: bigint, percent: bigint): bigint => divideRounded(pence * percent, 100n + percent);

/**
 * Thousandths of a kWh of gas: units (thousandths) × 283/100 if imperial × correction (100,000ths) × calorific value
 * (thousandths) / 3.6, rounded once at the end to `decimals`.
 */
export function gasKWh(
  units: string,
  imperial: boolean,
  correction: bigint,
  calorific: string,
  decimals: 0 | 1 | 2,
): string {
  const product = thousandths(units) * (imperial ? 283n : 100n) * correction * thousandths(calorific) * 10n;
  // thousandths × hundredths × 100,000ths × thousandths × 10 / 36 in kWh.
  const scale = 1000n * 100n * 100_000n * 1000n * 36n;
  const unit = 10n ** BigInt(decimals);
  const value = divideRounded(product * unit, scale);
  const text = value.toString().padStart(decimals + 1, '0');
  return decimals === 0 ? text : `${text.slice(0, -decimals)}.${text.slice(-decimals)}`;
}
