/**
 * Many made cases, each a line: households, records, bills, readings at the plant, loops, findings and tariffs as a seed
 * throws them, sensible or not. Like `figures-stay.test.ts` it says what the program gives, not what is right; a line that
 * moves names the case to look at.
 */
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { seededRandom } from '../../../build/damage.ts';
import { appraise } from '../../../src/model/appraise.ts';
import { checkBillSums } from '../../../src/model/bill/check-bill-sums.ts';
import { checkBill } from '../../../src/model/bill-gap/check-bill.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
import { yearSlots } from '../../../src/model/calendar/zone.ts';
import { reckonLoop } from '../../../src/model/cycle/household-loop.ts';
import { findInReadings } from '../../../src/model/findings/find-in-readings.ts';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import type { Bill } from '../../../src/model/shapes/bill.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { AgeBand, HomeKind, type Household } from '../../../src/model/shapes/household.ts';
import { RefrigerantName } from '../../../src/model/shapes/refrigerant.ts';
import type { TariffBand } from '../../../src/model/shapes/tariff.ts';
import { checkSite } from '../../../src/model/site-readings/check-site.ts';
import { findTariffFaults } from '../../../src/model/tariff/check-tariff.ts';
import { rateBuckets, standingPencePerDayInclVat } from '../../../src/model/tariff/slot-price.ts';
import { fluids } from '../../../src/reference/brine.ts';
import { reference } from '../../../src/reference/index.ts';
import { refrigerants } from '../../../src/reference/refrigerants.ts';
import { siteBands } from '../../../src/reference/site-bands.ts';
import { sampleBill, sampleEstimate, spreads } from '../bill-gap/sample-estimate.ts';
import { daySeries, madeRecord, periodSeries } from '../demand/fixtures.ts';
import { noise, outdoor, outdoorOn, readingsOf } from '../findings/made-days.ts';
import { fold, numbersIn, short } from './figures-of.ts';
import { makeHousehold, typed } from './make-household.ts';

type Throw = ReturnType<typeof thrower>;
function thrower(seed: number) {
  const random = seededRandom(seed);
  const chance = (share: number) => random() < share;
  const between = (low: number, high: number) => low + (high - low) * random();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const one = <T>(list: readonly T[]): T => list[whole(0, list.length - 1)]!;
  /** There in most cases, else left out. */
  const maybe = <T>(value: T): T | undefined => (chance(0.6) ? value : undefined);
  const given = <T>(value: T) => maybe(typed(value, one(['measured', 'estimated', 'assumed'])));
  return { chance, between, whole, one, maybe, given };
}
/** Fields that were left out are not there, as in a file. */
const filled = <T extends object>(fields: T) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
/** To more places than a figure has, so that a small one among large ones still shows. */
const digest = (value: unknown) =>
  fold(numbersIn(value))
    .map((sum) => Number(sum.toPrecision(12)))
    .join('/');
const codesOf = (list: readonly { readonly code: string }[]) => list.map(({ code }) => code).join(' ');
const lines = (name: string, count: number, line: (dice: Throw, place: number) => string) =>
  Array.from({ length: count }, (_, i) => `${name} ${i}: ${line(thrower(1000 * name.length + i), i)}`);
const stays = (name: string, list: readonly string[]) =>
  expect([...list, ''].join('\n')).toMatchFileSnapshot(join(import.meta.dirname, 'made-cases', `${name}.txt`));

function throwSeries(dice: Throw): Series[] {
  const { between, chance, whole, one } = dice;
  if (chance(0.3)) return [];
  const days = one([365, 730, 250, 90]);
  const first = `2024-0${whole(1, 9)}-01`;
  const changeOn = chance(0.3) ? whole(100, 300) : days;
  const share = between(0.5, 1.4);
  const made = madeRecord({
    first,
    days,
    base: between(0, 14),
    slope: between(0.5, 6),
    baseC: between(11, 19),
    noise: between(0, 8),
    warmerK: between(-2, 2),
  });
  const use = made.use.map((kWh, day) => (chance(0.01) ? null : kWh * (day < changeOn ? 1 : share)));
  const carrier = one(['gas', 'electricity', 'oil'] as const);
  const weather = chance(0.6) ? [made.outdoor] : [];
  if (chance(0.6)) return [daySeries('use', carrier, 'import', first, use), ...weather];
  const step = one([30, 45, 14]);
  const periods = Array.from({ length: Math.floor(days / step) }, (_, i) => ({
    from: addDays(first, i * step),
    to: addDays(first, (i + 1) * step),
    kWh: use.slice(i * step, (i + 1) * step).reduce<number>((sum, kWh) => sum + (kWh ?? 0), 0),
    quality: one(['actual', 'actual', 'estimated'] as const),
    row: i + 1,
  }));
  return [periodSeries('use', carrier, periods), ...weather];
}

