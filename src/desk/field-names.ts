/** Names in words for the fields that a person fills in, and why a figure cannot be taken where the reason is not plain. */
import { DELIVERED_FUELS, FUELS, priceKey } from '../model/shapes/heating.ts';
import { phrase, say } from '../words/say.ts';
import { sayTold } from '../words/say-told.ts';
import { carrierName } from '../words/systems.ts';

interface FieldWords {
  readonly name: string;
  readonly unit?: string;
  readonly reason?: string;
}

const FACTOR_REASON = phrase(
  'Below 1 a heat pump would give less heat than a plain electric heater; above 8 is far beyond what field trials have measured.',
);

const BAND_REASON = phrase('It is counted from the usual room temperature, downwards or upwards, and never below 0.');

const FIELDS: Readonly<Record<string, FieldWords>> = {
  name: { name: phrase('The name of the household') },
  zone: { name: phrase('The time zone') },
  'home.floorAreaM2': { name: phrase('The floor area'), unit: 'm²' },
  'home.people': { name: phrase('The number of people') },
  'home.postcode': { name: phrase('The postcode') },
  'home.regionId': { name: phrase('The climate region') },
  'present.system': { name: phrase('The present heating') },
  'present.efficiency': {
    name: phrase('The efficiency of the present heating'),
    reason: phrase(
      'It is written as a fraction, 0.84 for 84 %. No boiler gives out more than 110 % of the energy in its fuel.',
    ),
  },
  'heat.heatLossKW': {
    name: phrase('The heat loss'),
    unit: 'kW',
    reason: phrase('Every home loses heat in winter; without a figure the field stays empty.'),
  },
  'heat.designOutdoorC': { name: phrase('The outdoor temperature of the heat loss'), unit: '°C' },
  'heat.roomC': { name: phrase('The room temperature'), unit: '°C' },
  'heat.baseC': { name: phrase('The base temperature'), unit: '°C' },
  'heat.certificateSpaceKWh': { name: phrase('The certificate’s figure for heating the rooms'), unit: 'kWh' },
  'heat.certificateWaterKWh': { name: phrase('The certificate’s figure for hot water'), unit: 'kWh' },
  'hotWater.litresPerDay': { name: phrase('The hot water a day'), unit: 'litres' },
  'hotWater.hotC': { name: phrase('The hot water temperature'), unit: '°C' },
  'hotWater.cylinderLitres': { name: phrase('The size of the cylinder'), unit: 'litres' },
  'hotWater.cylinderLossKWhPerDay': { name: phrase('The heat lost from the cylinder'), unit: 'kWh a day' },
  'machine.source': { name: phrase('The source of the heat pump') },
  'machine.spaceFactor': { name: phrase('The seasonal factor for heating the rooms'), reason: FACTOR_REASON },
  'machine.waterFactor': { name: phrase('The seasonal factor for hot water'), reason: FACTOR_REASON },
  'machine.flowC': { name: phrase('The flow temperature'), unit: '°C' },
  'machine.backupShare': { name: phrase('The share of the backup heater') },
  'roof.panels': {
    name: phrase('The list of solar panels'),
    reason: phrase('A home without panels has no “roof” in its file.'),
  },
  'roof.panels.kWp': {
    name: phrase('The peak power of the solar panels'),
    unit: 'kWp',
    reason: phrase('A slope without panels is left out. A home has seldom more than 20 kWp.'),
  },
  'roof.panels.facing': { name: phrase('The direction of the solar panels') },
  'roof.panels.pitchDegrees': {
    name: phrase('The slope of the solar panels'),
    unit: '°',
    reason: phrase('0° lies flat, 90° hangs on a wall.'),
  },
  'roof.panels.shading': { name: phrase('The shade on the solar panels') },
  'roof.panels.shadingFactor': {
    name: phrase('The light that shade leaves'),
    reason: phrase('It is written as a fraction, 0.8 for 80 %.'),
  },
  'roof.exportPencePerKWh': {
    name: phrase('The price of electricity sent out'),
    unit: 'p/kWh',
    reason: phrase('Where nothing is paid for it, write 0.'),
  },
  'roof.exportedOn': { name: phrase('The first day of the solar panels') },
  'battery.usableKWh': {
    name: phrase('The size of the battery'),
    unit: 'kWh',
    reason: phrase('A battery that holds nothing is left out.'),
  },
  'battery.powerKW': { name: phrase('The power of the battery'), unit: 'kW' },
  'battery.roundTripShare': {
    name: phrase('What comes out of the battery'),
    reason: phrase('It is written as a fraction of what goes in, 0.85 for 85 %.'),
  },
  'battery.standbyW': { name: phrase('What the battery draws itself'), unit: 'W' },
  'car.kmPerYear': {
    name: phrase('What the car is driven'),
    unit: 'km',
    reason: phrase('A home without an electric car has no “car” in its file.'),
  },
  'car.kWhPer100Km': { name: phrase('What the car takes for 100 km'), unit: 'kWh' },
  'car.homeShare': {
    name: phrase('The share charged at home'),
    reason: phrase('It is written as a fraction, 0.8 for 80 %.'),
  },
  'car.chargerKW': { name: phrase('The power of the charger'), unit: 'kW' },
  'car.from': { name: phrase('The time from which the car is plugged in') },
  'car.until': { name: phrase('The time until which the car is plugged in') },
  'comfort.downK': { name: phrase('How much cooler the rooms may be'), unit: 'K', reason: BAND_REASON },
  'comfort.upK': { name: phrase('How much warmer the rooms may be'), unit: 'K', reason: BAND_REASON },
  'comfort.timeConstantHours': { name: phrase('The time constant of the home'), unit: 'h' },
  boughtKWh: { name: phrase('The kWh on the bill'), unit: 'kWh' },
  otherKWh: { name: phrase('The other electricity'), unit: 'kWh' },
  pencePerKWh: { name: phrase('The unit price'), unit: 'p/kWh' },
};

/** "household.heat.heatLossKW.value" and "heat.heatLossKW" are the same field to a person. */
export function fieldOfPath(path: readonly PropertyKey[]): string {
  const parts = path.map(String);
  if (parts[0] === 'household') parts.shift();
  if (parts.at(-1) === 'value') parts.pop();
  return parts.join('.');
}

export function fieldWords(field: string): FieldWords {
  const fuel = DELIVERED_FUELS.find((one) => field === `prices.${priceKey(one)}`);
  if (fuel) {
    const name = say('The price of {fuel}', { fuel: carrierName(fuel) });
    return { name, unit: say('p a {unit}', { unit: sayTold(FUELS[fuel].unit) }) };
  }
  // Of several panels or tariffs each has the same fields.
  const known = FIELDS[field.replace(/\.\d+(?=\.|$)/g, '')];
  if (!known) return { name: field === '' ? say('The file') : say('The field {field}', { field }) };
  return { ...known, name: say(known.name), ...(known.reason === undefined ? {} : { reason: say(known.reason) }) };
}
