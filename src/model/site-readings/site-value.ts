import type {
  Band,
  FixedBand,
  SiteBands,
  SiteQuantity,
  SiteUnit,
  SiteValue,
  Standing,
} from '../shapes/site-readings.ts';

function stand(value: number, band: Band | null): Standing {
  if (band === null) return 'no band';
  if (band.low !== null && value < band.low) return 'below';
  return band.high !== null && value > band.high ? 'above' : 'inside';
}

/** A result with its band, the fixed one of its quantity where none is given, and where it stands. */
export function siteValue(
  bands: SiteBands,
  quantity: SiteQuantity,
  value: number,
  unit: SiteUnit,
  band: Band | null = bands.fixed[quantity as FixedBand] ?? null,
): SiteValue {
  return { quantity, value, unit, band, standing: stand(value, band) };
}
