import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { Comfort, ElectricCar, HomeBattery, PanelsOnSlope, Roof } from '../../../src/model/shapes/choices.ts';
import { SearchAnswer, TypedAnswer } from '../../../src/model/shapes/guided-search.ts';
import {
  emptyHousehold,
  FullMachine,
  GroundArray,
  Heat,
  Home,
  HotWater,
  Household,
  LetterNames,
  Machine,
  Offer,
  Present,
  Prices,
  Purchase,
  StandingPrice,
} from '../../../src/model/shapes/household.ts';
import { RatedPoint } from '../../../src/model/shapes/rated-point.ts';
import { SiteReadings, SiteVisit } from '../../../src/model/shapes/site-readings.ts';
import {
  DemandCharge,
  PriceSeries,
  Tariff,
  TariffBand,
  TariffBlocks,
  TariffVersion,
  TariffWindow,
} from '../../../src/model/shapes/tariff.ts';

type Fields = Readonly<Record<string, readonly [least: number, most: number]>>;
/** `over`: from more than so much. */
const over = Number.EPSILON;
const typed = (value: unknown) => ({ value, grade: 'measured', origin: 'typed' });
const point = { sourceC: 0, flowC: 35, cop: 4 };
const celsius = [-40, 160] as const;
const pounds = [0, 500_000] as const;
const growth = [-0.1, 0.2] as const;

