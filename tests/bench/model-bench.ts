/** Speed of the model: the whole comparison, its ranges, the energy signature, prices by the half-hour, the split of a gap. */
import { appraise } from '../../src/model/appraise.ts';
import { balanceHome } from '../../src/model/balance/balance-home.ts';
import { shapley } from '../../src/model/bill-gap/shapley.ts';
import { type YearSlots, yearSlots } from '../../src/model/calendar/zone.ts';
import { compareTariffs } from '../../src/model/choices/compare-tariffs.ts';
import { fitSignature } from '../../src/model/demand/signature.ts';
import { reckonLifetime } from '../../src/model/lifetime/reckon-lifetime.ts';
import { OFFERED } from '../../src/model/shapes/heating.ts';
import { emptyHousehold, type Household } from '../../src/model/shapes/household.ts';
import type { Tariff } from '../../src/model/shapes/tariff.ts';
import { roofByHalfHour } from '../../src/model/sun/roof-by-half-hour.ts';
import { rateBuckets, sumByBucket } from '../../src/model/tariff/slot-price.ts';
import { reference } from '../../src/reference/index.ts';
import type { BenchRow } from './bench-row.ts';
import { fullWayBench } from './full-way-bench.ts';

const RUNS = 9;
const WARM_UP = 3;

/** Median of nine timings, each of `repeats` calls, per call [ms]. The answers are summed, so that no call can be left out. */
function medianPerCall(run: () => number, repeats = 1): number {
  const times: number[] = [];
  let sum = 0;
  for (let i = -WARM_UP; i < RUNS; i++) {
    const begun = performance.now();
    for (let k = 0; k < repeats; k++) sum += run();
    if (i >= 0) times.push((performance.now() - begun) / repeats);
  }
  if (!Number.isFinite(sum)) throw new Error('a benchmark that reckons nothing');
  return times.sort((a, b) => a - b)[(RUNS - 1) / 2]!;
}

/** Five bands by season, weekday and hour; a new object each time, so that nothing kept for an earlier one helps. */
const fiveBands = (): Tariff => ({
  id: 'bench',
  name: 'Invented five-band prices',
  fuel: 'electricity',
  origin: 'invented',
  grade: 'measured',
  versions: [
    {
      from: '2026-01-01',
      standingPencePerDay: 55,
      vat: { rate: 0.05, included: true },
      bands: [
        { name: 'night', pencePerKWh: 14, times: [{ from: '23:30', to: '05:30' }] },
        { name: 'winter peak', pencePerKWh: 38, times: [peak([11, 12, 1, 2])] },
        { name: 'other peak', pencePerKWh: 33, times: [peak([3, 4, 5, 6, 7, 8, 9, 10])] },
        { name: 'weekend', pencePerKWh: 22, times: [{ days: ['sat', 'sun'], from: '05:30', to: '23:30' }] },
        { name: 'day', pencePerKWh: 27, times: 'rest' },
      ],
    },
  ],
});

const peak = (months: number[]) => ({ months, days: [...WEEK], from: '16:00', to: '19:00' });
const WEEK = ['mon', 'tue', 'wed', 'thu', 'fri'] as const;

function benchHousehold(): Household {
  const typed = <T>(value: T) => ({ value, grade: 'measured' as const, origin: 'invented' });
  return {
    ...emptyHousehold('bench', 'Invented household'),
    home: { kind: 'semi', floorAreaM2: typed(95), people: typed(3), regionId: 6 },
    heat: { heatLossKW: typed(6.5) },
    machine: { source: 'ground', spaceFactor: typed(3.8), boundary: 'H3', flowC: typed(42) },
    prices: { electricityTariffId: 'bench' },
    tariffs: [fiveBands()],
    // As many ways of heating as there can be.
    beside: Object.fromEntries(OFFERED.map((system) => [system, true])),
  };
}

const reckon = (draws: number, flowC?: number) => {
  const whatIf = flowC === undefined ? {} : { whatIf: { flowC } };
  const answer = appraise({ household: benchHousehold(), series: [], reference, asOf: '2026-11-25', draws, ...whatIf });
  if (answer.prices.electricity.name !== fiveBands().name) throw new Error('the comparison left the tariff aside');
  return answer.systems.reduce((sum, { cost }) => sum + cost.value, 0);
};

const MORE_TARIFFS = 20;

