/** Standard normal draws for every uncertain input, worked out once for a number of draws and kept. */
import { DELIVERED_FUELS, type DeliveredFuel } from '../shapes/heating.ts';
import { normalQuantile } from './normal-quantile.ts';
import { sobolPoints } from './sobol.ts';

export type DeliveredPriceInput = `${DeliveredFuel}Price`;
const deliveredPrices = DELIVERED_FUELS.map((fuel): DeliveredPriceInput => `${fuel}Price`);
export const isDeliveredPrice = (input: UncertainInput): input is DeliveredPriceInput =>
  (deliveredPrices as readonly string[]).includes(input);

/**
 * One dimension each. The first ones are the best spread, so the inputs that matter most come first. A place once given
 * is kept: the fuels of later rows come last, so that a new one does not change the draws of the others.
 */
export const INPUTS = [
  'electricityPrice',
  'spaceFactor',
  'spaceHeat',
  'fuelPrice',
  'habits',
  'winter',
  'efficiency',
  'waterFactor',
  'waterHeat',
  ...deliveredPrices.slice(0, 2),
  'otherFactor',
  'otherEfficiency',
  'machineExtras',
  'boilerElectricity',
  'machineService',
  'otherService',
  ...deliveredPrices.slice(2),
] as const;
export type UncertainInput = (typeof INPUTS)[number];
export type Normals = { readonly [input in UncertainInput]: Float64Array };

export const SEED = 20260101;
const cache = new Map<number, Normals>();
const MOST_KEPT = 4;

/** Draws of every input as standard normal values [1], the same for the same count. */
export function normalDraws(count: number): Normals {
  const known = cache.get(count);
  if (known) return known;
  const points = sobolPoints(count, INPUTS.length, SEED);
  const entries = INPUTS.map((input, dimension) => [input, points[dimension]!.map(normalQuantile)]);
  const normals = Object.fromEntries(entries) as Normals;
  if (cache.size >= MOST_KEPT) cache.delete(cache.keys().next().value!);
  cache.set(count, normals);
  return normals;
}
