/** Prices of a heat pump that has a meter of its own, at which the grid asks less. */
import type { PricedVersion } from '../shapes/tariff.ts';
import { inclVat } from './slot-price.ts';

const kept = new WeakMap<PricedVersion, PricedVersion>();

/** The version as the heat pump's own meter has it: each price lower by what is taken off a kWh; the version itself where it has no such meter. */
export function onOwnMeter<V extends PricedVersion>(version: V): V {
  const { ownMeter, bands, series } = version;
  if (!ownMeter) return version;
  const less = <P extends { readonly pencePerKWh: number }>(price: P): P => ({
    ...price,
    pencePerKWh: price.pencePerKWh - ownMeter.lessPencePerKWh,
  });
  const made: PricedVersion = kept.get(version) ?? {
    ...version,
    bands: bands.map(({ blocks, ...band }) => ({
      ...less(band),
      ...(blocks ? { blocks: { ...blocks, steps: blocks.steps.map(less) } } : {}),
    })),
    ...(series ? { series: seriesLess(series, ownMeter.lessPencePerKWh) } : {}),
  };
  kept.set(version, made);
  // Made of the version by its prices alone.
  return made as V;
}

function seriesLess(series: NonNullable<PricedVersion['series']>, less: number): NonNullable<PricedVersion['series']> {
  const { days, mostPencePerKWh } = series;
  return {
    ...series,
    days: days.map(({ date, pencePerKWh }) => ({
      date,
      pencePerKWh: pencePerKWh.map((pence) => (pence === null ? null : pence - less)),
    })),
    ...(mostPencePerKWh === undefined ? {} : { mostPencePerKWh: mostPencePerKWh - less }),
  };
}

/** What the grid's terms for a heat pump add to a year beside its units [pence, VAT included]: its meter, less what is taken off by the year. */
export const gridPencePerYear = (version: PricedVersion): number =>
  inclVat(version, (version.ownMeter?.pencePerYear ?? 0) - (version.reducedPencePerYear ?? 0));
