/** What heat pumps were measured to do in British homes: the spread that an installer's figure is held against. */
import type { Reference } from '../model/shapes/reference.ts';

/**
 * Ground: the mean is published. The 10 and 90 % points are worked out from the published shares: 67 % of the sites
 * reached 3.0 and 33 % reached 3.5, which a normal spread meets with a standard deviation of 0.25 / 0.44 = 0.57,
 * so 3.24 ± 1.2816 × 0.57. Air: the three deciles are published. No report names the boundary beyond doubt;
 * heat and electricity were metered for heating and hot water with the pumps, which is H4.
 */
export const fieldFactor: Reference['fieldFactor'] = {
  ground: {
    middle: 3.24,
    low: 2.51,
    high: 3.97,
    count: 286,
    reachedDesignShare: 0.16,
    source:
      'In-situ heat pump performance: analysis of Ofgem data 2017-2022 (for DESNZ, RECC and GSHPA, 2024), ground source, as quoted in trade news; 10 and 90 % points worked out from its shares at 3.0 and 3.5',
    provenance: 'read',
  },
  air: {
    middle: 2.75,
    low: 2.17,
    high: 3.32,
    count: 742,
    reachedDesignShare: 0.06,
    source:
      'Electrification of Heat demonstration, final performance analysis (for DESNZ, December 2024), open data set, deciles at H4, up to 742 homes, as held in a public research code; share that reached the design figure from the analysis of Ofgem data 2017-2022',
    provenance: 'read',
  },
};
