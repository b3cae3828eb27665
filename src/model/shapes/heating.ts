/**
 * Fuels and ways of heating, one row each: how they are sold, bought and asked about. A new row here makes the compiler
 * ask for the rest: values with their sources in `src/reference/`, words in `src/words/systems.ts`.
 */

interface SaleUnitRow {
  /** Units of one base unit make a pack; the base unit has 1. */
  readonly count: number;
  readonly many: string;
  /** How it is written above a column. */
  readonly said: RegExp;
}

/** How many of a kind, rather than what they weigh or hold. */
const BAGS = String.raw`\b(bags?|sacks?|sacke|sacs?|sacos?|sacchi|zakken|saekke|sekker|sackar|worki|pytle)\b`;
const bagOf = (kg: number): RegExp => new RegExp(String.raw`\b${kg} ?kg ${BAGS}|${BAGS}.*\b${kg} ?kg\b`);
/** A number before it is what one piece holds: "12.5 kg" above a column that counts bottles. */
const notOfBags = (unit: string): RegExp =>
  new RegExp(String.raw`^(?!.*(co2|carbon|emission|${BAGS})).*(?<!\d )\b(?:${unit})`);

/** Units in which fuel is delivered. */
export const SALE_UNITS = {
  litre: { count: 1, many: 'litres', said: notOfBags(String.raw`lit(?:re|er)s?\b|ltrs?\b|l\b(?!['’])`) },
  tonne: {
    count: 1000,
    many: 'tonnes',
    said: /^(?!.*(co2|carbon|emission)).*(\b(tonn(es?|en|ellat[ae])|toneladas?)\b|[([]t[)\]])/,
  },
  'bag of 15 kg': { count: 15, many: 'bags of 15 kg', said: bagOf(15) },
  'bag of 10 kg': { count: 10, many: 'bags of 10 kg', said: bagOf(10) },
  kg: { count: 1, many: 'kg', said: notOfBags(String.raw`kgs?\b`) },
} as const satisfies Readonly<Record<string, SaleUnitRow>>;
export type SaleUnit = keyof typeof SALE_UNITS;
export const SALE_UNIT_IDS = Object.keys(SALE_UNITS) as SaleUnit[];
export const isSaleUnit = (unit: string | undefined): unit is SaleUnit => unit !== undefined && unit in SALE_UNITS;

interface FuelRow {
  /** As it stands in the English of a working. */
  readonly written: string;
  /** How it is called in files; the rows are searched from the last to the first. */
  readonly said: RegExp;
  /** By meter at a tariff with a standing charge, or by amount at a price a unit. */
  readonly sold: 'by meter' | 'by amount';
  /** Whether its price goes up and down with that of electricity or by itself. */
  readonly price: 'with electricity' | 'by itself';
}
interface DeliveredRow extends FuelRow {
  readonly sold: 'by amount';
  /** Unit in which its price and its energy are kept. */
  readonly unit: SaleUnit;
  /** Units in which an amount or a price may be typed, the usual one first. */
  readonly units: readonly SaleUnit[];
}

/** In the order in which they are listed. */
export const FUELS = {
  gas: {
    written: 'gas',
    said: /\bgas(?!oi?l|oleo|olio)|gas(verbrauch|verbruik|forbrug)?\b|\bgazu?\b|gazomierz|\bplyn(u|omer\w*)?\b|metano|m³|\bm3\b|ft³|\bft3\b|\bccf\b|\bhcf\b|therm\b|therms\b|calorific/,
    sold: 'by meter',
    price: 'with electricity',
  },
  oil: {
    written: 'oil',
    said: /\boil\b|kerosene|heating ?oil|heiz(ö|oe?)l|fioul|mazout|gasoil|gasoleo|gasolio|stookolie|fyringsolie/,
    sold: 'by amount',
    price: 'by itself',
    unit: 'litre',
    units: ['litre'],
  },
  lpg: {
    written: 'LPG',
    said: /\b(lpg|gpl|glp)\b|propane?\b|propaan|butane?\b|butaan|flussiggas|bottled gas|calor\b/,
    sold: 'by amount',
    price: 'by itself',
    unit: 'litre',
    units: ['litre'],
  },
  pellets: {
    written: 'pellets',
    said: /pellets?\b|granules?\b|pelet/,
    sold: 'by amount',
    price: 'by itself',
    unit: 'kg',
    units: ['tonne', 'bag of 15 kg', 'bag of 10 kg', 'kg'],
  },
} as const satisfies Readonly<Record<string, FuelRow | DeliveredRow>>;
export type Fuel = keyof typeof FUELS;
/** Fuels bought by amount. */
export type DeliveredFuel = { [F in Fuel]: (typeof FUELS)[F]['sold'] extends 'by amount' ? F : never }[Fuel];
export type PricedCarrier = 'electricity' | Fuel;

export const FUEL_IDS = Object.keys(FUELS) as Fuel[];
export const DELIVERED_FUELS = FUEL_IDS.filter((fuel): fuel is DeliveredFuel => FUELS[fuel].sold === 'by amount');
export const PRICED_CARRIERS: readonly PricedCarrier[] = ['electricity', ...FUEL_IDS];
export const isFuel = (carrier: string | undefined): carrier is Fuel => carrier !== undefined && carrier in FUELS;
export const isDelivered = (carrier: string | undefined): carrier is DeliveredFuel =>
  isFuel(carrier) && FUELS[carrier].sold === 'by amount';
