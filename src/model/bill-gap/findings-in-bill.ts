/** Findings as parts of one bill: their units in its days, at the price of the split, each inside one part of it. */
import { daysBetween, toDayNumber } from '../calendar/civil.ts';
import { NEARLY_A_YEAR_DAYS } from '../findings/behaviour.ts';
import { heatingDegrees, type MeterDays } from '../findings/meter-days.ts';
import type { BillCause, BillCheck, BillCheckPart } from '../shapes/bill-check.ts';
import type { Finding, FindingCode } from '../shapes/finding.ts';

/** A finding whose `kWh` and `pence` are those of the bill's days. */
export interface FindingInBill extends Finding {
  /** The part of the bridge that holds them; absent where they are no part of the difference. */
  readonly part?: BillCause;
  /** Its units at the one price that the split gives all units [pence]; `pence` is at the prices of its own hours. */
  readonly splitPence?: number;
}

type Split = Pick<
  BillCheck,
  'input' | 'parts' | 'estimatedPence' | 'seasonPence' | 'estimatedKWh' | 'actualPence' | 'standing'
>;

/**
 * Evidence that may be wrong, then what lies with the machine and its settings, then what may be either, then what is asked
 * of the household.
 */
const ORDER: Readonly<Record<FindingCode, number>> = {
  'meter-scale': 0,
  'own-generation': 0,
  'estimate-corrected': 0,
  'registers-swapped': 0,
  'heater-running': 1,
  'backup-in-cold': 1,
  'weekly-pasteurisation': 1,
  'water-often': 1,
  'night-setback': 1,
  'dear-hours': 1,
  'behaviour-changed': 2,
  'base-load-rose': 3,
  'large-load': 3,
  'home-empty': 3,
};

/**
 * Parts that may hold a finding. What the estimate holds too (the weekly hot tank, all the hot water of a day, a share of
 * practice for the nights) is no part of the difference.
 */
const HELD_BY: Readonly<Partial<Record<FindingCode, readonly BillCause[]>>> = {
  'estimate-corrected': ['metering', 'rest'],
  'registers-swapped': ['when', 'price'],
  'heater-running': ['backup', 'steady', 'rest'],
  'backup-in-cold': ['backup', 'rooms', 'efficiency', 'rest'],
  'meter-scale': ['metering', 'rest'],
  'dear-hours': ['when', 'price'],
  'base-load-rose': ['other-electricity', 'steady', 'hot-water', 'rest'],
  'large-load': ['other-electricity', 'steady', 'rest'],
};
const CHANGE = {
  cold: ['rooms', 'heat-used', 'efficiency', 'rest'],
  steady: ['steady', 'hot-water', 'other-electricity', 'rest'],
} as const satisfies Record<string, readonly BillCause[]>;

/**
 * Units [kWh] and cost [pence] of each finding in the days of the bill that were read. `splitPence` is units × the price that
 * the split gives all units, so that findings and what is left of their part sum to the part; `pence` has them as dear as
 * their own hours are (`finding.pence` at the price paid), and the difference lies in the part of prices and hours. A year is that of the season it was
 * seen in: its own days once, unless it was seen for nearly a year. In the order in which they are said.
 */
export function findingsInBill(
  findings: readonly Finding[],
  split: Split,
  meters: readonly MeterDays[],
): FindingInBill[] {
  return findings
    .map((finding) => inBill(finding, split, meters))
    .toSorted((a, b) => ORDER[a.code] - ORDER[b.code] || Math.abs(b.pence) - Math.abs(a.pence));
}

function inBill(finding: Finding, split: Split, meters: readonly MeterDays[]): FindingInBill {
  const { input, parts } = split;
  const share = shareInBill(finding, input, meters);
  const part = partOf(finding, split);
  const alone = part?.cause === 'backup' && !part.joined && input.immersionKWh ? input.immersionKWh : undefined;
  const isMetering = part?.cause === 'metering' && !part.joined;
  const splitPrice =
    finding.kWh === 0 ? 0 : alone ? part!.pence / alone : isMetering ? paidPence(split) : unitPence(split);
  const price = finding.kWh === 0 ? 0 : (splitPrice * finding.pence) / finding.kWh / paidPence(split);
  const kWh = finding.kWh * share;
  const pence = finding.kWh === 0 ? finding.pence * share : kWh * price;
  const evensOut = finding.kWhYear === 0 && finding.penceYear === 0;
  const allYear = evensOut || daysBetween(finding.from, finding.to) >= NEARLY_A_YEAR_DAYS;
  const year = allYear
    ? { kWhYear: finding.kWhYear, penceYear: finding.kWh === 0 ? finding.penceYear : finding.kWhYear * price }
    : { kWhYear: finding.kWh, penceYear: finding.kWh === 0 ? finding.pence : finding.kWh * price };
  const inSplit = part && parts.includes(part) ? { part: part.cause } : {};
  return {
    ...finding,
    kWh,
    pence,
    ...year,
    ...inSplit,
    ...(finding.kWh === 0 ? {} : { splitPence: kWh * splitPrice }),
  };
}

