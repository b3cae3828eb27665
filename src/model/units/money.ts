/** Money is in pence as plain numbers; it is rounded only where a bill rounds. */

/** To the whole penny, halves away from zero, as a bill's lines are rounded. Never gives −0. */
export function roundToPenny(pence: number): number {
  // A product such as 1.005 × 100 falls a hair under its half; the nudge is far below any real fraction of a penny.
  const size = Math.floor(Math.abs(pence) + 0.5 + 1e-9);
  return size === 0 ? 0 : Math.sign(pence) * size;
}

/** Price without VAT, from one that includes it at `rate` (0.05 for the domestic 5 %). */
export const withoutVat = (inclusivePence: number, rate: number): number => inclusivePence / (1 + rate);

/** Price with VAT, from one without. */
export const withVat = (exclusivePence: number, rate: number): number => exclusivePence * (1 + rate);
