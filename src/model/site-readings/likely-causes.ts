/**
 * What the readings can mean, in the order in which a trainer would say it: what endangers plant or people, then readings
 * that contradict themselves, then causes, likeliest first. Never a diagnosis: causes that these readings cannot tell
 * apart stand as one question with the reading that would.
 */
import type { Misreading, SiteQuantity, SiteValue } from '../shapes/site-readings.ts';
import type { Meant } from './misreadings.ts';
import { CIRCUIT_CAUSES, type CircuitCause, DISPUTED, PATTERNS, type Sign, type Trade } from './signs.ts';

export const CAUSES = [
  'glycol-weak',
  'liquid-to-compressor',
  'gas-too-hot',
  'readings-apart',
  'misread',
  'ground-cold',
  'glycol-strong',
  'flow-set-high',
  ...CIRCUIT_CAUSES,
] as const;
export type CauseId = (typeof CAUSES)[number];
export const LEVELS = ['danger', 'balance', 'cause'] as const;
export type Level = (typeof LEVELS)[number];

export interface NamedCause {
  readonly cause: CauseId;
  /** For `misread`: with what the pressures would fit. */
  readonly meant?: Misreading;
}
/** The reading that would tell causes apart, and which of them each outcome speaks for. */
export interface Settling {
  readonly by: SiteQuantity;
  readonly above: readonly NamedCause[];
  readonly inside: readonly NamedCause[];
  readonly below: readonly NamedCause[];
}
export interface LikelyCause extends NamedCause {
  readonly level: Level;
  readonly trade: Trade;
  /** Causes that these readings cannot tell from it; together they are one question. */
  readonly orElse: readonly NamedCause[];
  /** Null where nothing is left to be read that would tell. */
  readonly settling: Settling | null;
  /** Signs there are. */
  readonly signs: readonly SiteQuantity[];
  /** Readings that speak against it. */
  readonly against: readonly SiteQuantity[];
  /** Readings that would strengthen or weaken it and are not there. */
  readonly unread: readonly SiteQuantity[];
  /** For the order only; no probability. */
  readonly score: number;
}

/** Below it liquid may reach the compressor: a sensor is good for about a kelvin. Common practice. */
const LEAST_SUPERHEAT_K = 1;

/** What one result alone says, whatever else is read. */
const ALONE: readonly {
  readonly cause: CauseId;
  readonly level: Level;
  readonly trade: Trade;
  readonly by: readonly SiteQuantity[];
  readonly shows: (value: SiteValue) => boolean;
}[] = [
  {
    cause: 'glycol-weak',
    level: 'danger',
    trade: 'installer',
    by: ['frost-margin'],
    shows: ({ standing }) => standing === 'below',
  },
  {
    cause: 'liquid-to-compressor',
    level: 'danger',
    trade: 'refrigerant',
    by: ['superheat'],
    shows: ({ value }) => value < LEAST_SUPERHEAT_K,
  },
  {
    cause: 'readings-apart',
    level: 'balance',
    trade: 'installer',
    by: ['heat-balance', 'cop'],
    shows: ({ quantity, standing }) => standing === 'above' || (quantity === 'heat-balance' && standing === 'below'),
  },
  {
    cause: 'ground-cold',
    level: 'cause',
    trade: 'installer',
    by: ['brine-in'],
    shows: ({ standing }) => standing === 'below',
  },
  {
    cause: 'glycol-strong',
    level: 'cause',
    trade: 'installer',
    by: ['glycol-share'],
    shows: ({ standing }) => standing === 'above',
  },
  {
    cause: 'flow-set-high',
    level: 'cause',
    trade: 'installer',
    by: ['flow'],
    shows: ({ standing }) => standing === 'above',
  },
];

/**
 * What a result says for a cause, by where it stands: far below its band, in the lowest eighth of it, within, in the
 * highest eighth, far above. Natural logarithms of how much oftener it stands there with the cause than in a sound
 * machine; which of it is taken from experience is a judgement, so that the sum is an order and no probability.
 */
const WEIGHTS: Readonly<Record<Sign, readonly [number, number, number, number, number]>> = {
  '+': [-2, -2, -1.9, 0.8, 3.2],
  '0+': [-0.9, -0.9, -0.2, 0.8, 2.2],
  '0': [0, 0, 0, 0, 0],
  '0-': [2.2, 0.8, -0.2, -0.9, -0.9],
  '-': [3.2, 0.8, -1.9, -2, -2],
  '+-': [2.3, 0.5, -1.1, 0.5, 2.3],
};
const EDGE = 0.125;
/** A misread pressure explains each result that it brings back into its band as well as a cause explains its sign. */
const MEANT_WEIGHT = 3.2;
const CHANCE_OF_FIT = 2;
/** Causes this close to the first cannot be told from it; where sources disagree, or a slip may be all, the reach is wider. */
const REACH = { close: 1.5, open: 4, slip: 6 } as const;
/** Farther behind the first, a cause that competes with it is no longer named. */
const FARTHEST = 5;
const LEAST_SCORE = 1;
const MOST_JOINED = 3;
/** Who may look into a question is who may look into all of it. */
const STRICTEST: readonly Trade[] = ['refrigerant', 'electrician', 'installer'];

