/** How likely each cause is by what the check knows already, before anybody is asked. */

import type { BillCause, BillCheck, CheckFinding } from '../shapes/bill-check.ts';
import type { LikelyCause, OpenCause } from '../shapes/finding.ts';
import type { SearchCause } from '../shapes/guided-search.ts';
import { sumOf } from '../units/sums.ts';

export type Direction = 'more' | 'less';
export type Weights = ReadonlyMap<SearchCause, number>;

/**
 * Weights of the causes where nothing is known of the home, for bills above and below. A curve too high was met in 41 % of
 * 410 visited homes, heating in mild weather in 26 %, a technical fault in 1.5 % ("HEAPO", Switzerland); how often each makes a bill is not known, so
 * all these are judgements, common practice, no source.
 */
const USUAL: Readonly<Record<Direction, Readonly<Partial<Record<SearchCause, number>>>>> = {
  more: {
    'reading-wrong': 4,
    'meter-wrong': 0.5,
    weather: 4,
    'other-use': 6,
    'own-generation': 1,
    heater: 4,
    'flow-too-hot': 5,
    'machine-works-less': 2,
    'rooms-warmer': 4,
    'more-water': 2,
    'summer-heating': 3,
    'newly-occupied': 2,
  },
  less: {
    'reading-wrong': 4,
    'meter-wrong': 0.5,
    weather: 4,
    'own-generation': 2,
    'less-other-use': 6,
    'machine-works-better': 2,
    'less-heat': 4,
    'less-water': 2,
    'home-empty': 3,
  },
};
/** Share of all that is kept for what nobody has thought of. */
const ELSE_SHARE = 0.1;
/** A cause whose part of the sum is metered as nothing stays possible: meters are wrong too. */
const LEAST_SHARE = 0.03;
/** A reading that readings or the bill itself contradict. */
const CONTRADICTED = 30;
/** No finding counts for more than 19 to 1. */
const MOST_ODDS = 19;
/**
 * How much more a cause can make of all that is used, as a share, before it is hardly likely: a kelvin in the rooms is about 8 % of
 * their heat, 1 / (room − mean outdoor); a kelvin in the flow is 1.4 to 2.2 % of power (ideal cycle), both computed; five
 * kelvin and twenty are much. Beyond it the weight falls to a quarter; a meter is thought of from half as much again on.
 * The odds are judgements, common practice, no source.
 */
const MOST_OF_USE: Readonly<Partial<Record<SearchCause, number>>> = {
  'rooms-warmer': 0.4,
  'flow-too-hot': 0.4,
  'machine-works-less': 0.7,
  heater: 0.8,
};
const TOO_MUCH = 0.25;
const METER = { fromShare: 0.5, odds: 4, double: [0.82, 1.2], doubleOdds: 12 } as const;
/** From twice as much on somebody may have moved in. */
const OCCUPIED = { fromShare: 0.9, odds: 3 } as const;
/** What heats the rooms in the cold weighs in a bill of summer months only this much. Common practice, no source. */
const IN_SUMMER = 0.2;
const OF_HEATING: readonly SearchCause[] = ['flow-too-hot', 'rooms-warmer', 'less-heat'];
/** Heating by mistake is thought of where so much of the bill lies in May to September. */
const SUMMER_SHARE = 0.3;

/** The parts of a check's sum in which a cause would stand; one that is in none may be in any. */
const PARTS: Readonly<Partial<Record<SearchCause, readonly BillCause[]>>> = {
  'reading-wrong': ['metering'],
  weather: ['weather'],
  'other-use': ['other-electricity'],
  'less-other-use': ['other-electricity'],
  heater: ['backup'],
  'flow-too-hot': ['efficiency'],
  'machine-works-less': ['efficiency'],
  'machine-works-better': ['efficiency'],
  'rooms-warmer': ['heat-used'],
  'less-heat': ['heat-used'],
  'more-water': ['hot-water'],
  'less-water': ['hot-water'],
  // By a line that knows no heated summer, it is there in any weather.
  'summer-heating': ['heat-used', 'steady'],
  'home-empty': ['heat-used', 'hot-water'],
};