function throwHousehold({ one, whole, between, maybe, given, chance }: Throw): Household {
  const usual = makeHousehold();
  return {
    ...usual,
    home: filled({
      kind: one(HomeKind.options),
      floorAreaM2: given(whole(30, 300)),
      ageBand: given(one(AgeBand.options)),
      people: given(whole(1, 8)),
      postcode: maybe(one(['B14', 'TD9', 'TQ9', 'AB1'])),
    }),
    present: filled({
      system: one([
        'gas-condensing',
        'gas-old',
        'oil',
        'lpg',
        'direct-electric',
        'storage',
        'heat-pump',
      ] as const) as 'oil',
      efficiency: given(between(0.6, 0.98)),
      hotWaterFrom: maybe(one(['same', 'immersion', 'electric-shower'] as const)),
      cooksOnGas: maybe(chance(0.5)),
      otherHeat: maybe(one(['none', 'wood stove', 'open fire', 'electric heaters', 'solar thermal'] as const)),
    }),
    heat: filled({
      heatLossKW: given(between(1, 16)),
      designOutdoorC: given(between(-6, 0)),
      roomC: given(between(17, 23)),
      baseC: chance(0.2) ? typed(between(12, 18)) : undefined,
      certificateSpaceKWh: given(whole(2000, 25_000)),
      certificateWaterKWh: given(whole(1000, 4000)),
    }),
    hotWater: filled({
      litresPerDay: chance(0.3) ? typed(whole(40, 300)) : undefined,
      hotC: given(whole(45, 65)),
      cylinderLitres: given(whole(90, 300)),
      pasteuriseWeekly: maybe(chance(0.5)),
    }),
    machine: filled({
      source: one(['ground', 'air'] as const),
      way: one(['quick', 'quick', 'full'] as const),
      emitters: maybe(one(['radiators', 'floor'] as const)),
      spaceFactor: given(between(2, 5)),
      waterFactor: given(between(1.6, 3.5)),
      boundary: one(['H1', 'H2', 'H3', 'H4'] as const),
      flowC: given(whole(30, 60)),
      backupShare: chance(0.2) ? typed(between(0, 0.2)) : undefined,
    }),
    purchase: filled({
      heatPumpGBP: given(whole(4000, 20_000)),
      grantGBP: given(whole(0, 7500)),
      replacementGBP: given(whole(0, 5000)),
      presentYearsLeft: given(whole(0, 15)),
      years: given(whole(1, 30)),
      electricityGrowthPerYear: given(between(-0.03, 0.06)),
      fuelGrowthPerYear: given(between(-0.03, 0.06)),
      discountPerYear: given(between(0, 0.08)),
    }),
  };
}

test('households', async () => {
  const list = lines('household', 90, (dice) => {
    const household = throwHousehold(dice);
    const whatIf = dice.chance(0.3) ? { roomC: dice.between(17, 23), winter: dice.one(['mild', 'cold'] as const) } : {};
    const appraisal = appraise({
      household,
      series: throwSeries(dice),
      reference,
      asOf: '2026-11-25',
      whatIf,
      draws: 64,
    });
    const { demand, machine, systems } = appraisal;
    const three = ({ value, low, high }: { value: number; low: number; high: number }) => [value, low, high].map(short);
    const life = reckonLifetime({ household, appraisal, reference, draws: 64 });
    return [
      `heat ${three(demand.total)} of ${codesOf(demand.estimates.map(({ way }) => ({ code: way })))}`,
      `factor ${three(machine.whole)}`,
      ...systems.map(({ id, cost }) => `${id} ${short(cost.value)}`),
      codesOf(appraisal.questions),
      `all ${digest({ ...appraisal, questions: null })} ${digest(appraisal.questions)} ${digest(life)}`,
    ].join('; ');
  });
  await stays('households', list);
});

