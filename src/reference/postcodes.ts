/** Climate region of a postcode area; a district row overrides the row of the whole area. Channel Islands and Isle of Man are absent. */
import type { PostcodeRule, Sourced } from '../model/shapes/reference.ts';

/** Holds for every row below. */
export const postcodesSource: Sourced = {
  source: 'SAP 2012 Appendix U, postcode table (one public transcription)',
  provenance: 'read',
};

/** Area, first district, last district, region. */
const DISTRICTS: readonly (readonly [string, number, number, number])[] = [
  ['BD', 23, 24, 10],
  ['CM', 21, 23, 1],
  ['DH', 4, 5, 9],
  ['EH', 43, 46, 9],
  ['EN', 9, 9, 12],
  ['GU', 11, 12, 3],
  ['GU', 14, 14, 3],
  ['GU', 28, 29, 2],
  ['GU', 30, 35, 3],
  ['GU', 46, 46, 3],
  ['GU', 51, 52, 3],
  ['IV', 30, 32, 16],
  ['IV', 36, 36, 16],
  ['KW', 15, 17, 19],
  ['LA', 7, 23, 8],
  ['LL', 23, 27, 13],
  ['LL', 30, 78, 13],
  ['LS', 24, 24, 10],
  ['NP', 8, 8, 13],
  ['PE', 9, 12, 11],
  ['PE', 20, 25, 11],
  ['PH', 19, 25, 17],
  ['PH', 26, 26, 16],
  ['PH', 30, 44, 17],
  ['PH', 49, 50, 14],
  ['PO', 18, 22, 2],
  ['RG', 21, 29, 3],
  ['RH', 10, 20, 2],
  ['S', 18, 18, 6],
  ['S', 32, 33, 6],
  ['S', 40, 45, 6],
  ['SA', 14, 20, 13],
  ['SA', 31, 48, 13],
  ['SA', 61, 73, 13],
  ['SK', 13, 13, 6],
  ['SK', 17, 17, 6],
  ['SK', 22, 23, 6],
  ['SN', 7, 7, 1],
  ['SP', 6, 11, 3],
  ['SR', 7, 8, 10],
  ['SY', 14, 14, 7],
  ['SY', 15, 25, 13],
  ['YO', 15, 16, 11],
  ['YO', 25, 25, 11],
];

const WHOLE_AREAS: readonly (readonly [region: number, areas: string])[] = [
  [1, 'AL CR E EC EN GU HA HP KT LU MK N NW OX RG RH SE SG SL SM SW TW UB W WC WD'],
  [2, 'BN BR CT DA ME TN'],
  [3, 'BH DT PO SO'],
  [4, 'EX PL TQ TR'],
  [5, 'BA BS CF GL NP SA SN SP TA'],
  [6, 'B CV DE DY HR LE NN ST SY TF WR WS WV'],
  [7, 'BB BL CH CW FY L LA LL M OL PR SK WA WN'],
  [8, 'CA DG'],
  [9, 'NE SR TD'],
  [10, 'DH DL HG TS YO'],
  [11, 'BD DN HD HU HX LN LS NG S WF'],
  [12, 'CB CM CO IG IP NR PE RM SS'],
  [13, 'LD'],
  [14, 'FK G KA ML PA'],
  [15, 'DD EH KY PH'],
  [16, 'AB'],
  [17, 'IV KW'],
  [18, 'HS'],
  [20, 'ZE'],
  [21, 'BT'],
];

export const postcodes: readonly PostcodeRule[] = [
  ...DISTRICTS.map(([area, districtFrom, districtTo, regionId]) => ({ area, districtFrom, districtTo, regionId })),
  ...WHOLE_AREAS.flatMap(([regionId, areas]) => areas.split(' ').map((area) => ({ area, regionId }))),
];
