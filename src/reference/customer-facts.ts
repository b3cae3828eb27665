/** What the answers to customers' questions rest on outside the home. Looked up on the day named; what is law or money grows old. */
import type { CustomerFact, CustomerFacts, FactsByCountry } from '../model/shapes/customer-question.ts';

const LOOKED_UP = '2026-11-28';
const QUARTER = 90;
const YEAR = 365;

const read = (source: string, oldAfterDays: number | null = null): CustomerFact => ({
  source,
  on: LOOKED_UP,
  provenance: 'read',
  oldAfterDays,
});
const recalled = (source: string, oldAfterDays: number | null = null): CustomerFact => ({
  ...read(source, oldAfterDays),
  provenance: 'memory',
});
const computed = (source: string): CustomerFact => ({ ...read(source), provenance: 'computed' });

const everywhere = {
  warm: read('Fraunhofer ISE, WPsmart im Bestand, 56 older houses, 2020 (shk-at-work.de)'),
  radiators: computed('EN 442: label at 50 K above the room, exponent 1.3 (from memory), 5 K between flow and return'),
  'hot-water': computed('litres × kelvins × 4.18 kJ, no losses; mixed with mains water of 10 °C to 40 °C'),
  'water-safe': read('Health and Safety Executive, hot and cold water systems (hse.gov.uk/legionnaires)', YEAR),
  'power-cut': recalled('105 and the priority services register: chesterfield.gov.uk; restart of the machine', YEAR),
  lasting: recalled('life of machine and pipes'),
  service: read('gov.uk, checking F-gas equipment for leaks: yearly from 5 t CO₂e, or 10 t if sealed', YEAR),
  'gas-hob': read('gov.uk, Boiler Upgrade Scheme, what you can get (no grant beside a gas boiler)', QUARTER),
  stove: recalled('room sensor beside a stove; second coil for solar hot water'),
  solar: computed('months of this home’s own estimate'),
  car: read('Energy Networks Association, connecting heat pumps and chargers: above 60 A ask first', YEAR),
  away: recalled('frost guard; flushing after absence: hse.gov.uk/legionnaires'),
  'minus-ten': {
    ...read('Electrification of Heat, interim, March 2023: median 2.80 over the year, 2.44 on cold days; Joule 2023'),
    values: { coldDay: 2.44, year: 2.8 },
  },
  value: read('Department of Energy and Climate Change, energy labels and house prices, July 2013'),
  complain: read('Energy Saving Trust, Green Heat Toolkit, protecting consumers, 2025', YEAR),
  dearer: computed('this program’s own ranges'),
} satisfies Partial<CustomerFacts>;

/** VDI 4640-2 of 2001, W/m for 1,800 to 2,400 h: dry sediment 25/20, usual rock or wet sediment 60/50. Trenches from memory. */
const YIELDS = { leastWPerM: 20, mostWPerM: 60, leastWPerM2: 10, mostWPerM2: 40 };
const ground: CustomerFact = {
  ...read(
    'VDI 4640-2 of 2001 as quoted by the survey of Saxony-Anhalt (20 to 60 W a metre); Energy Saving Trust; trenches from memory',
  ),
  values: YIELDS,
};

export const customerFacts: FactsByCountry = {
  GB: {
    ...everywhere,
    noise: read('Statutory instrument 2025/560, in force on 29 May 2025 (England)', YEAR),
    grant: {
      ...read(
        'gov.uk, Boiler Upgrade Scheme; notice of 9 June 2026; for homes without gas £9,000, second hand',
        QUARTER,
      ),
      values: { grant: 7500, offGas: 9000 },
    },
    garden: ground,
    permission: read(
      'gov.uk, closed-loop ground source exemption, September 2024; statutory instrument 2025/560',
      YEAR,
    ),
    cancel: read('Consumer Contracts Regulations 2013 (uksi/2013/3134)', YEAR),
  },
  DE: {
    ...everywhere,
    noise: read('TA Lärm as quoted by LAI, August 2023: 35 to 40 dB(A) at night outside the window', YEAR),
    grant: {
      ...read('KfW 458, copies of 2024 to 2026 (kfw.de, interhyp.de)', QUARTER),
      values: { basePercent: 30, mostPercent: 70, ceiling: 30_000 },
    },
    garden: ground,
    permission: read(
      'WHG § 49 as quoted by Schwabach and Potsdam; mining law below 100 m; TA Lärm (LAI, August 2023)',
      YEAR,
    ),
    cancel: read('BGB §§ 312b, 312g, 355', YEAR),
  },
};