test('bills', async () => {
  const list = lines('bill', 150, (dice) => {
    const { one, whole, between, maybe, chance } = dice;
    const names = chance(0.4) ? ['Day', 'Night'] : ['Meter'];
    const fuel = names.length > 1 ? 'electricity' : one(['electricity', 'gas'] as const);
    const from = one(['2026-01-01', '2026-02-11', '2026-05-20']);
    const days = one([30, 31, 91, 92, 14]);
    const rate = one([0.05, 0.2]);
    const included = chance(0.5);
    const standingPence = one([53.2, 30, 61.05]);
    const meters = names.map((name) => ({ name, units: whole(50, 900), pence: one([7.12, 24.5, 31.62, 15]) }));
    const perUnit = fuel === 'gas' ? (1.02264 * 39.5) / 3.6 : 1;
    const swap = chance(0.1) ? meters.length - 1 : 0;
    const charges = meters.map(({ name }, i) => {
      const { units, pence } = meters[(i + swap) % meters.length]!;
      const kWh = Math.round(units * perUnit * 100 * one([1, 1, 1, 1.01])) / 100;
      return filled({ meter: name, kWh: maybe(kWh), pencePerKWh: pence, pence: Math.round(kWh * pence) });
    });
    const charged = days + one([0, 0, 0, 1, -1]);
    const standing = [
      filled({ days: maybe(charged), pencePerDay: standingPence, pence: Math.round(charged * standingPence) }),
    ];
    const adjustments = chance(0.3)
      ? [
          {
            kind: one(['discount', 'credit', 'charge'] as const),
            name: 'one',
            pence: whole(100, 3000),
            vat: one(['before', 'after'] as const),
          },
        ]
      : [];
    const net = [...charges, ...standing].reduce((sum, { pence }) => sum + pence, 0);
    const used = one([rate, rate, rate, 0.05, 0.2]);
    const total = Math.round(included ? net : net * (1 + used)) + one([0, 0, 1, 2, -150]);
    const bill: Bill = {
      fuel,
      from,
      to: addDays(from, days),
      meterUnit: fuel === 'gas' ? one(['m³', 'm³', 'hundred ft³'] as const) : 'kWh',
      meters: meters.map(({ name, units }) => ({ name, opening: 1000, closing: 1000 + units + one([0, 0, 0, 10]) })),
      charges,
      standing,
      adjustments,
      vat: { included, rate },
      totalPence: total,
    };
    const version = (start: string, more: number) => ({
      from: start,
      standingPencePerDay: standingPence + more,
      vat: { rate, included },
      bands: meters.map(
        ({ name, pence }, i): TariffBand => ({
          name,
          pencePerKWh: pence + more,
          times: i === 0 ? 'rest' : [{ from: '00:00', to: '07:00' }],
        }),
      ),
    });
    const tariff = chance(0.5)
      ? {
          ...{ id: 't', name: 't', fuel, origin: 'thrown', grade: 'measured' as const },
          versions: [version('2025-10-01', one([0, 0, 1.5])), ...(chance(0.4) ? [version(addDays(from, 12), 2)] : [])],
        }
      : undefined;
    const gas = { correction: 1.02264, imperialM3PerHundredCubicFeet: 2.83, calorificMJPerM3: between(38.5, 39.9) };
    const checked = checkBillSums({ bill, gas, vatRate: 0.05, tariff });
    const why = checked.explanations.map(
      ({ causes, reach, leftPence }) => `${codesOf(causes)} ${digest(causes)} ${reach} ${short(leftPence)}`,
    );
    return [checked.agrees, short(checked.reckonedPence), checked.differencePence, digest(checked.rows), ...why].join(
      '; ',
    );
  });
  await stays('bills', list);
});

