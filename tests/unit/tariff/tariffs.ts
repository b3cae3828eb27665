import type { Tariff, TariffBand, TariffVersion } from '../../../src/model/tariff/tariff.ts';

/** A version from 1 January 2026 with VAT in its prices, unless told otherwise. */
export function version(bands: readonly TariffBand[], change: Partial<TariffVersion> = {}): TariffVersion {
  return {
    from: '2026-01-01',
    standingPencePerDay: 50,
    vat: { rate: 0.05, included: true },
    bands: [...bands],
    ...change,
  };
}

export function tariff(versions: readonly TariffVersion[], change: Partial<Tariff> = {}): Tariff {
  return {
    id: 't',
    name: 'Invented prices',
    fuel: 'electricity',
    origin: 'invented',
    grade: 'measured',
    versions: [...versions],
    ...change,
  };
}

export const allHours = (pencePerKWh: number): TariffBand => ({ name: 'all hours', pencePerKWh, times: 'rest' });

export const nightAndDay: readonly TariffBand[] = [
  { name: 'night', pencePerKWh: 15, times: [{ from: '23:30', to: '06:30' }] },
  { name: 'day', pencePerKWh: 30, times: 'rest' },
];
