/**
 * Numbers as English and German write them. By hand, since the first one that a browser or Node is asked to write takes as
 * long as a household is reckoned: every locale that it knows is looked through.
 */

const SIGNS = { GBP: '£', EUR: '€', USD: '$' } as const;
type Money = keyof typeof SIGNS;

export const signOf = (money: Money): string => SIGNS[money];

/** Halves go up as the number is written: 1.005 is 1.01, though the binary fraction that stands for it lies below. */
function rounded(size: number, decimals: number): string {
  // What is written with an exponent has no digits to shift, and none after the point that would show.
  if (size >= 1e15 || size < 1e-6) return size.toFixed(decimals);
  return Number(`${Math.round(Number(`${size}e${decimals}`))}e-${decimals}`).toFixed(decimals);
}

/** A number of at least 0 with its thousands set apart: "1,234.50", in German "1.234,50". */
export function digits(size: number, decimals: number, language: string): string {
  const [apart, point] = language === 'de-DE' ? ['.', ','] : [',', '.'];
  const [whole, part] = rounded(size, decimals).split('.');
  const grouped = whole!.replace(/\B(?=(?:\d{3})+$)/g, apart);
  return part === undefined ? grouped : grouped + point + part;
}

/** The same as money: "£1,234", in German "1.234 €". */
export function moneyDigits(size: number, decimals: number, language: string, money: Money): string {
  const written = digits(size, decimals, language);
  return language === 'de-DE' ? `${written}\u00a0${SIGNS[money]}` : SIGNS[money] + written;
}
