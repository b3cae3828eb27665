/** Every row of the tables of systems and fuels, so that a new one is tested without being named here. */
import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { fieldWords } from '../../../src/desk/field-names.ts';
import { intakeContext } from '../../../src/desk/take-in.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { findRecord } from '../../../src/model/demand/record.ts';
import { Appraisal, priceOf } from '../../../src/model/shapes/appraisal.ts';
import {
  DELIVERED_FUELS,
  type DeliveredFuel,
  FUEL_IDS,
  FUELS,
  HEATERS,
  type Heater,
  PRICED_CARRIERS,
  priceKey,
  SALE_UNITS,
  SYSTEMS,
  type System,
  serviceKey,
  unitsOf,
} from '../../../src/model/shapes/heating.ts';
import { Household } from '../../../src/model/shapes/household.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { reference } from '../../../src/reference/index.ts';
import { unitsFor } from '../../../src/screens/evidence/typed-units.ts';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import {
  carrierInFull,
  carrierName,
  serviceName,
  systemChoice,
  systemInSentence,
  systemName,
} from '../../../src/words/systems.ts';
import { EVERY_WAY, makeHousehold, typed } from '../appraisal/make-household.ts';
import { larchRise } from '../leave-behind/larch-rise.ts';
import { compareBy, makeDemand } from './make-demand.ts';

const demand = makeDemand(12_000, 2100);
const ALL = Object.keys(SYSTEMS) as System[];
const presentOf = (system: Heater, more: Parameters<typeof makeHousehold>[0] = {}, draws = 0) =>
  compareBy(makeHousehold({ ...more, present: { ...more.present, system } }), demand, { draws });
const costNow = (...input: Parameters<typeof presentOf>) =>
  presentOf(...input).systems.find(({ id }) => id === 'present')!;

test('each has its own place in what households ask about', () => {
  expect(new Set(ALL.map((system) => SYSTEMS[system].asked)).size).toBe(ALL.length);
});

describe.each(HEATERS)('%s as it stands in a home', (system) => {
  const { carrier, service } = SYSTEMS[system];

  test('buys heat over its efficiency, and emits what its carrier does', () => {
    const { efficiency, carbonKgPerKWh } = reference;
    const { bought, ownElectricityKWh, carbonKg } = costNow(system);
    const { space, water, ownElectricityKWh: own } = efficiency[system];
    const mainKWh = 12_000 / space.middle + 2100 / water.middle;
    expect(bought.value).toBeCloseTo(mainKWh + own.value, 6);
    expect(ownElectricityKWh).toBeCloseTo(own.value, 6);
    const expected = mainKWh * carbonKgPerKWh[carrier].value + own.value * carbonKgPerKWh.electricity.value;
    expect(carbonKg.value).toBeCloseTo(expected, 6);
  });

  test('its efficiency lies between its low and its high, and every value has a source', () => {
    const { space, water, ownElectricityKWh } = reference.efficiency[system];
    for (const { low, middle, high, source } of [space, water]) {
      expect(low).toBeGreaterThan(0.3);
      expect(middle).toBeGreaterThanOrEqual(low);
      expect(high).toBeGreaterThanOrEqual(middle);
      expect(source).not.toBe('');
    }
    for (const { source } of [ownElectricityKWh, reference.service[service], reference.carbonKgPerKWh[carrier]])
      expect(source).not.toBe('');
  });

  test('a better efficiency never costs more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (efficiency, more) => {
          const at = (value: number) => costNow(system, { present: { efficiency: typed(value) } }).cost.value;
          expect(at(efficiency + more)).toBeLessThanOrEqual(at(efficiency) + 1e-6);
        },
      ),
      { numRuns: 20 },
    );
  });

  test('its service is what was typed', () => {
    if (service === 'electric') return expect(costNow(system).split.servicePence).toBe(0);
    const key = serviceKey(service);
    expect(costNow(system, { prices: { [key]: typed(222) } }).split.servicePence).toBeCloseTo(22_200, 6);
  });

  test('ranges hold the value, and its price moves its cost', () => {
    const { systems, drivers } = presentOf(system, {}, 512);
    const { cost } = systems.find(({ id }) => id === 'present')!;
    expect(cost.low).toBeLessThan(cost.value);
    expect(cost.high).toBeGreaterThan(cost.value);
    expect(drivers.some(({ input }) => input === 'other-fuel-price')).toBe(carrier !== 'electricity');
  });

  test('the household file takes it', () => {
    expect(Household.parse(makeHousehold({ present: { system } })).present.system).toBe(system);
  });

  test('the installer can put it beside the others where it is not there already', () => {
    const other = HEATERS.find((one) => one !== system)!;
    const offered = presentOf(other, { beside: EVERY_WAY }).systems.some(({ id }) => id === system);
    expect(offered).toBe(SYSTEMS[system].offered);
  });
});

