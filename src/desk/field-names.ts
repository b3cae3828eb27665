/** Names in words for the fields that a person fills in, and why a figure cannot be taken where the reason is not plain. */
interface FieldWords {
  readonly name: string;
  readonly unit?: string;
  readonly reason?: string;
}

const FACTOR_REASON =
  'Below 1 a heat pump would give less heat than a plain electric heater; above 8 is far beyond what field trials have measured.';

const FIELDS: Readonly<Record<string, FieldWords>> = {
  name: { name: 'the name of the household' },
  zone: { name: 'the time zone' },
  'home.floorAreaM2': { name: 'the floor area', unit: 'm²' },
  'home.people': { name: 'the number of people' },
  'home.postcode': { name: 'the postcode' },
  'home.regionId': { name: 'the climate region' },
  'present.system': { name: 'the present heating' },
  'present.efficiency': {
    name: 'the efficiency of the present heating',
    reason:
      'It is written as a fraction, 0.84 for 84 %. No boiler gives out more than 110 % of the energy in its fuel.',
  },
  'heat.heatLossKW': {
    name: 'the heat loss',
    unit: 'kW',
    reason: 'Every home loses heat in winter; without a figure the field stays empty.',
  },
  'heat.designOutdoorC': { name: 'the outdoor temperature of the heat loss', unit: '°C' },
  'heat.roomC': { name: 'the room temperature', unit: '°C' },
  'heat.baseC': { name: 'the base temperature', unit: '°C' },
  'heat.certificateSpaceKWh': { name: "the certificate's figure for heating the rooms", unit: 'kWh' },
  'heat.certificateWaterKWh': { name: "the certificate's figure for hot water", unit: 'kWh' },
  'hotWater.litresPerDay': { name: 'the hot water a day', unit: 'litres' },
  'hotWater.hotC': { name: 'the hot water temperature', unit: '°C' },
  'hotWater.cylinderLitres': { name: 'the size of the cylinder', unit: 'litres' },
  'hotWater.cylinderLossKWhPerDay': { name: 'the heat lost from the cylinder', unit: 'kWh a day' },
  'machine.source': { name: 'the source of the heat pump' },
  'machine.spaceFactor': { name: 'the seasonal factor for heating the rooms', reason: FACTOR_REASON },
  'machine.waterFactor': { name: 'the seasonal factor for hot water', reason: FACTOR_REASON },
  'machine.flowC': { name: 'the flow temperature', unit: '°C' },
  'machine.backupShare': { name: 'the share of the backup heater' },
  'prices.oilPencePerLitre': { name: 'the price of oil', unit: 'p a litre' },
  'prices.lpgPencePerLitre': { name: 'the price of LPG', unit: 'p a litre' },
  boughtKWh: { name: 'the units on the bill', unit: 'kWh' },
  otherKWh: { name: 'the other electricity', unit: 'kWh' },
  pencePerKWh: { name: 'the unit price', unit: 'p/kWh' },
};

/** "household.heat.heatLossKW.value" and "heat.heatLossKW" are the same field to a person. */
export function fieldOfPath(path: readonly PropertyKey[]): string {
  const parts = path.map(String);
  if (parts[0] === 'household') parts.shift();
  if (parts.at(-1) === 'value') parts.pop();
  return parts.join('.');
}

export function fieldWords(field: string): FieldWords {
  return FIELDS[field] ?? { name: field === '' ? 'the whole' : `the field ${field}` };
}
