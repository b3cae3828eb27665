/** What is taken of a battery and an electric car while nobody has said it. */
import type { Reference } from '../model/shapes/reference.ts';

export const battery: Reference['battery'] = {
  powerPerKWh: {
    value: 0.4,
    unit: 'kW per kWh',
    source: 'NREL Annual Technology Baseline 2023, representative home battery of 5 kW and 12.5 kWh',
    provenance: 'computed',
  },
  roundTripShare: {
    value: 0.85,
    unit: 'share',
    source: 'NREL Annual Technology Baseline 2020, alternating current in to alternating current out',
    provenance: 'read',
  },
  standbyW: { value: 15, unit: 'W', source: 'middle of 5 to 30 W, from memory: ask the maker', provenance: 'memory' },
};

const carUse = {
  value: 20.7,
  unit: 'kWh per 100 km',
  source: 'Hochschule Trier, mean of 342 models in real use, second hand',
  provenance: 'read',
} as const;

export const car: Reference['car'] = {
  kmPerYear: {
    value: 16180,
    unit: 'km a year',
    source: 'RAC Foundation from MOT records 2025, electric cars under three years: 10,054 miles',
    provenance: 'read',
  },
  kWhPer100Km: carUse,
  chargerKW: { value: 7.4, unit: 'kW', source: '32 A at 230 V', provenance: 'computed' },
};

export const germanCar: Reference['car'] = {
  ...car,
  kmPerYear: {
    value: 12309,
    unit: 'km a year',
    source: 'Kraftfahrt-Bundesamt, all cars 2024, second hand',
    provenance: 'read',
  },
};
