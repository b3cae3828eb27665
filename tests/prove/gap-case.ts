/** A made written estimate and a made bill after it, with every cause of the difference known. */
import { appraise } from '../../src/model/appraise.ts';
import { type EstimateForDays, estimateForDays, heatPumpOf } from '../../src/model/bill-gap/estimate-for-days.ts';
import { toCivilDate, toDayNumber } from '../../src/model/calendar/civil.ts';
import type { BillCheckInput } from '../../src/model/shapes/bill-check.ts';
import { emptyHousehold, type Household } from '../../src/model/shapes/household.ts';
import type { Tariff } from '../../src/model/shapes/tariff.ts';
import type { WrittenEstimate } from '../../src/model/shapes/written-estimate.ts';
import { typicalYear } from '../../src/model/year/typical-year.ts';
import { reference } from '../../src/reference/index.ts';
import { type Chance, chanceOf } from './chance.ts';
import { factorAt, type MadeHome, type MadeRecord, makeRecord } from './made-home.ts';

export interface GapCase {
  readonly estimate: WrittenEstimate;
  readonly estimated: EstimateForDays;
  readonly home: MadeHome;
  readonly record: MadeRecord;
  readonly from: string;
  readonly to: string;
  /** Places of the bill's days in the record. */
  readonly firstDay: number;
  readonly days: number;
  /** Prices on the bill by band, p/kWh, and standing charges, pence a day. */
  readonly billedPrices: readonly number[];
  readonly standing: { readonly estimated: number; readonly billed: number };
  /** Beyond the usual other electricity, and what an estimated reading adds to the bill, kWh. */
  readonly otherKWh: number;
  readonly usualOtherKWh: number;
  readonly meteringKWh: number;
  readonly tariff: Tariff;
  /** Estimated heat for rooms: W/K and base temperature. */
  readonly estimatedLossWPerK: number;
  readonly chance: Chance;
}

const typed = <T>(value: T) => ({ value, grade: 'estimated' as const, origin: 'made' });

/** Two rates with the night kept cheap, or one. */
function makeTariff(chance: Chance): Tariff {
  const day = chance.uniform(22, 32);
  const night = {
    name: 'night',
    pencePerKWh: day * chance.uniform(0.45, 0.7),
    times: [{ from: '00:30', to: '07:30' }],
  };
  const rest = { name: 'day', pencePerKWh: day, times: 'rest' as const };
  return {
    id: 'made',
    name: 'Made tariff',
    fuel: 'electricity',
    origin: 'made',
    grade: 'measured',
    versions: [
      {
        from: '2024-01-01',
        standingPencePerDay: chance.uniform(40, 62),
        vat: { rate: 0.05, included: true },
        bands: chance.yes(0.5) ? [night, rest] : [rest],
      },
    ],
  };
}

function makeEstimate(chance: Chance, tariff: Tariff): WrittenEstimate {
  const household: Household = {
    ...emptyHousehold('made', 'Made household'),
    home: {
      kind: 'semi',
      floorAreaM2: typed(chance.uniform(70, 180)),
      people: typed(chance.pick([1, 2, 3, 4])),
      regionId: chance.pick([1, 4, 6, 7, 9, 13]),
    },
    heat: {
      heatLossKW: typed(chance.uniform(3.5, 9.5)),
      designOutdoorC: typed(-3),
      roomC: typed(chance.uniform(19.5, 21)),
    },
    hotWater: { pasteuriseWeekly: false },
    machine: {
      source: chance.pick(['ground', 'ground', 'air'] as const),
      spaceFactor: typed(chance.uniform(2.8, 4.3)),
      waterFactor: typed(chance.uniform(2.1, 2.9)),
      boundary: chance.pick(['H3', 'H4'] as const),
      flowC: typed(45),
    },
    prices: { electricityTariffId: tariff.id },
    tariffs: [tariff],
  };
  const appraisal = appraise({ household, series: [], reference, asOf: '2024-08-20', draws: 64 });
  return {
    id: 'made',
    number: 1,
    householdId: 'made',
    madeOn: '2024-08-20T10:00:00Z',
    note: '',
    household,
    evidence: [],
    appraisal,
  };
}