test('later bills', async () => {
  const list = lines('later bill', 120, ({ between, maybe, one, whole }) => {
    const from = `2027-${String(whole(1, 12)).padStart(2, '0')}-01`;
    const bill = sampleBill(
      filled({
        from,
        to: addDays(from, one([14, 28, 61, 92])),
        boughtKWh: between(20, 900),
        pencePerKWh: between(15, 40),
        degreeDays: maybe(between(0, 1400)),
        heatKWh: maybe(between(50, 2500)),
        waterHeatKWh: maybe(between(10, 600)),
        spaceKWh: maybe(between(0, 700)),
        immersionKWh: maybe(between(0, 200)),
        heatPumpKWh: maybe(between(0, 700)),
        readKWh: maybe(between(0, 900)),
        billedStandingPence: maybe(whole(500, 5000)),
        totalPence: maybe(whole(500, 40_000)),
        estimatedStandingPencePerDay: maybe(between(30, 70)),
        otherKWh: one([0, 0, 60]),
        meter: one(['heat-pump', 'whole-house'] as const),
        readings: one(['actual', 'estimated', 'unknown'] as const),
      }),
    );
    const meanC = Array.from({ length: 12 }, () => between(1, 18));
    const estimate = sampleEstimate({ price: (month) => 20 + month, meanC });
    const result = checkBill({ estimate, bill, reference: spreads, id: 'c', madeOn: '' });
    const parts = result.parts.map(
      ({ cause, joined = [], pence }) => `${[cause, ...joined].join('+')} ${short(pence)}`,
    );
    return [result.verdict, ...parts, `all ${digest(result)}`].join('; ');
  });
  await stays('later-bills', list);
});

test('readings at the plant, and the loops they belong to', async () => {
  const tables = { refrigerants, fluids, bands: siteBands };
  const site = lines('site', 120, ({ between, maybe, one, whole }) => {
    const [brineInC, flowC] = [between(-4, 12), between(28, 62)];
    const bars = (low: number, high: number) => {
      const basis = one(['gauge', 'absolute'] as const);
      const unit = one(['bar', 'psi', 'kPa'] as const);
      const value = (between(low, high) - (basis === 'gauge' ? 1 : 0)) * { bar: 1, psi: 14.5, kPa: 100 }[unit];
      return { value, unit, basis };
    };
    const readings = filled({
      brineInC: maybe(brineInC),
      brineOutC: maybe(brineInC - between(-0.5, 6)),
      brineFlowLPerMin: maybe(between(8, 45)),
      coldestBrineC: maybe(between(-8, 3)),
      glycol: maybe({
        kind: one(['ethylene', 'propylene'] as const),
        percent: whole(5, 45),
        basis: one(['mass', 'volume'] as const),
      }),
      flowC: maybe(flowC),
      returnC: maybe(flowC - between(-1, 11)),
      waterFlowLPerMin: maybe(between(6, 40)),
      inputKW: maybe(between(0.6, 4)),
      refrigerant: maybe(one(RefrigerantName.options)),
      suction: maybe(bars(1.6, 7)),
      discharge: maybe(bars(9, 28)),
      suctionC: maybe(between(-12, 16)),
      dischargeC: maybe(between(45, 115)),
      liquidC: maybe(flowC - between(-4, 10)),
    });
    const found = checkSite(readings, tables, null);
    const outside = found.values.filter(({ standing }) => standing === 'below' || standing === 'above');
    const names = outside.map(({ quantity, standing }) => `${quantity} ${standing}`).join(' ');
    return [
      names,
      codesOf(found.remarks),
      digest(found.values),
      JSON.stringify(found.causes),
      codesOf(found.gaps.map(({ quantity }) => ({ code: quantity }))),
    ].join('; ');
  });
  const loops = lines('loop', 60, ({ between, one, chance }) => {
    const brineInC = between(-8, 12);
    const flowC = between(28, 62);
    return digest(
      reckonLoop({
        refrigerant: refrigerants[one(RefrigerantName.options)],
        brineInC,
        brineOutC: brineInC - between(-0.2, 5),
        flowC,
        returnC: flowC - between(-0.2, 10),
        heatKW: between(1, 14),
        compression: chance(0.5)
          ? { kind: 'efficiency', isentropic: between(0.4, 0.9) }
          : { kind: 'cop', cop: between(2, 6) },
      }),
    );
  });
  await stays('plants', [...site, ...loops]);
});