/** What a finding speaks for, where it names no causes itself. */
const FOUND: Readonly<Partial<Record<string, readonly SearchCause[]>>> = {
  'heater-running': ['heater'],
  'backup-in-cold': ['heater'],
  'water-often': ['more-water'],
  'base-load-rose': ['other-use'],
  'large-load': ['other-use'],
  'estimate-corrected': ['reading-wrong'],
  'meter-scale': ['meter-wrong'],
  'own-generation': ['own-generation'],
  'home-empty': ['home-empty'],
};
/** The causes that findings name, by what is asked about here. */
const NAMED: Readonly<Record<LikelyCause, SearchCause>> = {
  'machine-works-less': 'machine-works-less',
  'more-heat': 'rooms-warmer',
  'rooms-warmer': 'rooms-warmer',
  'backup-heater': 'heater',
  'plug-in-heaters': 'other-use',
  'more-water': 'more-water',
  'water-often': 'more-water',
  'summer-heating': 'summer-heating',
  heater: 'heater',
  'other-use': 'other-use',
  'base-load': 'other-use',
  'large-load': 'other-use',
  'machine-works-better': 'machine-works-better',
  'less-heat': 'less-heat',
  'less-water': 'less-water',
  'heater-off': 'less-other-use',
  'less-other-use': 'less-other-use',
  'own-generation': 'own-generation',
  'home-empty': 'home-empty',
  'newly-occupied': 'newly-occupied',
  'meter-wrong': 'meter-wrong',
};
const CHANGED: Readonly<Record<Direction, Readonly<Record<'cold' | 'steady', readonly SearchCause[]>>>> = {
  more: {
    cold: ['rooms-warmer', 'flow-too-hot', 'machine-works-less', 'heater'],
    steady: ['more-water', 'other-use', 'heater', 'summer-heating'],
  },
  less: {
    cold: ['less-heat', 'machine-works-better', 'home-empty'],
    steady: ['less-water', 'less-other-use', 'home-empty', 'own-generation'],
  },
};

/** What bears on nothing that is asked about: the calendar, prices, and weather and panels where they are known. */
const SETTLED: readonly BillCause[] = [
  'days',
  'price',
  'tariff',
  'when',
  'standing-charge',
  'weather',
  'own-generation',
];

/** Weights of the causes considered; they sum to 1, "something-else" among them. */
export function weighCauses(check: BillCheck, direction: Direction): Weights {
  const sign = direction === 'more' ? 1 : -1;
  const parts = check.parts
    .filter(({ cause }) => !SETTLED.includes(cause))
    .map(({ cause, joined, pence }) => ({ causes: [cause, ...(joined ?? [])], pence: Math.max(0, sign * pence) }));
  const wholePence = sumOf(parts.map(({ pence }) => pence));
  // One without an amount of its own, such as panels, may be behind all of it.
  const seenShare = ({ pence }: CheckFinding): number =>
    wholePence > 0 && pence !== 0 ? Math.min(1, Math.abs(pence) / wholePence) : 1;
  const against = againstHeat(check, direction);
  const isMetered = isHeatKnown(check);
  const findings = (check.findings ?? []).filter(
    ({ pence, meter }) => sign * pence >= 0 && !(meter === 'whole-house' && isHeatingAlone(check)),
  );
  const shareOf = (cause: SearchCause): number => {
    const inside = PARTS[cause];
    if (inside === undefined || wholePence === 0) return 1;
    const held = parts.filter(({ causes }) => causes.some((one) => inside.includes(one)));
    // What a finding names is in whatever part the finding is in, unless a heat meter has told the parts apart.
    const seen = (isMetered && BY_HEAT_METER.includes(cause) ? [] : findings)
      .filter(({ may }) => may && namedBy(may, against).includes(cause))
      .map(seenShare);
    return Math.max(LEAST_SHARE, sumOf(held.map(({ pence }) => pence)) / wholePence, ...seen);
  };
  const weights = new Map<SearchCause, number>();
  for (const [cause, usual] of Object.entries(USUAL[direction]) as [SearchCause, number][])
    if (isConsidered(cause, check))
      weights.set(cause, usual * shareOf(cause) * oddsOfDoubts(cause, check, direction) * oddsOfSeason(cause, check));
  for (const finding of findings) {
    const share = seenShare(finding);
    const odds = Math.min(MOST_ODDS, finding.sure / Math.max(1 - finding.sure, 1 / (MOST_ODDS + 1))) ** share;
    for (const cause of causesOf(finding, direction, against)) {
      const before = weights.get(cause);
      if (before !== undefined) weights.set(cause, before * Math.max(1, odds) * oddsOfSize(cause, finding));
    }
  }
  weights.set('something-else', (sumOf([...weights.values()]) * ELSE_SHARE) / (1 - ELSE_SHARE));
  const whole = sumOf([...weights.values()]);
  return new Map([...weights].map(([cause, weight]) => [cause, weight / whole]));
}

