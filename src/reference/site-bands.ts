/** Usual bands of what is read at a ground-source plant in steady running. A reading outside is a question, not a fault. */
import type { Band, SiteBands } from '../model/shapes/site-readings.ts';

const customary = (low: number | null, high: number | null): Band => ({
  low,
  high,
  source: 'common practice, no source',
  provenance: 'common practice, no source',
});

export const siteBands: SiteBands = {
  fixed: {
    'brine-in': {
      low: 0,
      high: 15,
      source: 'not below 0 °C in 20 years: UK installer standard MIS 3005-D, from memory; upper end common practice',
      provenance: 'memory',
    },
    'brine-drop': {
      low: 2,
      high: 5,
      source: '3 to 5 K at design, common practice; EN 14511 rates at 0 °C in and −3 °C out, from memory',
      provenance: 'memory',
    },
    flow: customary(25, 55),
    'water-spread': {
      low: 3,
      high: 8,
      source:
        '5 K rated at 35 °C, 8 K at 55 °C, up to 10 K with radiators: EN 14511, from memory; ends common practice',
      provenance: 'memory',
    },
    /** Heat on the water side over brine heat plus electricity, less one; a flow meter is good for about 5 %. */
    'heat-balance': customary(-10, 10),
    'evaporator-approach': {
      low: 1,
      high: 8,
      source: 'about 3 to 6 K, from memory; 10 °F in ground-source guides that cite IGSHPA and ASHRAE',
      provenance: 'memory',
    },
    'condenser-approach': customary(0, 5),
    superheat: customary(3, 10),
    subcooling: {
      low: 2,
      high: 8,
      source:
        'about 3 to 8 K, from memory; 6 to 10 °F printed for air-cooled condensers; with a receiver it shows little',
      provenance: 'memory',
    },
    /** Share of the usual current; it moves with both temperatures, and a clamp is good for about 3 %. */
    current: customary(85, 115),
    'valve-opening': customary(15, 85),
    /** Above: air or a foreign gas beside the refrigerant. Below: no liquid left, or pressures not even yet. */
    'at-rest': customary(-2, 2),
    /** By mass; below about a tenth it protects hardly at all, above 35 % it costs heat and pumping. */
    'glycol-share': customary(15, 35),
    /** Freezing point below the coldest brine. */
    'frost-margin': {
      low: 5.6,
      high: null,
      source: '10 °F below the coldest brine that leaves: a ground-source guide that cites IGSHPA and ASHRAE, undated',
      provenance: 'read',
    },
  },
  carnotFraction: {
    low: 0.42,
    middle: 0.46,
    high: 0.54,
    source:
      'declared certificates of 123 brine units at about B0/W34: 10 % point 0.449, median 0.508, 90 % point 0.537; lower end and middle set below them by judgement, since homes fall short of certificates',
    provenance: 'computed',
  },
  waterSpread: { hotHigh: 10, coolC: 40, hotC: 50 },
  /** The upper end is a perfect compressor; the pipe with its clip lies below that by what is lost on the way. */
  compression: { ...customary(0.55, 1), low: 0.55, lostK: 10 },
  /** Alarms lie at 110 to 130 °C by compressor; R32 runs 20 to 50 K hotter than the others. From memory. */
  hotGas: { R407C: 115, R410A: 115, R134a: 115, R290: 115, R32: 130, R454B: 120 },
};
