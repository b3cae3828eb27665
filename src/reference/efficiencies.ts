/** Seasonal efficiencies of the other ways of heating, on gross calorific value, with the spread met in homes. */
import type { Reference } from '../model/shapes/reference.ts';

const TABLE_4B = 'SAP Table 4b (2009 edition transcription; that 10.2 has the same codes is from memory)';
const TABLE_4A = 'SAP Table 4a (2009 edition transcription)';
const FIELD_2009 =
  'In-situ monitoring of efficiencies of condensing boilers (for EST and DECC, 2009: means of 82.5 and 85.3 %, from memory)';
const TABLE_4F = 'SAP 2012 Table 4f, heating pump of unknown date 115 kWh and flue fan 45 kWh';

const electricPump = (value: number, source: string) => ({
  value,
  unit: 'kWh a year',
  source,
  provenance: 'memory' as const,
});

export const efficiency: Reference['efficiency'] = {
  'gas-condensing': {
    space: {
      middle: 0.84,
      low: 0.8,
      high: 0.89,
      source: `${TABLE_4B}, codes 102 and 104; low and high about the field trial, ${FIELD_2009}`,
      provenance: 'read',
    },
    water: { middle: 0.75, low: 0.68, high: 0.82, source: `${TABLE_4B}, code 104`, provenance: 'read' },
    ownElectricityKWh: electricPump(160, TABLE_4F),
  },
  'gas-old': {
    space: {
      middle: 0.72,
      low: 0.64,
      high: 0.76,
      source: `${TABLE_4B}, middle of codes 101 (74 %) and 105 (70 %), low and high from codes 109 to 117`,
      provenance: 'read',
    },
    water: {
      middle: 0.62,
      low: 0.54,
      high: 0.66,
      source: `${TABLE_4B}, middle of codes 101 (64 %) and 105 (60 %)`,
      provenance: 'read',
    },
    ownElectricityKWh: electricPump(160, TABLE_4F),
  },
  oil: {
    space: {
      middle: 0.84,
      low: 0.79,
      high: 0.88,
      source: `${TABLE_4B}, code 127; low and high from codes 126 and 130`,
      provenance: 'read',
    },
    water: { middle: 0.72, low: 0.66, high: 0.8, source: `${TABLE_4B}, code 127`, provenance: 'read' },
    ownElectricityKWh: electricPump(215, 'SAP 2012 Table 4f, heating pump 115 kWh and oil boiler 100 kWh'),
  },
  lpg: {
    space: {
      middle: 0.84,
      low: 0.8,
      high: 0.89,
      source: `${TABLE_4B}, codes 102 and 104 (gas rows apply to LPG)`,
      provenance: 'read',
    },
    water: { middle: 0.75, low: 0.68, high: 0.82, source: `${TABLE_4B}, code 104`, provenance: 'read' },
    ownElectricityKWh: electricPump(160, TABLE_4F),
  },
  // By net calorific value, as the energy in the pellets is. 63 % of gross is 68 % of net, which is 1.08 times smaller.
  pellets: {
    space: {
      middle: 0.78,
      low: 0.68,
      high: 0.88,
      source: `middle of ${TABLE_4A}, code 155 (63 % of gross, 68 % of net), and of almost 90 % (Centre for Alternative Technology, page on the price of biomass fuel)`,
      provenance: 'computed',
    },
    water: {
      middle: 0.72,
      low: 0.6,
      high: 0.84,
      source: 'as for rooms less the starts and stops of summer; a judgement, common practice, no source',
      provenance: 'common practice, no source',
    },
    ownElectricityKWh: electricPump(
      245,
      'SAP 2012 Table 4f, heating pump 115 kWh; feed, fan and ignition about 1 % of the heat, 130 kWh, common practice',
    ),
  },
  'direct-electric': {
    space: { middle: 1, low: 0.99, high: 1, source: `${TABLE_4A}, code 691`, provenance: 'read' },
    water: { middle: 1, low: 0.99, high: 1, source: `${TABLE_4A}, code 903`, provenance: 'read' },
    ownElectricityKWh: {
      value: 0,
      unit: 'kWh a year',
      source: 'no pump: panel heaters and an immersion heater',
      provenance: 'computed',
    },
  },
  // At the meter a storage heater gives back every unit. What it loses is control: heat leaves it when nobody wants it.
  // A twentieth is taken off for that; the dearer boost of the evening is priced in the comparison.
  storage: {
    space: {
      middle: 0.95,
      low: 0.85,
      high: 1,
      source: `${TABLE_4A}, codes 401 to 404: 100 % at the meter, poorer control; 5 % charge losses are a judgement`,
      provenance: 'memory',
    },
    water: {
      middle: 1,
      low: 0.97,
      high: 1,
      source: `${TABLE_4A}, code 903; the cylinder's standing loss is in the hot-water demand`,
      provenance: 'read',
    },
    ownElectricityKWh: {
      value: 0,
      unit: 'kWh a year',
      source: 'no pump; fans of newer storage heaters are left out',
      provenance: 'computed',
    },
  },
};
