/**
 * Brine of the ground loop and heating water. Brine: Melinder 2010, correlations of the International Institute of
 * Refrigeration, by mass; water: IAPWS-95 at 2 bar. Suppliers quote a share by volume, so the basis is always asked.
 */
import type { BrineRow, FluidTables } from '../model/site-readings/brine.ts';

const water: BrineRow = {
  percent: 0,
  freezingC: 0,
  kgPerM3: [null, 1000, 999.1],
  jPerKgK: [null, 4204.6, 4188.1],
};

export const fluids: FluidTables = {
  source: 'brine: Melinder 2010, IIR; water: IAPWS-95; both evaluated with the open library CoolProp 8.0.0',
  provenance: 'computed',
  brineTemperaturesC: [-5, 5, 15],
  brine: {
    ethylene: [
      water,
      { percent: 5, freezingC: -1.58, kgPerM3: [null, 1006.1, 1004.9], jPerKgK: [null, 4118.3, 4115.0] },
      { percent: 10, freezingC: -3.36, kgPerM3: [null, 1013.2, 1011.7], jPerKgK: [null, 4038.7, 4042.9] },
      { percent: 15, freezingC: -5.44, kgPerM3: [1021.7, 1020.5, 1018.6], jPerKgK: [3947.1, 3957.0, 3968.2] },
      { percent: 20, freezingC: -7.95, kgPerM3: [1029.8, 1028.1, 1025.6], jPerKgK: [3852.3, 3869.5, 3887.2] },
      { percent: 25, freezingC: -10.97, kgPerM3: [1038.1, 1035.8, 1032.8], jPerKgK: [3750.8, 3774.9, 3798.8] },
      { percent: 30, freezingC: -14.58, kgPerM3: [1046.3, 1043.5, 1040.0], jPerKgK: [3642.6, 3673.4, 3703.5] },
      { percent: 35, freezingC: -18.84, kgPerM3: [1054.4, 1051.1, 1047.2], jPerKgK: [3529.1, 3566.4, 3602.7] },
      { percent: 40, freezingC: -23.81, kgPerM3: [1062.2, 1058.5, 1054.2], jPerKgK: [3412.2, 3455.9, 3498.3] },
    ],
    propylene: [
      water,
      { percent: 5, freezingC: -1.21, kgPerM3: [null, 1004.4, 1003.2], jPerKgK: [null, 4126.9, 4126.3] },
      { percent: 10, freezingC: -2.87, kgPerM3: [null, 1008.9, 1007.4], jPerKgK: [null, 4062.5, 4071.2] },
      { percent: 15, freezingC: -4.87, kgPerM3: [null, 1013.9, 1011.8], jPerKgK: [null, 4004.0, 4019.5] },
      { percent: 20, freezingC: -7.17, kgPerM3: [1020.8, 1019.1, 1016.4], jPerKgK: [3926.1, 3945.9, 3966.4] },
      { percent: 25, freezingC: -9.79, kgPerM3: [1026.9, 1024.5, 1021.2], jPerKgK: [3860.2, 3884.2, 3908.4] },
      { percent: 30, freezingC: -12.79, kgPerM3: [1033.0, 1029.9, 1026.0], jPerKgK: [3789.0, 3816.3, 3843.5] },
      { percent: 35, freezingC: -16.32, kgPerM3: [1038.9, 1035.1, 1030.7], jPerKgK: [3710.8, 3740.9, 3770.8] },
      { percent: 40, freezingC: -20.57, kgPerM3: [1044.5, 1040.1, 1035.0], jPerKgK: [3625.1, 3658.0, 3690.5] },
    ],
  },
  /** Handbook values at 20 °C, from memory. */
  pureKgPerM3: { ethylene: 1113, propylene: 1036 },
  water: [
    { temperatureC: 5, kgPerM3: 1000.0, jPerKgK: 4204.6 },
    { temperatureC: 10, kgPerM3: 999.75, jPerKgK: 4194.8 },
    { temperatureC: 25, kgPerM3: 997.1, jPerKgK: 4181.0 },
    { temperatureC: 35, kgPerM3: 994.07, jPerKgK: 4179.0 },
    { temperatureC: 45, kgPerM3: 990.26, jPerKgK: 4179.9 },
    { temperatureC: 55, kgPerM3: 985.74, jPerKgK: 4182.7 },
    { temperatureC: 65, kgPerM3: 980.6, jPerKgK: 4187.1 },
    { temperatureC: 75, kgPerM3: 974.9, jPerKgK: 4193.0 },
  ],
};
