/** Findings as the detectors make them, one of each kind; the numbers are made up. */
import type { Finding, FindingCode } from '../../../src/model/shapes/finding.ts';

const SEEN: Readonly<Record<FindingCode, Finding['seen']>> = {
  'heater-running': { powerKW: 3, ratedKW: 3, days: 42, hours: 84, hour: 2 },
  'weekly-pasteurisation': { powerKW: 3, ratedKW: 3, days: 12, hours: 18, hour: 13.5 },
  'water-often': { cyclesPerDay: 5.2, kWhPerDay: 6.1, days: 40 },
  'night-setback': { nightShare: 0.2, morningShare: 1.9, days: 60, recoveryKWhPerDay: 8 },
  'base-load-rose': { riseW: 150, beforeW: 120, afterW: 270 },
  'large-load': { powerKW: 7.2, days: 30, hoursEach: 3.4, hour: 0.5 },
  'dear-hours': { priceShareBefore: 0.9, priceShareAfter: 1.1, share: 0.22 },
  'behaviour-changed': { share: 0.3, kind: 'with-the-cold', kWhPerDay: 4.2 },
  'estimate-corrected': { estimatedKWh: 900, likelyKWh: 600, backKWh: -290, until: '2026-01-01' },
  'backup-in-cold': { days: 9, belowC: 2.4, kWhPerDay: 31, coldCorrelation: -0.8 },
  'meter-scale': { times: 2 },
  'own-generation': { days: 120 },
  'home-empty': { days: 30 },
  'registers-swapped': { billedDearKWh: 300, billedCheapKWh: 900, dearKWh: 900, cheapKWh: 300 },
};

export const made = (code: FindingCode): Finding => ({
  code,
  meter: 'heat-pump',
  from: '2026-01-08',
  to: '2026-02-19',
  sure: 0.9,
  grade: 'estimated',
  seen: SEEN[code],
  kWh: 252,
  pence: 7000,
  kWhYear: 2190,
  penceYear: 61_000,
  ask: ['heater-switch', 'baths'],
  check: ['heater-hours'],
  cautions: ['electrical', 'scalding'],
});
