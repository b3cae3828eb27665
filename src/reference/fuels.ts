/** What is in a unit of each fuel, what burning it gives off, what a yearly visit costs and what a price is assumed; and a gas meter's volume. */
import { DELIVERED_FUELS, type DeliveredFuel, FUEL_IDS, type Fuel } from '../model/shapes/heating.ts';
import type { DeliveredPrice, Reference, Value } from '../model/shapes/reference.ts';

const SET_2025 = 'UK Government GHG conversion factors (DESNZ) 2025';
const SET_2026 = 'UK Government GHG conversion factors (DESNZ) 2026, second hand';
const FACTORS_2025 = 'UK Government GHG conversion factors for company reporting (DESNZ) 2025';

const read = (value: number, unit: string, source: string): Value => ({ value, unit, source, provenance: 'read' });
/** Pounds; custom of the trade, to be overwritten with the installer's own price. */
const visit = (value: number): Value => ({
  value,
  unit: 'pounds a year',
  source: 'usual price of one visit a year',
  provenance: 'common practice, no source',
});

interface FuelFacts {
  /** Greenhouse gas of one kWh burnt, kg CO2e. What it takes to bring the fuel to the home is left out, as with electricity. */
  readonly carbon: Value;
  readonly service: Value;
  /** Energy in its base unit, where it is bought by amount. */
  readonly energy?: Value;
  /** Pence a base unit in 2026, where nobody publishes a mean price that was found: it is asked about and its spread is wide. */
  readonly assumedPence?: number;
}
type DeliveredFacts = FuelFacts & { readonly energy: Value };

const FACTS = {
  gas: {
    carbon: read(0.18231, 'kg CO2e per kWh, gross', `${SET_2026}: natural gas, combustion`),
    service: visit(100),
  },
  oil: {
    carbon: read(0.24677, 'kg CO2e per kWh, gross', `${SET_2025}: burning oil (kerosene), combustion`),
    service: visit(120),
    energy: read(
      10.3,
      'kWh/litre',
      `Heating oil (kerosene), ${FACTORS_2025}: 0.53078 / 0.05153; the trade prints 10.35`,
    ),
  },
  lpg: {
    carbon: read(0.2141, 'kg CO2e per kWh, gross', `${SET_2025}: propane, combustion`),
    service: visit(110),
    energy: read(7.21, 'kWh/litre', `LPG propane, ${FACTORS_2025}: 1.54358 / 0.2141`),
    assumedPence: 70,
  },
  // The published set knows one energy for wood, which is that by net calorific value; the efficiency goes by the same.
  pellets: {
    carbon: read(
      0.0115,
      'kg CO2e per kWh, net',
      `${SET_2025}: wood pellets; the carbon that the wood took up is left out`,
    ),
    service: visit(220),
    energy: read(4.8, 'kWh/kg', `Wood pellets, ${FACTORS_2025}: 55.19389 / 0.0115 / 1000; by net calorific value`),
    // The last mean price found is £210 a tonne in December 2013 (Biomass Energy Centre).
    assumedPence: 38,
  },
} satisfies { readonly [F in Fuel]: F extends DeliveredFuel ? DeliveredFacts : FuelFacts };

const byFuel = <T>(of: (facts: FuelFacts) => T) =>
  Object.fromEntries(FUEL_IDS.map((fuel) => [fuel, of(FACTS[fuel])])) as { readonly [fuel in Fuel]: T };

export const kWhPerUnit = byFuel(({ energy }) => energy) as Reference['kWhPerUnit'];

export const assumedPrices: readonly DeliveredPrice[] = DELIVERED_FUELS.flatMap((fuel) => {
  const { assumedPence }: FuelFacts = FACTS[fuel];
  if (assumedPence === undefined) return [];
  return {
    fuel,
    from: '2026-01-01',
    to: '2026-12-31',
    pencePerUnit: assumedPence,
    kind: 'assumed',
    spread: 0.3,
    source: 'assumed, no published price found',
    provenance: 'memory',
  };
});

export const carbonKgPerKWh: Reference['carbonKgPerKWh'] = {
  // 0.13096 generation (2026) and 0.01853 transmission and distribution (2025; that of 2026 was not seen).
  electricity: read(
    0.14949,
    'kg CO2e per kWh',
    `${SET_2026}: generation 0.13096; with ${SET_2025}: transmission and distribution 0.01853`,
  ),
  ...byFuel(({ carbon }) => carbon),
};

export const service: Reference['service'] = {
  'heat-pump': visit(180),
  electric: visit(0),
  ...byFuel(({ service }) => service),
};

export const gasVolume: Reference['gasVolume'] = {
  correction: read(1.02264, '1', 'Volume correction printed on gas bills; metering to 15 °C and 1013.25 mbar'),
  calorificMJPerM3: read(39.5, 'MJ/m³', 'Typical gross calorific value on bills, which runs from 37.5 to 43'),
  imperialM3PerHundredCubicFeet: read(
    2.83,
    'm³ per hundred ft³',
    'Constant used on gas bills; the exact one is 2.8316847',
  ),
};
