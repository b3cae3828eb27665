/** What the sun gives a roof, and what is paid for what a roof sends out. */
import type { CivilDate } from '../model/shapes/dates.ts';
import type { Reference } from '../model/shapes/reference.ts';

type Sun = Reference['sun'];

const APPENDIX_U =
  'SAP 2012 Appendix U, Tables U3 and U5 (two public transcriptions agree); UK average row and south column give the published results of SAP 10.2 to 9 digits, that the others are unchanged there is from memory';

/** Mean radiation on the flat, W/m², January to December, by climate region. Table U3. */
const britishWPerM2: Sun['horizontalWPerM2'] = {
  0: [26, 54, 96, 150, 192, 200, 189, 157, 115, 66, 33, 21],
  1: [30, 56, 98, 157, 195, 217, 203, 173, 127, 73, 39, 24],
  2: [32, 59, 104, 170, 208, 231, 216, 182, 133, 77, 41, 25],
  3: [35, 62, 109, 172, 209, 235, 217, 185, 138, 80, 44, 27],
  4: [36, 63, 111, 174, 210, 233, 204, 182, 136, 78, 44, 28],
  5: [32, 59, 105, 167, 201, 226, 206, 175, 130, 74, 40, 25],
  6: [28, 55, 97, 153, 191, 208, 194, 163, 121, 69, 35, 23],
  7: [24, 51, 95, 152, 191, 203, 186, 152, 115, 65, 31, 20],
  8: [23, 51, 95, 157, 200, 203, 194, 156, 113, 62, 30, 19],
  9: [23, 50, 92, 151, 200, 196, 187, 153, 111, 61, 30, 18],
  10: [25, 51, 95, 152, 196, 198, 190, 156, 115, 64, 32, 20],
  11: [26, 54, 96, 150, 192, 200, 189, 157, 115, 66, 33, 21],
  12: [30, 58, 101, 165, 203, 220, 206, 173, 128, 74, 39, 24],
  13: [29, 57, 104, 164, 205, 220, 199, 167, 120, 68, 35, 22],
  14: [19, 46, 88, 148, 196, 193, 185, 150, 101, 55, 25, 15],
  15: [21, 46, 89, 146, 198, 191, 183, 150, 106, 57, 27, 15],
  16: [19, 45, 89, 143, 194, 188, 177, 144, 101, 54, 25, 14],
  17: [17, 43, 85, 145, 189, 185, 170, 139, 98, 51, 22, 12],
  18: [16, 41, 87, 155, 205, 206, 185, 148, 101, 51, 21, 11],
  19: [14, 39, 84, 143, 205, 201, 178, 145, 100, 50, 19, 9],
  20: [12, 34, 79, 135, 196, 190, 168, 144, 90, 46, 16, 7],
  21: [24, 52, 96, 155, 201, 198, 183, 150, 107, 61, 30, 18],
};

/** Constants k1 to k9 of the radiation on a slope. Table U5. */
const north = [26.3, -38.5, 14.8, -16.5, 27.3, -11.9, -1.06, 0.0872, -0.191];
const northEast = [0.165, -3.68, 3.0, 6.38, -4.53, -0.405, -4.38, 4.89, -1.99];
const east = [1.44, -2.36, 1.07, -0.514, 1.89, -1.64, -0.542, -0.757, 0.604];
const southEast = [-2.95, 2.89, 1.17, 5.67, -3.54, -4.28, -2.72, -0.25, 3.07];
const south = [-0.66, -0.106, 2.93, 3.63, -0.374, -7.4, -2.71, -0.991, 4.59];

export const sun: Sun = {
  source: APPENDIX_U,
  provenance: 'read',
  horizontalWPerM2: britishWPerM2,
  declinationDegrees: [-20.7, -12.8, -1.8, 9.8, 18.8, 23.1, 21.2, 13.7, 2.9, -8.7, -18.4, -23.0],
  slope: { N: north, NE: northEast, E: east, SE: southEast, S: south, SW: southEast, W: east, NW: northEast },
  performance: {
    value: 0.8,
    unit: 'kWh a year for each kWp and kWh/m²',
    source: 'SAP 10.2 Appendix M1, as in a public implementation',
    provenance: 'read',
  },
  shading: {
    little: {
      value: 1,
      unit: 'share',
      source: 'SAP 10.2 Appendix M1, less than 20 % of the sky hidden',
      provenance: 'read',
    },
    some: {
      value: 0.8,
      unit: 'share',
      source: 'SAP 10.2 Appendix M1, 20 to 60 % of the sky hidden',
      provenance: 'read',
    },
    much: { value: 0.65, unit: 'share', source: 'SAP 2012 Table H4, 60 to 80 % of the sky hidden', provenance: 'read' },
    heavy: {
      value: 0.5,
      unit: 'share',
      source: 'SAP 2012 Table H4, more than 80 % of the sky hidden',
      provenance: 'read',
    },
  },
  longitudeE: {
    value: -1.5,
    unit: '°',
    source: 'middle of England; a degree moves the sun by 4 minutes',
    provenance: 'memory',
  },
  exportPay: {
    value: 9.31,
    unit: 'p per kWh',
    source: 'Ofgem, Smart Export Guarantee annual report 2022-23: £7,193,527 for 77.3 GWh',
    provenance: 'computed',
  },
};

/** Reference climate of Germany; the standard's other fourteen regions were not found. */
export const germanSun: Sun = {
  ...sun,
  horizontalWPerM2: { 104: [29, 44, 97, 189, 221, 241, 210, 180, 127, 77, 31, 17] },
  source:
    'DIN V 18599-10:2018-09, Table E.6, reference climate Potsdam, public transcription; slopes by SAP Appendix U, which was made for Britain',
  longitudeE: {
    value: 10,
    unit: '°',
    source: 'middle of Germany; a degree moves the sun by 4 minutes',
    provenance: 'memory',
  },
  exportPay: {
    smallCents: 8.6,
    largeCents: 7.5,
    smallKWp: 10,
    largeKWp: 40,
    lessCents: 0.4,
    keptPerHalfYear: 0.99,
    from: '2022-07-30' as CivilDate,
    countsFrom: '2024-02-01' as CivilDate,
    until: '2027-01-31' as CivilDate,
    source:
      'EEG 2023 §§ 48, 49 and 53 as a rule that gives every rate read from February 2025 to February 2026; surplus, paid for 20 years; a reform is announced',
    provenance: 'computed',
  },
};
