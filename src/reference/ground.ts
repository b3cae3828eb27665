/** The ground of Britain, and what arrays laid in it give. */
import type { Reference } from '../model/shapes/reference.ts';

const BUSBY_2015 = 'Busby 2015, UK shallow ground temperatures for ground coupled heat exchangers, QJEGH 48 (abstract)';
const BUSBY_2011 = 'Busby, Kingdon and Williams 2011, QJEGH 44 (abstract)';
const PRACTICE =
  'set so that brine enters at 4 to 9 °C over a season (boreholes) and 0 to 4 °C at the end of winter (trenches), usual in Britain, from memory; a judgement';

export const ground: Reference['ground'] = {
  // 12.7 °C in southern England against 11.3 °C of its air at sea level; 8.8 °C in northern Scotland against about 8.9.
  meanAboveAirK: {
    value: 0.7,
    unit: 'K',
    source: `${BUSBY_2015}: means at 1 m less the monthly air means of the same parts, +1.4 K in the south and about 0 in the north`,
    provenance: 'computed',
  },
  // Peak to peak 10.3 and 7.9 K at 1 m are 7.7 and 5.9 K of half swing at the surface; the air's are 6.2 and 4.9 K.
  swingOverAir: {
    value: 1.22,
    unit: 'times',
    source: `${BUSBY_2015}: seasonal range at 1 m brought to the surface, over that of the monthly air means`,
    provenance: 'computed',
  },
  coldestDay: {
    value: 30,
    unit: 'day of the year',
    source: 'coldest surface at the end of January',
    provenance: 'memory',
  },
  diffusivityM2PerS: { value: 6e-7, unit: 'm²/s', source: 'damp soil, handbook typical', provenance: 'memory' },
  gradientKPerM: { value: 0.028, unit: 'K/m', source: BUSBY_2011, provenance: 'read' },
  arrays: {
    vertical: {
      depthM: { value: 100, unit: 'm', source: 'usual borehole', provenance: 'common practice, no source' },
      dropK: { value: 13, unit: 'K', source: PRACTICE, provenance: 'memory' },
    },
    horizontal: {
      depthM: { value: 1.2, unit: 'm', source: 'usual trench', provenance: 'common practice, no source' },
      dropK: { value: 8, unit: 'K', source: PRACTICE, provenance: 'memory' },
    },
  },
};
