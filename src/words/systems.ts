/** Ways of heating, as they are named in tables and charts and as they stand inside a sentence. */
import type { Carrier } from '../model/shapes/evidence.ts';
import { phrase, say } from './say.ts';

type Source = 'ground' | 'air';

const NAMES: Readonly<Record<string, string>> = {
  'heat-pump': phrase('Heat pump'),
  'air-source': phrase('Heat pump, air'),
  'gas-condensing': phrase('Gas boiler, new'),
  'gas-old': phrase('Gas boiler, old'),
  oil: phrase('Oil boiler'),
  lpg: phrase('LPG boiler'),
  'direct-electric': phrase('Direct electric'),
  storage: phrase('Storage heaters'),
};
const NOW: Readonly<Record<string, string>> = {
  'heat-pump': phrase('Heat pump, as now'),
  'gas-condensing': phrase('Gas boiler, as now'),
  'gas-old': phrase('Gas boiler, as now'),
  'gas-assumed': phrase('Gas boiler, assumed'),
  oil: phrase('Oil boiler, as now'),
  lpg: phrase('LPG boiler, as now'),
  'direct-electric': phrase('Electric heaters, as now'),
  storage: phrase('Storage heaters, as now'),
};
const SPOKEN: Readonly<Record<string, string>> = {
  'heat-pump': phrase('a heat pump'),
  'air-source': phrase('an air-source heat pump'),
  'gas-condensing': phrase('a new gas boiler'),
  'gas-old': phrase('an old gas boiler'),
  oil: phrase('an oil boiler'),
  lpg: phrase('an LPG boiler'),
  'direct-electric': phrase('plain electric heaters'),
  storage: phrase('storage heaters'),
};
const SPOKEN_NOW: Readonly<Record<string, string>> = {
  'heat-pump': phrase('the heat pump you have now'),
  'gas-condensing': phrase('the gas boiler you have now'),
  'gas-old': phrase('the gas boiler you have now'),
  'gas-assumed': phrase('the gas boiler we assume you have'),
  oil: phrase('the oil boiler you have now'),
  lpg: phrase('the LPG boiler you have now'),
  'direct-electric': phrase('the electric heaters you have now'),
  storage: phrase('the storage heaters you have now'),
};

/** Name for a row or a label: "Heat pump, ground", "Gas boiler, as now". */
export function systemName(id: string, kind: string, source?: Source): string {
  if (id === 'present') return say(NOW[kind] ?? 'Heating, as now');
  if (id === 'heat-pump' && source !== undefined)
    return say(source === 'ground' ? 'Heat pump, ground' : 'Heat pump, air');
  return say(NAMES[id] ?? NAMES[kind] ?? 'Other heating');
}

/** Inside a sentence, without a capital: "a new gas boiler", "the gas boiler you have now". */
export function systemInSentence(id: string, kind: string): string {
  if (id === 'present') return say(SPOKEN_NOW[kind] ?? 'the heating you have now');
  return say(SPOKEN[id] ?? SPOKEN[kind] ?? 'another way of heating');
}

/** For `{number, select, many {cost} other {costs}}`: heaters are many, a boiler is one. */
export function systemNumber(id: string, kind: string): 'one' | 'many' {
  const what = id === 'present' ? kind : id;
  return what === 'storage' || what === 'direct-electric' ? 'many' : 'one';
}

/** What is bought or measured. */
export const CARRIERS = {
  electricity: phrase('electricity'),
  gas: phrase('gas'),
  oil: phrase('oil'),
  lpg: phrase('LPG'),
  heat: phrase('heat'),
  'outdoor-temperature': phrase('outdoor temperature'),
  'flow-temperature': phrase('flow temperature'),
  'return-temperature': phrase('return temperature'),
  'source-temperature': phrase('source temperature'),
} as const satisfies Readonly<Record<Carrier, string>>;

/** "electricity", "LPG". */
export function carrierName(carrier: string): string {
  return say((CARRIERS as Readonly<Record<string, string>>)[carrier] ?? carrier);
}