/** A finding of so much of the difference is its main cause if it is true; of less, so much less likely. Common practice, no source. */
const MOST_OF_IT = 2 / 3;

/**
 * The weights with what findings show of the amount: a cause that makes up most of the difference is as likely its main one as
 * its finding is sure, in whole twentieths, so that nobody reads two numbers for one thing. The smaller findings come first.
 */
export function asSureAsSeen(weights: Weights, check: BillCheck, direction: Direction): Weights {
  const sign = direction === 'more' ? 1 : -1;
  const unsettled = check.parts.filter(({ cause }) => !SETTLED.includes(cause));
  const wholePence = sumOf(unsettled.map(({ pence }) => Math.max(0, sign * pence)));
  if (wholePence === 0) return weights;
  const against = againstHeat(check, direction);
  return (check.findings ?? [])
    .filter(({ code, meter, pence }) => sign * pence > 0 && isInDifference(code, meter, check))
    .map((finding) => {
      const share = Math.min(1, Math.abs(finding.pence) / wholePence / MOST_OF_IT);
      return {
        causes: causesOf(finding, direction, against),
        chance: (share * Math.min(19, Math.round(20 * finding.sure))) / 20,
      };
    })
    .toSorted((a, b) => a.chance - b.chance)
    .reduce((now, { causes, chance }) => raised(now, causes, chance), weights);
}

/** The estimate has the weekly heating of the tank, and what the house uses is not on the bill of the heat pump's own meter. */
const isInDifference = (code: CheckFinding['code'], meter: CheckFinding['meter'], check: BillCheck): boolean =>
  code !== 'weekly-pasteurisation' && !(meter === 'whole-house' && isHeatingAlone(check));

/** Whether what is compared is what the heat pump's own meter counts, and nothing else of the home. */
export const isHeatingAlone = ({ input }: BillCheck): boolean => input.meter === 'heat-pump' || isMeteredApart(input);
const isMeteredApart = ({ heatPumpKWh, boughtKWh }: BillCheck['input']): boolean =>
  heatPumpKWh !== undefined && heatPumpKWh === boughtKWh;

/** These causes together at least so likely, the others less, "something else" never below a twentieth. */
function raised(weights: Weights, causes: readonly SearchCause[], chance: number): Weights {
  const isNamed = (cause: SearchCause) => causes.includes(cause);
  const named = sumOf([...weights].flatMap(([cause, weight]) => (isNamed(cause) ? [weight] : [])));
  if (named === 0 || named >= chance) return weights;
  const other = weights.get('something-else') ?? 0;
  const left = Math.max(1 / 20, (other * (1 - chance)) / (1 - named));
  const rest = (1 - chance - left) / (1 - named - other);
  return new Map(
    [...weights].map(([cause, weight]) => [
      cause,
      cause === 'something-else' ? left : weight * (isNamed(cause) ? chance / named : Math.max(0, rest)),
    ]),
  );
}

function isConsidered(cause: SearchCause, check: BillCheck): boolean {
  const { input, parts, findings = [] } = check;
  const isShared = input.meter === 'whole-house' && input.heatPumpKWh === undefined;
  switch (cause) {
    case 'other-use':
    case 'less-other-use':
      return isShared || (!isMeteredApart(input) && parts.some((part) => part.cause === 'other-electricity'));
    case 'own-generation':
      // What was made and used is taken off already where it was read.
      return !isHeatingAlone(check) && input.ownUseKWh === undefined;
    case 'weather':
      return !parts.some((part) => part.cause === 'weather');
    case 'summer-heating':
      return summerShare(input.from, input.to) >= SUMMER_SHARE;
    // Nobody thinks of it unless much more is counted since a day.
    case 'newly-occupied':
      return findings.some(({ may }) => may?.includes('newly-occupied'));
    default:
      return true;
  }
}

/** Whether the cause can make a change of such a size in the use of the same days. */
function oddsOfSize(cause: SearchCause, { code, seen }: CheckFinding): number {
  if (code !== 'behaviour-changed' || typeof seen.share !== 'number') return 1;
  const most = MOST_OF_USE[cause];
  if (most !== undefined && seen.share > most) return TOO_MUCH;
  if (cause === 'newly-occupied') return seen.share >= OCCUPIED.fromShare ? OCCUPIED.odds : 1;
  // A meter that counts half is as far off as one that counts double.
  const times = seen.share < 0 ? 1 / (1 + seen.share) - 1 : seen.share;
  if (cause !== 'meter-wrong' || times < METER.fromShare) return 1;
  return times >= METER.double[0] && times <= METER.double[1] ? METER.doubleOdds : METER.odds;
}

