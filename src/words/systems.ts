/** Ways of heating, as they are named in tables and charts and as they stand inside a sentence. */

type Source = 'ground' | 'air';

const NAMES: Readonly<Record<string, string>> = {
  'heat-pump': 'Heat pump',
  'air-source': 'Heat pump, air',
  'gas-condensing': 'Gas boiler, new',
  'gas-old': 'Gas boiler, old',
  oil: 'Oil boiler',
  lpg: 'LPG boiler',
  'direct-electric': 'Direct electric',
  storage: 'Storage heaters',
};
const NOW: Readonly<Record<string, string>> = {
  'heat-pump': 'Heat pump, as now',
  'gas-condensing': 'Gas boiler, as now',
  'gas-old': 'Gas boiler, as now',
  oil: 'Oil boiler, as now',
  lpg: 'LPG boiler, as now',
  'direct-electric': 'Electric heaters, as now',
  storage: 'Storage heaters, as now',
};
const SPOKEN: Readonly<Record<string, string>> = {
  'heat-pump': 'a heat pump',
  'air-source': 'an air-source heat pump',
  'gas-condensing': 'a new gas boiler',
  'gas-old': 'an old gas boiler',
  oil: 'an oil boiler',
  lpg: 'an LPG boiler',
  'direct-electric': 'plain electric heaters',
  storage: 'storage heaters',
};
const SPOKEN_NOW: Readonly<Record<string, string>> = {
  'heat-pump': 'the heat pump you have now',
  'gas-condensing': 'the gas boiler you have now',
  'gas-old': 'the gas boiler you have now',
  oil: 'the oil boiler you have now',
  lpg: 'the LPG boiler you have now',
  'direct-electric': 'the electric heaters you have now',
  storage: 'the storage heaters you have now',
};

/** Name for a row or a label: "Heat pump, ground", "Gas boiler, as now". */
export function systemName(id: string, kind: string, source?: Source): string {
  if (id === 'present') return NOW[kind] ?? 'Heating, as now';
  if (id === 'heat-pump' && source !== undefined) return `Heat pump, ${source}`;
  return NAMES[id] ?? NAMES[kind] ?? 'Other heating';
}

/** Inside a sentence, without a capital: "a new gas boiler", "the gas boiler you have now". */
export function systemInSentence(id: string, kind: string): string {
  if (id === 'present') return SPOKEN_NOW[kind] ?? 'the heating you have now';
  return SPOKEN[id] ?? SPOKEN[kind] ?? 'another way of heating';
}

/** "costs" or "cost", "uses" or "use": heaters are many, a boiler is one. */
export function systemVerb(id: string, kind: string, one: string, many: string): string {
  const what = id === 'present' ? kind : id;
  return what === 'storage' || what === 'direct-electric' ? many : one;
}

const CARRIERS: Readonly<Record<string, string>> = {
  electricity: 'electricity',
  gas: 'gas',
  oil: 'oil',
  lpg: 'LPG',
  heat: 'heat',
  'outdoor-temperature': 'outdoor temperature',
};

/** What is bought or measured: "electricity", "LPG". */
export function carrierName(carrier: string): string {
  return CARRIERS[carrier] ?? carrier;
}
