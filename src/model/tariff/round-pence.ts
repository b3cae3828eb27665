/**
 * Rounds an amount to whole pence as a bill prints it [pence]: halves away from zero.
 * The product of units and price is first cleaned of binary dust below a millionth of a penny, so that 12.5 × 0.2
 * rounds as it would on paper. Never gives minus zero. Common practice, no source.
 */
export function roundPence(pence: number): number {
  const clean = Math.round(Math.abs(pence) * 1e6) / 1e6;
  const whole = Math.floor(clean + 0.5);
  return pence < 0 && whole > 0 ? -whole : whole;
}