/** Mean price paid for the bill's units, p/kWh. */
export function paidPence({ input, actualPence, standing }: Pick<Split, 'input' | 'actualPence' | 'standing'>): number {
  const pence = actualPence - (standing?.billedPence ?? 0);
  return input.boughtKWh > 0 && pence > 0 ? pence / input.boughtKWh : input.pencePerKWh;
}

/** Mean of the price estimated and the price paid [p/kWh]: what a split over every order gives a unit. */
function unitPence(split: Split): number {
  const { estimatedPence, seasonPence, estimatedKWh = 0, standing } = split;
  const paid = paidPence(split);
  const estimated = (seasonPence ?? estimatedPence) - (standing?.estimatedPence ?? 0);
  return estimatedKWh > 0 ? (estimated / estimatedKWh + paid) / 2 : paid;
}

/** On days as warm nothing but hot water is asked for, °C. */
const WARM_C = 16.5;

/**
 * How much of a finding lies on a day: what follows the cold by the cold of each day, what is on some days only on those. Of
 * days whose weather is not known such a finding has none.
 */
function weightOn({ code, seen }: Finding, outdoorC: number): number {
  if (code === 'backup-in-cold' && typeof seen.belowC === 'number') return outdoorC <= seen.belowC ? 1 : 0;
  if (code === 'water-often') return outdoorC >= WARM_C ? 1 : 0;
  return seen.kind === 'with-the-cold' ? heatingDegrees(outdoorC) || 0 : 1;
}

/** Share of a finding's days with readings that are days of the bill. */
function shareInBill(finding: Finding, { from, to }: Split['input'], meters: readonly MeterDays[]): number {
  const meter = meters.find((one) => one.meter === finding.meter);
  if (!meter) return 1;
  const [first, end] = [toDayNumber(finding.from), toDayNumber(finding.to)];
  const days = [...meter.dayNumber.keys()].filter((i) => meter.dayNumber[i]! >= first && meter.dayNumber[i]! < end);
  const isInside = (i: number) => meter.dayNumber[i]! >= toDayNumber(from) && meter.dayNumber[i]! < toDayNumber(to);
  const shareBy = (weight: (i: number) => number) => {
    const sum = (places: readonly number[]) => places.reduce((total, i) => total + weight(i), 0);
    const all = sum(days);
    return all > 0 ? sum(days.filter(isInside)) / all : null;
  };
  return shareBy((i) => weightOn(finding, meter.outdoorC[i]!)) ?? shareBy(() => 1) ?? 0;
}

/** The part that a finding lies in: of its own name, else the one whose causes cannot be told apart from it. */
function partOf(finding: Finding, { input, parts }: Split): BillCheckPart | undefined {
  const ofHouse = finding.meter === 'whole-house';
  // What is compared is the heat pump's own: then the rest of the house is in no part.
  const isHeatingAlone = input.heatPumpKWh !== undefined && input.heatPumpKWh === input.boughtKWh;
  if (ofHouse && (input.meter === 'heat-pump' || isHeatingAlone)) return undefined;
  const own = heldBy(finding);
  const isOfRest = ofHouse && input.heatPumpKWh !== undefined && own && own[0] !== 'metering' && own[0] !== 'when';
  const held = isOfRest ? OF_THE_REST : own;
  if (!held) return undefined;
  const isHeld = ({ cause, joined = [] }: BillCheckPart) => [cause, ...joined].some((one) => held.includes(one));
  const same = ({ pence }: BillCheckPart) => Math.max(0, pence * Math.sign(finding.pence));
  return (
    parts.find(({ cause, joined }) => cause === held[0] && !joined) ??
    (finding.code === 'backup-in-cold' ? parts.find(({ cause }) => cause === 'rooms') : undefined) ??
    parts.filter(isHeld).toSorted((a, b) => same(b) - same(a))[0]
  );
}

/** The machine has a meter of its own, so that this is the rest of the house. */
const OF_THE_REST: readonly BillCause[] = ['other-electricity', 'rest'];

const heldBy = (finding: Finding): readonly BillCause[] | undefined => {
  if (finding.code === 'home-empty') return finding.kWh === 0 ? undefined : [...CHANGE.cold, ...CHANGE.steady];
  return finding.code === 'behaviour-changed' ? changeHeldBy(finding) : HELD_BY[finding.code];
};

const changeHeldBy = ({ seen }: Finding): readonly BillCause[] => {
  if (seen.kind === 'steady') return CHANGE.steady;
  return seen.kind === 'unclear' ? [...CHANGE.cold, ...CHANGE.steady] : CHANGE.cold;
};
