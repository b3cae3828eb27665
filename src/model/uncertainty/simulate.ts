/**
 * Many possible years at once. Every draw is one year for all systems together: the same home, winter, habits and
 * prices act on each, so that what moves both sides of a comparison does not count twice.
 * The draws act on the totals of the price bands, never on half-hours.
 */
import { multiplierAt, type Spread } from '../chance/multiplier.ts';
import { type Normals, normalDraws } from '../chance/normals.ts';
import { DELIVERED_FUELS, type DeliveredFuel, type PricedCarrier } from '../shapes/heating.ts';

/** One system's year as totals: what scales with heat for rooms, with hot water, or with neither. kWh and pence. */
export interface YearTerms {
  readonly carrier: PricedCarrier;
  readonly spaceKWh: number;
  readonly waterKWh: number;
  /** Resistance heat in place of a machine, bought on the same meter: a share of all heat, for rooms and hot water. */
  readonly backupKWh: number;
  /** Pumps and standby of a machine, bought on the same meter. */
  readonly steadyKWh: number;
  /** Electricity beside a fuel: boiler pump and fan. */
  readonly ownElectricityKWh: number;
  /** Hot water by electricity beside a fuel. */
  readonly electricWaterKWh: number;
  readonly spacePence: number;
  readonly waterPence: number;
  readonly backupPence: number;
  readonly steadyPence: number;
  readonly ownElectricityPence: number;
  readonly electricWaterPence: number;
  /** What the home uses beside heating, where its whole bill is priced: electricity as known, at a price that moves. */
  readonly restPence?: number;
  /** Agreed in a contract, and so the same in every year: standing charge and charge on power. */
  readonly fixedPence: number;
  readonly servicePence: number;
  /** Relative standard deviation; 0 where the price was typed. */
  readonly serviceSpread: number;
  /** Spread of the real factor or efficiency over the one reckoned with. */
  readonly spaceSpread: Spread;
  readonly waterSpread: Spread;
  readonly moves: Moves;
}

/** Which draws move a factor or an efficiency: the machine's, a second machine's, the present boiler's, another's. */
export type Moves = 'machine' | 'other-machine' | 'efficiency' | 'other-efficiency';

/** Spreads that act on every system alike. */
export interface SharedSpreads {
  readonly spaceHeat: Spread;
  readonly waterHeat: Spread;
  /** How far a home that needs more heat for its rooms than thought needs more hot water too: correlation, 0 to 1. */
  readonly waterFollows: number;
  /**
   * Where the heat was worked out from what the present system used: its efficiency's spread, and how much of the heat
   * rests on it (0 to 1). If that efficiency is better than thought, more heat was needed, yet no more fuel was burnt.
   */
  readonly heatRestsOn: {
    readonly moves: 'machine' | 'efficiency';
    readonly spread: Spread;
    readonly weight: number;
  } | null;
  /** Relative standard deviations. */
  readonly winter: number;
  readonly habits: number;
  readonly electricityPrice: number;
  readonly gasPrice: number;
  readonly priceCorrelation: number;
  readonly deliveredPrice: { readonly [fuel in DeliveredFuel]: number };
  readonly machineExtras: number;
  readonly boilerElectricity: number;
  readonly useful: { readonly spaceKWh: number; readonly waterKWh: number };
}

/** One value a draw. */
export interface Years {
  readonly costPence: Float64Array;
  /** Cost of one home from year to year: winter, habits and prices drawn, all else at its middle; at most ENOUGH_YEARS. */
  readonly onlyYearsPence: Float64Array;
  readonly boughtKWh: Float64Array;
  readonly pencePerKWhHeat: Float64Array;
}

/** Of the same points the first ones; a power of two, so that they lie evenly by themselves. */
const ENOUGH_YEARS = 1024;

/** How far the hot-water factor follows the room factor of the same machine: one fitter, one ground array. A judgement. */
export const FACTOR_CORRELATION = 0.7;

/** Possible years of each system, in the order given; `count` draws, the same ones for the same count. */
export function simulateYears(systems: readonly YearTerms[], shared: SharedSpreads, count: number): Years[] {
  const normals = normalDraws(count);
  const heat = drawHeat(shared, normals, count);
  const bought = new Set(systems.map(({ carrier }) => carrier));
  const prices = drawPrices(shared, normals, bought, count);
  return systems.map((terms) => drawSystem(terms, shared, normals, { ...heat, prices, count }));
}