const oddsOfSeason = (cause: SearchCause, { input }: BillCheck): number =>
  OF_HEATING.includes(cause) ? Math.max(IN_SUMMER, Math.min(1, 2 - 2 * summerShare(input.from, input.to))) : 1;

/** Share of a bill's days from May to September, by the middle of each of twelve equal pieces. */
function summerShare(from: string, to: string): number {
  const [first, end] = [Date.parse(from), Date.parse(to)];
  const months = Array.from({ length: 12 }, (_, i) => new Date(first + ((i + 0.5) / 12) * (end - first)).getUTCMonth());
  return months.filter((month) => month >= 4 && month <= 8).length / 12;
}

function oddsOfDoubts(cause: SearchCause, { input, doubts = [] }: BillCheck, direction: Direction): number {
  const has = (code: string) => doubts.some((doubt) => doubt.code === code);
  if (cause === 'reading-wrong') {
    if (has(direction === 'more' ? 'bill-above-readings' : 'bill-below-readings')) return CONTRADICTED;
    return input.readings === 'estimated' && input.readKWh === undefined ? 2 : 1;
  }
  if (cause === 'meter-wrong' && has('machine-above-home')) return CONTRADICTED;
  if (cause === 'other-use' && has('units-hold-other')) return CONTRADICTED;
  return 1;
}

/** Of the difference in heat and units a part smaller than this is within what a heat meter and the estimate know. Common practice, no source. */
const WITHIN_METERS = 0.1;
const BY_HEAT_METER: readonly SearchCause[] = [
  'heater',
  'flow-too-hot',
  'machine-works-less',
  'machine-works-better',
  'rooms-warmer',
  'less-heat',
  'more-water',
  'less-water',
];

/**
 * Causes that the heat metered over the bill's days speaks against: those of the machine where heat over units is as estimated,
 * those of the rooms where the heat is. Without a heat meter nothing is told apart, and none is.
 */
function againstHeat(check: BillCheck, direction: Direction): readonly SearchCause[] {
  if (!isHeatKnown(check)) return [];
  const { parts } = check;
  const sign = direction === 'more' ? 1 : -1;
  const unsettled = parts.filter(({ cause }) => !SETTLED.includes(cause));
  const penceOf = (inside: readonly BillCause[]) =>
    sumOf(
      unsettled
        .filter(({ cause, joined = [] }) => [cause, ...joined].some((one) => inside.includes(one)))
        .map(({ pence }) => Math.max(0, sign * pence)),
    );
  const whole = sumOf(unsettled.map(({ pence }) => Math.max(0, sign * pence)));
  return BY_HEAT_METER.filter((cause) => penceOf(PARTS[cause] ?? []) < WITHIN_METERS * whole);
}

/** Whether a heat meter has told what was used from how well it was made. */
const isHeatKnown = ({ input, parts }: BillCheck): boolean =>
  input.heatKWh !== undefined && parts.some(({ cause }) => cause === 'heat-used');

/** The causes that a finding names, less those that a heat meter speaks against; all of them where none is left. */
function namedBy(may: readonly LikelyCause[], against: readonly SearchCause[]): readonly SearchCause[] {
  const named = [...new Set(may.map((cause) => NAMED[cause]))];
  const left = named.filter((cause) => !against.includes(cause));
  return left.length > 0 ? left : named;
}

/** Less well and a curve too high are one thing to a meter. */
function causesOf(
  finding: CheckFinding,
  direction: Direction,
  against: readonly SearchCause[],
): readonly SearchCause[] {
  if (finding.may) {
    const named = namedBy(finding.may, against);
    return [...named, ...(named.includes('machine-works-less') ? (['flow-too-hot'] as const) : [])];
  }
  if (finding.code === 'behaviour-changed') {
    const causes = CHANGED[direction][finding.seen.kind === 'with-the-cold' ? 'cold' : 'steady'];
    const left = causes.filter((cause) => !against.includes(cause));
    return left.length > 0 ? left : causes;
  }
  return FOUND[finding.code] ?? [];
}

/** Whether a cause that readings leave open is spoken against by the heat metered over the bill's days. */
export function isAgainstHeat(cause: OpenCause, check: BillCheck, direction: Direction): boolean {
  const named = (NAMED as Readonly<Partial<Record<OpenCause, SearchCause>>>)[cause];
  return named !== undefined && againstHeat(check, direction).includes(named);
}