/** A flow meter and two sensors a few kelvin apart err by a tenth together. Common practice. */
const COP_ERROR = 0.1;

/** 0 far below to 4 far above. */
function placeOf({ quantity, value, band, standing }: SiteValue): number | null {
  if (band === null || standing === 'no band') return null;
  const [low, high] = [band.low ?? -Infinity, band.high ?? Infinity];
  if (quantity === 'cop' && standing !== 'inside' && value > low * (1 - COP_ERROR) && value < high * (1 + COP_ERROR))
    return standing === 'below' ? 1 : 3;
  if (standing !== 'inside') return standing === 'below' ? 0 : 4;
  const share = (value - low) / (high - low);
  return share < EDGE ? 1 : share > 1 - EDGE ? 3 : 2;
}

interface Scored extends NamedCause {
  readonly trade: Trade;
  /** Whether one of its signs lies clearly outside, and one of those that it always has is seen. */
  readonly shows: boolean;
  readonly patterns: Readonly<Partial<Record<SiteQuantity, Sign>>>;
  readonly signs: readonly SiteQuantity[];
  readonly against: readonly SiteQuantity[];
  readonly unread: readonly SiteQuantity[];
  readonly score: number;
}

function scoreCause(cause: CircuitCause, places: ReadonlyMap<SiteQuantity, number>): Scored {
  const { trade, signs: patterns } = PATTERNS[cause];
  const rows = Object.entries(patterns) as [SiteQuantity, Sign][];
  const weigh = ([quantity, sign]: [SiteQuantity, Sign]) => {
    const place = places.get(quantity);
    return place === undefined ? null : WEIGHTS[sign][place]!;
  };
  const firm = ([, sign]: [SiteQuantity, Sign]) => sign === '+' || sign === '-';
  const names = (of: typeof rows) => of.map(([quantity]) => quantity);
  return {
    cause,
    trade,
    patterns,
    shows:
      rows.some((row) => firm(row) && (weigh(row) ?? 0) > 0) &&
      rows.some((row) => (weigh(row) ?? 0) > 0 && [0, 4].includes(places.get(row[0])!)),
    signs: names(rows.filter((row) => (weigh(row) ?? 0) > 0)),
    against: names(rows.filter((row) => firm(row) && (weigh(row) ?? 0) < 0)),
    unread: names(rows.filter((row) => firm(row) && weigh(row) === null)),
    score: rows.reduce((sum, row) => sum + (weigh(row) ?? 0), 0),
  };
}

/** How the pressures would be read if one thing about them was read or chosen wrongly. */
function scoreMeant({ misreading, values }: Meant, typed: readonly SiteValue[]): Scored {
  const outside = ({ standing }: SiteValue) => standing === 'below' || standing === 'above';
  const mended = typed.filter(
    (one) => outside(one) && values.some((each) => each.quantity === one.quantity && !outside(each)),
  );
  const spoilt = values.filter(
    (one) => outside(one) && typed.some((each) => each.quantity === one.quantity && !outside(each)),
  );
  const names = (of: readonly SiteValue[]) => of.map(({ quantity }) => quantity);
  return {
    cause: 'misread',
    meant: misreading,
    trade: 'installer',
    patterns: {},
    shows: mended.length > 0,
    signs: names(mended),
    against: names(spoilt),
    unread: [],
    // Much can come right by chance; what is left outside has to be explained beside it.
    score: MEANT_WEIGHT * (mended.length - spoilt.length) - CHANCE_OF_FIT - values.filter(outside).length,
  };
}

const disputeOf = (a: CauseId, b: CauseId) =>
  DISPUTED.find(({ between: [one, other] }) => (a === one && b === other) || (a === other && b === one));

/** How far behind the first a cause may lie to be asked with it, by whether the reading that tells them apart is there. */
function reachOf(a: CauseId, b: CauseId, places: ReadonlyMap<SiteQuantity, number>): number {
  if (a === 'misread' || b === 'misread') return places.has('current') ? REACH.close : REACH.slip;
  const disputed = disputeOf(a, b);
  return disputed && !(disputed.until && places.has(disputed.until)) ? REACH.open : REACH.close;
}

/** Whether no reading at all tells the two apart, and what there is speaks clearly for neither. */
const isAlike = (a: Scored, b: Scored): boolean =>
  disputeOf(a.cause, b.cause)?.until === null && Math.abs(a.score - b.score) <= REACH.open;

const named = ({ cause, meant }: NamedCause): NamedCause => ({ cause, ...(meant ? { meant } : {}) });