/** Two prices, in which no hour of a day is better than another, so that no hours are searched for. */
function byMonth(place: number): Tariff {
  const tariff = fiveBands();
  const winter = { months: [10, 11, 12, 1, 2, 3], from: '00:00', to: '24:00' };
  const bands = [
    { name: 'winter', pencePerKWh: 30 + place / 10, times: [winter] },
    { name: 'summer', pencePerKWh: 20, times: 'rest' as const },
  ];
  return { ...tariff, id: `bench-${place}`, versions: [{ ...tariff.versions[0]!, bands }] };
}

function chooseAmong(count: number): number {
  const tariffs = Array.from({ length: count }, (_, place) => byMonth(place));
  const household = { ...benchHousehold(), tariffs, prices: {} };
  const { costs } = compareTariffs({ household, series: [], reference, asOf: '2026-11-25', draws: 0 })!;
  if (costs.length !== count + 1) throw new Error('a tariff was left aside');
  return costs.reduce((sum, { whole }) => sum + whole.value, 0);
}

/** Another heat loss each time, so that no hours searched for before help. */
function turnSwitches(heatLossKW: number): number {
  const quick = benchHousehold();
  const household: Household = {
    ...quick,
    heat: { heatLossKW: { ...quick.heat.heatLossKW!, value: heatLossKW } },
    comfort: { hours: 'best' },
    roof: { panels: [{ kWp: 4, facing: 'S', pitchDegrees: 30, shading: 'little' }] },
    battery: { usableKWh: 10, fromNight: true },
    car: {},
  };
  const { costs } = compareTariffs({ household, series: [], reference, asOf: '2026-11-25' })!;
  return costs.reduce((sum, { whole }) => sum + whole.value, 0);
}

/** Energy of so many systems, one value a half-hour. */
function yearsOf(count: number, slots: YearSlots): Float64Array[] {
  return Array.from({ length: count }, (_, s) =>
    Float64Array.from({ length: slots.count }, (_, i) => ((i * (s + 7)) % 97) / 60),
  );
}

/** The plain way: the clock times of the bands read once, each half-hour's price found in their list, and every year's units bought at it. */
function priceOneByOne(tariff: Tariff, slots: YearSlots, years: readonly Float64Array[]): number {
  const names = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
  const minutes = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
  const { bands } = tariff.versions[0]!;
  const windows = bands.flatMap(({ times, pencePerKWh }) =>
    times === 'rest' ? [] : times.map((one) => ({ ...one, a: minutes(one.from), b: minutes(one.to), pencePerKWh })),
  );
  const rest = bands.find(({ times }) => times === 'rest')!;
  const pence = new Float64Array(years.length);
  for (let i = 0; i < slots.count; i++) {
    const minute = slots.minute[i]!;
    const { pencePerKWh } =
      windows.find(({ months, days, a, b }) => {
        if (months && !months.includes(slots.month[i]! + 1)) return false;
        if (days && !days.includes(names[slots.weekday[i]!]!)) return false;
        return a < b ? minute >= a && minute < b : minute >= a || minute < b;
      }) ?? rest;
    for (let y = 0; y < years.length; y++) pence[y]! += years[y]![i]! * pencePerKWh;
  }
  return pence.reduce((sum, one) => sum + one, 0);
}

function priceByBuckets(tariff: Tariff, slots: YearSlots, years: readonly Float64Array[]): number {
  const buckets = rateBuckets(tariff.versions[0]!, slots);
  const width = buckets.names.length;
  return years.reduce((total, kWh) => {
    const sums = sumByBucket(buckets, slots, kWh);
    return total + sums.reduce((sum, value, at) => sum + value * buckets.pencePerKWh[at % width]!, 0);
  }, 0);
}

/** Ten years of days: a line with a base of 14.3 °C, and noise that is the same each time. */
function tenYears() {
  const count = 3652;
  const outdoorC = Float64Array.from({ length: count }, (_, i) => {
    return 10 - 7 * Math.cos((2 * Math.PI * i) / 365.25) + 4 * Math.sin(i * 1.7) * Math.sin(i * 0.31);
  });
  const perDayKWh = outdoorC.map((c, i) => Math.max(0, 8 + 2.9 * Math.max(0, 14.3 - c) + 5 * Math.sin(i * 2.3)));
  const first = Int32Array.from({ length: count }, (_, i) => i);
  const start = Uint32Array.from({ length: count + 1 }, (_, i) => i);
  return { outdoorC, perDayKWh, days: new Float64Array(count).fill(1), start, first };
}

