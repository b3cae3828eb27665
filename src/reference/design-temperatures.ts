/** Outdoor temperatures for sizing. Two sets are in use; at the same city they differ by 1.2 to 2.3 K, so the rule is always named. */
import type { Reference } from '../model/shapes/reference.ts';

type Row = Reference['designTemperatures'][number];

const hours99 = (place: string, outdoorC: number): Row => ({
  place,
  rule: '99 %',
  outdoorC,
  source:
    'values seen in a public list without attribution; MIS 3005 and CIBSE Guide A (2006) Table 2.4 at 99 % from memory',
  provenance: 'memory',
});

const hours996 = (place: string, outdoorC: number): Row => ({
  place,
  rule: '99.6 %',
  outdoorC,
  source: 'CIBSE Guide A Table 2.5, public transcription',
  provenance: 'read',
});

export const designTemperatures: readonly Row[] = [
  hours99('Belfast', -1.2),
  hours99('Birmingham', -3.4),
  hours99('Cardiff', -1.6),
  hours99('Edinburgh', -3.4),
  hours99('Glasgow', -3.9),
  hours99('London', -1.8),
  hours99('Manchester', -2.2),
  hours99('Plymouth', -0.2),
  hours996('Belfast', -3.2),
  hours996('Birmingham', -5.1),
  hours996('Cardiff', -3.1),
  hours996('Edinburgh', -5.4),
  hours996('Glasgow', -5.6),
  hours996('Leeds', -3.3),
  hours996('London', -3.0),
  hours996('Manchester', -4.5),
  hours996('Newcastle', -3.7),
  hours996('Norwich', -4.6),
  hours996('Nottingham', -3.9),
  hours996('Plymouth', -1.5),
  hours996('Southampton area', -4.8),
  hours996('Swindon area', -4.6),
];
