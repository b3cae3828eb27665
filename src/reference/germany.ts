/**
 * What is built in for a home in Germany, each with its public source. What has none here is left out, and then asked:
 * oil, LPG and pellets have no price, places no design temperature, and no yearly visit has one.
 */
import { COUNTRIES } from '../model/shapes/country.ts';
import type { ClimateRegion, PriceQuarter, Reference } from '../model/shapes/reference.ts';
import { gasVolumeOf } from './gas-of-place.ts';
import { germanHomeHours } from './home-hours.ts';
import { germanCar } from './household-and-car.ts';
import { germanSun } from './sun.ts';

const NORM = 'DIN V 18599-10, reference climate by region: monthly means, public transcription in code';

const region = (id: number, name: string, latitudeN: number, monthlyMeanC: readonly number[]): ClimateRegion => ({
  id,
  name,
  latitudeN,
  // The transcription names no heights; nothing is reckoned with them.
  heightM: 0,
  monthlyMeanC,
  source: NORM,
  provenance: 'read',
});

/** Potsdam first: it is the reference of the standard, and stands in where no region is said. Latitudes are those of the towns, from memory. */
const regions: readonly ClimateRegion[] = [
  region(104, 'Potsdam', 52.4, [1.0, 1.9, 4.7, 9.2, 14.1, 16.7, 19.0, 18.6, 14.3, 9.5, 4.1, 0.9]),
  region(101, 'Bremerhaven', 53.5, [2.9, 3.2, 5.4, 9.0, 13.1, 16.0, 17.9, 18.2, 15.0, 10.6, 6.1, 3.2]),
  region(102, 'Rostock', 54.1, [2.3, 2.4, 4.3, 8.0, 12.4, 15.6, 18.0, 18.0, 14.7, 10.2, 5.5, 2.6]),
  region(103, 'Hamburg', 53.6, [2.5, 2.7, 4.9, 8.5, 12.8, 15.5, 17.8, 17.8, 14.1, 9.8, 5.1, 2.3]),
  region(105, 'Essen', 51.4, [3.1, 3.5, 6.6, 9.5, 13.7, 15.9, 18.2, 18.2, 14.6, 10.8, 6.1, 3.5]),
  region(106, 'Bad Marienberg', 50.7, [0.1, 0.5, 3.6, 7.0, 11.5, 14.0, 16.1, 16.0, 12.3, 8.1, 3.2, 0.6]),
  region(107, 'Kassel', 51.3, [1.0, 2.1, 5.2, 8.8, 13.3, 15.9, 18.1, 17.8, 13.7, 9.5, 4.5, 1.7]),
  region(108, 'Braunlage', 51.7, [-0.8, -0.3, 2.1, 5.7, 10.5, 12.9, 15.0, 15.0, 11.1, 7.1, 2.3, -0.2]),
  region(109, 'Chemnitz', 50.8, [0.5, 1.0, 3.9, 8.2, 12.9, 15.5, 17.5, 17.6, 13.2, 9.2, 3.8, 0.8]),
  region(110, 'Hof', 50.3, [-1.2, -0.4, 2.8, 6.6, 11.7, 14.5, 16.3, 16.6, 12.0, 7.6, 2.3, -0.7]),
  region(111, 'Fichtelberg', 50.4, [-3.3, -3.5, -1.3, 2.3, 7.4, 9.8, 12.2, 12.4, 8.1, 4.4, -0.6, -2.8]),
  region(112, 'Mannheim', 49.5, [2.4, 3.6, 7.1, 10.6, 15.6, 18.1, 20.1, 20.2, 15.7, 11.0, 5.7, 3.1]),
  region(113, 'Passau', 48.6, [-1.2, 0.4, 4.3, 8.2, 13.7, 16.4, 18.0, 17.8, 13.1, 8.7, 3.0, -0.2]),
  region(114, 'Stötten', 48.7, [-0.5, 0.3, 3.4, 6.8, 11.8, 14.4, 16.6, 16.7, 12.3, 8.5, 2.6, -0.2]),
  region(115, 'Garmisch-Partenkirchen', 47.5, [-2.3, -0.5, 3.2, 7.0, 11.8, 14.8, 16.6, 16.4, 12.3, 8.4, 1.9, -1.8]),
];

/** Cents a kWh with everything in it, so that no standing charge stands beside. A heat pump’s own tariff is lower. */
const quarters: readonly PriceQuarter[] = [
  {
    fuel: 'electricity',
    from: '2026-01-01',
    to: '2026-12-31',
    pencePerKWh: 37.2,
    standingPencePerDay: 0,
    source: 'BDEW Strompreisanalyse 2026, mean of households, basic price and taxes in it, second hand',
    provenance: 'read',
  },
  {
    fuel: 'gas',
    from: '2025-01-01',
    to: '2025-12-31',
    pencePerKWh: 12.24,
    standingPencePerDay: 0,
    source: 'BDEW Gaspreisanalyse 2025, one-family house at 20,000 kWh a year, basic price and taxes in it',
    provenance: 'read',
  },
];

/** The facts of a home in Germany, with those of `elsewhere` that are the same everywhere or that Germany has none of. */
export const inGermany = (elsewhere: Reference): Reference => ({
  ...elsewhere,
  country: 'DE',
  regions,
  postcodes: [],
  quarters,
  gasVolume: {
    ...elsewhere.gasVolume,
    correction: {
      value: 1,
      unit: '1',
      source: 'Bills in Germany multiply by a Zustandszahl of their own, which is in the calorific value here',
      provenance: 'memory',
    },
    calorificMJPerM3: {
      value: gasVolumeOf(COUNTRIES.DE.zone).calorificMJPerM3,
      unit: 'MJ/m³',
      source: 'Brennwert 11.3 kWh per m³ × Zustandszahl 0.95, usual values after DVGW G 685, from memory',
      provenance: 'memory',
    },
  },
  homeHours: germanHomeHours,
  sun: germanSun,
  car: germanCar,
  deliveredPrices: [],
  twoRate: null,
  designTemperatures: [],
  carbonKgPerKWh: {
    ...elsewhere.carbonKgPerKWh,
    electricity: {
      value: 0.4464,
      unit: 'kg CO2e per kWh',
      source: 'Umweltbundesamt, announcement for 2025: 124 kg CO2e per GJ of electricity, second hand',
      provenance: 'read',
    },
  },
  service: Object.fromEntries(
    Object.entries(elsewhere.service).map(([of, value]) => [
      of,
      { ...value, value: 0, source: 'no German price of a visit is built in: type your own' },
    ]),
  ) as Reference['service'],
  spacePerM2: [
    {
      ageBand: 'any',
      low: 45,
      middle: 82,
      high: 140,
      source:
        'Heizspiegel 2024, second hand: 121 kWh of gas per m² in one-family houses, at 84 % efficiency, less about 20 kWh per m² of hot water; low and high by hand',
      provenance: 'computed',
    },
  ],
});