/** The plain way: a straight line through all days at each of 141 base temperatures. */
function signatureOneByOne({ outdoorC, perDayKWh }: ReturnType<typeof tenYears>): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  const n = outdoorC.length;
  for (let tenths = 80; tenths <= 220; tenths++) {
    let [x, y, xx, xy, yy] = [0, 0, 0, 0, 0];
    for (let i = 0; i < n; i++) {
      const below = Math.max(0, tenths / 10 - outdoorC[i]!);
      const use = perDayKWh[i]!;
      x += below;
      y += use;
      xx += below * below;
      xy += below * use;
      yy += use * use;
    }
    const error = yy - (y * y) / n - (xy - (x * y) / n) ** 2 / (xx - (x * x) / n);
    if (error < least) [least, best] = [error, tenths / 10];
  }
  return best;
}

/** The plain way: so many possible years of so many systems from the platform's own random numbers, sorted for their points. */
function drawOneByOne(draws: number, systems: number): number {
  let sum = 0;
  const normal = () => Math.sqrt(-2 * Math.log(1 - Math.random())) * Math.cos(2 * Math.PI * Math.random());
  const costs = Array.from({ length: systems }, () => new Float64Array(draws));
  for (let i = 0; i < draws; i++) {
    const shared = Array.from({ length: 6 }, normal);
    for (let s = 0; s < systems; s++) {
      const heat = 12_000 * Math.exp(0.1 * shared[0]! + 0.08 * shared[1]! + 0.08 * shared[2]!);
      costs[s]![i] = (heat / (3 + s * Math.exp(0.1 * shared[3]!))) * 26 * Math.exp(0.09 * shared[4]!) + shared[5]!;
    }
  }
  for (const cost of costs) sum += cost.sort()[Math.floor(draws / 2)]!;
  return sum;
}

const ESTIMATED = [650, 7.2, 700, 3.4, 0, 900, 24.5, 55];
const ACTUAL = [720, 7.6, 760, 3, 120, 980, 27.69, 57.2];
const gapCost = ([hdd, heat, water, factor, backup, other, rate, standing]: readonly number[]) =>
  ((hdd! * heat! + water!) / factor! + backup! + other!) * rate! + standing! * 90;

function costOneByOne(): number {
  let sum = 0;
  for (let set = 0; set < 256; set++)
    sum += gapCost(ESTIMATED.map((value, k) => (set & (1 << k) ? ACTUAL[k]! : value)));
  return sum;
}

/** A home of 6,500 kWh with 4 kWp to the south and a battery that may be filled in a cheap night. */
function homeWithSun(slots: YearSlots) {
  const region = reference.regions.find(({ id }) => id === 6)!;
  const panels = { kWp: 4, facing: 'S', pitchDegrees: 30, shading: 'little' } as const;
  const isNight = (slot: number) => slots.minute[slot]! < 330;
  return {
    slots,
    loadKWh: Float64Array.from({ length: slots.count }, (_, slot) => (isNight(slot) ? 0.25 : 0.41)),
    sunKWh: roofByHalfHour([panels], region, slots, reference.sun),
    battery: { usableKWh: 10, powerKW: 4, roundTripShare: 0.85, standbyW: 15, fromNight: true },
    pencePerKWh: Float64Array.from({ length: slots.count }, (_, slot) => (isNight(slot) ? 9 : 31)),
    exportPence: 9,
  };
}

/** The plain way: one pass over the year for each of the three settings of its battery that this home's prices leave, with no run-up. */
function balanceOneByOne({ slots, loadKWh, sunKWh, battery, pencePerKWh }: ReturnType<typeof homeWithSun>): number {
  let least = Number.POSITIVE_INFINITY;
  for (const roomKWh of [0, 4, battery.usableKWh]) {
    let [held, pence] = [0, 0];
    for (let slot = 0; slot < slots.count; slot++) {
      const [made, needed] = [sunKWh[slot]!, loadKWh[slot]! + battery.standbyW / 2000];
      const used = made > 0 ? Math.min(made, needed, made * 0.6748 * (made / needed) ** -0.703) : 0;
      const stored = Math.min(made - used, battery.powerKW / 2, (battery.usableKWh - held) / 0.922);
      held += stored * 0.922;
      let bought = needed - used;
      if (pencePerKWh[slot] === 9) {
        const filled = Math.max(0, Math.min(battery.powerKW / 2, (battery.usableKWh - roomKWh - held) / 0.922));
        held += filled * 0.922;
        bought += filled;
      } else {
        const given = Math.min(bought, battery.powerKW / 2, held * 0.922);
        held -= given / 0.922;
        bought -= given;
      }
      pence += bought * pencePerKWh[slot]! - (made - used - stored) * 9;
    }
    least = Math.min(least, pence);
  }
  return least;
}

