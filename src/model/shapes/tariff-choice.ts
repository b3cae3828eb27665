/** Several tariffs of one home beside each other: all the electricity it would buy, heat pump and the rest together. */
import { z } from 'zod';
import { Figure, PriceBasis } from './appraisal.ts';
import { Wording } from './told.ts';
import { Grade } from './working.ts';

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
  /** The whole home with the heating that it has now; null where that buys at prices of its own. */
  presentPence: z.number().nullable(),
  /** Share of the possible years in which no other of these tariffs costs less, 0 to 1. */
  cheapestShare: z.number(),
  /** What making hot water in its cheap hours would save, pence a year; absent where it has none or it is done already. */
  nightWaterPence: z.number().optional(),
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
  /** The cheapest first. */
  costs: z.array(TariffCost),
  /** Tariffs that cannot be priced: a fault in them, or a charge on power where nobody knows the home's half-hours. */
  leftOut: z.array(z.object({ name: z.string(), why: z.enum(['faulty', 'power-unknown']) })),
  /** The one that the comparison rests on. */
  inUse: z.string().nullable(),
});
export type TariffChoice = z.infer<typeof TariffChoice>;
