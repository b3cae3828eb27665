/** Several tariffs of one home beside each other: all the electricity it would buy, heat pump and the rest together. */
import { z } from 'zod';
import { Figure, PriceBasis, SystemId } from './appraisal.ts';
import { given } from './given.ts';
import { Wording } from './told.ts';
import { Grade } from './working.ts';

/** What roof, battery and car change over a year on one tariff. */
export const OwnChange = z.object({
  /** Units bought beyond what the home needs without them; below zero where they save. */
  unitsPence: z.number(),
  /** Paid for what is sent out, and for a kWh of it where the tariff has a price of its own. */
  exportPence: z.number(),
  exportPencePerKWh: z.number().optional(),
  /** True where more is paid for a kWh sent out than any half-hour's costs: mostly a slip of the pen. */
  exportAbovePrice: z.boolean().optional(),
  carKWh: z.number(),
  /** What the car needs at home and its charger cannot give. */
  carLeftKWh: z.number(),
  /** What it is charged outside the hours in which it stands at home, since they are too few for its charger; absent where none. */
  carOutsideKWh: z.number().optional(),
  /** Of the sun: used at home, and sent out. */
  ownUseKWh: z.number(),
  soldKWh: z.number(),
  /** Filled into the battery from the grid; lost in it, its own draw included. */
  filledKWh: z.number(),
  batteryLossKWh: z.number(),
  /** Of the sun counted as used at home, what the battery lost. */
  sunLossKWh: z.number(),
});
export type OwnChange = z.infer<typeof OwnChange>;

/** A cold day in 48 half-hours: price, heat that the machine gives at its usual hours and in the best, and the rooms. */
export const ColdDay = z.object({
  pencePerKWh: z.array(z.number()),
  usualKW: z.array(z.number()),
  bestKW: z.array(z.number()),
  roomC: z.array(z.number()),
});
export type ColdDay = z.infer<typeof ColdDay>;

/** Running a heat pump in the best hours of a tariff: what it earns, and what the rooms do. */
export const BestHoursCost = z.object({
  /** What it saves against the usual hours, pence a year. */
  saving: z.object({ value: z.number(), low: z.number(), high: z.number() }),
  /** Whether the cost of this tariff has it in it. */
  counted: z.boolean(),
  /** How the warmth of the home is known, and how fast it is lost. */
  warmth: z.object({
    known: z.enum(['typed', 'fitted', 'built', 'assumed']),
    /** The one that is counted with: the low end where the home's own half-hours show it. */
    timeConstantHours: z.number(),
    /** Middle, 10 and 90 % points by the home's own half-hours, and how many months show it. */
    fitted: z.object({ hours: z.number(), low: z.number(), high: z.number(), months: z.int() }).optional(),
  }),
  /** How far a mean day of its coldest month would cool the home in three hours without heat, K. */
  coolsIn3HoursK: z.number(),
  /** Between which temperatures the rooms then lie, °C. */
  leastRoomC: z.number(),
  mostRoomC: z.number(),
  day: ColdDay,
});
export type BestHoursCost = z.infer<typeof BestHoursCost>;

/** The whole home with another way of heating, pence a year; null where that buys at prices of its own. */
export const OtherWay = z.object({ id: SystemId, kind: z.string(), pence: z.number().nullable() });
export type OtherWay = z.infer<typeof OtherWay>;

/** One tariff. The parts add up to the whole [pence a year, VAT included]. */
export const TariffCost = z.object({
  /** Of the household's tariffs; null for the published average. */
  tariffId: z.string().nullable(),
  basis: PriceBasis,
  /** The whole home with the heat pump. */
  whole: Figure,
  heatingPence: z.number(),
  restPence: z.number(),
  /** Standing charge of electricity, and what a charge on power takes for the home without heating. */
  standingPence: z.number(),
  /** Roof, battery and car, where the household has any: part of the whole. */
  own: OwnChange.optional(),
  /** The whole home heated as now and in each other way of the comparison, with the same roof, battery and car; heat pumps in their best hours where this one is. */
  others: z.array(OtherWay),
  /** Share of the possible years in which no other of these tariffs costs less, 0 to 1. */
  cheapestShare: z.number(),
  /** What making hot water in its cheap hours would save, pence a year; absent where it has none or it is done already. */
  nightWaterPence: z.number().optional(),
  /** Absent where its price does not change over the day and no sun is made. */
  bestHours: BestHoursCost.optional(),
  /** What a unit costs in the cheapest and the most expensive half-hour of the year and as their mean, VAT included; absent where it hangs on how much is used, and in what was kept before. */
  unitPence: z.object({ least: z.number(), most: z.number(), mean: z.number() }).optional(),
  /** Its price is another every half-hour, as a market makes it. */
  followsMarket: z.boolean(),
});
export type TariffCost = z.infer<typeof TariffCost>;

export const TariffChoice = z.object({
  /** What the home uses beside heating, kWh a year, and whose half-hours it is laid over. */
  rest: z.object({
    kWh: z.number(),
    grade: Grade,
    origin: Wording,
    hours: z.enum(['own', 'published']),
    hoursSource: z.string().optional(),
  }),
  roof: z
    .object({
      madeKWh: z.number(),
      /** Share of it made from November to February. */
      coldShare: z.number(),
      /** Own use by the monthly rule of the standard, to stand beside that by half-hours. */
      standardUseKWh: z.number(),
      /** Null where nobody has said it and no rule is known: then nothing is counted. */
      exportPay: given(z.number()).nullable(),
      source: z.string(),
    })
    .optional(),
  /** The cheapest first. */
  costs: z.array(TariffCost),
  /** Tariffs that cannot be priced: a fault in them, or a charge on power where nobody knows the home's half-hours, or a battery or car moves them. */
  leftOut: z.array(
    z.object({ name: z.string(), why: z.enum(['faulty', 'part-year', 'power-unknown', 'power-moved']) }),
  ),
  /** Where the heat pump of the comparison takes its heat from. */
  source: z.enum(['ground', 'air']),
  /** The one that the comparison rests on. */
  inUse: z.string().nullable(),
});
export type TariffChoice = z.infer<typeof TariffChoice>;