/** All rows about the model, measured in one run. */
export function modelBench(): BenchRow[] {
  const slots = yearSlots(2026, 'Europe/London');
  const household = benchHousehold();
  const appraisal = appraise({ household, series: [], reference, asOf: '2026-11-25' });
  // The peers do the work for as many systems as the comparison has.
  const systems = appraisal.systems.length;
  const years = yearsOf(systems, slots);
  const wholeHome = yearsOf(systems + 1, slots);
  const days = tenYears();
  const withSun = homeWithSun(slots);
  const DRAWS = 10_000;
  const plainPricing = medianPerCall(() => priceOneByOne(fiveBands(), slots, years));
  const bare = medianPerCall(() => reckon(0), 5);
  const ranged = medianPerCall(() => reckon(DRAWS));
  const plainDraws = medianPerCall(() => drawOneByOne(DRAWS, systems));
  let flowC = 35;
  let heatLossKW = 4;
  const slider = medianPerCall(() => reckon(DRAWS, 35 + (flowC++ % 20)));
  const purchase = { heatPumpGBP: { value: 15_000, grade: 'measured' as const, origin: 'invented' } };
  const toCome = () => reckonLifetime({ household: { purchase }, appraisal, reference })!.saved.value;
  const rows: BenchRow[] = [
    {
      what: 'whole comparison on a five-band tariff never seen before, no draws',
      value: bare,
      unit: 'ms',
      peer: { what: `${systems} systems priced half-hour by half-hour, and nothing else`, value: plainPricing },
      aim: 5,
    },
    {
      what: '10,000 uncertainty draws (comparison with them less comparison without)',
      value: ranged - bare,
      unit: 'ms',
      peer: { what: `10,000 years of ${systems} systems by a plain loop`, value: plainDraws },
      aim: 20,
    },
    {
      what: 'a what-if slider: comparison with 10,000 draws at another flow temperature',
      value: slider,
      unit: 'ms',
      aim: 16,
    },
    {
      what: 'the years to come in 1,000 futures: paid by year, payback and worth with their ranges',
      value: medianPerCall(toCome, 5),
      unit: 'ms',
      aim: 3,
    },
    {
      what: 'energy signature of ten years of days, base temperature searched',
      value: medianPerCall(() => fitSignature(days).baseC, 20),
      unit: 'ms',
      peer: {
        what: 'a line at each of 141 base temperatures by a plain loop',
        value: medianPerCall(() => signatureOneByOne(days)),
      },
      aim: 20,
    },
    {
      what: `17,520 half-hours sorted into five bands and priced for ${systems} systems`,
      value: medianPerCall(() => priceByBuckets(fiveBands(), slots, years), 5),
      unit: 'ms',
      peer: { what: 'the same by a plain loop, each half-hour looked up in the list of bands', value: plainPricing },
    },
    {
      what: 'a year of a home with panels and a battery, its filling set as costs least',
      value: medianPerCall(() => balanceHome(withSun).ownUseKWh, 5),
      unit: 'ms',
      peer: { what: 'the same by a plain loop', value: medianPerCall(() => balanceOneByOne(withSun), 5) },
      aim: 16,
    },
    {
      what: 'a gap split among eight causes',
      value: medianPerCall(() => shapley(ESTIMATED, ACTUAL, gapCost)[0]!, 200),
      unit: 'ms',
      peer: { what: 'the 256 costs alone by a plain loop', value: medianPerCall(costOneByOne, 200) },
    },
    {
      what: 'one more tariff by the month on the whole home and every way of heating, no draws',
      value: (medianPerCall(() => chooseAmong(1 + MORE_TARIFFS)) - medianPerCall(() => chooseAmong(1))) / MORE_TARIFFS,
      unit: 'ms',
      peer: {
        what: `${systems} systems and other use of the home priced half-hour by half-hour, and nothing else`,
        value: medianPerCall(() => priceOneByOne(byMonth(0), slots, wholeHome)),
      },
      aim: 1,
    },
    {
      what: 'switches never seen together: panels, battery, car, best hours on a five-band tariff and the average',
      value: medianPerCall(() => turnSwitches(heatLossKW++)),
      unit: 'ms',
    },
    ...fullWayBench(benchHousehold, medianPerCall),
  ];
  return rows;
}
