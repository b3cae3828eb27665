/**
 * What readings outside their band can mean, in order of likelihood. The order is a judgement, not a statistic: each
 * cause gains by a sign that is there and loses by one that was looked for and is not, and what is met oftener and is
 * cheaper to rule out goes first. Signs and their order: common practice, no source.
 */
import type { SiteQuantity, SiteReadings, SiteValue } from '../shapes/site-readings.ts';

export const CAUSES = [
  'readings-apart',
  'brine-flow-low',
  'ground-cold',
  'glycol-weak',
  'glycol-strong',
  'water-flow-low',
  'water-flow-high',
  'flow-set-high',
  'heater-counted',
  'condenser-fouled',
  'undercharge',
  'valve-starving',
  'valve-flooding',
  'compressor-weak',
] as const;
export type CauseId = (typeof CAUSES)[number];
/** Who may look into it. */
export type Trade = 'installer' | 'electrician' | 'refrigerant';

export interface LikelyCause {
  readonly cause: CauseId;
  readonly trade: Trade;
  /** Signs there are. */
  readonly signs: readonly SiteQuantity[];
  /** Readings that speak against it. */
  readonly against: readonly SiteQuantity[];
  /** Readings that would strengthen or weaken it and are not there. */
  readonly unread: readonly SiteQuantity[];
  /** For the order only; no probability. */
  readonly score: number;
}
export const CAUTIONS = [
  'refrigerant',
  'flammable',
  'electric',
  'scald',
  'hot-pipe',
  'glycol',
  'pressure-switch',
  'local-codes',
] as const;
export type Caution = (typeof CAUTIONS)[number];

interface Sign {
  readonly quantity: SiteQuantity;
  readonly side: 'below' | 'above';
  /** Gained when the sign is there, lost when the reading is there and does not show it. */
  readonly gain: number;
  readonly loss: number;
}
const sign = (quantity: SiteQuantity, side: Sign['side'], gain: number, loss = 0): Sign => ({
  quantity,
  side,
  gain,
  loss,
});

const PATTERNS: Readonly<Record<CauseId, { readonly trade: Trade; readonly signs: readonly Sign[] }>> = {
  'readings-apart': {
    trade: 'installer',
    signs: [sign('heat-balance', 'above', 3), sign('heat-balance', 'below', 3), sign('cop', 'above', 3)],
  },
  'brine-flow-low': {
    trade: 'installer',
    signs: [
      sign('brine-drop', 'above', 3, 2),
      sign('evaporator-approach', 'above', 1),
      sign('superheat', 'below', 0.5),
    ],
  },
  'ground-cold': { trade: 'installer', signs: [sign('brine-in', 'below', 3)] },
  'glycol-weak': { trade: 'installer', signs: [sign('frost-margin', 'below', 3)] },
  'glycol-strong': { trade: 'installer', signs: [sign('glycol-share', 'above', 3)] },
  'water-flow-low': {
    trade: 'installer',
    signs: [sign('water-spread', 'above', 3, 2), sign('condenser-approach', 'above', 0.5)],
  },
  'water-flow-high': { trade: 'installer', signs: [sign('water-spread', 'below', 2.5)] },
  'flow-set-high': { trade: 'installer', signs: [sign('flow', 'above', 3)] },
  'heater-counted': { trade: 'electrician', signs: [sign('cop', 'below', 2, 2), sign('heat-balance', 'below', 1)] },
  'condenser-fouled': {
    trade: 'installer',
    signs: [sign('condenser-approach', 'above', 3, 3), sign('water-spread', 'below', 0.5), sign('cop', 'below', 0.5)],
  },
  undercharge: {
    trade: 'refrigerant',
    signs: [
      sign('evaporator-approach', 'above', 2, 1),
      sign('superheat', 'above', 2, 2),
      sign('subcooling', 'below', 2, 1.5),
      sign('discharge', 'above', 0.5),
    ],
  },
  'valve-starving': {
    trade: 'refrigerant',
    signs: [
      sign('evaporator-approach', 'above', 1.5, 1),
      sign('superheat', 'above', 2, 2),
      sign('subcooling', 'above', 1.5),
      sign('discharge', 'above', 0.5),
    ],
  },
  'valve-flooding': {
    trade: 'refrigerant',
    signs: [sign('superheat', 'below', 3, 3), sign('discharge', 'below', 1, 0.5)],
  },
  'compressor-weak': {
    trade: 'refrigerant',
    signs: [sign('discharge', 'above', 1.5, 1), sign('cop', 'below', 1, 1)],
  },
};

/** Causes with at least one sign that is not outweighed, likeliest first. Data in, order out; see the head of the file. */
export function likelyCauses(values: readonly SiteValue[]): LikelyCause[] {
  const known = new Map(values.map((value) => [value.quantity, value.standing]));
  const causes = CAUSES.map((cause, index): LikelyCause => {
    const { trade, signs } = PATTERNS[cause];
    const there = signs.filter((each) => known.get(each.quantity) === each.side);
    const shown = new Set(there.map((each) => each.quantity));
    const absent = signs.filter((each) => {
      const standing = known.get(each.quantity);
      return !shown.has(each.quantity) && each.loss > 0 && standing !== undefined && standing !== 'no band';
    });
    const unread = signs.filter((each) => (known.get(each.quantity) ?? 'no band') === 'no band');
    const gained = there.reduce((sum, each) => sum + each.gain, 0);
    const lost = absent.reduce((sum, each) => sum + each.loss, 0);
    const quantities = (list: readonly Sign[]) => [...new Set(list.map((each) => each.quantity))];
    return {
      cause,
      trade,
      signs: quantities(there),
      against: quantities(absent),
      unread: quantities(unread),
      // Ties go to what is met oftener: the order of the list.
      score: there.length === 0 ? 0 : gained - lost - index / 1000,
    };
  });
  return causes.filter((cause) => cause.score > 0).sort((a, b) => b.score - a.score);
}

/** Cautions that belong to what was read and to what may be looked into. Local codes always. */
export function cautionsFor(readings: SiteReadings, causes: readonly LikelyCause[]): Caution[] {
  const trades = new Set(causes.map((cause) => cause.trade));
  const ids = new Set(causes.map((cause) => cause.cause));
  const gauges = readings.suction !== undefined || readings.discharge !== undefined;
  const wet: readonly CauseId[] = ['water-flow-low', 'water-flow-high', 'condenser-fouled', 'flow-set-high'];
  const brine: readonly CauseId[] = ['brine-flow-low', 'ground-cold', 'glycol-weak', 'glycol-strong'];
  const wanted: Readonly<Record<Caution, boolean>> = {
    refrigerant: gauges || trades.has('refrigerant'),
    flammable: readings.refrigerant === 'R290' || readings.refrigerant === 'R32',
    electric: readings.inputKW !== undefined || trades.has('electrician'),
    scald: (readings.flowC ?? 0) >= 45 || wet.some((cause) => ids.has(cause)),
    'hot-pipe': readings.dischargeC !== undefined || gauges,
    glycol: readings.glycol !== undefined || brine.some((cause) => ids.has(cause)),
    'pressure-switch': gauges,
    'local-codes': true,
  };
  return CAUTIONS.filter((caution) => wanted[caution]);
}
