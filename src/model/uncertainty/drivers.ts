/** Which unknowns decide how wide the range of a saving is. */

import {
  type DeliveredPriceInput,
  INPUTS,
  isDeliveredPrice,
  type Normals,
  type UncertainInput,
} from '../chance/normals.ts';
import type { Appraisal, UnknownInput } from '../shapes/appraisal.ts';

const OTHER_FUEL_PRICE: UnknownInput = 'other-fuel-price';
/** Names under which the inputs are shown. The machine's two factors count as one, and so do the fuels' prices, own electricity and services. */
const SHOWN_AS: { readonly [input in Exclude<UncertainInput, DeliveredPriceInput>]: UnknownInput } = {
  electricityPrice: 'electricity-price',
  spaceFactor: 'space-factor',
  waterFactor: 'space-factor',
  otherFactor: 'space-factor',
  spaceHeat: 'space-heat',
  waterHeat: 'water-heat',
  fuelPrice: OTHER_FUEL_PRICE,
  efficiency: 'other-efficiency',
  otherEfficiency: 'other-efficiency',
  machineExtras: 'own-electricity',
  boilerElectricity: 'own-electricity',
  machineService: 'service',
  otherService: 'service',
  winter: 'winter',
  habits: 'habits',
};
/** Below this share an input is chance, not cause, and is not shown. */
const LEAST_SHARE = 0.005;

/**
 * Share of each unknown in the variance of `values`, largest first [1].
 * Squared correlation of the values with each input's draws, divided by the sum of them all; the inputs are drawn
 * independently, so these are the first-order shares of a nearly linear sum. Adds up to 1, or is empty where the
 * values do not vary.
 */
export function rankDrivers(values: Float64Array, normals: Normals): Appraisal['drivers'] {
  const count = values.length;
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < count; i++) sum += values[i]!;
  const mean = sum / count;
  for (let i = 0; i < count; i++) squares += (values[i]! - mean) ** 2;
  if (!(squares > 1e-9 * Math.max(1, mean * mean))) return [];
  const shares = new Map<UnknownInput, number>();
  for (const input of INPUTS) {
    const draws = normals[input];
    let cross = 0;
    for (let i = 0; i < count; i++) cross += (values[i]! - mean) * draws[i]!;
    // The draws have mean 0 and variance 1, so that their own sum of squares is the count.
    const share = (cross * cross) / (squares * count);
    const shown = isDeliveredPrice(input) ? OTHER_FUEL_PRICE : SHOWN_AS[input];
    shares.set(shown, (shares.get(shown) ?? 0) + share);
  }
  const kept = [...shares].filter(([, share]) => share >= LEAST_SHARE);
  const total = kept.reduce((together, [, share]) => together + share, 0);
  return kept.map(([input, share]) => ({ input, share: share / total })).sort((a, b) => b.share - a.share);
}
