/**
 * The detectors on homes by another physics (`causes/other-home.ts`): how often the one cause is named, asked, left open
 * aloud or missed, and how often anything is named that is not true. No threshold was set by these homes, but the assumptions that they showed
 * to be wrong were taken out: that every day is lived in, that a summer is like a spring as cold, that a let-go night must
 * end in a hard morning. So they are not wholly unseen any more. Where the bound lies above the limit but what was counted
 * below it, four times as many are counted, as in the matrix.
 */
import { toCivilDate, toDayNumber } from '../../src/model/calendar/civil.ts';
import { findInReadings } from '../../src/model/findings/find-in-readings.ts';
import type { MeterReadings } from '../../src/model/findings/meter-days.ts';
import { notRuledOut } from '../../src/model/findings/not-ruled-out.ts';
import { answerPieces, workBeside } from './beside.ts';
import type { Effects } from './causes/home.ts';
import { causesOf, isLeftOpen, isTrue, type Judged, upperShare } from './causes/judge.ts';
import { makeOtherHome, OTHER_CAUSES, type OtherCause, type OtherHome } from './causes/other-home.ts';
import { MANY } from './causes.ts';
import type { ProofTable } from './table.ts';

const FIRST = toDayNumber('2025-09-01');
const SLOTS = 48;
/** Anything untrue may be named in so many homes; the upper 95 % bound over each row is held to it at full size. */
const MOST_WRONG = 0.03;
const FULL = 300;
const MORE = 4;

export async function proveOtherHomes(count = FULL): Promise<ProofTable> {
  const pieces = OTHER_CAUSES.map((cause): OtherPiece => [cause, count]);
  const rows = (
    count < MANY ? pieces.map((piece) => rowsOf(...piece)) : await workBeside<OtherPiece, Row[]>(THIS, pieces)
  ).flat();
  return {
    title: `Causes named in ${count} homes of each by another physics`,
    columns: ['cause', 'meter', 'homes', 'named', 'asked', 'left open', 'missed', 'anything wrong', '≤ %', 'pass'],
    rows: rows.map(({ cells }) => cells),
    within: rows.every(({ pass }) => pass),
  };
}

const THIS = import.meta.url;
type OtherPiece = Parameters<typeof rowsOf>;
answerPieces(THIS, (piece: OtherPiece) => rowsOf(...piece));

interface Row {
  readonly pass: boolean;
  readonly cells: readonly (string | number)[];
}

const METERS = ['heat-pump', 'whole-house'] as const;

/** Both meters of the same homes; four times as many where that many cannot tell. */
function rowsOf(cause: OtherCause, count: number): Row[] {
  const tallies = METERS.map((meter) => ({ meter, homes: 0, named: 0, asked: 0, open: 0, missed: 0, wrong: 0 }));
  const countHomes = (some: readonly Tally[], [from, to]: readonly [number, number]) => {
    for (let n = from; some.length > 0 && n < to; n++) {
      const home = makeOtherHome(cause, n);
      for (const tally of some) countHome(tally, cause, home);
    }
  };
  countHomes(tallies, [0, count]);
  const near = tallies.filter(({ wrong }) => wrong <= MOST_WRONG * count && upperShare(wrong, count) > MOST_WRONG);
  if (count >= FULL) countHomes(near, [count, MORE * count]);
  return tallies.map(({ meter, homes, named, asked, open, missed, wrong }) => {
    const bound = upperShare(wrong, homes);
    const pass = count >= FULL ? bound <= MOST_WRONG : wrong / count - Math.sqrt(MOST_WRONG / count) <= MOST_WRONG;
    const shares = [named, asked, open, missed].map((n) => `${((100 * n) / homes).toFixed(0)} %`);
    return { pass, cells: [cause, meter, homes, ...shares, wrong, (100 * bound).toFixed(1), pass ? 'yes' : 'NO'] };
  });
}

interface Tally {
  readonly meter: MeterReadings['meter'];
  homes: number;
  named: number;
  asked: number;
  open: number;
  missed: number;
  wrong: number;
}

function countHome(tally: Tally, cause: OtherCause, home: OtherHome): void {
  tally.homes++;
  const made = judged(cause, home);
  const readings = [readingsOf(home, tally.meter)];
  const outdoor = { first: toCivilDate(FIRST), values: Array.from(home.meanC) };
  const findings = findInReadings({ readings, outdoor, prices: { pencePerKWh: 27 } });
  const right = findings.filter((finding) => isTrue(finding, made, false));
  if (right.some((finding) => causesOf(finding).length === 1)) tally.named++;
  else if (right.length > 0) tally.asked++;
  else if (isLeftOpen(notRuledOut(readings, outdoor, findings), made)) tally.open++;
  else tally.missed++;
  if (findings.some((finding) => !isTrue(finding, made, true))) tally.wrong++;
}

/** What is true of the home, in the words of the matrix. */
function judged(cause: OtherCause, { from, days, nobody }: OtherHome): Judged {
  const since = { from };
  const load = { ...since, kW: 3, hour: 0, hours: 1 };
  const effects: Readonly<Record<OtherCause, Effects>> = {
    none: {},
    worse: { worse: { ...since, share: 0.78 } },
    heater: { heater: { ...load, to: days } },
    'cold heater': { coldHeater: { ...since, kW: 3, belowC: 1 } },
    'rooms warmer': { warmer: { ...since, kelvin: 2 } },
    'more water': { moreWater: { ...since, share: 2.2 } },
    'summer heating': { summerHeat: { from: 0, kW: 1 } },
    setback: { setback: true },
    'base load': { baseLoad: { ...since, kW: 0.22 } },
    vehicle: { vehicle: { ...load, share: 0.5 } },
    'meter wrong': { meter: { ...since, share: 2 } },
    'own generation': { solar: { from: 0, peakKW: 3 } },
    empty: { empty: { from, to: from + 35 } },
  };
  return { effects: effects[cause], truths: [], crossing: 'plain', nobody, dayOf: (date) => toDayNumber(date) - FIRST };
}

const readingsOf = (home: OtherHome, meter: MeterReadings['meter']): MeterReadings => ({
  meter,
  intervalMinutes: 30,
  days: Array.from({ length: home.days }, (_, day) => ({
    date: toCivilDate(FIRST + day),
    values: (meter === 'heat-pump' ? home.machine : home.house).slice(day * SLOTS, (day + 1) * SLOTS),
  })),
});
