import type { RefrigerantName } from '../shapes/refrigerant.ts';
import type { SiteReadings } from '../shapes/site-readings.ts';
import type { CauseId, LikelyCause } from './likely-causes.ts';

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

/** Of class A2L and A3 in ISO 817. */
const FLAMMABLE: readonly RefrigerantName[] = ['R32', 'R290', 'R454B'];

/** Cautions that belong to what was read and to what may be looked into. Local codes always. */
export function cautionsFor(readings: SiteReadings, causes: readonly LikelyCause[]): Caution[] {
  const trades = new Set(causes.map((cause) => cause.trade));
  const ids = new Set(causes.flatMap(({ cause, orElse }) => [cause, ...orElse.map((one) => one.cause)]));
  const gauges = [readings.suction, readings.discharge, readings.restPressure].some((one) => one !== undefined);
  const wet: readonly CauseId[] = ['water-flow-low', 'water-flow-high', 'condenser-fouled', 'flow-set-high'];
  const brine: readonly CauseId[] = [
    'brine-flow-low',
    'evaporator-fouled',
    'ground-cold',
    'glycol-weak',
    'glycol-strong',
  ];
  const wanted: Readonly<Record<Caution, boolean>> = {
    refrigerant: gauges || trades.has('refrigerant'),
    flammable: readings.refrigerant !== undefined && FLAMMABLE.includes(readings.refrigerant),
    electric: readings.inputKW !== undefined || readings.currentA !== undefined || trades.has('electrician'),
    scald: (readings.flowC ?? 0) >= 45 || wet.some((cause) => ids.has(cause)),
    'hot-pipe': readings.dischargeC !== undefined || gauges,
    glycol: readings.glycol !== undefined || brine.some((cause) => ids.has(cause)),
    'pressure-switch': gauges,
    'local-codes': true,
  };
  return CAUTIONS.filter((caution) => wanted[caution]);
}
