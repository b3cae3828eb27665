import { addDays, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { minutesInDay } from '../../../src/model/calendar/zone.ts';
import type { CivilDate } from '../../../src/model/shapes/dates.ts';
import type { PriceSeries, Tariff, TariffBand, TariffVersion } from '../../../src/model/shapes/tariff.ts';

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

/** A price for each half-hour of some days: pence = f(day from 0, half-hour of the day). UK clock. */
export function priceSeries(first: CivilDate, days: number, f: (day: number, half: number) => number): PriceSeries {
  return {
    zone: 'Europe/London',
    days: Array.from({ length: days }, (_, day) => {
      const date = addDays(first, day);
      const halves = minutesInDay('Europe/London', toDayNumber(date)) / 30;
      return { date, pencePerKWh: Array.from({ length: halves }, (_, half) => f(day, half)) };
    }),
  };
}

/** A tariff with everything that a tariff can have. */
export const fullTariff: Tariff = tariff([
  version(
    [
      { name: 'night', pencePerKWh: 12, times: [{ from: '00:30', to: '04:30' }] },
      {
        name: 'rest days',
        pencePerKWh: 20,
        times: [
          { days: ['sat', 'sun', 'bank-holiday'], from: '04:30', to: '24:00' },
          { days: ['sat', 'sun', 'bank-holiday'], from: '00:00', to: '00:30' },
        ],
      },
      {
        name: 'day',
        pencePerKWh: 25,
        times: 'rest',
        blocks: {
          per: 'day',
          steps: [
            { upToKWh: 2, pencePerKWh: 40 },
            { upToKWh: 10, pencePerKWh: 30 },
          ],
        },
      },
    ],
    { bankHolidays: 'scotland', vat: { rate: 0.2, included: false }, exportPencePerKWh: 15 },
  ),
  version([allHours(26)], {
    from: '2026-06-01',
    standingPencePerDay: 0,
    standingPencePerMonth: 1500,
    demand: { pencePerKWPerMonth: 120, agreedKW: 9 },
    series: priceSeries('2026-06-01', 2, (day, half) => day + half / 2),
  }),
]);