describe('what a field takes, and what lies just beyond', () => {
  const plain: [z.ZodObject, Fields][] = [
    [Home, { regionId: [0, 199] }],
    [RatedPoint, { sourceC: [-30, 40], flowC: [20, 80], cop: [1, 12], outputKW: [over, 200] }],
    [PanelsOnSlope, { kWp: [over, 100], pitchDegrees: [0, 90], shadingFactor: [over, 1] }],
    [HomeBattery, { usableKWh: [over, 200] }],
    [Comfort, { downK: [0, 5], upK: [0, 3], timeConstantHours: [3, 400] }],
    [
      SiteReadings,
      {
        brineInC: celsius,
        brineFlowLPerMin: [over, 1000],
        waterFlowLPerMin: [over, 1000],
        inputKW: [over, 200],
        currentA: [over, 400],
        valveOpenPercent: [0, 100],
      },
    ],
    [SiteReadings.shape.suction.unwrap(), { value: [-1, 6000] }],
    [SiteReadings.shape.glycol.unwrap(), { percent: [0, 60] }],
    [TariffBlocks.shape.steps.element, { upToKWh: [over, 1_000_000], pencePerKWh: [-200, 500] }],
    [TariffBand, { pencePerKWh: [-200, 500] }],
    [DemandCharge, { pencePerKWPerMonth: [0, 10_000], agreedKW: [over, 1000] }],
    [
      TariffVersion,
      { standingPencePerDay: [0, 1000], standingPencePerMonth: [0, 30_000], exportPencePerKWh: [-200, 500] },
    ],
    [TariffVersion.shape.vat, { rate: [0, 0.3] }],
    [z.object({ month: TariffWindow.shape.months.unwrap().element }), { month: [1, 12] }],
    [z.object({ pence: PriceSeries.shape.days.element.shape.pencePerKWh.element }), { pence: [-1000, 1000] }],
  ];
  const withGrade: [z.ZodObject, Fields][] = [
    [Home, { floorAreaM2: [over, 5000], people: [1, 30] }],
    [Present, { efficiency: [0.2, 1.1] }],
    [
      Heat,
      {
        heatLossKW: [over, 200],
        designOutdoorC: [-30, 15],
        roomC: [10, 30],
        baseC: [5, 25],
        certificateSpaceKWh: [0, 500_000],
        certificateWaterKWh: [0, 50_000],
      },
    ],
    [
      HotWater,
      { litresPerDay: [over, 3000], hotC: [35, 80], cylinderLitres: [over, 2000], cylinderLossKWhPerDay: [0, 20] },
    ],
    [GroundArray, { depthM: [0.3, 400], dropK: [0, 25], size: [0.2, 5] }],
    [
      FullMachine,
      {
        installedShare: [0.5, 1.1],
        capacityKW: [over, 200],
        leastShare: [0.1, 1],
        curveShiftK: [-10, 25],
        spreadK: [1, 20],
        sourcePumpW: [0, 5000],
        circulatorW: [0, 2000],
        standbyW: [0, 500],
      },
    ],
    [Machine, { spaceFactor: [1, 8], waterFactor: [1, 8], flowC: [25, 75], backupShare: [0, 1] }],
    [
      Prices,
      {
        oilPencePerLitre: [over, 500],
        pelletsPencePerKg: [over, 500],
        serviceHeatPumpGBP: [0, 5000],
        serviceGasGBP: [0, 5000],
      },
    ],
    [
      Purchase,
      {
        heatPumpGBP: pounds,
        grantGBP: pounds,
        replacementGBP: pounds,
        renewalGBP: pounds,
        presentYearsLeft: [0, 40],
        loanYears: [1, 40],
        loanPerYear: [0, 0.3],
        heatPumpLifeYears: [5, 50],
        replacementLifeYears: [5, 50],
        years: [1, 40],
        electricityGrowthPerYear: growth,
        fuelGrowthPerYear: growth,
        growthSpreadPerYear: [0, 0.1],
        discountPerYear: [0, 0.2],
      },
    ],
    [Roof, { exportPencePerKWh: [0, 100] }],
    [HomeBattery, { powerKW: [over, 100], roundTripShare: [0.3, 1], standbyW: [0, 500] }],
    [ElectricCar, { kmPerYear: [0, 150_000], kWhPer100Km: [5, 60], homeShare: [0, 1], chargerKW: [1, 22] }],
  ];
  const rows = [
    ...plain.map(([shape, fields]) => [shape, fields, (value: number): unknown => value] as const),
    ...withGrade.map(([shape, fields]) => [shape, fields, typed] as const),
  ].flatMap(([shape, fields, write]) =>
    Object.entries(fields).map(([name, limits]) => [name, ...limits, shape.shape[name]!, write] as const),
  );
  test.each(rows)('%s from %d to %d', (_, least, most, field, write) => {
    const takes = (value: number) => field.safeParse(write(value)).success;
    // A field of whole numbers takes no halves.
    const step = takes(most - 0.005) ? 0.005 : 1;
    const below = least === over ? [0, 0.01] : [least - step, least];
    expect([...below, most, most + step].map(takes)).toEqual([false, true, true, false]);
  });

  test.each([
    ['a letter’s name', LetterNames.shape.to, 0, 80],
    ['whom to ring', LetterNames.shape.ringName, 0, 80],
    ['a telephone', LetterNames.shape.ringTelephone, 0, 40],
    ['a postcode', Home.shape.postcode, 0, 10],
    ['why a price stands', StandingPrice.shape.said, 0, 400],
    ['an offer', Offer.shape.id, 1, 64],
    ['an offer’s name', Offer.shape.name, 1, 80],
    ['a household', Household.shape.id, 1, 64],
    ['its name', Household.shape.name, 1, 120],
    ['its number', Household.shape.jobNumber, 0, 60],
    ['its notes', Household.shape.notes, 0, 20_000],
    ['the estimate taken', Household.shape.taken.unwrap().shape.estimateId, 0, 64],
    ['a page left out', Household.shape.walk.unwrap().shape.leaveOut.element, 0, 20],
    ['a page in order', Household.shape.walk.unwrap().shape.order.unwrap().element, 0, 20],
    ['a question', Household.shape.asked.unwrap().element, 0, 20],
    ['a visit', SiteVisit.shape.id, 1, 64],
    ['its note', SiteVisit.shape.note, 0, 2000],
    ['a band', TariffBand.shape.name, 1, Number.POSITIVE_INFINITY],
    ['a tariff', Tariff.shape.id, 1, Number.POSITIVE_INFINITY],
    ['its name', Tariff.shape.name, 1, 120],
    ['an outcome', SearchAnswer.shape.outcome, 0, 40],
    ['what was read', SearchAnswer.shape.read, 0, 120],
    ['what was read just now', TypedAnswer.shape.read, 0, 120],
  ])('%s has so many letters', (_, field, least, most) => {
    const takes = (letters: number) => field.safeParse('x'.repeat(letters)).success;
    expect(takes(least)).toBe(true);
    if (least > 0) expect(takes(least - 1)).toBe(false);
    if (most < Number.POSITIVE_INFINITY) expect([takes(most), takes(most + 1)]).toEqual([true, false]);
  });

  const band = { name: 'all', pencePerKWh: 20, times: 'rest' };
  const step = { upToKWh: 5, pencePerKWh: 20 };
  const offer = { id: 'a', name: 'b', machine: { source: 'air' }, purchase: {} };
  const tariff = {
    id: 'a',
    name: 'b',
    fuel: 'gas',
    origin: '',
    grade: 'measured',
    versions: [{ from: '2026-01-01', standingPencePerDay: 5, vat: { rate: 0.05, included: true }, bands: [band] }],
  };
  const many = Number.POSITIVE_INFINITY;
  test.each<readonly [string, z.ZodType, unknown, number, number]>([
    ['rated points', FullMachine.shape.ratedPoints.unwrap().shape.value, point, 1, 40],
    ['slopes', Roof.shape.panels, { kWp: 1, facing: 'S', pitchDegrees: 3, shading: 'little' }, 1, 6],
    ['prices that stand', Prices.shape.stand, { price: 'gas', on: '2026-01-01' }, 0, 10],
    ['tariffs', Household.shape.tariffs, tariff, 0, 50],
    ['other offers', Household.shape.otherOffers, offer, 0, 11],
    ['visits', Household.shape.siteReadings, { id: 'v', date: '2026-01-01', readings: {} }, 0, 200],
    ['pages left out', Household.shape.walk.unwrap().shape.leaveOut, 'p', 0, 20],
    ['pages in order', Household.shape.walk.unwrap().shape.order, 'p', 0, 20],
    ['questions', Household.shape.asked, 'q', 0, 40],
    ['months of a time', TariffWindow.shape.months, 5, 1, many],
    ['days of a time', TariffWindow.shape.days, 'mon', 1, many],
    ['times of a band', TariffBand.shape.times, { from: '00:00', to: '05:00' }, 1, many],
    ['steps', TariffBlocks.shape.steps, step, 1, 8],
    ['bands', TariffVersion.shape.bands, band, 1, 24],
    ['versions', Tariff.shape.versions, tariff.versions[0], 1, many],
    ['days of prices', PriceSeries.shape.days, { date: '2026-01-01', pencePerKWh: [5] }, 1, 1200],
    ['prices of a day', PriceSeries.shape.days.element.shape.pencePerKWh, 5, 0, 50],
  ])('%s are so many', (_, field, row, least, most) => {
    const takes = (count: number) => field.safeParse(new Array(count).fill(row)).success;
    expect(takes(least)).toBe(true);
    if (least > 0) expect(takes(least - 1)).toBe(false);
    if (most < many) expect([takes(most), takes(most + 1)]).toEqual([true, false]);
  });

  test('brine has twelve months, each from −15 to 25 °C', () => {
    const takes = (...months: number[]) => FullMachine.shape.brineMonthlyC.safeParse(typed(months)).success;
    const year = new Array<number>(11).fill(5);
    expect([takes(...year), takes(...year, 5), takes(...year, 5, 5)]).toEqual([false, true, false]);
    expect([-15.1, -15, 25, 25.1].map((month) => takes(...year, month))).toEqual([false, true, true, false]);
  });
});

test('a household of which nothing is known stands in Britain, its heating assumed', () => {
  expect(emptyHousehold('a', 'Fern')).toEqual({ ...emptyHousehold('a', 'Fern', 'GB'), zone: 'Europe/London' });
  const german = emptyHousehold('a', 'Fern', 'DE');
  expect([german.country, german.zone, german.present]).toEqual([
    'DE',
    'Europe/Berlin',
    { system: 'gas-condensing', assumed: true },
  ]);
  expect(Household.safeParse(german).success).toBe(true);
});
