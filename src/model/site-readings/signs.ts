/**
 * How each cause shows itself in steady running, as handbooks tabulate it. `+` is seen above the usual band, `-` below,
 * `0` inside, `0+` and `0-` inside or a little to that side; of `+-` the sources say opposite things, and of what is not
 * listed they say nothing beyond `0`.
 *
 * Sources, as far as they were read: undercharge, restrictions and weak compressors, ACHR News (undated to 2019);
 * overcharge and low flow, a list of nine faults at refrigeration-engineer.com (undated); air in the circuit,
 * TM 55-1930-209-14P-15 and ACHR News, which let the subcooling fall, while the rule by pressure, from memory, lets it
 * rise; for a weak compressor two of these texts give superheat and subcooling opposite signs; an electronic valve hides a
 * fault of charge until it stands wide open, Energy 27 (2002) 391–404. They write of suction and discharge pressure:
 * here the same is read off the approaches, so that cold brine or hot water is no sign. Hot gas is held against what is to
 * be expected at its own pressures and superheat, which leaves fewer signs than its bare temperature. Fouling, the opening
 * of the valve and what is seen at rest are reasoned, without a source.
 */
import type { SiteQuantity } from '../shapes/site-readings.ts';

export type Sign = '+' | '0+' | '0' | '0-' | '-' | '+-';
/** Who may look into it. */
export type Trade = 'installer' | 'electrician' | 'refrigerant';

/** Causes of which one circuit has at most one at a time; what is met oftener and is cheaper to rule out first. */
export const CIRCUIT_CAUSES = [
  'brine-flow-low',
  'water-flow-low',
  'water-flow-high',
  'heater-counted',
  'condenser-fouled',
  'evaporator-fouled',
  'undercharge',
  'valve-starving',
  'suction-restricted',
  'overcharge',
  'air-in-circuit',
  'valve-flooding',
  'compressor-weak',
] as const;
export type CircuitCause = (typeof CIRCUIT_CAUSES)[number];

export interface Pattern {
  readonly trade: Trade;
  readonly signs: Readonly<Partial<Record<SiteQuantity, Sign>>>;
}

export const PATTERNS: Readonly<Record<CircuitCause, Pattern>> = {
  'brine-flow-low': {
    trade: 'installer',
    signs: {
      'brine-drop': '+',
      'evaporator-approach': '0+',
      'condenser-approach': '0-',
      superheat: '0-',
      subcooling: '0+',
      'water-spread': '0-',
      'valve-opening': '0-',
      cop: '0-',
    },
  },
  'water-flow-low': {
    trade: 'installer',
    signs: {
      'water-spread': '+',
      'condenser-approach': '0+',
      'evaporator-approach': '0-',
      superheat: '0-',
      subcooling: '0-',
      current: '0+',
      cop: '0-',
    },
  },
  'water-flow-high': { trade: 'installer', signs: { 'water-spread': '-' } },
  'heater-counted': { trade: 'electrician', signs: { cop: '-', 'heat-balance': '0-' } },
  'condenser-fouled': {
    trade: 'installer',
    signs: { 'condenser-approach': '+', current: '+', discharge: '0+', 'water-spread': '0-', cop: '0-' },
  },
  'evaporator-fouled': {
    trade: 'installer',
    signs: {
      'evaporator-approach': '+',
      'condenser-approach': '0-',
      current: '0-',
      'brine-drop': '0-',
      'water-spread': '0-',
      'valve-opening': '0-',
      cop: '0-',
    },
  },
  undercharge: {
    trade: 'refrigerant',
    signs: {
      'evaporator-approach': '+',
      'condenser-approach': '0-',
      superheat: '+',
      subcooling: '-',
      current: '-',
      discharge: '0+',
      'brine-drop': '0-',
      'water-spread': '0-',
      'valve-opening': '+',
      'at-rest': '0-',
      cop: '0-',
    },
  },
  'valve-starving': {
    trade: 'refrigerant',
    signs: {
      'evaporator-approach': '+',
      'condenser-approach': '0-',
      superheat: '+',
      subcooling: '+',
      current: '-',
      discharge: '0+',
      'brine-drop': '0-',
      'water-spread': '0-',
      cop: '0-',
    },
  },
  'suction-restricted': {
    trade: 'refrigerant',
    signs: {
      'evaporator-approach': '+',
      'condenser-approach': '0-',
      superheat: '+',
      subcooling: '0+',
      current: '-',
      discharge: '0+',
      'brine-drop': '0-',
      'water-spread': '0-',
      'valve-opening': '0-',
      cop: '0-',
    },
  },
  overcharge: {
    trade: 'refrigerant',
    signs: {
      'condenser-approach': '+',
      'evaporator-approach': '0-',
      subcooling: '+',
      current: '+',
      discharge: '0+',
      'valve-opening': '0-',
      cop: '0-',
    },
  },
  'air-in-circuit': {
    trade: 'refrigerant',
    signs: {
      'condenser-approach': '+',
      'evaporator-approach': '0-',
      subcooling: '+-',
      current: '+',
      discharge: '0+',
      'at-rest': '+',
      cop: '0-',
    },
  },
  'valve-flooding': {
    trade: 'refrigerant',
    signs: {
      superheat: '-',
      'evaporator-approach': '0-',
      'condenser-approach': '0+',
      subcooling: '0-',
      current: '0+',
      discharge: '0-',
      'valve-opening': '0+',
    },
  },
  'compressor-weak': {
    trade: 'refrigerant',
    signs: {
      'evaporator-approach': '-',
      'condenser-approach': '-',
      superheat: '+-',
      subcooling: '+-',
      current: '-',
      discharge: '+',
      'brine-drop': '-',
      'water-spread': '-',
      'valve-opening': '-',
      cop: '0-',
    },
  },
};

/**
 * Where sources disagree on what tells two causes apart, both stand as one question until the reading is there that does:
 * air beside what else raises the discharge pressure, a weak compressor beside a valve that lets too much through. Where
 * something is narrowed, before the evaporator or behind it, no reading but one on both sides of it tells.
 */
export const DISPUTED: readonly {
  readonly between: readonly [CircuitCause, CircuitCause];
  readonly until: SiteQuantity | null;
}[] = [
  { between: ['air-in-circuit', 'overcharge'], until: 'at-rest' },
  { between: ['air-in-circuit', 'condenser-fouled'], until: 'at-rest' },
  { between: ['compressor-weak', 'valve-flooding'], until: 'valve-opening' },
  { between: ['valve-starving', 'suction-restricted'], until: null },
];