test('findings', async () => {
  const list = lines('finding', 36, ({ between, chance, one, whole }) => {
    const days = one([120, 365, 200]);
    const meter = one(['heat-pump', 'whole-house'] as const);
    const minutes = one([30, 30, 60]);
    const [start, power, from, cycles] = [whole(20, 90), between(1, 8), whole(0, 20), whole(1, 6)];
    const faults = [
      (d: number, h: number) => (d >= start && d < start + 45 && h >= from && h < from + 2 ? power : 0),
      (d: number, h: number) => (d % 7 === 3 && h >= from && h < from + 2 ? power : 0),
      (d: number) => (d > start ? between(0.149, 0.151) : 0),
      (_: number, h: number) => (Math.floor(h) % Math.ceil(24 / cycles) === 0 ? 1.5 : 0),
      (d: number, h: number) => (outdoorOn(d) < 8 && Math.floor(h * 2) % 2 === 0 ? power / 2 : 0),
      (d: number) => (d > start && outdoorOn(d) < 9 ? between(0.49, 0.51) : 0),
    ].filter(() => chance(0.4));
    const shape = one([() => 1, (h: number) => (h < 5 ? 0.2 : h < 8 ? 2.2 : 1), (h: number) => (h < 6 ? 1.6 : 1)]);
    const warmest = between(12, 21);
    const kW = (d: number, h: number) =>
      0.08 +
      Math.max(0, warmest - outdoorOn(d)) * 0.07 * shape(h) * (1 + 0.1 * noise(d * 48 + h * 2)) +
      faults.reduce((sum, fault) => sum + fault(d, h), 0);
    const bands: TariffBand[] = [
      { name: 'night', pencePerKWh: 12, times: [{ from: '00:30', to: '05:30' }] },
      { name: 'day', pencePerKWh: 30, times: 'rest' },
    ];
    const version = { from: '2025-01-01', standingPencePerDay: 50, vat: { rate: 0.05, included: true }, bands };
    const found = findInReadings({
      readings: [readingsOf(days, kW, { meter, minutes })],
      ...(chance(0.8) ? { outdoor: outdoor(days) } : {}),
      prices: { pencePerKWh: 25, ...(chance(0.5) ? { versions: [version] } : {}) },
    });
    return found
      .map((one) => `${one.code} ${one.from} ${one.to} ${[one.kWh, one.pence, one.sure].map(short)} ${digest(one)}`)
      .join('; ');
  });
  await stays('findings', list);
});

test('tariffs', async () => {
  const slots = yearSlots(2026, 'Europe/London');
  const list = lines('tariff', 60, ({ between, chance, one, whole, maybe }) => {
    const clock = () => `${String(whole(0, 23)).padStart(2, '0')}:${one(['00', '30'])}`;
    const bands: TariffBand[] = [
      { name: 'rest', pencePerKWh: between(3, 70), times: 'rest' },
      ...Array.from(
        { length: whole(0, 3) },
        (_, i): TariffBand => ({
          name: `band ${i}`,
          pencePerKWh: between(3, 70),
          times: [
            filled({
              from: clock(),
              to: clock(),
              months: chance(0.3) ? [whole(1, 12), whole(1, 12)] : undefined,
              days: chance(0.3) ? [one(['mon', 'sat', 'sun', 'bank-holiday'] as const)] : undefined,
            }),
          ],
        }),
      ),
    ];
    const version = filled({
      from: '2026-01-01',
      standingPencePerDay: between(-5, 150),
      standingPencePerMonth: chance(0.2) ? whole(500, 3000) : undefined,
      vat: { rate: one([0, 0.05, 0.2, 0.1]), included: chance(0.5) },
      bankHolidays: maybe(one(['england-and-wales', 'scotland'] as const)),
      exportPencePerKWh: chance(0.3) ? between(5, 80) : undefined,
      bands,
    });
    const faults = findTariffFaults({
      ...{ id: 't', name: 't', fuel: one(['electricity', 'gas'] as const), origin: 'thrown', grade: 'measured' },
      versions: [version],
    });
    const { pencePerKWh, bucketOfSlot } = rateBuckets(version, slots);
    let pence = 0;
    bucketOfSlot.forEach((bucket, slot) => {
      pence += pencePerKWh[bucket]! * ((slot * 7919) % 97);
    });
    return `${faults.map(({ code, data }) => `${code} ${digest(data)}`).join(' ')}; ${short(pence)}; ${short(standingPencePerDayInclVat(version))}`;
  });
  await stays('tariffs', list);
});