type Multipliers = Float64Array;
interface Drawn {
  /** Of the heat for rooms and for hot water. */
  readonly space: Multipliers;
  readonly water: Multipliers;
  /** Of the same, from one year to the next in one home. */
  readonly spaceByYear: Multipliers;
  readonly waterByYear: Multipliers;
  /** Of electricity, and of each fuel that one of the systems buys. */
  readonly prices: { readonly electricity: Multipliers } & { readonly [carrier in PricedCarrier]?: Multipliers };
  readonly count: number;
}

function drawHeat(shared: SharedSpreads, normals: Normals, count: number) {
  const space = new Float64Array(count);
  const water = new Float64Array(count);
  const spaceByYear = new Float64Array(count);
  const waterByYear = new Float64Array(count);
  const { heatRestsOn } = shared;
  const present = heatRestsOn ? (heatRestsOn.moves === 'machine' ? normals.spaceFactor : normals.efficiency) : null;
  const part = heatRestsOn && partOf(heatRestsOn.spread, heatRestsOn.weight);
  const alone = heatRestsOn ? withoutPart(shared.spaceHeat, heatRestsOn.spread, heatRestsOn.weight) : shared.spaceHeat;
  const follow = shared.waterFollows;
  const apart = Math.sqrt(1 - follow * follow);
  for (let i = 0; i < count; i++) {
    const habits = Math.exp(shared.habits * normals.habits[i]!);
    const winter = Math.max(0, 1 + shared.winter * normals.winter[i]!);
    let heat = multiplierAt(alone, normals.spaceHeat[i]!);
    if (part && present) heat *= multiplierAt(part, present[i]!);
    spaceByYear[i] = habits * winter;
    waterByYear[i] = habits;
    space[i] = heat * habits * winter;
    const z = follow * normals.spaceHeat[i]! + apart * normals.waterHeat[i]!;
    water[i] = multiplierAt(shared.waterHeat, z) * habits;
  }
  return { space, water, spaceByYear, waterByYear };
}

function drawPrices(
  shared: SharedSpreads,
  normals: Normals,
  bought: ReadonlySet<PricedCarrier>,
  count: number,
): Drawn['prices'] {
  const together = Math.max(-1, Math.min(1, shared.priceCorrelation));
  const apart = Math.sqrt(1 - together * together);
  const ofElectricity = normals.electricityPrice;
  const draw = (deviation: number, z: (i: number) => number): Multipliers => {
    const price = new Float64Array(count);
    for (let i = 0; i < count; i++) price[i] = Math.exp(deviation * z(i));
    return price;
  };
  return {
    electricity: draw(shared.electricityPrice, (i) => ofElectricity[i]!),
    ...(bought.has('gas')
      ? { gas: draw(shared.gasPrice, (i) => together * ofElectricity[i]! + apart * normals.fuelPrice[i]!) }
      : {}),
    ...Object.fromEntries(
      DELIVERED_FUELS.filter((fuel) => bought.has(fuel)).map((fuel) => {
        const own = normals[`${fuel}Price`];
        return [fuel, draw(shared.deliveredPrice[fuel], (i) => own[i]!)];
      }),
    ),
  };
}

