/** EN 14825: hours of each outdoor temperature in the heating season, and what the yearly sums are made with. */
import type { BinClimate } from '../model/heat-pump/full/scop.ts';

const SOURCE =
  'EN 14825:2018 Annex B bins and Annex A hours (heating only), as transcribed in a public open-source calculation; equivalent hours confirmed in Regulation (EU) 811/2013 Annex VII';
const DERIVED = `${SOURCE}; crankcase hours taken as thermostat-off plus off hours, since the transcription seems to have them swapped`;

/** Bins from the first temperature up, one a kelvin. */
const bins = (fromC: number, hours: readonly number[]) => hours.map((h, i) => ({ outdoorC: fromC + i, hours: h }));

export const binClimates: { readonly [climate in 'average' | 'warmer' | 'colder']: BinClimate } = {
  average: {
    designC: -10,
    equivalentHours: 2066,
    thermostatOffHours: 179,
    standbyHours: 0,
    crankcaseHours: 3851,
    offHours: 3672,
    bins: bins(
      -10,
      [
        1, 25, 23, 24, 27, 68, 91, 89, 165, 173, 240, 280, 320, 357, 356, 303, 330, 326, 348, 335, 315, 215, 169, 151,
        105, 74,
      ],
    ),
    source: SOURCE,
    provenance: 'read',
  },
  warmer: {
    designC: 2,
    equivalentHours: 1336,
    thermostatOffHours: 755,
    standbyHours: 0,
    crankcaseHours: 5100,
    offHours: 4345,
    bins: bins(2, [3, 22, 63, 63, 175, 162, 259, 360, 428, 430, 503, 444, 384, 294]),
    source: DERIVED,
    provenance: 'read',
  },
  colder: {
    designC: -22,
    equivalentHours: 2465,
    thermostatOffHours: 131,
    standbyHours: 0,
    crankcaseHours: 2320,
    offHours: 2189,
    bins: bins(
      -22,
      [
        1, 6, 13, 17, 19, 26, 39, 41, 35, 52, 37, 41, 43, 54, 90, 125, 169, 195, 278, 306, 454, 385, 490, 533, 380, 228,
        261, 279, 229, 269, 233, 230, 243, 191, 146, 150, 97, 61,
      ],
    ),
    source: DERIVED,
    provenance: 'read',
  },
};
