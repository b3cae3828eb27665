/** What heat pumps were measured to do in British homes: the spread that an installer's figure is held against. */
import type { Reference } from '../model/shapes/reference.ts';

/**
 * Standard deviation of ln(factor) from home to home, from the shares at 3.0 and 3.5 of the Ofgem data alone:
 * ln(3.5 / 3.0) / (0.440 + 0.440) for ground, where 67 and 33 % reached them, and / (1.405 − 0.524) for air with 30 and
 * 8 %: 0.175 both times. Electrification of Heat, another source, has 0.165 between its outer deciles.
 */
const FIELD_DEVIATION = 0.175;

/**
 * Standard deviation of ln(design figure) among installers: declared seasonal COPs of one flow temperature spread by 0.066
 * (10 and 90 % points of 123 brine units, 4.55 and 5.32 at 35 °C, 3.48 and 4.17 at 55 °C); design flows by 7.35 K, from the
 * mean flows of 32.0 and 44.1 °C in 1 home in 10 on either side, at 1.4 % a kelvin: 0.105; together √(0.066² + 0.105²).
 */
export const designDeviation: Reference['designDeviation'] = {
  value: 0.124,
  unit: 'standard deviation of ln(design factor)',
  source:
    'declared EN 14825 certificates of 123 brine units (2024) and mean flow temperatures of Electrification of Heat (for DESNZ, December 2024)',
  provenance: 'computed',
};

/** A British publication, whose title stays English in every language. */
const IN_SITU_TITLE = 'In-situ heat pump performance: analysis of Ofgem data 2017-2022';

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
    deviation: FIELD_DEVIATION,
    source: `${IN_SITU_TITLE} (for DESNZ, RECC and GSHPA, 2024), ground source, as quoted in trade news; 10 and 90 % points worked out from its shares at 3.0 and 3.5`,
    provenance: 'read',
  },
  air: {
    middle: 2.75,
    low: 2.17,
    high: 3.32,
    count: 742,
    reachedDesignShare: 0.06,
    deviation: FIELD_DEVIATION,
    source:
      'Electrification of Heat demonstration, final performance analysis (for DESNZ, December 2024), open data set, deciles at H4, up to 742 homes, as held in a public research code; share that reached the design figure from the analysis of Ofgem data 2017-2022',
    provenance: 'read',
  },
};
