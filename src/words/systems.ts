/** Ways of heating, as they are named in tables and charts and as they stand inside a sentence. */
import type { Appraisal, WhyLeftOut } from '../model/shapes/appraisal.ts';
import type { Carrier } from '../model/shapes/evidence.ts';
import { type Fuel, isFuel, type RivalMachine, type System } from '../model/shapes/heating.ts';
import type { PresentSystem } from '../model/shapes/household.ts';
import type { ToldName } from '../model/shapes/told-cost.ts';
import { listed } from './numbers.ts';
import { phrase, say } from './say.ts';

type Source = 'ground' | 'air';

interface SystemWords {
  /** In a table or beside a bar. */
  readonly name: string;
  readonly now: string;
  /** Inside a sentence. */
  readonly spoken: string;
  readonly spokenNow: string;
  /** Where it is chosen among others. */
  readonly choice: string;
  /** For `{number, select, many {cost} other {costs}}`: heaters are many, a boiler is one. */
  readonly number?: 'many';
}
type NewWords = Pick<SystemWords, 'name' | 'spoken'>;

const SYSTEM_WORDS: { readonly [S in System]: S extends RivalMachine ? NewWords : SystemWords } = {
  'gas-condensing': {
    name: phrase('Gas boiler, new'),
    now: phrase('Gas boiler, as now'),
    spoken: phrase('a new gas boiler'),
    spokenNow: phrase('the gas boiler you have now'),
    choice: phrase('gas boiler, condensing'),
  },
  'gas-old': {
    name: phrase('Gas boiler, old'),
    now: phrase('Gas boiler, as now'),
    spoken: phrase('an old gas boiler'),
    spokenNow: phrase('the gas boiler you have now'),
    choice: phrase('gas boiler, older'),
  },
  oil: {
    name: phrase('Oil boiler'),
    now: phrase('Oil boiler, as now'),
    spoken: phrase('an oil boiler'),
    spokenNow: phrase('the oil boiler you have now'),
    choice: phrase('oil boiler'),
  },
  lpg: {
    name: phrase('LPG boiler'),
    now: phrase('LPG boiler, as now'),
    spoken: phrase('an LPG boiler'),
    spokenNow: phrase('the LPG boiler you have now'),
    choice: phrase('LPG boiler'),
  },
  pellets: {
    name: phrase('Pellet boiler'),
    now: phrase('Pellet boiler, as now'),
    spoken: phrase('a pellet boiler'),
    spokenNow: phrase('the pellet boiler you have now'),
    choice: phrase('pellet boiler'),
  },
  'direct-electric': {
    name: phrase('Direct electric'),
    now: phrase('Electric heaters, as now'),
    spoken: phrase('plain electric heaters'),
    spokenNow: phrase('the electric heaters you have now'),
    choice: phrase('electric heaters'),
    number: 'many',
  },
  storage: {
    name: phrase('Storage heaters'),
    now: phrase('Storage heaters, as now'),
    spoken: phrase('storage heaters'),
    spokenNow: phrase('the storage heaters you have now'),
    choice: phrase('night storage heaters'),
    number: 'many',
  },
  'heat-pump': {
    name: phrase('Heat pump'),
    now: phrase('Heat pump, as now'),
    spoken: phrase('a heat pump'),
    spokenNow: phrase('the heat pump you have now'),
    choice: phrase('heat pump'),
  },
  'air-source': { name: phrase('Air-source heat pump'), spoken: phrase('an air-source heat pump') },
  'ground-source': { name: phrase('Ground-source heat pump'), spoken: phrase('a ground-source heat pump') },
};
/** A home of which nobody has said what heats it. */
const GAS_ASSUMED: Partial<SystemWords> = {
  now: phrase('Gas boiler, assumed'),
  spokenNow: phrase('the gas boiler we assume you have'),
};
const wordsOf = (kind: string): Partial<SystemWords> | undefined =>
  kind === 'gas-assumed' ? GAS_ASSUMED : (SYSTEM_WORDS as Readonly<Record<string, Partial<SystemWords>>>)[kind];

/** Name for a row or a label: "Heat pump, ground", "Gas boiler, as now". */
export function systemName(id: string, kind: string, source?: Source): string {
  if (id === 'present') return say(wordsOf(kind)?.now ?? 'Heating, as now');
  if (id === 'heat-pump' && source !== undefined)
    return say(source === 'ground' ? 'Ground-source heat pump' : 'Air-source heat pump');
  return say(wordsOf(id)?.name ?? wordsOf(kind)?.name ?? 'Other heating');
}

/** Inside a sentence, without a capital: "a new gas boiler", "the gas boiler you have now". */
export function systemInSentence(id: string, kind: string): string {
  if (id === 'present') return say(wordsOf(kind)?.spokenNow ?? 'the heating you have now');
  return say(wordsOf(id)?.spoken ?? wordsOf(kind)?.spoken ?? 'another way of heating');
}

