/** Monthly rows of the hot-water method, SAP 10.2 Appendix J. */
import type { Reference } from '../model/shapes/reference.ts';

export const hotWater: Reference['hotWater'] = {
  /** Table J1, cold water from the mains, °C; the January value is confirmed by two published worksheets. Read. */
  coldMainsC: [8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5],
  /** Table J2, uses other than showers and baths; three public transcriptions agree. Read. */
  otherUseFactor: [1.1, 1.06, 1.02, 0.98, 0.94, 0.9, 0.9, 0.94, 0.98, 1.02, 1.06, 1.1],
  /** Table J5, showers and baths; three public transcriptions agree. Read. */
  behaviourFactor: [1.035, 1.021, 1.007, 0.993, 0.979, 0.965, 0.965, 0.979, 0.993, 1.007, 1.021, 1.035],
  source: 'SAP 10.2 Appendix J, Tables J1 (mains), J2 and J5',
};
