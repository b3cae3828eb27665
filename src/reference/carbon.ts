/**
 * Greenhouse gas of one kWh, kg CO2e: burning for the fuels, generation with losses on the wires for electricity.
 * What it takes to bring the fuel to the home is left out on both sides.
 */
import type { Reference } from '../model/shapes/reference.ts';

const SET_2025 = 'UK Government GHG conversion factors (DESNZ) 2025';
const SET_2026 = 'UK Government GHG conversion factors (DESNZ) 2026, second hand';

export const carbonKgPerKWh: Reference['carbonKgPerKWh'] = {
  electricity: {
    // 0.13096 generation (2026) and 0.01853 transmission and distribution (2025; that of 2026 was not seen).
    value: 0.14949,
    unit: 'kg CO2e per kWh',
    source: `${SET_2026}: generation 0.13096; with ${SET_2025}: transmission and distribution 0.01853`,
    provenance: 'read',
  },
  gas: {
    value: 0.18231,
    unit: 'kg CO2e per kWh, gross',
    source: `${SET_2026}: natural gas, combustion`,
    provenance: 'read',
  },
  oil: {
    value: 0.24677,
    unit: 'kg CO2e per kWh, gross',
    source: `${SET_2025}: burning oil (kerosene), combustion`,
    provenance: 'read',
  },
  lpg: {
    value: 0.2141,
    unit: 'kg CO2e per kWh, gross',
    source: `${SET_2025}: propane, combustion`,
    provenance: 'read',
  },
};