/** Readings begin on 1 June, so that warm days are among them; the bill covers 60 to 150 days from October on. */
export function drawGapCase(seed: number): GapCase {
  const chance = chanceOf(seed + 5);
  const tariff = makeTariff(chance);
  const estimate = makeEstimate(chance, tariff);
  const { appraisal } = estimate;
  const pump = heatPumpOf(estimate);
  const begin = toDayNumber('2025-06-01');
  const start = toDayNumber('2025-10-01') + Math.floor(chance.uniform(0, 100));
  const days = Math.floor(chance.uniform(60, 151));
  const estimated = estimateForDays(estimate, toCivilDate(start), toCivilDate(start + days));
  const estimatedLossWPerK = (appraisal.demand.space.value * 1000) / 24 / appraisal.climate.degreeDays;
  const factorLoss = chance.uniform(-0.05, 0.3);
  const heaterFrom = start - begin + Math.floor(chance.uniform(0, days / 2));
  const heaterDays = Math.min(Math.floor(chance.uniform(15, 60)), start - begin + days - heaterFrom);
  const extrasKWh = estimated.otherKWh - estimated.waterKWh;
  const factorPerK = chance.uniform(0, 0.01);
  const home: MadeHome = {
    seed,
    regionId: appraisal.climate.regionId,
    from: toCivilDate(begin),
    to: toCivilDate(start + days),
    shiftK: chance.normal(-0.4, 1),
    lossWPerK: estimatedLossWPerK * chance.uniform(0.85, 1.25),
    baseC: appraisal.demand.baseC + chance.normal(0, 0.3),
    spaceFactor: pump.spaceEfficiency * (1 - factorLoss) * yearShare(estimate, factorPerK),
    waterFactor: pump.waterEfficiency * (1 - factorLoss),
    factorPerK,
    waterHeatKWhPerDay: (appraisal.demand.water.value / 365) * chance.uniform(0.8, 1.6),
    standbyKW: extrasKWh / 24 / days,
    otherKWhPerDay: chance.uniform(5, 11),
    onOff: chance.yes(0.3),
    weeklyPasteurisation: false,
    effects: chance.yes(0.6)
      ? {
          heater: {
            kW: chance.uniform(2.75, 3),
            hours: chance.uniform(1.5, 3.5),
            hour: chance.uniform(0, 20),
            from: heaterFrom,
            days: heaterDays,
          },
        }
      : {},
  };
  const record = makeRecord(home);
  const firstDay = start - begin;
  const otherKWh = chance.yes(0.6) ? days * chance.uniform(0, 3.5) : 0;
  const machine = sumOf(record.machine, firstDay, days) + sumOf(record.heater, firstDay, days);
  const [version] = tariff.versions;
  const dearer = 1 + chance.uniform(-0.1, 0.25);
  return {
    estimate,
    estimated,
    home,
    record,
    from: toCivilDate(start),
    to: toCivilDate(start + days),
    firstDay,
    days,
    billedPrices: version!.bands.map(({ pencePerKWh }) => pencePerKWh * dearer * chance.normal(1, 0.02)),
    standing: {
      estimated: version!.standingPencePerDay,
      billed: version!.standingPencePerDay * chance.uniform(0.9, 1.2),
    },
    otherKWh,
    usualOtherKWh: sumOf(record.rest, firstDay, days),
    meteringKWh: chance.yes(0.3) ? machine * chance.uniform(-0.15, 0.15) : 0,
    tariff,
    estimatedLossWPerK,
    chance,
  };
}

/** Factor at 5 °C over the year's, weighted by the heat: so that the made factor over a typical year is the estimated one. */
function yearShare({ appraisal, household }: WrittenEstimate, factorPerK: number): number {
  const region = reference.regions.find(({ id }) => id === appraisal.climate.regionId)!;
  const { dailyMeanC } = typicalYear(region, 2025, household.zone);
  let heat = 0;
  let units = 0;
  for (const outdoorC of dailyMeanC) {
    const below = Math.max(0, appraisal.demand.baseC - outdoorC);
    heat += below;
    units += below / factorAt({ spaceFactor: 100, factorPerK }, outdoorC);
  }
  return (100 * units) / heat;
}

/** Units of a row of half-hours over some days. */
export function sumOf(halfHours: Float64Array, firstDay: number, days: number): number {
  let sum = 0;
  for (let i = firstDay * 48; i < (firstDay + days) * 48; i++) sum += halfHours[i]!;
  return sum;
}

/** The bill as somebody types it; the evidence comes beside it. */
export function billOf(made: GapCase, meter: BillCheckInput['meter'], toldOtherKWh: number): BillCheckInput {
  const { record, firstDay, days } = made;
  const machine = sumOf(record.machine, firstDay, days) + sumOf(record.heater, firstDay, days);
  const whole = machine + made.usualOtherKWh + made.otherKWh;
  const trueKWh = meter === 'heat-pump' ? machine : whole - toldOtherKWh;
  const boughtKWh = trueKWh + made.meteringKWh;
  const estimated = made.meteringKWh !== 0;
  return {
    estimateId: 'made',
    from: made.from,
    to: made.to,
    boughtKWh,
    otherKWh: meter === 'heat-pump' ? 0 : toldOtherKWh,
    meter,
    pencePerKWh: meanPrice(made),
    readings: estimated ? 'estimated' : 'actual',
    ...(estimated ? { readKWh: trueKWh } : {}),
    billedStandingPence: made.standing.billed * days,
  };
}

/** Share of the machine's units bought in each band. */
export function bandShares({ record, firstDay, days, tariff }: GapCase): number[] {
  if (tariff.versions[0]!.bands.length === 1) return [1];
  let night = 0;
  let all = 0;
  for (let day = firstDay; day < firstDay + days; day++) {
    for (let i = 0; i < 48; i++) {
      const kWh = record.machine[day * 48 + i]! + record.heater[day * 48 + i]!;
      all += kWh;
      if (i >= 1 && i < 15) night += kWh;
    }
  }
  return [night / all, 1 - night / all];
}

export function meanPrice(made: GapCase): number {
  return bandShares(made).reduce((sum, share, i) => sum + share * made.billedPrices[i]!, 0);
}
