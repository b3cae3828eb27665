/**
 * How often each detector speaks without reason, and how often it sees what is there, over made households.
 * Each household has each effect with a chance of its own, so that a detector is tried among all the others' effects.
 */
import { findInReadings } from '../../src/model/findings/find-in-readings.ts';
import { DETECTOR_RATES, HEATER_FOUND } from '../../src/model/findings/measured.ts';
import type { Finding, FindingCode } from '../../src/model/shapes/finding.ts';
import { drawCase, type MadeCase } from './finding-case.ts';
import type { ProofTable } from './table.ts';

interface Detector {
  readonly name: string;
  readonly code: FindingCode;
  /** Whether this household can show the effect at all on the meters it has. */
  readonly applies: (made: MadeCase) => boolean;
  readonly present: (made: MadeCase) => boolean;
  /** Households left out of the count of false alarms, since the finding would be true of them in its own words. */
  readonly alsoTrue?: (made: MadeCase) => boolean;
  /** Day from which the effect is there, for detectors that name it. */
  readonly since?: (made: MadeCase) => number | undefined;
  /** Where it finds less than its code says. */
  readonly leastHits?: number;
}

const has = (meter: 'machine' | 'house') => (made: MadeCase) => made.meters.includes(meter);

/**
 * Held to the limits that the program itself states. Detectors are set to speak seldom
 * without reason and therefore miss much: a heater left on is not seen where a compressor starts and stops beside it,
 * where readings are hourly and it runs for less than two hours, or where only the house's meter is there; a change is
 * not judged where the days before and after were not equally cold.
 */
export const DETECTORS: readonly Detector[] = [
  {
    name: 'heater, machine’s meter',
    code: 'heater-running',
    applies: (made) => has('machine')(made) && made.heaterOnMachine && made.minutes === 30,
    present: ({ home }) => home.effects.heater !== undefined,
  },
  {
    name: 'heater, machine’s meter by the hour',
    code: 'heater-running',
    applies: (made) => has('machine')(made) && made.heaterOnMachine && made.minutes === 60,
    present: ({ home }) => home.effects.heater !== undefined,
    leastHits: HEATER_FOUND.byTheHour,
  },
  {
    name: 'heater, house’s meter only',
    code: 'heater-running',
    applies: (made) => made.meters.length === 1 && has('house')(made),
    present: ({ home }) => home.effects.heater !== undefined,
    leastHits: HEATER_FOUND.houseOnly,
  },
  {
    name: 'weekly pasteurisation',
    code: 'weekly-pasteurisation',
    applies: (made) => has('machine')(made) && made.heaterOnMachine && made.home.effects.heater === undefined,
    present: ({ home }) => home.weeklyPasteurisation,
  },
  {
    name: 'hot water too often',
    code: 'water-often',
    applies: (made) => has('machine')(made) && made.warmDays >= 12,
    present: ({ home }) => home.effects.waterOften ?? false,
  },
  {
    name: 'night setback',
    code: 'night-setback',
    applies: (made) => made.coldDays >= 20 && (has('machine')(made) || made.warmDays >= 20),
    present: ({ home }) => home.effects.setback ?? false,
  },
  {
    name: 'base load rose',
    code: 'base-load-rose',
    // With the heating on the same meter it is asked together with the rooms, unless warm days before and since show it.
    applies: (made) => has('house')(made) && has('machine')(made),
    present: ({ home }) => home.effects.baseLoad !== undefined,
    since: ({ home }) => home.effects.baseLoad?.from,
  },
  {
    name: 'vehicle or large load',
    code: 'large-load',
    applies: has('house'),
    present: ({ home }) => home.effects.vehicle !== undefined,
  },
  {
    name: 'moved to dear hours',
    code: 'dear-hours',
    applies: (made) => has('machine')(made) && (made.prices === 'two' || made.prices === 'three'),
    present: ({ home }) => home.effects.dearHours !== undefined,
    since: ({ home }) => home.effects.dearHours?.from,
  },
  {
    name: 'moved to dear hours, dated prices',
    code: 'dear-hours',
    applies: (made) => has('machine')(made) && (made.prices === 'dated' || made.prices === 'changed'),
    present: ({ home }) => home.effects.dearHours !== undefined,
    since: ({ home }) => home.effects.dearHours?.from,
  },
  {
    name: 'behaviour changed',
    code: 'behaviour-changed',
    applies: () => true,
    present: ({ home }) => home.effects.behaviour !== undefined,
    alsoTrue: ({ home: { effects } }) =>
      effects.baseLoad !== undefined || effects.heater !== undefined || (effects.vehicle?.from ?? 0) > 0,
    since: ({ home }) => home.effects.behaviour?.from,
  },
  {
    name: 'estimate corrected',
    code: 'estimate-corrected',
    applies: has('house'),
    present: ({ wrongEstimate }) => wrongEstimate,
  },
  {
    name: 'registers swapped',
    code: 'registers-swapped',
    applies: has('house'),
    present: ({ swapped }) => swapped,
  },
];