export const unitsOf = (fuel: DeliveredFuel): readonly SaleUnit[] => FUELS[fuel].units;

/** Key of a delivered fuel's price in a household: "oilPencePerLitre". */
export type PriceKey<F extends DeliveredFuel = DeliveredFuel> = F extends DeliveredFuel
  ? `${F}PencePer${Capitalize<(typeof FUELS)[F]['unit']>}`
  : never;
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
export const priceKey = <F extends DeliveredFuel>(fuel: F): PriceKey<F> =>
  `${fuel}PencePer${capital(FUELS[fuel].unit)}` as PriceKey<F>;
/** Key of a yearly service's price in a household: "serviceOilGBP". */
export type ServiceKey<F extends Fuel = Fuel> = `service${Capitalize<F>}GBP`;
export const serviceKey = <F extends Fuel>(fuel: F) => `service${capital(fuel)}GBP` as ServiceKey<F>;

interface SystemRow {
  readonly carrier: PricedCarrier;
  /** How the hours of buying lie in the day. */
  readonly hours: 'heat-pump' | 'panels' | 'storage' | 'boiler';
  /** Whose yearly visit it needs. */
  readonly service: 'heat-pump' | 'electric' | Fuel;
  /** Whether it is held against the heat pump where it is not there already. */
  readonly offered: boolean;
  /** Whether a new one is held against one of the same kind that is there, where its own efficiency is known. */
  readonly offeredAnew?: true;
  /** Place in what households ask about, where a picture has no room for all. */
  readonly asked: number;
  /** The homes that could really have it; what is absent does not matter. `why-left-out.ts` reads it. */
  readonly suits: {
    /** Only where there is known to be gas, or only where there is known to be none. */
    readonly gasGrid?: boolean;
    /** Only where there is room for a tank or a store. */
    readonly house?: true;
    /** Only where electricity heats the rooms already, or in a flat without gas. */
    readonly electricNow?: true;
    /** Only where the home has ground of its own to lay pipes in: no flat, and no terrace, whose garden no rig reaches. */
    readonly ground?: true;
  };
}

/** Every way of heating, in the order in which they are listed. Which home could have it is common practice, no source. */
export const SYSTEMS = {
  'gas-condensing': {
    carrier: 'gas',
    hours: 'boiler',
    service: 'gas',
    offered: true,
    offeredAnew: true,
    asked: 3,
    suits: { gasGrid: true },
  },
  'gas-old': { carrier: 'gas', hours: 'boiler', service: 'gas', offered: false, asked: 8, suits: { gasGrid: true } },
  oil: {
    carrier: 'oil',
    hours: 'boiler',
    service: 'oil',
    offered: true,
    asked: 4,
    suits: { gasGrid: false, house: true },
  },
  lpg: {
    carrier: 'lpg',
    hours: 'boiler',
    service: 'lpg',
    offered: true,
    asked: 6,
    suits: { gasGrid: false, house: true },
  },
  pellets: {
    carrier: 'pellets',
    hours: 'boiler',
    service: 'pellets',
    offered: true,
    asked: 9,
    suits: { gasGrid: false, house: true },
  },
  'direct-electric': {
    carrier: 'electricity',
    hours: 'panels',
    service: 'electric',
    offered: true,
    asked: 5,
    suits: { electricNow: true },
  },
  storage: {
    carrier: 'electricity',
    hours: 'storage',
    service: 'electric',
    offered: true,
    asked: 7,
    suits: { electricNow: true },
  },
  'heat-pump': {
    carrier: 'electricity',
    hours: 'heat-pump',
    service: 'heat-pump',
    offered: false,
    asked: 0,
    suits: {},
  },
  'air-source': {
    carrier: 'electricity',
    hours: 'heat-pump',
    service: 'heat-pump',
    offered: true,
    asked: 1,
    suits: {},
  },
  'ground-source': {
    carrier: 'electricity',
    hours: 'heat-pump',
    service: 'heat-pump',
    offered: true,
    asked: 2,
    suits: { ground: true },
  },
} as const satisfies Readonly<Record<string, SystemRow>>;
export type System = keyof typeof SYSTEMS;
/** Ways of heating that are no heat pump: heat over a seasonal efficiency. */
export type Heater = Exclude<System, 'heat-pump' | RivalMachine>;
/** The other kind of heat pump, as the field knows it, beside the one described. */
export const RIVAL_MACHINES = ['air-source', 'ground-source'] as const satisfies readonly System[];
export type RivalMachine = (typeof RIVAL_MACHINES)[number];

export const HEATERS = (Object.keys(SYSTEMS) as System[]).filter(
  (system): system is Heater => SYSTEMS[system].hours !== 'heat-pump',
);
/** What may stand beside the heat pump without being there already. */
export const OFFERED = (Object.keys(SYSTEMS) as System[]).filter(
  (system): system is Exclude<System, 'heat-pump' | 'gas-old'> => SYSTEMS[system].offered,
);
/** The row of a way of heating as it is called in a document; undefined for one that has none, such as "other". */
export const systemRow = (name: string): SystemRow | undefined =>
  (SYSTEMS as Readonly<Record<string, SystemRow>>)[name];
/** What a way of heating burns or draws; undefined where nobody knows. */
export const carrierOf = (name: string): PricedCarrier | undefined => systemRow(name)?.carrier;