function drawSystem(terms: YearTerms, shared: SharedSpreads, normals: Normals, drawn: Drawn): Years {
  const { count } = drawn;
  const costPence = new Float64Array(count);
  const boughtKWh = new Float64Array(count);
  const pencePerKWhHeat = new Float64Array(count);
  const price = drawn.prices[terms.carrier]!;
  const electricity = drawn.prices.electricity;
  const first = normals[DRAWS[terms.moves]];
  const boiler = terms.moves === 'efficiency' || terms.moves === 'other-efficiency';
  // A boiler's two efficiencies move together; a machine's hot-water factor follows its room factor only in part.
  const follow = boiler ? 1 : FACTOR_CORRELATION;
  const alone = Math.sqrt(1 - follow * follow);
  const service = normals[boiler ? 'otherService' : 'machineService'];
  const rest = terms.restPence ?? 0;
  const { useful } = shared;
  const forRooms = shareForRooms(useful);
  const sameSpread = follow === 1 && sameAs(terms.spaceSpread, terms.waterSpread);
  for (let i = 0; i < count; i++) {
    const bySpace = multiplierAt(terms.spaceSpread, first[i]!);
    const byWater = sameSpread
      ? bySpace
      : multiplierAt(terms.waterSpread, follow * first[i]! + alone * normals.waterFactor[i]!);
    const space = drawn.space[i]! / bySpace;
    const water = drawn.water[i]! / byWater;
    const steady = around(shared.machineExtras, normals.machineExtras[i]!);
    const own = around(shared.boilerElectricity, normals.boilerElectricity[i]!);
    const heatKWh = useful.spaceKWh * drawn.space[i]! + useful.waterKWh * drawn.water[i]!;
    const backup = forRooms * drawn.space[i]! + (1 - forRooms) * drawn.water[i]!;
    const mainKWh =
      terms.spaceKWh * space + terms.waterKWh * water + terms.backupKWh * backup + terms.steadyKWh * steady;
    const units =
      (terms.spacePence * space + terms.waterPence * water + terms.backupPence * backup + terms.steadyPence * steady) *
        price[i]! +
      (terms.ownElectricityPence * own + terms.electricWaterPence * drawn.water[i]! + rest) * electricity[i]!;
    const besideKWh = terms.ownElectricityKWh * own + terms.electricWaterKWh * drawn.water[i]!;
    costPence[i] = units + terms.servicePence * around(terms.serviceSpread, service[i]!) + terms.fixedPence;
    boughtKWh[i] = mainKWh + besideKWh;
    pencePerKWhHeat[i] = heatKWh > 0 ? units / heatKWh : 0;
  }
  return { costPence, onlyYearsPence: drawYears(terms, shared.useful, drawn), boughtKWh, pencePerKWhHeat };
}

function drawYears(
  terms: YearTerms,
  useful: SharedSpreads['useful'],
  { prices, spaceByYear, waterByYear, count }: Drawn,
): Float64Array {
  const price = prices[terms.carrier]!;
  const { electricity } = prices;
  const forRooms = shareForRooms(useful);
  const bySpace = terms.spacePence + terms.backupPence * forRooms;
  const byWater = terms.waterPence + terms.backupPence * (1 - forRooms);
  return Float64Array.from(
    { length: Math.min(count, ENOUGH_YEARS) },
    (_, i) =>
      (bySpace * spaceByYear[i]! + byWater * waterByYear[i]! + terms.steadyPence) * price[i]! +
      (terms.ownElectricityPence + terms.electricWaterPence * waterByYear[i]! + (terms.restPence ?? 0)) *
        electricity[i]! +
      terms.servicePence +
      terms.fixedPence,
  );
}

/** Of all heat the share [1] that the rooms need, and of a backup heater what goes with them. */
export const shareForRooms = ({ spaceKWh, waterKWh }: SharedSpreads['useful']): number =>
  spaceKWh + waterKWh > 0 ? spaceKWh / (spaceKWh + waterKWh) : 0;

/** What to multiply a small amount by: even about 1, never below nothing. */
const around = (deviation: number, z: number): number => Math.max(0, 1 + deviation * z);

const DRAWS = {
  machine: 'spaceFactor',
  'other-machine': 'otherFactor',
  efficiency: 'efficiency',
  'other-efficiency': 'otherEfficiency',
} as const;

/** The spread that acts on what rests on it with a part of its weight: e^(slope z) to the power of the weight. */
const partOf = ({ below, above }: Spread, weight: number): Spread => ({
  below: below * weight,
  above: above * weight,
});

/** What is left of a spread when an independent part of it is drawn by itself. */
function withoutPart(whole: Spread, part: Spread, weight: number): Spread {
  const left = (slope: number, taken: number) => Math.sqrt(Math.max(0, slope ** 2 - (weight * taken) ** 2));
  return { ...whole, below: left(whole.below, part.below), above: left(whole.above, part.above) };
}

const sameAs = (a: Spread, b: Spread) => a.below === b.below && a.above === b.above;