/** Where what heats the home now is chosen: "oil boiler". */
export const systemChoice = (system: PresentSystem): string =>
  say(system === 'other' ? phrase('something else') : SYSTEM_WORDS[system].choice);

/** For `{number, select, many {cost} other {costs}}`. */
export const systemNumber = (id: string, kind: string): 'one' | 'many' =>
  wordsOf(id === 'present' ? kind : id)?.number ?? 'one';

const WHY_LEFT_OUT: { readonly [why in WhyLeftOut]: string } = {
  'no-gas': phrase('Left out, since there is no gas here: {names}.'),
  'gas-not-said': phrase('Left out until somebody says whether there is gas here: {names}.'),
  'gas-here': phrase('Left out, since there is gas here: {names}.'),
  'no-room': phrase('Left out, since a flat has no room for a tank or a store: {names}.'),
  'no-ground': phrase('Left out, since there is no garden for the pipes: {names}.'),
  'not-electric': phrase('Left out, since there are no electric heaters now: {names}.'),
  'no-price': phrase('Left out, since nobody has typed its price and none is built in: {names}.'),
  chosen: phrase('Left out by the installer: {names}.'),
};

/** What stands in no comparison of this home and why; empty where all does, and for an estimate from before it was said. */
export function leftOutSentence({ leftOut = [] }: Pick<Appraisal, 'leftOut'>): string {
  const reasons = [...new Set(leftOut.map(({ why }) => why))];
  return reasons
    .map((reason) => {
      const names = leftOut.filter(({ why }) => why === reason).map(({ system }) => systemInSentence(system, system));
      return say(WHY_LEFT_OUT[reason] ?? 'Left out: {names}.', { names: listed(names) });
    })
    .join(' ');
}

interface FuelWords {
  readonly name: string;
  /** Among files and meters, where the short name could be something else. */
  readonly inFull?: string;
  readonly service: string;
}
const FUEL_WORDS: { readonly [fuel in Fuel]: FuelWords } = {
  gas: { name: phrase('gas'), service: phrase('Gas boiler, yearly visit') },
  oil: { name: phrase('oil'), inFull: phrase('heating oil'), service: phrase('Oil boiler, yearly visit') },
  lpg: { name: phrase('LPG'), service: phrase('LPG boiler, yearly visit') },
  pellets: { name: phrase('pellets'), inFull: phrase('wood pellets'), service: phrase('Pellet boiler, yearly visit') },
};
export const serviceName = (of: 'heat-pump' | Fuel): string =>
  say(of === 'heat-pump' ? phrase('Heat pump, yearly visit') : FUEL_WORDS[of].service);

/** What is bought or measured beside the fuels. */
const OTHER_CARRIERS: { readonly [carrier in Exclude<Carrier, Fuel>]: string } = {
  electricity: phrase('electricity'),
  heat: phrase('heat'),
  water: phrase('water'),
  'outdoor-temperature': phrase('outdoor temperature'),
  'flow-temperature': phrase('flow temperature'),
  'return-temperature': phrase('return temperature'),
  'source-temperature': phrase('source temperature'),
};

export const isCarrier = (text: string): text is Carrier => isFuel(text) || Object.hasOwn(OTHER_CARRIERS, text);

/** "electricity", "LPG". */
export const carrierName = (carrier: string): string =>
  say(
    isFuel(carrier)
      ? FUEL_WORDS[carrier].name
      : ((OTHER_CARRIERS as Readonly<Record<string, string>>)[carrier] ?? carrier),
  );

/** The same in English, and in full among files and meters: "heating oil". */
export const carrierInFull = (carrier: Carrier): string =>
  isFuel(carrier) ? (FUEL_WORDS[carrier].inFull ?? FUEL_WORDS[carrier].name) : OTHER_CARRIERS[carrier];

const namedBy = (kind: string, names: Readonly<Record<string, string | undefined>>) =>
  Object.entries(names).flatMap(([id, name]) => (name === undefined ? [] : [[`${kind}-${id}`, name]]));
const spokenOf = (field: 'spoken' | 'spokenNow') =>
  Object.fromEntries(
    Object.entries<Partial<SystemWords>>({ ...SYSTEM_WORDS, 'gas-assumed': GAS_ASSUMED }).map(([id, words]) => [
      id,
      words[field],
    ]),
  );
/** What the model tells by its name: carriers, ways of heating, and the one of today. */
export const TOLD_NAMES = Object.fromEntries([
  ...namedBy('carrier', { electricity: OTHER_CARRIERS.electricity }),
  ...namedBy('carrier', Object.fromEntries(Object.entries(FUEL_WORDS).map(([fuel, { name }]) => [fuel, name]))),
  ...namedBy('system', spokenOf('spoken')),
  ...namedBy('now', spokenOf('spokenNow')),
]) as Readonly<Record<keyof ToldName, string>>;