const LEAN: Readonly<Record<Sign, number>> = { '+': 1, '0+': 0.5, '0': 0, '0-': -0.5, '-': -1, '+-': 0 };
/** What may be read next, the easier first. */
const READABLE: readonly SiteQuantity[] = [
  'brine-drop',
  'water-spread',
  'evaporator-approach',
  'condenser-approach',
  'subcooling',
  'superheat',
  'current',
  'discharge',
  'valve-opening',
  'at-rest',
];

/** The unread result of which the causes say the most different things. */
function settle(causes: readonly Scored[], places: ReadonlyMap<SiteQuantity, number>): Settling | null {
  const signOf = (one: Scored, quantity: SiteQuantity): Sign => one.patterns[quantity] ?? '0';
  const spread = (quantity: SiteQuantity) => {
    const leans = causes.filter((one) => signOf(one, quantity) !== '+-').map((one) => LEAN[signOf(one, quantity)]);
    return Math.max(...leans) - Math.min(...leans);
  };
  const unread = READABLE.filter((quantity) => !places.has(quantity));
  const best = unread.reduce<SiteQuantity | null>(
    (chosen, quantity) => (spread(quantity) > (chosen ? spread(chosen) : 0.5) ? quantity : chosen),
    null,
  );
  if (best === null) return null;
  const those = (wanted: (lean: number) => boolean) =>
    causes.filter((one) => signOf(one, best) !== '+-' && wanted(LEAN[signOf(one, best)])).map(named);
  return { by: best, above: those((x) => x > 0), inside: those((x) => x === 0), below: those((x) => x < 0) };
}

/** Dangers, contradictions and causes; see the head of the file. Ties go to what stands first in the lists. */
export function likelyCauses(
  values: readonly SiteValue[],
  { ways = [], gasTooHot = false }: { readonly ways?: readonly Meant[]; readonly gasTooHot?: boolean } = {},
): LikelyCause[] {
  const places = new Map(
    values.flatMap((value) => {
      const place = placeOf(value);
      return place === null ? [] : [[value.quantity, place] as const];
    }),
  );
  const alone = ALONE.flatMap(({ by, shows, ...rest }): LikelyCause[] => {
    const signs = values.filter((value) => by.includes(value.quantity) && shows(value));
    if (signs.length === 0) return [];
    const names = signs.map(({ quantity }) => quantity);
    return [{ ...rest, orElse: [], settling: null, signs: names, against: [], unread: [], score: 3 * signs.length }];
  });
  const hot: LikelyCause[] = gasTooHot
    ? [
        {
          cause: 'gas-too-hot',
          level: 'danger',
          trade: 'refrigerant',
          orElse: [],
          settling: null,
          signs: ['discharge'],
          against: [],
          unread: [],
          score: 3,
        },
      ]
    : [];
  const all = [...alone, ...hot, ...competing(values, places, ways)];
  return all.sort((a, b) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level) || b.score - a.score);
}

/** Of the causes in the circuit, and of slips in reading it, at most one is true; those too close to call are one question. */
function competing(
  values: readonly SiteValue[],
  places: ReadonlyMap<SiteQuantity, number>,
  ways: readonly Meant[],
): LikelyCause[] {
  const scored = [
    ...ways.map((way) => scoreMeant(way, values)),
    ...CIRCUIT_CAUSES.map((cause) => scoreCause(cause, places)),
  ]
    .filter(({ score, shows }) => score > LEAST_SCORE && shows)
    .sort((a, b) => b.score - a.score);
  const first = scored[0];
  if (!first) return [];
  const competes = (one: Scored) => one.signs.some((sign) => first.signs.includes(sign));
  const reach = (one: Scored) => reachOf(one.cause, first.cause, places);
  const isNear = (one: Scored) => competes(one) && one.score >= first.score - reach(one);
  const close = scored.slice(1).filter(isNear);
  // What no reading tells from one of them is asked with it.
  const near = scored
    .slice(1)
    .filter((one) => isNear(one) || (competes(one) && close.some((other) => isAlike(one, other))));
  // What needs asking most comes first: a slip, then what sources dispute.
  const joined = [
    first,
    ...near.toSorted((a, b) => reach(b) - reach(a) || b.score - a.score).slice(0, MOST_JOINED - 1),
  ];
  const rest = scored.filter((one) => !joined.includes(one) && (!competes(one) || one.score >= first.score - FARTHEST));
  return [joined, ...rest.map((one) => [one])].map((group): LikelyCause => {
    const { patterns: _patterns, shows: _shows, ...lead } = group[0]!;
    return {
      ...lead,
      level: 'cause',
      trade: STRICTEST.find((trade) => group.some((one) => one.trade === trade))!,
      orElse: group.slice(1).map(named),
      settling: group.length > 1 ? settle(group, places) : null,
    };
  });
}