describe.each(DELIVERED_FUELS)('%s, bought by amount', (fuel: DeliveredFuel) => {
  const heater = HEATERS.find((one) => SYSTEMS[one].carrier === fuel)!;

  test('its price goes by the energy in its unit', () => {
    const pence = 1.5 * reference.deliveredPrices.find((price) => price.fuel === fuel)!.pencePerUnit;
    const present = costNow(heater, { prices: { [priceKey(fuel)]: typed(pence) } });
    const rate = present.rates.find(({ name }) => sayTold(name) === carrierName(fuel))!;
    expect(rate.pencePerKWh).toBeCloseTo(pence / kWhPerUnit[fuel].value, 9);
    const dearer = costNow(heater, { prices: { [priceKey(fuel)]: typed(2 * pence) } });
    expect(dearer.cost.value - present.cost.value).toBeCloseTo(rate.kWh * rate.pencePerKWh, 6);
  });

  test('an estimate kept before it was known still reads, and says nothing of its price', () => {
    const { [fuel]: _, [`${fuel}PencePerKWh` as const]: __, ...prices } = larchRise().prices;
    const read = Appraisal.parse({ ...larchRise(), prices });
    expect(priceOf(read.prices, fuel)).toBeUndefined();
    expect(priceOf(read.prices, 'gas')).toBeDefined();
  });

  test.each(unitsOf(fuel))('deliveries in %s are read from a file and typed alike', (unit) => {
    const { count, many } = SALE_UNITS[unit];
    const rows = ['2025-01-10,20', '2025-04-02,12', '2025-10-20,9', '2026-01-15,21'];
    const text = `Date,${carrierInFull(fuel)} delivered (${many})\n${rows.join('\n')}\n`;
    const { preview } = readFile(
      'slips.csv',
      new TextEncoder().encode(text),
      {},
      intakeContext('Europe/London', '2026-11-25'),
    );
    expect(preview.series.map((series) => series.carrier)).toEqual([fuel]);
    expect(preview.shape).toBe('deliveries');
    const perUnit = kWhPerUnit[fuel].value * count;
    expect(preview.series[0]!.total).toBeCloseTo((12 + 9 + 21) * perUnit, 6);
    expect(preview.remarks.filter(({ weight }) => weight !== 'note').map(({ code }) => code)).toEqual([]);
    expect(findRecord(heater, preview.series)!.deliveries).toBe(true);
    const typedUnit = unitsFor(fuel, reference).find(({ name }) => name === many)!;
    expect(typedUnit.toKWh(12)).toBeCloseTo(12 * perUnit, 9);
  });

  test('an amount in its unit that nobody names is a question', () => {
    const text = `Date,Delivered (${SALE_UNITS[unitsOf(fuel)[0]!].many})\n2025-01-10,20\n2025-04-02,12\n2025-10-20,9\n`;
    const { preview } = readFile(
      'slips.csv',
      new TextEncoder().encode(text),
      {},
      intakeContext('Europe/London', '2026-11-25'),
    );
    expect(preview.remarks).toContainEqual(expect.objectContaining({ code: 'carrier-guessed', weight: 'question' }));
  });
});

describe('words for every row, in English and in German', () => {
  afterEach(() => speak({ language: 'en-GB', currency: 'GBP' }));
  const said = () => [
    ...ALL.flatMap((system) => [systemName(system, system), systemInSentence(system, system)]),
    ...HEATERS.flatMap((system) => [
      systemName('present', system),
      systemInSentence('present', system),
      systemChoice(system),
    ]),
    ...FUEL_IDS.map((fuel) => serviceName(fuel)),
    ...PRICED_CARRIERS.map((carrier) => carrierName(carrier)),
    ...DELIVERED_FUELS.flatMap((fuel) => [
      sayTold(`Assumed ${FUELS[fuel].written} price, January 2026`),
      sayTold(`Price of a unit of ${FUELS[fuel].written}`),
      fieldWords(`prices.${priceKey(fuel)}`).unit!,
      ...unitsOf(fuel).map((unit) => sayTold(tell('so-much-of', { amount: 12, unit: SALE_UNITS[unit].many }))),
    ]),
  ];
  test('none is missing, and German is not English', () => {
    const english = said();
    speak({ language: 'de-DE', currency: 'EUR' }, german);
    const translated = said();
    for (const [i, text] of english.entries()) {
      expect(text).toMatch(/\S/);
      expect(['Heating, as now', 'Other heating', 'another way of heating', 'the heating you have now']).not.toContain(
        text,
      );
      if (!/^(gas|12 kg)$/i.test(text)) expect(translated[i], text).not.toBe(text);
    }
  });
});