/** A change is seen if its day is found within three weeks. */
const MOST_DAYS_OFF = 21;

interface Tally {
  without: number;
  falseAlarms: number;
  with: number;
  hits: number;
  daysOff: number[];
}

export interface FindingsProof extends ProofTable {
  readonly tallies: readonly Tally[];
}

/** Makes households until each detector has been tried on at least `count` without its effect. */
export function proveFindings(count: number, seed = 1): FindingsProof {
  const tallies = DETECTORS.map((): Tally => ({ without: 0, falseAlarms: 0, with: 0, hits: 0, daysOff: [] }));
  const most = count * 14;
  let made = 0;
  for (; made < most && tallies.some(({ without }) => without < count); made++) {
    const one = drawCase(seed * 100_000 + made);
    const findings = findInReadings(one.input);
    DETECTORS.forEach((detector, i) => {
      countOne(detector, tallies[i]!, one, findings);
    });
  }
  const rows = DETECTORS.map((detector, i) => rowOf(detector, tallies[i]!));
  return {
    title: `What the readings show: false alarms and hits over ${made} made households`,
    columns: ['detector', 'without', 'false alarms', 'limit', 'with', 'seen', 'limit', 'days off', 'pass'],
    rows: rows.map(({ cells }) => cells),
    within: rows.every(({ pass }) => pass),
    tallies,
  };
}

function countOne(detector: Detector, tally: Tally, made: MadeCase, findings: readonly Finding[]): void {
  if (!detector.applies(made)) return;
  const found = findings.filter(({ code }) => code === detector.code);
  if (!detector.present(made)) {
    if (detector.alsoTrue?.(made)) return;
    tally.without++;
    if (found.length > 0) tally.falseAlarms++;
    return;
  }
  tally.with++;
  const since = detector.since?.(made);
  if (since === undefined) {
    if (found.length > 0) tally.hits++;
    return;
  }
  const off = found.map(({ from }) => Math.abs(made.dayOf(from) - since)).sort((a, b) => a - b)[0];
  if (off !== undefined && off <= MOST_DAYS_OFF) {
    tally.hits++;
    tally.daysOff.push(off);
  }
}

function rowOf(detector: Detector, { without, falseAlarms, with: present, hits, daysOff }: Tally) {
  const { mostFalse, leastFound } = DETECTOR_RATES[detector.code];
  const leastHits = detector.leastHits ?? leastFound;
  const falseShare = falseAlarms / without;
  const hitShare = hits / present;
  // A small run may miss the limit by chance: one standard error each way, nothing at full size.
  const slack = (share: number, n: number) => Math.sqrt((share * (1 - share)) / n);
  const pass = falseShare <= mostFalse + slack(mostFalse, without) && hitShare >= leastHits - slack(leastHits, present);
  const percent = (share: number) => `${(share * 100).toFixed(1)} %`;
  const middle = daysOff.toSorted((a, b) => a - b)[daysOff.length >> 1];
  return {
    pass,
    cells: [
      detector.name,
      without,
      percent(falseShare),
      `≤ ${percent(mostFalse)}`,
      present,
      percent(hitShare),
      `≥ ${percent(leastHits)}`,
      middle === undefined ? '' : middle,
      pass ? 'yes' : 'NO',
    ],
  };
}
